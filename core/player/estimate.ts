/**
 * A club's law from measured shots. Poor strikes are told from solid ones by robust limits (median and median
 * absolute deviation), then the solid ones give mean, spread, bias and correlation, corrected for the tail that the
 * limits cut off. Limits of the method: a poor strike that flies like a solid one counts as solid, so the poor share
 * comes out a little low and the spread a little wide; carry and direction are judged one by one.
 */

import { normalCdf } from '../random/normal.ts';
import { type Result, refuse, succeed } from '../result.ts';
import type { PoorStrike } from './model.ts';

/** Fewer shots than this say too little about a spread. */
export const LEAST_SHOTS = 5;

/** A shot this many standard deviations short of the median carry is poor; long ones never are. */
export const POOR_SHORT_SDS = 2.5;
/** A shot this many standard deviations off the median direction, to either side, is poor. */
export const POOR_WIDE_SDS = 3;
/** With few shots the limits stand wider, by 1 + 3 / n: the median deviation of few shots is often too small. */
const FEW_SHOTS_WIDENING = 3;

/** The poor share's prior counts as this many shots, so that none in twenty is not "never". */
export const POOR_PRIOR_SHOTS = 8;
/** The pooled poor strike's prior counts as this many poor strikes. */
export const POOR_LAW_PRIOR_SHOTS = 6;

/** Least scale in use, so that rounded readings do not make a spread of nothing: share of carry, and radians. */
const LEAST_CARRY_SD_SHARE = 0.005;
const LEAST_DIRECTION_SD = 0.002;

export interface MeasuredShot {
  /** Straight distance from the ball to where it landed. */
  readonly carryM: number;
  /** Radians, positive right of the aim. */
  readonly direction: number;
}

export interface ShotEstimate {
  readonly carryMean: number;
  readonly carrySd: number;
  readonly directionMean: number;
  readonly directionSd: number;
  readonly correlation: number;
  readonly poorShare: number;
  /** Per shot, in the order given: true where it counts as poor. */
  readonly poor: readonly boolean[];
  readonly poorCount: number;
  /** Large-sample standard errors of the figures above. */
  readonly standardError: {
    readonly carryMean: number;
    readonly carrySd: number;
    readonly directionMean: number;
    readonly directionSd: number;
    readonly poorShare: number;
  };
}

/**
 * The law of one club and swing. `expectedPoorShare` (0..1) is the prior mean of the poor share, e.g. the preset's.
 * Refuses fewer than `LEAST_SHOTS` shots and readings that are not finite and positive.
 */
export function estimateShots(
  shots: readonly MeasuredShot[],
  expectedPoorShare: number,
): Result<ShotEstimate, string> {
  if (shots.length < LEAST_SHOTS) {
    return refuse(`${shots.length} shots are too few; at least ${LEAST_SHOTS} are needed.`);
  }
  const bad = shots.find((s) => !(s.carryM > 0 && Number.isFinite(s.carryM) && Number.isFinite(s.direction)));
  if (bad !== undefined) {
    return refuse(`A shot of ${bad.carryM} m and ${bad.direction} rad cannot be used.`);
  }
  // Sorted, so that sums come out the same to the last bit whatever the order of the file.
  const order = shots.map((_, i) => i).sort((a, b) => compareShots(shots[a]!, shots[b]!));
  const sorted = order.map((i) => shots[i]!);
  const isPoor = tellPoorStrikes(sorted);
  const solid = sorted.filter((_, i) => !isPoor[i]);
  const poor = shots.map(() => false);
  order.forEach((original, i) => (poor[original] = isPoor[i]!));
  return succeed(describeSolid(solid, poor, expectedPoorShare));
}

function compareShots(a: MeasuredShot, b: MeasuredShot): number {
  return a.carryM - b.carryM || a.direction - b.direction;
}

/** Widening of both limits for `count` shots. */
function widening(count: number): number {
  return 1 + FEW_SHOTS_WIDENING / count;
}

/** Median and limits are taken again over the solid shots until the same shots stay solid. */
function tellPoorStrikes(shots: readonly MeasuredShot[]): boolean[] {
  const wide = widening(shots.length);
  let poor = shots.map(() => false);
  for (let round = 0; round < 25; round += 1) {
    const solid = shots.filter((_, i) => !poor[i]);
    const carry = medianAndScale(solid.map((s) => s.carryM));
    const direction = medianAndScale(solid.map((s) => s.direction));
    const carryScale = Math.max(carry.scale, LEAST_CARRY_SD_SHARE * carry.median);
    const directionScale = Math.max(direction.scale, LEAST_DIRECTION_SD);
    const next = shots.map(
      (s) =>
        s.carryM < carry.median - POOR_SHORT_SDS * wide * carryScale ||
        Math.abs(s.direction - direction.median) > POOR_WIDE_SDS * wide * directionScale,
    );
    // Half of the shots or more cannot be the exception: then the readings are of two kinds, and all are kept.
    if (next.filter(Boolean).length * 2 >= shots.length) return shots.map(() => false);
    if (next.every((flag, i) => flag === poor[i])) return next;
    poor = next;
  }
  return poor;
}

/** Median, and the median absolute deviation scaled to a normal law's standard deviation, with the small-sample
 * factors of Croux & Rousseeuw 1992 (from memory). */
