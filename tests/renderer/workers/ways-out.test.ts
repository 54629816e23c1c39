/** Ways out of a drawn wood: a roof of crowns over the ball, and ahead of it a thick hedge with one gap. */

import { beforeAll, describe, expect, it } from 'vitest';
import type { LonLat } from '../../../core/course/model.ts';
import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { parseCourseText } from '../../../core/course/parse.ts';
import { Lie } from '../../../core/ground/lies.ts';
import { prepareHole } from '../../../core/plan/prepare.ts';
import { ShotResolver } from '../../../core/plan/resolve-shot.ts';
import { ShotDrawer } from '../../../core/random/shot-draws.ts';
import { deriveSwing } from '../../../core/player/part-swing.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import { gapWords, heightLines } from '../../../renderer/recovery/passage-words.ts';
import type { HoleResult } from '../../../renderer/state/app-state.ts';
import type { SpotQuestion } from '../../../renderer/workers/planner-api.ts';
import { PlannerDesk } from '../../../renderer/workers/planner-desk.ts';
import { treePassage, type WayOutOfTrees } from '../../../renderer/workers/ways-out.ts';
import { area, at, square } from '../../course/builders.ts';
import { smallCourse, smallPlayerText } from '../small-course.ts';
import { english } from '../../../core/words/english/english.ts';

/** Metres in a unit of `at`, at the place of the test courses. */
const EAST_M = 0.6859;
const NORTH_M = 1.1127;
const BALL = [0, 45] as const;
const GAP = { west: 4, east: 14, near: 65, far: 75 };

function wood(
  { west, east, south, north }: Record<'west' | 'east' | 'south' | 'north', number>,
  baseM: number,
  perM: number,
) {
  const corners = [at(west, south), at(east, south), at(east, north), at(west, north), at(west, south)];
  const canopy = { height: 13, canopy_base_m: baseM, canopy_density_per_m: perM };
  return area({ natural: 'wood', ...canopy }, corners);
}

const course = smallCourse();
const text = JSON.stringify({
  ...course,
  features: [
    // A fairway counts before a wood where both are drawn.
    ...course.features.filter((feature) => !JSON.stringify(feature).includes('"fairway"')),
    wood({ west: -20, east: 20, south: 38, north: 60 }, 4, 0.2),
    wood({ west: -60, east: GAP.west, south: GAP.near, north: GAP.far }, 0.1, 3),
    wood({ west: GAP.east, east: 60, south: GAP.near, north: GAP.far }, 0.1, 3),
  ],
});

const player = parsePlayerText(smallPlayerText());
if (!player.ok) throw new Error('the small player does not parse');

const means = {
  clock: (() => {
    let now = 0;
    return () => (now += 20);
  })(),
  turn: () => new Promise<void>((resolve) => setImmediate(resolve)),
};

/** The wall's corners as seen from the ball, degrees right of north. */
function seen(east: number, north: number): number {
  return (Math.atan2((east - BALL[0]) * EAST_M, (north - BALL[1]) * NORTH_M) * 180) / Math.PI;
}

