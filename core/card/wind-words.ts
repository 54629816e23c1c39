/** The wind of the day as it will be felt on a hole. */

import { turnOf } from './frame.ts';

/** `into, from the left`; `bearing` of the hole in radians clockwise from north, `fromDeg` where the wind blows from. */
export function windOnHole(bearing: number, fromDeg: number): string {
  // 0: it blows straight at the player; pi: from behind.
  const turn = turnOf(bearing, (fromDeg * Math.PI) / 180);
  const degrees = Math.abs(turn) * (180 / Math.PI);
  const side = turn < 0 ? 'left' : 'right';
  if (degrees < 20) return 'into';
  if (degrees > 160) return 'behind';
  if (degrees < 70) return `into, from the ${side}`;
  if (degrees > 110) return `behind, from the ${side}`;
  return `across, from the ${side}`;
}
