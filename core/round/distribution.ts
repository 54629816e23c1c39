/** Chances of whole numbers of strokes: sums, mixtures, and the shift that keeps scores whole. Plain data throughout. */

/** `chances[i]` is the chance of `lowest + i`; they sum to 1 and neither end is 0. */
export interface ScoreDistribution {
  readonly lowest: number;
  readonly chances: readonly number[];
}

/** Chances below this at either end are cut off: a million rounds would not show them. */
const NEGLIGIBLE = 1e-15;

/** The distribution in proportion to `weights`. Throws a RangeError where they are no chances. */
export function makeDistribution(lowest: number, weights: ArrayLike<number>): ScoreDistribution {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    if (!(weights[i]! >= 0 && weights[i]! < Infinity))
      throw new RangeError(`Unexpected chance of ${lowest + i} strokes: ${weights[i]}`);
    sum += weights[i]!;
  }
  if (!Number.isInteger(lowest) || !(sum > 0))
    throw new RangeError(`Unexpected distribution from ${lowest} strokes: its chances sum to ${sum}`);
  let first = 0;
  let last = weights.length - 1;
  while (weights[first]! / sum < NEGLIGIBLE) first++;
  while (weights[last]! / sum < NEGLIGIBLE) last--;
  const chances: number[] = [];
  for (let i = first; i <= last; i++) chances.push(weights[i]! / sum);
  return { lowest: lowest + first, chances };
}

export function certainScore(strokes: number): ScoreDistribution {
  return { lowest: strokes, chances: [1] };
}

export function highestOf({ lowest, chances }: ScoreDistribution): number {
  return lowest + chances.length - 1;
}

export function meanOf({ lowest, chances }: ScoreDistribution): number {
  return chances.reduce((sum, chance, i) => sum + chance * i, lowest);
}

export function varianceOf(distribution: ScoreDistribution): number {
  const mean = meanOf(distribution) - distribution.lowest;
  return distribution.chances.reduce((sum, chance, i) => sum + chance * (i - mean) ** 2, 0);
}

export function chanceOf({ lowest, chances }: ScoreDistribution, strokes: number): number {
  return chances[strokes - lowest] ?? 0;
}

export function chanceOfAtMost({ lowest, chances }: ScoreDistribution, strokes: number): number {
  let sum = 0;
  for (let i = 0; i < chances.length && lowest + i <= strokes; i++) sum += chances[i]!;
  return Math.min(1, sum);
}

/** Of the sum of two independent scores: the convolution of their chances. */
export function addDistributions(a: ScoreDistribution, b: ScoreDistribution): ScoreDistribution {
  const chances = new Float64Array(a.chances.length + b.chances.length - 1);
  a.chances.forEach((p, i) => {
    for (let j = 0; j < b.chances.length; j++) chances[i + j] = chances[i + j]! + p * b.chances[j]!;
  });
  return makeDistribution(a.lowest + b.lowest, chances);
}

/** Of the sum of all; `certainScore(0)` for none. */
export function sumOfDistributions(parts: readonly ScoreDistribution[]): ScoreDistribution {
  return parts.reduce(addDistributions, certainScore(0));
}

/** One of the parts, each with its weight. */
export function mixDistributions(
  parts: readonly { readonly weight: number; readonly distribution: ScoreDistribution }[],
): ScoreDistribution {
  const lowest = Math.min(...parts.map(({ distribution }) => distribution.lowest));
  const highest = Math.max(...parts.map(({ distribution }) => highestOf(distribution)));
  const chances = new Float64Array(highest - lowest + 1);
  for (const { weight, distribution } of parts) {
    distribution.chances.forEach((chance, i) => {
      const at = distribution.lowest + i - lowest;
      chances[at] = chances[at]! + weight * chance;
    });
  }
  return makeDistribution(lowest, chances);
}

/**
 * Chances in proportion to chance x exp(rate x strokes): the shift of a distribution that keeps scores whole and
 * within what was possible, and moves the mean by about rate x variance (exponential tilting, Esscher 1932). A certain
 * score stays.
 */
export function tilted(distribution: ScoreDistribution, rate: number): ScoreDistribution {
  if (rate === 0 || distribution.chances.length === 1) return distribution;
  // Counted from the end that grows, so that nothing overflows.
  const from = rate > 0 ? distribution.chances.length - 1 : 0;
  return makeDistribution(
    distribution.lowest,
    distribution.chances.map((chance, i) => chance * Math.exp(rate * (i - from))),
  );
}

/** No tilt is steeper: beyond it a score is all but certainly the best or worst possible. */
const STEEPEST = 80;

/**
 * The common rate at which the means of all parts, tilted, sum to `total`; the steepest one where that total is
 * beyond what the parts can give, 0 where none of them can move.
 */
export function rateForTotal(parts: readonly ScoreDistribution[], total: number): number {
  const meanAt = (rate: number): number => parts.reduce((sum, part) => sum + meanOf(tilted(part, rate)), 0);
  const low = parts.reduce((sum, part) => sum + part.lowest, 0);
  const high = parts.reduce((sum, part) => sum + highestOf(part), 0);
  if (low === high) return 0;
  if (total <= low) return -STEEPEST;
  if (total >= high) return STEEPEST;
  // The sum of means rises with the rate: Newton's steps (slope: the variance), kept inside a shrinking bracket.
  let below = -STEEPEST;
  let above = STEEPEST;
  let rate = 0;
  for (let step = 0; step < 100; step++) {
    const miss = meanAt(rate) - total;
    if (Math.abs(miss) < 1e-11) return rate;
    if (miss > 0) above = rate;
    else below = rate;
    const slope = parts.reduce((sum, part) => sum + varianceOf(tilted(part, rate)), 0);
    const next = rate - miss / slope;
    rate = next > below && next < above ? next : (below + above) / 2;
  }
  return rate;
}

/** The scores between which at least `share` of the chance lies, as much cut off below as above at most. */
export function centralRange(
  distribution: ScoreDistribution,
  share: number,
): { readonly low: number; readonly high: number; readonly share: number } {
  const tail = (1 - share) / 2;
  const low = quantile(distribution, tail);
  const high = quantile(distribution, 1 - tail);
  return { low, high, share: chanceOfAtMost(distribution, high) - chanceOfAtMost(distribution, low - 1) };
}

/** The lowest score that is met or beaten with at least this chance. */
export function quantile(distribution: ScoreDistribution, chance: number): number {
  let sum = 0;
  for (let i = 0; i < distribution.chances.length; i++) {
    sum += distribution.chances[i]!;
    if (sum >= chance - 1e-12) return distribution.lowest + i;
  }
  return highestOf(distribution);
}