describe('a ball in the wood', () => {
  const desk = new PlannerDesk(means);
  const ball: LonLat = at(...BALL);
  const question: SpotQuestion = { resultKey: 'wood', rough: true, ball, strokesTaken: 1 };
  let result: HoleResult;
  let ways: readonly WayOutOfTrees[];

  beforeAll(async () => {
    expect((await desk.open(text, smallPlayerText())).ok).toBe(true);
    const solved = await desk.solve(
      { key: 'wood', hole: 1, teeName: 'Oak', position: 'front', seed: 'dew', rough: true },
      () => undefined,
    );
    if (!solved.ok) throw new Error(JSON.stringify(solved.error));
    result = solved.value;
    const found = await desk.waysOut(question);
    if (found === null) throw new Error('no ways');
    ways = found;
  });

  const punchTowards = (east: number, north: number) => {
    const spreadIndex = player.value.spreads.findIndex(({ swing }) => swing === 'punch');
    return desk.treePassage(question, { from: 'target', spreadIndex, target: at(east, north) });
  };

  it('is in the wood by the plan, and has ways out with what they cost, cheapest first', async () => {
    expect((await desk.plan(question))?.lie).toBe('woods');
    expect(ways.length).toBeGreaterThan(2);
    const costs = ways.map(({ meanStrokes }) => meanStrokes);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    expect(Math.min(...costs)).toBeGreaterThan(2);
    // Whole shots with their follow-ups: none is dearer than playing back to the tee and starting anew.
    expect(Math.max(...costs)).toBeLessThan(result.teePlan.expectedStrokes + 3);
    // The cheapest way is no dearer than what the plan would play, but for the chance error of few shots.
    const [best] = (await desk.plan(question))!.options.filter(({ kind }) => kind === 'shot');
    expect(costs[0]!).toBeLessThan(best!.meanStrokes + 4 * best!.standardError + 0.05);
    for (const { gapDeg } of ways) {
      // None, or one that is worth the name.
      expect(gapDeg === 0 || gapDeg >= 2).toBe(true);
    }
    expect(new Set(ways.map(({ way }) => way)).size).toBeGreaterThan(1);
  });

  it('gets the same ways again for the same question', async () => {
    expect(await desk.waysOut(question)).toEqual(ways);
  });

  it('sees the gap as wide as it is drawn: from the near corner on one side to the far corner on the other', async () => {
    const middle = (seen(GAP.west, GAP.near) + seen(GAP.east, GAP.far)) / 2;
    const passage = await punchTowards(60 * Math.tan((middle * Math.PI) / 180) * (NORTH_M / EAST_M), 105);
    expect(passage?.gap?.widthDeg).toBeGreaterThan(0);
    // The ground is drawn in cells of a metre, 22 to 33 m away: 2.6 degrees each at the most.
    const drawn = seen(GAP.east, GAP.far) - seen(GAP.west, GAP.near);
    expect(Math.abs(passage!.gap!.widthDeg - drawn)).toBeLessThan(2.6);
    expect(passage!.passage).toBe('under');
    expect(gapWords(passage!, english)).toMatch(
      /^A gap of \d+°; two of three of your strikes stay within \d+°\. \d+/,
    );
    // The player scatters more widely than the gap: a part of the strikes only gets through.
    expect(passage!.throughChance).toBeLessThan(0.9);
  });

  it('is told how low to stay where the aim is at the hedge', async () => {
    const passage = await punchTowards(-10, 105);
    expect(passage?.gap).toBeNull();
    expect(passage?.passage).toBe('through');
    expect(gapWords(passage!, english)).toMatch(/^No opening there for this club/);
    expect(heightLines(passage!, 'metres', english)).toEqual([
      expect.stringMatching(/^Stay below 0\.1 m at 2\d m; your punch 7-iron has \d/),
    ]);
    expect(passage!.throughChance).toBeLessThan(0.3);
  });

  it('has nothing to tell of a hole that is not worked out', async () => {
    const elsewhere = { ...question, resultKey: 'elsewhere' };
    expect(await desk.waysOut(elsewhere)).toBeNull();
    expect(
      await desk.treePassage(elsewhere, { from: 'target', spreadIndex: 0, target: at(0, 100) }),
    ).toBeNull();
  });

  it('answers other questions between its steps, and the last question only', async () => {
    const order: string[] = [];
    const first = desk.waysOut(question).then((answer) => order.push(answer === null ? 'dropped' : 'ways'));
    const plan = desk.plan(question).then(() => order.push('plan'));
    const last = desk.waysOut(question).then((answer) => order.push(answer === null ? 'dropped' : 'ways'));
    await Promise.all([first, plan, last]);
    expect(order.at(-1)).toBe('ways');
    expect(order.filter((what) => what === 'dropped')).toHaveLength(1);
    expect(order.indexOf('plan')).toBeLessThan(order.indexOf('ways'));
  });
});

