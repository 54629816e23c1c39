/** A match is against the opponent of now: not an earlier one, and not nobody. */

import { describe, expect, it } from 'vitest';
import { parseCourseText } from '../../../core/course/parse.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import { ledgerKey } from '../../../renderer/round/effects/follow-ledgers.ts';
import { matchHandicaps, missingFor, opponentOf } from '../../../renderer/round/effects/follow-playing.ts';
import { roundHoles } from '../../../renderer/round/state/planned-holes.ts';
import { FIRST_ROUND, FIRST_WISHES, type RoundState } from '../../../renderer/round/state/round-state.ts';
import type { AppState } from '../../../renderer/state/app-state.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { settledWorkKey } from '../../../renderer/state/selectors.ts';
import { smallCourseText, smallPlayerText } from '../small-course.ts';

/** Course and player open, every hole worked out as far as the round asks. */
function app(handicap?: number): AppState {
  const course = parseCourseText(smallCourseText());
  const player = parsePlayerText(smallPlayerText());
  if (!course.ok || !player.ok) throw new Error('the small course is damaged');
  const entry = { modifiedAt: 0, bytes: 1, readOnly: false, name: 'a', token: 't' };
  const rest = { text: '', revision: 'x' };
  const value = { ...player.value };
  delete (value as { handicap?: number }).handicap;
  let state = reduce(initialState(), {
    type: 'course-opened',
    document: { ...rest, entry: { ...entry, kind: 'course' }, value: course.value },
  });
  state = reduce(state, {
    type: 'player-opened',
    document: {
      ...rest,
      entry: { ...entry, kind: 'player' },
      value: handicap === undefined ? value : { ...value, handicap },
    },
  });
  const work = Object.fromEntries(
    course.value.holes.map((hole) => [
      hole.number,
      {
        status: 'done',
        result: { key: settledWorkKey(state, hole), teePlan: { options: [{ kind: 'shot' }] } },
      },
    ]),
  );
  return { ...state, work: work as unknown as AppState['work'] };
}

function match(peerHandicap: number | null): RoundState {
  return { ...FIRST_ROUND, wishes: { ...FIRST_WISHES, game: 'match', peerHandicap } };
}

/** Every hole counted for the opponent that `state` has. */
function counted(open: AppState, state: RoundState): RoundState {
  const scores = { least: 3, odds: [1] };
  const ledgers = Object.fromEntries(
    roundHoles(open).ready.map((hole) => [
      hole.hole,
      { key: ledgerKey(hole, state, open.player?.value.handicap), answer: { peerScores: scores } },
    ]),
  );
  return { ...state, ledgers: ledgers as unknown as RoundState['ledgers'] };
}

describe('a match', () => {
  it('waits until the opponent of now is counted: scores of an earlier one are not theirs', () => {
    const open = app(18);
    const state = counted(open, match(5));
    expect(missingFor(open, state)).toBeNull();
    expect(opponentOf(open, state)).toHaveLength(2);
    const changed = { ...state, wishes: { ...state.wishes, peerHandicap: 20 } };
    expect(missingFor(open, changed)).toBe('opponent');
    expect(opponentOf(open, changed)).toEqual([]);
  });

  it('without any handicap asks for one, and goes on once the opponent has one', () => {
    const open = app();
    expect(missingFor(open, match(null))).toBe('handicap');
    expect(missingFor(open, match(12))).toBe('opponent');
    expect(missingFor(open, counted(open, match(12)))).toBeNull();
  });

  it('takes the course handicaps of both from rating and slope', () => {
    const open = app(20);
    const course = open.course!.value;
    const par = course.holes.reduce((sum, hole) => sum + hole.par, 0);
    const rated = { ...FIRST_WISHES, peerHandicap: 7.4, courseRating: par + 0.5, slopeRating: 125 };
    // Rule 6.1a of the Rules of Handicapping: 20 x 125 / 113 + 0.5 = 22.62, 7.4 x 125 / 113 + 0.5 = 8.69.
    expect(matchHandicaps(rated, course, open.player!.value)).toEqual({ own: 23, theirs: 9 });
  });
});
