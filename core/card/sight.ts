/** Can a thing be seen from the tee? Over the ground's levels and the canopies in between, from the eyes of a standing player. */

import { cellIndexAt, elevationAt, type HoleGround, isOnRaster } from '../ground/hole-ground.ts';
import type { Spot } from '../plan/model.ts';
import { distanceOf } from './frame.ts';

/** Height of a standing player's eyes, metres. Common practice, no source. */
const EYE_M = 1.65;
const STEP_M = 2;
/** What stands around the eyes and around the thing itself hides nothing. */
const AROUND_EYE_M = 8;

/** `heightM`: of the thing above its ground; `aroundM`: how far around it nothing hides it. False off the map. */
export function canSee(ground: HoleGround, from: Spot, to: Spot, heightM: number, aroundM = 4): boolean {
  if (!isOnRaster(ground, to.x, to.y)) return false;
  const length = distanceOf(from, to);
  const eye = elevationAt(ground, from.x, from.y) + EYE_M;
  const top = elevationAt(ground, to.x, to.y) + heightM;
  for (let along = AROUND_EYE_M; along < length - aroundM; along += STEP_M) {
    const x = from.x + ((to.x - from.x) * along) / length;
    const y = from.y + ((to.y - from.y) * along) / length;
    const line = eye + ((top - eye) * along) / length;
    const canopy = ground.canopyTop[cellIndexAt(ground, x, y)]!;
    if (elevationAt(ground, x, y) + canopy > line) return false;
  }
  return true;
}
