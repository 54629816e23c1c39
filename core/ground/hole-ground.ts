/** One hole as a raster in metres of the hole's own frame: lie, canopy and elevation per cell. */

import { Lie, type LieCode } from './lies.ts';

/** Row 0 is the southernmost, column 0 the westernmost; index = row * columns + column. */
export interface HoleGround {
  readonly cellM: number;
  /** 1 / cellM. */
  readonly cellsPerM: number;
  readonly columns: number;
  readonly rows: number;
  /** South-west corner of the raster in the hole's frame, metres. */
  readonly west: number;
  readonly south: number;
  /** `Lie` codes. */
  readonly lie: Uint8Array;
  /** Canopy top and base above the ground, metres; 0 top means no canopy. */
  readonly canopyTop: Float32Array;
  readonly canopyBase: Float32Array;
  /** 1/m, see `Canopy`. */
  readonly canopyDensity: Float32Array;
  /** Whole metres within which there is surely no canopy, 255 at most; 0 in and beside canopies. */
  readonly clearOfTrees: Uint8Array;
  /** Whole metres within which the lie is surely that of the cell, 255 at most. */
  readonly sameLie: Uint8Array;
  /** Blocks of `BLOCK_M` for flights over trees: rows of `blockColumns`, from the raster's south-west corner. */
  readonly blockColumns: number;
  /** Highest canopy top in the block and within `BLOCK_M` around it, measured like `highestCanopy`. */
  readonly blockTop: Float32Array;
  /** Highest canopy top of the hole, metres above the datum (above the ground where there are no levels); -Infinity without trees. */
  readonly highestCanopy: number;
  /** Metres above the course's datum, or null where the file has no levels. */
  readonly elevation: Float32Array | null;
}

/** Side of a block, metres, and how far a ball above `blockTop` may go before it has to look again. */
export const BLOCK_M = 32;

/** Index of the block that holds the point; points off the raster belong to the nearest block of its rim. */
export function blockIndexAt(ground: HoleGround, x: number, y: number): number {
  const { blockColumns } = ground;
  const lastRow = ground.blockTop.length / blockColumns - 1;
  const column = Math.min(blockColumns - 1, Math.max(0, ((x - ground.west) / BLOCK_M) | 0));
  const row = Math.min(lastRow, Math.max(0, ((y - ground.south) / BLOCK_M) | 0));
  return row * blockColumns + column;
}

/** Index of the cell that holds the point; points off the raster belong to the nearest cell of its rim. */
export function cellIndexAt(ground: HoleGround, x: number, y: number): number {
  // Truncation instead of floor keeps the arithmetic in integers; it differs only left of 0, which is the rim anyway.
  let column = ((x - ground.west) * ground.cellsPerM) | 0;
  let row = ((y - ground.south) * ground.cellsPerM) | 0;
  if (column < 0) column = 0;
  else if (column >= ground.columns) column = ground.columns - 1;
  if (row < 0) row = 0;
  else if (row >= ground.rows) row = ground.rows - 1;
  return row * ground.columns + column;
}

export function lieAt(ground: HoleGround, x: number, y: number): LieCode {
  return ground.lie[cellIndexAt(ground, x, y)] as LieCode;
}

export function elevationAt(ground: HoleGround, x: number, y: number): number {
  return ground.elevation === null ? 0 : ground.elevation[cellIndexAt(ground, x, y)]!;
}

export function isPenaltyArea(lie: number): boolean {
  return lie === Lie.penaltyYellow || lie === Lie.penaltyRed;
}

export function isOnRaster(ground: HoleGround, x: number, y: number): boolean {
  return (
    x >= ground.west &&
    y >= ground.south &&
    x < ground.west + ground.columns * ground.cellM &&
    y < ground.south + ground.rows * ground.cellM
  );
}
