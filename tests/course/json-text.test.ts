import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inEnglish } from '../../core/words/told.ts';
import { findSyntaxFault, lineAndColumn, readJsonText } from '../../core/course/json-text.ts';

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('JSON text', () => {
  it.each([
    ['{"a": 1,}', 8, 'a name in double quotes'],
    ['{"a" 1}', 5, 'a colon'],
    ['[1 2]', 3, 'a comma or "]"'],
    ['{"a": 1 "b"', 8, 'a comma or "}"'],
    ['[1, 2', 5, 'a comma or "]"'],
    ['{a: 1}', 1, 'a name in double quotes or "}"'],
    ['[01]', 2, 'a comma or "]"'],
    ['["a\nb"]', 3, 'the rest of the text in quotes or a closing quote'],
    ['["\\x"]', 2, 'an escape that JSON knows'],
    ['["\\u123"]', 2, 'an escape that JSON knows'],
    ['"abc', 4, 'a closing quote'],
    ['{} {}', 3, 'the end of the file'],
    ['', 0, 'a value'],
    ['NaN', 0, 'a value'],
    [']', 0, 'a value'],
  ])('%j stops being JSON at %i', (text, offset, expected) => {
    const fault = findSyntaxFault(text);
    expect(fault?.offset).toBe(offset);
    expect(inEnglish(fault!.expected)).toBe(expected);
  });

  it('is judged as JSON.parse judges it, whatever is cut out or put in', () => {
    fc.assert(
      fc.property(
        fc.json(),
        fc.nat(),
        fc.nat(4),
        fc.constantFrom(
          '',
          '"',
          ',',
          '}',
          ']',
          '{',
          '[',
          ':',
          '\\',
          '0',
          '-',
          '.',
          'e',
          '\n',
          '\u0001',
          'true',
        ),
        (json, place, removed, added) => {
          const cut = place % (json.length + 1);
          const text = json.slice(0, cut) + added + json.slice(cut + removed);
          expect(findSyntaxFault(text) === undefined).toBe(parses(text));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it('knows every escape of RFC 8259', () => {
    expect(findSyntaxFault('["\\"\\\\\\/\\b\\f\\n\\r\\t\\u12aF"]')).toBeUndefined();
  });

  it('reads past a byte order mark, and past depth that would overflow a call stack', () => {
    expect(readJsonText('\uFEFF[1]')).toEqual({ ok: true, value: [1] });
    expect(findSyntaxFault('['.repeat(200_000))).toMatchObject({ offset: 200_000 });
  });

  it('names line and column, both from 1', () => {
    expect(lineAndColumn('ab\ncd\r\nef', 0)).toEqual({ line: 1, column: 1 });
    expect(lineAndColumn('ab\ncd\r\nef', 4)).toEqual({ line: 2, column: 2 });
    expect(lineAndColumn('ab\ncd\r\nef', 7)).toEqual({ line: 3, column: 1 });
    expect(lineAndColumn('ab\n', 2)).toEqual({ line: 1, column: 3 });
  });

  it('says what should follow and what stands there instead', () => {
    const read = readJsonText('{\n  "a": 1\n  "b": 2\n}');
    expect(read.ok ? [] : read.error).toMatchObject([{ where: 'line 3, column 3', code: 'not-json' }]);
    expect(read.ok ? '' : read.error[0]!.message).toMatch(
      /a comma or "}" should follow, but a double quote stands there/,
    );
    const short = readJsonText('{"a": [1,');
    expect(short.ok ? '' : short.error[0]!.message).toMatch(/a value should follow, but the text ends there/);
  });
});
