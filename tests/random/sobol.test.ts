/** Even spread of the point set, counted box by box. */

import { describe, expect, it } from 'vitest';
import { SOBOL_DIMENSIONS, sobolPoints } from '../../core/random/sobol.ts';

/** Points in each box of a grid with 2^bits[d] cells along dimension d. */
function boxCounts(
  points: readonly Uint32Array[],
  dimensions: readonly number[],
  bits: readonly number[],
  from: number,
  count: number,
): Uint32Array {
  const boxes = new Uint32Array(1 << bits.reduce((sum, b) => sum + b, 0));
  for (let i = from; i < from + count; i++) {
    let box = 0;
    dimensions.forEach((dimension, k) => {
      const cells = 2 ** bits[k]!;
      box = box * cells + Math.floor((points[dimension]![i]! / 2 ** 32) * cells);
    });
    boxes[box] = boxes[box]! + 1;
  }
  return boxes;
}

describe('Sobol’ points', () => {
  it('put one point into each slice of every dimension, in every aligned block', () => {
    const points = sobolPoints(1024, SOBOL_DIMENSIONS);
    for (let dimension = 0; dimension < SOBOL_DIMENSIONS; dimension++) {
      for (let m = 0; m <= 10; m++) {
        const size = 2 ** m;
        for (let from = 0; from < 1024; from += size) {
          const counts = boxCounts(points, [dimension], [m], from, size);
          expect(counts.every((count) => count === 1)).toBe(true);
        }
      }
    }
  });

  it('are a (0, m, 2)-net in the first two dimensions: one point in every elementary interval', () => {
    const points = sobolPoints(1024, 2);
    for (let m = 1; m <= 10; m++) {
      for (let a = 0; a <= m; a++) {
        for (let from = 0; from < 1024; from += 2 ** m) {
          const counts = boxCounts(points, [0, 1], [a, m - a], from, 2 ** m);
          expect(counts.every((count) => count === 1)).toBe(true);
        }
      }
    }
  });

  it('start with the origin and do not repeat', () => {
    const points = sobolPoints(4096, SOBOL_DIMENSIONS);
    for (const column of points) {
      expect(column[0]).toBe(0);
      expect(new Set(column).size).toBe(4096);
    }
  });

  it('differ between dimensions', () => {
    const points = sobolPoints(64, SOBOL_DIMENSIONS);
    const seen = new Set(points.map((column) => column.join(',')));
    expect(seen.size).toBe(SOBOL_DIMENSIONS);
  });

  it('are the same however many are asked for', () => {
    const few = sobolPoints(100, 5);
    const many = sobolPoints(300, 5);
    few.forEach((column, dimension) => expect(column).toEqual(many[dimension]!.slice(0, 100)));
  });

  it('refuse more dimensions than there are direction numbers for', () => {
    expect(() => sobolPoints(8, SOBOL_DIMENSIONS + 1)).toThrow(/dimensions: 7/);
    expect(() => sobolPoints(8, 0)).toThrow(/dimensions: 0/);
  });
});
