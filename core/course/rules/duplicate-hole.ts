/** Two hole lines with one number: the second is never reached by number. */

import type { Hole } from '../model.ts';
import type { Fault } from '../../result.ts';
import { type CourseRule, holeFault } from './rule.ts';
import { told } from '../../words/told.ts';

export const duplicateHole: CourseRule = (course) => {
  const first = new Map<number, Hole>();
  const faults: Fault[] = [];
  for (const hole of course.holes) {
    const earlier = first.get(hole.number);
    if (earlier === undefined) {
      first.set(hole.number, hole);
      continue;
    }
    const message = told(({ courseFaults }) => courseFaults.duplicateHole, {
      feature: earlier.featureIndex,
      hole: hole.number,
    });
    faults.push(holeFault(hole, 'error', 'duplicate-hole', message));
  }
  return faults;
};
