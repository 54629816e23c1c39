/** What kind of table a text is: delimiter, decimal sign, where its names, units and first shots stand. */

import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import { type Decimal, angleUnitOf, lengthUnitOf, readNumber } from './cells.ts';
import type { ShotMapping } from './mapping.ts';
import { csvBlocks, type CsvRow } from './rows.ts';
import { told, type Told, toldFault } from '../../words/told.ts';

export interface CsvShape {
  readonly delimiter: ShotMapping['delimiter'];
  readonly decimal: Decimal;
  /** Names of the columns; invented ones (`column 3`) where the file has none. */
  readonly header: readonly string[];
  /** Units in a row of their own under the names; empty texts where there is none. */
  readonly units: readonly string[];
  /** Rows (empty ones not counted) before the first shot. */
  readonly skipRows: number;
  /** The first rows of shots. */
  readonly sample: readonly (readonly string[])[];
  /** Rows from all over the table: what a column holds may show late, as days above twelve or another swing. */
  readonly scattered: readonly (readonly string[])[];
  /** Something in the text that makes a wrong reading likely. */
  readonly warning?: Told;
}

/** No longer text is read, in UTF-16 code units. */
export const MOST_CSV_CHARACTERS = 105_000_000;
const DELIMITERS: readonly ShotMapping['delimiter'][] = [';', '\t', ',', '|'];
/** Looked at to find out the shape. */
const SNIFFED_CHARACTERS = 60_000;
const SNIFFED_ROWS = 60;
const SAMPLE_ROWS = 25;
/** So much of a text is looked through for rows from all over it, and so many are kept. */
const SCATTERED_CHARACTERS = 200_000;
const SCATTERED_ROWS = 600;
/** Names stand within so many rows; above them a device may write what it likes. */
const MOST_ROWS_ABOVE = 40;

/** Refuses what is no table: too long, empty, not text, or without two columns anywhere. */
export function sniffCsv(text: string): Result<CsvShape, Fault> {
  if (text.length > MOST_CSV_CHARACTERS) {
    return refuse(
      fault(
        'csv-too-long',
        told(({ faults }) => faults.table.holdsTooMuch, { count: text.length, most: MOST_CSV_CHARACTERS }),
      ),
    );
  }
  const head = text.slice(0, SNIFFED_CHARACTERS);
  if (isUtf16(head)) {
    return refuse(
      fault(
        'csv-utf16',
        told(({ faults }) => faults.table.utf16),
      ),
    );
  }
  const tables = DELIMITERS.map((delimiter) => ({ delimiter, rows: firstRows(head, delimiter) }));
  const best = tables.reduce((a, b) => (evenness(b.rows) > evenness(a.rows) ? b : a));
  if (evenness(best.rows) <= 0) {
    return refuse(
      fault(
        'csv-no-table',
        told(({ faults }) => faults.table.noTable),
      ),
    );
  }
  const shape = shapeOf(best.rows, best.delimiter, head);
  return succeed({ ...shape, scattered: scatteredRows(text, shape) });
}

function scatteredRows(
  text: string,
  { delimiter, skipRows }: Pick<CsvShape, 'delimiter' | 'skipRows'>,
): readonly (readonly string[])[] {
  let rows: (readonly string[])[] = [];
  let step = 1;
  let at = -skipRows;
  for (const block of csvBlocks(text.slice(0, SCATTERED_CHARACTERS), delimiter)) {
    for (const { cells, broken } of block.rows) {
      if (at++ < 0 || broken !== undefined || (at - 1) % step !== 0) continue;
      rows.push(cells);
      if (rows.length <= SCATTERED_ROWS) continue;
      // Too many: every other one stays, and from now on only every other one is taken.
      rows = rows.filter((_, i) => i % 2 === 0);
      step *= 2;
    }
  }
  return rows;
}

function fault(code: string, message: Told): Fault {
  return toldFault({ severity: 'error', code, where: 'file', message });
}

/** UTF-16 read as something else leaves a zero beside every letter; so does a file that is no text. */
function isUtf16(head: string): boolean {
  let zeros = 0;
  for (let i = 0; i < head.length; i++) if (head.charCodeAt(i) === 0) zeros++;
  return zeros > 0.02 * head.length && zeros > 2;
}

function firstRows(head: string, delimiter: string): CsvRow[] {
  const rows: CsvRow[] = [];
  for (const block of csvBlocks(head, delimiter)) {
    rows.push(...block.rows);
    if (rows.length >= SNIFFED_ROWS) break;
  }
  // The last row may be cut off.
  return rows.length > 1 && rows.length < SNIFFED_ROWS && head.length >= SNIFFED_CHARACTERS
    ? rows.slice(0, -1)
    : rows.slice(0, SNIFFED_ROWS);
}

