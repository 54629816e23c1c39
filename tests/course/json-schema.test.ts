import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GOLF_TAGS, NATURAL_TAGS, OWN_KINDS } from '../../core/course/feature-kind.ts';
import { parseCourse } from '../../core/course/parse.ts';
import { area, at, collection, line, plainHole, point, square } from './builders.ts';
import { courseJsonSchemaText } from './json-schema.ts';

const maps = new URL('../../maps/', import.meta.url);
const fixtures = new URL('./fixtures/', import.meta.url);
const published = readFileSync(new URL('schemas/course.schema.json', maps), 'utf8');
const validate = new Ajv2020({
  allErrors: false,
  strict: true,
  strictTypes: false,
  strictTuples: false,
  strictRequired: false,
}).compile(JSON.parse(published) as object);

const files = [maps, fixtures].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.geojson'))
    .map((name) => new URL(name, folder)),
);

describe('the published JSON Schema', () => {
  it('is the one that the reader goes by (else: npx tsx tests/course/write-json-schema.ts)', () => {
    expect(published).toBe(courseJsonSchemaText());
  });

  it.each(files.map((file) => [file.pathname.split('/').at(-1)!, file] as const))('accepts %s', (_, file) => {
    validate(JSON.parse(readFileSync(file, 'utf8')));
    expect(validate.errors).toBeNull();
  });

  it('covers the demo course', () => {
    expect(files.map(({ pathname }) => pathname.split('/').at(-1))).toContain('demo-course.geojson');
  });

  it('refuses a file without our header, and one of another version', () => {
    expect(validate({ type: 'FeatureCollection', features: plainHole(1, 0) })).toBe(false);
    expect(validate({ ...collection(), holewright: { formatVersion: 2, courseName: 'Later' } })).toBe(false);
  });

  it('accepts what the reader reads without a word on values or shapes, and refuses the rest', () => {
    const values = fc.constantFrom<unknown>(
      null,
      1,
      4,
      0.5,
      -3,
      '7',
      '12 m',
      ' 5',
      'x',
      '',
      'needleleaved',
      'evergreen',
      1e9,
      {},
      [],
      true,
    );
    const keys = [
      'ref',
      'name',
      'par',
      'handicap',
      'height',
      'diameter_crown',
      'canopy_base_m',
      'canopy_density_per_m',
      'leaf_type',
      'leaf_cycle',
      'ele',
      'lip_m',
      'slope_percent',
      'downhill_deg',
    ];
    const tag = (table: object) =>
      fc.option(fc.constantFrom(...Object.keys(table), 'other'), { nil: undefined });
    const properties = fc
      .record({
        tags: fc.record({
          golf: tag(GOLF_TAGS),
          natural: tag(NATURAL_TAGS),
          holewright_kind: tag(OWN_KINDS),
        }),
        // Text above a lip's range is refused by the reader alone, see below.
        values: fc
          .dictionary(fc.constantFrom(...keys), values, { maxKeys: 4 })
          .filter((given) => given['lip_m'] !== '12 m'),
      })
      .map(
        ({ tags, values }) => JSON.parse(JSON.stringify({ ...values, ...tags })) as Record<string, unknown>,
      );
    const shapes = fc.constantFrom(
      point({}, at(0, 0)),
      point({}, [181, 0]),
      point({}, ['4', 52]),
      line({}, at(0, 0), at(0, 9)),
      line({}, at(0, 0)),
      area({}, square(0, 0, 9)),
      area({}, square(0, 0, 9), square(0, 0, 3)),
      area({}, square(0, 0, 9).slice(0, 2)),
      area({}),
      { type: 'Feature', geometry: { type: 'MultiPolygon', coordinates: [[square(0, 0, 9)]] } },
      { type: 'Feature', geometry: { type: 'MultiPoint', coordinates: [at(0, 0)] } },
      { type: 'Feature', geometry: null },
      { type: 'Other', geometry: null },
    );
    const wordsOnShape = new Set([
      'value-unreadable',
      'value-missing',
      'wrong-geometry',
      'geometry-unreadable',
      'not-a-feature',
    ]);
    const seen = { accepted: 0, refused: 0 };
    fc.assert(
      fc.property(shapes, properties, (shape, given) => {
        const file = collection({ ...shape, properties: given });
        const parsed = parseCourse(file, { unreadable: 'leave-out' });
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
        // range limits of numbers written as text are beyond a JSON Schema: none is generated
        const clean = !parsed.value.warnings.some(({ code }) => wordsOnShape.has(code));
        seen[clean ? 'accepted' : 'refused']++;
        expect(validate(file)).toBe(clean);
      }),
      { numRuns: 5000 },
    );
    expect(Math.min(seen.accepted, seen.refused)).toBeGreaterThan(500);
  });
});
