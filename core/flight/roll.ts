/**
 * Bounce and roll: how far a ball would run on a level fairway, and what each kind of ground takes from that.
 * A simple, monotone stand-in for landing physics. Common practice, no source, unless said otherwise.
 */

import { Lie } from '../ground/lies.ts';

/** Standard deviation of the run as a share of its mean. */
export const ROLL_SD_SHARE = 0.35;

/**
 * Mean run on a level fairway as a share of carry, by descent: about 10 % for a driver coming down at 37 degrees,
 * 4 % for a mid-iron at 46, 1 % for a wedge at 53.
 */
export function runShare(tanDescent: number): number {
  return Math.max(0.01, 0.14 * (1 / tanDescent - 0.65));
}

/** Share of the run that is left after the first bounce on each lie; 0: the ball stays where it landed. */
const KEPT_AFTER_BOUNCE = new Float64Array(11);
/** Metres of fairway run that one metre of each lie costs; infinite: the ball stops there. */
const RUN_COST = new Float64Array(11);

function ground(lie: number, kept: number, cost: number): void {
  KEPT_AFTER_BOUNCE[lie] = kept;
  RUN_COST[lie] = cost;
}
ground(Lie.fairway, 1, 1);
ground(Lie.tee, 1, 1);
ground(Lie.path, 1.3, 0.7);
ground(Lie.green, 0.9, 0.9);
ground(Lie.rough, 0.6, 2.2);
ground(Lie.longRough, 0.25, 6);
ground(Lie.woods, 0.4, 4);
ground(Lie.bunker, 0, Infinity);
ground(Lie.penaltyYellow, 0, Infinity);
ground(Lie.penaltyRed, 0, Infinity);
ground(Lie.outOfBounds, 0, Infinity);

export function keptAfterBounce(lie: number): number {
  return KEPT_AFTER_BOUNCE[lie]!;
}

export function runCost(lie: number): number {
  return RUN_COST[lie]!;
}
