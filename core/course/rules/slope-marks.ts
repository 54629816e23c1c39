/** A slope arrow lies on a green, and is no steeper than greens that are planned with. */

import { STEEPEST_SLOPE } from '../../green/slope-field.ts';
import type { Fault } from '../../result.ts';
import type { SlopeMark } from '../model.ts';
import { isInside } from '../polygon.ts';
import type { CourseRule } from './rule.ts';
import { told, type Told, toldFault } from '../../words/told.ts';

export const slopeMarks: CourseRule = (course) => {
  const greens = course.areas.filter(({ kind }) => kind === 'green');
  return (course.slopeMarks ?? []).flatMap((mark): Fault[] => {
    if (!greens.some((green) => isInside(mark.at, green))) {
      return [
        fault(
          mark,
          'slope-mark-off-green',
          told(({ courseFaults }) => courseFaults.slopeOff),
        ),
      ];
    }
    if (mark.slopeShare <= STEEPEST_SLOPE) return [];
    return [
      fault(
        mark,
        'slope-mark-steep',
        told(({ courseFaults }) => courseFaults.slopeSteep, {
          slope: 100 * mark.slopeShare,
          taken: 100 * STEEPEST_SLOPE,
        }),
      ),
    ];
  });
};

function fault({ featureIndex }: SlopeMark, code: string, message: Told): Fault {
  return toldFault({
    severity: 'warning',
    code,
    where: told(({ features }) => features.slopeArrow, { feature: featureIndex }),
    message,
    featureIndex,
  });
}
