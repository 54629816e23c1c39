import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { currentWays } from '../../../renderer/recovery/current-ways.ts';
import { passageLabels } from '../../../renderer/recovery/passage-painter.ts';
import { gapWords, heightLines } from '../../../renderer/recovery/passage-words.ts';
import type { AppState } from '../../../renderer/state/app-state.ts';
import { withHole } from '../../../renderer/state/history.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { workKey } from '../../../renderer/state/selectors.ts';
import type { TreePassage } from '../../../renderer/workers/ways-out.ts';
import { at, mustParse } from '../../course/builders.ts';
import { smallCourse } from '../small-course.ts';
import { english } from '../../../core/words/english/english.ts';

const DEGREE = Math.PI / 180;
const course = mustParse(smallCourse());
const entry = { token: 'course-token', name: 'small.geojson', kind: 'course' } as const;

function inWood(): AppState {
  const opened = reduce(initialState(), {
    type: 'course-opened',
    document: {
      entry: { ...entry, readOnly: false, modifiedAt: 0, bytes: 1 },
      ...{ text: '{}', revision: 'r1', value: course },
    },
  });
  const situation = withHole(opened.history.present, 1, { ball: at(0, 45) });
  return reduce(opened, { type: 'situation-taken', situation, label: 'move the ball' });
}

const passage: TreePassage = {
  ...{ club: '9-iron', swing: 'full', bearing: 0, carryM: 110, passage: 'over' },
  gap: { from: -8 * DEGREE, to: 6 * DEGREE, widthDeg: 14 },
  otherGaps: [],
  ...{ spreadDeg: 9.4, throughChance: 0.83 },
  over: { atM: 35, needsM: 14, hasM: 17, sdM: 3, chance: 0.84 },
  under: null,
};

describe('the ways out on screen', () => {
  const state = inWood();
  const resultKey = workKey(state, course.holes[0]!);
  const answered = reduce(state, {
    type: 'ways-out-arrived',
    answer: { hole: 1, resultKey, ball: at(0, 45), ways: [] },
  });

  it('are those for where the ball lies, on the day as it is', () => {
    expect(currentWays(state)).toBeNull();
    expect(currentWays(answered)).not.toBeNull();
    const { present } = answered.history;
    const elsewhere = withHole(present, 1, { ball: at(0, 46) });
    const bare = { ...present, conditions: { ...DEFAULT_CONDITIONS, season: 'bare' } as const };
    for (const situation of [elsewhere, bare])
      expect(
        currentWays(reduce(answered, { type: 'situation-taken', situation, label: 'change' })),
      ).toBeNull();
  });

  it('are dropped when another hole is shown', () => {
    expect(reduce(answered, { type: 'hole-shown', hole: 2 }).answers.waysOut).toBeNull();
    const late = { hole: 2, ball: at(0, 45), shot: 'a', passage };
    expect(reduce(answered, { type: 'tree-passage-arrived', answer: late })).toBe(answered);
  });
});

describe('how a shot passes the trees', () => {
  it('is told by gap, spread and height', () => {
    expect(gapWords(passage, english)).toBe(
      'A gap of 14°; two of three of your strikes stay within 9°. 83\u202f% of solid strikes get through.',
    );
    expect(heightLines(passage, 'metres', english)).toEqual(['Needs 14 m at 35 m; your 9-iron has 17 ± 3']);
    expect(heightLines(passage, 'yards', english)).toEqual(['Needs 46 ft at 38 yd; your 9-iron has 56 ± 10']);
    expect(gapWords({ ...passage, gap: null }, english)).toMatch(/^No opening there for this club/);
    const open = { from: -Math.PI / 2, to: Math.PI / 2, widthDeg: 180.5 };
    expect(gapWords({ ...passage, gap: open }, english)).toMatch(/^Open to both sides/);
    expect(passageLabels({ ...passage, gap: open }, { x: 0, y: 0 }, english)).toEqual([]);
  });

  it('has its width written beside the wedge, within the carry', () => {
    const [label] = passageLabels({ ...passage, carryM: 20 }, { x: 5, y: 5 }, english);
    expect(label?.text).toBe('gap 14°');
    const { x, y } = label!.at;
    expect(Math.hypot(x - 5, y - 5)).toBeCloseTo(12, 9);
    expect(Math.atan2(x - 5, y - 5)).toBeCloseTo(6 * DEGREE, 9);
  });
});
