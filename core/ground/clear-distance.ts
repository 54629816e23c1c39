/** How far a ball can surely fly from each cell before it could meet a canopy. */

import type { RasterShape } from './polygon-fill.ts';

/** Cells per side of a chamfer step and its largest excess over the true distance (Borgefors 1986, weights 1 and √2). */
const CHAMFER_EXCESS = 1.0824;

/**
 * Metres to the nearest cell with `canopyTop > 0`, never more than the true distance from anywhere in the cell;
 * 0 in a canopy and in the cells around it. `Infinity` never occurs: without trees it is the raster's diagonal.
 */
export function clearDistance(raster: RasterShape, canopyTop: Float32Array): Float32Array {
  const { columns, rows, cellM } = raster;
  const far = columns + rows;
  const cells = new Float32Array(columns * rows);
  for (let i = 0; i < cells.length; i++) cells[i] = canopyTop[i]! > 0 ? 0 : far;
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
  // The ball may be at the near corner of its cell and the canopy at the near corner of its own: √2 cells less.
  for (let i = 0; i < cells.length; i++) {
    cells[i] = Math.max(0, (cells[i]! / CHAMFER_EXCESS - Math.SQRT2) * cellM);
  }
  return cells;
}
