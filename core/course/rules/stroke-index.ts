/** A stroke index is a whole number from 1 to 18, each used once (Rules of Handicapping, appendix E; from memory). */

import type { Fault } from '../../result.ts';
import type { Hole } from '../model.ts';
import { type CourseRule, holeFault } from './rule.ts';
import { told } from '../../words/told.ts';

const MOST = 18;

export const strokeIndex: CourseRule = (course) => {
  const faults: Fault[] = [];
  const first = new Map<number, Hole>();
  // with more than 18 holes in one file an index must come twice
  const mayRepeat = new Set(course.holes.map(({ number }) => number)).size > MOST;
  for (const hole of course.holes) {
    const index = hole.strokeIndex;
    if (index === undefined) continue;
    if (!Number.isInteger(index) || index < 1 || index > MOST) {
      const message = told(({ courseFaults }) => courseFaults.badIndex, { index, most: MOST });
      faults.push(holeFault(hole, 'error', 'stroke-index-out-of-range', message));
      continue;
    }
    const earlier = first.get(index);
    if (earlier === undefined) first.set(index, hole);
    else if (!mayRepeat && earlier.number !== hole.number) {
      const message = told(({ courseFaults }) => courseFaults.sameIndex, { index, hole: earlier.number });
      faults.push(holeFault(hole, 'error', 'stroke-index-duplicate', message));
    }
  }
  return faults;
};
