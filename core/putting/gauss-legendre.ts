/** Gauss-Legendre quadrature on [-1, 1]; nodes by Newton's method on the Legendre recurrence. */

export interface Quadrature {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** The rule with `count` nodes; exact for polynomials up to degree 2 count - 1 (Abramowitz & Stegun 1964, 25.4.29). */
export function gaussLegendre(count: number): Quadrature {
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step += 1) {
      let previous = 1;
      let current = x;
      for (let n = 2; n <= count; n += 1) {
        const next = ((2 * n - 1) * x * current - (n - 1) * previous) / n;
        previous = current;
        current = next;
      }
      slope = (count * (x * current - previous)) / (x * x - 1);
      const change = current / slope;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    nodes[count - 1 - i] = x;
    weights[count - 1 - i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
}
