/** The WGS 84 ellipsoid (NGA.STND.0036, 2014) and the step from longitude and latitude to earth-fixed metres. */

import type { LonLat } from './model.ts';

/** Semi-major axis, metres. */
export const SEMI_MAJOR_M = 6378137;
export const FLATTENING = 1 / 298.257223563;
/** Semi-minor axis, metres. */
export const SEMI_MINOR_M = SEMI_MAJOR_M * (1 - FLATTENING);
/** First eccentricity squared. */
export const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);

export const RADIANS_PER_DEGREE = Math.PI / 180;

/** Earth-centred, earth-fixed coordinates, metres. */
export interface Ecef {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The point of the ellipsoid (height 0) at a longitude and latitude in degrees. */
export function toEcef([lonDeg, latDeg]: LonLat): Ecef {
  const lon = lonDeg * RADIANS_PER_DEGREE;
  const lat = latDeg * RADIANS_PER_DEGREE;
  const sinLat = Math.sin(lat);
  const cosLat = Math.cos(lat);
  // radius of curvature in the prime vertical
  const n = SEMI_MAJOR_M / Math.sqrt(1 - ECCENTRICITY_SQUARED * sinLat * sinLat);
  return {
    x: n * cosLat * Math.cos(lon),
    y: n * cosLat * Math.sin(lon),
    z: n * (1 - ECCENTRICITY_SQUARED) * sinLat,
  };
}

/** Longitude and latitude in degrees of a point that lies on the ellipsoid; exact there, not elsewhere. */
export function fromEcefOnEllipsoid({ x, y, z }: Ecef): LonLat {
  const lat = Math.atan2(z, (1 - ECCENTRICITY_SQUARED) * Math.hypot(x, y));
  return [Math.atan2(y, x) / RADIANS_PER_DEGREE, lat / RADIANS_PER_DEGREE];
}
