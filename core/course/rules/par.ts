/** Par is there and is a whole number from 3 to 6. */

import { type CourseRule, holeFault } from './rule.ts';
import { told } from '../../words/told.ts';

export const par: CourseRule = (course) =>
  course.holes.flatMap((hole) => {
    if (hole.parAssumed) {
      const message = told(({ courseFaults }) => courseFaults.noPar, { par: hole.par });
      return [holeFault(hole, 'error', 'par-missing', message)];
    }
    if (Number.isInteger(hole.par) && hole.par >= 3 && hole.par <= 6) return [];
    const message = told(({ courseFaults }) => courseFaults.badPar, { par: hole.par });
    return [holeFault(hole, 'error', 'par-out-of-range', message)];
  });
