/** Ground heights between measured levels. */

import type { RasterShape } from './polygon-fill.ts';

export interface Level {
  readonly x: number;
  readonly y: number;
  readonly elevationM: number;
}

/** Spacing of the knots between which heights are interpolated, metres. */
export const KNOT_SPACING_M = 10;
/** Levels farther than this from a knot do not bear on it unless nothing nearer exists, metres. */
export const LEVEL_REACH_M = 120;

/**
 * Elevation per cell, metres, by inverse-square distance weighting (Shepard 1968) of the levels within reach,
 * computed on knots every 10 m and bilinear between. Null where there are no levels.
 */
export function elevationRaster(raster: RasterShape, levels: readonly Level[]): Float32Array | null {
  if (levels.length === 0) return null;
  const { cellM, columns, rows, west, south } = raster;
  const knotColumns = Math.ceil((columns * cellM) / KNOT_SPACING_M) + 2;
  const knotRows = Math.ceil((rows * cellM) / KNOT_SPACING_M) + 2;
  const knots = new Float64Array(knotColumns * knotRows);
  for (let row = 0; row < knotRows; row++) {
    for (let column = 0; column < knotColumns; column++) {
      knots[row * knotColumns + column] = shepard(
        levels,
        west + column * KNOT_SPACING_M,
        south + row * KNOT_SPACING_M,
      );
    }
  }
  const out = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const v = ((row + 0.5) * cellM) / KNOT_SPACING_M;
    const knotRow = Math.floor(v);
    const fv = v - knotRow;
    for (let column = 0; column < columns; column++) {
      const u = ((column + 0.5) * cellM) / KNOT_SPACING_M;
      const knotColumn = Math.floor(u);
      const fu = u - knotColumn;
      const k = knotRow * knotColumns + knotColumn;
      const near = knots[k]! * (1 - fu) + knots[k + 1]! * fu;
      const next = knots[k + knotColumns]! * (1 - fu) + knots[k + knotColumns + 1]! * fu;
      out[row * columns + column] = near * (1 - fv) + next * fv;
    }
  }
  return out;
}

/** Half of the length over which a slope is taken, metres: heights are interpolated between knots every 10 m. */
const HALF_SPAN_M = 5;
/** Steeper than this the raster is taken for a bank that a ball seldom lands on, metres per metre. */
const STEEPEST = 0.35;

/** Two numbers a cell: metres of rise per metre to the east and to the north. */
export function slopeRaster({ cellM, columns, rows }: RasterShape, elevation: Float32Array): Float32Array {
  const span = Math.max(1, Math.round(HALF_SPAN_M / cellM));
  const out = new Float32Array(2 * columns * rows);
  const rise = (from: number, to: number, cells: number): number => {
    const slope = cells === 0 ? 0 : (elevation[to]! - elevation[from]!) / (cells * cellM);
    return Math.max(-STEEPEST, Math.min(STEEPEST, slope));
  };
  for (let row = 0; row < rows; row++) {
    const below = Math.max(0, row - span);
    const above = Math.min(rows - 1, row + span);
    for (let column = 0; column < columns; column++) {
      const left = Math.max(0, column - span);
      const right = Math.min(columns - 1, column + span);
      const i = row * columns + column;
      out[2 * i] = rise(row * columns + left, row * columns + right, right - left);
      out[2 * i + 1] = rise(below * columns + column, above * columns + column, above - below);
    }
  }
  return out;
}

function shepard(levels: readonly Level[], x: number, y: number): number {
  let weightSum = 0;
  let sum = 0;
  let nearest = levels[0]!;
  let nearestSquare = Infinity;
  for (const level of levels) {
    const square = (level.x - x) ** 2 + (level.y - y) ** 2;
    if (square < nearestSquare) {
      nearestSquare = square;
      nearest = level;
    }
    if (square > LEVEL_REACH_M * LEVEL_REACH_M) continue;
    const weight = 1 / (square + 1);
    weightSum += weight;
    sum += weight * level.elevationM;
  }
  return weightSum === 0 ? nearest.elevationM : sum / weightSum;
}
