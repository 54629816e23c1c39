/**
 * Chance to hole out in one, in two, and in more putts from one distance, straight from the two errors. For fitting,
 * where the errors change at every step and a whole putting table would take too long; the model is that of
 * `putting.ts`.
 */

import type { PuttingSkill } from '../player/model.ts';
import { CAPTURE_PAST_M, captureAngle, chanceToHole, INTENDED_PAST_M, runSd } from './capture.ts';
import { gaussLegendre } from './gauss-legendre.ts';

/** Standard deviations beyond which the normal law is cut. */
const REACH = 5;
const RULE = gaussLegendre(5);

/** Shares that sum to 1. */
export type PuttCounts = readonly [one: number, two: number, more: number];

/** `holeChance` may stand in for the chance to hole the second putt where a quicker reading of it is at hand. */
export function puttCountOdds(
  distanceM: number,
  skill: PuttingSkill,
  holeChance: (distanceM: number) => number = (metres) => chanceToHole(metres, skill),
): PuttCounts {
  const one = chanceToHole(distanceM, skill);
  const sd = runSd(distanceM, skill.distanceSdShare);
  const limit = captureAngle(distanceM) / skill.directionSd;
  const directions = normalPoints([0, limit, REACH]);
  const runs = normalPoints([-REACH, -INTENDED_PAST_M / sd, (CAPTURE_PAST_M - INTENDED_PAST_M) / sd, REACH]);
  let two = 0;
  let missed = 0;
  for (const direction of directions) {
    const cosine = Math.cos(direction.z * skill.directionSd);
    for (const run of runs) {
      const past = INTENDED_PAST_M + run.z * sd;
      if (direction.z < limit && past > 0 && past < CAPTURE_PAST_M) continue;
      const length = Math.max(0, distanceM + past);
      const square = distanceM * distanceM + length * length - 2 * distanceM * length * cosine;
      // Left and right leave the same, so one side stands for both.
      const weight = 2 * direction.weight * run.weight;
      missed += weight;
      two += weight * holeChance(Math.sqrt(Math.max(0, square)));
    }
  }
  // What the quadrature and the cut tails miss is shared out in proportion.
  const share = missed > 0 ? (1 - one) / missed : 0;
  return [one, two * share, Math.max(0, 1 - one - two * share)];
}

/** Chance to hole from a table, linear between steps that widen with the distance. */
export function holeChanceTable(skill: PuttingSkill): (distanceM: number) => number {
  // Steps even in the square root of the distance: fine where the chance falls fast.
  const table = Float64Array.from({ length: TABLE_STEPS + 1 }, (_, i) =>
    chanceToHole(TABLE_LONGEST_M * (i / TABLE_STEPS) ** 2, skill),
  );
  return (distanceM) => {
    const position = Math.min(TABLE_STEPS - 1e-9, TABLE_STEPS * Math.sqrt(distanceM / TABLE_LONGEST_M));
    const i = Math.floor(position);
    return table[i]! + (position - i) * (table[i + 1]! - table[i]!);
  };
}

const TABLE_STEPS = 200;
const TABLE_LONGEST_M = 60;

interface Point {
  readonly z: number;
  readonly weight: number;
}

/** Gauss-Legendre points with weights of the standard normal law, panel by panel between the cuts. */
function normalPoints(cuts: readonly number[]): Point[] {
  const points: Point[] = [];
  const inside = cuts.map((z) => Math.min(REACH, Math.max(-REACH, z)));
  for (let c = 0; c + 1 < inside.length; c++) {
    const width = inside[c + 1]! - inside[c]!;
    if (width <= 0) continue;
    const panels = Math.ceil(width / 2.5);
    const half = width / panels / 2;
    for (let p = 0; p < panels; p++) {
      RULE.nodes.forEach((node, k) => {
        const z = inside[c]! + (2 * p + 1 + node) * half;
        const weight = (half * RULE.weights[k]! * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
        points.push({ z, weight });
      });
    }
  }
  return points;
}
