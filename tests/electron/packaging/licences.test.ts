import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { licencesPage, licenceTexts, type Lock, packagesUsed } from '../../../electron/packaging/licences.ts';
import { ROOT } from '../hardening/sources.ts';

const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as Lock;
const used = packagesUsed(lock);

/** Licences that let a program under MIT be given away with the package in it; all of an "or" need not. */
const FITTING = [
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'Zlib',
  'Unlicense',
  'CC0-1.0',
  'BlueOak-1.0.0',
  'EDL-1.0',
];

describe('the licences of what the program is made of', () => {
  it('are listed as the lock file has them now (`npm run licences` writes the page anew)', () => {
    // The formatter lays tables out in line; what counts is what they say.
    const plain = (text: string): string => text.replace(/[ -]+/gu, ' ').trim();
    const shown = (page: string): string => plain(readFileSync(join(ROOT, 'renderer', 'help', page), 'utf8'));
    expect(shown('licences.md')).toBe(plain(licencesPage(used)));
    expect(shown('german/licences.md')).toBe(plain(licencesPage(used, 'de')));
  });

  it('all let it be given away', () => {
    for (const { name, licence } of used) {
      const parts = licence.replace(/[()]/gu, '').split(/ AND /u);
      const fits = parts.every((part) => part.split(' OR ').some((one) => FITTING.includes(one)));
      expect([name, licence, fits]).toEqual([name, licence, true]);
    }
  });

  it('cover what the program uses directly and what that leads to, each version once', () => {
    const names = new Set(used.map(({ name }) => name));
    for (const name of [
      'preact',
      'valibot',
      'leaflet',
      '@turf/turf',
      '@turf/helpers',
      'd3-scale',
      'd3-time',
      'fontkit',
    ])
      expect([name, names.has(name)]).toEqual([name, true]);
    for (const name of ['vitest', 'typescript', 'electron', 'tsx', 'esbuild'])
      expect(names.has(name)).toBe(false);
    expect(new Set(used.map(({ folder }) => folder)).size).toBe(used.length);
  });

  it('follow packages within packages, as Node looks for them', () => {
    const small: Lock = {
      packages: {
        '': { dependencies: { a: '1', tsx: '1' } },
        'node_modules/a': { version: '1.0.0', license: 'MIT', dependencies: { b: '2', c: '1', gone: '1' } },
        'node_modules/b': { version: '1.0.0', license: 'X' },
        'node_modules/a/node_modules/b': { version: '2.0.0', license: 'ISC', dependencies: { c: '1' } },
        'node_modules/c': { version: '3.0.0' },
        'node_modules/tsx': { version: '1.0.0', license: 'MIT' },
      },
    };
    expect(
      packagesUsed(small, { c: '0BSD' }).map(({ name, version, licence }) => `${name} ${version} ${licence}`),
    ).toEqual(['a 1.0.0 MIT', 'b 2.0.0 ISC', 'c 3.0.0 0BSD']);
  });

  it('have their texts in a packed program', () => {
    const texts = licenceTexts(used, {
      names: (folder) => (existsSync(join(ROOT, folder)) ? readdirSync(join(ROOT, folder)) : []),
      text: (path) => readFileSync(join(ROOT, path), 'utf8'),
    });
    expect(texts.match(/Permission is hereby granted/gu)?.length).toBeGreaterThan(100);
    for (const { name, version } of used) expect(texts).toContain(`${name} ${version}: `);
  });
});
