/** The direction of play of the hole on screen, for the dial and the sign on the map. */

import { wholeTurn, windPhrase } from '../../core/conditions/day-words.ts';
import { windOnHole } from '../../core/card/wind-words.ts';
import { bearingRad } from '../../core/course/ellipsoid.ts';
import type { AppState } from '../state/app-state.ts';
import { wordsOf } from '../state/use-words.ts';
import { currentDay, currentHole } from '../state/selectors.ts';

/** Degrees clockwise from north, from the start of its line to its end; null while the whole course is shown. */
export function shownHoleBearing(state: AppState): number | null {
  const hole = currentHole(state);
  const start = hole?.line[0];
  const end = hole?.line.at(-1);
  if (start === undefined || end === undefined) return null;
  return wholeTurn((bearingRad(start, end) * 180) / Math.PI);
}

/** How far the map is turned: this bearing points up. */
export function mapUpDeg(state: AppState): number {
  return state.view.holeUp ? (shownHoleBearing(state) ?? 0) : 0;
}

/** `wind 5 m/s from the west; on this hole into, from the left`; null where none is to be told. */
export function windSaid(state: AppState): string | null {
  const day = currentDay(state);
  if (day.wind.speedMps === 0) return null;
  const words = wordsOf(state);
  const bearing = shownHoleBearing(state);
  const phrase = windPhrase(day, state.settings.units, words);
  const here =
    bearing === null
      ? ''
      : words.day.onThisHole({ wind: windOnHole((bearing * Math.PI) / 180, day.wind.fromDeg, words) });
  return phrase + here;
}
