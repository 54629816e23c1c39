/**
 * How far a day may change before the recommendation does: one condition at a time is moved away from today's value, and the
 * options that compete at the spot are valued anew. What follows the shot keeps the field that is solved for today, so a
 * change's effect on later shots is not in it. The plan's own rule decides: a rival takes over where it costs fewer strokes by
 * more than twice the standard error of the difference and by more than the player's margin.
 * Search: a few values outwards on each side, then bisection between the last that leaves the recommendation and the first
 * that does not; a change that comes and goes between two of those values is not seen.
 */

import {
  UNIT_OF_CONDITION,
  VARIED_CONDITIONS,
  type VariedCondition,
  type VariedUnit,
} from '../conditions/vary.ts';
import type { Course } from '../course/model.ts';
import type { Swing } from '../player/model.ts';
import { competingChoices, type Contest, type Entry, valueContest } from './contest.ts';
import { DayTrial, type Played, turnBetween, type Verdict } from './day-trial.ts';
import { differenceOf, measuringBatches, measuringEvaluators } from './measure-choice.ts';
import type { Spot, SpotPlan } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import { lieOfSpot } from './sample.ts';
import type { StrokesField } from './strokes-field.ts';

/** What another value of a condition does to the recommendation. */
export interface DayChange {
  /** The first value, seen from today, at which it is so; within the bisection's tolerance. */
  readonly at: number;
  readonly club: string;
  readonly swing: Swing;
  /** Its aim against the recommended one, radians, positive to the right. */
  readonly turnRad: number;
  /**
   * Strokes that it saves on the recommended club at the end of the range, and the standard error; null where one of the two
   * cannot be played there. For a turned aim: on the aim of today, at the end or where another club takes over.
   */
  readonly gainAtEnd: number | null;
  readonly standardError: number | null;
}

export interface ConditionSpan {
  readonly condition: VariedCondition;
  readonly unit: VariedUnit;
  readonly now: number;
  /** Between these it was moved. */
  readonly from: number;
  readonly to: number;
  /** Another club takes over; absent: none does before the range's end. */
  readonly changesBelow?: DayChange;
  readonly changesAbove?: DayChange;
  /** The recommended club's aim turns by more than `AIM_TURN_RAD` before another club takes over, and that is worth it. */
  readonly turnsBelow?: DayChange;
  readonly turnsAbove?: DayChange;
}

/** To within so much the value of a change is found; steps are found exactly. */
export const SPAN_TOLERANCE: Readonly<Record<VariedUnit, number>> = {
  'm/s': 0.25,
  '°C': 0.5,
  ft: 0.125,
  step: 1,
};
/** Where a side of the range is looked at first, as shares of its length. */
const LOOKS = [1 / 8, 1 / 4, 1 / 2, 1];
const DEFAULT_SAMPLES = 1024;
export interface SpanSettings {
  /** Shots per club and aim. */
  readonly samples?: number;
  /** Those that are moved; all where absent. */
  readonly conditions?: readonly VariedCondition[];
}

/** Yields the share done. Empty where a putt or a drop is recommended, or where nothing competes. */
export function* conditionSpans(
  course: Course,
  prepared: PreparedHole,
  field: StrokesField,
  plan: Pick<SpotPlan, 'options' | 'recommendation' | 'from'>,
  settings: SpanSettings = {},
): Generator<number, readonly ConditionSpan[], void> {
  const spot: Spot = plan.from;
  const lie = lieOfSpot(prepared, spot);
  const contest: Contest = {
    ...{ prepared, spot, lie, ownValue: field.valueAt(spot.x, spot.y, lie) },
    batches: measuringBatches(prepared, settings.samples ?? DEFAULT_SAMPLES),
    choices: competingChoices(prepared, plan.options, plan.recommendation.optionId),
  };
  if (contest.choices.length === 0) return [];
  const evaluators = measuringEvaluators(field, prepared.book);
  const now = yield* working(valueContest(contest, prepared.book, evaluators), 0);
  const own = now[0] ?? null;
  const today = now.map((entry) =>
    entry === null || own === null ? 0 : Math.max(0, differenceOf(own, entry).mean),
  );
  const all: Played = { course, field, contest, evaluators, today };
  const names = VARIED_CONDITIONS.filter(
    (name) => (settings.conditions?.includes(name) ?? true) && (name !== 'season' || hasTrees(prepared)),
  );
  const spans: ConditionSpan[] = [];
  for (const [i, name] of names.entries()) {
    const steps = spanOf(new DayTrial(all, name));
    for (;;) {
      const step = steps.next();
      if (step.done === true) {
        spans.push(step.value);
        break;
      }
      yield (i + step.value) / names.length;
    }
  }
  return spans;
}

function hasTrees({ ground }: PreparedHole): boolean {
  return ground.highestCanopy > -Infinity;
}

