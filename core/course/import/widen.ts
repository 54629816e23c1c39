/** The ground that a line of some width covers. */

import { buffer } from '@turf/turf';
import type { LonLat } from '../model.ts';
import type { Geometry } from '../schema.ts';
import { isTangled } from './tangled-line.ts';

/** Undefined where the line is too long, has no length, or crosses itself time and again. */
export function widenLine(line: readonly LonLat[], widthM: number): Geometry | undefined {
  if (line.length < 2 || isTangled(line)) return undefined;
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
