/** The outline of an area neither crosses nor touches itself; else inside and outside are anyone's guess. */

import { whereArea } from '../feature-kind.ts';
import { findCrossing } from '../ring-crossing.ts';
import type { CourseRule } from './rule.ts';
import { told, toldFault } from '../../words/told.ts';

export const selfCrossing: CourseRule = (course) =>
  course.areas.flatMap((area) => {
    const at = findCrossing(area.rings);
    if (at === undefined) return [];
    return [
      toldFault({
        severity: 'error',
        code: 'self-crossing',
        where: whereArea(area),
        message: told(({ courseFaults }) => courseFaults.selfCrossing, {
          lon: at[0].toFixed(6),
          lat: at[1].toFixed(6),
        }),
        featureIndex: area.featureIndex,
      }),
    ];
  });
