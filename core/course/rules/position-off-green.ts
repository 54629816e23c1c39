/** A hole position lies on the green of its hole. */

import { isInside } from '../polygon.ts';
import { greenOf } from '../hole-features.ts';
import { type CourseRule, whereHole } from './rule.ts';

export const positionOffGreen: CourseRule = (course) =>
  course.holes.flatMap((hole) => {
    const green = greenOf(course, hole);
    if (green === undefined) return [];
    return hole.positions.flatMap(({ name, at, featureIndex }) =>
      featureIndex === undefined || isInside(at, green)
        ? []
        : [
            {
              severity: 'error' as const,
              code: 'position-off-green',
              where: `${whereHole(hole)}, hole position "${name}" (feature ${featureIndex})`,
              message: `It does not lie on the green (feature ${green.featureIndex}). Move it there or correct its ref.`,
              featureIndex,
            },
          ],
    );
  });
