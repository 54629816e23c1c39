/** How long a degree is at a latitude: for flat reckoning over a few kilometres, where a part in a thousand does no harm. */

import { ECCENTRICITY_SQUARED, RADIANS_PER_DEGREE, SEMI_MAJOR_M } from './wgs84.ts';

/** Length of a degree east and north at a latitude, metres: radii of curvature of the ellipsoid. */
export function metresPerDegree(lat: number): { readonly eastM: number; readonly northM: number } {
  const sin = Math.sin(lat * RADIANS_PER_DEGREE);
  const root = Math.sqrt(1 - ECCENTRICITY_SQUARED * sin * sin);
  const primeVertical = SEMI_MAJOR_M / root;
  const meridian = (SEMI_MAJOR_M * (1 - ECCENTRICITY_SQUARED)) / root ** 3;
  return {
    eastM: primeVertical * Math.cos(lat * RADIANS_PER_DEGREE) * RADIANS_PER_DEGREE,
    northM: meridian * RADIANS_PER_DEGREE,
  };
}
