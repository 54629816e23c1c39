/** A note where a bag has no shot for the last stretch to the green. */

import type { Fault } from '../result.ts';
import { told, toldFault } from '../words/told.ts';
import type { ShotSpread } from './model.ts';

/** Most greens are missed by less than this, and a bag that has nothing so short flies past them again, metres. */
const SHORT_ENOUGH_M = 50;

/** A warning where the shortest shot carries farther than 50 m and no club has part swings; null elsewhere. */
export function noShortShot(spreads: readonly ShotSpread[]): Fault | null {
  if (spreads.length === 0 || spreads.some(({ swing }) => swing === 'part')) return null;
  const shortest = spreads.reduce((a, b) => (b.carryMean < a.carryMean ? b : a));
  if (shortest.carryMean <= SHORT_ENOUGH_M) return null;
  return toldFault({
    severity: 'warning',
    code: 'no-short-shot',
    where: 'bag',
    message: told(({ faults }) => faults.player.noShortShot, {
      club: shortest.club.name,
      metres: shortest.carryMean,
    }),
  });
}
