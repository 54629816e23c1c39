/** Which fairway belongs to a hole: a drop at "the fairway" means that of the hole being played (Model Local Rule E-5). */

import type { Area, Course, Hole, LonLat } from '../course/model.ts';
import type { LocalFrame } from '../course/local-frame.ts';
import { isInside } from '../course/polygon.ts';
import type { HoleGround } from './hole-ground.ts';
import { fillRings, flatRings, type FlatRing } from './polygon-fill.ts';

/** A hole's line is looked at in so many pieces a leg. */
const PIECES = 60;

/** By its `ref`; without one, by the hole lines that run over it; where none does, it counts for every hole. */
export function ownFairways(course: Course, hole: Hole, frame: LocalFrame): readonly (readonly FlatRing[])[] {
  return course.areas
    .filter((area) => isOwnFairway(course, hole.number, area))
    .map((area) => flatRings(area, frame));
}

/** False for areas that are no fairway. */
export function isOwnFairway(course: Course, holeNumber: number, area: Area): boolean {
  const numbers = ownersIn(course).get(area);
  return numbers !== undefined && (numbers.size === 0 || numbers.has(holeNumber));
}

type Owners = ReadonlyMap<Area, ReadonlySet<number>>;
const ownersOf = new WeakMap<Course, Owners>();

function ownersIn(course: Course): Owners {
  let owners = ownersOf.get(course);
  if (owners === undefined) {
    const lines = course.holes.map(({ number, line }) => ({ number, points: alongLine(line) }));
    const fairways = course.areas.filter(({ kind }) => kind === 'fairway');
    owners = new Map(fairways.map((area) => [area, new Set(numbersFor(area, lines))]));
    ownersOf.set(course, owners);
  }
  return owners;
}

function numbersFor(
  area: Area,
  lines: readonly { readonly number: number; readonly points: readonly LonLat[] }[],
): readonly number[] {
  if (area.hole !== undefined) return [area.hole];
  const ring = area.rings[0] ?? [];
  const [west, east] = extentOf(ring.map(([lon]) => lon));
  const [south, north] = extentOf(ring.map(([, lat]) => lat));
  const isOver = (at: LonLat): boolean =>
    at[0] >= west && at[0] <= east && at[1] >= south && at[1] <= north && isInside(at, area);
  return lines.filter(({ points }) => points.some(isOver)).map(({ number }) => number);
}

function extentOf(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)];
}

function alongLine(line: readonly LonLat[]): readonly LonLat[] {
  return line.slice(1).flatMap((to, i) => {
    const from = line[i]!;
    return Array.from({ length: PIECES + 1 }, (_, k): LonLat => {
      const share = k / PIECES;
      return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    });
  });
}

const cellsOf = new WeakMap<object, Uint8Array>();

/** 1 for each cell whose centre lies in the hole's own fairway; made when first asked for. */
export function ownFairwayCells(ground: HoleGround): Uint8Array {
  let cells = cellsOf.get(ground);
  if (cells === undefined) {
    const made = new Uint8Array(ground.columns * ground.rows);
    for (const rings of ground.ownFairways) fillRings(ground, rings, (i) => (made[i] = 1));
    cells = made;
    cellsOf.set(ground, made);
  }
  return cells;
}
