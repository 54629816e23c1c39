import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { looseWords } from './loose-words.ts';
import { NOT_FOR_PEOPLE } from './not-for-people.ts';

const ROOT = join(import.meta.dirname, '../..');

function sourcesOf(folder: string): readonly string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'))
    .map((name) => `${folder}/${name}`)
    .sort();
}

describe('words for people', () => {
  it('are found where they stand in the source', () => {
    const source = `
      const a = <p title="Way out">Two shots {x ? 'Saved as' : ''}</p>;
      const b = \`try \${club} on hole \${hole}\`;
      const c = { kind: 'swing-of-club', path: 'M1 2L3 4', class: 'hole-list' };
      throw new Error('A promise of the code was broken.');`;
    expect(looseWords('a.tsx', source).map(({ text }) => text)).toEqual([
      ...['Way out', 'Two shots', 'Saved as', '`try ${club} on hole ${hole}`'],
    ]);
  });

  it('have numbers and dates written by the catalogue, which knows the language', () => {
    const others = ['renderer', 'core'].flatMap(sourcesOf).filter((path) => {
      const writes = /\.toLocale(?:Date|Time)?String\(|\bIntl\.\w+Format\b/u;
      return !path.startsWith('core/words/') && writes.test(readFileSync(join(ROOT, path), 'utf8'));
    });
    expect(others).toEqual([]);
  });

  it('come from the catalogue, but in files that only machines or commands read', () => {
    const loose = ['renderer', 'core', 'electron'].flatMap(sourcesOf).flatMap((path) => {
      if (path.startsWith('core/words/') || NOT_FOR_PEOPLE.some((part) => path.startsWith(part))) return [];
      return looseWords(path, readFileSync(join(ROOT, path), 'utf8'))
        .filter(({ text }) => !TECHNICAL.includes(text))
        .map(({ line, text }) => `${path}:${line}: ${text}`);
    });
    expect(loose).toEqual([]);
  });
});

/** Texts that read like prose and are none, or are a name. */
const TECHNICAL: readonly string[] = [
  ...['Holewright', 'Home', 'Enter', 'Escape', 'zoom resize', 'zoom resize viewreset'],
  ...[
    'http://www.w3.org/2000/svg',
    'option as-a',
    'option as-b',
    'option painted',
    '\u0000own place',
    'your own',
  ],
  '10px "Liberation Sans", Arial, sans-serif',
  '600 12px "Segoe UI", "Helvetica Neue", "Liberation Sans", Arial, sans-serif',
  // A club of every bag, and a player without a file, by their names in files.
  ...[
    'Putter',
    'Drop',
    'Feature',
    'Compression',
    'chosen point',
    'nobody in particular',
    'input:enabled, select:enabled',
    'no peer',
  ],
  // Folders of systems; parts of answers over HTTP.
  ...['Documents', 'Roaming', 'Library', 'Application Support', ': still here'],
  ...['`bytes ${first}-${last}/${bytes}`', '`${name}=${key}; Path=${folder}; HttpOnly; SameSite=Strict`'],
  // Names of questions to the workers, and of steps that undo takes together.
  ...['day spans', 'ways out', 'as is', 'reading the ground', 'of late'],
  ...['`player ${index}`', '`worth ${task.resultKey}`', 'ft', 'ref', 'SQLite format 3\0'],
  "`img-src 'self' data: blob:${tiles}`",
  ...[
    '600 14px Arial, sans-serif',
    '600 12px "Liberation Sans", Arial, sans-serif',
    'not asked',
    'path line',
  ],
  ...['https://tiles.example/{z}/{x}/{y}.png', '`address ${background.source}`', 'Point', 'Polygon'],
  ...['`score ${hole.number}`', '`putts ${hole.number}`', '`penalties ${hole.number}`'],
  ...['`wind dial ${presses.current}`', '`ledger ${task.resultKey}`', 'not built', '`${hole}|on the tee`'],
  "`${hole}|${key}|${rough}|on the tee${isKept ? ', kept' : ''}`",
];
