/** A course needs at least one hole line. */

import { told, toldFault } from '../../words/told.ts';
import type { CourseRule } from './rule.ts';

export const noHoles: CourseRule = (course) =>
  course.holes.length > 0
    ? []
    : [
        toldFault({
          severity: 'error',
          code: 'no-holes',
          where: 'file',
          message: told(({ courseReading }) => courseReading.noHoles),
        }),
      ];
