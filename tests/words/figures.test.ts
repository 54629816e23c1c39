import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../core/words/figures.ts';
import { languageOf, unitsOfRegion } from '../../core/words/language.ts';

const english = figuresOf('en');
const german = figuresOf('de');
/** The narrow gap reads as a plain one here. */
const plain = (text: string): string => text.replaceAll('\u202f', ' ');

describe('numbers', () => {
  // Decimal sign: ISO 80000-1 allows both; the comma is German usage by DIN 1333 (both from memory).
  it('have the decimal sign of their language', () => {
    expect(english.fixed(4.125, 2)).toBe('4.13');
    expect(german.fixed(4.125, 2)).toBe('4,13');
    expect(german.short(2.5, 1)).toBe('2,5');
    expect(german.short(3, 1)).toBe('3');
  });

  // Groups of three apart by a thin gap, neither dot nor comma: ISO 80000-1, 7.3.1 (from memory).
  it('have a narrow gap between thousands in both', () => {
    expect(plain(english.whole(6412))).toBe('6 412');
    expect(plain(german.whole(1234567))).toBe('1 234 567');
    expect(german.whole(999)).toBe('999');
  });

  it('have a true minus sign', () => {
    expect(german.fixed(-0.5, 1)).toBe('−0,5');
    expect(english.fixed(-12, 0)).toBe('−12');
  });
});

describe('plurals', () => {
  // Unicode CLDR, language plural rules: in both, `one` is for 1 without decimals (from memory).
  it('have one for one only', () => {
    const forms = { one: 'Loch', other: 'Löcher' };
    expect([0, 1, 2, 11, 101].map((count) => german.plural(count, forms))).toEqual([
      ...['Löcher', 'Loch', 'Löcher', 'Löcher', 'Löcher'],
    ]);
    expect(english.counted(1, { one: 'hole', other: 'holes' })).toBe('1 hole');
    expect(plain(german.counted(1500, forms))).toBe('1 500 Löcher');
  });
});

describe('lists and dates', () => {
  it('are written out', () => {
    expect(english.list(['a', 'b', 'c'])).toBe('a, b and c');
    expect(german.list(['a', 'b', 'c'])).toBe('a, b und c');
    expect(german.choice(['a', 'b'])).toBe('a oder b');
    expect(english.date('2026-05-09')).toBe('9 May 2026');
    expect(german.date('2026-05-09')).toBe('9. Mai 2026');
    expect(german.date('some day')).toBe('some day');
  });
});

describe('language and units', () => {
  it('are the first wished ones that there are', () => {
    expect(languageOf(['fr-FR', 'de-CH', 'en'])).toBe('de');
    expect(languageOf(['EN-us'])).toBe('en');
    expect(languageOf(['fr'])).toBe('en');
    expect(languageOf([])).toBe('en');
  });

  // Yards in North America and the British Isles, metres on the Continent: common practice, no source.
  it('follow the region', () => {
    expect(unitsOfRegion('en-US')).toBe('yards');
    expect(unitsOfRegion('en-GB')).toBe('yards');
    expect(unitsOfRegion('en')).toBe('yards');
    expect(unitsOfRegion('de')).toBe('metres');
    expect(unitsOfRegion('de-AT')).toBe('metres');
    expect(unitsOfRegion('en-AU')).toBe('metres');
    expect(unitsOfRegion('no tag at all')).toBe('yards');
  });
});

describe('a moment', () => {
  const ms = new Date(2026, 4, 9, 14, 5, 7).getTime();

  it('is written as the language does, on a clock of 24 hours in both', () => {
    expect(english.moment(ms, 'clock')).toBe('14:05');
    expect(german.moment(ms, 'clock')).toBe('14:05');
    expect(english.moment(ms, 'day')).toBe('9 May 2026, 14:05');
    expect(german.moment(ms, 'day')).toBe('09.05.2026, 14:05');
    expect(german.moment(ms, 'second')).toBe('09.05.2026, 14:05:07');
  });
});
