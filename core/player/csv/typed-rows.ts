/** Shots typed into a grid or pasted from a spreadsheet: a fixed set of columns, an empty cell repeating the one above. */

import { type Result, refuse, succeed } from '../../result.ts';
import type { BagClub, RecordedShot } from '../format.ts';
import type { ShotMapping } from './mapping.ts';
import { RowReader } from './read-row.ts';
import { csvBlocks } from './rows.ts';
import { told, type Told } from '../../words/told.ts';

export const TYPED_COLUMNS = [
  'club',
  'swing',
  'carry',
  'offline',
  'total',
  'intended',
  'lie',
  'date',
] as const;
export type TypedColumn = (typeof TYPED_COLUMNS)[number];
/** Columns in which an empty cell stands for what is above it. */
export const REPEATED: ReadonlySet<TypedColumn> = new Set(['club', 'swing', 'lie', 'date']);

/** `pace` takes lengths as paces of `paceM` metres. */
export type TypedUnit = 'm' | 'yd' | 'pace';

export interface TypedFault {
  readonly row: number;
  readonly column: number | null;
  readonly message: Told;
}

export interface TypedShots {
  readonly shots: readonly { readonly row: number; readonly shot: RecordedShot }[];
  readonly faults: readonly TypedFault[];
}

function mappingOf(unit: TypedUnit): ShotMapping {
  const lengthUnit = unit === 'yd' ? 'yd' : 'm';
  return {
    delimiter: '\t',
    decimal: '.',
    skipRows: 0,
    dates: 'day-first',
    columns: TYPED_COLUMNS.map((field, index) => ({
      index,
      header: field,
      field,
      ...(['carry', 'offline', 'total', 'intended'].includes(field) ? { unit: lengthUnit } : {}),
      ...(field === 'offline' ? { positive: 'right' as const } : {}),
    })),
  };
}

/** Rows without anything but repeated cells are passed over. */
export function readTypedRows(
  rows: readonly (readonly string[])[],
  bag: readonly BagClub[],
  unit: TypedUnit,
  paceM = 1,
): TypedShots {
  const reader = new RowReader(mappingOf(unit), bag);
  const shots: { row: number; shot: RecordedShot }[] = [];
  const faults: TypedFault[] = [];
  filledRows(rows).forEach((cells, row) => {
    if (isIdle(rows[row]!)) return;
    const read = reader.read({ cells: cells.map(withPoint) });
    if (!read.ok) {
      faults.push({ row, column: read.error.column ?? null, message: read.error.message });
      return;
    }
    const shot = unit === 'pace' ? inPaces(read.value, paceM) : succeed(read.value);
    if (shot.ok) shots.push({ row, shot: shot.value });
    else faults.push({ row, column: TYPED_COLUMNS.indexOf('carry'), message: shot.error });
  });
  return { shots, faults };
}

/** The rows with swings and lies as files have them, where they stand there in the words of the window. */
export function asInFiles(
  rows: readonly (readonly string[])[],
  said: Readonly<Record<'swing' | 'lie', readonly (readonly [inFile: string, words: string])[]>>,
): readonly (readonly string[])[] {
  return rows.map((cells) =>
    cells.map((cell, i) => {
      const column = TYPED_COLUMNS[i];
      if (column !== 'swing' && column !== 'lie') return cell;
      const written = cell.trim().toLowerCase();
      return said[column].find(([, words]) => words.toLowerCase() === written)?.[0] ?? cell;
    }),
  );
}

/** The rows with repeated cells filled in from above. */
export function filledRows(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const above: string[] = TYPED_COLUMNS.map(() => '');
  return rows.map((cells) =>
    TYPED_COLUMNS.map((column, i) => {
      const own = (cells[i] ?? '').trim();
      if (!REPEATED.has(column)) return own;
      if (own !== '') above[i] = own;
      return above[i]!;
    }),
  );
}

/** True for a row in which no reading is typed. */
export function isIdle(cells: readonly string[]): boolean {
  return TYPED_COLUMNS.every((column, i) => REPEATED.has(column) || (cells[i] ?? '').trim() === '');
}

/** Text copied from a spreadsheet as rows of cells; a single cell is one row of one. */
export function pastedCells(text: string): readonly (readonly string[])[] {
  const rows: (readonly string[])[] = [];
  for (const block of csvBlocks(text, '\t')) for (const { cells } of block.rows) rows.push(cells);
  return rows;
}

/** A lone decimal comma is meant as a point: no shot carries a thousand of anything. */
function withPoint(cell: string): string {
  return /^[^\d,]*\d+,\d{1,2}[^\d,]*$/u.test(cell) ? cell.replace(',', '.') : cell;
}

function inPaces(shot: RecordedShot, paceM: number): Result<RecordedShot, Told> {
  const metres = (paces: number): number => Math.round(paces * paceM * 100) / 100;
  const carryM = metres(shot.carryM);
  if (carryM > 500) return refuse(told(({ faults }) => faults.table.paces));
  return succeed({
    ...shot,
    carryM,
    ...(shot.offlineM === undefined ? {} : { offlineM: metres(shot.offlineM) }),
    ...(shot.totalM === undefined ? {} : { totalM: metres(shot.totalM) }),
    ...(shot.intendedM === undefined ? {} : { intendedM: metres(shot.intendedM) }),
  });
}
