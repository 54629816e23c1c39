/**
 * Sobol' points in up to six dimensions: evenly spread samples, so that few shots already cover a spread well.
 * Direction numbers: Joe & Kuo 2008, SIAM J. Sci. Comput. 30:2635, first rows of their table (from memory; the
 * tests check the net property that defines them).
 */

/** Degree, coefficient and initial numbers of dimensions 2..6; the first dimension is van der Corput's. */
const JOE_KUO: readonly { readonly s: number; readonly a: number; readonly m: readonly number[] }[] = [
  { s: 1, a: 0, m: [1] },
  { s: 2, a: 1, m: [1, 3] },
  { s: 3, a: 1, m: [1, 3, 1] },
  { s: 3, a: 2, m: [1, 1, 1] },
  { s: 4, a: 1, m: [1, 1, 3, 3] },
];

export const SOBOL_DIMENSIONS = 6;

function directionNumbers(dimension: number): Uint32Array {
  const v = new Uint32Array(32);
  if (dimension === 0) {
    for (let bit = 0; bit < 32; bit++) v[bit] = (1 << (31 - bit)) >>> 0;
    return v;
  }
  const { s, a, m } = JOE_KUO[dimension - 1]!;
  for (let bit = 0; bit < 32; bit++) {
    if (bit < s) {
      v[bit] = (m[bit]! << (31 - bit)) >>> 0;
      continue;
    }
    let next = v[bit - s]! ^ (v[bit - s]! >>> s);
    for (let k = 1; k < s; k++) {
      if ((a >>> (s - 1 - k)) & 1) next ^= v[bit - k]!;
    }
    v[bit] = next >>> 0;
  }
  return v;
}

/**
 * The first `count` points as 32-bit fractions, one array per dimension (`points[dimension][i]`), in Gray-code
 * order starting with the origin. XOR a random word over a dimension to randomise it without losing the spread.
 */
export function sobolPoints(count: number, dimensions: number): readonly Uint32Array[] {
  if (dimensions < 1 || dimensions > SOBOL_DIMENSIONS) {
    throw new RangeError(`Unexpected number of dimensions: ${dimensions}, expected 1..${SOBOL_DIMENSIONS}.`);
  }
  const points: Uint32Array[] = [];
  for (let dimension = 0; dimension < dimensions; dimension++) {
    const v = directionNumbers(dimension);
    const column = new Uint32Array(count);
    let x = 0;
    for (let i = 1; i < count; i++) {
      x = (x ^ v[Math.clz32(i & -i) ^ 31]!) >>> 0;
      column[i] = x;
    }
    points.push(column);
  }
  return points;
}
