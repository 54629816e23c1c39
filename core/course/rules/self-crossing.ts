/** The outline of an area neither crosses nor touches itself; else inside and outside are anyone's guess. */

import { whereArea } from '../feature-kind.ts';
import { findCrossing } from '../ring-crossing.ts';
import type { CourseRule } from './rule.ts';

export const selfCrossing: CourseRule = (course) =>
  course.areas.flatMap((area) => {
    const at = findCrossing(area.rings);
    if (at === undefined) return [];
    return [
      {
        severity: 'error' as const,
        code: 'self-crossing',
        where: whereArea(area),
        message: `Its outline crosses or touches itself near longitude ${at[0].toFixed(6)}, latitude ${at[1].toFixed(6)}. Move or remove points there until it does not.`,
        featureIndex: area.featureIndex,
      },
    ];
  });
