/**
 * Kept copies: before a file is replaced, the version on disk gets a second name in `.holewright-backups`.
 * Autosave writes every few hundred milliseconds, so good copies keep a distance in time; else ten of them
 * would hold the last few seconds only. A damaged version is set aside and never pushes out a good one.
 */

import { join } from 'node:path';
import type { KeptCopy } from '../contract/host.ts';
import { errorCode } from './answer.ts';
import type { Disk } from './disk.ts';
import { hasNoSecondNames } from './replace.ts';

export const BACKUP_FOLDER = '.holewright-backups';
export const MOST_COPIES = 10;
const MOST_DAMAGED = 3;
export const COPY_SPACING_MS = 60_000;

export type Condition = 'good' | 'damaged';

/** The folder with the copies of the file `name`. */
function copiesFolder(workspace: string, name: string): string {
  return join(workspace, BACKUP_FOLDER, name);
}

/** `20260131T140509123Z.good`: sorts by time, plain on every file system. */
function copyName(keptAt: number, condition: Condition): string {
  return `${new Date(keptAt).toISOString().replace(/[-:.]/gu, '')}.${condition}`;
}

/** Time in a copy's name, null for any other name. */
function timeInName(name: string, condition: Condition): number | null {
  const parts = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)(\d{3})Z\.(good|damaged)$/u.exec(name);
  if (parts?.[8] !== condition) return null;
  const [year, month, day, hour, minute, second, ms] = parts.slice(1, 8).map(Number);
  return Date.UTC(year!, month! - 1, day, hour, minute, second, ms);
}

/** Copies at hand, newest first. */
export async function keptCopies(
  disk: Disk,
  workspace: string,
  name: string,
  condition: Condition = 'good',
): Promise<readonly KeptCopy[]> {
  try {
    const folder = copiesFolder(workspace, name);
    await refuseLinked(disk, folder);
    const files = await disk.plainFiles(folder);
    return files
      .map(({ name: copy, bytes }) => ({ keptAt: timeInName(copy, condition), bytes }))
      .filter((copy): copy is KeptCopy => copy.keptAt !== null)
      .sort((a, b) => b.keptAt - a.keptAt);
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return [];
    throw error;
  }
}

/** Content of a good copy; throws `ENOENT` where there is none of that time. */
export async function readCopy(
  disk: Disk,
  workspace: string,
  name: string,
  keptAt: number,
  mostBytes: number,
): Promise<Uint8Array> {
  const folder = copiesFolder(workspace, name);
  await refuseLinked(disk, folder);
  return disk.read(join(folder, copyName(keptAt, 'good')), mostBytes);
}

/** Throws `ELOOP` where some part of the path is a link: copies never come from outside the workspace. */
async function refuseLinked(disk: Disk, folder: string): Promise<void> {
  if ((await disk.realPath(folder)) !== folder) {
    throw Object.assign(new Error(`${folder} is a link`), { code: 'ELOOP' });
  }
}

/**
 * Gives the version on disk a second name among the copies and drops the oldest beyond ten; a good one only
 * where the newest copy is at least a minute old. `bytes` is that version's content, written out where the
 * file system has no second names.
 */
export async function keepCopy(
  disk: Disk,
  workspace: string,
  name: string,
  bytes: Uint8Array,
  condition: Condition,
  now: number,
): Promise<void> {
  const copies = await keptCopies(disk, workspace, name, condition);
  // A clock that was set back must neither stop the copies nor let each save keep one: those of the future count for nothing.
  const isRecent = copies.some(({ keptAt }) => keptAt <= now && now - keptAt < COPY_SPACING_MS);
  if (condition === 'good' && isRecent) return;
  await disk.makeFolder(join(workspace, BACKUP_FOLDER));
  const folder = copiesFolder(workspace, name);
  await disk.makeFolder(folder);
  const copy = join(folder, copyName(now, condition));
  try {
    await disk.link(join(workspace, name), copy);
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return;
    if (!hasNoSecondNames(error)) throw error;
    await disk.writeNew(copy, bytes);
  }
  const most = condition === 'good' ? MOST_COPIES : MOST_DAMAGED;
  for (const old of copies.slice(most - 1)) await disk.remove(join(folder, copyName(old.keptAt, condition)));
}
