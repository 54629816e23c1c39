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

/** Crowns so near on the line of play are a reason to bend a shot, metres. */
const IN_THE_WAY_M = 80;

/** Is this swing of no use from there? `bearing`: of the line of play. */
export function isIdleSwing(
  swing: Swing,
  ground: HoleGround,
  { x, y }: Spot,
  lie: LieCode,
  bearing: number,
): boolean {
  if (!isForTrees(swing) || lie === Lie.woods) return false;
  if (isCurved(swing)) return crownsAlong(ground, x, y, bearing, IN_THE_WAY_M).length === 0;
  return lie !== Lie.rough && lie !== Lie.longRough;
}
