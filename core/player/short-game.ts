/**
 * The short game from records: up-and-downs as chances with intervals, and the spread of part swings from shots whose
 * intended length is known, as a regression of the standard deviation on the distance.
 */

import { type HeightOf, maximise } from '../putting/maximise.ts';
import { type Result, refuse, succeed } from '../result.ts';
import { betaQuantile } from './beta-law.ts';
import { type PartLaw, partCarrySd } from './part-law.ts';
import type { Estimate } from './posterior/intervals.ts';

/** From where the ball is to be holed in two. */
export type ShortGameKind = 'chip' | 'pitch' | 'bunker';

export interface UpAndDownRecord {
  readonly kind: ShortGameKind;
  readonly tries: number;
  readonly saved: number;
}

export interface UpAndDownChance extends Estimate {
  readonly kind: ShortGameKind;
  readonly tries: number;
  readonly saved: number;
}

/** Jeffreys' prior for a chance: half a success, half a failure; short intervals that hold what they promise. */
const JEFFREYS = 0.5;

/** Chance to get up and down per kind, with 90 % intervals (Brown, Cai & DasGupta 2001, Stat. Sci. 16:101). */
export function upAndDownChances(records: readonly UpAndDownRecord[]): readonly UpAndDownChance[] {
  const kinds: readonly ShortGameKind[] = ['chip', 'pitch', 'bunker'];
  return kinds.flatMap((kind) => {
    const own = records.filter((record) => record.kind === kind);
    const tries = own.reduce((sum, record) => sum + record.tries, 0);
    const saved = own.reduce((sum, record) => sum + Math.min(record.saved, record.tries), 0);
    if (tries === 0) return [];
    const a = saved + JEFFREYS;
    const b = tries - saved + JEFFREYS;
    // Of none and of all, the end of the interval is the end of the scale.
    const low = saved === 0 ? 0 : betaQuantile(0.05, a, b);
    const high = saved === tries ? 1 : betaQuantile(0.95, a, b);
    return [{ kind, tries, saved, mean: a / (a + b), low, high }];
  });
}

/** One part swing: what was wanted and what came. Metres and radians, positive right. */
export interface PartShot {
  readonly intendedM: number;
  readonly carryM: number;
  readonly direction: number;
}

export interface PartFit {
  readonly law: PartLaw;
  readonly directionMean: number;
  readonly directionSd: number;
  readonly poorShare: number;
  readonly shots: number;
  /** Mean and 90 % interval of each number. */
  readonly estimates: {
    readonly carrySdAt10M: Estimate;
    readonly growth: Estimate;
    readonly carryBiasShare: Estimate;
    readonly directionMean: Estimate;
    readonly directionSd: Estimate;
    readonly poorShare: Estimate;
  };
}

/** What is expected of part swings before any is measured. */
export interface ExpectedPart {
  readonly law: PartLaw;
  readonly directionSd: number;
  readonly poorShare: number;
  readonly poor: {
    readonly carryShareMean: number;
    readonly carryShareSd: number;
    readonly directionSd: number;
  };
}

/** Fewer measured part swings than this leave the expected law as it is. */
export const LEAST_PART_SHOTS = 8;

/**
 * How firmly what is expected is held, as standard deviations: of the logarithm of the spreads, of the growth, of the
 * bias as a share of length, of the bias of direction in expected standard deviations, of the logit of the poor share.
 * Common practice, no source: the same reasons as in `posterior/prior.ts`.
 */
const HELD = { logSpread: 0.35, growth: 0.25, bias: 0.08, direction: 0.4, poorLogit: 0.8 };

/**
 * Highest posterior point of a mixture of solid and poor strikes, the solid spread growing with distance; intervals
 * from the curvature there (Laplace's method; Tierney & Kadane 1986, JASA 81:82). Refuses too few shots.
 */
