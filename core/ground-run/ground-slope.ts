/** The slope that a landing ball meets, from the hole's elevation raster. */

import type { HoleGround } from '../ground/hole-ground.ts';
import { LEVEL, type RunSlope } from './run.ts';

/** Half of the length over which the slope is taken, metres: heights are interpolated between knots every 10 m. */
const HALF_SPAN_M = 5;
/** Steeper than this the raster is taken for a bank that a ball seldom lands on, metres per metre. */
const STEEPEST = 0.35;

export type SlopeGround = Pick<HoleGround, 'cellM' | 'columns' | 'rows' | 'west' | 'south' | 'elevation'>;

/** Rise along `bearing` (radians clockwise from north) and to its right at a point; level where the file has no levels. */
export function groundSlope(ground: SlopeGround, x: number, y: number, bearing: number): RunSlope {
  const { elevation } = ground;
  if (elevation === null) return LEVEL;
  const at = (px: number, py: number): number => {
    const column = Math.min(ground.columns - 1, Math.max(0, Math.floor((px - ground.west) / ground.cellM)));
    const row = Math.min(ground.rows - 1, Math.max(0, Math.floor((py - ground.south) / ground.cellM)));
    return elevation[row * ground.columns + column]!;
  };
  const rise = (east: number, north: number): number => {
    const up = at(x + HALF_SPAN_M * east, y + HALF_SPAN_M * north);
    const down = at(x - HALF_SPAN_M * east, y - HALF_SPAN_M * north);
    return Math.max(-STEEPEST, Math.min(STEEPEST, (up - down) / (2 * HALF_SPAN_M)));
  };
  const sine = Math.sin(bearing);
  const cosine = Math.cos(bearing);
  return { along: rise(sine, cosine), right: rise(cosine, -sine) };
}
