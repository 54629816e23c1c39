/** The page's listeners for changes on disk; each is told once per change until it leaves. */

import type { FileChange } from '../../electron/contract/host.ts';

export interface Listeners {
  readonly add: (listener: (change: FileChange) => void) => () => void;
  readonly tell: (change: FileChange) => void;
}

export function changeListeners(): Listeners {
  const all = new Set<{ readonly listener: (change: FileChange) => void }>();
  return {
    add: (listener) => {
      const place = { listener };
      all.add(place);
      return () => {
        all.delete(place);
      };
    },
    tell: (change) => {
      for (const { listener } of [...all]) listener(change);
    },
  };
}
