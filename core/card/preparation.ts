/**
 * The preparation sheet of a day, made from tee-off time and expected duration: when to do what, food and water spread over
 * the round, bag, warm-up, green routine, last look. Common practice throughout, no source; no medical advice.
 */

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
export function preparationSheet(wishes: PreparationWishes): PreparationSheet {
  const { teeOffMin, durationMin, holes } = wishes;
  if (!(teeOffMin >= 0 && teeOffMin < 24 * 60))
    throw new RangeError(`Unexpected tee-off: minute ${teeOffMin}.`);
  if (!(durationMin >= 30 && durationMin <= 10 * 60))
    throw new RangeError(`Unexpected duration: ${durationMin} minutes.`);
  if (!(Number.isInteger(holes) && holes >= 1)) throw new RangeError(`Unexpected holes: ${holes}.`);
  return {
    teeOff: clock(teeOffMin),
    finish: clock(teeOffMin + durationMin),
    timetable: timetable(teeOffMin),
    food: foodPlan(wishes.food, { teeOffMin, durationMin, holes }, wishes.temperatureC),
    bag: bagList(wishes),
    bagWarning:
      wishes.clubs.length > MOST_CLUBS
        ? `${wishes.clubs.length} clubs are on the list; Rule 4.1b allows ${MOST_CLUBS}. Take ${wishes.clubs.length - MOST_CLUBS} out.`
        : null,
    warmUp: WARM_UP,
    greenRoutine: greenRoutine(wishes.units),
    lastLook: wishes.lastLook ?? [],
    cautions: cautions(wishes),
  };
}

const TIMETABLE: readonly (readonly [before: number, words: string])[] = [
  [120, 'Eat a usual meal, nothing new today; fill the bottles.'],
  [60, 'Arrive. Local rules sheet, hole positions of the day, wind.'],
  [50, 'Green routine, fifteen minutes; write down the green speed.'],
  [30, 'Gentle warm-up, ten minutes.'],
  [20, 'Ten to fifteen easy balls if there is a range: short clubs first, last the club of the first tee.'],
  [10, 'To the first tee. Card, pencil, marker, tees, a second ball in the pocket. Drink.'],
  [5, 'Last look at hole 1: club, aim, side to miss.'],
];

function timetable(teeOffMin: number): TimedStep[] {
  return [
    ...TIMETABLE.map(([before, words]) => ({
      at: teeOffMin - before,
      clock: clock(teeOffMin - before),
      words,
    })),
    { at: teeOffMin, clock: clock(teeOffMin), words: 'Tee off.' },
  ];
}

function bagList({ clubs, penaltyBalls = 2, rain, strongSun, temperatureC }: PreparationWishes): string[] {
  // One to start with, one in reserve, and twice the expected losses.
  const balls = 2 + Math.max(3, Math.ceil(2 * penaltyBalls));
  const isHot = temperatureC !== undefined && temperatureC >= HOT_C;
  const isCold = temperatureC !== undefined && temperatureC <= COLD_C;
  return [
    `${clubs.length} clubs${clubs.length === 0 ? '' : `: ${clubs.join(', ')}`}`,
    `${balls} balls, marked as yours`,
    'tees, two ball markers, pitch-mark fork',
    rain === true ? 'two gloves in good order and a dry one in a bag' : 'a glove in good order and a spare',
    'towel, one end wet',
    'strategy card, scorecard, two pencils, local rules sheet',
    'water and food as planned',
    ...(rain === true ? ['rain suit, umbrella, dry towel, cover for the bag'] : ['light rain jacket']),
    ...(strongSun === true || isHot ? ['hat, sun cream, sunglasses'] : ['hat']),
    ...(isCold ? ['warm layer, hand warmers'] : []),
    'plasters, your own medicines',
  ];
}

/** Ten minutes in all. */
const WARM_UP: readonly WarmUpStep[] = [
  { minutes: 2, words: 'Walk briskly until you feel warm, arms swinging.' },
  { minutes: 1, words: 'Roll the shoulders back, then make small arm circles that grow.' },
  { minutes: 1, words: 'Feet apart, hands on hips: slow circles with the hips, both ways.' },
  {
    minutes: 1,
    words: 'A club across the shoulders: turn slowly left and right, only as far as it goes by itself.',
  },
  { minutes: 1, words: 'Hold a club for balance: shallow knee bends, heels down, back long.' },
  { minutes: 1, words: 'Hold on and swing each leg gently forwards and back, never with a bounce.' },
  { minutes: 1, words: 'Wrists: hold a club at its middle and turn it slowly, palm up and palm down.' },
  { minutes: 2, words: 'A short iron: slow half swings, then longer ones; last a few at playing pace.' },
];

function greenRoutine(units: CardUnits): string[] {
  const long = lengthWords(12, units);
  const lag = lengthWords(8, units);
  return [
    `Three balls from ${long} to the fringe, no hole: stop each as near the edge as you can. Feel first, look later.`,
    'One stroke that you know, rolled up and down the same flat stretch: pace both rolls out and write them down. Green speed today = speed you know × today’s mean roll ÷ roll you know.',
    `Lag putts from about ${lag}: three balls, each to end within a putter’s length of the hole.`,
    'Short ones last: a circle of putts at one long step, then at two. Finish with one that drops.',
  ];
}

function cautions({ temperatureC }: PreparationWishes): string[] {
  const isHot = temperatureC !== undefined && temperatureC >= HOT_C;
  return [
    'Warm up gently; stop if anything hurts. With pain or a known condition see a physiotherapist or doctor first.',
    'Thunder heard: leave the course. Do not wait under a tree.',
    'Never play until the group ahead is out of reach; shout a warning if a ball may reach somebody.',
    isHot
      ? 'Hot today: drink on every tee, use shade, wet the towel. Dizzy or no longer sweating: stop and get help.'
      : 'In heat drink more and use shade.',
    'Local rules and the committee’s decisions come first.',
  ];
}
