/** The slope under a ball, from the hole's rasters. */

import { cellIndexAt, type HoleGround } from '../ground/hole-ground.ts';
import { LEVEL, type RunSlope } from './run.ts';

export type SlopeGround = Pick<HoleGround, 'cellsPerM' | 'columns' | 'rows' | 'west' | 'south' | 'slopes'>;

/** Rise along `bearing` (radians clockwise from north) and to its right at a point; level where the file has no levels. */
export function groundSlope(ground: SlopeGround, x: number, y: number, bearing: number): RunSlope {
  const { slopes } = ground;
  if (slopes === null) return LEVEL;
  const i = 2 * cellIndexAt(ground, x, y);
  const sine = Math.sin(bearing);
  const cosine = Math.cos(bearing);
  const east = slopes[i]!;
  const north = slopes[i + 1]!;
  return { along: east * sine + north * cosine, right: east * cosine - north * sine };
}
