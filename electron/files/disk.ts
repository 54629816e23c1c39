/**
 * The little of a file system that the store needs, so that tests can put a failing one in its place. Paths
 * are absolute and made by the store alone.
 */

import { constants } from 'node:fs';
import {
  type FileHandle,
  link,
  lstat,
  mkdir,
  open,
  readdir,
  realpath,
  rename,
  rmdir,
  statfs,
  unlink,
  utimes,
} from 'node:fs/promises';
import type { Stats } from 'node:fs';
import { basename, join } from 'node:path';
import { errorCode } from './answer.ts';

export interface PlainFile {
  readonly name: string;
  readonly bytes: number;
  readonly modifiedAt: number;
  /** Changes whenever the content may have: size, time and identity of the file. */
  readonly stamp: string;
  /** Which file it is, whatever its name and content. */
  readonly identity: string;
}

/** Where an append must begin: the file and the bytes it has by all that was acknowledged. */
export type End = Pick<PlainFile, 'identity' | 'bytes'>;

export interface Disk {
  /** Plain files of a folder, links and everything else left out. */
  readonly plainFiles: (folder: string) => Promise<readonly PlainFile[]>;
  /** One plain file; throws `ENOENT`, and `ENOTPLAIN` for a link, pipe or folder. */
  readonly look: (path: string) => Promise<PlainFile>;
  /** Whole content; throws `ELOOP` for a link, `ENOTPLAIN` for a pipe or folder, `ETOOLARGE` beyond `mostBytes`. */
  readonly read: (path: string, mostBytes: number) => Promise<Uint8Array>;
  /** Makes a file that must not exist, writes all of it and syncs it to the disk. */
  readonly writeNew: (path: string, bytes: Uint8Array) => Promise<void>;
  /** Like `writeNew` from a stream, telling the bytes so far; throws `ETOOLARGE` beyond `mostBytes`. The bytes in all. */
  readonly writeNewFrom: (
    path: string,
    source: AsyncIterable<Uint8Array>,
    mostBytes: number,
    told: (bytes: number) => void,
  ) => Promise<number>;
  /**
   * Adds to a file and syncs it. What stands beyond `end` is the rest of an append that failed and is cut
   * first; throws `ECHANGED` where the file is another one or shorter. A failing append is cut off again.
   */
  readonly append: (path: string, end: End, bytes: Uint8Array) => Promise<void>;
  /** At most `length` bytes from `offset`. */
  readonly readPart: (path: string, offset: number, length: number) => Promise<Uint8Array>;
  /** Sets the time of the last change to now. */
  readonly touch: (path: string) => Promise<void>;
  readonly rename: (from: string, to: string) => Promise<void>;
  /** A second name for a file; throws `EEXIST` where the name is taken. */
  readonly link: (existing: string, path: string) => Promise<void>;
  readonly remove: (path: string) => Promise<void>;
  /** Makes the folder and those above it; fine where it is there, throws `ENOTDIR` where a link or file is. */
  readonly makeFolder: (path: string) => Promise<void>;
  /** Makes one folder whose parent must be there; fine where it is there, throws `ENOTDIR` where a link or file is. */
  readonly makeInside: (path: string) => Promise<void>;
  /** Removes a folder with nothing in it; throws where there is something. */
  readonly removeEmptyFolder: (path: string) => Promise<void>;
  /** Makes renames in this folder last through a power cut, where the system can. */
  readonly syncFolder: (path: string) => Promise<void>;
  readonly realPath: (path: string) => Promise<string>;
  /** Bytes that may still be written there, null where the system does not say. */
  readonly freeBytes: (folder: string) => Promise<number | null>;
}

function coded(code: string, message: string): Error {
  return Object.assign(new Error(message), { code });
}

// Absent on Windows, where following links needs rights that a page cannot get.
const noFollow = (constants.O_NOFOLLOW as number | undefined) ?? 0;
const noWait = (constants.O_NONBLOCK as number | undefined) ?? 0;
const NEW_FILE = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | noFollow;

function plainFile(name: string, seen: Stats): PlainFile {
  return {
    name,
    bytes: seen.size,
    modifiedAt: Math.round(seen.mtimeMs),
    stamp: `${seen.mtimeMs}:${seen.size}:${seen.ino}`,
    identity: `${seen.dev}:${seen.ino}`,
  };
}

async function plainStats(file: FileHandle): Promise<Stats> {
  const seen = await file.stat();
  if (!seen.isFile()) throw coded('ENOTPLAIN', 'not a plain file');
  return seen;
}

