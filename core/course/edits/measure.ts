/** Lengths and areas while something is being drawn, on the ellipsoid. */

import { areaM2, bearingRad, distanceM, polylineLengthM } from '../ellipsoid.ts';
import type { LonLat } from '../model.ts';

export interface DrawnMeasures {
  /** Along all points, metres; round the whole outline where it is an area. */
  readonly lengthM: number;
  /** From the last point but one to the last, metres; 0 with fewer than two points. */
  readonly lastSideM: number;
  /** Bearing of that side, radians clockwise from north; null with fewer than two points. */
  readonly lastBearing: number | null;
  /** Square metres; 0 for a line and below three points. The sign of the direction round is left out. */
  readonly areaM2: number;
}

/** Measures the points drawn so far (degrees), as a line or as the outline of an area without its closing point. */
export function measureDrawing(points: readonly LonLat[], as: 'line' | 'area'): DrawnMeasures {
  const last = points.at(-1);
  const before = points.at(-2);
  const isArea = as === 'area' && points.length >= 3;
  return {
    lengthM: polylineLengthM(isArea ? [...points, points[0]!] : points),
    lastSideM: last === undefined || before === undefined ? 0 : distanceM(before, last),
    lastBearing: last === undefined || before === undefined ? null : bearingRad(before, last),
    areaM2: isArea ? areaM2([points]) : 0,
  };
}