describe('a cross wind', () => {
  it.each(['punch', 'curved-left', 'curved-right'] as const)(
    'carries balls from the aim to the gap, %s: the chance told is the share of solid strikes that get through',
    (swing) => {
      const parsed = parseCourseText(text);
      if (!parsed.ok) throw new Error('the course does not parse');
      const iron = player.value.spreads.find(
        ({ club, swing: made }) => club.loftDeg > 33 && made === 'full',
      )!;
      const spreads = [
        ...player.value.spreads,
        deriveSwing(iron, 'curved-left'),
        deriveSwing(iron, 'curved-right'),
      ];
      const wind = { speedMps: 10, fromDeg: 90, gustSdMps: 0 };
      const made = prepareHole({
        ...{ course: parsed.value, holeNumber: 1, player: { ...player.value, spreads }, seed: 'dew' },
        conditions: { ...DEFAULT_CONDITIONS, wind },
      });
      if (!made.ok) throw new Error(made.error.message);
      const prepared = made.value;
      const spot = prepared.frame.toSpot(at(...BALL));
      const spreadIndex = spreads.findIndex((spread) => spread.swing === swing);
      const law = prepared.book.lawOf(spreadIndex, Lie.woods, spreads[spreadIndex]!.carryMean)!;
      const draws = new ShotDrawer(4096).redraw(prepared.key, 77);
      const resolver = new ShotResolver(prepared.ground);
      const middle = (((seen(GAP.west, GAP.near) + seen(GAP.east, GAP.far)) / 2) * Math.PI) / 180;
      const told: number[] = [];
      // Aims to the right of the gap, from where the wind brings the ball back to it, and straight at it.
      for (const aside of [0, 4, 8, 12]) {
        const bearing = middle + (aside * Math.PI) / 180;
        const passage = treePassage(prepared, spot, { spreadIndex, bearing, carryM: law.carryMean })!;
        let solid = 0;
        let through = 0;
        for (let i = 0; i < 4096; i++) {
          resolver.resolve(spot.x, spot.y, law, bearing, draws, i);
          if (resolver.wasPoor) continue;
          solid += 1;
          if (!resolver.stoppedByTree) through += 1;
        }
        told.push(passage.throughChance);
        // Binomial error, and what 15 directions and steps of a metre against the planner's leave.
        const error = Math.sqrt((passage.throughChance * (1 - passage.throughChance)) / solid);
        expect(Math.abs(passage.throughChance - through / solid)).toBeLessThan(4 * error + 0.05);
      }
      expect(told.indexOf(Math.max(...told))).toBeGreaterThan(0);
    },
  );
});

describe('a ball in a bunker in the wood', () => {
  const ball: LonLat = at(...BALL);
  const waysOver = async (lipM: number): Promise<readonly WayOutOfTrees[]> => {
    const desk = new PlannerDesk(means);
    const bunkered = JSON.parse(text) as typeof course;
    bunkered.features.push(area({ golf: 'bunker', lip_m: lipM }, square(BALL[0], BALL[1], 3)));
    expect((await desk.open(JSON.stringify(bunkered), smallPlayerText())).ok).toBe(true);
    const task = {
      key: 'sand',
      hole: 1,
      teeName: 'Oak',
      position: 'front',
      seed: 'dew',
      rough: true,
    } as const;
    expect((await desk.solve(task, () => undefined)).ok).toBe(true);
    const ways = await desk.waysOut({ resultKey: 'sand', rough: true, ball, strokesTaken: 1 });
    if (ways === null) throw new Error('no ways');
    return ways;
  };

  it('is offered no low shots that its lip would stop', async () => {
    const isLow = ({ swing }: WayOutOfTrees): boolean => swing === 'punch';
    expect((await waysOver(0)).some(isLow)).toBe(true);
    const high = await waysOver(1.2);
    expect(high.length).toBeGreaterThan(0);
    expect(high.some(isLow)).toBe(false);
  });
});
