/** A tee marker lies on a tee area. */

import { isInside } from '../polygon.ts';
import { type CourseRule, whereHole } from './rule.ts';
import { told, toldFault } from '../../words/told.ts';

export const markerOffTee: CourseRule = (course) => {
  const tees = course.areas.filter(({ kind }) => kind === 'tee');
  return course.holes.flatMap((hole) =>
    hole.tees.flatMap(({ name, at, featureIndex }) =>
      featureIndex === undefined || tees.some((tee) => isInside(at, tee))
        ? []
        : [
            toldFault({
              severity: 'warning',
              code: 'marker-off-tee',
              where: told(({ features }) => features.inHole, {
                where: whereHole(hole),
                what: told(({ features }) => features.kinds['tee-marker']),
                name,
                feature: featureIndex,
              }),
              message: told(({ courseFaults }) => courseFaults.markerOff),
              featureIndex,
            }),
          ],
    ),
  );
};
