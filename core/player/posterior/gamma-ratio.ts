/** Ratios of gamma functions, through the logarithm that simple-statistics provides. */

import { gammaln } from 'simple-statistics';

/** Gamma(x + 1/2) / Gamma(x), x > 0. */
export function gammaHalfStep(x: number): number {
  return Math.exp(gammaln(x + 0.5) - gammaln(x));
}

/** Logarithm of the beta function. */
export function logBeta(a: number, b: number): number {
  return gammaln(a) + gammaln(b) - gammaln(a + b);
}
