/** Fills polygons and discs into a raster by scan line: a cell belongs to a shape that covers its centre. */

import type { LocalFrame } from '../course/local-frame.ts';
import type { Area, LonLat } from '../course/model.ts';

export interface RasterShape {
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
  readonly west: number;
  readonly south: number;
}

/** Ring of x, y pairs in metres; closed or not makes no difference. */
export type FlatRing = Float64Array;

function flatRing(ring: readonly LonLat[], frame: LocalFrame): FlatRing {
  const out = new Float64Array(ring.length * 2);
  ring.forEach((point, i) => {
    const { x, y } = frame.toSpot(point);
    out[2 * i] = x;
    out[2 * i + 1] = y;
  });
  return out;
}

/** An area's rings in the hole's frame. */
export function flatRings({ rings }: Pick<Area, 'rings'>, frame: LocalFrame): FlatRing[] {
  return rings.map((ring) => flatRing(ring, frame));
}

/** Calls `paint(index)` for each cell whose centre lies inside the rings (even-odd rule, so inner rings are holes). */
export function fillRings(
  raster: RasterShape,
  rings: readonly FlatRing[],
  paint: (index: number) => void,
): void {
  const { cellM, columns, rows, west, south } = raster;
  let lowest = Infinity;
  let highest = -Infinity;
  for (const ring of rings) {
    for (let i = 1; i < ring.length; i += 2) {
      lowest = Math.min(lowest, ring[i]!);
      highest = Math.max(highest, ring[i]!);
    }
  }
  const firstRow = Math.max(0, Math.ceil((lowest - south) / cellM - 0.5));
  const lastRow = Math.min(rows - 1, Math.floor((highest - south) / cellM - 0.5));
  const crossings: number[] = [];
  for (let row = firstRow; row <= lastRow; row++) {
    const y = south + (row + 0.5) * cellM;
    crossings.length = 0;
    for (const ring of rings) collectCrossings(ring, y, crossings);
    crossings.sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const first = Math.max(0, Math.ceil((crossings[k]! - west) / cellM - 0.5));
      const last = Math.min(columns - 1, Math.ceil((crossings[k + 1]! - west) / cellM - 0.5) - 1);
      for (let column = first; column <= last; column++) paint(row * columns + column);
    }
  }
}

function collectCrossings(ring: FlatRing, y: number, crossings: number[]): void {
  const points = ring.length / 2;
  let xPrevious = ring[2 * points - 2]!;
  let yPrevious = ring[2 * points - 1]!;
  for (let i = 0; i < points; i++) {
    const x = ring[2 * i]!;
    const yHere = ring[2 * i + 1]!;
    // Half-open: a vertex on the scan line counts for one of its two edges only.
    if (yHere <= y !== yPrevious <= y) {
      crossings.push(x + ((y - yHere) / (yPrevious - yHere)) * (xPrevious - x));
    }
    xPrevious = x;
    yPrevious = yHere;
  }
}

/** Calls `paint(index)` for each cell whose centre is within `radiusM` of the point. */
export function fillDisc(
  raster: RasterShape,
  x: number,
  y: number,
  radiusM: number,
  paint: (index: number) => void,
): void {
  const { cellM, columns, rows, west, south } = raster;
  const firstRow = Math.max(0, Math.ceil((y - radiusM - south) / cellM - 0.5));
  const lastRow = Math.min(rows - 1, Math.floor((y + radiusM - south) / cellM - 0.5));
  for (let row = firstRow; row <= lastRow; row++) {
    const dy = south + (row + 0.5) * cellM - y;
    const half = Math.sqrt(Math.max(0, radiusM * radiusM - dy * dy));
    const first = Math.max(0, Math.ceil((x - half - west) / cellM - 0.5));
    const last = Math.min(columns - 1, Math.floor((x + half - west) / cellM - 0.5));
    for (let column = first; column <= last; column++) paint(row * columns + column);
  }
}
