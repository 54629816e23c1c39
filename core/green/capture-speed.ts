/**
 * When a rolling ball that meets the hole stays in it. Sources: B. W. Holmes 1991, "Putting: how a golf ball and hole
 * interact", Am. J. Phys. 59:129 (dead centre: up to about 1.63 m/s); A. R. Penner 2002, "The physics of putting", Can. J.
 * Phys. 80:83 (off centre). Both figures from memory. Limits: a level hole; a ball that meets the hole too fast goes on
 * as if there were none (lip-outs turn and slow it in truth).
 */

import { HOLE_RADIUS_M } from '../putting/capture.ts';

export const FASTEST_CAPTURE_MPS = 1.63;

/** Highest speed at which a ball drops whose path would pass `offsetM` from the middle of the hole; 0 beyond the rim. */
export function captureSpeedMps(offsetM: number): number {
  const share = offsetM / HOLE_RADIUS_M;
  return FASTEST_CAPTURE_MPS * Math.max(0, 1 - share * share);
}

/** Half of the hole's width for a ball that arrives at `speedMps`, metres: the inverse of `captureSpeedMps`. */
export function captureHalfWidthM(speedMps: number): number {
  return HOLE_RADIUS_M * Math.sqrt(Math.max(0, 1 - speedMps / FASTEST_CAPTURE_MPS));
}
