import { describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import type { Course } from '../../../core/course/model.ts';
import { MOST_KEPT_DAYS } from '../../../electron/contract/wire.ts';
import type { Action } from '../../../renderer/state/actions.ts';
import type { AppState, HoleResult, OpenDocument } from '../../../renderer/state/app-state.ts';
import { redoLabel, undoLabel } from '../../../renderer/state/history.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { dayFor, keepingDay } from '../../../renderer/state/kept-days.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import {
  currentDay,
  currentResult,
  isPlanRough,
  settledWorkKey,
  workKey,
} from '../../../renderer/state/selectors.ts';
import { mustParse } from '../../course/builders.ts';
import { smallCourse } from '../small-course.ts';

const course = mustParse(smallCourse());
const windy: Conditions = {
  ...DEFAULT_CONDITIONS,
  wind: { speedMps: 6, fromDeg: 270, gustSdMps: 1 },
  temperatureC: 8,
};

function opened(token = 'course-token'): Action {
  const entry = { token, name: 'small.geojson', kind: 'course', readOnly: false } as const;
  const document: OpenDocument<Course> = {
    entry: { ...entry, modifiedAt: 0, bytes: 1 },
    ...{ text: '{}', revision: 'r1', value: course },
  };
  return { type: 'course-opened', document };
}

function withDay(state: AppState, conditions: Conditions, mark?: string): AppState {
  const situation = { ...state.history.present, conditions };
  const marked = mark === undefined ? {} : { mark };
  return reduce(state, { type: 'situation-taken', situation, label: 'wind from the west', ...marked });
}

const first = (state: AppState) => state.course!.value.holes[0]!;
const start = (): AppState => reduce(initialState(), opened());

describe('the day', () => {
  it('is undone and redone as a step with a name', () => {
    const changed = withDay(start(), windy);
    expect(currentDay(changed)).toBe(windy);
    expect(undoLabel(changed.history)).toBe('wind from the west');
    const undone = reduce(changed, { type: 'undone' });
    expect(currentDay(undone)).toEqual(DEFAULT_CONDITIONS);
    expect(redoLabel(undone.history)).toBe('wind from the west');
    expect(currentDay(reduce(undone, { type: 'redone' }))).toEqual(windy);
  });

  it('names the work on every hole, so that no plan of another day is taken for it', () => {
    const before = start();
    const after = withDay(before, windy);
    for (const hole of course.holes) {
      expect(settledWorkKey(after, hole)).not.toBe(settledWorkKey(before, hole));
      expect(settledWorkKey(withDay(after, { ...windy }), hole)).toBe(settledWorkKey(after, hole));
      for (const change of [{ season: 'bare' }, { greenSpeedFt: 12 }, { humidity: 0.1 }] as const)
        expect(settledWorkKey(withDay(before, { ...windy, ...change }), hole)).not.toBe(
          settledWorkKey(after, hole),
        );
    }
  });

  it('while being tried on the dial is worked out roughly only', () => {
    const before = start();
    const situation = { ...before.history.present, conditions: windy };
    const tried = reduce(before, { type: 'situation-previewed', situation });
    expect(currentDay(tried)).toBe(windy);
    expect(workKey(tried, first(tried))).not.toBe(workKey(before, first(before)));
    expect(settledWorkKey(tried, first(tried))).toBe(settledWorkKey(before, first(before)));
    expect(tried.settings.days ?? []).toEqual([]);
  });

  it('leaves the result of the day before behind, and calls its plan rough until the new one is there', () => {
    const before = start();
    const key = workKey(before, first(before));
    const plan = { options: [] } as unknown as HoleResult['teePlan'];
    const result = { key, hole: 1, rough: false, teePlan: plan } as HoleResult;
    const ball = first(before).line[0]!;
    const planned = [
      { type: 'work-started', hole: 1, key },
      { type: 'work-finished', result },
      {
        type: 'plan-arrived',
        answer: { hole: 1, resultKey: key, ball, conditions: DEFAULT_CONDITIONS, rough: false, plan },
      },
    ] satisfies readonly Action[];
    const ready = planned.reduce(reduce, before);
    expect(currentResult(ready)).toBe(result);
    expect(isPlanRough(ready)).toBe(false);
    const changed = withDay(ready, windy);
    expect(currentResult(changed)).toBeNull();
    expect(isPlanRough(changed)).toBe(true);
    // back again: what was worked out serves still
    expect(currentResult(reduce(changed, { type: 'undone' }))).toBe(result);
  });

  it('is kept in the settings for its course and is there when the course opens again', () => {
    const left = withDay(start(), windy);
    expect(left.settings.days).toHaveLength(1);
    const again = reduce({ ...initialState(), settings: left.settings }, opened());
    expect(currentDay(again)).toEqual(windy);
    expect(undoLabel(again.history)).toBeNull();
    const other = reduce(left, opened('another-course'));
    expect(currentDay(other)).toEqual(DEFAULT_CONDITIONS);
    // the same file anew, changed on disk
    expect(currentDay(reduce(left, opened()))).toEqual(windy);
  });

  it('is no longer kept once it is an ordinary one, by hand or by undo', () => {
    const left = withDay(start(), windy);
    expect(withDay(left, DEFAULT_CONDITIONS).settings.days).toEqual([]);
    expect(reduce(left, { type: 'undone' }).settings.days).toEqual([]);
  });
});

describe('kept days', () => {
  it('of another version of the program or damaged are ordinary days', () => {
    for (const conditions of ['', '{', '{"temperatureC":"warm"}', '[1]', 'null'])
      expect(dayFor('a', [{ course: 'a', conditions }])).toEqual(DEFAULT_CONDITIONS);
  });

  it('are the last changed ones where there are too many', () => {
    let kept: ReturnType<typeof keepingDay> = [];
    for (let i = 0; i < MOST_KEPT_DAYS + 3; i++) kept = keepingDay(`course ${i}`, windy, kept);
    kept = keepingDay('course 5', { ...windy, temperatureC: 3 }, kept);
    expect(kept).toHaveLength(MOST_KEPT_DAYS);
    expect(dayFor('course 5', kept).temperatureC).toBe(3);
    expect(dayFor('course 1', kept)).toEqual(DEFAULT_CONDITIONS);
    expect(dayFor(`course ${MOST_KEPT_DAYS + 2}`, kept)).toEqual(windy);
  });
});
