/**
 * The point set against a general library's numbers and against what the literature proves of it.
 * Sources: S. Joe & F. Y. Kuo 2008, "Constructing Sobol sequences with better two-dimensional projections", SIAM J. Sci.
 * Comput. 30:2635-2654; I. M. Sobol' 1967, USSR Comput. Math. Math. Phys. 7:86-112.
 */

import { describe, expect, it } from 'vitest';
import { SOBOL_DIMENSIONS, sobolPoints } from '../../core/random/sobol.ts';

/**
 * 32 x the first 32 points in six dimensions, as SciPy 1.17.1 gives them:
 * `scipy.stats.qmc.Sobol(d=6, scramble=False).random(32)` (direction numbers of Joe & Kuo 2008).
 */
const SCIPY_TIMES_32 = [
  [
    0, 16, 24, 8, 12, 28, 20, 4, 6, 22, 30, 14, 10, 26, 18, 2, 3, 19, 27, 11, 15, 31, 23, 7, 5, 21, 29, 13, 9,
    25, 17, 1,
  ],
  [
    0, 16, 8, 24, 12, 28, 4, 20, 10, 26, 2, 18, 6, 22, 14, 30, 15, 31, 7, 23, 3, 19, 11, 27, 5, 21, 13, 29, 9,
    25, 1, 17,
  ],
  [
    0, 16, 8, 24, 20, 4, 28, 12, 30, 14, 22, 6, 10, 26, 2, 18, 15, 31, 7, 23, 27, 11, 19, 3, 17, 1, 25, 9, 5,
    21, 13, 29,
  ],
  [
    0, 16, 8, 24, 28, 12, 20, 4, 14, 30, 6, 22, 18, 2, 26, 10, 21, 5, 29, 13, 9, 25, 1, 17, 27, 11, 19, 3, 7,
    23, 15, 31,
  ],
  [
    0, 16, 24, 8, 12, 28, 20, 4, 18, 2, 10, 26, 30, 14, 6, 22, 9, 25, 17, 1, 5, 21, 29, 13, 27, 11, 3, 19, 23,
    7, 15, 31,
  ],
  [
    0, 16, 24, 8, 4, 20, 28, 12, 10, 26, 18, 2, 14, 30, 22, 6, 31, 15, 7, 23, 27, 11, 3, 19, 21, 5, 13, 29,
    17, 1, 9, 25,
  ],
];

/** Points 1000 and 4095 from the same call with 4096 points: they depend on direction numbers of twelve bits. */
const SCIPY_LATER: readonly (readonly [number, readonly number[]])[] = [
  [1000, [0.2197265625, 0.0966796875, 0.5185546875, 0.6767578125, 0.2802734375, 0.9072265625]],
  [4095, [0.000244140625, 0.941162109375, 0.334228515625, 0.901611328125, 0.940185546875, 0.078857421875]],
];

/** Degrees of the primitive polynomials of Joe & Kuo's table, dimensions 1 to 6; van der Corput's counts as 1. */
const DEGREES = [1, 1, 2, 3, 3, 4];

/** Every way to share `total` bits among `parts` dimensions. */
function compositions(total: number, parts: number): number[][] {
  if (parts === 1) return [[total]];
  return Array.from({ length: total + 1 }, (_, first) =>
    compositions(total - first, parts - 1).map((rest) => [first, ...rest]),
  ).flat();
}

/** True where every box with 2^bits[d] cells along dimensions[d] holds the same number of points `from` .. `from + count - 1`. */
function isEven(
  points: readonly Uint32Array[],
  dimensions: readonly number[],
  bits: readonly number[],
  from: number,
  count: number,
): boolean {
  const boxes = new Uint32Array(2 ** bits.reduce((sum, b) => sum + b, 0));
  for (let i = from; i < from + count; i++) {
    let box = 0;
    dimensions.forEach((dimension, k) => {
      const cells = 2 ** bits[k]!;
      box = box * cells + Math.floor((points[dimension]![i]! / 2 ** 32) * cells);
    });
    boxes[box] = boxes[box]! + 1;
  }
  return boxes.every((inBox) => inBox === count / boxes.length);
}

describe('Sobol’ points', () => {
  it('are SciPy’s, number for number', () => {
    const points = sobolPoints(4096, SOBOL_DIMENSIONS);
    SCIPY_TIMES_32.forEach((column, dimension) => {
      expect(Array.from(points[dimension]!.slice(0, 32), (word) => word / 2 ** 27)).toEqual(column);
    });
    for (const [i, point] of SCIPY_LATER) {
      expect(points.map((column) => column[i]! / 2 ** 32)).toEqual(point);
    }
  });

  it('have Sobol’s property A: one point of every 2^s in each of the 2^s half-cubes', () => {
    // Joe & Kuo 2008, section 2: their numbers have it in far more dimensions than these.
    const points = sobolPoints(1024, SOBOL_DIMENSIONS);
    for (let s = 2; s <= SOBOL_DIMENSIONS; s++) {
      const dimensions = Array.from({ length: s }, (_, d) => d);
      for (let from = 0; from < 1024; from += 2 ** s) {
        expect(isEven(points, dimensions, new Array<number>(s).fill(1), from, 2 ** s)).toBe(true);
      }
    }
  });

  it('are (t, m, s)-nets with t the sum of the degrees less one each, in all pairs and in five dimensions', () => {
    // Sobol' 1967; Niederreiter 1992, "Random Number Generation and Quasi-Monte Carlo Methods", chapter 4.
    const points = sobolPoints(512, SOBOL_DIMENSIONS);
    const sets = [[0, 1, 2, 3, 4]];
    for (let a = 0; a < SOBOL_DIMENSIONS; a++) {
      for (let b = a + 1; b < SOBOL_DIMENSIONS; b++) sets.push([a, b]);
    }
    for (const dimensions of sets) {
      const t = dimensions.reduce((sum, d) => sum + DEGREES[d]! - 1, 0);
      for (let m = t + 1; m <= 9; m++) {
        for (const bits of compositions(m - t, dimensions.length)) {
          for (let from = 0; from < 512; from += 2 ** m) {
            expect(isEven(points, dimensions, bits, from, 2 ** m)).toBe(true);
          }
        }
      }
    }
  });
});
