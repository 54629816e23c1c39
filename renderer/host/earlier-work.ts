/**
 * Work of earlier sittings that a file's journals hold and the file does not, for rooms that write the whole document
 * down each time. Each journal is offered and answered by itself, and none is cleared before its work is safe elsewhere.
 */

import type { Host, HostAnswer, Journal } from '../../electron/contract/host.ts';

export interface EarlierWork<D> {
  /** Names the journal, and its last entry: what to clear once the person has answered. */
  readonly journal: string;
  readonly upTo: number;
  /** Milliseconds since 1970. */
  readonly writtenAt: number;
  /** Of the file that the work builds on. */
  readonly baseRevision: string;
  readonly document: D;
}

/**
 * What each earlier sitting ended with, newest first. Journals that `read` can make nothing of (it gives null) are left out
 * and stay on the disk.
 */
export async function earlierWork<D>(
  host: Pick<Host, 'readJournal'>,
  token: string,
  read: (text: string) => D | null,
): Promise<HostAnswer<readonly EarlierWork<D>[]>> {
  const answer = await host.readJournal(token);
  if (!answer.ok) return answer;
  const found = answer.value.flatMap((journal) => (journal.isOwn ? [] : (lastOf(journal, read) ?? [])));
  return { ok: true, value: found.sort((a, b) => b.writtenAt - a.writtenAt) };
}

/** The last entry that can be read; a damaged one after it is cleared with it. */
function lastOf<D>({ journal, entries }: Journal, read: (text: string) => D | null): EarlierWork<D> | null {
  for (const { text, writtenAt, baseRevision } of [...entries].reverse()) {
    const document = read(text);
    if (document !== null)
      return { journal, upTo: entries.at(-1)!.number, writtenAt, baseRevision, document };
  }
  return null;
}

/** Clears the one journal that was answered; null where it is gone, else why it stays. */
export async function clearAnswered(
  host: Pick<Host, 'clearJournal'>,
  token: string,
  { journal, upTo }: Pick<EarlierWork<unknown>, 'journal' | 'upTo'>,
): Promise<string | null> {
  const answer = await host.clearJournal({ token, journal, upTo });
  return answer.ok ? null : answer.message;
}
