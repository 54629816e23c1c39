/** The target that follows from wishes, course and player. */

import { describe, expect, it } from 'vitest';
import { parseCourseText } from '../../../core/course/parse.ts';
import type { Course } from '../../../core/course/model.ts';
import { scoreToMeet } from '../../../core/round/target.ts';
import { firstScore, strokesFor, targetOf } from '../../../renderer/round/state/planned-holes.ts';
import { FIRST_WISHES, type Wishes } from '../../../renderer/round/state/round-state.ts';
import { smallCourseText } from '../small-course.ts';

function course(par = 70): Course {
  const parsed = parseCourseText(smallCourseText());
  if (!parsed.ok) throw new Error('the course does not parse');
  const hole = parsed.value.holes[0]!;
  const holes = Array.from({ length: 18 }, (_, i) => ({
    ...hole,
    number: i + 1,
    strokeIndex: i + 1,
    par: i < par - 54 ? 4 : 3,
  }));
  return { ...parsed.value, holes };
}

function wishes(change: Partial<Wishes>): Wishes {
  return { ...FIRST_WISHES, ...change };
}

describe('the target', () => {
  it('is the next round number above what the handicap makes of par, until the person says', () => {
    expect(firstScore(course(), null)).toBe(90);
    expect(targetOf(FIRST_WISHES, course(), null)).toEqual({ kind: 'beat', score: 90 });
    expect(targetOf(wishes({ score: 80 }), course(), null)).toEqual({ kind: 'beat', score: 80 });
  });

  it('beat 90 on par 70 asks for 18 bogeys and one stroke to spare (common practice, no source)', () => {
    expect(scoreToMeet(targetOf(wishes({ score: 90 }), course(), null), 70)).toBe(89);
  });

  it('net par takes the playing handicap of stroke play from rating and slope', () => {
    // Index 18 (nobody says otherwise), slope 125, rating 72.1, par 70: 18 x 125 / 113 + 2.1 = 22.01; x 0.95 = 20.9.
    const rated = wishes({ targetKind: 'net-par', courseRating: 72.1, slopeRating: 125 });
    expect(strokesFor(rated, course(), null)).toBe(21);
    expect(scoreToMeet(targetOf(rated, course(), null), 70)).toBe(91);
  });

  it('a handicap aim asks for a score whose differential is that low', () => {
    const aim = wishes({ targetKind: 'handicap', aim: 12 });
    expect(scoreToMeet(targetOf(aim, course(), null), 70)).toBe(82);
  });
});
