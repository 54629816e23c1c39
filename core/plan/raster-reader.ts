/** The members of a hole's ground one load away, for the innermost loops of the program. */

import type { HoleGround } from '../ground/hole-ground.ts';

export class RasterReader {
  protected readonly west: number;
  protected readonly south: number;
  protected readonly perM: number;
  protected readonly columns: number;
  protected readonly rows: number;
  protected readonly lie: Uint8Array;
  protected readonly elevation: Float32Array | null;

  constructor(readonly ground: HoleGround) {
    this.west = ground.west;
    this.south = ground.south;
    this.perM = ground.cellsPerM;
    this.columns = ground.columns;
    this.rows = ground.rows;
    this.lie = ground.lie;
    this.elevation = ground.elevation;
  }

  /** Index of the cell that holds the point; points off the raster belong to the nearest cell of its rim. */
  protected cellAt(x: number, y: number): number {
    let column = ((x - this.west) * this.perM) | 0;
    let row = ((y - this.south) * this.perM) | 0;
    if (column < 0) column = 0;
    else if (column >= this.columns) column = this.columns - 1;
    if (row < 0) row = 0;
    else if (row >= this.rows) row = this.rows - 1;
    return row * this.columns + column;
  }
}
