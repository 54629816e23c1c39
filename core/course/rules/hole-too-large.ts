/** A hole is not larger than holes are: a place that lies kilometres away was written down wrongly, and keeps it from being planned. */

import { tooLarge } from '../../ground/hole-window.ts';
import { type CourseRule, holeFault } from './rule.ts';

export const holeTooLarge: CourseRule = (course) =>
  course.holes.flatMap((hole) => {
    const message = tooLarge(hole);
    return message === null ? [] : [holeFault(hole, 'error', 'hole-too-large', message)];
  });
