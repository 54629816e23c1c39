/** One hole's card has its share of the round's target, not all of it. */

import { describe, expect, it } from 'vitest';
import type { CardHole } from '../../core/card/model.ts';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { parseCourseText } from '../../core/course/parse.ts';
import { makeBudget } from '../../core/round/budget.ts';
import { english } from '../../core/words/english/english.ts';
import { cardsToPrint, cardTasks, type CardWish } from '../../electron/cli/card-round.ts';
import { smallCourseText } from '../renderer/small-course.ts';

const parsed = parseCourseText(smallCourseText());
if (!parsed.ok) throw new Error('the course does not parse');
const [one, two] = parsed.value.holes;
const course = { holes: [one!, { ...two!, positions: [] }] };
const wish: CardWish = {
  ...{ tee: one!.tees[0]?.name, holePosition: 'front', seed: 's' },
  ...{ card: { units: 'yards', language: 'en' }, conditions: DEFAULT_CONDITIONS },
};

describe('cards of some of the holes', () => {
  it('with a target the whole round is worked out, cards and counts only where they are printed', () => {
    const tasks = cardTasks(course, [1], true, wish);
    expect(tasks.map(({ hole, plays }) => [hole, plays])).toEqual([
      [1, 200],
      [2, 0],
    ]);
    expect(tasks.map(({ card }) => card !== null)).toEqual([true, false]);
    expect(tasks[0]!.holePosition).toBe('front');
    // The other hole has no such position: that is not what was asked for.
    expect(tasks[1]!.holePosition).toBeUndefined();
    expect(cardTasks(course, [1], false, wish)).toHaveLength(1);
  });

  it('each has its share of the whole target, in the order asked for', () => {
    const holes = [4, 3, 5].map((par, i) => ({ hole: i + 1, par, card: { hole: i + 1 } as CardHole }));
    const budget = makeBudget(
      holes.map(({ hole, par }) => ({ hole, par, strokeIndex: hole })),
      14,
    );
    const printed = cardsToPrint(holes, [3, 1], budget, english);
    // Two strokes over par go to the two lowest stroke indexes: holes 1 and 2 (common practice, no source).
    expect(printed.map((card) => [card.hole, card.budget?.strokes])).toEqual([
      [3, 5],
      [1, 5],
    ]);
  });
});
