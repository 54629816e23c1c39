/** A tee marker lies on a tee area. */

import { isInside } from '../polygon.ts';
import { type CourseRule, whereHole } from './rule.ts';

export const markerOffTee: CourseRule = (course) => {
  const tees = course.areas.filter(({ kind }) => kind === 'tee');
  return course.holes.flatMap((hole) =>
    hole.tees.flatMap(({ name, at, featureIndex }) =>
      featureIndex === undefined || tees.some((tee) => isInside(at, tee))
        ? []
        : [
            {
              severity: 'warning' as const,
              code: 'marker-off-tee',
              where: `${whereHole(hole)}, tee marker "${name}" (feature ${featureIndex})`,
              message: 'It does not lie on a tee area. Move it, or draw the area and tag it golf=tee.',
              featureIndex,
            },
          ],
    ),
  );
};
