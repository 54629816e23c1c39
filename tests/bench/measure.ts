/** Measuring within one run: processor seconds, so that other programs disturb little, and the best of several tries. */

/** Rows of the bench's table: what, the figure, and the target where there is one. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: string;
}

/** Seconds of processor time that `work` takes, all threads of this process; the best of `tries`. */
export function cpuSeconds(work: () => void, tries = 3): number {
  let best = Infinity;
  for (let k = 0; k < tries; k++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1e6);
  }
  return best;
}

export function wallSeconds(work: () => void): number {
  const begun = performance.now();
  work();
  return (performance.now() - begun) / 1e3;
}

export async function wallSecondsOf(work: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await work();
  return (performance.now() - begun) / 1e3;
}

/** Value below which that share of the numbers lies. */
export function quantile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}

export function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, value) => sum + value, 0) / numbers.length;
}

export function standardDeviation(numbers: readonly number[]): number {
  const middle = mean(numbers);
  return Math.sqrt(numbers.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (numbers.length - 1));
}

/** Share of the scatter of y that a straight line through the points takes up (R²), and the line's slope. */
export function straightLine(
  x: readonly number[],
  y: readonly number[],
): { readonly slope: number; readonly fit: number } {
  const mx = mean(x);
  const my = mean(y);
  const sxy = x.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0);
  const sxx = x.reduce((sum, value) => sum + (value - mx) ** 2, 0);
  const syy = y.reduce((sum, value) => sum + (value - my) ** 2, 0);
  return { slope: sxy / sxx, fit: (sxy * sxy) / (sxx * syy) };
}
