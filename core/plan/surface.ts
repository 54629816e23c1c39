/** The strokes-to-hole-out field as a plain grid, each cell by its own lie, for painting. */

import { lieAt } from '../ground/hole-ground.ts';
import type { StrokesSurface } from './model.ts';
import type { StrokesField } from './strokes-field.ts';

/** Cells of `cellM` metres over the hole's raster; NaN in penalty areas and out of bounds. */
export function strokesSurface(field: StrokesField, cellM: number): StrokesSurface {
  const { ground } = field;
  const columns = Math.max(1, Math.floor((ground.columns * ground.cellM) / cellM));
  const rows = Math.max(1, Math.floor((ground.rows * ground.cellM) / cellM));
  const originX = ground.west + cellM / 2;
  const originY = ground.south + cellM / 2;
  const values = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const x = originX + column * cellM;
      const y = originY + row * cellM;
      values[row * columns + column] = field.valueAt(x, y, lieAt(ground, x, y));
    }
  }
  return { originX, originY, cellM, columns, rows, values };
}
