/** A shot table as the room reads it: bytes to text, its shape, a first mapping, the names in it. */

import { matchClubs } from '../../../core/player/csv/club-names.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { csvBlocks } from '../../../core/player/csv/rows.ts';
import { type CsvShape, MOST_CSV_CHARACTERS, sniffCsv } from '../../../core/player/csv/sniff.ts';
import { findSource } from '../../../core/player/csv/sources.ts';
import { suggestMapping } from '../../../core/player/csv/suggest.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import { type Fault, refuse, type Result, succeed } from '../../../core/result.ts';
import { told, type Told, toldFault } from '../../../core/words/told.ts';

/** Bytes of a file that are looked at: twice the characters, since UTF-16 takes two each. */
export const MOST_TABLE_BYTES = 2 * MOST_CSV_CHARACTERS;
/** Different names of clubs that are shown. */
const MOST_NAMES = 60;
/** So much of a table is looked through for them; a name that comes up later is told when its row is read. */
const MOST_LOOKED_THROUGH = 4_000_000;

export interface OpenTable {
  readonly shape: CsvShape;
  readonly mapping: ShotMapping;
  /** What the person should look at, in whole sentences. */
  readonly doubts: readonly Told[];
  /** Name of the remembered source that the mapping comes from; null where it is a guess. */
  readonly knownAs: string | null;
}

/** UTF-8, UTF-16 by its byte order mark, else the usual single-byte encoding of western spreadsheets. */
export function textOfBytes(bytes: Uint8Array): { readonly text: string; readonly doubt: Told | null } {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe)
    return { text: new TextDecoder('utf-16le').decode(bytes), doubt: null };
  if (first === 0xfe && second === 0xff)
    return { text: new TextDecoder('utf-16be').decode(bytes), doubt: null };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), doubt: null };
  } catch {
    return {
      text: new TextDecoder('windows-1252').decode(bytes),
      doubt: told(({ faults }) => faults.table.notUtf8),
    };
  }
}

/** The table's shape with the mapping that the player's file remembers for it, else a guess. */
export function openTable(text: string, document: PlayerDocument): Result<OpenTable, Fault> {
  const shape = sniffCsv(text);
  if (!shape.ok) return shape;
  const known = findSource(document, shape.value);
  if (known !== undefined)
    return succeed({ shape: shape.value, mapping: known.mapping, doubts: [], knownAs: known.name });
  const { mapping, doubts } = suggestMapping(shape.value, document.bag);
  return succeed({ shape: shape.value, mapping, doubts, knownAs: null });
}

export function tooManyBytes(name: string, bytes: number): Fault {
  return toldFault({
    severity: 'error',
    code: 'csv-too-long',
    where: name,
    message: told(({ faults }) => faults.table.megabytes, {
      size: Math.round(bytes / 1e6),
      most: Math.round(MOST_TABLE_BYTES / 1e6),
    }),
  });
}

/** The different texts in a column below the names, in the order of appearance, sixty at most. */
export function textsInColumn(text: string, mapping: ShotMapping, column: number): readonly string[] {
  const found = new Set<string>();
  let skip = mapping.skipRows;
  for (const block of csvBlocks(text, mapping.delimiter)) {
    for (const { cells, broken } of block.rows) {
      if (skip-- > 0 || broken !== undefined) continue;
      const cell = (cells[column] ?? '').trim();
      if (cell === '' || cell.length > 60) continue;
      found.add(cell);
      if (found.size >= MOST_NAMES) return [...found];
    }
    if (block.done > MOST_LOOKED_THROUGH) break;
  }
  return [...found];
}

/** Names of clubs in the table that the mapping does not lead to a club of the bag. */
export function unknownNames(
  names: readonly string[],
  mapping: ShotMapping,
  document: PlayerDocument,
): readonly string[] {
  const matched = matchClubs(names, document.bag);
  const inBag = new Set(document.bag.map(({ name }) => name));
  return names.filter((name) => {
    const said = mapping.clubNames;
    const meant = said !== undefined && Object.hasOwn(said, name) ? said[name] : undefined;
    return !(meant !== undefined && inBag.has(meant)) && matched[name] === undefined;
  });
}

export function emptyTable(): Result<never, Fault> {
  return refuse(
    toldFault({
      severity: 'error',
      code: 'table-gone',
      where: 'table',
      message: told(({ faults }) => faults.table.gone),
    }),
  );
}
