/**
 * One putt, drawn: the law of core/putting sampled instead of averaged. Limits as there: level green, no break, a miss
 * stops where its run and direction take it.
 */

import type { PuttingSkill } from '../player/model.ts';
import type { Spot } from '../plan/model.ts';
import { CAPTURE_PAST_M, captureAngle, INTENDED_PAST_M, runSd } from '../putting/capture.ts';

/** Where a putt from `from` ends; null: in the hole. `runZ` and `directionZ` are standard normal, positive right. */
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
