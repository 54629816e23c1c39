/** Which clubs are not among the shots because of the bunker's lip. */

import type { LipBlock } from '../../core/plan/model.ts';
import type { Words } from '../../core/words/words.ts';
import { heightText, lengthText, type Units } from '../state/measures.ts';
import { currentPlan } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { useWords } from '../state/use-words.ts';

export function LipNote() {
  const words = useWords();
  const blocks = useApp((state) => currentPlan(state)?.lipBlocks ?? null);
  const units = useApp((state) => state.settings.units);
  if (blocks === null || blocks.length === 0) return null;
  return <p class="faint">{lipWords(blocks, units, words)}</p>;
}

export function lipWords(blocks: readonly LipBlock[], units: Units, words: Words): string {
  const { lipM, atM } = blocks[0]!;
  const names = blocks.map(({ club, swing }) =>
    swing === 'full' ? club : words.trees.swungClub({ swing: words.golf.shortSwings[swing], club }),
  );
  return words.plan.lipBlocks({
    clubs: words.figures.list(names),
    lip: heightText(lipM, units, words),
    at: lengthText(atM, units),
  });
}
