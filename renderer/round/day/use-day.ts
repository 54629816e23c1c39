/** Cards and the day's sheet for whichever page shows them. */

import type { CardHole } from '../../../core/card/model.ts';
import type { PreparationSheet } from '../../../core/card/preparation.ts';
import { remember } from '../../state/remember.ts';
import { currentDay } from '../../state/selectors.ts';
import { useApp } from '../../state/use-app.ts';
import { cardKey } from '../effects/follow-cards.ts';
import type { RoundHoles } from '../state/planned-holes.ts';
import type { RoundState } from '../state/round-state.ts';
import { useOutlook, useRound, useRoundHoles } from '../state/use-round.ts';
import { preparationOf } from './day-plan.ts';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';
import { budgetWords } from '../../../core/round/budget.ts';

/** Cards that are made, with the budgets of the target; identical for equal questions. */
const cardsOf = remember(
  (
    holes: RoundHoles,
    kept: RoundState['cards'],
    units: 'yards' | 'metres',
    outlook: ReturnType<typeof useOutlook>,
    words: Words,
  ): readonly CardHole[] => {
    const isWhole = holes.ready.length === holes.all.length;
    return holes.ready.flatMap((hole, i): CardHole[] => {
      const known = kept[hole.hole];
      if (known?.key !== cardKey(hole, units, words.language)) return [];
      const budget = outlook?.budget.holes[i];
      if (!isWhole || budget === undefined) return [known.card];
      return [
        {
          ...known.card,
          budget: { strokes: budget.budget, words: budgetWords(budget.budget, hole.par, words) },
        },
      ];
    });
  },
);

export function useCards(): readonly CardHole[] {
  const holes = useRoundHoles();
  const kept = useRound((state) => state.cards);
  const units = useApp((app) => app.settings.units);
  return cardsOf(holes, kept, units, useOutlook(), useWords());
}

const penaltiesOf = remember((ledgers: RoundState['ledgers'], count: number): number | null => {
  const all = Object.values(ledgers);
  return all.length < count
    ? null
    : all.reduce((sum, { answer }) => sum + answer.ledger.penaltyBalls.mean, 0);
});

export function usePreparation(): PreparationSheet | null {
  const words = useWords();
  const cards = useCards();
  const day = useRound((state) => state.wishes.day);
  const ledgers = useRound((state) => state.ledgers);
  const course = useApp((app) => app.course?.value ?? null);
  const player = useApp((app) => app.player?.value ?? null);
  const units = useApp((app) => app.settings.units);
  const conditions = useApp(currentDay);
  if (course === null || player === null) return null;
  const balls = penaltiesOf(ledgers, course.holes.length);
  return preparationOf(day, conditions, units, course, player, cards, balls, words);
}
