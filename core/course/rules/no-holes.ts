/** A course needs at least one hole line. */

import type { CourseRule } from './rule.ts';

export const noHoles: CourseRule = (course) =>
  course.holes.length > 0
    ? []
    : [
        {
          severity: 'error',
          code: 'no-holes',
          where: 'file',
          message:
            'The course has no hole. Draw a line from tee to green and tag it golf=hole with ref, par and handicap.',
        },
      ];
