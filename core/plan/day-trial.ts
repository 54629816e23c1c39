/** One condition of a day being moved: what the recommendation becomes at each of its values. */

import type { Conditions } from '../conditions/conditions.ts';
import { conditionOf, rangeOfCondition, type VariedCondition, withCondition } from '../conditions/vary.ts';
import type { Course } from '../course/model.ts';
import type { ShotSpread } from '../player/model.ts';
import { type Contest, type Entry, lawsOfDay, valueContest } from './contest.ts';
import type { ChoiceEvaluator } from './evaluate.ts';
import { type BatchedMean, differenceOf } from './measure-choice.ts';
import type { Choice } from './model.ts';
import type { StrokesField } from './strokes-field.ts';
import { greensByDay, otherSeason } from './varied-ground.ts';

/** A smaller turn of the aim is not told, radians. */
export const AIM_TURN_RAD = (2 * Math.PI) / 180;
/** A smaller gain is no change, strokes: it would be told as nought. */
const LEAST_GAIN = 0.005;

/** What the recommendation becomes at one value. */
export interface Verdict {
  readonly kind: 'same' | 'turned' | 'other';
  readonly entry: Entry;
  readonly entries: readonly (Entry | null)[];
}

/** What competes at a spot, and what each costs today. */
export interface Played {
  readonly course: Course;
  readonly field: StrokesField;
  readonly contest: Contest;
  readonly evaluators: readonly ChoiceEvaluator[];
  /** Strokes that each rival saves today: it takes over where it saves more than that, too. */
  readonly today: readonly number[];
}

/** One condition being moved. */
export class DayTrial {
  private readonly base: Conditions;
  private readonly verdicts = new Map<number, Verdict>();
  private greens: ReturnType<typeof greensByDay> | null = null;
  private season: readonly ChoiceEvaluator[] | null = null;

  constructor(
    private readonly all: Played,
    readonly name: VariedCondition,
  ) {
    this.base = all.contest.prepared.conditions;
  }

  /** Of the recommended shot's aim. */
  get bearing(): number {
    return this.all.contest.choices[0]!.bearing;
  }

  get now(): number {
    return conditionOf(this.base, this.name, this.bearing);
  }

  get range() {
    return rangeOfCondition(this.base, this.name, this.bearing);
  }

  spreadOf({ spreadIndex }: Choice): ShotSpread {
    return this.all.contest.prepared.player.spreads[spreadIndex]!;
  }

  *at(value: number): Generator<null, Verdict, void> {
    let verdict = this.verdicts.get(value);
    if (verdict === undefined) {
      const { contest, today } = this.all;
      const day = withCondition(this.base, this.name, this.bearing, value);
      const evaluators = yield* this.evaluatorsFor(day);
      const book = yield* lawsOfDay(contest, day);
      verdict = this.judge(yield* valueContest(contest, book, evaluators), today);
      this.verdicts.set(value, verdict);
    }
    return verdict;
  }

  private *evaluatorsFor(day: Conditions): Generator<null, readonly ChoiceEvaluator[], void> {
    const { course, field, evaluators, contest } = this.all;
    if (this.name === 'green-speed') {
      this.greens ??= greensByDay(course, contest.prepared, field);
      return yield* this.greens(day.greenSpeedFt);
    }
    if (this.name !== 'season') return evaluators;
    yield null;
    this.season ??= otherSeason(course, contest.prepared, field, day.season);
    return this.season;
  }

  private judge(entries: readonly (Entry | null)[], today: readonly number[]): Verdict {
    const { contest } = this.all;
    const { marginStrokes } = contest.prepared.player;
    const own = entries[0] ?? null;
    let best: Entry | null = null;
    for (const [i, entry] of entries.entries()) {
      if (i === 0 || entry === null) continue;
      const isBetter = own === null || this.isWorth(own, entry, Math.max(marginStrokes, today[i]!));
      if (isBetter && (best === null || entry.meanStrokes < best.meanStrokes)) best = entry;
    }
    if (best !== null) return { kind: 'other', entry: best, entries };
    // No club can be played at all: nothing takes over.
    if (own === null) return { kind: 'same', entry: UNPLAYED, entries };
    const isTurned = Math.abs(turnBetween(this.bearing, own.choice.bearing)) > AIM_TURN_RAD;
    const isWorthIt = isTurned && this.isWorth(own.kept, own, marginStrokes);
    return { kind: isWorthIt ? 'turned' : 'same', entry: own, entries };
  }

  private isWorth(dear: BatchedMean, cheap: BatchedMean, least: number): boolean {
    const { mean, standardError } = differenceOf(dear, cheap);
    return mean > Math.max(2 * standardError, least, LEAST_GAIN);
  }
}

const NOTHING = { meanStrokes: Infinity, batchMeans: new Float64Array(0) };
const UNPLAYED: Entry = { choice: { spreadIndex: 0, bearing: 0, carryM: 0 }, ...NOTHING, kept: NOTHING };

/** Radians, positive to the right. */
export function turnBetween(from: number, to: number): number {
  return Math.atan2(Math.sin(to - from), Math.cos(to - from));
}
