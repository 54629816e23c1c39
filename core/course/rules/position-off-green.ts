/** A hole position lies on the green of its hole. */

import { isInside } from '../polygon.ts';
import { greenOf } from '../hole-features.ts';
import { type CourseRule, whereHole } from './rule.ts';
import { told, toldFault } from '../../words/told.ts';

export const positionOffGreen: CourseRule = (course) =>
  course.holes.flatMap((hole) => {
    const green = greenOf(course, hole);
    if (green === undefined) return [];
    return hole.positions.flatMap(({ name, at, featureIndex }) =>
      featureIndex === undefined || isInside(at, green)
        ? []
        : [
            toldFault({
              severity: 'error',
              code: 'position-off-green',
              where: told(({ features }) => features.inHole, {
                where: whereHole(hole),
                what: told(({ features }) => features.kinds['hole-position']),
                name,
                feature: featureIndex,
              }),
              message: told(({ courseFaults }) => courseFaults.positionOff, { feature: green.featureIndex }),
              featureIndex,
            }),
          ],
    );
  });
