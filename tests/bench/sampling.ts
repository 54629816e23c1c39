/** How much a drawn shot is worth: evenly spread points against plain chance, and whether stated errors are honest. */

import { Lie } from '../../core/ground/lies.ts';
import { ChoiceEvaluator } from '../../core/plan/evaluate.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import { solveNow } from '../../core/plan/solve.ts';
import { inverseNormal } from '../../core/random/normal.ts';
import { ShotDrawer, type ShotDraws } from '../../core/random/shot-draws.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';
import { demoHole } from './demo-hole.ts';
import { type Figure, mean, standardDeviation } from './measure.ts';

const POINTS = 256;
const TRIES = 200;

/** The same shots drawn by plain chance. */
function plainDraws(key: ReturnType<typeof makeStreamKey>, label: number): ShotDraws {
  const stream = new RandomStream();
  stream.restart(key, label);
  const normals = (): Float64Array =>
    Float64Array.from({ length: POINTS }, () => inverseNormal(stream.nextUniform()));
  const uniforms = (): Float64Array => Float64Array.from({ length: POINTS }, () => stream.nextUniform());
  return {
    count: POINTS,
    distanceZ: normals(),
    directionZ: normals(),
    rollZ: normals(),
    gustZ: normals(),
    poorU: uniforms(),
    canopyDepth: uniforms().map((u) => -Math.log(u)),
  };
}

/** Variance of the mean of 256 shots from each tee by both, as the number of plain draws that one drawn shot is worth. */
export function benchSampling(holes: readonly number[]): Figure[] {
  const worth = holes.map((hole) => {
    const { prepared } = demoHole(hole);
    const field = solveNow(prepared);
    const plan = planFromSpot(prepared, field, prepared.tee);
    const choice = choiceOf(prepared, plan.options[0]!);
    const evaluator = new ChoiceEvaluator(field, prepared.book);
    const drawer = new ShotDrawer(POINTS);
    const key = makeStreamKey('sampling', hole);
    const valueOf = (draws: ShotDraws): number =>
      evaluator.valueOf(prepared.tee, Lie.tee, choice, draws, plan.expectedStrokes);
    const even = Array.from({ length: TRIES }, (_, k) => valueOf(drawer.redraw(key, k)));
    const plain = Array.from({ length: TRIES }, (_, k) => valueOf(plainDraws(key, k)));
    return (standardDeviation(plain) / standardDeviation(even)) ** 2;
  });
  return [
    {
      name: 'plain draws that one draw is worth, mean of the holes',
      value: mean(worth),
      unit: 'times',
      target: '8',
    },
    { name: 'the same on the worst of the holes', value: Math.min(...worth), unit: 'times' },
  ];
}

/** The whole solution from `seeds` seeds: scatter of the best option's strokes against the standard error it states. */
export function benchSeeds(holeNumber: number, seeds: number): Figure[] {
  const { course, prepared } = demoHole(holeNumber);
  const means: number[] = [];
  const stated: number[] = [];
  for (let k = 0; k < seeds; k++) {
    const hole = prepareHole({ course, player: prepared.player, holeNumber, seed: `seed ${k}` });
    if (!hole.ok) throw new Error(hole.error.message);
    const [best] = planFromSpot(hole.value, solveNow(hole.value), hole.value.tee).options;
    means.push(best!.meanStrokes);
    stated.push(best!.standardError);
    if (k % 20 === 19) console.error(`${k + 1} of ${seeds} seeds`);
  }
  const scatter = standardDeviation(means);
  const error = Math.sqrt(mean(stated.map((value) => value * value)));
  return [
    {
      name: `best option of hole ${holeNumber} over ${seeds} seeds: scatter`,
      value: scatter,
      unit: 'strokes',
    },
    { name: 'standard error that it states', value: error, unit: 'strokes' },
    { name: 'scatter over stated error', value: scatter / error, unit: 'times' },
  ];
}
