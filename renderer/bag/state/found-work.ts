/** Unsaved work of earlier sittings at a player: found when the file is taken, taken up or dropped by the person, one by one. */

import * as v from 'valibot';
import { type PlayerDocument, PlayerDocumentSchema } from '../../../core/player/format.ts';
import type { Words } from '../../../core/words/words.ts';
import type { Host, HostAnswer } from '../../../electron/contract/host.ts';
import { clearAnswered, earlierWork } from '../../host/earlier-work.ts';
import type { BagStore } from './bag-desk.ts';
import type { Found } from './bag-state.ts';
import type { JournalKeeper } from './journal-keeper.ts';

export interface Finding {
  readonly store: BagStore;
  readonly host: Pick<Host, 'clearJournal'>;
  readonly journal: Pick<JournalKeeper, 'isWritten'>;
  readonly words: () => Words;
}

/** Unsaved work at the file, newest first. `revision` is the file's on disk. */
export async function findUnsaved(
  host: Pick<Host, 'readJournal'>,
  token: string,
  revision: string,
): Promise<HostAnswer<readonly Found[]>> {
  const answer = await earlierWork(host, token, readEntry);
  if (!answer.ok) return answer;
  const value = answer.value.map((work) => ({ ...work, isOlder: work.baseRevision !== revision }));
  return { ok: true, value };
}

/** The player as a journal's entry has it, null where it is none. */
export function readEntry(text: string): PlayerDocument | null {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return null;
  }
  return v.is(PlayerDocumentSchema, json) ? json : null;
}

/** Becomes a step that undo takes back; offered further until this sitting's own journal has it on the disk. */
export async function takeFound(finding: Finding, found: Found): Promise<void> {
  const { store, journal, words } = finding;
  const token = store.state().file?.entry.token;
  // Taken up before, when the disk did not take it: no second step.
  if (store.state().file?.history.present !== found.document)
    store.dispatch({
      type: 'edited',
      document: found.document,
      label: words().player.file.takeUpStep,
      mark: null,
    });
  const isSafe = await journal.isWritten(found.document);
  if (isSafe && store.state().file?.entry.token === token) await dropFound(finding, found);
}

export async function dropFound({ store, host }: Finding, found: Found): Promise<void> {
  const token = store.state().file?.entry.token;
  if (token === undefined) return;
  const why = await clearAnswered(host, token, found);
  if (store.state().file?.entry.token !== token) return;
  if (why === null) store.dispatch({ type: 'found-answered', journal: found.journal });
  else store.dispatch({ type: 'refused', message: why });
}
