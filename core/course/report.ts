/**
 * All that can be told of a course on the way: what is wrong by the rules (check.ts) and what is missing, hole by
 * hole (completeness.ts), each thing once. Window and command tell the same.
 */

import { inEnglish, told, type Told } from '../words/told.ts';
import type { Fault } from '../result.ts';
import { checkCourse } from './check.ts';
import { completenessOf, type CourseCompleteness } from './completeness.ts';
import { courseOf, type EditableDocument, type FeatureId } from './document.ts';
import type { Missing } from './missing.ts';

export interface CourseFault {
  readonly severity: Fault['severity'];
  readonly code: string;
  readonly where: string;
  readonly message: string;
  readonly told?: NonNullable<Fault['told']>;
  /** The feature that it is about, where there is one. */
  readonly feature: FeatureId | null;
}

export interface CourseReport {
  readonly faults: readonly CourseFault[];
  readonly completeness: CourseCompleteness;
}

/** Rules whose finding completeness tells as well, with a way to mend it. */
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
      .map(({ severity, code, where, message, told: of, featureIndex }) => ({
        severity,
        code,
        where,
        message,
        ...(of === undefined ? {} : { told: of }),
        feature: featureIndex === undefined ? null : (document.features[featureIndex]?.id ?? null),
      })),
  };
}

/** The report as one list, errors first: what keeps a hole from being planned is an error, what is assumed a warning. */
export function faultsIn({ faults, completeness }: CourseReport): readonly CourseFault[] {
  const missing = [
    ...completeness.holes.flatMap(({ hole, missing }) =>
      missing.map((one) =>
        asFault(
          one,
          told(({ features }) => features.hole, { hole: String(hole) }),
        ),
      ),
    ),
    ...completeness.course.map((one) =>
      asFault(
        one,
        told(({ features }) => features.course),
      ),
    ),
  ];
  const all = [...faults, ...missing];
  return [
    ...all.filter(({ severity }) => severity === 'error'),
    ...all.filter(({ severity }) => severity === 'warning'),
  ];
}

function asFault({ code, weight, message, features }: Missing, where: Told): CourseFault {
  const severity = weight === 'stops' ? 'error' : 'warning';
  return {
    severity,
    code,
    where: inEnglish(where),
    message: inEnglish(message),
    told: { where, message },
    feature: features[0] ?? null,
  };
}
