/**
 * Everything that a person reads, by language: subject by subject, an entry is a text or a function of named values. The
 * compiler asks the same entries with the same values of each language.
 */

import { english } from './english/english.ts';
import { german } from './german/german.ts';
import type { Language } from './language.ts';

export { capital } from './capital.ts';

export type Words = Omit<typeof english, 'language'> & { readonly language: Language };

const ALL: Readonly<Record<Language, Words>> = { en: english, de: german };

export function wordsIn(language: Language): Words {
  return ALL[language];
}
