/** From a kept plan to the one that is worked out anew: what is on screen at each moment, and what workers and host are asked. */

import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Option } from '../../../core/plan/model.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import type { Host } from '../../../electron/contract/host.ts';
import { planKeeper } from '../../../renderer/kept-plans/plan-keeper.ts';
import { showKept } from '../../../renderer/kept-plans/show-kept.ts';
import { answerQuestions } from '../../../renderer/state/effects/answer-questions.ts';
import { solveHoles } from '../../../renderer/state/effects/solve-holes.ts';
import type { HoleResult } from '../../../renderer/state/app-state.ts';
import { withHole } from '../../../renderer/state/history.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { currentPlan, currentResult, isPlanRough, paintedShot } from '../../../renderer/state/selectors.ts';
import { makeStore, type Store } from '../../../renderer/state/store.ts';
import type { HoleTask } from '../../../renderer/workers/planner-api.ts';
import type { PlannerPool } from '../../../renderer/workers/planner-pool.ts';
import { mustParse } from '../../course/builders.ts';
import { smallCourse, smallCourseText, smallPlayerText } from '../small-course.ts';
import { resultOfTask } from './worked-out.ts';

const parsed = parsePlayerText(smallPlayerText());
if (!parsed.ok) throw new Error('the player does not parse');
const player = parsed.value;
const course = mustParse(smallCourse());
const entry = { token: 'a-token', name: 'a', readOnly: false, modifiedAt: 0, bytes: 1 } as const;

/** A host that keeps plans in memory. */
function memory(): Pick<Host, 'keepPlan' | 'keptPlan'> & { readonly plans: Map<string, string> } {
  const plans = new Map<string, string>();
  return {
    plans,
    keepPlan: (key, text) => {
      plans.set(key, text);
      return Promise.resolve({ ok: true, value: { isKept: true } });
    },
    keptPlan: (key) => Promise.resolve({ ok: true, value: { text: plans.get(key) ?? null } }),
  };
}

type Answer = (result: HoleResult) => void;

/** Workers that answer when they are told to. */
function handWorked() {
  const tasks = new Map<string, { readonly task: HoleTask; readonly answer: Answer }>();
  const name = ({ hole, rough }: HoleTask): string => `${hole}${rough ? ' quick' : ''}`;
  const pool = {
    open: () => Promise.resolve({ ok: true, value: null }),
    check: () => new Promise(() => undefined),
    hurry: () => undefined,
    cancel: () => undefined,
    solve: (task: HoleTask) =>
      new Promise((resolve) => {
        tasks.set(name(task), { task, answer: (value) => resolve({ ok: true, value }) });
      }),
    plan: vi.fn<PlannerPool['plan']>(() => Promise.resolve(null)),
    paint: vi.fn<PlannerPool['paint']>(() => Promise.resolve(null)),
    weigh: () => Promise.resolve(null),
    compare: () => Promise.resolve(null),
    surface: () => Promise.resolve(null),
  };
  return { pool, tasks };
}

interface Opening {
  readonly store: Store;
  readonly keeper: ReturnType<typeof planKeeper>;
  readonly pool: ReturnType<typeof handWorked>['pool'];
  readonly finish: (name: string, change?: Partial<HoleResult>) => Promise<HoleResult>;
}

/** Hashes under way: all that is waited for here and does not end by itself at once. */
let hashing = 0;
beforeAll(() => {
  const digest = crypto.subtle.digest.bind(crypto.subtle);
  const spy = vi.spyOn(crypto.subtle, 'digest').mockImplementation(async (...asked) => {
    hashing += 1;
    try {
      return await digest(...asked);
    } finally {
      hashing -= 1;
    }
  });
  return () => spy.mockRestore();
});

/** Resolves when nothing is under way any more but the workers. */
async function settled(): Promise<void> {
  for (let quiet = 0; quiet < 4; quiet = hashing === 0 ? quiet + 1 : 0) {
    await new Promise((resolve) => setImmediate(resolve));
  }
}

async function open(
  host: Pick<Host, 'keepPlan' | 'keptPlan'>,
  courseText = smallCourseText(),
): Promise<Opening> {
  const store = makeStore(initialState(), reduce);
  const { pool, tasks } = handWorked();
  const keeper = planKeeper(host, { sources: 'these', browser: 'Browser/1' });
  showKept(store, keeper);
  const workers = pool as unknown as PlannerPool;
  solveHoles(store, workers, keeper.keep);
  answerQuestions(store, workers);
  store.dispatch({
    type: 'course-opened',
    document: { entry: { ...entry, kind: 'course' }, text: courseText, revision: 'c1', value: course },
  });
  store.dispatch({
    type: 'player-opened',
    document: { entry: { ...entry, kind: 'player' }, text: smallPlayerText(), revision: 'p1', value: player },
  });
  await settled();
  const finish = async (name: string, change: Partial<HoleResult> = {}): Promise<HoleResult> => {
    const { task, answer } = tasks.get(name)!;
    const result = { ...resultOfTask(task), ...change };
    answer(result);
    await settled();
    return result;
  };
  return { store, keeper, pool, finish };
}

