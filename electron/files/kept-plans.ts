/**
 * Plans kept so that the next start shows one at once: a cache in the program's own folder, one file a plan. Deleting any of it
 * costs a few seconds and nothing else, so nothing here is synced to the disk, and whatever goes wrong means "none is kept". A
 * file holds a line with the SHA-256 of key and text, then the text: a damaged or misnamed one is removed, never shown.
 */

import { createHash, randomBytes } from 'node:crypto';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { HostAnswer } from '../contract/host.ts';
import { LARGEST_KEPT_PLAN } from '../contract/wire.ts';
import { errorCode, good } from './answer.ts';
import { type Disk, nodeDisk } from './disk.ts';
import { oneAtATime } from './turns.ts';

/** Beside the settings. */
export const PLANS_FOLDER = 'kept-plans';
const NAME = /^[0-9a-f]{64}$/u;
const UNFINISHED = /^unfinished-[0-9a-f]{16}$/u;
/** Age from which an unfinished file can only be the rest of a crash. */
const ABANDONED_AFTER_MS = 60 * 60 * 1000;
/** A text is at most three bytes of UTF-8 for each of its units, after a line with the hash. */
const MOST_FILE_BYTES = 65 + 3 * LARGEST_KEPT_PLAN;

export interface Bounds {
  readonly mostFiles: number;
  readonly mostBytes: number;
}

/** Some ten courses of eighteen holes; a plan takes 30 kB or so. */
export const PLAN_BOUNDS: Bounds = { mostFiles: 200, mostBytes: 16 * 1024 * 1024 };

/** With less free than this the last of the room is left to the person's own files. */
const LEAST_FREE_BYTES = 64 * 1024 * 1024;

/** What of the disk a cache needs; `write` makes a file that must not exist and does not sync it. */
export type PlansDisk = Pick<
  Disk,
  'plainFiles' | 'read' | 'touch' | 'rename' | 'remove' | 'makeFolder' | 'freeBytes'
> & {
  readonly write: (path: string, text: string) => Promise<void>;
};

const thisDisk: PlansDisk = {
  ...nodeDisk,
  write: (path, text) => writeFile(path, text, { flag: 'wx', mode: 0o600 }),
};

export interface KeptPlans {
  readonly keep: (key: string, text: string) => Promise<HostAnswer<{ readonly isKept: boolean }>>;
  readonly kept: (key: string) => Promise<HostAnswer<{ readonly text: string | null }>>;
  /** How often the disk refused since the start, for those who look for a fault. */
  readonly refusals: () => number;
}

export const noKeptPlans: KeptPlans = {
  keep: () => Promise.resolve(good({ isKept: false })),
  kept: () => Promise.resolve(good({ text: null })),
  refusals: () => 0,
};

/** Keys must have been checked: 64 hexadecimal digits and nothing else become a file's name. */
export function keptPlans(
  folder: string,
  disk: PlansDisk = thisDisk,
  bounds: Bounds = PLAN_BOUNDS,
): KeptPlans {
  let refused = 0;
  const inTurn = oneAtATime();

  const pathOf = (key: string): string => {
    if (!NAME.test(key)) throw new Error('a key is 64 hexadecimal digits');
    return join(folder, key);
  };

  const read = async (key: string): Promise<string | null> => {
    const path = pathOf(key);
    let bytes: Uint8Array;
    try {
      bytes = await disk.read(path, MOST_FILE_BYTES);
    } catch (error) {
      if (errorCode(error) !== 'ENOENT') {
        refused += 1;
        await disk.remove(path).catch(() => undefined);
      }
      return null;
    }
    const text = unsealed(key, bytes);
    if (text === null) await disk.remove(path).catch(() => undefined);
    // Used now, so that others are dropped before it.
    else await disk.touch(path).catch(() => undefined);
    return text;
  };

  /** False where the disk is nearly full and nothing was written. */
  const write = async (key: string, text: string): Promise<boolean> => {
    await disk.makeFolder(folder);
    const free = await disk.freeBytes(folder).catch(() => null);
    if (free !== null && free < LEAST_FREE_BYTES) return false;
    const temporary = join(folder, `unfinished-${randomBytes(8).toString('hex')}`);
    try {
      await disk.write(temporary, sealed(key, text));
      await disk.rename(temporary, pathOf(key));
    } catch (error) {
      await disk.remove(temporary).catch(() => undefined);
      throw error;
    }
    await makeRoom(key);
    return true;
  };

  /** Drops what was used longest ago, and the rests of crashes, until the bounds are kept. */
  const makeRoom = async (newest: string): Promise<void> => {
    const files = await disk.plainFiles(folder);
    const abandoned = files.filter(
      ({ name, modifiedAt }) => UNFINISHED.test(name) && Date.now() - modifiedAt > ABANDONED_AFTER_MS,
    );
    const plans = files
      .filter(({ name }) => NAME.test(name))
      .sort((a, b) => Number(b.name === newest) - Number(a.name === newest) || b.modifiedAt - a.modifiedAt);
    let bytes = 0;
    const over = plans.filter((file, i) => {
      bytes += file.bytes;
      return i >= bounds.mostFiles || bytes > bounds.mostBytes;
    });
    for (const { name } of [...abandoned, ...over])
      await disk.remove(join(folder, name)).catch(() => undefined);
  };

  return {
    keep: (key, text) =>
      inTurn(async () => {
        try {
          return good({ isKept: await write(key, text) });
        } catch {
          refused += 1;
          return good({ isKept: false });
        }
      }),
    kept: async (key) => good({ text: await read(key) }),
    refusals: () => refused,
  };
}

function sealed(key: string, text: string): string {
  return `${sealOf(key, text)}\n${text}`;
}

function sealOf(key: string, text: string): string {
  return createHash('sha256').update(key).update('\n').update(text).digest('hex');
}

/** The text of a whole file, null for a damaged one. */
function unsealed(key: string, bytes: Uint8Array): string | null {
  try {
    const all = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    const text = all.slice(65);
    return all === sealed(key, text) ? text : null;
  } catch {
    return null;
  }
}
