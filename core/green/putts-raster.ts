/** Expected putts over the cells of a green for one hole position, for the planner and for painting. */

import type { RasterShape } from '../ground/polygon-fill.ts';
import { expectedPuttsAt, type PuttField } from './putt-field.ts';

/** One number per cell of `grid`, for the hole at (pinX, pinY) in the grid's frame. */
export function puttsRaster(field: PuttField, pinX: number, pinY: number, grid: RasterShape): Float32Array {
  const out = new Float32Array(grid.columns * grid.rows);
  for (let row = 0; row < grid.rows; row++) {
    const y = grid.south + (row + 0.5) * grid.cellM - pinY;
    for (let column = 0; column < grid.columns; column++) {
      const x = grid.west + (column + 0.5) * grid.cellM - pinX;
      out[row * grid.columns + column] = expectedPuttsAt(field, x, y);
    }
  }
  return out;
}
