/** The piece of ground that a hole is planned on, and how large a hole may be for that. */

import { bearingRad, distanceM } from '../course/ellipsoid.ts';
import type { LocalFrame } from '../course/local-frame.ts';
import type { Hole, LonLat } from '../course/model.ts';
import type { Spot } from '../plan/model.ts';
import { told, type Told } from '../words/told.ts';
import type { RasterShape } from './polygon-fill.ts';

/** Ground kept around the hole's line, tees and positions, metres: about where 1 in 500 tee shots of a wild hitter ends. */
export const GROUND_MARGIN_M = 80;

/**
 * A hole may reach so far from west to east and from south to north, metres. Holes are shorter than 1,000 m (common practice,
 * no source), and half as much again is let pass; 1,340 m either way took 384 MB, as measured, and it grows with the square.
 */
export const WIDEST_HOLE_M = 1500;

/** Line, tees and hole positions: what the ground of a hole is laid around. */
function placesOf(hole: Hole): readonly LonLat[] {
  return [...hole.line, ...hole.tees.map(({ at }) => at), ...hole.positions.map(({ at }) => at)];
}

/**
 * From west to east or from south to north, whichever is more, metres. Reckoned along geodesics: in a plane, places on the
 * other side of the earth would come near again.
 */
export function holeSpanM(hole: Hole): number {
  const middle = hole.line[Math.floor(hole.line.length / 2)] ?? hole.tees[0]?.at;
  if (middle === undefined) return 0;
  const { west, east, south, north } = extentOf(
    placesOf(hole).map((place) => {
      const far = distanceM(middle, place);
      const bearing = bearingRad(middle, place);
      return { x: far * Math.sin(bearing), y: far * Math.cos(bearing) };
    }),
  );
  return Math.max(east - west, north - south);
}

/** Why a hole is too large to be planned and what to do; null for one that is not. */
export function tooLarge(hole: Hole): Told | null {
  const span = holeSpanM(hole);
  if (span <= WIDEST_HOLE_M) return null;
  return told(({ courseFaults }) => courseFaults.tooLarge, { metres: span, most: WIDEST_HOLE_M });
}

/** The raster's place and size: whole metres around the hole with the margin. Ask `tooLarge` before. */
export function windowAround(hole: Hole, frame: LocalFrame, cellM: number): RasterShape {
  const extent = extentOf(placesOf(hole).map((place) => frame.toSpot(place)));
  const west = Math.floor(extent.west - GROUND_MARGIN_M);
  const south = Math.floor(extent.south - GROUND_MARGIN_M);
  const columns = Math.ceil((extent.east + GROUND_MARGIN_M - west) / cellM);
  const rows = Math.ceil((extent.north + GROUND_MARGIN_M - south) / cellM);
  return { cellM, columns, rows, west, south };
}

interface Extent {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

function extentOf(spots: readonly Spot[]): Extent {
  let west = Infinity;
  let east = -Infinity;
  let south = Infinity;
  let north = -Infinity;
  for (const { x, y } of spots) {
    west = Math.min(west, x);
    east = Math.max(east, x);
    south = Math.min(south, y);
    north = Math.max(north, y);
  }
  return { west, east, south, north };
}
