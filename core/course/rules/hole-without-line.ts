/** Features that name a hole for which no line is drawn: without the line there is no hole to plan. */

import { KIND_WORDS } from '../feature-kind.ts';
import type { CourseRule } from './rule.ts';

export const holeWithoutLine: CourseRule = (course) => {
  const drawn = new Set(course.holes.map(({ number }) => number));
  const orphans = new Map<number, { words: string; featureIndex: number }>();
  for (const { hole, kind, featureIndex } of [...course.areas, ...(course.strayMarkers ?? [])]) {
    if (hole === undefined || drawn.has(hole) || orphans.has(hole)) continue;
    orphans.set(hole, { words: KIND_WORDS[kind], featureIndex });
  }
  return [...orphans].map(([number, { words, featureIndex }]) => ({
    severity: 'error' as const,
    code: 'hole-without-line',
    where: `hole ${number}`,
    message: `Feature ${featureIndex} (${words}) names it, but it has no hole line. Draw one from tee to green and tag it golf=hole, ref=${number}; or correct the ref.`,
    featureIndex,
  }));
};
