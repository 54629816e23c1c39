/**
 * Tells listeners of changes to the store's files. The system's own notices say only "look again", so each
 * one, and every beat of a slow clock (network folders send none), leads to a comparison with what was seen before.
 */

import { watch as watchFolder } from 'node:fs';
import type { WireChange } from '../contract/wire.ts';
import type { FileStore, KnownFile } from './store.ts';

/** A burst of notices is one change. */
const SETTLE_MS = 100;
/** How often to look where the system sends notices, and where it does not. */
const LOOK_WITH_NOTICES_MS = 10_000;
const LOOK_WITHOUT_NOTICES_MS = 2000;

export interface ChangeWatch {
  readonly listen: (listener: (change: WireChange) => void) => () => void;
  /** Compares now; resolves when listeners have been told. */
  readonly look: () => Promise<void>;
  readonly close: () => void;
}

/** Calls `look` on the folder's notices until the returned function is called; throws where the system has none. */
export type Notices = (folder: string, look: () => void, lost: () => void) => () => void;

const systemNotices: Notices = (folder, look, lost) => {
  const watcher = watchFolder(folder, { persistent: false }, look);
  watcher.on('error', lost);
  return () => {
    watcher.close();
  };
};

export function watchStore(store: FileStore, notices: Notices = systemNotices): ChangeWatch {
  const listeners = new Set<(change: WireChange) => void>();
  let before: ReadonlyMap<string, KnownFile> | null = null;
  const revisions = new Map<string, string>();
  let looking: Promise<void> = Promise.resolve();
  let settle: NodeJS.Timeout | null = null;
  let beat: NodeJS.Timeout | null = null;
  let leave: (() => void) | null = null;

  const tell = (change: WireChange): void => {
    for (const listener of [...listeners]) listener(change);
  };

  const compare = async (): Promise<void> => {
    const answer = await store.known();
    // A folder that is away for a moment is not every file removed; saving says so if it stays away.
    if (!answer.ok) return;
    const after = new Map(answer.value.map((file) => [file.entry.token, file]));
    const earlier = before;
    before = after;
    if (earlier === null) return;
    for (const token of earlier.keys()) {
      if (!after.has(token)) {
        revisions.delete(token);
        tell({ token, change: 'removed' });
      }
    }
    for (const [token, file] of after) {
      const old = earlier.get(token);
      if (old?.stamp === file.stamp) continue;
      const revision = await store.revision(file);
      if (revision === null) continue;
      const isTouchOnly = old !== undefined && revisions.get(token) === revision;
      revisions.set(token, revision);
      if (!isTouchOnly) tell({ token, change: old === undefined ? 'added' : 'changed', revision });
    }
  };

  const look = (): Promise<void> => {
    looking = looking.then(compare, compare);
    return looking;
  };

  const lookSoon = (): void => {
    if (settle !== null) clearTimeout(settle);
    settle = setTimeout(() => void look(), SETTLE_MS);
  };

  const beatEvery = (ms: number): void => {
    if (beat !== null) clearInterval(beat);
    beat = setInterval(() => void look(), ms);
    beat.unref();
  };

  const begin = (): void => {
    try {
      leave = notices(store.workspace, lookSoon, () => {
        leave?.();
        leave = null;
        beatEvery(LOOK_WITHOUT_NOTICES_MS);
      });
      beatEvery(LOOK_WITH_NOTICES_MS);
    } catch {
      beatEvery(LOOK_WITHOUT_NOTICES_MS);
    }
    void look();
  };

  const end = (): void => {
    leave?.();
    leave = null;
    if (settle !== null) clearTimeout(settle);
    if (beat !== null) clearInterval(beat);
    settle = null;
    beat = null;
    before = null;
  };

  return {
    look,
    listen: (listener) => {
      const place = (change: WireChange): void => {
        listener(change);
      };
      if (listeners.size === 0) begin();
      listeners.add(place);
      return () => {
        if (listeners.delete(place) && listeners.size === 0) end();
      };
    },
    close: () => {
      listeners.clear();
      end();
    },
  };
}
