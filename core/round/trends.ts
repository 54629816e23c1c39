/** Figures over rounds: mean and slope with their intervals, and the form of the day measured from the player's own rounds. */

import { studentReach } from './student.ts';

/** A shorter round says too little to be scaled to eighteen holes: it stays out of what is told per eighteen. */
export const LEAST_HOLES_FOR_TRENDS = 9;

/** `value` of a round of `holes` as per eighteen holes; null where the round is too short or the value is not known. */
export function perEighteen(value: number | null, holes: number): number | null {
  return value === null || holes < LEAST_HOLES_FOR_TRENDS ? null : (18 * value) / holes;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface Trend {
  readonly count: number;
  readonly mean: number;
  /** Null with fewer than 2 rounds. */
  readonly meanInterval: Interval | null;
  /** Change per round, rounds taken as equally spaced; null with fewer than 3. */
  readonly slope: number | null;
  readonly slopeInterval: Interval | null;
  /** What can be said: better, worse, or neither yet. `moreIsBetter` is the caller's. */
  readonly direction: 'up' | 'down' | 'unclear';
}

/** Share of the intervals. */
export const INTERVAL_SHARE = 0.9;

/** Student's interval of the mean and of the least-squares slope; values in order of play, oldest first. */
export function trendOf(values: readonly number[], share = INTERVAL_SHARE): Trend {
  const count = values.length;
  const mean = count === 0 ? NaN : values.reduce((sum, value) => sum + value, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const meanInterval =
    count < 2
      ? null
      : around(mean, studentReach(share, count - 1) * Math.sqrt(squares / (count - 1) / count));
  if (count < 3) return { count, mean, meanInterval, slope: null, slopeInterval: null, direction: 'unclear' };
  const middle = (count - 1) / 2;
  const spread = values.reduce((sum, _, i) => sum + (i - middle) ** 2, 0);
  const slope = values.reduce((sum, value, i) => sum + (i - middle) * (value - mean), 0) / spread;
  const residual = Math.max(0, squares - slope * slope * spread);
  const slopeInterval = around(
    slope,
    studentReach(share, count - 2) * Math.sqrt(residual / (count - 2) / spread),
  );
  const direction = slopeInterval.low > 0 ? 'up' : slopeInterval.high < 0 ? 'down' : 'unclear';
  return { count, mean, meanInterval, slope, slopeInterval, direction };
}

function around(middle: number, reach: number): Interval {
  return { low: middle - reach, high: middle + reach };
}

/** One round's score against its expectation, and the variance that the holes' own luck gives it. */
export interface RoundResidual {
  readonly score: number;
  readonly expected: number;
  readonly holeVariance: number;
}

/** Fewer rounds say next to nothing about a variance. */
export const LEAST_ROUNDS_FOR_FORM = 8;

/**
 * Standard deviation of the form of the day from the player's rounds: what their scores vary beyond the holes' own luck
 * (method of moments, never below 0). Null with fewer than `LEAST_ROUNDS_FOR_FORM`.
 */
export function measuredFormSd(rounds: readonly RoundResidual[]): number | null {
  if (rounds.length < LEAST_ROUNDS_FOR_FORM) return null;
  const misses = rounds.map(({ score, expected }) => score - expected);
  const mean = misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
  const variance = misses.reduce((sum, miss) => sum + (miss - mean) ** 2, 0) / (misses.length - 1);
  const luck = rounds.reduce((sum, { holeVariance }) => sum + holeVariance, 0) / rounds.length;
  return Math.sqrt(Math.max(0, variance - luck));
}
