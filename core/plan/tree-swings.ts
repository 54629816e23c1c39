/** Swings that serve to get past trees: elsewhere they cost more than the full one, and would only fill the table. */

import type { Swing } from '../player/model.ts';

export function isForTrees(swing: Swing): boolean {
  return swing === 'punch' || swing === 'curved-left' || swing === 'curved-right';
}
