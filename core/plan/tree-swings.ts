/** Swings that serve to get past trees: elsewhere they cost more than the full one, and would only fill the table. */

import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie, type LieCode } from '../ground/lies.ts';
import type { Swing } from '../player/model.ts';
import { crownsAlong } from '../recovery/tree-line.ts';
import type { Spot } from './model.ts';

export function isForTrees(swing: Swing): boolean {
  return swing === 'punch' || isCurved(swing);
}

function isCurved(swing: Swing): boolean {
  return swing === 'curved-left' || swing === 'curved-right';
}

/** Crowns so near, and within so many degrees of the bearing to the hole, are a reason to bend a shot, metres. */
const IN_THE_WAY_M = 80;
const AROUND_DEG = [-30, -20, -10, 0, 10, 20, 30];

/** Is this swing of no use from there? `bearing`: to the hole, radians clockwise from north. */
export function isIdleSwing(
  swing: Swing,
  ground: HoleGround,
  { x, y }: Spot,
  lie: LieCode,
  bearing: number,
): boolean {
  if (!isForTrees(swing) || lie === Lie.woods) return false;
  if (isCurved(swing))
    return AROUND_DEG.every(
      (degrees) => crownsAlong(ground, x, y, bearing + (degrees * Math.PI) / 180, IN_THE_WAY_M).length === 0,
    );
  return lie !== Lie.rough && lie !== Lie.longRough;
}
