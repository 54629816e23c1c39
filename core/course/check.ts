/**
 * What is wrong with a course that could be read: each rule in its own file, none of them changing anything. An
 * `error` makes some result wrong or keeps a hole from being planned; a `warning` can be lived with.
 */

import type { Fault } from '../result.ts';
import type { Course } from './model.ts';
import { canopyAssumed } from './rules/canopy-assumed.ts';
import { duplicateHole } from './rules/duplicate-hole.ts';
import { holeTooLarge } from './rules/hole-too-large.ts';
import { holeWithoutGreen } from './rules/hole-without-green.ts';
import { holeWithoutLine } from './rules/hole-without-line.ts';
import { lineEnds } from './rules/line-ends.ts';
import { markerOffTee } from './rules/marker-off-tee.ts';
import { noHoles } from './rules/no-holes.ts';
import { openRing } from './rules/open-ring.ts';
import { outsideBoundary } from './rules/outside-boundary.ts';
import { overlappingGreens } from './rules/overlapping-greens.ts';
import { par } from './rules/par.ts';
import { positionOffGreen } from './rules/position-off-green.ts';
import type { CourseRule } from './rules/rule.ts';
import { selfCrossing } from './rules/self-crossing.ts';
import { slopeMarks } from './rules/slope-marks.ts';
import { strokeIndex } from './rules/stroke-index.ts';

export const COURSE_RULES: readonly CourseRule[] = [
  noHoles,
  holeWithoutLine,
  duplicateHole,
  holeWithoutGreen,
  holeTooLarge,
  par,
  strokeIndex,
  positionOffGreen,
  lineEnds,
  markerOffTee,
  openRing,
  selfCrossing,
  overlappingGreens,
  slopeMarks,
  outsideBoundary,
  canopyAssumed,
];

/** Everything that was noticed on reading and by the rules, errors first; empty for a course without fault. */
export function checkCourse(course: Course): readonly Fault[] {
  const faults = [...course.warnings];
  const known = new Set(faults.map(identity));
  for (const fault of COURSE_RULES.flatMap((rule) => rule(course))) {
    if (!known.has(identity(fault))) faults.push(fault);
  }
  return [
    ...faults.filter(({ severity }) => severity === 'error'),
    ...faults.filter(({ severity }) => severity === 'warning'),
  ];
}

function identity({ code, where, message }: Fault): string {
  return `${code}\n${where}\n${message}`;
}