async function mustBeFolder(path: string): Promise<void> {
  const seen = await lstat(path);
  if (!seen.isDirectory()) throw coded('ENOTDIR', 'a link or file stands where the folder should be');
}

export const nodeDisk: Disk = {
  plainFiles: async (folder) => {
    const names = await readdir(folder);
    const files = await Promise.all(
      names.map(async (name): Promise<PlainFile | null> => {
        try {
          const seen = await lstat(join(folder, name));
          return seen.isFile() ? plainFile(name, seen) : null;
        } catch (error) {
          // Gone between the two looks.
          if (errorCode(error) === 'ENOENT') return null;
          throw error;
        }
      }),
    );
    return files.filter((file) => file !== null);
  },
  look: async (path) => {
    const seen = await lstat(path);
    if (!seen.isFile()) throw coded('ENOTPLAIN', 'not a plain file');
    return plainFile(basename(path), seen);
  },
  read: async (path, mostBytes) => {
    const file = await open(path, constants.O_RDONLY | noFollow | noWait);
    try {
      const seen = await plainStats(file);
      if (seen.size > mostBytes) throw coded('ETOOLARGE', `${seen.size} bytes`);
      const bytes = await file.readFile();
      if (bytes.byteLength > mostBytes) throw coded('ETOOLARGE', `${bytes.byteLength} bytes`);
      return bytes;
    } finally {
      await file.close();
    }
  },
  writeNew: async (path, bytes) => {
    const file = await open(path, NEW_FILE, 0o644);
    try {
      // Not fs.write: on a full disk that may write a part and call it success.
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
  },
  writeNewFrom: async (path, source, mostBytes, told) => {
    const file = await open(path, NEW_FILE, 0o644);
    try {
      let bytes = 0;
      for await (const part of source) {
        bytes += part.byteLength;
        if (bytes > mostBytes) throw coded('ETOOLARGE', `more than ${mostBytes} bytes`);
        await file.writeFile(part);
        told(bytes);
      }
      await file.sync();
      return bytes;
    } finally {
      await file.close();
    }
  },
  append: async (path, end, bytes) => {
    const file = await open(path, constants.O_WRONLY | constants.O_APPEND | noFollow | noWait);
    try {
      const seen = await plainStats(file);
      if (plainFile('', seen).identity !== end.identity || seen.size < end.bytes) {
        throw coded('ECHANGED', 'the file is another one or shorter than it was');
      }
      if (seen.size > end.bytes) await file.truncate(end.bytes);
      try {
        await file.writeFile(bytes);
        await file.datasync();
      } catch (error) {
        await file.truncate(end.bytes).catch(() => undefined);
        throw error;
      }
    } finally {
      await file.close();
    }
  },
  readPart: async (path, offset, length) => {
    const file = await open(path, constants.O_RDONLY | noFollow | noWait);
    try {
      const { size } = await plainStats(file);
      const bytes = Buffer.alloc(Math.max(0, Math.min(length, size - offset)));
      let done = 0;
      while (done < bytes.byteLength) {
        const { bytesRead } = await file.read(bytes, done, bytes.byteLength - done, offset + done);
        // Cut short by somebody while being read.
        if (bytesRead === 0) break;
        done += bytesRead;
      }
      return bytes.subarray(0, done);
    } finally {
      await file.close();
    }
  },
  touch: (path) => {
    const now = new Date();
    return utimes(path, now, now);
  },
  rename,
  link,
  remove: unlink,
  makeFolder: async (path) => {
    await mkdir(path, { recursive: true });
    await mustBeFolder(path);
  },
  makeInside: async (path) => {
    try {
      await mkdir(path);
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') throw error;
    }
    await mustBeFolder(path);
  },
  removeEmptyFolder: (path) => rmdir(path),
  syncFolder: async (path) => {
    // Windows cannot open a folder for syncing and needs no such step.
    if (process.platform === 'win32') return;
    const folder = await open(path, constants.O_RDONLY);
    try {
      await folder.sync();
    } catch (error) {
      // Some network and FUSE file systems refuse; the rename has happened all the same.
      if (!['EINVAL', 'ENOTSUP', 'ENOSYS'].includes(errorCode(error))) throw error;
    } finally {
      await folder.close();
    }
  },
  realPath: (path) => realpath(path),
  freeBytes: async (folder) => {
    try {
      const { bavail, bsize } = await statfs(folder);
      return bavail * bsize;
    } catch (error) {
      if (['ENOSYS', 'ENOTSUP', 'EPERM', 'EACCES'].includes(errorCode(error))) return null;
      throw error;
    }
  },
};
