/** A hole's line starts at a tee and ends on its green. */

import type { Fault } from '../../result.ts';
import { distanceM } from '../ellipsoid.ts';
import { isInside } from '../polygon.ts';
import { greenOf } from '../hole-features.ts';
import { type CourseRule, holeFault } from './rule.ts';

/** A line may start this far from a tee marker, metres: markers move from day to day. */
const NEAR_MARKER_M = 15;

export const lineEnds: CourseRule = (course) => {
  const teeAreas = course.areas.filter(({ kind }) => kind === 'tee');
  return course.holes.flatMap((hole) => {
    const faults: Fault[] = [];
    const start = hole.line[0];
    const end = hole.line.at(-1);
    const green = greenOf(course, hole);
    if (start === undefined || end === undefined) return faults;
    const onTee =
      teeAreas.some((tee) => isInside(start, tee)) ||
      hole.tees.some((tee) => tee.featureIndex !== undefined && distanceM(tee.at, start) <= NEAR_MARKER_M);
    if (!onTee) {
      const message = `Its line does not start at a tee. Start it on a tee area (golf=tee) or within ${NEAR_MARKER_M} m of a tee marker.`;
      faults.push(holeFault(hole, 'warning', 'line-start-off-tee', message));
    }
    if (green !== undefined && !isInside(end, green)) {
      const startsThere = isInside(start, green);
      const remedy = startsThere
        ? 'It starts there: turn its direction round, tee first.'
        : 'Draw it on to the middle of the green, or correct the ref of one of the two.';
      const message = `Its line does not end on its green (feature ${green.featureIndex}). ${remedy}`;
      faults.push(holeFault(hole, 'warning', 'line-end-off-green', message));
    }
    return faults;
  });
};
