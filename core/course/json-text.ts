/**
 * JSON text to a value, with the line and column of the first syntax error. `JSON.parse` decides what is valid;
 * its messages differ between engines and often carry no place, so the place is found by a scan of our own.
 */

import { type Fault, type Result, refuse, succeed } from '../result.ts';
import { told, type Told, toldFault } from '../words/told.ts';

/** Longest text that is read, in UTF-16 code units. */
export const MOST_CHARACTERS = 64_000_000;

/** Parses JSON (RFC 8259). Refuses a text over the limit and a syntax error, the latter with its line and column. */
export function readJsonText(text: string): Result<unknown, readonly Fault[]> {
  if (text.length > MOST_CHARACTERS) {
    const message = told(({ courseReading }) => courseReading.json.tooLong, {
      count: text.length,
      most: MOST_CHARACTERS,
    });
    return refuse([toldFault({ severity: 'error', code: 'file-too-large', where: 'file', message })]);
  }
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  try {
    return succeed(JSON.parse(body) as unknown);
  } catch {
    const { offset, expected } = findSyntaxFault(body) ?? {
      offset: body.length,
      expected: told(({ courseReading }) => courseReading.json.valid),
    };
    const { line, column } = lineAndColumn(body, offset);
    const found =
      offset < body.length
        ? told(({ courseReading }) => courseReading.json.stands, { what: foundAt(body, offset) })
        : told(({ courseReading }) => courseReading.json.ends);
    return refuse([
      toldFault({
        severity: 'error',
        code: 'not-json',
        where: told(({ courseReading }) => courseReading.json.where, { line, column }),
        message: told(({ courseReading }) => courseReading.json.syntax, { expected, found }),
      }),
    ]);
  }
}

/** Line and column, both counted from 1, of an offset into a text. */
export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  let line = 1;
  let lineStart = 0;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) {
    line++;
    lineStart = at + 1;
  }
  return { line, column: offset - lineStart + 1 };
}

export interface SyntaxFault {
  readonly offset: number;
  /** What should have stood at the offset. */
  readonly expected: Told;
}

type Awaited = 'value' | 'value-or-end' | 'name' | 'name-or-end' | 'colon' | 'comma-or-end' | 'nothing';

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?/y;
const WHITE = /[ \t\n\r]*/y;

/** The first place where a text stops being JSON; undefined for valid JSON. Keeps its own stack, so depth is no danger. */
export function findSyntaxFault(text: string): SyntaxFault | undefined {
  const open: ('{' | '[')[] = [];
  let awaited: Awaited = 'value';
  let at = 0;
  for (;;) {
    WHITE.lastIndex = at;
    at += WHITE.exec(text)![0].length;
    const char = text[at];
    if (awaited === 'nothing') {
      return char === undefined
        ? undefined
        : { offset: at, expected: told(({ courseReading }) => courseReading.json.endOfFile) };
    }
    const closer = open.at(-1) === '{' ? '}' : ']';
    const mayClose = awaited === 'value-or-end' || awaited === 'name-or-end' || awaited === 'comma-or-end';
    if (mayClose && open.length > 0 && char === closer) {
      open.pop();
      at++;
      awaited = open.length > 0 ? 'comma-or-end' : 'nothing';
    } else if (awaited === 'comma-or-end') {
      if (char !== ',')
        return { offset: at, expected: told(({ courseReading }) => courseReading.json.commaOr, { closer }) };
      at++;
      awaited = open.at(-1) === '{' ? 'name' : 'value';
    } else if (awaited === 'colon') {
      if (char !== ':')
        return { offset: at, expected: told(({ courseReading }) => courseReading.json.colon) };
      at++;
      awaited = 'value';
    } else if (awaited === 'name' || awaited === 'name-or-end') {
      if (char !== '"') {
        return {
          offset: at,
          expected:
            awaited === 'name'
              ? told(({ courseReading }) => courseReading.json.name)
              : told(({ courseReading }) => courseReading.json.nameOrEnd),
        };
      }
      const end = scanString(text, at);
      if (typeof end !== 'number') return end;
      at = end;
      awaited = 'colon';
    } else if (char === '{' || char === '[') {
      open.push(char);
      at++;
      awaited = char === '{' ? 'name-or-end' : 'value-or-end';
    } else {
      const end = scanScalar(text, at);
      if (typeof end !== 'number') return end;
      at = end;
      awaited = open.length > 0 ? 'comma-or-end' : 'nothing';
    }
  }
}

/** The offset after the string, number or word that starts at `at`. */
function scanScalar(text: string, at: number): number | SyntaxFault {
  if (text[at] === '"') return scanString(text, at);
  for (const word of ['true', 'false', 'null']) if (text.startsWith(word, at)) return at + word.length;
  NUMBER.lastIndex = at;
  const number = NUMBER.exec(text);
  return number === null
    ? { offset: at, expected: told(({ courseReading }) => courseReading.json.value) }
    : at + number[0].length;
}

function scanString(text: string, start: number): number | SyntaxFault {
  for (let at = start + 1; at < text.length; at++) {
    const char = text[at]!;
    if (char === '"') return at + 1;
    if (char < ' ')
      return { offset: at, expected: told(({ courseReading }) => courseReading.json.restOfText) };
    if (char !== '\\') continue;
    const escape = /^(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(text.slice(at + 1, at + 6));
    if (escape === null)
      return { offset: at, expected: told(({ courseReading }) => courseReading.json.escape) };
    at += escape[0].length;
  }
  return { offset: text.length, expected: told(({ courseReading }) => courseReading.json.closingQuote) };
}

function foundAt(text: string, offset: number): Told {
  const char = String.fromCodePoint(text.codePointAt(offset)!);
  if (char === '\n' || char === '\r') return told(({ courseReading }) => courseReading.json.lineBreak);
  return char === '"'
    ? told(({ courseReading }) => courseReading.json.quote)
    : told(({ courseReading }) => courseReading.json.character, { character: char });
}