/** How well rows hang together as a table: share of rows with the commonest width, and a little for more columns. */
function evenness(rows: readonly CsvRow[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) {
    if (cells.length > 1) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  }
  let best = 0;
  for (const [width, count] of counts) {
    // A decimal comma cuts every number in two: numbers whole in their cells speak for a delimiter.
    best = Math.max(
      best,
      (count / rows.length) * (1 + 0.02 * Math.min(10, width)) + 0.3 * wholeShare(rows, width),
    );
  }
  return best;
}

function wholeShare(rows: readonly CsvRow[], width: number): number {
  let numbers = 0;
  let cells = 0;
  for (const row of rows) {
    if (row.cells.length !== width) continue;
    for (const cell of row.cells) {
      if (cell.trim() === '') continue;
      cells++;
      if (/^\s*[-+]?\d+[.,]\d+\s*$/u.test(cell)) numbers++;
    }
  }
  return cells === 0 ? 0 : numbers / cells;
}

function shapeOf(
  rows: readonly CsvRow[],
  delimiter: ShotMapping['delimiter'],
  head: string,
): Omit<CsvShape, 'scattered'> {
  const decimal = decimalOf(rows, delimiter);
  const width = Math.max(...rows.map((row) => row.cells.length));
  const headerAt = findHeader(rows, decimal);
  const header = headerAt < 0 ? [] : rows[headerAt]!.cells;
  let next = headerAt + 1;
  let units: readonly string[] = [];
  if (headerAt >= 0 && rows[next] !== undefined && isUnitsRow(rows[next]!.cells)) {
    units = rows[next]!.cells;
    next++;
  }
  const at = (cells: readonly string[], i: number): string => (cells[i] ?? '').trim();
  return {
    delimiter,
    decimal,
    header: Array.from({ length: width }, (_, i) => at(header, i) || `column ${i + 1}`),
    units: Array.from({ length: width }, (_, i) => at(units, i)),
    skipRows: next,
    sample: rows.slice(next, next + SAMPLE_ROWS).map(({ cells }) => cells),
    ...(head.includes('\ufffd')
      ? {
          warning: told(({ faults }) => faults.table.letters),
        }
      : {}),
  };
}

/** A comma where numbers such as 12,5 outnumber those such as 12.5. */
function decimalOf(rows: readonly CsvRow[], delimiter: string): Decimal {
  if (delimiter === ',') {
    const quoted = rows
      .flatMap((row) => row.cells)
      .filter((cell) => /^[-+]?\d+,\d{1,2}\D{0,4}$/u.test(cell.trim()));
    if (quoted.length === 0) return '.';
  }
  let commas = 0;
  let points = 0;
  for (const cell of rows.flatMap((row) => row.cells)) {
    // A date is no number, and 1,234 may be either.
    if (/^\s*[^\d]{0,3}[-+]?\d+,\d+\D{0,6}$/u.test(cell) && !/,\d{3}\D*$/u.test(cell)) commas++;
    if (/^\s*[^\d]{0,3}[-+]?\d+\.\d+\D{0,6}$/u.test(cell)) points++;
  }
  return commas > points ? ',' : '.';
}

/** The last row of names before rows with numbers begin; -1 where the first row already holds numbers. */
function findHeader(rows: readonly CsvRow[], decimal: Decimal): number {
  const isNumeric = (cell: string): boolean =>
    readNumber(cell, decimal) !== null || /^[^\d]{0,3}[-+]?\d+([.,]\d+)?\D{0,6}$/u.test(cell.trim());
  const numbers = (row: CsvRow): number => row.cells.filter((cell) => isNumeric(cell)).length;
  const filled = (row: CsvRow): number => row.cells.filter((cell) => cell.trim() !== '').length;
  const most = Math.max(...rows.map((row) => row.cells.length));
  for (let i = 0; i < Math.min(rows.length, MOST_ROWS_ABOVE); i++) {
    const row = rows[i]!;
    // Names: mostly filled, hardly a number, about as wide as the table.
    if (filled(row) < 2 || filled(row) < 0.5 * most || numbers(row) > 0.2 * filled(row)) continue;
    const below = rows.slice(i + 1, i + 4);
    if (below.some((next) => numbers(next) >= 1 && next.cells.length >= 0.5 * row.cells.length)) return i;
  }
  return -1;
}

/** Nothing but units, brackets around them or not, and empty cells. */
function isUnitsRow(cells: readonly string[]): boolean {
  const words = cells.map((cell) => unitWord(cell)).filter((word) => word !== '');
  if (words.length === 0) return false;
  const known = words.filter((word) => isUnit(word)).length;
  return known >= 1 && known >= 0.6 * words.length;
}

export function unitWord(cell: string): string {
  return cell
    .trim()
    .replace(/^[[({]+|[\])}]+$/gu, '')
    .trim();
}

/** Units of length and angle, and those of columns that are not read. */
function isUnit(word: string): boolean {
  return (
    lengthUnitOf(word) !== undefined ||
    angleUnitOf(word) !== undefined ||
    /^(?:mph|kph|km\/h|m\/s|mps|rpm|1\/min|u\/min|s|sec|seconds|%|-|n\/a|text|name|date|time)$/iu.test(word)
  );
}
