/**
 * Work in journals whose file is gone: offered when the window opens, since no file would offer it. It stays on the disk until
 * the person has answered and, where it is kept, until the new file has it.
 */

import type { Host, LeftBehind, OpenedFile } from '../../../electron/contract/host.ts';
import { clearAnswered } from '../../host/earlier-work.ts';
import type { LeftBehindNotice } from '../app-state.ts';
import type { Store } from '../store.ts';
import { workIn } from './left-behind-work.ts';

type LeftHost = Pick<Host, 'leftBehind' | 'claim' | 'release' | 'readJournal' | 'clearJournal' | 'create'>;

/** Never rejects; what another program has or cannot be read is offered another time. */
export async function offerLeftBehind(store: Store, host: LeftHost): Promise<void> {
  const left = await host.leftBehind();
  if (!left.ok) return;
  for (const file of left.value) {
    const claim = await host.claim(file.token);
    if (!claim.ok || !claim.value.isHeld) continue;
    if (!(await offerWorkOn(store, host, file))) await host.release(file.token);
  }
}

/** Whether there is any. */
async function offerWorkOn(store: Store, host: LeftHost, { token, name }: LeftBehind): Promise<boolean> {
  const journals = await host.readJournal(token);
  if (!journals.ok) return false;
  let isOffered = false;
  for (const journal of journals.value) {
    const last = journal.entries.at(-1);
    const work = journal.isOwn || journal.isNewer || last === undefined ? null : workIn(journal);
    if (work === null || last === undefined) continue;
    const { number: upTo, writtenAt } = last;
    store.dispatch({
      type: 'left-behind-found',
      found: { token, name, journal: journal.journal, upTo, writtenAt, ...work },
    });
    isOffered = true;
  }
  return isOffered;
}

/** Makes a file of the work, named as the one that is gone where that is free; a text where it could not be made. */
export async function keepLeftBehind(
  store: Store,
  host: LeftHost,
  notice: LeftBehindNotice,
): Promise<OpenedFile | string> {
  const made = await host.create(notice.fileKind, notice.name, notice.text);
  if (!made.ok) return made.message;
  await clearAnswered(host, notice.token, notice);
  if (made.value.entry.token !== notice.token) {
    await dismiss(store, host, notice);
    return made.value;
  }
  // The file is there again: whatever else was left of it is offered as it is opened.
  for (const other of noticesOf(store, notice.token))
    store.dispatch({ type: 'notice-dismissed', id: other.id });
  await host.release(notice.token);
  return made.value;
}

/** Null where the work is gone for good, else why it is not. */
export async function giveUpLeftBehind(
  store: Store,
  host: LeftHost,
  notice: LeftBehindNotice,
): Promise<string | null> {
  const why = await clearAnswered(host, notice.token, notice);
  if (why === null) await dismiss(store, host, notice);
  return why;
}

async function dismiss(store: Store, host: LeftHost, notice: LeftBehindNotice): Promise<void> {
  store.dispatch({ type: 'notice-dismissed', id: notice.id });
  if (noticesOf(store, notice.token).length === 0) await host.release(notice.token);
}

function noticesOf(store: Store, token: string): readonly LeftBehindNotice[] {
  return store
    .state()
    .notices.filter((notice) => notice.kind === 'left-behind')
    .filter((notice) => notice.token === token);
}
