/**
 * Telling a folder that is away (drive removed, folder renamed) from a file that is away: the first may come
 * back, and nothing must be made in its place meanwhile.
 */

import { told, type Told } from '../../core/words/told.ts';
import { errorCode, type Refusal, refused, refusedByDisk } from './answer.ts';
import type { Disk } from './disk.ts';

// What systems say of a path, or an open file, on a drive that has been taken away.
const goneCodes = ['ENOENT', 'ENOTDIR', 'ENODEV', 'ENXIO', 'ESTALE', 'ENOTCONN', 'EIO', 'EHOSTDOWN'];

/** Puts a disk error into words, looking first whether the whole folder is away. */
export async function refusedIn(
  disk: Disk,
  folder: string,
  folderName: string,
  error: unknown,
  doing: Told,
): Promise<Refusal> {
  if (goneCodes.includes(errorCode(error)) && !(await isThere(disk, folder))) {
    return refused(
      'folder-gone',
      told(({ refusals }) => refusals.folderGone, { folder: folderName, doing }),
    );
  }
  return refusedByDisk(error, doing);
}

async function isThere(disk: Disk, folder: string): Promise<boolean> {
  try {
    await disk.plainFiles(folder);
    return true;
  } catch (error) {
    return !goneCodes.includes(errorCode(error));
  }
}
