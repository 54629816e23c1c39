/** Files of the workspace that are gone while a journal of theirs is still there: work that no file would ever offer again. */

import { join } from 'node:path';
import type { LeftBehind } from '../contract/host.ts';
import { errorCode } from './answer.ts';
import type { Disk, PlainFile } from './disk.ts';
import { JOURNAL_FOLDER } from './journal.ts';
import { isSafeName, kindByName } from './names.ts';
import { tokenOf } from './store.ts';

/** By name; throws the disk's errors. */
export async function leftBehindIn(disk: Disk, workspace: string): Promise<readonly LeftBehind[]> {
  const folder = join(workspace, JOURNAL_FOLDER);
  let journals: readonly PlainFile[];
  try {
    if ((await disk.realPath(folder)) !== folder) return [];
    journals = await disk.plainFiles(folder);
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return [];
    throw error;
  }
  const there = new Set((await disk.plainFiles(workspace)).map(({ name }) => name));
  const gone = new Set(journals.flatMap((file) => fileNameOf(file) ?? []).filter((name) => !there.has(name)));
  return [...gone].sort().map((name) => ({ token: tokenOf('workspace', name), name }));
}

/** Whose journal it is, null for what is none of ours. */
function fileNameOf(journal: PlainFile): string | null {
  const name = /^(.+?)(?:\.\d{1,6})?\.log$/u.exec(journal.name)?.[1];
  return name !== undefined && isSafeName(name) && kindByName(name) !== null ? name : null;
}