function* spanOf(trial: DayTrial): Generator<number, ConditionSpan, void> {
  const { name, now, range } = trial;
  const below = yield* sideOf(trial, range.least, 0);
  const above = yield* sideOf(trial, range.most, 0.5);
  return {
    ...{ condition: name, unit: UNIT_OF_CONDITION[name], now, from: range.least, to: range.most },
    ...(below.club === null ? {} : { changesBelow: below.club }),
    ...(above.club === null ? {} : { changesAbove: above.club }),
    ...(below.turn === null ? {} : { turnsBelow: below.turn }),
    ...(above.turn === null ? {} : { turnsAbove: above.turn }),
  };
}

interface Side {
  readonly club: DayChange | null;
  readonly turn: DayChange | null;
}

/** `share`: of the condition's work that lies behind. */
function* sideOf(trial: DayTrial, end: number, share: number): Generator<number, Side, void> {
  const { now } = trial;
  const unit = UNIT_OF_CONDITION[trial.name];
  let last = now;
  let turnAt: number | null = null;
  let clubAt: { readonly at: number; readonly entry: Entry } | null = null;
  const looks = looksTowards(now, end, unit);
  for (const [i, value] of looks.entries()) {
    const done = share + (0.5 * i) / looks.length;
    const verdict = yield* working(trial.at(value), done);
    if (verdict.kind !== 'same' && turnAt === null) {
      // The first of the two that comes: an aim that turns, or a club that takes over.
      turnAt = yield* bisect(trial, last, value, (kind) => kind !== 'same', done);
    }
    if (verdict.kind === 'other') {
      const at: number = yield* bisect(trial, last, value, (kind) => kind === 'other', done);
      const there = yield* working(trial.at(at), done);
      clubAt = { at, entry: there.kind === 'other' ? there.entry : verdict.entry };
      break;
    }
    last = value;
  }
  if (turnAt === null && clubAt === null) return { club: null, turn: null };
  const atEnd = yield* working(trial.at(end), share + 0.49);
  const isTurnFirst =
    turnAt !== null && (clubAt === null || Math.abs(clubAt.at - turnAt) > SPAN_TOLERANCE[unit]);
  const turn =
    turnAt !== null && isTurnFirst ? yield* turnOf(trial, turnAt, clubAt === null ? end : clubAt.at) : null;
  return { club: clubAt === null ? null : changeOf(trial, clubAt.at, clubAt.entry, atEnd), turn };
}

/** The turned aim, as it is at the end or where another club takes over. */
function* turnOf(trial: DayTrial, at: number, until: number): Generator<number, DayChange | null, void> {
  const there = yield* working(trial.at(at), 0.99);
  const verdict = yield* working(trial.at(until), 0.99);
  const first = there.entries[0] ?? null;
  const own = verdict.entries[0] ?? null;
  if (first === null || own === null) return null;
  const { mean, standardError } = differenceOf(own.kept, own);
  return { ...namesOf(trial, first), at, gainAtEnd: mean, standardError };
}

function changeOf(trial: DayTrial, at: number, entry: Entry, atEnd: Verdict): DayChange {
  const own = atEnd.entries[0] ?? null;
  const rival = atEnd.entries.find((other) => other?.choice.spreadIndex === entry.choice.spreadIndex) ?? null;
  // The recommended club cannot be played there at all, or neither can the other any more.
  const { mean, standardError } =
    own === null || rival === null ? { mean: null, standardError: null } : differenceOf(own, rival);
  return { ...namesOf(trial, entry), at, gainAtEnd: mean, standardError };
}

function namesOf(trial: DayTrial, { choice }: Entry) {
  const { club, swing } = trial.spreadOf(choice);
  return { club: club.name, swing, turnRad: turnBetween(trial.bearing, choice.bearing) };
}

/** Values that are looked at, nearest first, the end last. */
function looksTowards(now: number, end: number, unit: VariedUnit): readonly number[] {
  if (now === end) return [];
  if (unit !== 'step') return LOOKS.map((share) => now + share * (end - now));
  const way = Math.sign(end - now);
  return Array.from({ length: Math.abs(end - now) }, (_, k) => now + way * (k + 1));
}

/** The value nearest to `before` at which `is` holds, known to hold at `after` and not at `before`. */
function* bisect(
  trial: DayTrial,
  before: number,
  after: number,
  is: (kind: Verdict['kind']) => boolean,
  share: number,
): Generator<number, number, void> {
  const unit = UNIT_OF_CONDITION[trial.name];
  let [no, yes] = [before, after];
  while (unit !== 'step' && Math.abs(yes - no) > SPAN_TOLERANCE[unit]) {
    const middle = (no + yes) / 2;
    const verdict = yield* working(trial.at(middle), share);
    if (is(verdict.kind)) yes = middle;
    else no = middle;
  }
  return yes;
}

/** Steps without a number of their own, at this share. */
function* working<T>(steps: Generator<null, T, void>, share: number): Generator<number, T, void> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield share;
  }
}
