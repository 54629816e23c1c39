/** A hole without a green cannot be planned: there is nowhere to hole out. */

import { told } from '../../words/told.ts';
import { greenOf } from '../hole-features.ts';
import { type CourseRule, holeFault } from './rule.ts';

export const holeWithoutGreen: CourseRule = (course) =>
  course.holes
    .filter((hole) => greenOf(course, hole) === undefined)
    .map((hole) =>
      holeFault(
        hole,
        'error',
        'hole-without-green',
        told(({ courseFaults }) => courseFaults.noGreen, { hole: hole.number }),
      ),
    );
