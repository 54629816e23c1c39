import { beforeAll, describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import type { SolveProgress } from '../../../core/plan/model.ts';
import { keptText, readKept } from '../../../renderer/kept-plans/kept-plan.ts';
import { type HoleTask, PAINTED_BALLS } from '../../../renderer/workers/planner-api.ts';
import { PlannerDesk } from '../../../renderer/workers/planner-desk.ts';
import { progressShare } from '../../../renderer/workers/progress-share.ts';
import { area, at, point, square } from '../../course/builders.ts';
import { smallCourse, smallCourseText, smallPlayerText } from '../small-course.ts';

const means = {
  // Each look at the clock is a slice's length: one step at a time, and every step reported now and then.
  clock: (() => {
    let now = 0;
    return () => (now += 20);
  })(),
  turn: () => new Promise<void>((resolve) => setImmediate(resolve)),
};
const quiet = (): void => undefined;

async function openDesk(courseText = smallCourseText()): Promise<PlannerDesk> {
  const desk = new PlannerDesk(means);
  expect((await desk.open(courseText, smallPlayerText())).ok).toBe(true);
  return desk;
}

function task(change: Partial<HoleTask> = {}): HoleTask {
  return { key: 'pond', hole: 1, teeName: 'Oak', position: 'front', seed: 'dew', rough: false, ...change };
}

async function solved(
  desk: PlannerDesk,
  wanted: HoleTask,
  report: (progress: SolveProgress) => void = quiet,
) {
  const answer = await desk.solve(wanted, report);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}

describe('a desk with a worked-out hole', () => {
  let desk: PlannerDesk;
  let result: Awaited<ReturnType<typeof solved>>;
  const shares: number[] = [];

  beforeAll(async () => {
    desk = await openDesk();
    result = await solved(desk, task(), (progress) => {
      const share = progressShare(progress);
      if (share !== null) shares.push(share);
    });
  });

  it('tells the hole: length, tee, position, plan from the tee', () => {
    expect(result).toMatchObject({ hole: 1, teeName: 'Oak', positionName: 'front', rough: false });
    expect(result.lengthM).toBeGreaterThan(140);
    expect(result.teePlan.options.length).toBeGreaterThan(2);
    expect(result.teePlan.lie).toBe('tee');
  });

  it('reports progress that the bar understands and that never runs backwards', () => {
    expect(shares.length).toBeGreaterThan(3);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });

  it('gives the same numbers at another desk that works on another hole as well', async () => {
    const other = await openDesk();
    const [, again] = await Promise.all([
      solved(other, task({ key: 'plain', hole: 2, position: 'Middle of the green' })),
      solved(other, task()),
    ]);
    expect(again).toEqual(result);
    // what is kept for the next start is what will be worked out then
    expect(keptText(again)).toBe(keptText(result));
    expect(readKept(keptText(result) ?? '', task())).toEqual(again);
  });

  it('brings the picture of the recommended shot along, as it is painted when asked for', async () => {
    const option = result.teePlan.options.find(({ id }) => id === result.teePlan.recommendation.optionId)!;
    const question = { resultKey: 'pond', rough: false, ball: result.tee, strokesTaken: 0 };
    const picture = await desk.paint(question, { from: 'option', option }, PAINTED_BALLS);
    expect(result.teePicture?.sample.count).toBe(400);
    expect(result.teePicture?.sample.lie).toEqual(picture?.sample.lie);
    for (let i = 0; i < 800; i++)
      expect(result.teePicture?.sample.end[i]).toBeCloseTo(picture?.sample.end[i] ?? NaN, 3);
    const plan = await desk.plan(question);
    expect(plan?.options.map(({ id }) => id)).toEqual(result.teePlan.options.map(({ id }) => id));
    expect(plan?.expectedStrokes).toBeCloseTo(result.teePlan.expectedStrokes, 6);
  });

  it('gives other numbers from another seed', async () => {
    const again = await solved(await openDesk(), task({ seed: 'frost' }));
    expect(again.teePlan.expectedStrokes).not.toBe(result.teePlan.expectedStrokes);
  });

  it('answers about a spot with few samples while something is dragged', async () => {
    const ball = result.pin;
    const question = { resultKey: 'pond', rough: true, ball, strokesTaken: 1 };
    const plan = await desk.plan(question);
    expect(plan?.lie).toBe('green');
    expect(plan?.options.map((option) => option.clubKind)).toEqual(['putter']);
  });

  it('weighs, compares and paints shots', async () => {
    const question = { resultKey: 'pond', rough: false, ball: result.tee, strokesTaken: 0 };
    const [best, next] = result.teePlan.options;
    if (best === undefined || next === undefined) throw new Error('the plan has no two options');
    const a = { from: 'option', option: best } as const;
    const b = { from: 'option', option: next } as const;
    const comparison = await desk.compare(question, a, b);
    expect(comparison?.difference).toBeCloseTo(-next.lossToBest, 1);

    const picture = await desk.paint(question, a, 64);
    expect(picture?.sample.count).toBe(64);
    expect(picture?.ellipses.map((ellipse) => ellipse.share)).toEqual([0.5, 0.9]);

    const spreadIndex = 0;
    const wide = await desk.weigh(question, { from: 'target', spreadIndex, target: [4.002, 52.0005] }, a);
    expect(wide?.toBest?.difference).toBeGreaterThan(0);
  });

  it('knows nothing of a hole that it was not given', async () => {
    const question = { resultKey: 'elsewhere', rough: false, ball: result.tee, strokesTaken: 0 };
    expect(await desk.plan(question)).toBeNull();
    expect(await desk.surface('elsewhere', 4)).toBeNull();
  });

  it('paints the surface: dearer from the tee than from the green', async () => {
    const surface = await desk.surface('pond', 4);
    if (surface === null) throw new Error('no surface');
    const known = surface.values.filter((value) => !Number.isNaN(value));
    expect(Math.min(...known)).toBeLessThan(2);
    expect(Math.max(...known)).toBeGreaterThan(3);
  });

  it('answers a question within a few slices while a hole is being worked out', async () => {
    const under = desk.solve(task({ key: 'later', seed: 'later' }), quiet);
    const plan = await desk.plan({ resultKey: 'pond', rough: true, ball: result.tee, strokesTaken: 0 });
    expect(plan).not.toBeNull();
    await desk.cancel('later');
    expect(await under).toEqual({ ok: false, error: { why: 'cancelled' } });
  });

  it('works out another tee as if it had been chosen from the start', async () => {
    const forward = await solved(desk, task({ key: 'pond from Ash', teeName: 'Ash' }));
    const fresh = await solved(await openDesk(), task({ key: 'pond from Ash', teeName: 'Ash' }));
    expect(forward.teePlan).toEqual(fresh.teePlan);
    expect(forward.lengthM).toBeLessThan(result.lengthM);
  });
});

describe('a desk', () => {
  it('moves the hole to a free place on the green as if it had been there from the start', async () => {
    const desk = await openDesk();
    await solved(desk, task({ rough: true }));
    const place = [4.00003, 52.00132] as const;
    const moved = await solved(desk, task({ key: 'moved', position: place, rough: true }));
    const fresh = await solved(await openDesk(), task({ key: 'moved', position: place, rough: true }));
    expect(moved.teePlan).toEqual(fresh.teePlan);
    expect(moved.pin[0]).toBeCloseTo(place[0], 8);
  });

  it('putts over the slopes of the place to which the hole was moved', async () => {
    const levels = [
      ...[-12, 12].flatMap((north) => [-12, 12].map((east) => [160 + east, north] as const)),
    ].map(([east, north]) =>
      point({ holewright_kind: 'ground_level', ele: String(0.03 * east + 0.02 * north) }, at(east, north)),
    );
    const course = smallCourse();
    const sloped = JSON.stringify({ ...course, features: [...course.features, ...levels] });
    const from = task({ key: 'middle', hole: 2, position: 'Middle of the green', rough: true });
    const to = task({ key: 'moved', hole: 2, position: at(165, -7) });
    const desk = await openDesk(sloped);
    await solved(desk, from);
    const moved = await solved(desk, to);
    expect(moved.teePlan).toEqual((await solved(await openDesk(sloped), to)).teePlan);
  });

  it('works out another day as if it had been so from the start, and the day before again', async () => {
    const conditions: Conditions = {
      ...DEFAULT_CONDITIONS,
      wind: { speedMps: 9, fromDeg: 0, gustSdMps: 1 },
      season: 'bare',
    };
    const rough = { rough: true } as const;
    const place = [4.00003, 52.00132] as const;
    const desk = await openDesk();
    const ordinary = await solved(desk, task(rough));
    // The hole moved on another day than the one that is known.
    const moved = await solved(desk, task({ ...rough, key: 'windy, moved', conditions, position: place }));
    const windy = await solved(desk, task({ ...rough, key: 'windy', conditions }));
    const again = await solved(desk, task({ ...rough, key: 'again' }));
    expect(ordinary.conditions).toEqual(DEFAULT_CONDITIONS);
    expect(windy.conditions).toEqual(conditions);
    expect(moved.conditions).toEqual(conditions);
    // Against the wind.
    expect(windy.teePlan.expectedStrokes).toBeGreaterThan(ordinary.teePlan.expectedStrokes + 0.05);
    expect(again.teePlan).toEqual(ordinary.teePlan);
    const fresh = await openDesk();
    const freshly = await solved(fresh, task({ ...rough, key: 'moved', conditions, position: place }));
    expect(moved.teePlan).toEqual(freshly.teePlan);
    expect(windy.teePlan).toEqual((await solved(fresh, task({ ...rough, conditions }))).teePlan);
  });

  it('says what is wrong with a hole that it cannot plan', async () => {
    const answer = await (await openDesk()).solve(task({ teeName: 'Elm' }), quiet);
    expect(answer).toMatchObject({ ok: false, error: { why: 'fault', fault: { code: 'no-such-tee' } } });
  });

  it('drops its work when other files are opened', async () => {
    const desk = await openDesk();
    const under = desk.solve(task(), quiet);
    await desk.open(smallCourseText(), smallPlayerText());
    expect(await under).toEqual({ ok: false, error: { why: 'cancelled' } });
  });

  it('keeps what it has worked out where a new version of the course leaves the hole as it was', async () => {
    const desk = await openDesk();
    const result = await solved(desk, task({ rough: true }));
    const course = smallCourse();
    const far = { ...course, features: [...course.features, area({ golf: 'bunker' }, square(900, 900, 5))] };
    await desk.open(JSON.stringify(far), smallPlayerText());
    const question = { resultKey: 'pond', rough: true, ball: result.tee, strokesTaken: 0 };
    expect(await desk.plan(question)).not.toBeNull();
    // the same place on the green, but with another bunker beside it: worked out anew, not taken over
    const near = { ...course, features: [...course.features, area({ golf: 'bunker' }, square(0, 100, 14))] };
    await desk.open(JSON.stringify(near), smallPlayerText());
    const again = await solved(desk, task({ key: 'bunker', rough: true }));
    const fresh = await openDesk();
    await fresh.open(JSON.stringify(near), smallPlayerText());
    expect(again.teePlan).toEqual((await solved(fresh, task({ key: 'bunker', rough: true }))).teePlan);
    expect(again.teePlan.expectedStrokes).not.toBe(result.teePlan.expectedStrokes);
  });
});