/** A host that an earlier opening has left the plan of hole 1 with. */
async function afterAnOpening(): Promise<ReturnType<typeof memory>> {
  const host = memory();
  const { finish } = await open(host);
  await finish('1');
  expect(host.plans.size).toBe(1);
  return host;
}

describe('the next opening', () => {
  it('shows plan and picture before any worker answers, as full ones', async () => {
    const { store, pool } = await open(await afterAnOpening());
    const state = store.state();
    expect(currentPlan(state)?.options[0]?.meanStrokes).toBe(3.123456789012345);
    expect(isPlanRough(state)).toBe(false);
    expect(currentResult(state)?.convergence.spacingsM).toEqual([16, 8]);
    const painted = state.answers.paint[paintedShot(state)!];
    expect(painted?.sample.landing).toEqual(Float32Array.of(0.1, 100.7, -3.5, 98.25));
    expect(pool.plan).not.toHaveBeenCalled();
    expect(pool.paint).not.toHaveBeenCalled();
  });

  it('works the hole out again all the same; neither a quick answer nor the full one makes it jump', async () => {
    const { store, keeper, pool, finish } = await open(await afterAnOpening());
    const shown = currentPlan(store.state());
    const { paint } = store.state().answers;
    await finish('1 quick', { rough: true, teePicture: null, lengthM: 1 });
    expect(currentPlan(store.state())).toBe(shown);
    expect(store.state().work[1]?.result).toBeNull();
    const fresh = await finish('1');
    expect(currentPlan(store.state())).toBe(fresh.teePlan);
    expect(currentPlan(store.state())).toEqual(shown);
    expect(store.state().answers.paint).toEqual(paint);
    expect(keeper.counts()).toEqual({ found: 1, kept: 0, confirmed: 1, corrected: 0, refused: 0 });
    expect(pool.plan).not.toHaveBeenCalled();
  });

  it('shows what is worked out where that differs, and keeps it', async () => {
    const host = await afterAnOpening();
    const { store, keeper, finish } = await open(host);
    const { teePlan } = currentResult(store.state())!;
    const options = teePlan.options.map((option) => ({
      ...option,
      meanStrokes: 3.125 + option.lossToBest,
    }));
    await finish('1', { teePlan: { ...teePlan, options, expectedStrokes: 3.125 } });
    expect(currentPlan(store.state())?.expectedStrokes).toBe(3.125);
    expect(keeper.counts()).toMatchObject({ confirmed: 0, corrected: 1, kept: 1 });
    expect([...host.plans.values()][0]).toContain('"expectedStrokes":3.125');
  });

  it('asks the workers about a ball that is dragged, as before a plan is there', async () => {
    const { store, pool, finish } = await open(await afterAnOpening());
    const situation = withHole(store.state().history.present, 1, { ball: [4, 52.0005] });
    store.dispatch({ type: 'situation-previewed', situation });
    await settled();
    expect(pool.plan).not.toHaveBeenCalled();
    await finish('1 quick', { rough: true, teePicture: null });
    expect(pool.plan).toHaveBeenCalledWith(1, expect.objectContaining({ rough: true, ball: [4, 52.0005] }));
    store.dispatch({ type: 'preview-dropped' });
    await settled();
    expect(isPlanRough(store.state())).toBe(false);
  });

  it('asks the workers about a ball that lies elsewhere, and about any spot in haste while something is dragged', async () => {
    const { store, pool, finish } = await open(await afterAnOpening());
    await finish('1');
    expect(pool.plan).not.toHaveBeenCalled();
    const { present } = store.state().history;
    const elsewhere = withHole(present, 1, { ball: [4, 52.0005] });
    store.dispatch({ type: 'situation-taken', situation: elsewhere, label: 'ball' });
    await settled();
    expect(pool.plan).toHaveBeenLastCalledWith(1, expect.objectContaining({ rough: false }));
    store.dispatch({ type: 'undone' });
    await settled();
    const aimed = withHole(present, 1, { aim: { spreadIndex: 0, target: [4, 52.001] } });
    store.dispatch({ type: 'situation-previewed', situation: aimed });
    await settled();
    expect(pool.plan).toHaveBeenLastCalledWith(1, expect.objectContaining({ rough: true }));
    expect(pool.plan).toHaveBeenCalledTimes(2);
  });

  it('takes no notice of a plan that comes when the question is another', async () => {
    const { store } = await open(await afterAnOpening());
    const { kept } = store.state().answers;
    store.dispatch({ type: 'seed-set', seed: 'frost' });
    store.dispatch({ type: 'hole-shown', hole: 2 });
    store.dispatch({ type: 'hole-shown', hole: 1 });
    store.dispatch({ type: 'kept-arrived', result: kept! });
    expect(store.state().answers.kept).toBeNull();
  });

  it('weighs an aim of one’s own with the quick answer, not with the kept one', async () => {
    const { store, pool, finish } = await open(await afterAnOpening());
    const situation = withHole(store.state().history.present, 1, {
      aim: { spreadIndex: 0, target: [4, 52.001] },
    });
    store.dispatch({ type: 'situation-taken', situation, label: 'aim' });
    await finish('1 quick', { rough: true, teePicture: null });
    expect(currentResult(store.state())?.rough).toBe(false);
    expect(pool.plan).toHaveBeenCalledWith(1, expect.objectContaining({ rough: true }));
  });

  it('has nothing to show for another day, tee, seed or version of the course, and says nothing', async () => {
    const host = await afterAnOpening();
    const { store } = await open(host);
    store.dispatch({ type: 'seed-set', seed: 'frost' });
    await settled();
    expect(currentResult(store.state())).toBeNull();
    expect(isPlanRough(store.state())).toBe(true);
    expect(currentPlan((await open(host, `${smallCourseText()} `)).store.state())).toBeNull();
    expect(store.state().notices).toEqual([]);
  });

  it('does without, quietly, where the host has it damaged, refuses or breaks', async () => {
    const host = await afterAnOpening();
    const text = [...host.plans.values()][0]!;
    const texts = [text.replace('"par":3', '"par":"3"'), text.slice(9)];
    const hosts: Pick<Host, 'keepPlan' | 'keptPlan'>[] = [
      ...texts.map((damaged) => ({
        ...memory(),
        keptPlan: () => Promise.resolve({ ok: true, value: { text: damaged } } as const),
      })),
      {
        keptPlan: () => Promise.resolve({ ok: false, failure: 'unknown', message: 'no' }),
        keepPlan: () => Promise.resolve({ ok: true, value: { isKept: false } }),
      },
      {
        keptPlan: () => Promise.reject(new Error('gone')),
        keepPlan: () => Promise.reject(new Error('gone')),
      },
    ];
    for (const failing of hosts) {
      const { store, finish, keeper } = await open(failing);
      expect(currentPlan(store.state())).toBeNull();
      const { teePlan } = await finish('1');
      expect(currentPlan(store.state())).toBe(teePlan);
      expect(store.state().notices).toEqual([]);
      expect(keeper.counts().found).toBe(0);
    }
  });
});

