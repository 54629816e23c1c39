/** Writes unsaved work down as it comes about, so that a crash loses a third of a second at most. */

import type { Words } from '../../../core/words/words.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import type { Host } from '../../../electron/contract/host.ts';
import type { BagStore } from './bag-desk.ts';
import { isUnsaved } from './reduce-bag.ts';

export interface JournalKeeper {
  /** Writes what is not yet written; the number of the last entry, null where there is none. */
  readonly flush: () => Promise<number | null>;
  /** Drops what this sitting wrote down so far: the same is safe in a file. */
  readonly clearOwn: () => Promise<void>;
  /** What is on disk is what the room has as saved: only what came after that is owed. */
  readonly settle: () => void;
  /** Writes what is not yet written; true where the disk has acknowledged this content. */
  readonly isWritten: (document: PlayerDocument) => Promise<boolean>;
}

const WAIT_MS = 300;

export function keepJournal(store: BagStore, host: Host, words: () => Words): JournalKeeper {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let written: PlayerDocument | null = null;
  let last: { readonly token: string; readonly journal: string; readonly number: number } | null = null;
  let chain: Promise<void> = Promise.resolve();
  const acknowledged = new WeakSet<PlayerDocument>();

  const clearOwn = async (): Promise<void> => {
    if (last !== null)
      await host.clearJournal({ token: last.token, journal: last.journal, upTo: last.number });
  };

  const write = async (): Promise<void> => {
    const { file } = store.state();
    if (file === null || file.access.may !== 'write') return;
    const { present } = file.history;
    if (present === written) return;
    if (!isUnsaved(file)) {
      // Undone back to what is saved: there is nothing left to bring back.
      if (last?.token === file.entry.token) await clearOwn();
      written = present;
      last = null;
      return;
    }
    const answer = await host.journal({
      token: file.entry.token,
      baseRevision: file.revision,
      text: JSON.stringify(present),
    });
    if (answer.ok) {
      written = present;
      acknowledged.add(present);
      last = { token: file.entry.token, ...answer.value };
    } else
      store.dispatch({
        type: 'refused',
        message: words().player.file.notWritten({ message: answer.message }),
      });
  };

  const flush = async (): Promise<number | null> => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    chain = chain.then(write, write);
    await chain;
    return last?.token === store.state().file?.entry.token ? (last?.number ?? null) : null;
  };

  const owe = (): void => {
    const { file } = store.state();
    if (file === null || file.history.present === written || timer !== null) return;
    if (written === null && !isUnsaved(file)) return;
    timer = setTimeout(() => void flush(), WAIT_MS);
  };
  store.subscribe(owe);
  const now = (): void => {
    if (timer !== null) void flush();
  };
  window.addEventListener('blur', now);
  window.addEventListener('pagehide', now);
  document.addEventListener('visibilitychange', now);

  return {
    flush,
    clearOwn,
    settle: () => {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      written = store.state().file?.saved ?? null;
      last = null;
      owe();
    },
    isWritten: async (document) => {
      await flush();
      return acknowledged.has(document);
    },
  };
}
