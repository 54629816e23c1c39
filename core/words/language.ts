/** The languages that the program speaks, and what a person's language tag says of language and units. */

export type Language = 'en' | 'de';

/** Each in its own name, so that whoever does not read the others finds it. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

export const LANGUAGES = Object.keys(LANGUAGE_NAMES) as readonly Language[];

/** The first of the wished languages (BCP 47 tags, most wanted first) that there is; English where there is none. */
export function languageOf(tags: readonly string[]): Language {
  for (const tag of tags) {
    const main = tag.toLowerCase().split('-')[0];
    const found = LANGUAGES.find((language) => language === main);
    if (found !== undefined) return found;
  }
  return 'en';
}

/** Regions (ISO 3166) whose courses are measured in yards: common practice, no source. */
const YARD_REGIONS = ['US', 'CA', 'GB', 'IE', 'IM', 'JE', 'GG', 'IN', 'JP', 'BS', 'BM', 'PR'];

/** What a new user's lengths are told in: by the region of the tag, or the likeliest one of its language. */
export function unitsOfRegion(tag: string): 'yards' | 'metres' {
  try {
    const { region } = new Intl.Locale(tag).maximize();
    return region === undefined || YARD_REGIONS.includes(region) ? 'yards' : 'metres';
  } catch {
    return 'yards';
  }
}
