/** Gauss-Hermite quadrature for the standard normal law; nodes from the Hermite recurrence. */

/** `sum of weights[i] f(nodes[i])` is the mean of f over a standard normal variable. */
export interface NormalQuadrature {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * The rule with `count` nodes, exact for polynomials up to degree 2 count - 1 (Abramowitz & Stegun 1964, 25.4.46, in
 * the scale of the normal law). For 1 to 60 nodes.
 */
export function gaussHermite(count: number): NormalQuadrature {
  if (!Number.isInteger(count) || count < 1 || count > 60)
    throw new RangeError(`Unexpected count of nodes: ${count}`);
  const positive = positiveRoots(count);
  const middle = count % 2 === 1 ? [0] : [];
  const nodes = [...positive.map((x) => -x).reverse(), ...middle, ...positive];
  const weights = nodes.map((x) => 1 / (count * normalisedHermite(count, x).before ** 2));
  return { nodes, weights };
}

/** Found by steps shorter than the least gap between roots, then halved down; they all lie below 2 sqrt(count). */
function positiveRoots(count: number): number[] {
  const roots: number[] = [];
  const step = 0.4 / Math.sqrt(count);
  const valueAt = (x: number): number => normalisedHermite(count, x).value;
  for (let x = step / 2; x < 2 * Math.sqrt(count) + 1; x += step) {
    let low = x;
    let high = x + step;
    if (valueAt(low) > 0 === valueAt(high) > 0) continue;
    const isRising = valueAt(high) > 0;
    for (let halving = 0; halving < 60; halving++) {
      const middle = (low + high) / 2;
      if (valueAt(middle) > 0 === isRising) high = middle;
      else low = middle;
    }
    roots.push((low + high) / 2);
  }
  return roots;
}

/** The orthonormal Hermite polynomial of this degree and the one below it. */
function normalisedHermite(degree: number, x: number): { readonly value: number; readonly before: number } {
  let before = 0;
  let value = 1;
  for (let n = 1; n <= degree; n++) {
    const next = (x * value - Math.sqrt(n - 1) * before) / Math.sqrt(n);
    before = value;
    value = next;
  }
  return { value, before };
}
