/** Lengths of the yards that people chose, for words that are told in them. */

import type { Words } from './words.ts';

/** Metres in a yard and in a foot (international yard and pound agreement of 1959). */
export const M_PER_YARD = 0.9144;
export const M_PER_FOOT = 0.3048;

export function inYards(metres: number): number {
  return metres / M_PER_YARD;
}

export function inFeet(metres: number): number {
  return metres / M_PER_FOOT;
}

/** The words for somebody who chose yards: what a course lacks is told in them, and heights in feet. */
export function wordsInUnits(words: Words, units: 'yards' | 'metres'): Words {
  if (units === 'metres') return words;
  return { ...words, courseNotes: { ...words.courseNotes, ...words.courseNotes.yards } };
}
