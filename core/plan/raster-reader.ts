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
  /** Balls that fly off the map rest inside its rim. */
  protected readonly leastX: number;
  protected readonly leastY: number;
  protected readonly mostX: number;
  protected readonly mostY: number;

  constructor(readonly ground: HoleGround) {
    this.west = ground.west;
    this.south = ground.south;
    this.perM = ground.cellsPerM;
    this.columns = ground.columns;
    this.rows = ground.rows;
    this.lie = ground.lie;
    this.elevation = ground.elevation;
    const margin = ground.cellM / 2;
    this.leastX = ground.west + margin;
    this.leastY = ground.south + margin;
    this.mostX = ground.west + ground.columns * ground.cellM - margin;
    this.mostY = ground.south + ground.rows * ground.cellM - margin;
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
