/** What belongs to one hole: its green, its tees, its hole positions. */

import { isInside } from './polygon.ts';
import type { Area, Course, Hole, HolePosition, LonLat, TeeMarker } from './model.ts';

export interface HoleFeatures {
  readonly hole: Hole;
  /** Undefined where the hole has none; the engine then refuses this hole only. */
  readonly green: Area | undefined;
  readonly teeAreas: readonly Area[];
  readonly tees: readonly TeeMarker[];
  readonly positions: readonly HolePosition[];
}

/** The features of the hole with this number; undefined where the course has no such hole line. */
export function featuresOfHole(course: Course, holeNumber: number): HoleFeatures | undefined {
  const hole = course.holes.find(({ number }) => number === holeNumber);
  if (hole === undefined) return undefined;
  return {
    hole,
    green: greenOf(course, hole),
    teeAreas: course.areas.filter((area) => area.kind === 'tee' && area.hole === holeNumber),
    tees: hole.tees,
    positions: hole.positions,
  };
}

/** The hole's green: see `chooseGreen`. */
export function greenOf(
  course: Pick<Course, 'areas'>,
  hole: Pick<Hole, 'number' | 'line'>,
): Area | undefined {
  return chooseGreen(course.areas, hole.number, hole.line.at(-1));
}

/**
 * Among the greens whose `ref` names the hole, the one on which its line ends, else the first; where no `ref` names
 * the hole, a green without `ref` on which the line ends (so a double green is drawn without one).
 */
export function chooseGreen(
  areas: readonly Area[],
  holeNumber: number,
  lineEnd: LonLat | undefined,
): Area | undefined {
  const greens = areas.filter(({ kind }) => kind === 'green');
  const under = (green: Area) => lineEnd !== undefined && isInside(lineEnd, green);
  const own = greens.filter((green) => green.hole === holeNumber);
  return own.find(under) ?? own[0] ?? greens.find((green) => green.hole === undefined && under(green));
}
