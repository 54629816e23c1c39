/** The state before anything is known. */

import { DEFAULT_SEED } from '../../core/plan/prepare.ts';
import type { AppState } from './app-state.ts';
import { emptyHistory } from './history.ts';

export const FIRST_SEED = DEFAULT_SEED;

export const NO_ANSWERS: AppState['answers'] = {
  rough: null,
  kept: null,
  plan: null,
  own: null,
  comparison: null,
  paint: {},
  surface: null,
  waysOut: null,
  treePassage: null,
};

/** `wishedLanguages`: the system's, as BCP 47 tags. */
export function initialState(wishedLanguages: readonly string[] = []): AppState {
  return {
    host: null,
    files: null,
    settings: { units: 'yards', theme: 'system', lastCourse: null, lastPlayer: null },
    wishedLanguages,
    course: null,
    player: null,
    courseNotes: [],
    notices: [],
    view: {
      room: 'plan',
      hole: null,
      holeUp: true,
      showSurface: false,
      showBalls: true,
      showCarries: true,
      showLegend: false,
      help: null,
      tour: null,
      chosen: null,
      compareA: null,
      compareB: null,
    },
    history: emptyHistory(),
    work: {},
    working: true,
    seed: FIRST_SEED,
    answers: NO_ANSWERS,
  };
}
