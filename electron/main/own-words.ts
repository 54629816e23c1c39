/**
 * The words that the desktop program speaks outside its page: of the language in the settings, or the first of the
 * system's that there is, as on the page.
 */

import { type Language, languageOf } from '../../core/words/language.ts';
import { tell } from '../../core/words/told.ts';
import { type Words, wordsIn } from '../../core/words/words.ts';
import type { Settings } from '../contract/host.ts';
import type { Refusal } from '../files/answer.ts';
import type { SettingsStore } from '../files/settings.ts';

export interface OwnWords {
  readonly words: () => Words;
  /** The system's languages, most wanted first; they are known once the program is ready. */
  readonly hearSystem: (tags: readonly string[]) => void;
  /** Takes the language of the settings, and from then on that of each change that is kept. */
  readonly follow: (settings: SettingsStore) => Promise<SettingsStore>;
}

/** `changed` is called when another language is spoken than before. */
export function ownWords(changed: () => void): OwnWords {
  let system: readonly string[] = [];
  let chosen: Settings['language'];
  let spoken: Language = 'en';

  const hear = (): void => {
    const language = chosen === undefined || chosen === 'system' ? languageOf(system) : chosen;
    if (language === spoken) return;
    spoken = language;
    changed();
  };

  return {
    words: () => wordsIn(spoken),
    hearSystem: (tags) => {
      system = tags;
      hear();
    },
    follow: async (settings) => {
      const kept = await settings.read();
      if (kept.ok) chosen = kept.value.language;
      hear();
      return {
        read: settings.read,
        write: async (wanted, was) => {
          const answer = await settings.write(wanted, was);
          // Spoken also where it could not be kept: the page has changed over already.
          chosen = wanted.language ?? chosen;
          hear();
          return answer;
        },
      };
    },
  };
}

/** What was refused and why, in these words. */
export function refusalText({ message, told }: Refusal, words: Words): string {
  return told === undefined ? message : tell(told, words);
}