export function fitPartSwings(shots: readonly PartShot[], expected: ExpectedPart): Result<PartFit, string> {
  if (shots.length < LEAST_PART_SHOTS)
    return refuse(`${shots.length} part swings are too few; at least ${LEAST_PART_SHOTS} are needed.`);
  const bad = shots.find(
    (shot) => !(shot.intendedM >= 1 && shot.carryM > 0 && Number.isFinite(shot.direction)),
  );
  if (bad !== undefined)
    return refuse(`A part swing of ${bad.carryM} m for ${bad.intendedM} m cannot be used.`);
  const height = posteriorHeight(shots, expected);
  const peak = maximise(height, [0, 0, 0, 0, 0, 0], 1500);
  const sds = curvatureSds(height, peak.at);
  const estimate = (k: number, value: (x: number) => number): Estimate => {
    const ends = [value(peak.at[k]! - 1.6449 * sds[k]!), value(peak.at[k]! + 1.6449 * sds[k]!)];
    return { mean: value(peak.at[k]!), low: Math.min(...ends), high: Math.max(...ends) };
  };
  const estimates = {
    carrySdAt10M: estimate(0, (x) => readPoint([x, 0, 0, 0, 0, 0], expected).law.carrySdAt10M),
    growth: estimate(1, (x) => readPoint([0, x, 0, 0, 0, 0], expected).law.growth),
    carryBiasShare: estimate(2, (x) => readPoint([0, 0, x, 0, 0, 0], expected).law.carryBiasShare),
    directionMean: estimate(3, (x) => readPoint([0, 0, 0, x, 0, 0], expected).directionMean),
    directionSd: estimate(4, (x) => readPoint([0, 0, 0, 0, x, 0], expected).directionSd),
    poorShare: estimate(5, (x) => readPoint([0, 0, 0, 0, 0, x], expected).poorShare),
  };
  return succeed({ ...readPoint(peak.at, expected), shots: shots.length, estimates });
}

type Point = Pick<PartFit, 'law' | 'directionMean' | 'directionSd' | 'poorShare'>;

/** Numbers in units of what holds them, nought being what is expected. */
function readPoint(at: readonly number[], expected: ExpectedPart): Point {
  const { law, directionSd, poorShare } = expected;
  const logit = Math.log(poorShare / (1 - poorShare)) + HELD.poorLogit * at[5]!;
  return {
    law: {
      carrySdAt10M: law.carrySdAt10M * Math.exp(HELD.logSpread * at[0]!),
      growth: law.growth + HELD.growth * at[1]!,
      carryBiasShare: law.carryBiasShare + HELD.bias * at[2]!,
    },
    directionMean: HELD.direction * directionSd * at[3]!,
    directionSd: directionSd * Math.exp(HELD.logSpread * at[4]!),
    poorShare: 1 / (1 + Math.exp(-logit)),
  };
}

function posteriorHeight(shots: readonly PartShot[], expected: ExpectedPart): HeightOf {
  const { poor } = expected;
  const wide = poor.directionSd / expected.directionSd;
  return (at) => {
    const { law, directionMean, directionSd, poorShare } = readPoint(at, expected);
    let sum = 0;
    for (const x of at) sum -= (x * x) / 2;
    for (const { intendedM, carryM, direction } of shots) {
      const sd = partCarrySd(law, intendedM);
      const along = (carryM - intendedM * (1 + law.carryBiasShare)) / sd;
      const across = (direction - directionMean) / directionSd;
      const solid = Math.exp(-0.5 * (along * along + across * across)) / (sd * directionSd);
      const short = (carryM - intendedM * poor.carryShareMean) / (intendedM * poor.carryShareSd);
      const aside = Math.min(10, Math.abs(across)) / wide;
      const bad =
        Math.exp(-0.5 * (short * short + aside * aside)) /
        (intendedM * poor.carryShareSd * directionSd * wide);
      sum += Math.log((1 - poorShare) * solid + poorShare * bad + 1e-30);
    }
    return sum;
  };
}

/** Standard deviations from the inverse of the matrix of second differences. */
function curvatureSds(f: HeightOf, at: readonly number[]): number[] {
  const h = 0.03;
  const size = at.length;
  const shifted = (i: number, by: number, j = -1, and = 0): number =>
    f(at.map((x, k) => x + (k === i ? by : 0) + (k === j ? and : 0)));
  const middle = f(at);
  const matrix = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (__, j) =>
      i === j
        ? (2 * middle - shifted(i, h) - shifted(i, -h)) / (h * h)
        : (shifted(i, h, j, -h) + shifted(i, -h, j, h) - shifted(i, h, j, h) - shifted(i, -h, j, -h)) /
          (4 * h * h),
    ),
  );
  return invert(matrix).map((row, i) => Math.sqrt(Math.max(1e-12, row[i]!)));
}

/** Gauss-Jordan elimination with the largest pivot. */
function invert(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < size; i++) {
    let best = i;
    for (let r = i + 1; r < size; r++) if (Math.abs(rows[r]![i]!) > Math.abs(rows[best]![i]!)) best = r;
    [rows[i], rows[best]] = [rows[best]!, rows[i]!];
    const pivot = rows[i]![i]! || 1e-12;
    rows[i] = rows[i]!.map((x) => x / pivot);
    for (let r = 0; r < size; r++) {
      if (r === i) continue;
      const factor = rows[r]![i]!;
      rows[r] = rows[r]!.map((x, c) => x - factor * rows[i]![c]!);
    }
  }
  return rows.map((row) => row.slice(size));
}
