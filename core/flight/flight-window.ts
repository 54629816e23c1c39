/**
 * A flight's heights as the cubic that a planner's inner loop reads without a table: height at share f of carry c is
 * c t f (1 - f)(1 + s f). Two numbers by least squares on the integrated heights.
 */

import { type FlightTable, HEIGHT_STEPS, WIND_STEPS } from './flight-table.ts';

export interface CubicWindow {
  /** t: tangent of the launch in the cubic's sense, a little off the true one. */
  readonly tanLaunch: number;
  readonly skew: number;
  /** Tangent of the integrated descent, not of the cubic's. */
  readonly tanDescent: number;
  /** Largest gap between cubic and integrated heights, as a share of carry. */
  readonly worstShare: number;
}

/** The cubic of a table, for the wind at `angle` (see `windAngle`), taken at the nearest direction kept. */
export function cubicWindow(table: FlightTable, angle = 0): CubicWindow {
  const last = table.directions - 1;
  const d = Math.min(last, Math.round((Math.abs(angle) * WIND_STEPS) / Math.PI));
  const heights = table.heightShare.subarray(d * (HEIGHT_STEPS + 1), (d + 1) * (HEIGHT_STEPS + 1));
  // Linear in t and t s: h = t u + t s u f with u = f (1 - f).
  let [uu, uf, ff, uh, fh] = [0, 0, 0, 0, 0];
  for (let k = 1; k < HEIGHT_STEPS; k++) {
    const f = k / HEIGHT_STEPS;
    const u = f * (1 - f);
    uu += u * u;
    uf += u * u * f;
    ff += u * u * f * f;
    uh += u * heights[k]!;
    fh += u * f * heights[k]!;
  }
  const determinant = uu * ff - uf * uf;
  const tanLaunch = (uh * ff - fh * uf) / determinant;
  const skew = (fh * uu - uh * uf) / determinant / tanLaunch;
  let worstShare = 0;
  for (let k = 0; k <= HEIGHT_STEPS; k++) {
    const f = k / HEIGHT_STEPS;
    worstShare = Math.max(worstShare, Math.abs(tanLaunch * f * (1 - f) * (1 + skew * f) - heights[k]!));
  }
  return { tanLaunch, skew, tanDescent: Math.tan(table.descent[d]!), worstShare };
}
