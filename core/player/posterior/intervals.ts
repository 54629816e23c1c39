/** Means and credible intervals from posterior draws. */

export interface Estimate {
  readonly mean: number;
  /** Ends of the interval. */
  readonly low: number;
  readonly high: number;
}

export function meanOf(draws: Float64Array, column: number, width: number): number {
  let sum = 0;
  for (let at = column; at < draws.length; at += width) sum += draws[at]!;
  return (sum * width) / draws.length;
}

function sortedColumn(draws: Float64Array, column: number, width: number): Float64Array {
  const values = new Float64Array(draws.length / width);
  for (let i = 0; i < values.length; i++) values[i] = draws[i * width + column]!;
  return values.sort();
}

/** Quantile of sorted values, linear between them (Hyndman & Fan 1996, definition 7). */
export function quantile(sorted: Float64Array, share: number): number {
  const position = Math.min(sorted.length - 1, Math.max(0, share * (sorted.length - 1)));
  const low = Math.floor(position);
  const high = Math.min(sorted.length - 1, low + 1);
  return sorted[low]! + (position - low) * (sorted[high]! - sorted[low]!);
}

/** The interval that leaves as much of the posterior below as above. */
export function tailInterval(draws: Float64Array, column: number, width: number, share: number): Estimate {
  const sorted = sortedColumn(draws, column, width);
  const tail = (1 - share) / 2;
  return {
    mean: meanOf(draws, column, width),
    low: quantile(sorted, tail),
    high: quantile(sorted, 1 - tail),
  };
}

/** A shortest interval that begins within this share of the smallest draws begins at zero. */
const AT_ZERO_SHARE = 0.01;

/**
 * The shortest interval that holds the share (Chen & Shao 1999), for a number that cannot be negative. Where the
 * posterior falls from zero on, the shortest interval begins at zero.
 */
export function shareInterval(draws: Float64Array, column: number, width: number, share: number): Estimate {
  const sorted = sortedColumn(draws, column, width);
  const span = Math.min(sorted.length - 1, Math.round(share * sorted.length));
  let best = 0;
  for (let i = 0; i + span < sorted.length; i++) {
    if (sorted[i + span]! - sorted[i]! < sorted[best + span]! - sorted[best]!) best = i;
  }
  const mean = meanOf(draws, column, width);
  if (best <= AT_ZERO_SHARE * sorted.length) return { mean, low: 0, high: quantile(sorted, share) };
  return { mean, low: sorted[best]!, high: sorted[best + span]! };
}
