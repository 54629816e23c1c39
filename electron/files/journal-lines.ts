/**
 * The text of a journal file. Each line is a record with its own checksum and length, so that a line cut off
 * by a crash, or damaged, is recognised and the others still count:
 *
 *     <SHA-256 of the JSON, hex> <bytes of the JSON> <JSON>\n
 *
 * The first record is the head; then come entries, and marks set just before a file is saved. A mark with the
 * revision that is on disk says which entries that file includes, also where the crash came between the save
 * and the clearing of the journal.
 */

import { createHash } from 'node:crypto';
import * as v from 'valibot';
import type { JournalEntry } from '../contract/host.ts';

const FORMAT = 'holewright-journal';
const VERSION = 1;

const headSchema = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  session: v.string(),
  startedAt: v.number(),
});
const newerSchema = v.object({
  format: v.literal(FORMAT),
  version: v.pipe(v.number(), v.gtValue(VERSION)),
});
const entrySchema = v.object({ number: v.number(), at: v.number(), base: v.string(), text: v.string() });
const markSchema = v.object({ saves: v.string(), upTo: v.number() });

export type Head = Pick<v.InferOutput<typeof headSchema>, 'session' | 'startedAt'>;
export type Mark = v.InferOutput<typeof markSchema>;
export type JournalLine =
  | { readonly kind: 'entry'; readonly entry: JournalEntry }
  | { readonly kind: 'mark'; readonly mark: Mark };

export interface ReadLines {
  readonly head: Head | null;
  readonly lines: readonly JournalLine[];
  readonly lostBytes: number;
  /** The head names a newer version; nothing else was read. */
  readonly isNewer: boolean;
}

function line(record: object): Uint8Array {
  // JSON escapes line ends within texts, so a line end always ends a record.
  const json = Buffer.from(JSON.stringify(record));
  return Buffer.concat([Buffer.from(`${sumOf(json)} ${json.byteLength} `), json, Buffer.from('\n')]);
}

function sumOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

export function headLine({ session, startedAt }: Head): Uint8Array {
  return line({ format: FORMAT, version: VERSION, session, startedAt });
}

export function entryLine({ number, writtenAt, baseRevision, text }: JournalEntry): Uint8Array {
  return line({ number, at: writtenAt, base: baseRevision, text });
}

export function markLine(mark: Mark): Uint8Array {
  return line(mark);
}

/** Reads whatever is whole; counts the bytes of what is not. */
export function readLines(bytes: Uint8Array): ReadLines {
  const all = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const lines: JournalLine[] = [];
  let head: Head | null = null;
  let lostBytes = 0;
  for (let from = 0; from < all.byteLength; ) {
    const end = all.indexOf(0x0a, from);
    const to = end < 0 ? all.byteLength : end;
    const record = end < 0 ? null : recordIn(all.subarray(from, to));
    const readHead = v.safeParse(headSchema, record);
    const entry = v.safeParse(entrySchema, record);
    const mark = v.safeParse(markSchema, record);
    if (readHead.success) head ??= readHead.output;
    else if (v.is(newerSchema, record)) return { head: null, lines: [], lostBytes: 0, isNewer: true };
    else if (entry.success) lines.push({ kind: 'entry', entry: asEntry(entry.output) });
    else if (mark.success) lines.push({ kind: 'mark', mark: mark.output });
    else lostBytes += to + (end < 0 ? 0 : 1) - from;
    from = to + 1;
  }
  return { head, lines, lostBytes, isNewer: false };
}

function asEntry({ number, at, base, text }: v.InferOutput<typeof entrySchema>): JournalEntry {
  return { number, writtenAt: at, baseRevision: base, text };
}

/** The record of one line, null where checksum, length or JSON are not right. */
function recordIn(text: Buffer): unknown {
  const before = /^([0-9a-f]{64}) (\d{1,10}) /u.exec(text.subarray(0, 80).toString('latin1'));
  if (before === null) return null;
  const json = text.subarray(before[0].length);
  if (json.byteLength !== Number(before[2]) || sumOf(json) !== before[1]) return null;
  try {
    return JSON.parse(json.toString('utf8')) as unknown;
  } catch {
    return null;
  }
}

/**
 * Entries of one sitting that a file of this revision does not include. A save is known to have happened
 * where its mark names the revision on disk, or where a later entry builds on it.
 */
export function unsavedEntries(
  lines: readonly JournalLine[],
  revisionOnDisk: string | null,
): readonly JournalEntry[] {
  let upTo = 0;
  const marked = new Map<string, number>();
  for (const read of lines) {
    if (read.kind === 'entry') upTo = Math.max(upTo, marked.get(read.entry.baseRevision) ?? 0);
    else {
      const { saves, upTo: includes } = read.mark;
      marked.set(saves, Math.max(includes, marked.get(saves) ?? 0));
      if (saves === revisionOnDisk) upTo = Math.max(upTo, includes);
    }
  }
  // A number comes twice where an entry failed, could not be taken back and was written again.
  const entries = new Map<number, JournalEntry>();
  for (const read of lines) if (read.kind === 'entry') entries.set(read.entry.number, read.entry);
  return [...entries.values()].filter(({ number }) => number > upTo).sort((a, b) => a.number - b.number);
}
