/**
 * The preparation sheet of a day, made from tee-off time and expected duration: when to do what, food and water spread over
 * the round, bag, warm-up, green routine, last look. Common practice throughout, no source; no medical advice.
 */

import type { Words } from '../words/words.ts';
import { clock } from './clock.ts';
import { type CardUnits, lengthWords } from './lengths.ts';
import { foodPlan, type FoodPlan, type FoodWishes } from './food-plan.ts';

export interface PreparationWishes {
  /** Minutes after midnight. */
  readonly teeOffMin: number;
  readonly durationMin: number;
  readonly holes: number;
  readonly units: CardUnits;
  readonly temperatureC?: number;
  readonly rain?: boolean;
  readonly strongSun?: boolean;
  /** Names of the clubs to be carried, the putter included. */
  readonly clubs: readonly string[];
  /** Penalty strokes expected in the round, for the number of balls. */
  readonly penaltyBalls?: number;
  readonly food: FoodWishes;
  /** Last look: position and wind, hole by hole. */
  readonly lastLook?: readonly { readonly hole: number; readonly words: string }[];
}

export interface TimedStep {
  /** Minutes after midnight. */
  readonly at: number;
  readonly clock: string;
  readonly words: string;
}

export interface WarmUpStep {
  readonly minutes: number;
  readonly words: string;
}

export interface PreparationSheet {
  readonly teeOff: string;
  readonly finish: string;
  readonly timetable: readonly TimedStep[];
  readonly food: FoodPlan;
  readonly bag: readonly string[];
  readonly bagWarning: string | null;
  readonly warmUp: readonly WarmUpStep[];
  readonly greenRoutine: readonly string[];
  readonly lastLook: readonly { readonly hole: number; readonly words: string }[];
  readonly cautions: readonly string[];
}

/** Rule 4.1b: no more clubs than this in a round. */
const MOST_CLUBS = 14;
const HOT_C = 27;
const COLD_C = 8;

/** Throws a RangeError for a time or duration that is none. */
export function preparationSheet(wishes: PreparationWishes, words: Words): PreparationSheet {
  const told = words.prepare;
  const { teeOffMin, durationMin, holes } = wishes;
  if (!(teeOffMin >= 0 && teeOffMin < 24 * 60))
    throw new RangeError(`Unexpected tee-off: minute ${teeOffMin}.`);
  if (!(durationMin >= 30 && durationMin <= 10 * 60))
    throw new RangeError(`Unexpected duration: ${durationMin} minutes.`);
  if (!(Number.isInteger(holes) && holes >= 1)) throw new RangeError(`Unexpected holes: ${holes}.`);
  return {
    teeOff: clock(teeOffMin),
    finish: clock(teeOffMin + durationMin),
    timetable: timetable(teeOffMin, words),
    food: foodPlan(wishes.food, { teeOffMin, durationMin, holes }, words, wishes.temperatureC),
    bag: bagList(wishes, words),
    bagWarning:
      wishes.clubs.length > MOST_CLUBS
        ? told.tooManyClubs({
            ...{ count: wishes.clubs.length, most: MOST_CLUBS },
            out: wishes.clubs.length - MOST_CLUBS,
          })
        : null,
    warmUp: WARM_UP.map(([step, minutes]) => ({ minutes, words: told.warmUp[step] })),
    greenRoutine: greenRoutine(wishes.units, words),
    lastLook: wishes.lastLook ?? [],
    cautions: cautions(wishes, words),
  };
}

const TIMETABLE = [
  ...([
    [120, 'meal'],
    [60, 'arrive'],
    [50, 'green'],
    [30, 'warmUp'],
  ] as const),
  ...([
    [20, 'range'],
    [10, 'firstTee'],
    [5, 'lastLook'],
  ] as const),
];

function timetable(teeOffMin: number, words: Words): TimedStep[] {
  const { times } = words.prepare;
  return [
    ...TIMETABLE.map(([before, step]) => ({
      at: teeOffMin - before,
      clock: clock(teeOffMin - before),
      words: times[step],
    })),
    { at: teeOffMin, clock: clock(teeOffMin), words: times.teeOff },
  ];
}

function bagList(
  { clubs, penaltyBalls = 2, rain, strongSun, temperatureC }: PreparationWishes,
  words: Words,
): string[] {
  const { bag } = words.prepare;
  // One to start with, one in reserve, and twice the expected losses.
  const balls = 2 + Math.max(3, Math.ceil(2 * penaltyBalls));
  const isHot = temperatureC !== undefined && temperatureC >= HOT_C;
  const isCold = temperatureC !== undefined && temperatureC <= COLD_C;
  return [
    clubs.length === 0
      ? bag.clubs({ count: 0 })
      : bag.clubsNamed({ count: clubs.length, list: clubs.join(', ') }),
    bag.balls({ count: balls }),
    bag.tees,
    rain === true ? bag.glovesRain : bag.gloves,
    bag.towel,
    bag.papers,
    bag.food,
    ...(rain === true ? [bag.rainThings] : [bag.lightJacket]),
    ...(strongSun === true || isHot ? [bag.sunThings] : [bag.hat]),
    ...(isCold ? [bag.warm] : []),
    bag.plasters,
  ];
}

/** Ten minutes in all. */
const WARM_UP = [
  ...([
    ['walk', 2],
    ['shoulders', 1],
    ['hips', 1],
    ['turn', 1],
  ] as const),
  ...([
    ['knees', 1],
    ['legs', 1],
    ['wrists', 1],
    ['swings', 2],
  ] as const),
];

function greenRoutine(units: CardUnits, words: Words): string[] {
  const { routine } = words.prepare;
  const long = routine.long({ length: lengthWords(12, units) });
  const lag = routine.lag({ length: lengthWords(8, units) });
  return [long, routine.speed, lag, routine.short];
}

function cautions({ temperatureC }: PreparationWishes, words: Words): string[] {
  const told = words.prepare.cautions;
  const isHot = temperatureC !== undefined && temperatureC >= HOT_C;
  return [told.warmUp, told.thunder, told.ahead, isHot ? told.hot : told.heat, told.rules];
}
