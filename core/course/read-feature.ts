/** One GeoJSON feature to one thing of the course, or the faults that stand in the way. Each feature is tried apart. */

import * as v from 'valibot';
import { briefly, type Fault } from '../result.ts';
import { courseReading } from '../words/english/course-reading.ts';
import { told, type Told, toldFault } from '../words/told.ts';
import { TREE_CANOPY, TREE_CROWN_RADIUS_M, WOODS_CANOPY } from './defaults.ts';
import { featureKindOf, whereFeature } from './feature-kind.ts';
import { linePoints, pointOf, polygonsOf } from './geometry.ts';
import type { Area, AreaKind, GroundLevel, LonLat, SlopeMark, StrayMarker, Tree } from './model.ts';
import { readCanopy } from './read-canopy.ts';
import { type FeatureContext, readProperties } from './read-properties.ts';
import { orderRings } from './ring.ts';
import {
  FeatureSchema,
  type Geometry,
  GeometrySchema,
  type GeometryType,
  KIND_RULES,
  type Properties,
  type ShapeProblem,
} from './schema.ts';

/** A golf=hole line before tees and positions are gathered around it. */
export interface HoleLine {
  readonly number: number;
  readonly name?: string;
  readonly par?: number;
  readonly strokeIndex?: number;
  readonly line: readonly LonLat[];
  readonly featureIndex: number;
}

export type FeatureReading =
  | { readonly as: 'areas'; readonly areas: readonly Area[] }
  | { readonly as: 'tree'; readonly tree: Tree }
  | { readonly as: 'level'; readonly level: GroundLevel }
  | { readonly as: 'slope'; readonly mark: SlopeMark }
  | { readonly as: 'marker'; readonly marker: StrayMarker }
  | { readonly as: 'hole'; readonly hole: HoleLine }
  /** Of no kind we know: kept in the file, left out of the course. */
  | { readonly as: 'unknown' };

export interface ReadFeature {
  /** Absent where a fault of severity `error` stands in the way. */
  readonly reading?: FeatureReading;
  readonly faults: readonly Fault[];
}

export function readFeature(raw: unknown, index: number): ReadFeature {
  const feature = v.safeParse(FeatureSchema, raw);
  if (!feature.success) {
    return stop(index, whereFeature(index), 'not-a-feature', describeShape(feature.issues[0]));
  }
  const rawProperties = feature.output.properties ?? {};
  const kind = featureKindOf(rawProperties);
  if (kind === undefined)
    return { reading: { as: 'unknown' }, faults: [unknownFeature(rawProperties, index)] };

  const { ref, name } = rawProperties;
  const where = whereFeature(
    index,
    kind,
    typeof ref === 'string' || typeof ref === 'number' ? ref : undefined,
    typeof name === 'string' ? name : undefined,
  );
  const context: FeatureContext = { index, kind, where };
  const geometry = readGeometry(feature.output.geometry, context);
  const properties = readProperties(rawProperties, context);
  const faults = [...geometry.faults, ...properties.faults];
  if (geometry.value === undefined || faults.some((fault) => fault.severity === 'error')) return { faults };

  const built = build(geometry.value, properties.value, context);
  return { ...built, faults: [...faults, ...built.faults] };
}

function build(geometry: Geometry, properties: Properties, context: FeatureContext): ReadFeature {
  const { kind, index } = context;
  const name = properties.name ?? undefined;
  const ref = properties.ref ?? undefined;
  const named = name === undefined ? {} : { name };
  switch (kind) {
    case 'hole': {
      const { par, handicap } = properties;
      const hole: HoleLine = {
        number: ref!,
        ...named,
        ...(typeof par === 'number' ? { par } : {}),
        ...(typeof handicap === 'number' ? { strokeIndex: handicap } : {}),
        line: linePoints(geometry),
        featureIndex: index,
      };
      return { reading: { as: 'hole', hole }, faults: [] };
    }
    case 'tee-marker':
    case 'hole-position': {
      const marker: StrayMarker = { kind, hole: ref!, ...named, at: pointOf(geometry), featureIndex: index };
      return { reading: { as: 'marker', marker }, faults: [] };
    }
    case 'ground-level':
      return {
        reading: { as: 'level', level: { at: pointOf(geometry), elevationM: properties.ele! } },
        faults: [],
      };
    case 'slope-mark': {
      const mark: SlopeMark = {
        at: pointOf(geometry),
        slopeShare: properties.slope_percent! / 100,
        downhill: (properties.downhill_deg! * Math.PI) / 180,
        featureIndex: index,
      };
      return { reading: { as: 'slope', mark }, faults: [] };
    }
    case 'tree': {
      const { canopy, assumed, faults } = readCanopy(properties, TREE_CANOPY, context);
      const crown = properties.diameter_crown ?? undefined;
      if (crown === undefined) assumed.push('crown-radius');
      const crownRadiusM = crown === undefined ? TREE_CROWN_RADIUS_M : crown / 2;
      const tree: Tree = {
        at: pointOf(geometry),
        crownRadiusM,
        canopy,
        ...(assumed.length === 0 ? {} : { assumed }),
        featureIndex: index,
      };
      return { reading: { as: 'tree', tree }, faults };
    }
    default:
      return buildAreas(kind, geometry, properties, context);
  }
}

