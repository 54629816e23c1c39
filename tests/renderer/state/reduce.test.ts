import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import type { Action } from '../../../renderer/state/actions.ts';
import type { AppState, HoleResult, OpenDocument } from '../../../renderer/state/app-state.ts';
import { withHole } from '../../../renderer/state/history.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { currentResult, settledWorkKey, strokesTaken, tallyWork } from '../../../renderer/state/selectors.ts';
import type { Course } from '../../../core/course/model.ts';
import { mustParse } from '../../course/builders.ts';
import { smallCourse } from '../small-course.ts';

const course = mustParse(smallCourse());

function openDocument(token = 'course-token', revision = 'r1'): OpenDocument<Course> {
  const entry = {
    token,
    name: 'small.geojson',
    kind: 'course',
    readOnly: false,
    modifiedAt: 0,
    bytes: 1,
  } as const;
  return { entry, text: '{}', revision, value: course };
}

function after(...actions: readonly Action[]): AppState {
  return actions.reduce(reduce, initialState());
}

const opened = { type: 'course-opened', document: openDocument() } as const;
const fault = {
  severity: 'error',
  code: 'not-json',
  where: 'line 3',
  message: 'A comma is missing.',
} as const;

function resultFor(state: AppState, hole: number): HoleResult {
  const [tee] = course.holes[0]!.tees;
  return {
    key: settledWorkKey(state, course.holes.find((each) => each.number === hole)!),
    hole,
    rough: false,
    origin: tee!.at,
    tee: tee!.at,
    pin: tee!.at,
    teeName: tee!.name,
    positionName: 'front',
    lengthM: 100,
    conditions: DEFAULT_CONDITIONS,
    convergence: { spacingsM: [], rmsChange: [], maxChange: [], sweeps: [] },
    teePlan: {
      hole,
      from: { x: 0, y: 0 },
      fromLonLat: tee!.at,
      lie: 'tee',
      distanceToHoleM: 100,
      strokesTaken: 0,
      par: 3,
      options: [],
      recommendation: { optionId: '', reason: '' },
      expectedStrokes: 3.6,
      seed: 'first-light',
    },
    teePicture: null,
  };
}

describe('files', () => {
  it('that are gone are said to be until they are listed again or another is open', () => {
    const { entry } = openDocument();
    const gone = [opened, { type: 'file-gone', entry }, { type: 'file-gone', entry }] as const;
    const kinds = (state: AppState) => state.notices.map(({ kind }) => kind);
    expect(kinds(after(...gone, { type: 'files-listed', files: [] }))).toEqual(['gone']);
    expect(kinds(after(...gone, { type: 'files-listed', files: [entry] }))).toEqual([]);
    const document = openDocument('another-token');
    expect(kinds(after(...gone, { type: 'course-opened', document }))).toEqual([]);
  });

  it('show the first hole of a course that opens', () => {
    expect(after(opened).view.hole).toBe(1);
    expect(after(opened).settings.lastCourse).toBe('course-token');
  });

  it('leave the open course alone when another one is broken, and tell every fault', () => {
    const state = after(opened, {
      type: 'file-refused',
      fileKind: 'course',
      fileName: 'new.geojson',
      faults: [fault, fault],
    });
    expect(state.course?.value.name).toBe(course.name);
    expect(state.notices).toMatchObject([
      { kind: 'broken-file', fileName: 'new.geojson', stillOpen: course.name, faults: [fault, fault] },
    ]);
  });

  it('keep the place and the history when the same file is read again, not when another one is', () => {
    const moved = after(
      opened,
      { type: 'hole-shown', hole: 2 },
      {
        type: 'situation-taken',
        situation: withHole(after(opened).history.present, 2, { ball: [4, 52] }),
        label: 'move the ball',
      },
    );
    const again = reduce(moved, { type: 'course-opened', document: openDocument('course-token', 'r2') });
    expect(again.view.hole).toBe(2);
    expect(again.history.past).toHaveLength(1);
    const other = reduce(moved, { type: 'course-opened', document: openDocument('other-token') });
    expect(other.view.hole).toBe(1);
    expect(other.history.past).toHaveLength(0);
  });
});

describe('another version of the open course', () => {
  const finished = (): AppState => {
    const state = after(opened);
    const results = [1, 2].map((hole) => resultFor(state, hole));
    return results.reduce(
      (next, result) =>
        [
          { type: 'work-started', hole: result.hole, key: result.key } as const,
          { type: 'work-finished', result } as const,
        ].reduce<AppState>(reduce, next),
      state,
    );
  };
  const withHole2 = (par: string): OpenDocument<Course> => {
    const edited = smallCourse();
    for (const feature of edited.features as { properties: Record<string, unknown> | null }[]) {
      if (feature.properties?.['golf'] === 'hole' && feature.properties['ref'] === '2')
        feature.properties = { ...feature.properties, par };
    }
    return { ...openDocument('course-token', 'r2'), value: mustParse(edited) };
  };

  it('keeps the plans of holes that it leaves as they were, and drops those of the others', () => {
    const state = reduce(finished(), { type: 'course-opened', document: withHole2('4') });
    expect(Object.keys(state.work)).toEqual(['1']);
    expect(currentResult(state)?.hole).toBe(1);
  });

  it('keeps the answers on screen with the plan, and drops them with it', () => {
    const conditions = DEFAULT_CONDITIONS;
    const answer = { hole: 1, resultKey: 'k', ball: [4, 52] as const, conditions, rough: false };
    const { teePlan: plan } = resultFor(after(opened), 1);
    const answered = reduce(finished(), { type: 'plan-arrived', answer: { ...answer, plan } });
    const same = reduce(answered, { type: 'course-opened', document: withHole2('4') });
    expect(same.answers.plan).not.toBeNull();
    const second = reduce(reduce(answered, { type: 'hole-shown', hole: 2 }), {
      type: 'plan-arrived',
      answer: { ...answer, hole: 2, plan },
    });
    const other = reduce(second, { type: 'course-opened', document: withHole2('4') });
    expect(other.view.hole).toBe(2);
    expect(other.answers.plan).toBeNull();
  });

  it('begins work that was under way anew', () => {
    const key = settledWorkKey(after(opened), course.holes[0]!);
    const started = after(opened, { type: 'work-started', hole: 1, key });
    expect(reduce(started, { type: 'course-opened', document: withHole2('4') }).work).toEqual({});
  });
});

