/**
 * The height of a ball along its way: a simple stand-in for integrated flight, monotone in what matters
 * (a lower loft flies lower and runs more), and replaceable behind `ballWindow`.
 */

import type { ShotSpread } from '../player/model.ts';

/** Launch and descent as tangents. Height at share f of carry c: c tanLaunch f (1 - f)(1 + skew f). */
export interface BallWindow {
  readonly tanLaunch: number;
  readonly skew: number;
  readonly tanDescent: number;
  /** Highest point of a flight of carry 1 and launch 1. */
  readonly apexHeight: number;
  /** Share of carry at which the ball comes down through k / DESCENT_STEPS of the apex, k = 0 .. DESCENT_STEPS. */
  readonly descent: Float64Array;
}

const DESCENT_STEPS = 64;

const DEGREE = Math.PI / 180;

/**
 * Launch and descent angle by loft: straight lines through a driver (10.5° loft: 12° up, 37° down) and a sand wedge
 * (56°: 30° and 53°). Common practice, no source. A punch leaves at a third of that; a poor strike at half.
 * Loft in degrees.
 */
export function ballWindow(
  spread: Pick<ShotSpread, 'swing'> & { readonly club: { readonly loftDeg: number } },
): BallWindow {
  const loft = spread.club.loftDeg;
  const launchDeg = 7.8 + 0.396 * loft;
  const descentDeg = 33.3 + 0.352 * loft;
  switch (spread.swing) {
    case 'full':
    case 'three-quarter':
    case 'half':
    case 'part':
      return windowOf(launchDeg, descentDeg);
    case 'punch':
      return windowOf(launchDeg / 3, descentDeg / 2);
  }
}

function windowOf(launchDeg: number, descentDeg: number): BallWindow {
  const tanLaunch = Math.tan(launchDeg * DEGREE);
  const tanDescent = Math.tan(descentDeg * DEGREE);
  const skew = tanDescent / tanLaunch - 1;
  const apex = apexOf({ tanLaunch: 1, skew });
  const descent = new Float64Array(DESCENT_STEPS + 1);
  for (let k = 0; k <= DESCENT_STEPS; k++) {
    descent[k] = descentThrough((apex.height * k) / DESCENT_STEPS, skew, apex.at);
  }
  return { tanLaunch, tanDescent, skew, apexHeight: apex.height, descent };
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
