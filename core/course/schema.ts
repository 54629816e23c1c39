/**
 * The course file as valibot schemas: a GeoJSON FeatureCollection (RFC 7946) with a `holewright` member. Members
 * that the schemas do not name pass through. maps/schemas/course.schema.json is made from these.
 */

import * as v from 'valibot';
import { courseReading } from '../words/english/course-reading.ts';
import type { FeatureKind } from './feature-kind.ts';

export type ShapeProblem = keyof typeof courseReading.shape.problems;

/** Messages of the schemas are names of entries in the catalogue (`courseReading.shape.problems`). */
function problem(name: ShapeProblem): ShapeProblem {
  return name;
}

/** [longitude, latitude, perhaps height] in degrees of WGS 84. */
export const PositionSchema = v.looseTuple(
  [
    v.pipe(
      v.number(problem('longitude')),
      v.minValue(-180, problem('longitudeRange')),
      v.maxValue(180, problem('longitudeRange')),
    ),
    v.pipe(
      v.number(problem('latitude')),
      v.minValue(-90, problem('latitudeRange')),
      v.maxValue(90, problem('latitudeRange')),
    ),
  ],
  problem('position'),
);

const RingSchema = v.pipe(v.array(PositionSchema, problem('ring')), v.minLength(3, problem('shortRing')));
const PolygonCoordinatesSchema = v.pipe(
  v.array(RingSchema, problem('polygon')),
  v.minLength(1, problem('emptyPolygon')),
);

export const PointSchema = v.looseObject({ type: v.literal('Point'), coordinates: PositionSchema });
export const LineStringSchema = v.looseObject({
  type: v.literal('LineString'),
  coordinates: v.pipe(v.array(PositionSchema, problem('line')), v.minLength(2, problem('shortLine'))),
});
export const PolygonSchema = v.looseObject({
  type: v.literal('Polygon'),
  coordinates: PolygonCoordinatesSchema,
});
export const MultiPolygonSchema = v.looseObject({
  type: v.literal('MultiPolygon'),
  coordinates: v.pipe(
    v.array(PolygonCoordinatesSchema, problem('multipolygon')),
    v.minLength(1, problem('emptyMultipolygon')),
  ),
});

export const GeometrySchema = v.variant('type', [
  PointSchema,
  LineStringSchema,
  PolygonSchema,
  MultiPolygonSchema,
]);
export type Geometry = v.InferOutput<typeof GeometrySchema>;
export type GeometryType = Geometry['type'];

/** A finite number, or one written as text as OpenStreetMap does; `suffix` allows a unit behind it. */
function numberOrText(least: number, most: number, suffix = '') {
  return v.union([
    v.pipe(v.number(), v.minValue(least), v.maxValue(most)),
    v.pipe(
      v.string(),
      v.regex(new RegExp(`^\\s*[-+]?\\d+(\\.\\d+)?${suffix}\\s*$`)),
      v.transform((text) => Number.parseFloat(text)),
      v.minValue(least),
      v.maxValue(most),
    ),
  ]);
}

export const SANDS = ['soft', 'medium', 'firm'] as const;

/** OpenStreetMap's values of `leaf_type` and `leaf_cycle` that say what a crown is like in the bare season. */
export const LEAF_TYPES = ['broadleaved', 'needleleaved', 'mixed'] as const;
export const LEAF_CYCLES = ['evergreen', 'deciduous', 'semi_evergreen', 'semi_deciduous', 'mixed'] as const;

const METRE_SUFFIX = '(\\s*m)?';

/** What lengths and heights may be, metres: least and most. */
export const LENGTH_BOUNDS_M = {
  height: [0, 200],
  diameter_crown: [0, 200],
  canopy_base_m: [0, 200],
  ele: [-500, 9000],
  lip_m: [0, 10],
} as const;

function length(key: keyof typeof LENGTH_BOUNDS_M) {
  const [least, most] = LENGTH_BOUNDS_M[key];
  return v.nullish(numberOrText(least, most, METRE_SUFFIX));
}

