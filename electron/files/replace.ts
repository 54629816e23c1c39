/**
 * Writing a file so that whatever happens, the name holds the old content or the new, never a part: temporary
 * file, sync, read back and compare, rename, sync the folder.
 */

import { randomBytes } from 'node:crypto';
import { dirname, join } from 'node:path';
import { errorCode } from './answer.ts';
import type { Disk } from './disk.ts';
import { revisionOf } from './content.ts';

const TEMPORARY_PREFIX = '.holewright-unfinished-';
/** Age from which a temporary file can only be the rest of a crash. */
const ABANDONED_AFTER_MS = 60 * 60 * 1000;

/** A path for a temporary file in `folder`. */
export function temporaryIn(folder: string): string {
  return join(folder, `${TEMPORARY_PREFIX}${randomBytes(8).toString('hex')}`);
}

/** Writes and checks a temporary file beside `path`; its path. Removes it again where anything goes wrong. */
async function writeBeside(disk: Disk, path: string, bytes: Uint8Array): Promise<string> {
  const temporary = temporaryIn(dirname(path));
  try {
    await disk.writeNew(temporary, bytes);
    const back = await disk.read(temporary, bytes.byteLength);
    if (revisionOf(back) !== revisionOf(bytes)) {
      throw Object.assign(new Error('the disk gave back something else than was written'), { code: 'EIO' });
    }
    return temporary;
  } catch (error) {
    await disk.remove(temporary).catch(() => undefined);
    throw error;
  }
}

/**
 * Puts `bytes` in the place of the file at `path`. `beforeSwitch` runs last before the rename, when the new
 * content is safe beside it; it may call the switch off by answering false. `unsynced` is told where the new
 * content is in place but the folder could not be synced: a power cut might still bring the old one back.
 */
export async function replaceFile(
  disk: Disk,
  path: string,
  bytes: Uint8Array,
  beforeSwitch: () => Promise<boolean> = () => Promise.resolve(true),
  unsynced: (error: unknown) => void = () => undefined,
): Promise<boolean> {
  const temporary = await writeBeside(disk, path, bytes);
  try {
    if (!(await beforeSwitch())) {
      await disk.remove(temporary);
      return false;
    }
    await disk.rename(temporary, path);
  } catch (error) {
    await disk.remove(temporary).catch(() => undefined);
    throw error;
  }
  await disk.syncFolder(dirname(path)).catch(unsynced);
  return true;
}

/** Makes a new file at `path`; throws `EEXIST` where the name is taken, without touching what is there. */
export async function makeFile(
  disk: Disk,
  path: string,
  bytes: Uint8Array,
  unsynced: (error: unknown) => void = () => undefined,
): Promise<void> {
  const temporary = await writeBeside(disk, path, bytes);
  try {
    await nameFile(disk, temporary, path);
  } catch (error) {
    await disk.remove(temporary).catch(() => undefined);
    throw error;
  }
  await disk.syncFolder(dirname(path)).catch(unsynced);
}

/** Gives a temporary file its name; throws `EEXIST` where the name is taken, and leaves both files alone then. */
export async function nameFile(disk: Disk, temporary: string, path: string): Promise<void> {
  try {
    await disk.link(temporary, path);
  } catch (error) {
    if (!hasNoSecondNames(error)) throw error;
    // The caller has looked that the name is free; a rename is still all or nothing.
    await disk.rename(temporary, path);
    return;
  }
  await disk.remove(temporary);
}

/** Whether a link failed because the file system knows no second names (FAT, some network shares). */
export function hasNoSecondNames(error: unknown): boolean {
  return ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK', 'EXDEV', 'EINVAL'].includes(errorCode(error));
}

/** Removes what crashes left behind. */
export async function sweepUnfinished(disk: Disk, folder: string, now: number): Promise<void> {
  for (const file of await disk.plainFiles(folder)) {
    if (file.name.startsWith(TEMPORARY_PREFIX) && now - file.modifiedAt > ABANDONED_AFTER_MS) {
      await disk.remove(join(folder, file.name)).catch(() => undefined);
    }
  }
}
