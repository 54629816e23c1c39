/** A polygon's rings end where they start (RFC 7946, 3.1.6). Open ones are closed on reading, and said here. */

import { whereArea } from '../feature-kind.ts';
import type { CourseRule } from './rule.ts';

export const openRing: CourseRule = (course) =>
  course.areas.flatMap((area) =>
    (area.openRings ?? []).map((ring) => ({
      severity: 'error' as const,
      code: 'ring-not-closed',
      where: whereArea(area),
      message: `Ring ${ring} is not closed: its last position differs from its first. It is closed by a straight line for planning; repeat the first position at the end, or draw the missing part.`,
      featureIndex: area.featureIndex,
    })),
  );
