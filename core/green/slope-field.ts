/**
 * The fall of a green over its area: from ground levels, or from arrows that somebody put down by hand. One gradient per
 * node of a grid, bilinear between nodes.
 */

import type { Level } from '../ground/elevation.ts';
import type { RasterShape } from '../ground/polygon-fill.ts';
import type { GreenSurface } from './surface.ts';

/** A slope seen on the spot: falls by `slopeShare` metres per metre towards `downhill` (radians clockwise from north). */
export interface SlopeMark {
  readonly x: number;
  readonly y: number;
  readonly slopeShare: number;
  readonly downhill: number;
}

export interface SlopeField {
  readonly grid: RasterShape;
  /** Metres of rise per metre to the east and to the north, at the cells' centres. */
  readonly east: Float32Array;
  readonly north: Float32Array;
}

/** Levels that bear on a node: the nearest this many set how far it looks. */
const NEAREST_LEVELS = 6;
/** It looks at least this far, metres, so that errors of single levels even out. */
const LEAST_REACH_M = 4;
/** Levels farther than this from a node say nothing about the green there, metres. */
const FARTHEST_LEVEL_M = 40;
/** Steeper than this a ball does not stop on most greens; levels that say so are too coarse, metres per metre. */
export const STEEPEST_SLOPE = 0.08;

/**
 * Gradients by a weighted plane fit around each node (moving least squares, Lancaster & Salkauskas 1981, Math. Comp.
 * 37:141), exact where the ground is a plane. Null where fewer than three levels lie near any node or all lie in line.
 * The field is as fine as the levels are: levels 20 m apart show the tilt of a green, not its ridges.
 */
export function slopesFromLevels(levels: readonly Level[], grid: RasterShape): SlopeField | null {
  return fillField(grid, (x, y) => planeFit(levels, x, y));
}

/**
 * Gradients between marks by inverse-square weights (Shepard 1968, "A two-dimensional interpolation function"). Null
 * without marks. Equal marks make a plane; far from all of them the field nears their mean. It goes through every mark
 * and knows no ridge that lies between two; being blended from gradients it need not be that of any one surface.
 */
export function slopesFromMarks(marks: readonly SlopeMark[], grid: RasterShape): SlopeField | null {
  if (marks.length === 0) return null;
  return fillField(grid, (x, y) => {
    let sum = 0;
    let east = 0;
    let north = 0;
    for (const mark of marks) {
      const weight = 1 / ((mark.x - x) ** 2 + (mark.y - y) ** 2 + 1e-6);
      sum += weight;
      east -= weight * mark.slopeShare * Math.sin(mark.downhill);
      north -= weight * mark.slopeShare * Math.cos(mark.downhill);
    }
    return [east / sum, north / sum];
  });
}

type Gradient = readonly [east: number, north: number];

function fillField(grid: RasterShape, at: (x: number, y: number) => Gradient | null): SlopeField | null {
  const cells = grid.columns * grid.rows;
  const east = new Float32Array(cells);
  const north = new Float32Array(cells);
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const found = at(grid.west + (column + 0.5) * grid.cellM, grid.south + (row + 0.5) * grid.cellM);
      if (found === null) return null;
      const steepness = Math.hypot(found[0], found[1]);
      const kept = steepness > STEEPEST_SLOPE ? STEEPEST_SLOPE / steepness : 1;
      east[row * grid.columns + column] = kept * found[0];
      north[row * grid.columns + column] = kept * found[1];
    }
  }
  return { grid, east, north };
}

/** The gradient of the plane that fits the levels best, near ones counting most. */
function planeFit(levels: readonly Level[], x: number, y: number): Gradient | null {
  const squares = levels
    .map((level) => (level.x - x) ** 2 + (level.y - y) ** 2)
    .filter((square) => square <= FARTHEST_LEVEL_M ** 2)
    .sort((a, b) => a - b);
  if (squares.length < 3) return null;
  const reach = Math.max(LEAST_REACH_M ** 2, squares[Math.min(squares.length, NEAREST_LEVELS) - 1]!);
  let [w, wx, wy, wz, wxx, wxy, wyy, wxz, wyz] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const level of levels) {
    const dx = level.x - x;
    const dy = level.y - y;
    const square = dx * dx + dy * dy;
    if (square > FARTHEST_LEVEL_M ** 2) continue;
    const weight = Math.exp((-2 * square) / reach) + 1e-6;
    w += weight;
    wx += weight * dx;
    wy += weight * dy;
    wz += weight * level.elevationM;
    wxx += weight * dx * dx;
    wxy += weight * dx * dy;
    wyy += weight * dy * dy;
    wxz += weight * dx * level.elevationM;
    wyz += weight * dy * level.elevationM;
  }
  const xx = wxx - (wx * wx) / w;
  const xy = wxy - (wx * wy) / w;
  const yy = wyy - (wy * wy) / w;
  const xz = wxz - (wx * wz) / w;
  const yz = wyz - (wy * wz) / w;
  const determinant = xx * yy - xy * xy;
  if (determinant < 1e-6 * (xx + yy) ** 2) return null;
  return [(xz * yy - yz * xy) / determinant, (yz * xx - xz * xy) / determinant];
}

/** The field seen from a hole position at (x, y): a surface with the hole at its origin. */
export function surfaceAround(field: SlopeField, x: number, y: number): GreenSurface {
  const { grid, east, north } = field;
  const right = grid.columns > 1 ? 1 : 0;
  const up = grid.rows > 1 ? grid.columns : 0;
  // Both parts are asked for at the same place one after the other: the second is kept.
  let lastX = NaN;
  let lastY = NaN;
  let lastNorth = 0;
  const riseEast = (dx: number, dy: number): number => {
    const u = Math.min(grid.columns - 1, Math.max(0, (x + dx - grid.west) / grid.cellM - 0.5));
    const v = Math.min(grid.rows - 1, Math.max(0, (y + dy - grid.south) / grid.cellM - 0.5));
    const column = Math.min(Math.max(0, grid.columns - 2), Math.floor(u));
    const row = Math.min(Math.max(0, grid.rows - 2), Math.floor(v));
    const i = row * grid.columns + column;
    const fu = u - column;
    const fv = v - row;
    const near = (1 - fu) * (1 - fv);
    const beside = fu * (1 - fv);
    const above = (1 - fu) * fv;
    const across = fu * fv;
    lastX = dx;
    lastY = dy;
    lastNorth =
      near * north[i]! +
      beside * north[i + right]! +
      above * north[i + up]! +
      across * north[i + up + right]!;
    return (
      near * east[i]! + beside * east[i + right]! + above * east[i + up]! + across * east[i + up + right]!
    );
  };
  return {
    isLevel: false,
    riseEast,
    riseNorth: (dx, dy) => {
      if (dx !== lastX || dy !== lastY) riseEast(dx, dy);
      return lastNorth;
    },
  };
}
