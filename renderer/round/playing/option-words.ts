/** An option of a tee by its id, in words. */

import type { SpotPlan } from '../../../core/plan/model.ts';
import type { Words } from '../../../core/words/words.ts';
import { shotPhrase } from '../../panels/shot-words.ts';

export function optionWords(plan: SpotPlan, id: string, words: Words): string {
  const option = plan.options.find((candidate) => candidate.id === id);
  if (option === undefined) return id;
  // A second aim of the same swing is told from the first by its place among the tee's options.
  const alike = plan.options.filter(
    ({ kind, club, swing }) => kind === 'shot' && club === option.club && swing === option.swing,
  );
  const rank = alike.indexOf(option);
  return rank > 0
    ? words.round.playing.aimRank({ shot: shotPhrase(option, words), rank: rank + 1 })
    : shotPhrase(option, words);
}
