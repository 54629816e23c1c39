/**
 * Slope arrows that a person put down on a green: which of them bear on a hole, and the slopes that a rolling ball finds
 * there. They were seen on the green itself, so on it they go before ground levels, which mostly come from elevation
 * models too coarse for a green; heights stay those of the levels.
 */

import { greenOf } from '../course/hole-features.ts';
import type { LocalFrame } from '../course/local-frame.ts';
import type { Course, Hole } from '../course/model.ts';
import { isInside } from '../course/polygon.ts';
import { fillRings, flatRings, type FlatRing, type RasterShape } from '../ground/polygon-fill.ts';
import { type SlopeMark, slopesFromMarks } from './slope-field.ts';

/** The arrows on the hole's own green, in the hole's frame. */
export function marksOnGreen(course: Course, hole: Hole, frame: LocalFrame): readonly SlopeMark[] {
  const green = course.slopeMarks === undefined ? undefined : greenOf(course, hole);
  if (course.slopeMarks === undefined || green === undefined) return [];
  return course.slopeMarks
    .filter(({ at }) => isInside(at, green))
    .map(({ at, slopeShare, downhill }) => ({ ...frame.toSpot(at), slopeShare, downhill }));
}

/**
 * The slopes of a hole's raster (two numbers a cell, see `HoleGround`) with those of its painted green in place. Without
 * arrows on it `slopes` itself; where the file has no levels, the ground around a painted green is level.
 */
export function withPaintedSlopes(
  course: Course,
  hole: Hole,
  frame: LocalFrame,
  raster: RasterShape,
  slopes: Float32Array | null,
): Float32Array | null {
  const marks = marksOnGreen(course, hole, frame);
  const green = marks.length === 0 ? undefined : greenOf(course, hole);
  if (green === undefined) return slopes;
  const rings = flatRings(green, frame);
  const window = windowAround(raster, rings[0]!);
  const field = slopesFromMarks(marks, window);
  if (field === null) return slopes;
  const out = slopes?.slice() ?? new Float32Array(2 * raster.columns * raster.rows);
  const firstColumn = Math.round((window.west - raster.west) / raster.cellM);
  const firstRow = Math.round((window.south - raster.south) / raster.cellM);
  fillRings(raster, rings, (i) => {
    const column = (i % raster.columns) - firstColumn;
    const row = Math.floor(i / raster.columns) - firstRow;
    const at = row * window.columns + column;
    out[2 * i] = field.east[at]!;
    out[2 * i + 1] = field.north[at]!;
  });
  return out;
}

/** The raster's own cells around the ring. */
function windowAround({ cellM, columns, rows, west, south }: RasterShape, ring: FlatRing): RasterShape {
  const xs = ring.filter((_, i) => i % 2 === 0);
  const ys = ring.filter((_, i) => i % 2 === 1);
  const cell = (value: number, from: number, count: number): number =>
    Math.min(count - 1, Math.max(0, Math.floor((value - from) / cellM)));
  const left = cell(Math.min(...xs), west, columns);
  const right = cell(Math.max(...xs), west, columns);
  const bottom = cell(Math.min(...ys), south, rows);
  const top = cell(Math.max(...ys), south, rows);
  return {
    cellM,
    columns: right - left + 1,
    rows: top - bottom + 1,
    west: west + left * cellM,
    south: south + bottom * cellM,
  };
}
