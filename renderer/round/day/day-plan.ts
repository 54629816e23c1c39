/** The day's sheet and what it adds to the cards, from what the person wishes and what is worked out. */

import type { CardNotes } from '../../../core/card/paragraphs.ts';
import { preparationSheet, type PreparationSheet } from '../../../core/card/preparation.ts';
import type { CardHole } from '../../../core/card/model.ts';
import { windOnHole } from '../../../core/card/wind-words.ts';
import type { Conditions } from '../../../core/conditions/conditions.ts';
import { type DayUnits, speedText } from '../../../core/conditions/day-words.ts';
import { bearingRad } from '../../../core/course/ellipsoid.ts';
import type { Course } from '../../../core/course/model.ts';
import type { PlayerModel } from '../../../core/player/model.ts';
import type { AppState } from '../../state/app-state.ts';
import { remember } from '../../state/remember.ts';
import type { DayWishes } from '../state/round-state.ts';
import type { Words } from '../../../core/words/words.ts';

/** Minutes after midnight; null for what is no time of day. */
export function minutesOf(clock: string): number | null {
  const match = /^(\d{1,2}):(\d{2})$/u.exec(clock.trim());
  if (match === null) return null;
  const minutes = 60 * Number(match[1]) + Number(match[2]);
  return Number(match[2]) < 60 && minutes < 24 * 60 ? minutes : null;
}

export function listOf(text: string): readonly string[] {
  return text
    .split(/[,;\n]/u)
    .map((item) => item.trim())
    .filter((item) => item !== '');
}

/** Null while the tee-off time cannot be read. */
export const preparationOf = remember(
  (
    day: DayWishes,
    conditions: Conditions,
    units: AppState['settings']['units'],
    course: Course,
    player: PlayerModel,
    cards: readonly CardHole[],
    penaltyBalls: number | null,
    words: Words,
  ): PreparationSheet | null => {
    const teeOffMin = minutesOf(day.teeOff);
    if (teeOffMin === null) return null;
    return preparationSheet(
      {
        ...{ teeOffMin, durationMin: day.durationMin, holes: Math.max(1, course.holes.length), units },
        ...{ rain: day.hasRain, strongSun: day.hasSun, clubs: clubsOf(player) },
        food: { items: listOf(day.food), allergies: listOf(day.allergies) },
        lastLook: cards.map(({ hole, green }) => ({
          hole,
          words: [green?.words, windWords(course, hole, conditions, units, words)].filter(Boolean).join('; '),
        })),
        temperatureC: conditions.temperatureC,
        ...(penaltyBalls === null ? {} : { penaltyBalls }),
      },
      words,
    );
  },
);

export function notesOf(
  conditions: Conditions,
  units: DayUnits,
  sheet: PreparationSheet | null,
  course: Course,
  words: Words,
): (hole: number) => CardNotes {
  return (hole) => ({
    reminder: sheet?.food.reminders.find((reminder) => reminder.hole === hole)?.words ?? null,
    wind: windWords(course, hole, conditions, units, words),
  });
}

/** The straight line from tee to hole stands for all of it. */
function windWords(
  course: Course,
  number: number,
  { wind: { speedMps, fromDeg } }: Conditions,
  units: DayUnits,
  words: Words,
): string | null {
  const hole = course.holes.find((candidate) => candidate.number === number);
  const start = hole?.line[0];
  const end = hole?.line.at(-1);
  if (speedMps === 0 || start === undefined || end === undefined) return null;
  return words.prepare.windIs({
    wind: `${speedText(speedMps, units, words)} ${windOnHole(bearingRad(start, end), fromDeg, words)}`,
  });
}

/** The names of the bag, longest first, the putter last. */
function clubsOf({ spreads }: PlayerModel): readonly string[] {
  return [...new Set(spreads.map(({ club }) => club.name)), 'Putter'];
}
