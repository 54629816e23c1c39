/**
 * A file whose content is the list of changes made to it: each change has a number, the file holds the
 * numbers it includes, a journal entry holds one. So what a crash lost or doubled can be counted.
 */

import type { Host, HostAnswer, Journal } from '../../../electron/contract/host.ts';
import { valueOf } from './answers.ts';

/** The methods that the work needs, of a host or straight of the store. */
export type Desk = Pick<Host, 'open' | 'claim' | 'save' | 'journal' | 'readJournal' | 'clearJournal'>;

export function textWith(changes: readonly number[]): string {
  return JSON.stringify({ type: 'FeatureCollection', features: [], changes });
}

function changesIn(text: string): number[] {
  return (JSON.parse(text) as { changes: number[] }).changes;
}

/** Claims the file, waiting for a claim left behind by a crash to lapse. */
export async function claimSoon(desk: Desk, token: string, tries = 200): Promise<void> {
  for (let count = 0; count < tries; count++) {
    const { isHeld } = valueOf(await desk.claim(token));
    if (isHeld) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('the claim never came free');
}

export interface Recovered {
  readonly changes: readonly number[];
  readonly inFile: number;
  readonly revision: string;
  readonly journals: readonly Journal[];
}

/** What a window that opens the file now can have back: the file, and the journal's entries on top. */
export async function recover(desk: Desk, token: string): Promise<Recovered> {
  const { text, revision } = valueOf(await desk.open(token));
  const journals = valueOf(await desk.readJournal(token));
  const inFile = changesIn(text);
  const entries = journals.flatMap((journal) => journal.entries.map((entry) => Number(entry.text)));
  return { changes: [...inFile, ...entries], inFile: inFile.length, revision, journals };
}

/**
 * Makes changes until `most` are made, or for ever: each is journalled, and now and then the file is saved and
 * the journal cleared. `say` hears of every acknowledged change, `saidSaved` of every acknowledged save. Stops at the
 * first refusal and returns it.
 */
export async function makeChanges(
  desk: Desk,
  token: string,
  begin: Recovered,
  most: number,
  isSaved: (change: number) => boolean,
  say: (change: number) => void,
  saidSaved: (change: number) => void = () => undefined,
): Promise<HostAnswer<unknown> | null> {
  const changes = [...begin.changes];
  let { revision } = begin;
  for (let change = Math.max(0, ...changes) + 1; change <= most; change++) {
    const written = await desk.journal({ token, baseRevision: revision, text: String(change) });
    if (!written.ok) return written;
    changes.push(change);
    say(change);
    if (!isSaved(change)) continue;
    const { number, journal } = written.value;
    const saved = await desk.save({
      token,
      text: textWith(changes),
      baseRevision: revision,
      journalUpTo: number,
    });
    if (!saved.ok) return saved;
    saidSaved(change);
    ({ revision } = saved.value);
    const cleared = await desk.clearJournal({ token, journal, upTo: number });
    if (!cleared.ok) return cleared;
  }
  return null;
}

/** After a recovery: everything goes into the file, and the journals of before are cleared. */
export async function settle(desk: Desk, token: string, found: Recovered): Promise<Recovered> {
  const saved = valueOf(
    await desk.save({ token, text: textWith(found.changes), baseRevision: found.revision }),
  );
  for (const { journal } of found.journals)
    valueOf(await desk.clearJournal({ token, journal, upTo: Number.MAX_SAFE_INTEGER }));
  return { changes: found.changes, inFile: found.changes.length, revision: saved.revision, journals: [] };
}
