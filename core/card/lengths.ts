/** Lengths as a card writes them: whole yards or metres, paces on the green. */

import type { Words } from '../words/words.ts';

export type CardUnits = 'yards' | 'metres';

const YARD_M = 0.9144;
/** A pace is taken as a yard, or as a metre where metres are in use (common practice, no source). */

export function lengthNumber(metres: number, units: CardUnits): number {
  return Math.round(units === 'yards' ? metres / YARD_M : metres);
}

export function lengthWords(metres: number, units: CardUnits): string {
  return `${lengthNumber(metres, units)} ${units === 'yards' ? 'yd' : 'm'}`;
}

export function paces(metres: number, units: CardUnits, { cards }: Words): string {
  return cards.paces({ count: lengthNumber(metres, units) });
}

/** `left` or `right` of something, by the sign of metres to the right. */
export function sideOf(rightM: number): 'left' | 'right' {
  return rightM < 0 ? 'left' : 'right';
}
