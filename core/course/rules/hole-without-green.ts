/** A hole without a green cannot be planned: there is nowhere to hole out. */

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
        `It has no green, so it cannot be planned; other holes can. Draw one and tag it golf=green, ref=${hole.number}.`,
      ),
    );
