/**
 * The course as it is edited: the file's own GeoJSON FeatureCollection, members that we do not know included, with
 * an id on every feature (RFC 7946, 3.2). Never changed in place: an edit makes a new document that shares the rest.
 */

import { freeze } from 'immer';
import * as v from 'valibot';
import { type Fault, type Result, refuse, succeed } from '../result.ts';
import { told, toldFault } from '../words/told.ts';
import { type FeatureKind, featureKindOf } from './feature-kind.ts';
import { readJsonText } from './json-text.ts';
import { copyJson, MOST_NESTING, without } from './json-tree.ts';
import { FORMAT_VERSION } from './migrate.ts';
import type { Course } from './model.ts';
import { parseCourseDocument } from './parse.ts';
import { roundGeometry } from './positions.ts';
import { type Geometry, GeometrySchema, PropertiesSchema } from './schema.ts';

export type FeatureId = string | number;

/** A feature as the file has it. Only the id is sure: what cannot be read stays in the document all the same. */
export interface DocumentFeature {
  readonly id: FeatureId;
  readonly properties?: unknown;
  readonly geometry?: unknown;
  readonly [member: string]: unknown;
}

export interface EditableDocument {
  readonly type: 'FeatureCollection';
  readonly holewright: Readonly<Record<string, unknown>>;
  readonly features: readonly DocumentFeature[];
  readonly [member: string]: unknown;
}

export interface OpenedDocument {
  readonly document: EditableDocument;
  /** What opening had to change or leave out, for the person to see. */
  readonly repairs: readonly Fault[];
}

/** A course without features. */
export function newDocument(courseName: string): EditableDocument {
  const holewright = { formatVersion: FORMAT_VERSION, courseName };
  return freeze({ type: 'FeatureCollection' as const, holewright, features: [] }, true);
}

/** As `openDocument`, from the text of a file. */
export function openDocumentText(text: string): Result<OpenedDocument, readonly Fault[]> {
  const json = readJsonText(text);
  return json.ok ? openDocument(json.value) : json;
}

/**
 * Makes a course file ready for editing: migrated, coordinates rounded to 8 decimals, every feature with an id of its
 * own (the file's where it is a text or number and unique, else `feature-N`, the same on every opening). Bounding
 * boxes are dropped, since edits would make them wrong. Refuses what `parseCourseDocument` refuses for the whole file;
 * a feature that cannot be read stays.
 */
export function openDocument(json: unknown): Result<OpenedDocument, readonly Fault[]> {
  const copied = copyJson(json);
  if (copied === undefined) {
    const message = told(({ courseReading }) => courseReading.file.tooDeep, { most: MOST_NESTING });
    return refuse([toldFault({ severity: 'error', code: 'too-deep', where: 'file', message })]);
  }
  const parsed = parseCourseDocument(copied.value, { unreadable: 'leave-out' });
  if (!parsed.ok) return parsed;
  const collection = parsed.value.document;
  const repairs: Fault[] = [];
  if (copied.dropped > 0) {
    const message = told(({ courseReading }) => courseReading.file.dropped, { count: copied.dropped });
    repairs.push(toldFault({ severity: 'warning', code: 'member-dropped', where: 'file', message }));
  }

  const objects: Readonly<Record<string, unknown>>[] = [];
  collection.features.forEach((raw, index) => {
    if (typeof raw === 'object' && raw !== null && !Array.isArray(raw)) {
      objects.push(raw as Record<string, unknown>);
      return;
    }
    const message = told(({ courseReading }) => courseReading.file.noObject);
    repairs.push(
      toldFault({
        severity: 'warning',
        code: 'feature-dropped',
        where: told(({ features }) => features.where, { index }),
        message,
        featureIndex: index,
      }),
    );
  });
  const ids = giveIds(objects, repairs);
  const features = objects.map((raw, index): DocumentFeature => {
    // id stands behind type, as RFC 7946 writes it
    const named: DocumentFeature = {
      ...('type' in raw ? { type: raw['type'] } : {}),
      id: ids[index]!,
      ...without(raw, ['type', 'id', 'bbox']),
    };
    return 'geometry' in named ? { ...named, geometry: roundGeometry(named.geometry) } : named;
  });
  const header = collection['holewright'] as Record<string, unknown> | undefined;
  const document: EditableDocument = {
    type: 'FeatureCollection',
    holewright: { ...header, formatVersion: FORMAT_VERSION },
    ...without(collection, ['type', 'holewright', 'features', 'bbox']),
    features,
  };
  return succeed({ document: freeze(document, true), repairs });
}

