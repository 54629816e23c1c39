/** A hole's line starts at a tee and ends on its green. */

import type { Fault } from '../../result.ts';
import { distanceM } from '../ellipsoid.ts';
import { isInside } from '../polygon.ts';
import { greenOf } from '../hole-features.ts';
import { type CourseRule, holeFault } from './rule.ts';
import { told } from '../../words/told.ts';

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
      const message = told(({ courseFaults }) => courseFaults.offTee, { metres: NEAR_MARKER_M });
      faults.push(holeFault(hole, 'warning', 'line-start-off-tee', message));
    }
    if (green !== undefined && !isInside(end, green)) {
      const startsThere = isInside(start, green);
      const remedy = startsThere
        ? told(({ courseFaults }) => courseFaults.startsThere)
        : told(({ courseFaults }) => courseFaults.drawOn);
      const message = told(({ courseFaults }) => courseFaults.offGreen, {
        feature: green.featureIndex,
        remedy,
      });
      faults.push(holeFault(hole, 'warning', 'line-end-off-green', message));
    }
    return faults;
  });
};
