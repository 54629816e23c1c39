/**
 * What is wished for a round as text that outlives the window, and back. A part that cannot be read falls back to what a new
 * round begins with, so that settings of another version of the program cost no more than that part.
 */

import * as v from 'valibot';
import type { KeptRound } from '../../../electron/contract/host.ts';
import { LONGEST_WISHES, MOST_KEPT_ROUNDS } from '../../../electron/contract/wire.ts';
import { FIRST_WISHES, type Wishes } from './round-state.ts';

export interface RoundFiles {
  /** Tokens. */
  readonly course: string;
  readonly player: string;
}

const within = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const orNull = (least: number, most: number) => v.fallback(v.nullable(within(least, most)), null);
const words = v.fallback(v.pipe(v.string(), v.maxLength(300)), '');
const yesNo = (usual: boolean) => v.fallback(v.boolean(), usual);

const { paper: firstPaper, day: firstDay } = FIRST_WISHES;

const paperSchema = v.object({
  kind: v.fallback(v.picklist(['a4', 'letter', 'a6', 'booklet-a4', 'booklet-letter']), firstPaper.kind),
  style: v.fallback(v.picklist(['plain', 'ink-saving', 'large-print']), firstPaper.style),
  hasGreens: yesNo(firstPaper.hasGreens),
  hole: v.fallback(v.nullable(v.pipe(within(1, 999), v.integer())), null),
});

const daySchema = v.object({
  teeOff: v.fallback(v.pipe(v.string(), v.maxLength(20)), firstDay.teeOff),
  durationMin: v.fallback(within(30, 600), firstDay.durationMin),
  food: words,
  allergies: words,
  hasRain: yesNo(false),
  hasSun: yesNo(false),
});

const wishesSchema = v.object({
  targetKind: v.fallback(v.picklist(['beat', 'score', 'net-par', 'handicap']), FIRST_WISHES.targetKind),
  score: orNull(1, 999),
  aim: orNull(-54, 99),
  courseRating: orNull(1, 999),
  slopeRating: orNull(55, 155),
  formSd: v.fallback(within(0, 20), FIRST_WISHES.formSd),
  peerHandicap: orNull(-54, 99),
  peerGroup: v.fallback(v.picklist(['men', 'women']), FIRST_WISHES.peerGroup),
  game: v.fallback(v.picklist(['score', 'stableford', 'match']), FIRST_WISHES.game),
  points: orNull(0, 999),
  paper: v.fallback(paperSchema, firstPaper),
  day: v.fallback(daySchema, firstDay),
}) satisfies v.GenericSchema<unknown, Wishes>;

const textSchema = v.pipe(v.string(), v.parseJson(), wishesSchema);

export function wishesFrom(text: string): Wishes {
  const read = v.safeParse(textSchema, text);
  return read.success ? read.output : FIRST_WISHES;
}

/** Of the player's last round somewhere else: habits and allergies, not the target of that course or the weather of that day. */
function habitsOf({ formSd, peerHandicap, peerGroup, paper, day }: Wishes): Wishes {
  const { teeOff, durationMin, food, allergies } = day;
  return {
    ...FIRST_WISHES,
    ...{ formSd, peerHandicap, peerGroup },
    paper: { ...paper, hole: null },
    day: { ...firstDay, teeOff, durationMin, food, allergies },
  };
}

/** The weather that rounds kept beside the plan's day before both were one; null where none was said. */
export interface OwnWeather {
  readonly temperatureC: number | null;
  readonly windFromDeg: number | null;
  readonly greenSpeedFt: number | null;
}

const ownWeatherSchema = v.pipe(
  v.string(),
  v.parseJson(),
  v.object({
    day: v.object({
      temperatureC: orNull(-20, 55),
      windFromDeg: orNull(0, 360),
      greenSpeedFt: orNull(0, 30),
    }),
  }),
);

/** Null where the round of these files keeps none of its own (any more). */
export function ownWeatherFor(files: RoundFiles, kept: readonly KeptRound[]): OwnWeather | null {
  const text = kept.find(({ course, player }) => course === files.course && player === files.player)?.wishes;
  const read = v.safeParse(ownWeatherSchema, text);
  if (!read.success) return null;
  const { day } = read.output;
  return Object.values(day).every((value) => value === null) ? null : day;
}

export function wishesFor(files: RoundFiles, kept: readonly KeptRound[]): Wishes {
  const own = kept.find(({ course, player }) => course === files.course && player === files.player);
  if (own !== undefined) return wishesFrom(own.wishes);
  const elsewhere = kept.find(({ player }) => player === files.player);
  return elsewhere === undefined ? FIRST_WISHES : habitsOf(wishesFrom(elsewhere.wishes));
}

/** The kept rounds with this one first; the oldest go when there are too many. */
export function keeping(files: RoundFiles, wishes: Wishes, kept: readonly KeptRound[]): readonly KeptRound[] {
  const text = JSON.stringify(wishes);
  if (text.length > LONGEST_WISHES) return kept;
  const others = kept.filter(({ course, player }) => course !== files.course || player !== files.player);
  return [{ ...files, wishes: text }, ...others].slice(0, MOST_KEPT_ROUNDS);
}
