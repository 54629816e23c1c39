/**
 * The course format as JSON Schema (draft 2020-12), made from the valibot schemas that the reader uses. The file in
 * maps/schemas/ is this, written out: `npx tsx tests/course/write-json-schema.ts`.
 */

import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import type * as v from 'valibot';
import {
  type FeatureKind,
  GOLF_TAGS,
  KIND_WORDS,
  NATURAL_TAGS,
  OWN_KINDS,
} from '../../core/course/feature-kind.ts';
import { FORMAT_VERSION } from '../../core/course/migrate.ts';
import { MOST_FEATURES } from '../../core/course/parse.ts';
import {
  FeatureSchema,
  HeaderSchema,
  KIND_RULES,
  LineStringSchema,
  MultiPolygonSchema,
  PointSchema,
  PolygonSchema,
  PositionSchema,
  PropertiesSchema,
  PROPERTY_WORDS,
  type PropertyKey,
} from '../../core/course/schema.ts';

const GEOMETRIES = {
  Point: PointSchema,
  LineString: LineStringSchema,
  Polygon: PolygonSchema,
  MultiPolygon: MultiPolygonSchema,
};

function convert(
  schema: v.GenericSchema,
  definitions: Record<string, v.GenericSchema> = { position: PositionSchema },
): JsonSchema {
  const schemaParts = Object.entries(
    toJsonSchema(schema, { typeMode: 'input', target: 'draft-2020-12', definitions }),
  );
  return Object.fromEntries(schemaParts.filter(([key]) => key !== '$schema' && key !== '$defs'));
}

/** `properties` in which one of the tags has one of the values. */
function tagIn(tag: string, values: readonly string[]): JsonSchema {
  return {
    type: 'object',
    properties: {
      properties: { type: 'object', properties: { [tag]: { enum: [...values] } }, required: [tag] },
    },
    required: ['properties'],
  };
}

/** The tags by which a kind is told, first the one that wins over the next. */
const TAGS: readonly (readonly [string, Readonly<Record<string, FeatureKind>>])[] = [
  ['holewright_kind', OWN_KINDS],
  ['golf', GOLF_TAGS],
  ['natural', NATURAL_TAGS],
];

/** That a feature is of a kind: its tag names it, and no tag that wins over that tag names another. */
function isOfKind(kind: FeatureKind): JsonSchema {
  const at = TAGS.findIndex(([, table]) => Object.values(table).includes(kind));
  const [tag, table] = TAGS[at]!;
  const values = Object.keys(table).filter((value) => table[value] === kind);
  const winners = TAGS.slice(0, at).map(([winner]) => ({ not: { $ref: `#/$defs/known-${winner}` } }));
  return winners.length === 0 ? tagIn(tag, values) : { allOf: [tagIn(tag, values), ...winners] };
}

function ruleOf(kind: FeatureKind): JsonSchema {
  const { geometry, required, optional } = KIND_RULES[kind];
  const asked = (key: PropertyKey): [string, JsonSchema] => [key, { $ref: `#/$defs/${key}` }];
  const mayBeNull = (key: PropertyKey): [string, JsonSchema] => [
    key,
    { anyOf: [{ $ref: `#/$defs/${key}` }, { type: 'null' }] },
  ];
  return {
    if: isOfKind(kind),
    then: {
      title: KIND_WORDS[kind],
      properties: {
        geometry: { anyOf: geometry.map((type) => ({ $ref: `#/$defs/${type}` })) },
        properties: {
          properties: Object.fromEntries([...required.map(asked), ...optional.map(mayBeNull)]),
          ...(required.length === 0 ? {} : { required: [...required] }),
        },
      },
    },
  };
}

export function courseJsonSchema(): JsonSchema {
  const keys = Object.keys(PROPERTY_WORDS) as PropertyKey[];
  const header = convert(HeaderSchema);
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:holewright:course:${FORMAT_VERSION}`,
    title: `Holewright course, format version ${FORMAT_VERSION}`,
    description:
      'A GeoJSON FeatureCollection (RFC 7946, WGS 84). Rings are closed, outer rings counter-clockwise, holes clockwise. Members that are not named here are allowed and kept. Features without a known tag are allowed and left out of planning.',
    type: 'object',
    properties: {
      type: { const: 'FeatureCollection' },
      holewright: { $ref: '#/$defs/header' },
      features: { type: 'array', maxItems: MOST_FEATURES, items: { $ref: '#/$defs/feature' } },
    },
    required: ['type', 'holewright', 'features'],
    $defs: {
      header: {
        ...header,
        properties: { ...header.properties, formatVersion: { const: FORMAT_VERSION } },
      },
      feature: {
        ...convert(FeatureSchema),
        allOf: (Object.keys(KIND_RULES) as FeatureKind[]).map(ruleOf),
      },
      ...Object.fromEntries(TAGS.map(([tag, table]) => [`known-${tag}`, tagIn(tag, Object.keys(table))])),
      position: {
        ...convert(PositionSchema, {}),
        description: 'Longitude and latitude in degrees; a height may follow and is not read.',
      },
      ...Object.fromEntries(Object.entries(GEOMETRIES).map(([type, schema]) => [type, convert(schema)])),
      ...Object.fromEntries(
        keys.map((key) => [
          key,
          { ...convert(PropertiesSchema.entries[key].wrapped), description: PROPERTY_WORDS[key] },
        ]),
      ),
    },
  };
}

/** As it stands in the file. */
export function courseJsonSchemaText(): string {
  return `${JSON.stringify(courseJsonSchema(), null, 2)}\n`;
}
