/** Distances that a ball may skip ahead by: a brute-force twin says how far is truly safe. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearOfTrees, sameLieDistance } from '../../core/ground/safe-distance.ts';
import type { RasterShape } from '../../core/ground/polygon-fill.ts';

interface Spotted {
  readonly raster: RasterShape;
  /** Cells that bear trees, or another lie. */
  readonly marked: readonly number[];
}

const anySpots: fc.Arbitrary<Spotted> = fc
  .record({
    columns: fc.integer({ min: 1, max: 26 }),
    rows: fc.integer({ min: 1, max: 26 }),
    cellM: fc.constantFrom(0.5, 1, 2),
    picks: fc.array(fc.nat(), { maxLength: 6 }),
  })
  .map(({ columns, rows, cellM, picks }) => ({
    raster: { cellM, columns, rows, west: 0, south: 0 },
    marked: [...new Set(picks.map((pick) => pick % (columns * rows)))],
  }));

/** Shortest way from anywhere in one cell to anywhere in the other, metres. */
function gap({ columns, cellM }: RasterShape, a: number, b: number): number {
  const across = Math.max(0, Math.abs((a % columns) - (b % columns)) - 1);
  const along = Math.max(0, Math.abs(Math.floor(a / columns) - Math.floor(b / columns)) - 1);
  return Math.hypot(across, along) * cellM;
}

/** From centre to centre, metres. */
function centreDistance({ columns, cellM }: RasterShape, a: number, b: number): number {
  return cellM * Math.hypot((a % columns) - (b % columns), Math.floor(a / columns) - Math.floor(b / columns));
}

describe('distance clear of trees', () => {
  it('is never more than the way from anywhere in the cell to the nearest canopy, and 0 in it', () => {
    fc.assert(
      fc.property(anySpots, ({ raster, marked }) => {
        const top = new Float32Array(raster.columns * raster.rows);
        for (const cell of marked) top[cell] = 12;
        const clear = clearOfTrees(raster, (i) => top[i]! > 0);
        clear.forEach((metres, i) => {
          for (const cell of marked) {
            if (metres > gap(raster, i, cell)) {
              throw new Error(`cell ${i} claims ${metres} m, a tree stands ${gap(raster, i, cell)} m away`);
            }
          }
          if (marked.includes(i) && metres !== 0)
            throw new Error(`cell ${i} bears a tree and claims ${metres} m`);
        });
      }),
      { numRuns: 60, seed: 21 },
    );
  });

  it('is of use: no less than the true distance less a twelfth, two cells and the rounding', () => {
    fc.assert(
      fc.property(anySpots, ({ raster, marked }) => {
        fc.pre(marked.length > 0);
        const top = new Float32Array(raster.columns * raster.rows);
        for (const cell of marked) top[cell] = 12;
        clearOfTrees(raster, (i) => top[i]! > 0).forEach((metres, i) => {
          const nearest = Math.min(...marked.map((cell) => centreDistance(raster, i, cell)));
          // The chamfer distance is at least the true one and is divided by 1.0824; √2 cells are taken off.
          const least = Math.floor(nearest / 1.0825 - 1.4143 * raster.cellM);
          if (metres < least) throw new Error(`cell ${i} claims ${metres} m though ${least} m are safe`);
        });
      }),
      { numRuns: 60, seed: 22 },
    );
  });

  it('is far on open ground and stops at 255', () => {
    const raster = { cellM: 1, columns: 400, rows: 5, west: 0, south: 0 };
    const open = clearOfTrees(raster, () => false);
    expect(open.every((metres) => metres === 255)).toBe(true);
    const top = new Float32Array(2000);
    top[0] = 5;
    expect(clearOfTrees(raster, (i) => top[i]! > 0)[399]).toBe(255);
  });
});

describe('distance of the same lie', () => {
  it('is never more than the way to the nearest cell of another lie', () => {
    fc.assert(
      fc.property(anySpots, fc.integer({ min: 1, max: 10 }), ({ raster, marked }, other) => {
        const lie = new Uint8Array(raster.columns * raster.rows);
        // Two kinds of other ground, some of it in blocks of several cells.
        marked.forEach((cell, k) => {
          lie[cell] = k % 2 === 0 ? other : 1 + (other % 10);
          if ((cell + 1) % raster.columns !== 0) lie[cell + 1] = lie[cell]!;
        });
        sameLieDistance(raster, lie).forEach((metres, i) => {
          lie.forEach((code, cell) => {
            if (code !== lie[i] && metres > gap(raster, i, cell)) {
              throw new Error(
                `cell ${i} claims ${metres} m, cell ${cell} lies ${gap(raster, i, cell)} m away`,
              );
            }
          });
        });
      }),
      { numRuns: 60, seed: 23 },
    );
  });

  it('reaches across wide ground of one lie', () => {
    const raster = { cellM: 1, columns: 101, rows: 101, west: 0, south: 0 };
    const lie = new Uint8Array(101 * 101);
    for (let row = 0; row < 101; row++) lie[row * 101 + 100] = 1;
    const same = sameLieDistance(raster, lie);
    expect(same[50 * 101 + 50]).toBeGreaterThanOrEqual(43);
    expect(same[50 * 101 + 50]).toBeLessThanOrEqual(49);
    expect(same[50 * 101 + 99]).toBe(0);
  });
});
