/** A polygon's rings end where they start (RFC 7946, 3.1.6). Open ones are closed on reading, and said here. */

import { whereArea } from '../feature-kind.ts';
import type { CourseRule } from './rule.ts';
import { told, toldFault } from '../../words/told.ts';

export const openRing: CourseRule = (course) =>
  course.areas.flatMap((area) =>
    (area.openRings ?? []).map((ring) =>
      toldFault({
        severity: 'error',
        code: 'ring-not-closed',
        where: whereArea(area),
        message: told(({ courseFaults }) => courseFaults.openRing, { ring }),
        featureIndex: area.featureIndex,
      }),
    ),
  );
