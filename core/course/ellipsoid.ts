/**
 * Measuring on the WGS 84 ellipsoid: geodesic distance and bearing (Vincenty 1975, "Direct and inverse solutions
 * of geodesics on the ellipsoid with application of nested equations", Survey Review 23(176):88-93), length of a
 * line, area of a polygon.
 */

import { makeLocalFrame } from './local-frame.ts';
import type { LonLat, Rings } from './model.ts';
import { FLATTENING, RADIANS_PER_DEGREE, SEMI_MAJOR_M, SEMI_MINOR_M } from './wgs84.ts';

interface Geodesic {
  readonly distanceM: number;
  /** At the first point, radians clockwise from north, in (-pi, pi]. */
  readonly azimuth: number;
}

const LONGITUDE_TOLERANCE_RAD = 1e-13;
const MOST_ROUNDS = 100;
/** Of the sphere used where Vincenty's iteration does not settle: (2a + b) / 3, metres (Moritz 1980, GRS 80). */
const MEAN_RADIUS_M = (2 * SEMI_MAJOR_M + SEMI_MINOR_M) / 3;

/**
 * Length of the geodesic between two places in metres, to a fraction of a millimetre. Between nearly antipodal
 * places, where the iteration does not settle, the great circle of a sphere stands in (up to 0.6 % off).
 */
export function distanceM(a: LonLat, b: LonLat): number {
  return inverse(a, b).distanceM;
}

/** Bearing at `a` of the geodesic to `b`, radians clockwise from north in [0, 2 pi). 0 for one and the same place. */
export function bearingRad(a: LonLat, b: LonLat): number {
  const { azimuth } = inverse(a, b);
  const turned = azimuth < 0 ? azimuth + 2 * Math.PI : azimuth;
  // a tiny negative azimuth rounds up to the full turn
  return turned >= 2 * Math.PI ? 0 : turned;
}

/** Sum of the geodesics between consecutive points, metres. */
export function polylineLengthM(points: readonly LonLat[]): number {
  let length = 0;
  for (let i = 1; i < points.length; i++) length += distanceM(points[i - 1]!, points[i]!);
  return length;
}

/**
 * Area of a polygon in square metres, its holes taken off, in the plane that touches the ellipsoid at the first
 * vertex. 1 km across it is good to about 1 part in 10^7.
 */
export function areaM2(rings: Rings): number {
  const start = rings[0]?.[0];
  if (start === undefined) return 0;
  const frame = makeLocalFrame(start);
  let area = 0;
  rings.forEach((ring, index) => {
    const spots = ring.map((point) => frame.toSpot(point));
    let twice = 0;
    for (let i = 0; i < spots.length; i++) {
      const p = spots[i]!;
      const q = spots[(i + 1) % spots.length]!;
      twice += p.x * q.y - q.x * p.y;
    }
    const ringArea = Math.abs(twice) / 2;
    area += index === 0 ? ringArea : -ringArea;
  });
  return area;
}

function inverse(from: LonLat, to: LonLat): Geodesic {
  const f = FLATTENING;
  const lonDifference = wrapLongitude((to[0] - from[0]) * RADIANS_PER_DEGREE);
  // reduced latitudes
  const u1 = Math.atan((1 - f) * Math.tan(from[1] * RADIANS_PER_DEGREE));
  const u2 = Math.atan((1 - f) * Math.tan(to[1] * RADIANS_PER_DEGREE));
  const sinU1 = Math.sin(u1);
  const cosU1 = Math.cos(u1);
  const sinU2 = Math.sin(u2);
  const cosU2 = Math.cos(u2);

  let lambda = lonDifference;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const sinLambda = Math.sin(lambda);
    const cosLambda = Math.cos(lambda);
    const eastPart = cosU2 * sinLambda;
    // cosU1 sinU2 - sinU1 cosU2 cosLambda, written so that close points lose no digits
    const northPart = Math.sin(u2 - u1) + 2 * sinU1 * cosU2 * Math.sin(lambda / 2) ** 2;
    const sinSigma = Math.hypot(eastPart, northPart);
    const cosSigma = sinU1 * sinU2 + cosU1 * cosU2 * cosLambda;
    if (sinSigma === 0 && cosSigma > 0) return { distanceM: 0, azimuth: 0 };
    const sigma = Math.atan2(sinSigma, cosSigma);
    const sinAlpha = sinSigma === 0 ? 0 : (cosU1 * cosU2 * sinLambda) / sinSigma;
    const cosSqAlpha = 1 - sinAlpha * sinAlpha;
    // on the equator cosSqAlpha is 0 and the term drops out
    const cos2SigmaM = cosSqAlpha < 1e-15 ? 0 : cosSigma - (2 * sinU1 * sinU2) / cosSqAlpha;
    // eq. 10 and 11
    const c = (f / 16) * cosSqAlpha * (4 + f * (4 - 3 * cosSqAlpha));
    const next =
      lonDifference +
      (1 - c) *
        f *
        sinAlpha *
        (sigma + c * sinSigma * (cos2SigmaM + c * cosSigma * (2 * cos2SigmaM * cos2SigmaM - 1)));
    if (Math.abs(next) > Math.PI) break;
    const settled = Math.abs(next - lambda) < LONGITUDE_TOLERANCE_RAD;
    lambda = next;
    if (!settled) continue;

    // eq. 3, 4, 6 and 19
    const uSq = cosSqAlpha * ((SEMI_MAJOR_M / SEMI_MINOR_M) ** 2 - 1);
    const bigA = 1 + (uSq / 16384) * (4096 + uSq * (-768 + uSq * (320 - 175 * uSq)));
    const bigB = (uSq / 1024) * (256 + uSq * (-128 + uSq * (74 - 47 * uSq)));
    const cos2Sq = cos2SigmaM * cos2SigmaM;
    const deltaSigma =
      bigB *
      sinSigma *
      (cos2SigmaM +
        (bigB / 4) *
          (cosSigma * (2 * cos2Sq - 1) -
            (bigB / 6) * cos2SigmaM * (4 * sinSigma * sinSigma - 3) * (4 * cos2Sq - 3)));
    return {
      distanceM: SEMI_MINOR_M * bigA * (sigma - deltaSigma),
      // eq. 20
      azimuth: Math.atan2(eastPart, northPart),
    };
  }
  return onSphere(from, to);
}

function onSphere(from: LonLat, to: LonLat): Geodesic {
  const lat1 = from[1] * RADIANS_PER_DEGREE;
  const lat2 = to[1] * RADIANS_PER_DEGREE;
  const lon = wrapLongitude((to[0] - from[0]) * RADIANS_PER_DEGREE);
  const east = Math.cos(lat2) * Math.sin(lon);
  const north = Math.cos(lat1) * Math.sin(lat2) - Math.sin(lat1) * Math.cos(lat2) * Math.cos(lon);
  const along = Math.sin(lat1) * Math.sin(lat2) + Math.cos(lat1) * Math.cos(lat2) * Math.cos(lon);
  return {
    distanceM: MEAN_RADIUS_M * Math.atan2(Math.hypot(east, north), along),
    azimuth: Math.atan2(east, north),
  };
}

/** The same difference of longitude in [-pi, pi]. */
function wrapLongitude(radians: number): number {
  if (radians > Math.PI) return radians - 2 * Math.PI;
  return radians < -Math.PI ? radians + 2 * Math.PI : radians;
}
