/** The ground that a line of some width covers. */

import { buffer } from '@turf/turf';
import type { LonLat } from '../model.ts';
import type { Geometry } from '../schema.ts';

/** Longer lines are not widened: turf takes long over lines that cross themselves many times. */
export const MOST_WIDENED_POINTS = 2000;

/** Undefined where the line is too long or has no length. */
export function widenLine(line: readonly LonLat[], widthM: number): Geometry | undefined {
  if (line.length < 2 || line.length > MOST_WIDENED_POINTS) return undefined;
  const widened = buffer(
    { type: 'LineString', coordinates: line.map(([lon, lat]) => [lon, lat]) },
    widthM / 2,
    {
      units: 'meters',
      steps: 4,
    },
  )?.geometry;
  return widened as Geometry | undefined;
}
