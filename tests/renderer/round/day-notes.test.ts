/** What the course's day adds to the cards of the round, and what a new round keeps of it. */

import { describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { parseCourseText } from '../../../core/course/parse.ts';
import { dayOfRound } from '../../../core/round/round-day.ts';
import { wordsIn } from '../../../core/words/words.ts';
import { roundToEnter } from '../../../renderer/round/after/new-round.ts';
import { notesOf } from '../../../renderer/round/day/day-plan.ts';
import { FIRST_WISHES } from '../../../renderer/round/state/round-state.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { smallCourseText } from '../small-course.ts';

const parsed = parseCourseText(smallCourseText());
if (!parsed.ok) throw new Error('the small course is damaged');
const course = parsed.value;
const english = wordsIn('en');

function blowing(speedMps: number, fromDeg: number): Conditions {
  return { ...DEFAULT_CONDITIONS, wind: { speedMps, fromDeg, gustSdMps: 0 } };
}

describe('the day of the course', () => {
  it('is told on the cards as its wind is felt on each hole', () => {
    // The first hole is played to the north, the second to the south.
    const notes = notesOf(blowing(5, 0), 'metres', null, course, english);
    expect([notes(1).wind, notes(2).wind]).toEqual(['wind 5 m/s into', 'wind 5 m/s behind']);
    const still = notesOf(blowing(0, 90), 'metres', null, course, english);
    expect(still(1).wind).toBeNull();
  });

  it('goes into a round that is begun', () => {
    const entry = {
      token: 'here',
      name: 'a',
      kind: 'course',
      modifiedAt: 0,
      bytes: 1,
      readOnly: false,
    } as const;
    const document = { entry, text: '', revision: 'x', value: course };
    const open = reduce(initialState(), { type: 'course-opened', document });
    const situation = { ...open.history.present, conditions: blowing(6, 45) };
    const windy = reduce(open, { type: 'situation-taken', situation, label: 'wind' });
    expect(dayOfRound(roundToEnter(windy, FIRST_WISHES, null, '2026-05-01'))).toEqual(blowing(6, 45));
  });
});
