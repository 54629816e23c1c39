/** Chi-square laws from jstat (which ships no types), and the noncentral one as the series that defines it. */

import { jStat } from 'jstat';

interface Laws {
  readonly chisquare: { cdf: (x: number, df: number) => number; inv: (p: number, df: number) => number };
  readonly poisson: { pdf: (k: number, mean: number) => number };
}
const { chisquare, poisson } = jStat as unknown as Laws;

export const chiSquareCdf = chisquare.cdf;
export const chiSquareQuantile = chisquare.inv;

/**
 * Noncentral chi-square distribution function: a Poisson mixture of central ones with mean half the noncentrality
 * (Abramowitz & Stegun 1964, 26.4.25). No npm library under a free licence has it ready-made.
 */
export function noncentralChiSquareCdf(x: number, df: number, noncentrality: number): number {
  const half = noncentrality / 2;
  let sum = 0;
  // Beyond ten standard deviations of the Poisson law nothing is left that counts.
  const last = Math.ceil(half + 10 * Math.sqrt(half) + 20);
  for (let k = 0; k <= last; k++) sum += poisson.pdf(k, half) * chisquare.cdf(x, df + 2 * k);
  return sum;
}
