/** One hole as a raster in metres of the hole's own frame: lie, canopy and elevation per cell. */

import type { BunkerLip } from './bunker-lips.ts';
import type { FlatRing } from './polygon-fill.ts';
import { Lie, type LieCode } from './lies.ts';
import type { SkylineBook } from './skyline.ts';
import type { Trunk } from './trunks.ts';

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
  /** Of the course's bunkers; absent where nothing is asked of them. */
  readonly lips?: readonly BunkerLip[];
  /** Outlines of the hole's own fairway, see `own-fairway.ts`. */
  readonly ownFairways: readonly (readonly FlatRing[])[];
  /** Of trees that stand by themselves. */
  readonly trunks: readonly Trunk[];
  /**
   * `CANOPY_STOREYS` entries a cell: whole metres within which there is surely no canopy that rises above the storey's
   * floor, 255 at most; 0 in and beside such canopies. Storey 0 counts every canopy.
   */
  readonly clearOfTrees: Uint8Array;
  readonly skylines: SkylineBook;
  /** The floor of storey k lies k `storeyM` above `storeyBase`, measured like `highestCanopy`. */
  readonly storeyBase: number;
  readonly storeyM: number;
  /** Whole metres within which the lie is surely that of the cell, 255 at most. */
  readonly sameLie: Uint8Array;
  /** Highest canopy top of the hole, metres above the datum (above the ground where there are no levels); -Infinity without trees. */
  readonly highestCanopy: number;
  /** Metres above the course's datum, or null where the file has no levels. */
  readonly elevation: Float32Array | null;
  /** Metres of rise per metre to the east and to the north, two numbers a cell; null where the file has neither levels nor slope arrows. */
  readonly slopes: Float32Array | null;
}

/** Heights at which it is known how far away the next higher canopy is: a ball meets only trees that rise above it. */
export const CANOPY_STOREYS = 4;

/** Index of the cell that holds the point; points off the raster belong to the nearest cell of its rim. */
export function cellIndexAt(
  ground: Pick<HoleGround, 'cellsPerM' | 'columns' | 'rows' | 'west' | 'south'>,
  x: number,
  y: number,
): number {
  // Truncation instead of floor keeps the arithmetic in integers; it differs only left of 0, which is the rim anyway.
  let column = ((x - ground.west) * ground.cellsPerM) | 0;
  let row = ((y - ground.south) * ground.cellsPerM) | 0;
  if (column < 0) column = 0;
  else if (column >= ground.columns) column = ground.columns - 1;
  if (row < 0) row = 0;
  else if (row >= ground.rows) row = ground.rows - 1;
  return row * ground.columns + column;
}

export function lieAt(
  ground: Pick<HoleGround, 'cellsPerM' | 'columns' | 'rows' | 'west' | 'south' | 'lie'>,
  x: number,
  y: number,
): LieCode {
  return ground.lie[cellIndexAt(ground, x, y)] as LieCode;
}

export function elevationAt(ground: HoleGround, x: number, y: number): number {
  return ground.elevation === null ? 0 : ground.elevation[cellIndexAt(ground, x, y)]!;
}

export function isPenaltyArea(lie: number): boolean {
  return lie === Lie.penaltyYellow || lie === Lie.penaltyRed;
}

export function isOnRaster(
  ground: Pick<HoleGround, 'cellM' | 'columns' | 'rows' | 'west' | 'south'>,
  x: number,
  y: number,
): boolean {
  return (
    x >= ground.west &&
    y >= ground.south &&
    x < ground.west + ground.columns * ground.cellM &&
    y < ground.south + ground.rows * ground.cellM
  );
}