describe('plans that are kept', () => {
  it('are those of every hole in full, each once, and none for a free hole position', async () => {
    const host = memory();
    const { store, finish, keeper } = await open(host);
    await finish('1 quick', { rough: true, teePicture: null });
    expect(host.plans.size).toBe(0);
    await finish('1');
    await finish('2');
    expect(host.plans.size).toBe(2);
    const situation = withHole(store.state().history.present, 1, { position: [4, 52.00115] });
    store.dispatch({ type: 'situation-taken', situation, label: 'pin' });
    await settled();
    await finish('1');
    expect(host.plans.size).toBe(2);
    expect(keeper.counts().kept).toBe(2);
  });

  it('are shown on the other holes too when they come on screen', async () => {
    const host = memory();
    const first = await open(host);
    await first.finish('2');
    const { store } = await open(host);
    expect(currentPlan(store.state())).toBeNull();
    store.dispatch({ type: 'hole-shown', hole: 2 });
    await settled();
    expect(currentPlan(store.state())?.hole).toBe(2);
    store.dispatch({ type: 'hole-shown', hole: 1 });
    store.dispatch({ type: 'hole-shown', hole: 2 });
    await settled();
    expect(currentPlan(store.state())?.hole).toBe(2);
  });

  it('tell of no shot but the recommended one: others are painted by the workers', async () => {
    const { store, pool, finish } = await open(await afterAnOpening());
    const other: Option = currentPlan(store.state())!.options[1]!;
    store.dispatch({ type: 'shot-chosen', shot: other.id });
    await settled();
    expect(store.state().answers.paint[other.id]).toBeUndefined();
    await finish('1 quick', { rough: true, teePicture: null });
    expect(pool.paint).toHaveBeenCalledWith(1, expect.anything(), { from: 'option', option: other }, 120);
  });
});
