/**
 * The rows of a CSV text, block by block, so that a hundred megabytes neither fill the memory with cells nor stop the
 * program: a block ends at a line break outside quotation marks. A quotation mark that is never closed spoils its own
 * line only. Sources: RFC 4180 (quotation, line breaks inside quotes).
 */

// The declaration is ours, so every project that compiles this file has to be led to it.
// eslint-disable-next-line @typescript-eslint/triple-slash-reference
/// <reference path="./papaparse.d.ts" />
import Papa from 'papaparse';

export interface CsvRow {
  /** Line of the file where the row begins, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** A quotation mark is not closed, or the row is too long: the cells cannot be trusted. */
  readonly broken?: 'quote' | 'too-long';
}

export interface CsvBlock {
  readonly rows: readonly CsvRow[];
  /** Characters read so far. */
  readonly done: number;
}

/** About this many characters at a time. */
const BLOCK_CHARACTERS = 65_536;
/** A row of more characters than this is no row of shots. */
const MOST_ROW_CHARACTERS = 65_536;
/** So much of a broken row is kept for the person to see. */
const SHOWN_CHARACTERS = 200;

/** Without the byte order mark; single carriage returns end a line as well. */
export function* csvBlocks(text: string, delimiter: string): Generator<CsvBlock, void> {
  let start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  let line = 1;
  while (start < text.length) {
    const end = blockEnd(text, start);
    const block = text.slice(start, end);
    const rows = rowsOf(block, delimiter, line);
    line += countLines(block);
    start = end;
    yield { rows, done: start };
  }
}

/** After a line break that is outside quotation marks, if one comes soon; else after any line break. */
function blockEnd(text: string, start: number): number {
  const wanted = start + BLOCK_CHARACTERS;
  if (wanted >= text.length) return text.length;
  let quotes = 0;
  let at = start;
  let lastBreak = -1;
  const limit = Math.min(text.length, wanted + MOST_ROW_CHARACTERS);
  for (; at < limit; at++) {
    const code = text.charCodeAt(at);
    if (code === 34) quotes++;
    else if (code === 10 || code === 13) {
      const next = code === 13 && text.charCodeAt(at + 1) === 10 ? at + 2 : at + 1;
      lastBreak = next;
      if (at >= wanted && quotes % 2 === 0) return next;
    }
  }
  if (lastBreak > 0) return lastBreak;
  // One line longer than anything sensible: it ends where it ends.
  const rest = /\r\n|\r|\n/g;
  rest.lastIndex = limit;
  const found = rest.exec(text);
  return found === null ? text.length : found.index + found[0].length;
}

function countLines(block: string): number {
  let count = 0;
  for (let at = 0; at < block.length; at++) {
    const code = block.charCodeAt(at);
    if (code === 10 || (code === 13 && block.charCodeAt(at + 1) !== 10)) count++;
  }
  return count;
}

function rowsOf(block: string, delimiter: string, firstLine: number): CsvRow[] {
  const lines = block.split(/\r\n|\r|\n/);
  const isPlain = !block.includes('"');
  if (!isPlain) {
    const whole = parseQuoted(block, delimiter, firstLine);
    if (whole !== null) return whole;
  }
  // Line by line: without quotation marks there is nothing else, and where they do not match it is all that is sure.
  const rows: CsvRow[] = [];
  lines.forEach((text, i) => {
    if (text.trim() === '') return;
    const line = firstLine + i;
    if (text.length > MOST_ROW_CHARACTERS) {
      rows.push({ line, cells: [text.slice(0, SHOWN_CHARACTERS)], broken: 'too-long' });
      return;
    }
    const parsed = Papa.parse(text, { delimiter, newline: '\n' });
    const isBroken = parsed.errors.some((error) => error.type === 'Quotes');
    if (isBroken || parsed.data.length !== 1)
      rows.push({ line, cells: [text.slice(0, SHOWN_CHARACTERS)], broken: 'quote' });
    else rows.push({ line, cells: parsed.data[0]! });
  });
  return rows;
}

/** Rows of a block whose quotation marks match; null where they do not. */
function parseQuoted(block: string, delimiter: string, firstLine: number): CsvRow[] | null {
  const text = block.replace(/\r\n|\r/g, '\n');
  const parsed = Papa.parse(text, { delimiter, newline: '\n' });
  if (parsed.errors.some((error) => error.type === 'Quotes')) return null;
  const rows: CsvRow[] = [];
  let line = firstLine;
  for (const cells of parsed.data) {
    const length = cells.reduce((sum, cell) => sum + cell.length, 0);
    const begins = line;
    line += 1 + cells.reduce((sum, cell) => sum + countLines(cell), 0);
    if (cells.every((cell) => cell.trim() === '')) continue;
    if (length > MOST_ROW_CHARACTERS)
      rows.push({ line: begins, cells: [cells[0]!.slice(0, SHOWN_CHARACTERS)], broken: 'too-long' });
    else rows.push({ line: begins, cells });
  }
  return rows;
}
