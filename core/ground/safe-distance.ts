/**
 * Distances on the raster that let a ball skip ahead: how far it can surely fly before it could meet a canopy, and how
 * far it can surely roll before the lie changes.
 */

import type { RasterShape } from './polygon-fill.ts';

/** Largest excess of a chamfer distance with weights 1 and √2 over the true distance (Borgefors 1986). */
const CHAMFER_EXCESS = 1.0824;

/**
 * Whole metres to the nearest cell that bears a canopy, never more than the true distance from anywhere in the cell and
 * 255 at most; 0 in a canopy and in the cells around it.
 */
export function clearOfTrees(raster: RasterShape, bearsCanopy: (cell: number) => boolean): Uint8Array {
  return safeDistance(raster, bearsCanopy);
}

/** The same to the nearest cell of another lie: within it, every cell has the lie of the cell itself. */
export function sameLieDistance(raster: RasterShape, lie: Uint8Array): Uint8Array {
  const { columns } = raster;
  // A cell beside another lie is an edge; the first cell of the other lie is at most one step farther.
  return safeDistance(raster, (i) => {
    const here = lie[i];
    const column = i % columns;
    return (
      (column > 0 && lie[i - 1] !== here) ||
      (column < columns - 1 && lie[i + 1] !== here) ||
      (i >= columns && lie[i - columns] !== here) ||
      (i < lie.length - columns && lie[i + columns] !== here)
    );
  });
}

function safeDistance(raster: RasterShape, isGoal: (index: number) => boolean): Uint8Array {
  const { columns, rows, cellM } = raster;
  const far = columns + rows;
  const cells = new Float32Array(columns * rows);
  for (let i = 0; i < cells.length; i++) cells[i] = isGoal(i) ? 0 : far;
  const relax = (index: number, other: number, step: number): void => {
    const through = cells[other]! + step;
    if (through < cells[index]!) cells[index] = through;
  };
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const i = row * columns + column;
      if (column > 0) relax(i, i - 1, 1);
      if (row > 0) {
        relax(i, i - columns, 1);
        if (column > 0) relax(i, i - columns - 1, Math.SQRT2);
        if (column < columns - 1) relax(i, i - columns + 1, Math.SQRT2);
      }
    }
  }
  for (let row = rows - 1; row >= 0; row--) {
    for (let column = columns - 1; column >= 0; column--) {
      const i = row * columns + column;
      if (column < columns - 1) relax(i, i + 1, 1);
      if (row < rows - 1) {
        relax(i, i + columns, 1);
        if (column < columns - 1) relax(i, i + columns + 1, Math.SQRT2);
        if (column > 0) relax(i, i + columns - 1, Math.SQRT2);
      }
    }
  }
  const metres = new Uint8Array(cells.length);
  // The ball may be at the near corner of its cell and the canopy at the near corner of its own: √2 cells less.
  for (let i = 0; i < cells.length; i++) {
    metres[i] = Math.min(255, Math.max(0, (cells[i]! / CHAMFER_EXCESS - Math.SQRT2) * cellM));
  }
  return metres;
}