function medianAndScale(values: readonly number[]): { readonly median: number; readonly scale: number } {
  const centre = median(values);
  const n = values.length;
  const small = [1, 1, 1.196, 1.495, 1.363, 1.206, 1.2, 1.14, 1.129, 1.107][n] ?? n / (n - 0.8);
  return { median: centre, scale: 1.4826 * small * median(values.map((value) => Math.abs(value - centre))) };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/** Sample moments of the solid strikes, corrected as normal laws cut at the limits. */
function describeSolid(
  solid: readonly MeasuredShot[],
  poor: readonly boolean[],
  expectedPoorShare: number,
): ShotEstimate {
  const n = poor.length;
  const m = solid.length;
  const wide = widening(n);
  const carry = moments(solid.map((s) => s.carryM));
  const direction = moments(solid.map((s) => s.direction));
  const short = cutBelow(POOR_SHORT_SDS * wide);
  const sides = cutBothSides(POOR_WIDE_SDS * wide);
  const carrySd = Math.max(carry.sd / short.sd, LEAST_CARRY_SD_SHARE * carry.mean);
  const carryMean = carry.mean - short.mean * carrySd;
  const directionSd = Math.max(direction.sd / sides.sd, LEAST_DIRECTION_SD);

  let products = 0;
  for (const s of solid) products += (s.carryM - carry.mean) * (s.direction - direction.mean);
  const scale = (m - 1) * carry.sd * direction.sd;
  const correlation = scale > 0 ? Math.min(0.95, Math.max(-0.95, products / scale)) : 0;

  const poorCount = n - m;
  // Solid strikes that the limits take for poor, on average.
  const mistaken = (short.outside + sides.outside) * m;
  const seen = Math.max(0, poorCount - mistaken);
  const poorShare = (seen + POOR_PRIOR_SHOTS * expectedPoorShare) / (n + POOR_PRIOR_SHOTS);
  return {
    carryMean,
    carrySd,
    directionMean: direction.mean,
    directionSd,
    correlation,
    poorShare,
    poor,
    poorCount,
    standardError: {
      carryMean: carrySd / Math.sqrt(m),
      carrySd: carrySd / Math.sqrt(2 * (m - 1)),
      directionMean: directionSd / Math.sqrt(m),
      directionSd: directionSd / Math.sqrt(2 * (m - 1)),
      poorShare: Math.sqrt((poorShare * (1 - poorShare)) / (n + POOR_PRIOR_SHOTS + 1)),
    },
  };
}

function moments(values: readonly number[]): { readonly mean: number; readonly sd: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(squares / (values.length - 1)) };
}

interface CutNormal {
  /** Mean and standard deviation of a standard normal law after the cut. */
  readonly mean: number;
  readonly sd: number;
  /** Share that the cut takes away. */
  readonly outside: number;
}

/** Standard normal law without what lies below -k (Johnson, Kotz & Balakrishnan 1994, section 13.10.1). */
function cutBelow(k: number): CutNormal {
  const outside = normalCdf(-k);
  const mean = density(k) / (1 - outside);
  return { mean, sd: Math.sqrt(1 - k * mean - mean * mean), outside };
}

/** Standard normal law without what lies beyond k on either side. */
function cutBothSides(k: number): CutNormal {
  const outside = 2 * normalCdf(-k);
  return { mean: 0, sd: Math.sqrt(1 - (2 * k * density(k)) / (1 - outside)), outside };
}

function density(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** One club's measured shots with what was made of them. */
export interface EstimatedGroup {
  readonly shots: readonly MeasuredShot[];
  readonly estimate: ShotEstimate;
}

/** A poor strike in terms of any club: carry as a share of the solid mean, direction in solid standard deviations. */
export interface PooledPoorStrike {
  readonly carryShareMean: number;
  readonly carryShareSd: number;
  readonly directionTimes: number;
  readonly count: number;
}

/**
 * The law of poor strikes from those of all clubs together, since one club has too few. `expected` (the preset's)
 * counts as `POOR_LAW_PRIOR_SHOTS` more poor strikes. A direction error counts at most ten solid standard deviations,
 * so that one reading gone astray does not rule the rest.
 */
export function poolPoorStrikes(
  groups: readonly EstimatedGroup[],
  expected: Omit<PooledPoorStrike, 'count'>,
): PooledPoorStrike {
  const shares: number[] = [];
  const squares: number[] = [];
  for (const { shots, estimate } of groups) {
    shots.forEach((shot, i) => {
      if (!estimate.poor[i]) return;
      shares.push(shot.carryM / estimate.carryMean);
      squares.push(
        Math.min(10, Math.abs(shot.direction - estimate.directionMean) / estimate.directionSd) ** 2,
      );
    });
  }
  shares.sort((a, b) => a - b);
  squares.sort((a, b) => a - b);
  const count = shares.length;
  const weight = count + POOR_LAW_PRIOR_SHOTS;
  const blend = (sum: number, prior: number): number => (sum + POOR_LAW_PRIOR_SHOTS * prior) / weight;
  const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
  const carryShareMean = blend(total(shares), expected.carryShareMean);
  const spreadOfPrior = expected.carryShareSd ** 2 + (expected.carryShareMean - carryShareMean) ** 2;
  const variance = blend(total(shares.map((share) => (share - carryShareMean) ** 2)), spreadOfPrior);
  return {
    carryShareMean,
    carryShareSd: Math.sqrt(variance),
    directionTimes: Math.sqrt(blend(total(squares), expected.directionTimes ** 2)),
    count,
  };
}

/** The pooled law for a club whose solid strikes have `solidDirectionSd` radians. */
export function poorStrikeFor(pooled: PooledPoorStrike, solidDirectionSd: number): PoorStrike {
  return {
    carryShareMean: pooled.carryShareMean,
    carryShareSd: pooled.carryShareSd,
    directionSd: pooled.directionTimes * solidDirectionSd,
  };
}
