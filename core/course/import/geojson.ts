/**
 * Any GeoJSON file: features with our own tags come in as they are, others by a mapping from the values of a property
 * to kinds, which `suggestMappings` offers.
 */

import * as v from 'valibot';
import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import { KIND_MEMBERS, tagsOfKind } from '../edits/kind-tags.ts';
import { kindTold } from '../edits/words.ts';
import { oneOf } from '../read-feature.ts';
import { inEnglish, type Said, told, type Told, toldFault } from '../../words/told.ts';
import { type FeatureKind, featureKindOf } from '../feature-kind.ts';
import { readJsonText } from '../json-text.ts';
import { copyJson } from '../json-tree.ts';
import { type Geometry, GeometrySchema, KIND_RULES } from '../schema.ts';
import { completeProposal, readRef } from './complete-proposal.ts';
import { LeftOutList } from './left-out.ts';
import type { ImportContext, ImportProposal, ProposedFeature } from './proposal.ts';

/** Features whose `property` has this `value` are of this kind. The first mapping that fits counts. */
export interface KindMapping {
  readonly property: string;
  readonly value: string;
  readonly kind: FeatureKind;
}

export interface GeojsonOptions {
  /** Looked at before our own tags. */
  readonly mappings?: readonly KindMapping[];
  /** The property that holds the number of the hole; `ref` where none is named. */
  readonly holeProperty?: string;
}

/** A feature of the file, its geometry taken apart into ones that a course is drawn with. */
export interface PlainFeature {
  readonly origin: Told;
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometries: readonly Geometry[];
  /** Why there is no geometry, where there is none. */
  readonly why?: Told;
}

const MOST_FEATURES_READ = 200_000;

export function readGeojson(
  text: string,
  context: ImportContext,
  options: GeojsonOptions = {},
): Result<ImportProposal, readonly Fault[]> {
  const plain = readPlainFeatures(text);
  if (!plain.ok) return plain;
  const { mappings = [], holeProperty = 'ref' } = options;
  const leftOut = new LeftOutList();
  const features: ProposedFeature[] = [];
  for (const { origin, properties, geometries, why } of plain.value) {
    const mapping = mappings.find(({ property, value }) => valueText(properties[property]) === value);
    const kind = mapping?.kind ?? featureKindOf(properties);
    if (kind === undefined) {
      leftOut.add(
        describe(properties),
        told(({ courseImport }) => courseImport.why.noTag),
        origin,
      );
      continue;
    }
    if (why !== undefined) {
      leftOut.add(kindTold(kind), why, origin);
      continue;
    }
    for (const geometry of geometries) {
      if (!KIND_RULES[kind].geometry.includes(geometry.type)) {
        const wanted = oneOf(KIND_RULES[kind].geometry);
        leftOut.add(
          kindTold(kind),
          told(({ courseImport }) => courseImport.why.drawnAs, { type: geometry.type, wanted }),
          origin,
        );
        continue;
      }
      features.push({
        kind,
        properties: withKind(properties, kind, mapping, holeProperty),
        geometry,
        origin: inEnglish(origin),
        toldOrigin: origin,
      });
    }
  }
  return completeProposal({ kind: 'geojson', features, leftOut, notes: [], sources: [] }, context);
}

function withKind(
  properties: Readonly<Record<string, unknown>>,
  kind: FeatureKind,
  mapping: KindMapping | undefined,
  holeProperty: string,
): Record<string, unknown> {
  const rest = Object.entries(properties).filter(
    ([key]) => mapping === undefined || !(KIND_MEMBERS as readonly string[]).includes(key),
  );
  const next: Record<string, unknown> = {
    ...(mapping === undefined ? {} : tagsOfKind(kind)),
    ...Object.fromEntries(rest),
  };
  const ref = readRef(properties[holeProperty]);
  if (ref !== undefined && KIND_RULES[kind].required.concat(KIND_RULES[kind].optional).includes('ref'))
    next['ref'] = ref;
  return next;
}

const CollectionSchema = v.looseObject({
  type: v.literal('FeatureCollection'),
  features: v.array(v.unknown()),
});
const FeatureSchema = v.looseObject({
  type: v.literal('Feature'),
  properties: v.nullish(v.record(v.string(), v.unknown())),
  geometry: v.nullish(v.looseObject({ type: v.string() })),
});

