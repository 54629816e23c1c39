/**
 * The one door for course files: text or JSON in, a `Course` out, or every fault that stands in the way. Only what
 * cannot be read at all is refused here; `checkCourse` reports what can be read and is still wrong.
 */

import * as v from 'valibot';
import { briefly, type Fault, type Result, refuse, succeed } from '../result.ts';
import { told, type Told, toldFault } from '../words/told.ts';
import { assembleCourse } from './assemble.ts';
import { UNNAMED_COURSE } from './defaults.ts';
import { readJsonText } from './json-text.ts';
import { FORMAT_VERSION, migrateCollection } from './migrate.ts';
import type { Course, Sand } from './model.ts';
import { type FeatureReading, readFeature } from './read-feature.ts';
import { canopyAssumed } from './rules/canopy-assumed.ts';
import { type Collection, CollectionSchema, HeaderSchema } from './schema.ts';

export const MOST_FEATURES = 20_000;
export const MOST_VERTICES = 500_000;

export interface ParseOptions {
  /**
   * What to do with a feature that cannot be read: refuse the file (the default), or leave the feature out of the
   * course and list its error in `warnings`, for a person who chose to open the rest. It stays in the document.
   */
  readonly unreadable?: 'refuse' | 'leave-out';
}

/** A course with the file that it came from, members that we do not know included, so that a saver can write it back. */
export interface CourseDocument {
  readonly course: Course;
  /** As given where it is of the current format version, else as migrated. Not copied: treat it as read-only. */
  readonly document: Collection;
}

export function parseCourse(json: unknown, options: ParseOptions = {}): Result<Course, readonly Fault[]> {
  const parsed = parseCourseDocument(json, options);
  return parsed.ok ? succeed(parsed.value.course) : parsed;
}

/** As `parseCourse`, from the text of a file; a syntax error is a fault with its line and column. */
export function parseCourseText(text: string, options: ParseOptions = {}): Result<Course, readonly Fault[]> {
  const json = readJsonText(text);
  return json.ok ? parseCourse(json.value, options) : json;
}

export function parseCourseDocumentText(
  text: string,
  options: ParseOptions = {},
): Result<CourseDocument, readonly Fault[]> {
  const json = readJsonText(text);
  return json.ok ? parseCourseDocument(json.value, options) : json;
}

export function parseCourseDocument(
  json: unknown,
  options: ParseOptions = {},
): Result<CourseDocument, readonly Fault[]> {
  if (!v.is(CollectionSchema, json)) {
    return refuse([
      fileError(
        'not-a-collection',
        told(({ courseReading }) => courseReading.file.noCollection),
      ),
    ]);
  }
  const header = readHeader(json);
  if (!header.ok) return refuse(header.error);
  const migrated = migrateCollection(json, header.value.formatVersion);
  if (!migrated.ok) return refuse([migrated.error]);
  const document = migrated.value;
  const tooMuch = overLimit(document.features);
  if (tooMuch !== undefined) return refuse([tooMuch]);

  const errors: Fault[] = [];
  const warnings: Fault[] = [...header.value.warnings];
  const readings: FeatureReading[] = [];
  document.features.forEach((raw, index) => {
    const { reading, faults } = readFeature(raw, index);
    for (const fault of faults) (fault.severity === 'error' ? errors : warnings).push(fault);
    if (reading !== undefined) readings.push(reading);
  });
  if (errors.length > 0 && options.unreadable !== 'leave-out') return refuse([...errors, ...warnings]);

  const { name, invented, sand } = header.value;
  const head = { name, invented, formatVersion: FORMAT_VERSION, ...(sand === undefined ? {} : { sand }) };
  const read = assembleCourse(head, readings, [...errors, ...warnings]);
  const course: Course = { ...read, warnings: [...read.warnings, ...canopyAssumed(read)] };
  return succeed({ course, document });
}

interface Header {
  readonly formatVersion: number;
  readonly name: string;
  readonly invented: boolean;
  readonly sand?: Sand;
  readonly warnings: readonly Fault[];
}

function readHeader(collection: Collection): Result<Header, readonly Fault[]> {
  const raw = collection['holewright'];
  if (raw === undefined) {
    const message = told(({ courseReading }) => courseReading.file.noHeader, { version: FORMAT_VERSION });
    return succeed({
      formatVersion: FORMAT_VERSION,
      name: UNNAMED_COURSE,
      invented: false,
      warnings: [toldFault({ severity: 'warning', code: 'no-header', where: 'holewright', message })],
    });
  }
  const parsed = v.safeParse(HeaderSchema, raw);
  if (!parsed.success) {
    return refuse(
      parsed.issues.map((issue): Fault => {
        const path = v.getDotPath(issue);
        const wanted = issue.expected ?? told(({ faults }) => faults.file.somethingElse);
        return toldFault({
          severity: 'error',
          code: 'header-unreadable',
          where: path === null ? 'holewright' : `holewright.${path}`,
          message: told(({ faults }) => faults.file.unexpected, { found: briefly(issue.received), wanted }),
        });
      }),
    );
  }
  const name = parsed.output.courseName?.trim() ?? '';
  return succeed({
    formatVersion: parsed.output.formatVersion,
    name: name === '' ? UNNAMED_COURSE : name,
    invented: parsed.output.invented ?? false,
    ...(typeof parsed.output.sand === 'string' ? { sand: parsed.output.sand } : {}),
    warnings: [],
  });
}

function overLimit(features: readonly unknown[]): Fault | undefined {
  if (features.length > MOST_FEATURES) {
    return fileError(
      'too-many-features',
      told(({ courseReading }) => courseReading.file.manyFeatures, {
        count: features.length,
        most: MOST_FEATURES,
      }),
    );
  }
  const vertices = countPositions(features);
  if (vertices <= MOST_VERTICES) return undefined;
  return fileError(
    'too-many-vertices',
    told(({ courseReading }) => courseReading.file.manyPositions, { count: vertices, most: MOST_VERTICES }),
  );
}

/** Positions in all coordinates, counted as arrays that do not start with an array. */
function countPositions(features: readonly unknown[]): number {
  let count = 0;
  const open: unknown[] = features.map(
    (feature) => (feature as { geometry?: { coordinates?: unknown } | null } | null)?.geometry?.coordinates,
  );
  while (open.length > 0) {
    const item = open.pop();
    if (!Array.isArray(item)) continue;
    if (Array.isArray(item[0])) for (const part of item as unknown[]) open.push(part);
    else count++;
  }
  return count;
}

function fileError(code: string, message: Told): Fault {
  return toldFault({ severity: 'error', code, where: 'file', message });
}
