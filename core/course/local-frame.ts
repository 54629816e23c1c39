/**
 * A flat frame for one hole: east and north metres in the plane that touches the WGS 84 ellipsoid at the origin.
 * Earth-fixed coordinates are turned to east, north and up exactly, then "up" is dropped. A planar distance
 * between two points within 1 km of the origin differs from the geodesic by micrometres, since the chord's
 * foreshortening grows with the cube of the distance. Whole turns of longitude come to nothing here, so a hole may lie
 * across the 180° meridian (RFC 7946, 3.1.9), be its longitudes kept within 180° or, as a course has them, in one piece.
 */

import type { Spot } from '../plan/model.ts';
import { filedPlace } from './longitude.ts';
import type { LonLat } from './model.ts';
import { fromEcefOnEllipsoid, RADIANS_PER_DEGREE, SEMI_MAJOR_M, SEMI_MINOR_M, toEcef } from './wgs84.ts';

export interface LocalFrame {
  /** Its longitude within 180°. */
  readonly origin: LonLat;
  /** East and north of the origin, metres. */
  toSpot(lonLat: LonLat): Spot;
  /**
   * The point of the ellipsoid over which the spot lies, its longitude within 180°. Throws a RangeError where there is none
   * (thousands of km away).
   */
  toLonLat(spot: Spot): LonLat;
}

/** The frame that touches the ellipsoid at this place, degrees. Throws a RangeError where the origin is no place. */
export function makeLocalFrame(at: LonLat): LocalFrame {
  const origin = filedPlace(at);
  const [lonDeg, latDeg] = origin;
  if (!(Math.abs(lonDeg) <= 180 && Math.abs(latDeg) <= 90)) {
    throw new RangeError(`Unexpected frame origin: longitude ${lonDeg}, latitude ${latDeg}`);
  }
  const centre = toEcef(origin);
  const lon = lonDeg * RADIANS_PER_DEGREE;
  const lat = latDeg * RADIANS_PER_DEGREE;
  const sinLon = Math.sin(lon);
  const cosLon = Math.cos(lon);
  const sinLat = Math.sin(lat);
  const cosLat = Math.cos(lat);
  // east, north and up as unit vectors in earth-fixed axes; east has no z part
  const east = { x: -sinLon, y: cosLon };
  const north = { x: -sinLat * cosLon, y: -sinLat * sinLon, z: cosLat };
  const up = { x: cosLat * cosLon, y: cosLat * sinLon, z: sinLat };

  // The ellipsoid is x²/a² + y²/a² + z²/b² = 1; these are its weights.
  const wEquator = 1 / SEMI_MAJOR_M ** 2;
  const wPole = 1 / SEMI_MINOR_M ** 2;
  const upUp = wEquator * cosLat * cosLat + wPole * sinLat * sinLat;
  const centreUp = wEquator * (centre.x * up.x + centre.y * up.y) + wPole * centre.z * up.z;

  return {
    origin,
    toSpot(lonLat) {
      const p = toEcef(lonLat);
      const dx = p.x - centre.x;
      const dy = p.y - centre.y;
      const dz = p.z - centre.z;
      return {
        x: east.x * dx + east.y * dy,
        y: north.x * dx + north.y * dy + north.z * dz,
      };
    },
    toLonLat(spot) {
      const px = east.x * spot.x + north.x * spot.y;
      const py = east.y * spot.x + north.y * spot.y;
      const pz = north.z * spot.y;
      // Height h over the plane puts the point back on the ellipsoid: upUp h² + 2 half h + rest = 0. The plane's
      // vectors are conjugate to the origin, which leaves no linear term in `rest`; so no digits are lost.
      const half = centreUp + wEquator * (px * up.x + py * up.y) + wPole * pz * up.z;
      const rest = wEquator * (px * px + py * py) + wPole * pz * pz;
      const discriminant = half * half - upUp * rest;
      if (!(discriminant >= 0)) {
        throw new RangeError(`Unexpected spot: no point of the ellipsoid lies under (${spot.x}, ${spot.y})`);
      }
      const height = -rest / (half + Math.sqrt(discriminant));
      return fromEcefOnEllipsoid({
        x: centre.x + px + height * up.x,
        y: centre.y + py + height * up.y,
        z: centre.z + pz + height * up.z,
      });
    },
  };
}
