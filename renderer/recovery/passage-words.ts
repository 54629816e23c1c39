/** How a shot passes the trees, in words. */

import { clearanceWords } from '../../core/recovery/clearance.ts';
import type { Passage, WayOut } from '../../core/recovery/recovery-shots.ts';
import { chanceText, type Units } from '../state/measures.ts';
import type { TreePassage } from '../workers/ways-out.ts';

export const WAY_WORDS: Readonly<Record<WayOut, string>> = {
  forwards: 'forwards',
  sideways: 'sideways',
  backwards: 'backwards',
};

export const PASSAGE_WORDS: Readonly<Record<Passage, string>> = {
  open: 'no tree in the way',
  under: 'below the branches',
  over: 'over the tops',
  through: 'through leaves and twigs',
};

/** Whole degrees: `14°`. */
export function degreesText(degrees: number): string {
  return `${Math.round(degrees)}°`;
}

/** `A gap of 14°; two of three of your strikes stay within 9°. 83 % get through.` */
export function gapWords({ gap, spreadDeg, throughChance }: TreePassage): string {
  const opening =
    gap === null
      ? 'No opening there for this club'
      : gap.widthDeg > 179
        ? 'Open to both sides'
        : `A gap of ${degreesText(gap.widthDeg)}`;
  return `${opening}; two of three of your strikes stay within ${degreesText(spreadDeg)}. ${chanceText(throughChance)} of solid strikes get through.`;
}

/** One line for each height that is in doubt: `needs 14 m at 35 m; your 9-iron has 17 ± 3`. */
export function heightLines(passage: TreePassage, units: Units): readonly string[] {
  const { over, under } = passage;
  return [
    ...(over === null ? [] : [clearanceWords(over, passage, units, 'over')]),
    ...(under === null ? [] : [clearanceWords(under, passage, units, 'under')]),
  ].map((line) => line.charAt(0).toUpperCase() + line.slice(1));
}
