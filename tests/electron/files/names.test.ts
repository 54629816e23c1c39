import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeName, isSafeName, kindByName, safeName, safeNameEnding } from '../../../electron/files/names.ts';

describe('safe names', () => {
  it.each([
    '',
    '.',
    '..',
    '.hidden',
    'a/b',
    'a\\b',
    'C:a',
    'a:stream',
    'a\u0000b',
    'a\nb',
    'a*',
    'a?',
    '"a"',
    '<a>',
    'a|b',
    'trailing.',
    'trailing ',
    '\ud800',
    'turned\u202eround',
    // Device names: Microsoft, "Naming Files, Paths, and Namespaces".
    'CON',
    'con.geojson',
    'PRN',
    'aux.json',
    'NUL.tar.gz',
    'COM1',
    'com9.geojson',
    'COM¹',
    'LPT1.json',
    'CONIN$',
    'conout$',
    'n'.repeat(241),
  ])('%j is not one', (name) => {
    expect(isSafeName(name)).toBe(false);
  });

  it.each([
    'a.geojson',
    'Österreich 2.player.json',
    'コース.geojson',
    'console.geojson',
    'com10.geojson',
    'a..b',
    '%2e%2e',
  ])('%j is one', (name) => {
    expect(isSafeName(name)).toBe(true);
  });

  it('come out of any suggestion whatever', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 300 }),
        fc.constantFrom('course' as const, 'player' as const, 'round' as const),
        (suggested, kind) => {
          const name = safeName(kind, suggested);
          expect(isSafeName(name)).toBe(true);
          expect(kindByName(name)).toBe(kind);
          // What is safe already stays as it is.
          expect(safeName(kind, name)).toBe(name);
        },
      ),
      { seed: 1, numRuns: 2000 },
    );
  });

  it('keep what a person wrote where they can', () => {
    expect(safeName('course', 'Elm Row')).toBe('Elm Row.geojson');
    expect(safeName('course', 'Elm Row.GeoJSON')).toBe('Elm Row.geojson');
    expect(safeName('player', 'me.json')).toBe('me.player.json');
    expect(safeNameEnding('.pdf', 'Card, hole 7', 'card')).toBe('Card, hole 7.pdf');
  });
});

describe('a free name', () => {
  it('counts up before the ending', () => {
    expect(freeName('a.geojson', [])).toBe('a.geojson');
    expect(freeName('a.geojson', ['A.geojson'])).toBe('a 2.geojson');
    expect(freeName('a.player.json', ['a.player.json', 'a 2.player.json'])).toBe('a 3.player.json');
  });

  it('takes two spellings of one letter as the same name', () => {
    expect(freeName('\u00e9.geojson', ['e\u0301.geojson'])).toBe('\u00e9 2.geojson');
  });
});
