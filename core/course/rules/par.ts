/** Par is there and is a whole number from 3 to 6. */

import { type CourseRule, holeFault } from './rule.ts';

export const par: CourseRule = (course) =>
  course.holes.flatMap((hole) => {
    if (hole.parAssumed) {
      const message = `It has no par that can be read; ${hole.par} is taken from its length. Write par on the golf=hole line.`;
      return [holeFault(hole, 'error', 'par-missing', message)];
    }
    if (Number.isInteger(hole.par) && hole.par >= 3 && hole.par <= 6) return [];
    const message = `Par is ${hole.par}; it must be a whole number from 3 to 6. Correct par on the golf=hole line.`;
    return [holeFault(hole, 'error', 'par-out-of-range', message)];
  });
