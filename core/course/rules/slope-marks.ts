/** A slope arrow lies on a green, and is no steeper than greens that are planned with. */

import { STEEPEST_SLOPE } from '../../green/slope-field.ts';
import type { Fault } from '../../result.ts';
import type { SlopeMark } from '../model.ts';
import { isInside } from '../polygon.ts';
import type { CourseRule } from './rule.ts';

export const slopeMarks: CourseRule = (course) => {
  const greens = course.areas.filter(({ kind }) => kind === 'green');
  return (course.slopeMarks ?? []).flatMap((mark): Fault[] => {
    if (!greens.some((green) => isInside(mark.at, green))) {
      return [
        fault(
          mark,
          'slope-mark-off-green',
          'It lies on no green and says nothing about any. Move it onto the green, or remove it.',
        ),
      ];
    }
    if (mark.slopeShare <= STEEPEST_SLOPE) return [];
    const percent = (share: number): string => `${Number((100 * share).toFixed(1))} %`;
    return [
      fault(
        mark,
        'slope-mark-steep',
        `It falls by ${percent(mark.slopeShare)}; a ball would hardly stop there, and the plan takes ${percent(STEEPEST_SLOPE)}. Measure again, or write slope_percent up to ${100 * STEEPEST_SLOPE}.`,
      ),
    ];
  });
};

function fault({ featureIndex }: SlopeMark, code: string, message: string): Fault {
  return {
    severity: 'warning',
    code,
    where: `slope arrow (feature ${featureIndex})`,
    message,
    featureIndex,
  };
}
