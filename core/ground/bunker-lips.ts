/** The lips of a hole's bunkers: how far off the sand ends on a bearing, and how high its edge stands there. */

import { DEFAULT_LIP_M } from '../course/defaults.ts';
import type { LocalFrame } from '../course/local-frame.ts';
import type { Course } from '../course/model.ts';
import { type FlatRing, flatRings } from './polygon-fill.ts';

export interface BunkerLip {
  /** In the hole's frame. */
  readonly rings: readonly FlatRing[];
  /** Above the sand, metres. */
  readonly heightM: number;
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

export interface LipAhead {
  readonly heightM: number;
  /** From the ball to the edge, metres. */
  readonly atM: number;
}

/** Nearer than this a ball is not played straight at the edge: there is no room for the club, metres. */
const NEAREST_M = 0.5;
/** The raster is coarse: a place this far beside a bunker may be taken for sand, metres. */
const BESIDE_M = 1;

export function bunkerLips(course: Pick<Course, 'areas'>, frame: LocalFrame): readonly BunkerLip[] {
  return course.areas
    .filter(({ kind }) => kind === 'bunker')
    .map((bunker) => {
      const flat = flatRings(bunker, frame);
      const outer = flat[0] ?? new Float64Array();
      const xs = outer.filter((_, i) => i % 2 === 0);
      const ys = outer.filter((_, i) => i % 2 === 1);
      return {
        rings: flat,
        heightM: bunker.lipM ?? DEFAULT_LIP_M,
        west: Math.min(...xs),
        east: Math.max(...xs),
        south: Math.min(...ys),
        north: Math.max(...ys),
      };
    });
}

/** The bunker around (x, y); undefined where there is none. */
export function bunkerAt(lips: readonly BunkerLip[], x: number, y: number): BunkerLip | undefined {
  const near = lips.filter(
    ({ west, east, south, north }) =>
      x >= west - BESIDE_M && x <= east + BESIDE_M && y >= south - BESIDE_M && y <= north + BESIDE_M,
  );
  return near.find((lip) => crossings(lip, x, y, 0).length % 2 === 1) ?? near[0];
}

/**
 * The edge that a shot from (x, y) on `bearing` (radians clockwise from north) flies over; null where it leaves no sand.
 * From a place just outside, which the raster takes for sand, it is the edge on the far side.
 */
export function lipAhead(lip: BunkerLip, x: number, y: number, bearing: number): LipAhead | null {
  const along = crossings(lip, x, y, bearing).sort((a, b) => a - b);
  const atM = along[along.length % 2 === 1 ? 0 : 1];
  return atM === undefined ? null : { heightM: lip.heightM, atM: Math.max(NEAREST_M, atM) };
}

/** Distances at which the ray meets the rings. */
function crossings({ rings }: BunkerLip, x: number, y: number, bearing: number): number[] {
  const dx = Math.sin(bearing);
  const dy = Math.cos(bearing);
  const found: number[] = [];
  for (const ring of rings) {
    const count = ring.length / 2;
    for (let i = 0, j = count - 1; i < count; j = i++) {
      // right of the ray and ahead of its start, for both ends of the side
      const ax = ring[2 * j]! - x;
      const ay = ring[2 * j + 1]! - y;
      const bx = ring[2 * i]! - x;
      const by = ring[2 * i + 1]! - y;
      const rightA = ax * dy - ay * dx;
      const rightB = bx * dy - by * dx;
      if (rightA > 0 === rightB > 0) continue;
      const t = rightA / (rightA - rightB);
      const ahead = (1 - t) * (ax * dx + ay * dy) + t * (bx * dx + by * dy);
      if (ahead > 0) found.push(ahead);
    }
  }
  return found;
}
