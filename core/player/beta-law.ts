/** Quantiles of the beta law, by its distribution function's continued fraction. */

import { logBeta } from './posterior/gamma-ratio.ts';

/**
 * Chance that a beta variable is at most x (continued fraction 26.5.8 of Abramowitz & Stegun 1964, evaluated by the
 * method of Lentz 1976).
 */
export function betaCdf(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b));
  // The fraction converges fast below the mean; above it the other tail is taken.
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(1 - x, b, a)) / b;
}

function fraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
  let value = d;
  for (let m = 1; m <= 300; m++) {
    for (const term of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / (1 + term * d || tiny);
      c = 1 + term / c || tiny;
      value *= c * d;
    }
    if (Math.abs(c * d - 1) < 1e-14) break;
  }
  return value;
}

/** By bisection, to 1e-12. */
export function betaQuantile(share: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (let k = 0; k < 45; k++) {
    const middle = (low + high) / 2;
    if (betaCdf(middle, a, b) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