/** The course that the document draws; features that cannot be read are listed in its warnings. */
export function courseOf(document: EditableDocument): Result<Course, readonly Fault[]> {
  const parsed = parseCourseDocument(document, { unreadable: 'leave-out' });
  return parsed.ok ? succeed(parsed.value.course) : parsed;
}

function giveIds(features: readonly Readonly<Record<string, unknown>>[], repairs: Fault[]): FeatureId[] {
  const taken = new Set<string>();
  const own = features.map(({ id }, index): FeatureId | undefined => {
    if (!isId(id)) return undefined;
    if (taken.has(String(id))) {
      const message = told(({ courseReading }) => courseReading.file.sameId, { id: JSON.stringify(id) });
      repairs.push(
        toldFault({
          severity: 'warning',
          code: 'duplicate-id',
          where: told(({ features }) => features.where, { index }),
          message,
          featureIndex: index,
        }),
      );
      return undefined;
    }
    taken.add(String(id));
    return id;
  });
  const next = idsBeyond(taken);
  return own.map((id) => id ?? next());
}

function isId(id: unknown): id is FeatureId {
  return (typeof id === 'string' && id !== '') || (typeof id === 'number' && Number.isFinite(id));
}

/** `count` ids that the document does not use yet; the same for the same document. */
export function freeIds(document: EditableDocument, count: number): FeatureId[] {
  const next = idsBeyond(new Set(document.features.map(({ id }) => String(id))));
  return Array.from({ length: count }, next);
}

/** `feature-1`, `feature-2` and so on, those in use passed over. */
function idsBeyond(taken: ReadonlySet<string>): () => FeatureId {
  let number = 0;
  return () => {
    do number++;
    while (taken.has(`feature-${number}`));
    return `feature-${number}`;
  };
}

export function featureById(document: EditableDocument, id: FeatureId): DocumentFeature | undefined {
  return document.features.find((feature) => feature.id === id);
}

/** The feature's geometry where it is one that a course is drawn with (Point, LineString, Polygon, MultiPolygon). */
export function geometryOf(feature: DocumentFeature): Geometry | undefined {
  const parsed = v.safeParse(GeometrySchema, feature.geometry, { abortEarly: true });
  return parsed.success ? parsed.output : undefined;
}

/** The feature's properties; empty where it has none. */
export function propertiesOf(feature: DocumentFeature): Readonly<Record<string, unknown>> {
  const { properties } = feature;
  return typeof properties === 'object' && properties !== null && !Array.isArray(properties)
    ? (properties as Record<string, unknown>)
    : {};
}

export function kindOf(feature: DocumentFeature): FeatureKind | undefined {
  return featureKindOf(propertiesOf(feature));
}

/** Number of the hole that the feature's `ref` names. */
export function holeOf(feature: DocumentFeature): number | undefined {
  const parsed = v.safeParse(PropertiesSchema.entries.ref, propertiesOf(feature)['ref']);
  return parsed.success && typeof parsed.output === 'number' ? parsed.output : undefined;
}

/**
 * The document as the text of a file, one feature to a line, coordinates with at most 8 decimals. The same document
 * gives the same text; opening that text gives the same document.
 */
export function serialise(document: EditableDocument): string {
  const members = Object.entries(document).map(([key, value]) => {
    if (key !== 'features') return `${JSON.stringify(key)}:${JSON.stringify(value)}`;
    if (document.features.length === 0) return '"features":[]';
    return `"features":[\n${document.features.map(featureText).join(',\n')}\n]`;
  });
  return `{${members.join(',')}}\n`;
}

function featureText(feature: DocumentFeature): string {
  return JSON.stringify(
    'geometry' in feature ? { ...feature, geometry: roundGeometry(feature.geometry) } : feature,
  );
}
