/** Square grids over the whole property: distance from play, and outlines of what lies above a threshold. */

import { contours } from 'd3-contour';
import { cutCorners, type Point } from './curves.ts';
import { signedArea, simplifyRing } from './polygons.ts';

export interface Grid {
  readonly west: number;
  readonly south: number;
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
}

/** A part of a grid on the same cells. */
export interface Window extends Grid {
  /** Index in the whole grid of a cell of the window. */
  readonly whole: (i: number) => number;
}

/** The cells within `marginM` of the points. */
export function windowAround(grid: Grid, points: readonly Point[], marginM: number): Window {
  const { cellM } = grid;
  const range = (values: readonly number[], start: number, count: number): [number, number] => [
    Math.max(0, Math.floor((Math.min(...values) - marginM - start) / cellM)),
    Math.min(count, Math.ceil((Math.max(...values) + marginM - start) / cellM)),
  ];
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const [firstColumn, endColumn] = range(xs, grid.west, grid.columns);
  const [firstRow, endRow] = range(ys, grid.south, grid.rows);
  const columns = endColumn - firstColumn;
  return {
    cellM,
    columns,
    rows: endRow - firstRow,
    west: grid.west + firstColumn * cellM,
    south: grid.south + firstRow * cellM,
    whole: (i) => (firstRow + Math.floor(i / columns)) * grid.columns + firstColumn + (i % columns),
  };
}

export function cellCentre(grid: Grid, i: number): Point {
  const row = Math.floor(i / grid.columns);
  return [grid.west + (i - row * grid.columns + 0.5) * grid.cellM, grid.south + (row + 0.5) * grid.cellM];
}

/** The field at a point, bilinear between cell centres. */
export function valueAt(grid: Grid, field: Float64Array, [x, y]: Point): number {
  const u = Math.min(grid.columns - 1.001, Math.max(0, (x - grid.west) / grid.cellM - 0.5));
  const v = Math.min(grid.rows - 1.001, Math.max(0, (y - grid.south) / grid.cellM - 0.5));
  const [column, row] = [Math.floor(u), Math.floor(v)];
  const [fu, fv] = [u - column, v - row];
  const i = row * grid.columns + column;
  const low = field[i]! * (1 - fu) + field[i + 1]! * fu;
  const high = field[i + grid.columns]! * (1 - fu) + field[i + grid.columns + 1]! * fu;
  return low * (1 - fv) + high * fv;
}

/** Marks the cells whose centres lie inside the ring (even-odd, row by row). */
export function markRing(grid: Grid, mask: Uint8Array, ring: readonly Point[]): void {
  for (let row = 0; row < grid.rows; row++) {
    const y = grid.south + (row + 0.5) * grid.cellM;
    const crossings: number[] = [];
    for (let i = 0; i < ring.length; i++) {
      const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
      if (a[1] > y !== b[1] > y) crossings.push(a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
    }
    crossings.sort((p, q) => p - q);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const first = Math.max(0, Math.ceil((crossings[k]! - grid.west) / grid.cellM - 0.5));
      const last = Math.min(grid.columns - 1, Math.floor((crossings[k + 1]! - grid.west) / grid.cellM - 0.5));
      for (let column = first; column <= last; column++) mask[row * grid.columns + column] = 1;
    }
  }
}

/** Distance in metres of each cell from the nearest marked one (Felzenszwalb & Huttenlocher 2012, exact). */
export function distanceField(grid: Grid, mask: Uint8Array): Float64Array {
  const { columns, rows } = grid;
  const squares = Float64Array.from(mask, (m) => (m === 1 ? 0 : 1e12));
  const column = new Float64Array(rows);
  for (let c = 0; c < columns; c++) {
    for (let r = 0; r < rows; r++) column[r] = squares[r * columns + c]!;
    const out = lowerEnvelope(column);
    for (let r = 0; r < rows; r++) squares[r * columns + c] = out[r]!;
  }
  for (let r = 0; r < rows; r++) {
    squares.set(lowerEnvelope(squares.slice(r * columns, (r + 1) * columns)), r * columns);
  }
  return squares.map((square) => Math.sqrt(square) * grid.cellM);
}

function lowerEnvelope(f: Float64Array): Float64Array {
  const n = f.length;
  const vertex = new Int32Array(n);
  const border = new Float64Array(n + 1);
  border[0] = -Infinity;
  border[1] = Infinity;
  let k = 0;
  const meet = (q: number, v: number): number => (f[q]! + q * q - f[v]! - v * v) / (2 * q - 2 * v);
  for (let q = 1; q < n; q++) {
    let s = meet(q, vertex[k]!);
    while (s <= border[k]!) {
      k--;
      s = meet(q, vertex[k]!);
    }
    k++;
    vertex[k] = q;
    border[k] = s;
    border[k + 1] = Infinity;
  }
  const out = new Float64Array(n);
  k = 0;
  for (let q = 0; q < n; q++) {
    while (border[k + 1]! < q) k++;
    const v = vertex[k]!;
    out[q] = (q - v) * (q - v) + f[v]!;
  }
  return out;
}

/** Polygons (outer ring, then holes) of the ground where `field` is positive, smaller ones than `leastM2` left out. */
export function outlines(grid: Grid, field: Float64Array, leastM2: number): Point[][][] {
  const { columns, rows, west, south, cellM } = grid;
  const shape = contours().size([columns, rows]).thresholds([0])(Array.from(field))[0]!;
  const polygons: Point[][][] = [];
  for (const rings of shape.coordinates) {
    const local = rings.map((ring) =>
      ring.slice(0, -1).map(([c, r]): Point => [west + c! * cellM, south + r! * cellM]),
    );
    const smooth = local
      .filter((ring, k) => Math.abs(signedArea(ring)) >= (k === 0 ? leastM2 : 60))
      .map((ring) => cutCorners(simplifyRing(cutCorners(ring, 1), 0.9), 2))
      .map((ring) => simplifyRing(ring, 0.25));
    if (Math.abs(signedArea(local[0]!)) >= leastM2) polygons.push(smooth);
  }
  return polygons;
}
