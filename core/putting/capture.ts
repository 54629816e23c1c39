/**
 * When a putt drops: the hole and ball of the Rules, and the two windows (direction and run) of the putting model.
 * Sources: Rules of Golf 2023 (hole 4.25 in, ball at least 1.680 in across); A. Gelman & D. Nolan 2002, "A
 * probability model for golf putting", Teaching Statistics 24(3):93-95 (direction); A. Gelman 2019, "Model building
 * and expansion for golf putting" (run). Limits: level green, no break, error of the run in proportion to the run.
 */

import type { PuttingSkill } from '../player/model.ts';
import { normalCdf } from '../random/normal.ts';

const INCH_M = 0.0254;
const FOOT_M = 0.3048;

/** Half of 4.25 inches. */
export const HOLE_RADIUS_M = (4.25 * INCH_M) / 2;
/** Half of 1.680 inches. */
export const BALL_RADIUS_M = (1.68 * INCH_M) / 2;
/** The run that the player intends ends this far beyond the hole (Gelman 2019: one foot). */
export const INTENDED_PAST_M = 1 * FOOT_M;
/** A ball on line that would run more than this beyond the hole jumps over it (Gelman 2019: three feet). */
export const CAPTURE_PAST_M = 3 * FOOT_M;

/** Largest direction error in radians that still meets the hole from `distanceM`: asin((R - r) / x). */
export function captureAngle(distanceM: number): number {
  const halfWidth = HOLE_RADIUS_M - BALL_RADIUS_M;
  return distanceM <= halfWidth ? Math.PI / 2 : Math.asin(halfWidth / distanceM);
}

/** Chance that the direction is good enough: 2 Phi(asin((R - r) / x) / sigma) - 1 (Gelman & Nolan 2002). */
export function chanceOnLine(distanceM: number, directionSd: number): number {
  return 1 - 2 * normalCdf(-captureAngle(distanceM) / directionSd);
}

/** Standard deviation of the run in metres for a hole `distanceM` away. */
export function runSd(distanceM: number, distanceSdShare: number): number {
  return distanceSdShare * (distanceM + INTENDED_PAST_M);
}

/** Chance that the run reaches the hole and would not pass it by more than `CAPTURE_PAST_M` (Gelman 2019). */
export function chanceOfGoodRun(distanceM: number, distanceSdShare: number): number {
  const sd = runSd(distanceM, distanceSdShare);
  return normalCdf((CAPTURE_PAST_M - INTENDED_PAST_M) / sd) - normalCdf(-INTENDED_PAST_M / sd);
}

/** Chance to hole a putt of `distanceM` metres on a level green: both windows met, taken as independent. */
export function chanceToHole(distanceM: number, skill: PuttingSkill): number {
  return chanceOnLine(distanceM, skill.directionSd) * chanceOfGoodRun(distanceM, skill.distanceSdShare);
}
