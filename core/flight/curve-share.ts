/** How far a shot that is bent on purpose comes aside. */

import type { Swing } from '../player/model.ts';

/** What club golfers bend a ball by when they mean to: 14 m at 160. Common practice, no source. */
const CURVE_SHARE = 0.09;

export function curveShareOf(swing: Swing): number {
  if (swing === 'curved-right') return CURVE_SHARE;
  return swing === 'curved-left' ? -CURVE_SHARE : 0;
}
