/** What is wrong with the course and what it still lacks, worked out when drawing rests. */

import type { CourseCompleteness } from '../../../core/course/completeness.ts';
import { completenessOf } from '../../../core/course/completeness.ts';
import { checkCourse } from '../../../core/course/check.ts';
import { courseOf, type EditableDocument, type FeatureId } from '../../../core/course/document.ts';
import type { Fault } from '../../../core/result.ts';

export interface CourseFault {
  readonly severity: Fault['severity'];
  readonly code: string;
  readonly where: string;
  readonly message: string;
  /** The feature that it is about, where there is one. */
  readonly feature: FeatureId | null;
}

export interface CourseReport {
  readonly faults: readonly CourseFault[];
  readonly completeness: CourseCompleteness;
}

/** `canopy-assumed` and the like are told as things that are missing, so they are left out of the faults. */
const TOLD_AS_MISSING: ReadonlySet<string> = new Set([
  'canopy-assumed',
  'no-holes',
  'hole-without-line',
  'hole-without-green',
  'par-assumed',
]);

export function reportOn(document: EditableDocument): CourseReport {
  const completeness = completenessOf(document);
  const course = courseOf(document);
  const faults = course.ok ? checkCourse(course.value) : course.error;
  return {
    completeness,
    faults: faults
      .filter(({ code }) => !TOLD_AS_MISSING.has(code))
      .map(({ severity, code, where, message, featureIndex }) => ({
        severity,
        code,
        where,
        message,
        feature: featureIndex === undefined ? null : (document.features[featureIndex]?.id ?? null),
      })),
  };
}
