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
}

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
  return { tanLaunch, tanDescent, skew: tanDescent / tanLaunch - 1 };
}

/** Height above the start at distance `r` along a flight of carry `carry`, metres. */
export function heightAlong(window: BallWindow, carry: number, r: number): number {
  const f = r / carry;
  return r * window.tanLaunch * (1 - f) * (1 + window.skew * f);
}

/** Highest point of a flight of carry 1: the share of carry where it is, and its height as a share of carry. */
export function apexOf(window: BallWindow): { readonly at: number; readonly height: number } {
  const s = window.skew;
  // Root in (0, 1) of d/df [f (1 - f)(1 + s f)] = 1 + 2 (s - 1) f - 3 s f².
  const at = Math.abs(s) < 1e-9 ? 0.5 : (s - 1 + Math.sqrt((s - 1) ** 2 + 3 * s)) / (3 * s);
  return { at, height: heightAlong(window, 1, at) };
}
