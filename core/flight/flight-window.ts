/**
 * A flight's heights as the cubic that a planner's inner loop reads without a table: height at share f of carry c is
 * c t f (1 - f)(1 + s f). Two numbers by least squares on the integrated heights.
 */

import { type FlightTable, HEIGHT_STEPS, WIND_STEPS } from './flight-table.ts';

/** Height at share f of carry c: c tanLaunch f (1 - f)(1 + skew f). */
export interface BallWindow {
  /** Tangent of the launch in the cubic's sense, a little off the true one. */
  readonly tanLaunch: number;
  readonly skew: number;
  /** Tangent of the integrated descent, not of the cubic's. */
  readonly tanDescent: number;
  /** Largest gap between cubic and integrated heights, as a share of carry. */
  readonly worstShare: number;
  /** Highest point of a flight of carry 1 and launch 1. */
  readonly apexHeight: number;
  /** Share of carry at which the ball comes down through k / DESCENT_STEPS of the apex, k = 0 .. DESCENT_STEPS. */
  readonly descent: Float64Array;
}

const DESCENT_STEPS = 64;

/** The window of a table, for the wind at `angle` (see `windAngle`), taken at the nearest direction kept. */
export function ballWindow(table: FlightTable, angle = 0): BallWindow {
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
  return { tanLaunch, tanDescent: Math.tan(table.descent[d]!), worstShare, ...fallOf(skew) };
}

/** The part of a window that its skew decides. */
function fallOf(skew: number): Pick<BallWindow, 'skew' | 'apexHeight' | 'descent'> {
  const apex = apexOf({ tanLaunch: 1, skew });
  const descent = new Float64Array(DESCENT_STEPS + 1);
  for (let k = 0; k <= DESCENT_STEPS; k++) {
    descent[k] = descentThrough((apex.height * k) / DESCENT_STEPS, skew, apex.at);
  }
  return { skew, apexHeight: apex.height, descent };
}

/** Share of carry, not before the apex and not after the true one, where the height (launch 1, carry 1) is `height` again. */
export function descentShare(window: BallWindow, height: number): number {
  const k = Math.ceil((height / window.apexHeight) * DESCENT_STEPS);
  return k >= DESCENT_STEPS ? window.descent[DESCENT_STEPS]! : window.descent[k > 0 ? k : 0]!;
}

/** The falling branch of f (1 - f)(1 + s f) = height by halving, from the apex at `from`. */
function descentThrough(height: number, skew: number, from: number): number {
  let low = from;
  let high = 1;
  for (let k = 0; k < 50; k++) {
    const f = (low + high) / 2;
    if (f * (1 - f) * (1 + skew * f) > height) low = f;
    else high = f;
  }
  return low;
}

/** Height above the start at distance `r` along a flight of carry `carry`, metres. */
export function heightAlong(
  window: Pick<BallWindow, 'tanLaunch' | 'skew'>,
  carry: number,
  r: number,
): number {
  const f = r / carry;
  return r * window.tanLaunch * (1 - f) * (1 + window.skew * f);
}

/** Highest point of a flight of carry 1: the share of carry where it is, and its height as a share of carry. */
export function apexOf(window: Pick<BallWindow, 'tanLaunch' | 'skew'>): {
  readonly at: number;
  readonly height: number;
} {
  const { tanLaunch, skew: s } = window;
  // Root in (0, 1) of d/df [f (1 - f)(1 + s f)] = 1 + 2 (s - 1) f - 3 s f².
  const at = Math.abs(s) < 1e-9 ? 0.5 : (s - 1 + Math.sqrt((s - 1) ** 2 + 3 * s)) / (3 * s);
  return { at, height: at * tanLaunch * (1 - at) * (1 + s * at) };
}