/** Every feature of a GeoJSON text: a collection, a single feature, or a bare geometry. */
export function readPlainFeatures(text: string): Result<readonly PlainFeature[], readonly Fault[]> {
  const json = readJsonText(text);
  if (!json.ok) return json;
  const copied = copyJson(json.value);
  if (copied === undefined)
    return refuse([
      fault(
        'too-deep',
        told(({ courseImport }) => courseImport.faults.tooDeep),
      ),
    ]);
  const value = copied.value;
  const foreign = foreignSystem(value);
  if (foreign !== undefined) return refuse([foreign]);
  const raw = v.is(CollectionSchema, value)
    ? value.features
    : v.is(FeatureSchema, value)
      ? [value]
      : v.is(v.looseObject({ type: v.picklist(GEOMETRY_TYPES) }), value)
        ? [{ type: 'Feature', properties: {}, geometry: value }]
        : undefined;
  if (raw === undefined) {
    return refuse([
      fault(
        'not-geojson',
        told(({ courseImport }) => courseImport.faults.notGeoJson),
      ),
    ]);
  }
  if (raw.length > MOST_FEATURES_READ) {
    const message = told(({ courseImport }) => courseImport.faults.manyFeatures, {
      count: raw.length,
      most: MOST_FEATURES_READ,
    });
    return refuse([fault('too-many-features', message)]);
  }
  const features = raw.map(plainFeature);
  const outside = features.findIndex(({ geometries, why }) => geometries.length === 0 && why === OUTSIDE);
  const inside = features.some(({ geometries }) => geometries.length > 0);
  if (outside >= 0 && !inside) {
    const message = told(({ courseImport }) => courseImport.faults.noDegrees, {
      what: features[outside]!.origin,
    });
    return refuse([fault('not-wgs84', message)]);
  }
  return succeed(features);
}

const GEOMETRY_TYPES = [
  'Point',
  'LineString',
  'Polygon',
  'MultiPoint',
  'MultiLineString',
  'MultiPolygon',
  'GeometryCollection',
] as const;
const OUTSIDE = told(({ courseImport }) => courseImport.why.outside);

/** Old GeoJSON (2008) could name another coordinate system; RFC 7946 took that out. */
function foreignSystem(value: unknown): Fault | undefined {
  const named = v.safeParse(
    v.looseObject({ crs: v.looseObject({ properties: v.looseObject({ name: v.string() }) }) }),
    value,
  );
  if (!named.success) return undefined;
  const { name } = named.output.crs.properties;
  if (/CRS84$|[:/]4326$|^WGS\s?84$/i.test(name)) return undefined;
  return fault(
    'not-wgs84',
    told(({ courseImport }) => courseImport.faults.otherSystem, { system: name.slice(0, 80) }),
  );
}

function plainFeature(raw: unknown, index: number): PlainFeature {
  const parsed = v.safeParse(FeatureSchema, raw);
  if (!parsed.success) {
    return {
      origin: told(({ features }) => features.where, { index }),
      properties: {},
      geometries: [],
      why: told(({ courseImport }) => courseImport.why.noFeature),
    };
  }
  const properties = parsed.output.properties ?? {};
  const { name } = properties;
  const nameless = told(({ features }) => features.where, { index });
  const origin =
    typeof name === 'string'
      ? told(({ features }) => features.named, { what: nameless, name: name.slice(0, 40) })
      : nameless;
  const { geometry } = parsed.output;
  if (geometry === null || geometry === undefined) {
    return {
      origin,
      properties,
      geometries: [],
      why: told(({ courseImport }) => courseImport.why.noGeometry),
    };
  }
  const parts = takeApart(geometry);
  const geometries: Geometry[] = [];
  for (const part of parts) {
    const read = v.safeParse(GeometrySchema, part, { abortEarly: true });
    if (read.success) geometries.push(read.output);
    else {
      const outOfRange = read.issues[0].type === 'min_value' || read.issues[0].type === 'max_value';
      return {
        origin,
        properties,
        geometries: [],
        why: outOfRange ? OUTSIDE : told(({ courseImport }) => courseImport.why.unreadable),
      };
    }
  }
  return geometries.length === 0
    ? { origin, properties, geometries, why: told(({ courseImport }) => courseImport.why.unreadable) }
    : { origin, properties, geometries };
}

/** MultiPoints, MultiLineStrings and collections into their parts; other geometries as they are, foreign members dropped. */
function takeApart(geometry: Readonly<Record<string, unknown>>): readonly unknown[] {
  const { type, coordinates, geometries } = geometry;
  if (type === 'GeometryCollection' && Array.isArray(geometries)) {
    return (geometries as unknown[]).flatMap((part) =>
      typeof part === 'object' && part !== null ? takeApart(part as Record<string, unknown>) : [part],
    );
  }
  const single = { MultiPoint: 'Point', MultiLineString: 'LineString' }[String(type)];
  if (single !== undefined && Array.isArray(coordinates)) {
    return (coordinates as unknown[]).map((part) => ({ type: single, coordinates: part }));
  }
  return [{ type, coordinates }];
}

function fault(code: string, message: Told): Fault {
  return toldFault({ severity: 'error', code, where: 'file', message });
}

/** A property's value as mappings compare it. */
export function valueText(value: unknown): string | undefined {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? String(value)
    : undefined;
}

/** What a feature is called in the list of what is left out: its first property that says something. */
function describe(properties: Readonly<Record<string, unknown>>): Said {
  for (const [key, value] of Object.entries(properties)) {
    const text = typeof value === 'string' ? value : undefined;
    if (text !== undefined && text !== '' && key !== 'name' && text.length <= 40)
      return `${key.slice(0, 40)}=${text}`;
  }
  return told(({ courseImport }) => courseImport.things.feature);
}
