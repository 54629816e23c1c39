/**
 * The transverse Mercator projection by Krüger's series in the third flattening, to sixth order: Karney (2011),
 * "Transverse Mercator with an accuracy of a few nanometers", Journal of Geodesy 85(8):475-485, eq. 7-9 and 11-15,
 * coefficients of eq. 35 and 36. Good to micrometres within 30 degrees of the central meridian.
 */

import type { LonLat } from '../model.ts';
import { FLATTENING, RADIANS_PER_DEGREE, SEMI_MAJOR_M } from '../wgs84.ts';

export interface TransverseMercatorParameters {
  readonly semiMajorM: number;
  readonly flattening: number;
  /** Degrees. */
  readonly centralMeridian: number;
  /** Latitude of natural origin, degrees. */
  readonly originLatitude: number;
  readonly scale: number;
  readonly falseEastingM: number;
  readonly falseNorthingM: number;
}

export interface Projection {
  /** Easting and northing in metres of a place in degrees. */
  readonly toGrid: (place: LonLat) => readonly [number, number];
  readonly toLonLat: (grid: readonly [number, number]) => LonLat;
}

export function transverseMercator(parameters: TransverseMercatorParameters): Projection {
  const { semiMajorM, flattening: f, centralMeridian, originLatitude, scale } = parameters;
  const { falseEastingM, falseNorthingM } = parameters;
  const n = f / (2 - f);
  const e = Math.sqrt(f * (2 - f));
  // radius of the circle as long as the meridian, eq. 14
  const radiusM = (semiMajorM / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64 + n ** 6 / 256);
  const alpha = coefficients(ALPHA, n);
  const beta = coefficients(BETA, n);

  /** Easting and northing of the sphere-like grid in radii, from the central meridian and the equator. */
  const forward = (lat: number, lon: number): readonly [eta: number, xi: number] => {
    const tau = Math.tan(lat);
    const sigma = Math.sinh(e * Math.atanh((e * tau) / Math.hypot(1, tau)));
    // tangent of the conformal latitude, eq. 7
    const tauPrime = tau * Math.hypot(1, sigma) - sigma * Math.hypot(1, tau);
    const xiPrime = Math.atan2(tauPrime, Math.cos(lon));
    const etaPrime = Math.asinh(Math.sin(lon) / Math.hypot(tauPrime, Math.cos(lon)));
    let xi = xiPrime;
    let eta = etaPrime;
    // eq. 11
    alpha.forEach((a, index) => {
      const twice = 2 * (index + 1);
      xi += a * Math.sin(twice * xiPrime) * Math.cosh(twice * etaPrime);
      eta += a * Math.cos(twice * xiPrime) * Math.sinh(twice * etaPrime);
    });
    return [eta, xi];
  };
  const [, originXi] = forward(originLatitude * RADIANS_PER_DEGREE, 0);

  return {
    toGrid: ([lonDeg, latDeg]) => {
      const lon = wrapDegrees(lonDeg - centralMeridian) * RADIANS_PER_DEGREE;
      const [eta, xi] = forward(latDeg * RADIANS_PER_DEGREE, lon);
      return [falseEastingM + scale * radiusM * eta, falseNorthingM + scale * radiusM * (xi - originXi)];
    },
    toLonLat: ([easting, northing]) => {
      const xi = (northing - falseNorthingM) / (scale * radiusM) + originXi;
      const eta = (easting - falseEastingM) / (scale * radiusM);
      let xiPrime = xi;
      let etaPrime = eta;
      // eq. 15
      beta.forEach((b, index) => {
        const twice = 2 * (index + 1);
        xiPrime -= b * Math.sin(twice * xi) * Math.cosh(twice * eta);
        etaPrime -= b * Math.cos(twice * xi) * Math.sinh(twice * eta);
      });
      const tauPrime = Math.sin(xiPrime) / Math.hypot(Math.sinh(etaPrime), Math.cos(xiPrime));
      const lon = Math.atan2(Math.sinh(etaPrime), Math.cos(xiPrime));
      const lat = Math.atan(latitudeTangent(tauPrime, e));
      return [wrapDegrees(centralMeridian + lon / RADIANS_PER_DEGREE), lat / RADIANS_PER_DEGREE];
    },
  };
}

/** Zone 1..60 of the Universal Transverse Mercator grid on WGS 84. */
export function utm(zone: number, south: boolean): Projection {
  return transverseMercator({
    semiMajorM: SEMI_MAJOR_M,
    flattening: FLATTENING,
    centralMeridian: 6 * zone - 183,
    originLatitude: 0,
    scale: 0.9996,
    falseEastingM: 500_000,
    falseNorthingM: south ? 10_000_000 : 0,
  });
}

/** Solves eq. 7 for tau by Newton's method, eq. 19-21; two or three rounds reach full precision. */
function latitudeTangent(tauPrime: number, e: number): number {
  const eSq = e * e;
  let tau = tauPrime / (1 - eSq);
  for (let round = 0; round < 6; round++) {
    const sigma = Math.sinh(e * Math.atanh((e * tau) / Math.hypot(1, tau)));
    const found = tau * Math.hypot(1, sigma) - sigma * Math.hypot(1, tau);
    const step =
      ((tauPrime - found) / Math.hypot(1, found)) *
      ((1 + (1 - eSq) * tau * tau) / ((1 - eSq) * Math.hypot(1, tau)));
    tau += step;
    if (!(Math.abs(step) > 1e-15 * Math.max(1, Math.abs(tau)))) break;
  }
  return tau;
}

function wrapDegrees(degrees: number): number {
  return degrees - 360 * Math.round(degrees / 360);
}

/** Row j holds the factors of n^(j+1), n^(j+2) and so on to n^6. */
type Series = readonly (readonly number[])[];

function coefficients(series: Series, n: number): number[] {
  return series.map((row, j) => row.reduce((sum, factor, k) => sum + factor * n ** (j + 1 + k), 0));
}

/** Eq. 35. */
const ALPHA: Series = [
  [1 / 2, -2 / 3, 5 / 16, 41 / 180, -127 / 288, 7891 / 37800],
  [13 / 48, -3 / 5, 557 / 1440, 281 / 630, -1983433 / 1935360],
  [61 / 240, -103 / 140, 15061 / 26880, 167603 / 181440],
  [49561 / 161280, -179 / 168, 6601661 / 7257600],
  [34729 / 80640, -3418889 / 1995840],
  [212378941 / 319334400],
];

/** Eq. 36. */
const BETA: Series = [
  [1 / 2, -2 / 3, 37 / 96, -1 / 360, -81 / 512, 96199 / 604800],
  [1 / 48, 1 / 15, -437 / 1440, 46 / 105, -1118711 / 3870720],
  [17 / 480, -37 / 840, -209 / 4480, 5569 / 90720],
  [4397 / 161280, -11 / 504, -830251 / 7257600],
  [4583 / 161280, -108847 / 3991680],
  [20648693 / 638668800],
];
