/**
 * Shots from a table by a mapping. Every row ends in exactly one place: accepted, rejected with a reason that can be
 * mended, or noticed as a duplicate. Reads block by block, so a large file can be shown with its progress and stopped.
 */

import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import { type BagClub, MOST_SHOTS, type RecordedShot } from '../format.ts';
import { DuplicateWatch } from './duplicates.ts';
import { ruleOf, type ShotMapping } from './mapping.ts';
import { RowReader, type RowFault } from './read-row.ts';
import { csvBlocks } from './rows.ts';
import { MOST_CSV_CHARACTERS } from './sniff.ts';
import { told, type Told, toldFault } from '../../words/told.ts';

export interface AcceptedRow {
  /** Line of the file, counted from 1. */
  readonly line: number;
  readonly shot: RecordedShot;
}

export interface RejectedRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** Which cell is at fault, counted from 0; absent where it is the row as a whole. */
  readonly column?: number;
  readonly code: RowFault['code'];
  /** What is wrong and what to do, one or two short sentences. */
  readonly message: Told;
}

export interface DuplicateRow extends AcceptedRow {
  /** The line that it repeats; absent where the shot is in the player file already. */
  readonly ofLine?: number;
}

export interface ShotTable {
  readonly accepted: readonly AcceptedRow[];
  readonly rejected: readonly RejectedRow[];
  /** Rejected rows beyond `MOST_REJECTED`, which are counted and not kept. */
  readonly furtherRejected: number;
  readonly duplicates: readonly DuplicateRow[];
  /** Rows of shots that were read. */
  readonly rows: number;
  /** Why reading ended before the end of the file; absent where it did not. */
  readonly endedEarly?: Told;
}

export interface ReadSettings {
  /** Names that are not in the bag are rejected; without a bag every name is taken. */
  readonly bag?: readonly BagClub[];
  /** Shots that the player has already. */
  readonly existing?: readonly RecordedShot[];
}

export interface ReadProgress {
  readonly done: number;
  readonly total: number;
}

/** No more rows of one file are looked at. */
export const MOST_CSV_ROWS = 200_000;
/** Rejected rows that are kept for mending. */
export const MOST_REJECTED = 1000;

/** Reads all at once; see `readShotsInSteps`. */
export function readShots(
  text: string,
  mapping: ShotMapping,
  settings: ReadSettings = {},
): Result<ShotTable, Fault> {
  const steps = readShotsInSteps(text, mapping, settings);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** Each `next()` reads a block of some hundred rows. Refuses a mapping that lacks what a shot needs. */
export function* readShotsInSteps(
  text: string,
  mapping: ShotMapping,
  settings: ReadSettings = {},
): Generator<ReadProgress, Result<ShotTable, Fault>> {
  const problem = mappingFault(text, mapping);
  if (problem !== undefined) return refuse(problem);
  const reader = new RowReader(mapping, settings.bag);
  const room = MOST_SHOTS - (settings.existing?.length ?? 0);
  const watch = new DuplicateWatch(settings.existing ?? []);
  const accepted: AcceptedRow[] = [];
  const rejected: RejectedRow[] = [];
  const duplicates: DuplicateRow[] = [];
  let furtherRejected = 0;
  let rows = -mapping.skipRows;
  let endedEarly: Told | undefined;
  reading: for (const block of csvBlocks(text, mapping.delimiter)) {
    for (const row of block.rows) {
      rows++;
      if (rows <= 0) continue;
      if (rows > MOST_CSV_ROWS) {
        rows = MOST_CSV_ROWS;
        endedEarly = told(({ faults }) => faults.table.firstOnly, { most: MOST_CSV_ROWS, line: row.line });
        break reading;
      }
      const read = reader.read(row);
      if (!read.ok) {
        if (rejected.length < MOST_REJECTED)
          rejected.push({ line: row.line, cells: row.cells, ...read.error });
        else furtherRejected++;
        continue;
      }
      const repeats = watch.check(read.value, row.line, row.cells);
      if (repeats !== null) {
        duplicates.push({ line: row.line, shot: read.value, ...(repeats > 0 ? { ofLine: repeats } : {}) });
        continue;
      }
      if (accepted.length >= room) {
        rows--;
        endedEarly = told(({ faults }) => faults.table.noRoom, { most: MOST_SHOTS, line: row.line });
        break reading;
      }
      accepted.push({ line: row.line, shot: read.value });
    }
    yield { done: block.done, total: text.length };
  }
  return succeed({
    accepted,
    rejected,
    furtherRejected,
    duplicates,
    rows: Math.max(0, rows),
    ...(endedEarly === undefined ? {} : { endedEarly }),
  });
}

function mappingFault(text: string, mapping: ShotMapping): Fault | undefined {
  const fault = (code: string, message: Told): Fault =>
    toldFault({ severity: 'error', code, where: 'mapping', message });
  if (text.length > MOST_CSV_CHARACTERS)
    return fault(
      'csv-too-long',
      told(({ faults }) => faults.table.fileTooLong, { count: text.length, most: MOST_CSV_CHARACTERS }),
    );
  if (ruleOf(mapping, 'carry') === undefined)
    return fault(
      'mapping-without-carry',
      told(({ faults }) => faults.table.noCarryColumn),
    );
  if (ruleOf(mapping, 'offline') === undefined && ruleOf(mapping, 'direction') === undefined)
    return fault(
      'mapping-without-direction',
      told(({ faults }) => faults.table.noSideColumn),
    );
  if (ruleOf(mapping, 'club') === undefined && mapping.club === undefined)
    return fault(
      'mapping-without-club',
      told(({ faults }) => faults.table.noClubColumn),
    );
  return undefined;
}
