/** Changes on disk, numbered, so that a window which lost its connection for a while is told what it missed. */

import type { WireChange } from '../contract/wire.ts';

export interface NumberedChange {
  readonly number: number;
  readonly change: WireChange;
}

export interface ChangeLog {
  readonly add: (change: WireChange) => NumberedChange;
  /** Changes after number `since`, oldest first; those still kept. */
  readonly after: (since: number) => readonly NumberedChange[];
  /** Number of the latest change, 0 where there was none. */
  readonly latest: () => number;
}

const MOST_KEPT = 512;

export function changeLog(): ChangeLog {
  const kept: NumberedChange[] = [];
  let latest = 0;
  return {
    add: (change) => {
      latest += 1;
      const numbered = { number: latest, change };
      kept.push(numbered);
      if (kept.length > MOST_KEPT) kept.shift();
      return numbered;
    },
    after: (since) => kept.filter(({ number }) => number > since),
    latest: () => latest,
  };
}
