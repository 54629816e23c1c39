/** Which holes the card command works out, and the budgets of the cards that it prints: a target is for the whole round. */

import type { CardHole } from '../../core/card/model.ts';
import type { Course } from '../../core/course/model.ts';
import { budgetWords, type RoundBudget } from '../../core/round/budget.ts';
import type { Words } from '../../core/words/words.ts';
import type { RoundTask } from './round-task.ts';

/** What is asked for, alike on every hole. */
export interface CardWish {
  readonly tee: string | undefined;
  readonly holePosition: string | undefined;
  readonly seed: string;
  readonly card: NonNullable<RoundTask['card']>;
  readonly conditions: RoundTask['conditions'];
}

/** The holes to print, and with a target all the others too: they take their share of it, without a card of their own. */
export function cardTasks(
  course: Pick<Course, 'holes'>,
  printed: readonly number[],
  hasTarget: boolean,
  { tee, holePosition, seed, card, conditions }: CardWish,
): readonly RoundTask[] {
  const asked = [...new Set(printed)];
  const others = hasTarget
    ? course.holes.map(({ number }) => number).filter((number) => !asked.includes(number))
    : [];
  const tasks = asked.map(
    (hole): RoundTask => ({
      ...{ hole, seed, plays: 200, peer: null, card, conditions },
      ...(tee === undefined ? {} : { tee }),
      ...(holePosition === undefined ? {} : { holePosition }),
    }),
  );
  const rest = others.map((hole): RoundTask => {
    // A tee or position that this hole does not know is no fault: it is not the hole that was asked for.
    const known = course.holes.find(({ number }) => number === hole);
    const hasTee = known?.tees.some(({ name }) => name === tee) === true;
    const hasPosition = known?.positions.some(({ name }) => name === holePosition) === true;
    return {
      ...{ hole, seed, plays: 0, peer: null, card: null, conditions },
      ...(tee === undefined || !hasTee ? {} : { tee }),
      ...(holePosition === undefined || !hasPosition ? {} : { holePosition }),
    };
  });
  const order = course.holes.map(({ number }) => number);
  return [...tasks, ...rest].sort((a, b) => order.indexOf(a.hole) - order.indexOf(b.hole));
}

/** The cards to print, in the order asked for, each with its share of the round's budget. */
export function cardsToPrint(
  holes: readonly { readonly hole: number; readonly par: number; readonly card: CardHole | null }[],
  printed: readonly number[],
  budget: Pick<RoundBudget, 'holes'> | null,
  words: Words,
): readonly CardHole[] {
  return printed.flatMap((number): CardHole[] => {
    const hole = holes.find((one) => one.hole === number);
    if (hole === undefined || hole.card === null) return [];
    const share = budget?.holes.find((one) => one.hole === number);
    return [
      {
        ...hole.card,
        budget:
          share === undefined
            ? null
            : { strokes: share.budget, words: budgetWords(share.budget, hole.par, words) },
      },
    ];
  });
}
