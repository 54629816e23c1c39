import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedRange } from '../../../electron/loopback/byte-range.ts';

describe('a Range header', () => {
  // RFC 9110, section 14.1.2: examples for a representation of 10000 bytes.
  it.each([
    ['bytes=0-499', 0, 499],
    ['bytes=500-999', 500, 999],
    ['bytes=-500', 9500, 9999],
    ['bytes=9500-', 9500, 9999],
    ['bytes=0-0', 0, 0],
    ['bytes=-1', 9999, 9999],
  ])('%s of 10000 bytes', (header, first, last) => {
    expect(askedRange(header, 10_000)).toEqual({ kind: 'part', first, last });
  });

  it('that reaches beyond the end stops there, and one that begins there cannot be satisfied', () => {
    // RFC 9110, 14.1.2: a last position beyond the end, and a suffix longer than the whole, mean the end and the whole.
    expect(askedRange('bytes=9990-20000', 10_000)).toEqual({ kind: 'part', first: 9990, last: 9999 });
    expect(askedRange('bytes=-20000', 10_000)).toEqual({ kind: 'part', first: 0, last: 9999 });
    for (const header of ['bytes=10000-', 'bytes=10000-10001', 'bytes=-0'])
      expect(askedRange(header, 10_000)).toEqual({ kind: 'unsatisfiable' });
    expect(askedRange('bytes=0-', 0)).toEqual({ kind: 'unsatisfiable' });
  });

  it.each([
    undefined,
    '',
    'bytes',
    'bytes=',
    'bytes=-',
    'bytes=5-2',
    'lines=0-5',
    'bytes=0-1,5-9',
    'bytes=a-b',
    'bytes=0x1-5',
    'bytes=1e3-',
    'bytes=99999999999999999999-',
  ])('%j is answered with the whole', (header) => {
    expect(askedRange(header, 10_000)).toEqual({ kind: 'whole' });
  });

  it('never leaves the file', () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(), fc.nat(), fc.nat(), (odd, from, to, size) => {
        for (const header of [odd, `bytes=${odd}`, `bytes=${from}-${to}`, `bytes=-${to}`, `bytes=${from}-`]) {
          const asked = askedRange(header, size);
          if (asked.kind !== 'part') continue;
          expect(asked.first).toBeGreaterThanOrEqual(0);
          expect(asked.last).toBeGreaterThanOrEqual(asked.first);
          expect(asked.last).toBeLessThan(size);
        }
      }),
    );
  });
});
