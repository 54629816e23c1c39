/** The words that the window speaks: of the chosen language, or the first of the system's that there is. */

import { placeName } from '../../core/course/assumed-places.ts';
import type { Hole } from '../../core/course/model.ts';
import { type Language, languageOf } from '../../core/words/language.ts';
import { type Words, wordsIn } from '../../core/words/words.ts';
import type { AppState } from './app-state.ts';
import { shown, situationOfHole } from './history.ts';
import { positionOf } from './selectors.ts';
import { useApp } from './use-app.ts';

export function shownLanguage({ settings, wishedLanguages }: AppState): Language {
  const chosen = settings.language ?? 'system';
  return chosen === 'system' ? languageOf(wishedLanguages) : chosen;
}

export function wordsOf(state: AppState): Words {
  return wordsIn(shownLanguage(state));
}

export function useWords(): Words {
  return useApp(wordsOf);
}

/** The name of a hole's position as it is told: the file's, or that the person chose the place. */
export function positionName(state: AppState, hole: Hole): string {
  const { position } = situationOfHole(shown(state.history), hole.number);
  const isOwn = position !== null && typeof position !== 'string';
  const words = wordsOf(state);
  return isOwn ? words.map.ownPosition : placeName(positionOf(hole, position).name, words);
}
