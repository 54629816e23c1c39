/** How a shot passes the trees, in words. */

import { clearanceWords } from '../../core/recovery/clearance.ts';
import { capital, type Words } from '../../core/words/words.ts';
import { chanceText, type Units } from '../state/measures.ts';
import type { TreePassage } from '../workers/ways-out.ts';

/** Whole degrees: `14°`. */
export function degreesText(degrees: number): string {
  return `${Math.round(degrees)}°`;
}

/** `A gap of 14°; two of three of your strikes stay within 9°. 83 % get through.` */
export function gapWords({ gap, spreadDeg, throughChance }: TreePassage, { trees }: Words): string {
  const opening =
    gap === null
      ? trees.opening.none
      : gap.widthDeg > 179
        ? trees.opening.open
        : trees.opening.gap({ degrees: degreesText(gap.widthDeg) });
  return trees.gapWords({ opening, spread: degreesText(spreadDeg), chance: chanceText(throughChance) });
}

/** One line for each height that is in doubt: `needs 14 m at 35 m; your 9-iron has 17 ± 3`. */
export function heightLines(passage: TreePassage, units: Units, words: Words): readonly string[] {
  const { over, under } = passage;
  return [
    ...(over === null ? [] : [clearanceWords(over, passage, units, words, 'over')]),
    ...(under === null ? [] : [clearanceWords(under, passage, units, words, 'under')]),
  ].map((line) => capital(line));
}
