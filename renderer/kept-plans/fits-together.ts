/** Whether the numbers of a plan agree with each other, as those do that `planFromSpot` gives. */

import type { Option, SpotPlan } from '../../core/plan/model.ts';
import { parOddsOf } from '../../core/plan/odds.ts';

/** Shares are sums of thousands, partly in single precision: on 36 plans of the demo's holes they missed 1 by 1.4e-8 at most. */
const SHARE_TOLERANCE = 1e-6;
/**
 * Strokes. Mean and odds are each interpolated in the field: on the demo's 18 holes, for each of its two players, the mean of 459
 * options lay between 0.031 below and 0.024 above that of the odds.
 */
const MEAN_TOLERANCE = 0.1;
/** The last of the odds is "that many or more": strokes by which the mean of those few may lie above it. */
const MOST_BEYOND_LAST = 30;
/** Strokes: rounding and no more. */
const SAME = 1e-9;

/** `options` best first, expected strokes and losses by the best, and each option's own numbers. */
export function fitsTogether({ options, expectedStrokes, strokesTaken, par }: SpotPlan): boolean {
  const best = options[0];
  return (
    best !== undefined &&
    Math.abs(expectedStrokes - best.meanStrokes) <= SAME &&
    options.every(
      (option, rank) =>
        option.meanStrokes >= (options[rank - 1] ?? best).meanStrokes &&
        Math.abs(option.lossToBest - (option.meanStrokes - best.meanStrokes)) <= SAME &&
        isWhole(option.scoreOdds) &&
        isWhole(Object.values(option.endShare)) &&
        meanFits(option) &&
        parFits(option, strokesTaken, par),
    )
  );
}

function isWhole(shares: readonly number[]): boolean {
  return Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1) <= SHARE_TOLERANCE;
}

function meanFits({ meanStrokes, scoreOdds }: Option): boolean {
  const above = meanStrokes - scoreOdds.reduce((sum, share, strokes) => sum + share * strokes, 0);
  const last = scoreOdds.at(-1) ?? 0;
  return above >= -MEAN_TOLERANCE && above <= MEAN_TOLERANCE + MOST_BEYOND_LAST * last;
}

function parFits({ scoreOdds, parOdds }: Option, strokesTaken: number, par: number): boolean {
  // Entry 0 is for no stroke at all.
  const { parOrBetter, bogey, doubleOrWorse } = parOddsOf(scoreOdds, strokesTaken - 1, par);
  return (
    Math.abs(parOdds.parOrBetter - parOrBetter) <= SHARE_TOLERANCE &&
    Math.abs(parOdds.bogey - bogey) <= SHARE_TOLERANCE &&
    Math.abs(parOdds.doubleOrWorse - doubleOrWorse) <= SHARE_TOLERANCE
  );
}
