/**
 * Keeps a page from being told of its own saves. A change may be heard before the save that made it is
 * answered, so changes of a file that is being saved wait for the answer.
 */

import type { FileChange } from '../../electron/contract/host.ts';
import type { WireChange } from '../../electron/contract/wire.ts';

export interface OwnSaves {
  /** Runs a save; `revisionOf` reads the new revision out of its answer, null where it was refused. */
  readonly during: <T>(
    token: string,
    save: () => Promise<T>,
    revisionOf: (answer: T) => string | null,
  ) => Promise<T>;
  /** Takes a file that this page has just made, so that its appearance is no news. */
  readonly made: (token: string, revision: string) => void;
  /** Passes a change on unless it is this page's own. */
  readonly hear: (change: WireChange) => void;
}

export function ownSaves(tell: (change: FileChange) => void): OwnSaves {
  const known = new Map<string, string>();
  const running = new Map<string, number>();
  const waiting: WireChange[] = [];

  const hear = (change: WireChange): void => {
    if ((running.get(change.token) ?? 0) > 0) {
      waiting.push(change);
      return;
    }
    if (change.revision !== undefined && known.get(change.token) === change.revision) return;
    tell({ token: change.token, change: change.change });
  };

  return {
    hear,
    made: (token, revision) => {
      known.set(token, revision);
    },
    during: async (token, save, revisionOf) => {
      running.set(token, (running.get(token) ?? 0) + 1);
      try {
        const answer = await save();
        const revision = revisionOf(answer);
        if (revision !== null) known.set(token, revision);
        return answer;
      } finally {
        running.set(token, (running.get(token) ?? 1) - 1);
        for (const change of waiting.splice(0)) hear(change);
      }
    },
  };
}
