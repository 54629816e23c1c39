/** Whether a row of counts grows: a straight line through what comes after warming up, and the error of its slope. */

export interface Growth {
  /** Mean of the first and of the last tenth that is looked at. */
  readonly first: number;
  readonly last: number;
  /** Per step, by least squares. */
  readonly slope: number;
  /** Its standard error, with the lag-one correlation of the residuals: counts that go in steps or waves say less. */
  readonly error: number;
}

/** The first third warms up: caches fill, code is compiled. Fewer than nine counts say nothing. */
export function growthOf(counts: readonly number[]): Growth {
  const kept = counts.slice(Math.floor(counts.length / 3));
  const n = kept.length;
  if (n < 6) return { first: kept[0] ?? 0, last: kept.at(-1) ?? 0, slope: 0, error: Infinity };
  const mean = average(kept);
  const middle = (n - 1) / 2;
  let across = 0;
  let spread = 0;
  kept.forEach((count, i) => {
    across += (i - middle) * (count - mean);
    spread += (i - middle) ** 2;
  });
  const slope = across / spread;
  const residuals = kept.map((count, i) => count - mean - slope * (i - middle));
  const squares = residuals.reduce((sum, r) => sum + r * r, 0);
  const lagged = residuals.slice(1).reduce((sum, r, i) => sum + r * residuals[i]!, 0);
  const correlation = squares === 0 ? 0 : Math.min(0.95, Math.max(0, lagged / squares));
  const variance = squares / (n - 2);
  const error = Math.sqrt((variance / spread) * ((1 + correlation) / (1 - correlation)));
  const tenth = Math.max(1, Math.floor(n / 10));
  return { first: average(kept.slice(0, tenth)), last: average(kept.slice(-tenth)), slope, error };
}

function average(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0) / counts.length;
}