/** Every property that is read, whatever the kind. `null` counts as absent, as GIS programs write it. */
export const PropertiesSchema = v.looseObject({
  /** Number of the hole. */
  ref: v.nullish(
    v.union([
      v.pipe(v.number(), v.integer(), v.minValue(1)),
      v.pipe(v.string(), v.regex(/^\s*[1-9]\d{0,3}\s*$/), v.transform(Number)),
    ]),
  ),
  name: v.nullish(v.string()),
  par: v.nullish(numberOrText(-1e6, 1e6)),
  /** Stroke index. */
  handicap: v.nullish(numberOrText(-1e6, 1e6)),
  /** Metres above the ground. */
  height: length('height'),
  /** Metres. */
  diameter_crown: length('diameter_crown'),
  /** Metres above the ground. */
  canopy_base_m: length('canopy_base_m'),
  /** Chance per metre of canopy that a ball is stopped. */
  canopy_density_per_m: v.nullish(numberOrText(0, 10)),
  leaf_type: v.nullish(v.picklist(LEAF_TYPES)),
  leaf_cycle: v.nullish(v.picklist(LEAF_CYCLES)),
  /** Metres above sea level. */
  ele: length('ele'),
  /** Height of a bunker's edge above its sand, metres. */
  lip_m: length('lip_m'),
  /** Fall of a green, metres per 100 metres. */
  slope_percent: v.nullish(numberOrText(0, 15)),
  /** Where it falls to, degrees clockwise from true north. */
  downhill_deg: v.nullish(numberOrText(0, 360)),
});
export type Properties = v.InferOutput<typeof PropertiesSchema>;
export type PropertyKey = keyof typeof PropertiesSchema.entries;

/** What each property should hold, in English; `courseReading.properties` has it in each language. */
export const PROPERTY_WORDS: Readonly<Record<PropertyKey, string>> = courseReading.properties;

export interface KindRule {
  readonly geometry: readonly GeometryType[];
  readonly required: readonly PropertyKey[];
  readonly optional: readonly PropertyKey[];
}

const area: KindRule = { geometry: ['Polygon', 'MultiPolygon'], required: [], optional: ['ref', 'name'] };
const marker: KindRule = { geometry: ['Point'], required: ['ref'], optional: ['name'] };

/** How each kind is drawn, and which of its properties are read. */
export const KIND_RULES: Readonly<Record<FeatureKind, KindRule>> = {
  tee: area,
  fairway: area,
  green: area,
  bunker: { ...area, optional: ['ref', 'name', 'lip_m'] },
  rough: area,
  'long-rough': area,
  'penalty-yellow': area,
  'penalty-red': area,
  'out-of-bounds': area,
  path: { ...area, geometry: ['LineString', 'Polygon', 'MultiPolygon'] },
  woods: {
    ...area,
    optional: ['ref', 'name', 'height', 'canopy_base_m', 'canopy_density_per_m', 'leaf_type', 'leaf_cycle'],
  },
  boundary: area,
  hole: { geometry: ['LineString'], required: ['ref'], optional: ['name', 'par', 'handicap'] },
  tree: {
    geometry: ['Point'],
    required: [],
    optional: [
      'name',
      'height',
      'diameter_crown',
      'canopy_base_m',
      'canopy_density_per_m',
      'leaf_type',
      'leaf_cycle',
    ],
  },
  'tee-marker': marker,
  'hole-position': marker,
  'ground-level': { geometry: ['Point'], required: ['ele'], optional: ['name'] },
  'slope-mark': { geometry: ['Point'], required: ['slope_percent', 'downhill_deg'], optional: ['name'] },
};

/** The `holewright` member of the collection. */
export const HeaderSchema = v.looseObject({
  formatVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  courseName: v.nullish(v.string()),
  invented: v.nullish(v.boolean()),
  notes: v.nullish(v.string()),
  datum: v.nullish(v.string()),
  /** How firm the sand of the bunkers is. */
  sand: v.nullish(v.picklist(SANDS)),
});

export const FeatureSchema = v.looseObject({
  type: v.literal('Feature'),
  properties: v.nullable(v.looseObject({})),
  geometry: v.nullable(v.looseObject({ type: v.string() })),
});

export const CollectionSchema = v.looseObject({
  type: v.literal('FeatureCollection'),
  features: v.array(v.unknown()),
});
export type Collection = v.InferOutput<typeof CollectionSchema>;
