import { describe, expect, it } from 'vitest';
import { english } from '../../core/words/english/english.ts';
import { german } from '../../core/words/german/german.ts';
import { LANGUAGES } from '../../core/words/language.ts';
import { wordsIn } from '../../core/words/words.ts';
import { ALIKE } from './alike.ts';

type Entry = string | ((values: Readonly<Record<string, unknown>>) => string);

/** Each entry by its path; what is not words (numbers, the language itself) left out. */
function entriesOf(words: object, path = ''): Map<string, Entry> {
  const found = new Map<string, Entry>();
  for (const [key, value] of Object.entries(words) as [string, unknown][]) {
    if (path === '' && (key === 'figures' || key === 'language')) continue;
    const place = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'string' || typeof value === 'function') found.set(place, value as Entry);
    else if (typeof value === 'object' && value !== null)
      for (const [inner, entry] of entriesOf(value, place)) found.set(inner, entry);
  }
  return found;
}

/** The names of the values that a function takes: of the destructured object in its source. */
function valuesOf(entry: (values: Readonly<Record<string, unknown>>) => string): readonly string[] {
  const inner = /^\(\{([^}]*)\}\)/.exec(entry.toString().replace(/\s+/g, ' '))?.[1] ?? '';
  return inner
    .split(',')
    .map((name) => name.replace(/:.*$/, '').trim())
    .filter((name) => name !== '')
    .sort();
}

/** What the entry says when each value is its own name, and each count is `count`. */
function said(entry: Entry, count: number, like: Entry = entry): string {
  if (typeof entry === 'string') return entry;
  const names = valuesOf(like as (values: Readonly<Record<string, unknown>>) => string);
  const values = Object.fromEntries(names.map((name) => [name, `«${name}»`]));
  try {
    return entry(new Proxy(values, { get: (held, name) => held[String(name)] ?? count }));
  } catch {
    return entry(new Proxy({}, { get: () => count }));
  }
}

const first = entriesOf(english);
const second = entriesOf(german);

describe('the catalogue', () => {
  it('has the same entries in each language', () => {
    expect([...second.keys()]).toEqual([...first.keys()]);
    for (const [place, entry] of first) expect(typeof second.get(place), place).toBe(typeof entry);
  });

  it('has a whole set of words for each language that may be chosen', () => {
    expect(LANGUAGES.map((language) => wordsIn(language).language)).toEqual(LANGUAGES);
  });

  it('tells in German each value that it tells in English', () => {
    const untold: string[] = [];
    for (const [place, entry] of first) {
      if (typeof entry !== 'function') continue;
      const german = second.get(place) as typeof entry;
      const missing = valuesOf(entry).filter((name) => !valuesOf(german).includes(name));
      if (missing.length > 0) untold.push(`${place}: ${missing.join(', ')}`);
    }
    expect(untold).toEqual([]);
  });

  it('has nothing left in English by oversight', () => {
    const alike: string[] = [];
    for (const [place, entry] of first) {
      const text = said(entry, 3);
      if (/[a-z]{2}/i.test(text.replace(/«\w+»/g, '')) && text === said(second.get(place)!, 3, entry))
        alike.push(place);
    }
    expect(alike.sort()).toEqual([...ALIKE].sort());
  });

  it('keeps to neutral wording: nobody is addressed in German', () => {
    const addressed = [...second].filter(([, entry]) =>
      /\b(Sie|Ihr|Ihre|Ihren|Ihrem|Ihrer|du|dein|deine)\b/.test(said(entry, 3)),
    );
    expect(addressed.map(([place, entry]) => `${place}: ${said(entry, 3)}`)).toEqual([]);
  });

  it('begins and ends alike: capital letters and full stops go together', () => {
    const apart = [...first].filter(([place, entry]) => {
      const [a, b] = [said(entry, 3).trim(), said(second.get(place)!, 3, entry).trim()];
      return /[.!?…:]$/.exec(a)?.[0] !== /[.!?…:]$/.exec(b)?.[0];
    });
    expect(apart.map(([place, entry]) => `${place}: ${said(entry, 3)}`)).toEqual([]);
  });
});
