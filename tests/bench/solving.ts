/** What solving costs: one hole, the round on one and two workers, how it grows, and what the field leaves open. */

import { readFileSync } from 'node:fs';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { Lie } from '../../core/ground/lies.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { DEFAULT_SEED } from '../../core/plan/prepare.ts';
import { DEFAULT_SETTINGS, solveNow, solveStrokes } from '../../core/plan/solve.ts';
import { planOnWorkers } from '../../electron/cli/plan-pool.ts';
import { demoHole } from './demo-hole.ts';
import {
  cpuSeconds,
  type Figure,
  mean,
  quantile,
  straightLine,
  wallSeconds,
  wallSecondsOf,
} from './measure.ts';

const TASKS = Array.from({ length: 18 }, (_, k) => ({
  hole: k + 1,
  seed: DEFAULT_SEED,
  conditions: DEFAULT_CONDITIONS,
}));

/** All 18 holes planned from the tee, on one worker and on two; the main thread only waits. */
export async function benchRound(): Promise<Figure[]> {
  const read = (name: string): string => readFileSync(new URL(`../../maps/${name}`, import.meta.url), 'utf8');
  const data = { courseText: read('demo-course.geojson'), playerText: read('demo-player.json') };
  const nothing = (): void => undefined;
  const two = await wallSecondsOf(() => planOnWorkers(data, TASKS, nothing, 2));
  // The most so far, in kilobytes: what the workers had is given back when they end. No part may run before this one.
  const megabytes = (process.resourceUsage().maxRSS * 1024) / 1e6;
  const one = await wallSecondsOf(() => planOnWorkers(data, TASKS, nothing, 1));
  return [
    { name: '18 holes solved and planned on two workers', value: two, unit: 's', target: '15' },
    {
      name: 'most memory of the process, both workers',
      value: megabytes,
      unit: 'MB',
      target: '300',
    },
    { name: 'two workers over one', value: one / two, unit: 'times', target: '1.85' },
  ];
}

/** Solutions of one hole: time once the code is warm, states and choices, and what half the spacing would change. */
export function benchHole(holeNumber: number): Figure[] {
  const { prepared } = demoHole(holeNumber);
  solveNow(prepared);
  const seconds = cpuSeconds(() => void solveNow(prepared));
  const field = solveNow(prepared);
  const coarser = solveNow(prepared, { ...DEFAULT_SETTINGS, spacingsM: [16, 8, 4] });
  const nodes = field.layers.reduce(
    (sum, layer) => sum + layer.value.filter((value) => value === value).length,
    0,
  );
  const best = (of: typeof field): number => planFromSpot(prepared, of, prepared.tee).expectedStrokes;
  return [
    { name: `hole ${holeNumber} solved, warm`, value: seconds, unit: 'CPU s', target: '1' },
    { name: 'spacing of its field', value: field.spacingM, unit: 'm', target: '2' },
    { name: 'nodes of the finest spacing, all lies', value: nodes, unit: '' },
    {
      name: 'tee value, spacing of 2 m against 4 m',
      value: Math.abs(best(field) - best(coarser)),
      unit: 'strokes',
      target: '0.02',
    },
    {
      name: 'longest piece of work between two signs of life',
      value: longestStep(holeNumber),
      unit: 'ms',
      target: '50',
    },
  ];
}

function longestStep(holeNumber: number): number {
  const steps = solveStrokes(demoHole(holeNumber).prepared);
  const lengths: number[] = [];
  let step: ReturnType<typeof steps.next>;
  do {
    const begun = performance.now();
    step = steps.next();
    lengths.push(performance.now() - begun);
  } while (step.done !== true);
  return Math.max(...lengths);
}

/** A ball put down all over the hole: how long until all its options are told. */
export function benchAnswers(holeNumber: number): Figure[] {
  const { prepared } = demoHole(holeNumber);
  const field = solveNow(prepared);
  const { ground, pin } = prepared;
  const whole: number[] = [];
  const rough: number[] = [];
  for (let k = 0; whole.length < 120; k++) {
    const x = ground.west + ((k * 0.618034) % 1) * ground.columns * ground.cellM;
    const y = ground.south + ((k * 0.754878) % 1) * ground.rows * ground.cellM;
    if (Math.hypot(x - pin.x, y - pin.y) < 5 || Number.isNaN(field.valueAt(x, y, Lie.fairway))) continue;
    rough.push(1e3 * wallSeconds(() => void planFromSpot(prepared, field, { x, y }, { samples: 256 })));
    whole.push(1e3 * wallSeconds(() => void planFromSpot(prepared, field, { x, y })));
  }
  return [
    { name: 'options of a moved ball, rough, median', value: quantile(rough, 0.5), unit: 'ms', target: '50' },
    {
      name: 'options of a moved ball, rough, 95th percentile',
      value: quantile(rough, 0.95),
      unit: 'ms',
      target: '100',
    },
    { name: 'options of a moved ball, full, median', value: quantile(whole, 0.5), unit: 'ms' },
    { name: 'options of a moved ball, full, 95th percentile', value: quantile(whole, 0.95), unit: 'ms' },
  ];
}

/** Does the cost grow in proportion to nodes and to draws? R² of straight lines. */
export function benchGrowth(holeNumber: number): Figure[] {
  const { prepared } = demoHole(holeNumber);
  const costOf = (spacingM: number, draws: number): number =>
    cpuSeconds(() => void solveNow(prepared, { ...DEFAULT_SETTINGS, spacingsM: [spacingM], draws }), 2);
  costOf(16, 64);
  const spacings = [20, 16, 13, 11, 9];
  const byArea = spacings.map((spacingM) => costOf(spacingM, 64));
  const draws = [32, 64, 128, 256];
  const byDraws = draws.map((count) => costOf(12, count));
  return [
    {
      name: 'cost against nodes, straight line takes up',
      value: straightLine(
        spacings.map((spacingM) => spacingM ** -2),
        byArea,
      ).fit,
      unit: 'R²',
    },
    {
      name: 'cost against draws, straight line takes up',
      value: straightLine(draws, byDraws).fit,
      unit: 'R²',
    },
    { name: 'mean cost of those solutions', value: mean([...byArea, ...byDraws]), unit: 'CPU s' },
  ];
}
