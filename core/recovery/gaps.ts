/** Gaps between trees as one club sees them: where they open, how wide in degrees, and how wide the club scatters. */

import { inverseNormal } from '../random/normal.ts';
import type { RecoveryShot } from './shot-heights.ts';
import { passChance, type TreeGround } from './tree-line.ts';

export interface Gap {
  /** Bearings of its edges and of its middle, radians clockwise from north. */
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  readonly widthDeg: number;
  /** Within this many degrees two of three solid strikes of the club stay: twice its standard deviation. */
  readonly spreadDeg: number;
  /** Chance that a solid strike at the middle gets through, its spread of direction and carry counted. */
  readonly throughChance: number;
}

const DEGREE = Math.PI / 180;
/** Bearings tried, degrees apart. */
const SCAN_DEG = 0.5;
/** A bearing is open where at least this share of balls would get through. */
const OPEN_CHANCE = 0.75;
const DIRECTION_POINTS = 15;
const CARRY_POINTS = 5;

/** Openings among the bearings within `halfRange` of `ahead` (radians), from left to right. */
export function gapsFor(
  ground: TreeGround,
  x: number,
  y: number,
  ahead: number,
  halfRange: number,
  shot: RecoveryShot,
): Gap[] {
  const steps = Math.ceil(halfRange / (SCAN_DEG * DEGREE));
  const gaps: Gap[] = [];
  let first: number | null = null;
  const close = (last: number): void => {
    if (first === null) return;
    const from = ahead + (first - 0.5) * SCAN_DEG * DEGREE;
    const to = ahead + (last + 0.5) * SCAN_DEG * DEGREE;
    const middle = (from + to) / 2;
    gaps.push({
      from,
      to,
      middle,
      widthDeg: (to - from) / DEGREE,
      spreadDeg: (2 * shot.directionSd) / DEGREE,
      throughChance: throughChance(ground, x, y, middle, shot),
    });
    first = null;
  };
  for (let k = -steps; k <= steps; k++) {
    const bearing = ahead + k * SCAN_DEG * DEGREE;
    const chance = solidPass(ground, x, y, bearing, shot.carryM(bearing), shot);
    if (chance >= OPEN_CHANCE) first ??= k;
    else close(k - 1);
  }
  close(steps);
  return gaps;
}

/**
 * Chance that solid strikes which start on the mean along `line` get past all trees: the mean over evenly spaced quantiles of
 * direction and carry. The wind, the stance and the player's bias are the caller's, who knows the aim for that line. Poor strikes are left out: from trees they are rarely
 * saved by a gap.
 */
export function throughChance(
  ground: TreeGround,
  x: number,
  y: number,
  line: number,
  shot: RecoveryShot,
): number {
  let sum = 0;
  for (let d = 0; d < DIRECTION_POINTS; d++) {
    const bearing = line + shot.directionSd * inverseNormal((d + 0.5) / DIRECTION_POINTS);
    const mean = shot.carryM(bearing);
    for (let c = 0; c < CARRY_POINTS; c++) {
      const carry = Math.max(1, mean + shot.carrySd * inverseNormal((c + 0.5) / CARRY_POINTS));
      sum += solidPass(ground, x, y, bearing, carry, shot);
    }
  }
  return sum / (DIRECTION_POINTS * CARRY_POINTS);
}

function solidPass(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  carry: number,
  shot: RecoveryShot,
): number {
  const { sideAt } = shot;
  return passChance(
    ground,
    x,
    y,
    bearing,
    carry,
    (r) => shot.heightAt(carry, r, bearing),
    1,
    sideAt === undefined ? null : (r) => sideAt(carry, r),
  );
}
