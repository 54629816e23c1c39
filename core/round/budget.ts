/**
 * A score for each hole that adds up to the target. First by stroke index, as a card shares out a handicap; then by
 * what the player scores on each hole in rounds that come out at the target: the hole distributions, tilted by one
 * common rate until their means sum to it. A hole on which scores vary more gives or takes more.
 */

import { english } from '../words/english/english.ts';
import type { Words } from '../words/words.ts';
import { meanOf, rateForTotal, type ScoreDistribution, tilted } from './distribution.ts';
import { holeRanks, strokesReceived } from './handicap.ts';

export interface BudgetHole {
  readonly hole: number;
  readonly par: number;
  readonly strokeIndex?: number;
  /** The player's own odds on this hole; the budget goes by stroke index where any hole lacks them. */
  readonly scores?: ScoreDistribution;
}

export interface HoleBudget {
  readonly hole: number;
  readonly par: number;
  /** Par and the share of the allowance that the stroke index gives. */
  readonly byStrokeIndex: number;
  /** Average over all rounds, and over those that come out at the target; null without the player's odds. */
  readonly expected: number | null;
  readonly pace: number | null;
  /** What to play for: the pace in whole strokes, so that the holes add up to the target. */
  readonly budget: number;
  /** In English: another language has `budgetWords`. */
  readonly words: string;
}

export interface RoundBudget {
  readonly target: number;
  readonly par: number;
  /** Target less par. */
  readonly allowance: number;
  readonly expected: number | null;
  /** False where no sequence of holes that the odds allow comes out at the target. */
  readonly possible: boolean;
  readonly holes: readonly HoleBudget[];
}

/** Budgets for `target`, the highest score that still counts. Throws a RangeError for a target that is not whole. */
export function makeBudget(holes: readonly BudgetHole[], target: number): RoundBudget {
  if (!Number.isInteger(target)) throw new RangeError(`Unexpected target: ${target} strokes.`);
  const par = holes.reduce((sum, hole) => sum + hole.par, 0);
  const allowance = target - par;
  const indexes = holes.map((hole) => hole.strokeIndex);
  const byStrokeIndex = strokesReceived(allowance, indexes).map((strokes, i) => holes[i]!.par + strokes);
  const known = holes.flatMap(({ scores }) => (scores === undefined ? [] : [scores]));
  if (known.length < holes.length || holes.length === 0) {
    return {
      ...{ target, par, allowance, expected: null, possible: true },
      holes: holes.map((hole, i) => holeBudget(hole, byStrokeIndex[i]!, null, null, byStrokeIndex[i]!)),
    };
  }
  const rate = rateForTotal(known, target);
  const means = known.map((scores) => meanOf(tilted(scores, rate)));
  // What tilting cannot reach (certain scores, a target out of reach) is shared out evenly.
  const missing = (target - sumOf(means)) / holes.length;
  const pace = means.map((mean) => mean + missing);
  const whole = wholeStrokes(pace, target, holeRanks(indexes));
  return {
    ...{ target, par, allowance, expected: known.reduce((sum, scores) => sum + meanOf(scores), 0) },
    possible: Math.abs(missing) < 1e-6,
    holes: holes.map((hole, i) =>
      holeBudget(hole, byStrokeIndex[i]!, meanOf(known[i]!), pace[i]!, whole[i]!),
    ),
  };
}

function holeBudget(
  { hole, par }: BudgetHole,
  byStrokeIndex: number,
  expected: number | null,
  pace: number | null,
  budget: number,
): HoleBudget {
  return { hole, par, byStrokeIndex, expected, pace, budget, words: budgetWords(budget, par, english) };
}

/** Whole numbers that sum to `total`: each rounded down, then one more where most was cut off (largest remainder). */
function wholeStrokes(pace: readonly number[], total: number, ranks: readonly number[]): number[] {
  const whole = pace.map((strokes) => Math.floor(strokes + 1e-9));
  const order = pace
    .map((strokes, i) => ({ i, cut: strokes - whole[i]! }))
    .sort((a, b) => (Math.abs(b.cut - a.cut) > 1e-9 ? b.cut - a.cut : ranks[a.i]! - ranks[b.i]!));
  const left = total - sumOf(whole);
  for (let k = 0; k < left; k++) {
    const { i } = order[k % order.length]!;
    whole[i] = whole[i]! + 1;
  }
  return whole;
}

/** `Bogey is your par here.` where that is so. */
export function budgetWords(budget: number, par: number, words: Words): string {
  const { budgets } = words.round;
  if (budget === par) return budgets.par;
  const name = scoreName(budget - par, words);
  return budget > par ? budgets.yourPar({ name }) : budgets.calledFor({ name });
}

/** A score against par by its usual name. */
export function scoreName(overPar: number, { round }: Words): string {
  const { par, bogey, double, triple, over, under, birdie, eagle } = round.scores;
  if (overPar >= 0) return [par, bogey, double, triple][overPar] ?? over({ count: overPar });
  return overPar === -1 ? birdie : overPar === -2 ? eagle : under({ count: -overPar });
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