function buildAreas(
  kind: AreaKind,
  geometry: Geometry,
  properties: Properties,
  context: FeatureContext,
): ReadFeature {
  const polygons = polygonsOf(geometry);
  const woods = kind === 'woods' ? readCanopy(properties, WOODS_CANOPY, context) : undefined;
  const areas: Area[] = [];
  for (const polygon of polygons) {
    const { rings, open, empty } = orderRings(polygon);
    if (empty.length > 0) {
      return stop(
        context.index,
        context.where,
        'geometry-unreadable',
        told(({ courseReading }) => courseReading.shape.emptyRing, { ring: empty[0]! }),
      );
    }
    areas.push({
      kind,
      rings,
      ...(typeof properties.ref === 'number' ? { hole: properties.ref } : {}),
      ...(typeof properties.name === 'string' ? { name: properties.name } : {}),
      ...(typeof properties.lip_m === 'number' ? { lipM: properties.lip_m } : {}),
      ...(woods === undefined ? {} : { canopy: woods.canopy }),
      ...(woods === undefined || woods.assumed.length === 0 ? {} : { assumed: woods.assumed }),
      ...(open.length === 0 ? {} : { openRings: open }),
      featureIndex: context.index,
    });
  }
  return { reading: { as: 'areas', areas }, faults: woods?.faults ?? [] };
}

function readGeometry(raw: unknown, context: FeatureContext): { value?: Geometry; faults: readonly Fault[] } {
  const allowed = KIND_RULES[context.kind].geometry;
  const type = typeof raw === 'object' && raw !== null && 'type' in raw ? raw.type : undefined;
  if (!allowed.includes(type as GeometryType)) {
    const drawn =
      typeof type === 'string'
        ? told(({ courseReading }) => courseReading.shape.drawnAs, { type })
        : told(({ courseReading }) => courseReading.shape.notDrawn);
    return stop(
      context.index,
      context.where,
      'wrong-geometry',
      told(({ courseReading }) => courseReading.shape.mustBe, {
        drawn,
        kind: told(({ features }) => features.kinds[context.kind]),
        allowed: oneOf(allowed),
      }),
    );
  }
  const parsed = v.safeParse(GeometrySchema, raw, { abortEarly: true });
  if (parsed.success) return { value: parsed.output, faults: [] };
  const issue = parsed.issues[0];
  const place = (issue.path ?? [])
    .map(({ key }) => (typeof key === 'number' ? `[${key}]` : String(key)))
    .join('');
  const why = Object.hasOwn(courseReading.shape.problems, issue.message)
    ? told(({ courseReading: { shape } }) => shape.problems[issue.message as ShapeProblem])
    : issue.message;
  const message = told(({ courseReading: { shape } }) => shape.unreadable, {
    place,
    found: briefly(issue.received),
    why,
  });
  return stop(context.index, context.where, 'geometry-unreadable', message);
}

function stop(index: number, where: Told, code: string, message: Told): { faults: readonly Fault[] } {
  return { faults: [toldFault({ severity: 'error', code, where, message, featureIndex: index })] };
}

/** `Polygon or MultiPolygon`. */
export function oneOf(types: readonly GeometryType[]): string | Told {
  const [first, ...more] = types;
  return more.reduce<string | Told>(
    (before, second) => told(({ courseEdits }) => courseEdits.or, { first: before, second }),
    first!,
  );
}

function describeShape(issue: v.BaseIssue<unknown>): Told {
  const path = v.getDotPath(issue);
  return told(({ courseReading: { shape } }) => shape.noFeature, {
    place: path ?? told(({ courseReading: { shape } }) => shape.it),
    found: briefly(issue.received),
    wanted: issue.expected ?? told(({ courseReading: { shape } }) => shape.asGeoJson),
  });
}

function unknownFeature(properties: Readonly<Record<string, unknown>>, index: number): Fault {
  const tags = ['holewright_kind', 'golf', 'natural']
    .filter((tag) => typeof properties[tag] === 'string')
    .map((tag) => `${tag}=${String(properties[tag]).slice(0, 60)}`);
  const what =
    tags.length === 0
      ? told(({ courseReading }) => courseReading.noTag)
      : told(({ courseReading }) => courseReading.noKind, { tags: tags.join(', ') });
  const name = typeof properties['name'] === 'string' ? properties['name'] : undefined;
  return toldFault({
    severity: 'warning',
    code: 'unknown-feature',
    where: whereFeature(index, undefined, undefined, name),
    message: told(({ courseReading }) => courseReading.unknown, { what }),
    featureIndex: index,
  });
}
