/**
 * One choice measured on many shots: mean strokes with an honest standard error, odds of each score, trouble, leave.
 * The shots come in batches, each with its own random shift of an even point set and its own valuation of the field; the
 * spread between the batches' means gives the standard error of both (randomised quasi-Monte Carlo; Owen 1995). Batches are
 * common to all choices of a spot.
 */

import { Lie, LIE_NAMES, type LieCode, type LieName } from '../ground/lies.ts';
import { ShotDrawer, type ShotDraws } from '../random/shot-draws.ts';
import type { LawBook } from './choices.ts';
import { ChoiceEvaluator, type NextState, type Tally, valueOfTally } from './evaluate.ts';
import type { Choice, Leave, Spot, Trouble } from './model.ts';
import { addReplays } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import { REPLICAS, SCORE_COLUMNS, type StrokesField } from './strokes-field.ts';

/** Mean strokes of all shots and of each batch; differences between choices are taken batch by batch. */
export interface BatchedMean {
  readonly meanStrokes: number;
  readonly batchMeans: Float64Array;
}

export interface MeasuredChoice extends BatchedMean {
  readonly choice: Choice;
  readonly standardError: number;
  /** Entry k: chance of holing out in k + 1 strokes; the last: that many or more. */
  readonly odds: Float64Array;
  readonly trouble: Trouble;
  readonly leave: Leave;
  readonly endShare: Readonly<Record<LieName, number>>;
}

/** Label of the draws with which options are measured; differs from those they are chosen with. */
const MEASURING = 3;

/** One batch of draws for each valuation of the field: `samples` shots in all, at least eight a batch. */
export function measuringBatches(prepared: PreparedHole, samples: number): ShotDraws[] {
  const shots = Math.max(8, Math.round(samples / REPLICAS));
  return Array.from({ length: REPLICAS }, (_, batch) =>
    new ShotDrawer(shots).redraw(prepared.key, batch, MEASURING),
  );
}

/** One evaluator for each valuation of the field, or the field itself for each where it has none. */
export function measuringEvaluators(field: StrokesField, book: LawBook): ChoiceEvaluator[] {
  return Array.from({ length: REPLICAS }, (_, r) => new ChoiceEvaluator(field.replicas[r] ?? field, book));
}

/** Null where the club is not played from the lie or the choice almost surely has to be replayed. */
export function measureChoice(
  evaluators: readonly ChoiceEvaluator[],
  spot: Spot,
  lie: LieCode,
  choice: Choice,
  batches: readonly ShotDraws[],
  ownValue: number,
): MeasuredChoice | null {
  const first = evaluators[0]!;
  const law = first.book.lawOf(choice.spreadIndex, lie, choice.carryM);
  if (law === null) return null;
  const shots = batches.reduce((sum, batch) => sum + batch.count, 0);
  const odds = new Float64Array(SCORE_COLUMNS);
  const endCount = new Float64Array(LIE_NAMES.length);
  const leaves = new Float64Array(shots);
  const tallies = batches.map(({ count }): Tally => ({ sum: 0, replays: 0, count }));
  let inTrees = 0;
  let shot = 0;
  batches.forEach((draws, b) => {
    const evaluator = evaluators[b]!;
    const { field } = evaluator;
    const tally = tallies[b]!;
    const add = (next: NextState, endLie: number, stoppedByTree: boolean): void => {
      endCount[endLie] = endCount[endLie]! + 1;
      if (stoppedByTree || endLie === Lie.woods) inTrees++;
      const x = next.replay ? spot.x : next.x;
      const y = next.replay ? spot.y : next.y;
      leaves[shot++] = Math.hypot(x - field.pin.x, y - field.pin.y);
      if (next.replay) {
        tally.replays++;
      } else {
        tally.sum += next.value;
        field.addOdds(next.x, next.y, next.lie, 1 / shots, 1 + next.penalty, odds);
      }
    };
    evaluator.playEach(spot, law, choice.bearing, draws, 0, draws.count, ownValue, add);
  });
  const means = meansOf(tallies);
  if (means === null) return null;
  addReplays(odds, tallies.reduce((total, { replays }) => total + replays, 0) / shots);
  const share = (code: LieCode): number => endCount[code]! / shots;
  return {
    choice,
    ...means,
    standardError: standardErrorOf(means.batchMeans),
    odds,
    trouble: {
      outOfBounds: share(Lie.outOfBounds),
      penaltyYellow: share(Lie.penaltyYellow),
      penaltyRed: share(Lie.penaltyRed),
      bunker: share(Lie.bunker),
      trees: inTrees / shots,
      longRough: share(Lie.longRough),
    },
    leave: leaveOf(leaves),
    endShare: shareByName(endCount, shots),
  };
}

/** Means of batches' tallies; null where the choice almost surely has to be replayed. */
export function meansOf(tallies: readonly Tally[]): BatchedMean | null {
  const total: Tally = { sum: 0, replays: 0, count: 0 };
  for (const tally of tallies) {
    total.sum += tally.sum;
    total.replays += tally.replays;
    total.count += tally.count;
  }
  const meanStrokes = valueOfTally(total);
  if (!Number.isFinite(meanStrokes)) return null;
  // V = (1 + p + rest) / (1 - p): a batch that is dear by d makes V dear by d / (1 - p).
  const played = 1 - total.replays / total.count;
  const batchMeans = Float64Array.from(tallies, (tally) => {
    const raw = 1 + (tally.sum + tally.replays * (1 + meanStrokes)) / tally.count;
    return meanStrokes + (raw - meanStrokes) / played;
  });
  return { meanStrokes, batchMeans };
}

/** Standard error of the mean of equally weighted batches. */
export function standardErrorOf(batchMeans: ArrayLike<number>): number {
  const count = batchMeans.length;
  const mean = sum(batchMeans) / count;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += (batchMeans[i]! - mean) ** 2;
  return Math.sqrt(squares / (count - 1) / count);
}

/** Mean and standard error of the difference first - second, batch by batch. */
export function differenceOf(
  first: BatchedMean,
  second: BatchedMean,
): { readonly mean: number; readonly standardError: number } {
  const differences = first.batchMeans.map((mean, b) => mean - second.batchMeans[b]!);
  return { mean: first.meanStrokes - second.meanStrokes, standardError: standardErrorOf(differences) };
}

export function leaveOf(distances: Float64Array): Leave {
  const sorted = Float64Array.from(distances).sort();
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
  return { p10M: at(0.1), medianM: at(0.5), p90M: at(0.9) };
}

function shareByName(counts: Float64Array, total: number): Record<LieName, number> {
  return Object.fromEntries(LIE_NAMES.map((name, code) => [name, counts[code]! / total])) as Record<
    LieName,
    number
  >;
}

function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
}
