/** The wind of the day as it will be felt on a hole. */

import type { Words } from '../words/words.ts';
import { turnOf } from './frame.ts';

/** `into, from the left`; `bearing` of the hole in radians clockwise from north, `fromDeg` where the wind blows from. */
export function windOnHole(bearing: number, fromDeg: number, { day }: Words): string {
  // 0: it blows straight at the player; pi: from behind.
  const turn = turnOf(bearing, (fromDeg * Math.PI) / 180);
  const degrees = Math.abs(turn) * (180 / Math.PI);
  const said = day.windOn;
  const isLeft = turn < 0;
  if (degrees < 20) return said.into;
  if (degrees > 160) return said.behind;
  if (degrees < 70) return isLeft ? said.intoLeft : said.intoRight;
  if (degrees > 110) return isLeft ? said.behindLeft : said.behindRight;
  return isLeft ? said.acrossLeft : said.acrossRight;
}
