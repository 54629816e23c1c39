/** Features that name a hole for which no line is drawn: without the line there is no hole to plan. */

import { told, toldFault } from '../../words/told.ts';
import type { FeatureKind } from '../feature-kind.ts';
import type { CourseRule } from './rule.ts';

export const holeWithoutLine: CourseRule = (course) => {
  const drawn = new Set(course.holes.map(({ number }) => number));
  const orphans = new Map<number, { kind: FeatureKind; featureIndex: number }>();
  for (const { hole, kind, featureIndex } of [...course.areas, ...(course.strayMarkers ?? [])]) {
    if (hole === undefined || drawn.has(hole) || orphans.has(hole)) continue;
    orphans.set(hole, { kind, featureIndex });
  }
  return [...orphans].map(([hole, { kind, featureIndex }]) =>
    toldFault({
      severity: 'error',
      code: 'hole-without-line',
      where: told(({ features }) => features.whereOnlyHole, { hole }),
      message: told(({ courseReading }) => courseReading.holeWithoutLine, {
        feature: featureIndex,
        what: told(({ features }) => features.kinds[kind]),
        hole,
      }),
      featureIndex,
    }),
  );
};
