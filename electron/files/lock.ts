/**
 * A lock file says which running program has a file of the workspace. Its time of last change is a heartbeat:
 * the holder renews it every second, and a lock that has not been renewed for some seconds belongs to a
 * program that has crashed. No lock protects the content by itself: whoever saves looks once more, as late as
 * can be, whether the lock is still its own, and the file's revision is compared as well.
 */

import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import * as v from 'valibot';
import { errorCode } from './answer.ts';
import type { Disk } from './disk.ts';
import { oneAtATime } from './turns.ts';

export const LOCK_FOLDER = '.holewright-locks';
const MOST_BYTES = 4096;

export interface LockTimes {
  /** How often the holder renews its lock. */
  readonly beatMs: number;
  /** Age from which a lock counts as left behind. */
  readonly lapsesAfterMs: number;
  /** How long such a lock is watched before it is taken over: a computer that slept renews all its locks late. */
  readonly watchMs: number;
}

export const usualLockTimes: LockTimes = { beatMs: 1000, lapsesAfterMs: 5000, watchMs: 1500 };

/** The file system's clock may be coarser than ours, never this much. */
const COARSE_MS = 2000;

const noteSchema = v.object({
  owner: v.string(),
  shell: v.picklist(['electron', 'loopback']),
  computer: v.string(),
  process: v.number(),
  since: v.number(),
});

/** What stands in a lock file. `owner` is made at random for each claim. */
export type LockNote = v.InferOutput<typeof noteSchema>;

export interface Clock {
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly wait: (ms: number) => Promise<void>;
}

export const systemClock: Clock = {
  now: Date.now,
  wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
};

/** The lock of somebody else; `note` is null where it cannot be read, e.g. while it is being written. */
export interface OtherLock {
  readonly note: LockNote | null;
  readonly since: number;
}

export interface FileLock {
  /** Null where the lock is now ours, else whose it is. Throws the disk's errors. */
  readonly take: () => Promise<OtherLock | null>;
  /** Whether the lock is ours at this moment; puts it back where it was deleted. Throws the disk's errors. */
  readonly isOurs: () => Promise<boolean>;
  /** Renews the lock; false where it is somebody else's now. */
  readonly beat: () => Promise<boolean>;
  /** Removes the lock where it is ours. Never throws. */
  readonly drop: () => Promise<void>;
}

interface Seen extends OtherLock {
  /** Changes with every renewal. */
  readonly stamp: string;
  readonly renewedAt: number;
}

/** The lock of the file `name` in `workspace`, as `mine` would hold it. */
export function fileLock(
  disk: Disk,
  workspace: string,
  name: string,
  mine: LockNote,
  clock: Clock = systemClock,
  times: LockTimes = usualLockTimes,
): FileLock {
  const folder = join(workspace, LOCK_FOLDER);
  const path = join(folder, `${name}.lock`);
  const inTurn = oneAtATime();
  let isDropped = false;

  const seenAt = async (at: string): Promise<Seen | null> => {
    try {
      const bytes = await disk.read(at, MOST_BYTES);
      const { stamp, modifiedAt } = await disk.look(at);
      const note = v.safeParse(
        v.pipe(v.string(), v.parseJson(), noteSchema),
        new TextDecoder().decode(bytes),
      );
      const read = note.success ? note.output : null;
      return { note: read, since: read?.since ?? modifiedAt, stamp, renewedAt: modifiedAt };
    } catch (error) {
      if (errorCode(error) === 'ENOENT') return null;
      throw error;
    }
  };

  /** Writes the lock where there is none; false where there is one. */
  const put = async (): Promise<boolean> => {
    await disk.makeInside(folder);
    try {
      await disk.writeNew(path, Buffer.from(`${JSON.stringify(mine)}\n`));
      return true;
    } catch (error) {
      if (errorCode(error) === 'EEXIST') return false;
      // A part of ours may be there, e.g. on a full disk, and would keep everybody out for a while.
      const part = await seenAt(path).catch(() => null);
      if (part !== null && (part.note === null || part.note.owner === mine.owner)) {
        await disk.remove(path).catch(() => undefined);
      }
      throw error;
    }
  };

  const isLeftBehind = async (seen: Seen): Promise<boolean> => {
    const age = clock.now() - seen.renewedAt;
    if (age >= -COARSE_MS && age <= times.lapsesAfterMs) return false;
    // The clocks of two computers may differ by hours: there only the lack of renewals tells.
    const isOfThisComputer = seen.note?.computer === mine.computer;
    await clock.wait(isOfThisComputer ? times.watchMs : times.lapsesAfterMs);
    return (await seenAt(path))?.stamp === seen.stamp;
  };

  /** Takes a lock left behind out of the way; false where it turned out to be another one. */
  const clearAway = async (seen: Seen): Promise<boolean> => {
    const aside = `${path}.${randomBytes(8).toString('hex')}`;
    await disk.rename(path, aside);
    const moved = await seenAt(aside);
    const isTheOne = moved?.stamp === seen.stamp;
    // Somebody was quicker and has just taken the lock: it goes back, unless a third one has come since.
    if (!isTheOne) await disk.link(aside, path).catch(() => undefined);
    await disk.remove(aside).catch(() => undefined);
    return isTheOne;
  };

  const take = async (): Promise<OtherLock | null> => {
    for (;;) {
      if (await put()) return null;
      const seen = await seenAt(path);
      if (seen === null) continue;
      if (seen.note?.owner === mine.owner) return null;
      if (!(await isLeftBehind(seen))) return (await seenAt(path)) ?? seen;
      try {
        if (!(await clearAway(seen))) return seen;
      } catch (error) {
        if (errorCode(error) !== 'ENOENT') throw error;
      }
    }
  };

  const isOurs = async (): Promise<boolean> => {
    if (isDropped) return false;
    const seen = await seenAt(path);
    if (seen === null && (await put())) return true;
    return (seen ?? (await seenAt(path)))?.note?.owner === mine.owner;
  };

  const beat = async (): Promise<boolean> => {
    try {
      if (!(await isOurs())) return false;
      await disk.touch(path);
    } catch {
      // The folder is away or the disk ails: whether the lock was lost meanwhile shows when it is back.
    }
    return true;
  };

  const drop = async (): Promise<void> => {
    isDropped = true;
    try {
      if ((await seenAt(path))?.note?.owner === mine.owner) await disk.remove(path);
    } catch {
      // It lapses by itself.
    }
  };

  // A renewal under way must not bring back a lock that is being dropped.
  return {
    take,
    isOurs: () => inTurn(isOurs),
    beat: () => inTurn(beat),
    drop: () => inTurn(drop),
  };
}
