/** What a rule of the course check is: one fault per thing found, none where all is well. */

import { told, type Told, toldFault } from '../../words/told.ts';
import type { Fault } from '../../result.ts';
import type { Course, Hole } from '../model.ts';

export type CourseRule = (course: Course) => readonly Fault[];

const MOST_LISTED = 5;

export function whereHole(hole: Hole): Told {
  return told(({ features }) => features.whereHole, { hole: hole.number, feature: hole.featureIndex });
}

export function holeFault(
  hole: Hole,
  severity: Fault['severity'],
  code: string,
  message: Told,
  featureIndex: number = hole.featureIndex,
): Fault {
  return toldFault({ severity, code, where: whereHole(hole), message, featureIndex });
}

/** `feature 4`, `features 4, 9`, or the first five and how many more. */
export function featureList(indices: readonly number[]): Told {
  return told(({ features }) => features.listed, {
    count: indices.length,
    shown: indices.slice(0, MOST_LISTED).join(', '),
    more: Math.max(0, indices.length - MOST_LISTED),
  });
}
