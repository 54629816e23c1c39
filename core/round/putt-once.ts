/**
 * One putt, drawn: over the green's own slopes at the day's speed where they are known, else by the law of core/putting
 * sampled instead of averaged. Limits as there: on a green without slopes no break, a miss stops where its run and direction
 * take it; on either a ball that leaves the green is putted on all the same.
 */

import type { PuttingSkill } from '../player/model.ts';
import type { Spot } from '../plan/model.ts';
import type { PuttsAround } from '../putting/putts-around.ts';
import type { ShotLuck } from './luck.ts';
import { CAPTURE_PAST_M, captureAngle, INTENDED_PAST_M, runSd } from '../putting/capture.ts';

/**
 * Where a putt from `from` ends on this green; null: in the hole. Length and direction of the stroke take the same numbers of
 * the luck on either kind of green; the slope is misread by those that a swing spends on roll and gusts.
 */
export function puttOn(
  putts: PuttsAround,
  from: Spot,
  pin: Spot,
  skill: PuttingSkill,
  { distanceZ, directionZ, rollZ, gustZ }: ShotLuck,
): Spot | null {
  if (putts.rollOnce === undefined) return puttOnce(from, pin, skill, distanceZ, directionZ);
  const errors = { run: distanceZ, direction: directionZ, readAlong: rollZ, readAcross: gustZ };
  const end = putts.rollOnce(from.x - pin.x, from.y - pin.y, errors);
  return end === null ? null : { x: pin.x + end.east, y: pin.y + end.north };
}

/** The same on a level green. `runZ` and `directionZ` are standard normal, positive right. */
export function puttOnce(
  from: Spot,
  pin: Spot,
  skill: PuttingSkill,
  runZ: number,
  directionZ: number,
): Spot | null {
  const distance = Math.hypot(pin.x - from.x, pin.y - from.y);
  const angle = directionZ * skill.directionSd;
  const run = distance + INTENDED_PAST_M + runZ * runSd(distance, skill.distanceSdShare);
  if (Math.abs(angle) < captureAngle(distance) && run >= distance && run <= distance + CAPTURE_PAST_M)
    return null;
  const bearing = Math.atan2(pin.x - from.x, pin.y - from.y) + angle;
  const length = Math.max(0, run);
  return { x: from.x + length * Math.sin(bearing), y: from.y + length * Math.cos(bearing) };
}