describe('view', () => {
  it('never compares a shot with itself', () => {
    const state = after(
      opened,
      { type: 'compare-set', side: 'A', shot: 'driver' },
      { type: 'compare-set', side: 'B', shot: 'driver' },
    );
    expect(state.view).toMatchObject({ compareA: null, compareB: 'driver' });
  });

  it('shows the hole on which something is undone', () => {
    const state = after(
      opened,
      {
        type: 'situation-taken',
        situation: withHole(after(opened).history.present, 1, { ball: [4, 52] }),
        label: 'move the ball',
      },
      { type: 'hole-shown', hole: 2 },
      { type: 'undone' },
    );
    expect(state.view.hole).toBe(1);
  });
});

describe('work', () => {
  const started = (state: AppState): Action => ({
    type: 'work-started',
    hole: 1,
    key: resultFor(state, 1).key,
  });

  it('takes a result that belongs to it and no other', () => {
    const state = reduce(after(opened), started(after(opened)));
    const late = reduce(state, {
      type: 'work-finished',
      result: { ...resultFor(state, 1), key: 'of an earlier hole position' },
    });
    expect(late).toBe(state);
    expect(currentResult(reduce(state, { type: 'work-finished', result: resultFor(state, 1) }))?.hole).toBe(
      1,
    );
  });

  it('shows no result of another hole position, but lets the quick one follow a drag', () => {
    let state = reduce(after(opened), started(after(opened)));
    state = reduce(state, { type: 'work-finished', result: resultFor(state, 1) });
    const moved = withHole(state.history.present, 1, { position: [4, 52.001] });
    const taken = reduce(state, {
      type: 'situation-taken',
      situation: moved,
      label: 'move the hole position',
    });
    expect(currentResult(taken)).toBeNull();
    const rough = { ...resultFor(state, 1), rough: true, key: 'a moment ago' };
    expect(currentResult(reduce(taken, { type: 'rough-arrived', result: rough }))).toBeNull();
    const dragged = reduce(state, { type: 'situation-previewed', situation: moved });
    expect(currentResult(dragged)).toBeNull();
    expect(currentResult(reduce(dragged, { type: 'rough-arrived', result: rough }))).toBe(rough);
  });

  it('forgets the holes of a worker that broke, and no others', () => {
    let state = after(opened);
    for (const hole of [1, 2, 3]) state = reduce(state, { type: 'work-started', hole, key: 'k' });
    state = reduce(state, { type: 'work-lost', worker: 1, workers: 2 });
    expect(Object.keys(state.work)).toEqual(['2']);
  });

  it('stops what is unfinished and keeps what is ready', () => {
    let state = reduce(after(opened), started(after(opened)));
    state = reduce(state, { type: 'work-finished', result: resultFor(state, 1) });
    state = reduce(state, { type: 'work-started', hole: 2, key: 'two' });
    state = reduce(state, { type: 'work-stopped' });
    expect(tallyWork(course, state.work)).toMatchObject({ total: 2, ready: 1, stopped: 1 });
    const late = reduce(state, {
      type: 'work-progressed',
      hole: 2,
      key: 'two',
      progress: { stage: '', done: 1, total: 2 },
    });
    expect(late.work[2]?.status).toBe('stopped');
  });
});

describe('answers', () => {
  it('about a hole that is no longer on screen are dropped', () => {
    const state = after(opened, { type: 'hole-shown', hole: 2 });
    expect(reduce(state, { type: 'rough-arrived', result: resultFor(state, 1) })).toBe(state);
  });
});

describe('strokes played', () => {
  const plan = (state: AppState, expectedStrokes: number): Action => ({
    type: 'plan-arrived',
    answer: {
      hole: 1,
      resultKey: resultFor(state, 1).key,
      ball: [4, 52],
      conditions: DEFAULT_CONDITIONS,
      rough: false,
      plan: { ...resultFor(state, 1).teePlan, lie: 'fairway', expectedStrokes },
    },
  });

  it('are guessed from how much of the hole is behind the ball, and at least one', () => {
    let state = after(opened);
    state = reduce(reduce(state, { type: 'work-started', hole: 1, key: resultFor(state, 1).key }), {
      type: 'work-finished',
      result: resultFor(state, 1),
    });
    state = reduce(state, {
      type: 'situation-taken',
      situation: withHole(state.history.present, 1, { ball: [4, 52.001] }),
      label: 'move the ball',
    });
    expect(strokesTaken(reduce(state, plan(state, 1.5)))).toEqual({ strokes: 2, guessed: true });
    expect(strokesTaken(reduce(state, plan(state, 3.5)))).toEqual({ strokes: 1, guessed: true });
    const told = withHole(state.history.present, 1, { strokesTaken: 4 });
    expect(
      strokesTaken(reduce(state, { type: 'situation-taken', situation: told, label: 'strokes' })),
    ).toEqual({
      strokes: 4,
      guessed: false,
    });
  });
});
