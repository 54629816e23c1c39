/** The distance ladder and the lean of each club in sentences, for those who do not see the pictures. */

import type { Gap, Rung } from './gaps.ts';
import type { ShotSpread } from './model.ts';
import type { Estimate } from './posterior/intervals.ts';

const YARD_M = 0.9144;
const DEGREE = Math.PI / 180;

type Units = 'yards' | 'metres';

function lengths(units: Units): { readonly number: (metres: number) => number; readonly word: string } {
  const unit = units === 'yards' ? YARD_M : 1;
  return { number: (metres) => Math.round(metres / unit), word: units };
}

/** "Driver carries 188 yards on average, half of its solid strikes between 180 and 196." */
export function rungWords(rung: Rung, units: Units): string {
  const { number, word } = lengths(units);
  const doubt =
    rung.doubt === undefined
      ? ''
      : ` The average itself lies between ${number(rung.doubt.low)} and ${number(rung.doubt.high)} nine times in ten.`;
  return `${rung.club} carries ${number(rung.carryM)} ${word} on average, half of its solid strikes between ${number(rung.middleHalf.low)} and ${number(rung.middleHalf.high)}.${doubt}`;
}

/** What a gap means for play; null where there is nothing to say of it. */
export function gapWords(gap: Gap, units: Units): string | null {
  const { number, word } = lengths(units);
  const [longer, shorter] = [gap.longer.club, gap.shorter.club];
  const times = Math.round(100 * gap.overlap);
  const apart = number(Math.abs(gap.gapM));
  switch (gap.kind) {
    case 'even':
      return null;
    case 'wide':
      return `${apart} ${word} lie between ${longer} and ${shorter}: lengths in between need a shorter swing.`;
    case 'narrow':
      return `${longer} and ${shorter} lie ${apart} ${word} apart: ${times} times in a hundred the longer of the two comes down shorter.`;
    case 'turned':
      return `${longer} carries no farther than ${shorter}, though it has less loft.`;
  }
}

/** "7-iron leans 1.2° to the right; nine times in ten the lean lies between 0.3° left and 2.1° right." */
export function leanWords(spread: ShotSpread, lean: Estimate | null): string {
  const name = spread.swing === 'full' ? spread.club.name : `${spread.club.name}, ${spread.swing} swing`;
  const degrees = spread.directionMean / DEGREE;
  const main =
    Math.abs(degrees) < 0.05 ? `${name} has no lean` : `${name} leans ${sideText(spread.directionMean)}`;
  const doubt =
    lean === null
      ? ''
      : `; nine times in ten the lean lies between ${sideText(lean.low)} and ${sideText(lean.high)}`;
  return `${main}${doubt}. Two in three solid strikes start within ${(spread.directionSd / DEGREE).toFixed(1)}° of it.`;
}

/** `1.2° right`. */
export function sideText(radians: number): string {
  const degrees = Math.abs(radians / DEGREE);
  if (degrees < 0.05) return '0°';
  return `${degrees.toFixed(1)}° ${radians > 0 ? 'right' : 'left'}`;
}
