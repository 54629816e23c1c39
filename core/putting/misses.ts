/**
 * Where missed putts stop: for each table distance, the chance of missing and leaving each other table distance,
 * by quadrature over run and direction. A leave between two entries is shared linearly between them.
 */

import type { PuttingSkill } from '../player/model.ts';
import { CAPTURE_PAST_M, captureAngle, chanceToHole, INTENDED_PAST_M, runSd } from './capture.ts';
import { gaussLegendre, type Quadrature } from './gauss-legendre.ts';

export interface MissTransitions {
  readonly entries: number;
  readonly stepM: number;
  /** Row-major, `entries` squared: chance that a putt from row's distance misses and leaves column's distance. */
  readonly weights: Float64Array;
  /** Per row, the last column that is not zero. */
  readonly lastLeave: Int32Array;
  /** Largest difference, over rows, between the quadrature's chance of a miss and the formula's: its accuracy. */
  readonly quadratureError: number;
}

/** Standard deviations beyond which the normal law is cut: 2e-9 of it lies outside. */
const REACH = 6;
/** Nodes per panel; panels are at most this many standard deviations wide. */
const PANEL_NODES = 8;
const PANEL_WIDTH = 2;

/** Points and normal-law weights along one standard normal variable. */
interface Samples {
  readonly z: Float64Array;
  readonly weight: Float64Array;
  /** Per point: inside the window that lets the ball drop. */
  readonly inside: readonly boolean[];
}

export function missTransitions(skill: PuttingSkill, stepM: number, entries: number): MissTransitions {
  const rule = gaussLegendre(PANEL_NODES);
  const weights = new Float64Array(entries * entries);
  const lastLeave = new Int32Array(entries);
  let quadratureError = 0;
  for (let row = 0; row < entries; row += 1) {
    const x = row * stepM;
    const sd = runSd(x, skill.distanceSdShare);
    const runs = normalSamples(rule, -INTENDED_PAST_M / sd, (CAPTURE_PAST_M - INTENDED_PAST_M) / sd);
    const limit = captureAngle(x) / skill.directionSd;
    const directions = normalSamples(rule, -limit, limit, 0);
    const leaves = weights.subarray(row * entries, (row + 1) * entries);
    for (let a = 0; a < directions.z.length; a += 1) {
      const cosine = Math.cos(directions.z[a]! * skill.directionSd);
      // Left and right leave the same distance, so only one side is sampled.
      const weightA = 2 * directions.weight[a]!;
      const onLine = directions.inside[a]!;
      for (let r = 0; r < runs.z.length; r += 1) {
        if (onLine && runs.inside[r]!) continue;
        const run = Math.max(0, x + INTENDED_PAST_M + runs.z[r]! * sd);
        const leave = Math.sqrt(Math.max(0, x * x + run * run - 2 * x * run * cosine));
        const position = Math.min(leave / stepM, entries - 1.000001);
        const column = Math.floor(position);
        const share = position - column;
        const weight = weightA * runs.weight[r]!;
        leaves[column]! += weight * (1 - share);
        leaves[column + 1]! += weight * share;
      }
    }
    const chanceOfMiss = 1 - chanceToHole(x, skill);
    const { sum, last } = sumAndLast(leaves);
    quadratureError = Math.max(quadratureError, Math.abs(sum - chanceOfMiss));
    lastLeave[row] = last;
    if (sum > 0) for (let j = 0; j <= last; j += 1) leaves[j]! *= chanceOfMiss / sum;
  }
  return { entries, stepM, weights, lastLeave, quadratureError };
}

/** The row's sum and its last column that is not zero. */
function sumAndLast(leaves: Float64Array): { readonly sum: number; readonly last: number } {
  let sum = 0;
  let last = 0;
  for (let j = 0; j < leaves.length; j += 1) {
    sum += leaves[j]!;
    if (leaves[j]! > 0) last = j;
  }
  return { sum, last };
}

/** Panels of Gauss-Legendre points from `from` (default the far left) to the far right, broken at the window's edges. */
function normalSamples(rule: Quadrature, low: number, high: number, from = -REACH): Samples {
  const cuts = [from, low, high, REACH].filter((z) => z >= from && z <= REACH).sort((p, q) => p - q);
  const z: number[] = [];
  const weight: number[] = [];
  const inside: boolean[] = [];
  for (let c = 0; c + 1 < cuts.length; c += 1) {
    const start = cuts[c]!;
    const width = cuts[c + 1]! - start;
    if (width <= 0) continue;
    const panels = Math.ceil(width / PANEL_WIDTH);
    const half = width / panels / 2;
    const within = start + width / 2 > low && start + width / 2 < high;
    for (let p = 0; p < panels; p += 1) {
      for (let k = 0; k < rule.nodes.length; k += 1) {
        const at = start + (2 * p + 1 + rule.nodes[k]!) * half;
        z.push(at);
        weight.push((half * rule.weights[k]! * Math.exp((-at * at) / 2)) / Math.sqrt(2 * Math.PI));
        inside.push(within);
      }
    }
  }
  return { z: Float64Array.from(z), weight: Float64Array.from(weight), inside };
}
