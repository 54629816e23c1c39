/** A clock that tests turn by hand, and a disk whose files carry its time. */

import { utimes } from 'node:fs/promises';
import { type Disk, nodeDisk } from '../../../electron/files/disk.ts';
import type { Clock } from '../../../electron/files/lock.ts';
import { errorCode } from '../../../electron/files/answer.ts';

export interface HandClock extends Clock {
  readonly turn: (ms: number) => void;
  /** What happens while somebody waits, in order; each wait takes the next. */
  readonly whileWaiting: (() => Promise<void> | void)[];
  /** Waits so far, in milliseconds. */
  readonly waits: readonly number[];
}

export function handClock(start = Date.UTC(2026, 5, 1)): HandClock {
  let now = start;
  const waits: number[] = [];
  const whileWaiting: (() => Promise<void> | void)[] = [];
  return {
    now: () => now,
    turn: (ms) => (now += ms),
    whileWaiting,
    waits,
    wait: async (ms) => {
      waits.push(ms);
      now += ms;
      await whileWaiting.shift()?.();
    },
  };
}

/** `aheadMs`: how far the clock of the computer that writes is ahead. */
export function diskOnClock(clock: Clock, aheadMs = 0, inner: Disk = nodeDisk): Disk {
  const stamp = async (path: string): Promise<void> => {
    const time = new Date(clock.now() + aheadMs);
    await utimes(path, time, time);
  };
  return {
    ...inner,
    writeNew: async (path, bytes) => {
      await inner.writeNew(path, bytes);
      // A real disk stamps in the same breath; here somebody may have moved the new file in between.
      await stamp(path).catch((error: unknown) => {
        if (errorCode(error) !== 'ENOENT') throw error;
      });
    },
    touch: stamp,
  };
}
