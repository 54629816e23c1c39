/** Invented score distributions for tests, and their brute-force twins. */

import seedrandom from 'seedrandom';
import { makeDistribution, type ScoreDistribution } from '../../core/round/distribution.ts';

/** Scores around a par with a tail: chances of par - 1, par, par + 1, … */
export function scoresAround(par: number, weights: readonly number[]): ScoreDistribution {
  return makeDistribution(par - 1, weights);
}

const PARS = [4, 4, 3, 5, 4, 4, 3, 4, 4, 4, 5, 3, 4, 4, 4, 3, 5, 3];

/** Eighteen different holes, par 70, for somebody who goes round in about 89. */
export function eighteenHoles(): { readonly pars: readonly number[]; readonly holes: ScoreDistribution[] } {
  const holes = PARS.map((par, i) =>
    scoresAround(par, [0.03, 0.25 - 0.005 * i, 0.42, 0.2 + 0.005 * i, 0.07, 0.02, 0.01]),
  );
  return { pars: PARS, holes };
}

/** One draw by the chances. */
export function drawScore({ lowest, chances }: ScoreDistribution, uniform: number): number {
  let sum = 0;
  for (let i = 0; i < chances.length; i++) {
    sum += chances[i]!;
    if (uniform < sum) return lowest + i;
  }
  return lowest + chances.length - 1;
}

export function randomNumbers(seed: string): () => number {
  return seedrandom(seed);
}
