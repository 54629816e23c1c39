/**
 * The little of a file system that the store needs, so that tests can put a failing one in its place. Paths
 * are absolute and made by the store alone.
 */

import { constants } from 'node:fs';
import { link, lstat, mkdir, open, readdir, realpath, rename, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { errorCode } from './answer.ts';

export interface PlainFile {
  readonly name: string;
  readonly bytes: number;
  readonly modifiedAt: number;
  /** Changes whenever the content may have: size, time and identity of the file. */
  readonly stamp: string;
}

export interface Disk {
  /** Plain files of a folder, links and everything else left out. */
  readonly plainFiles: (folder: string) => Promise<readonly PlainFile[]>;
  /** Whole content; throws `ELOOP` for a link, `ENOTPLAIN` for a pipe or folder, `ETOOLARGE` beyond `mostBytes`. */
  readonly read: (path: string, mostBytes: number) => Promise<Uint8Array>;
  /** Makes a file that must not exist, writes all of it and syncs it to the disk. */
  readonly writeNew: (path: string, bytes: Uint8Array) => Promise<void>;
  readonly rename: (from: string, to: string) => Promise<void>;
  /** A second name for a file; throws `EEXIST` where the name is taken. */
  readonly link: (existing: string, path: string) => Promise<void>;
  readonly remove: (path: string) => Promise<void>;
  /** Makes the folder and those above it; fine where it is there, throws `ENOTDIR` where a link or file is. */
  readonly makeFolder: (path: string) => Promise<void>;
  /** Makes renames in this folder last through a power cut, where the system can. */
  readonly syncFolder: (path: string) => Promise<void>;
  readonly realPath: (path: string) => Promise<string>;
}

function coded(code: string, message: string): Error {
  return Object.assign(new Error(message), { code });
}

// Absent on Windows, where following links needs rights that a page cannot get.
const noFollow = (constants.O_NOFOLLOW as number | undefined) ?? 0;
const noWait = (constants.O_NONBLOCK as number | undefined) ?? 0;

export const nodeDisk: Disk = {
  plainFiles: async (folder) => {
    const names = await readdir(folder);
    const files = await Promise.all(
      names.map(async (name): Promise<PlainFile | null> => {
        try {
          const seen = await lstat(join(folder, name));
          if (!seen.isFile()) return null;
          return {
            name,
            bytes: seen.size,
            modifiedAt: Math.round(seen.mtimeMs),
            stamp: `${seen.mtimeMs}:${seen.size}:${seen.ino}`,
          };
        } catch (error) {
          // Gone between the two looks.
          if (errorCode(error) === 'ENOENT') return null;
          throw error;
        }
      }),
    );
    return files.filter((file) => file !== null);
  },
  read: async (path, mostBytes) => {
    const file = await open(path, constants.O_RDONLY | noFollow | noWait);
    try {
      const seen = await file.stat();
      if (!seen.isFile()) throw coded('ENOTPLAIN', 'not a plain file');
      if (seen.size > mostBytes) throw coded('ETOOLARGE', `${seen.size} bytes`);
      const bytes = await file.readFile();
      if (bytes.byteLength > mostBytes) throw coded('ETOOLARGE', `${bytes.byteLength} bytes`);
      return bytes;
    } finally {
      await file.close();
    }
  },
  writeNew: async (path, bytes) => {
    const file = await open(
      path,
      constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | noFollow,
      0o644,
    );
    try {
      // Not fs.write: on a full disk that may write a part and call it success.
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
  },
  rename,
  link,
  remove: unlink,
  makeFolder: async (path) => {
    await mkdir(path, { recursive: true });
    const seen = await lstat(path);
    if (!seen.isDirectory()) throw coded('ENOTDIR', 'a link or file stands where the folder should be');
  },
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
};
