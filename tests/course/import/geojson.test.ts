/** GeoJSON files of any make: own tags, mappings, suggestions, and files in other coordinates. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { courseOf } from '../../../core/course/document.ts';
import { type KindMapping, readGeojson } from '../../../core/course/import/geojson.ts';
import { EMPTY_CONTEXT } from '../../../core/course/import/proposal.ts';
import { kindOfWord, suggestMappings } from '../../../core/course/import/suggest-mappings.ts';
import { area, at, collection, line, plainHole, point, square } from '../builders.ts';
import { countsOf, mustApply, mustFault, mustPropose } from './import-builders.ts';

const text = (...features: unknown[]) => JSON.stringify({ type: 'FeatureCollection', features });

/** As a surveyor might have drawn it; invented. */
const survey = text(
  area({ SURFACE: 'Green', HoleNo: 3, area_m2: 412.5 }, square(0, 300, 12)),
  area({ SURFACE: 'Fairway', HoleNo: 3 }, square(0, 150, 40)),
  area({ SURFACE: 'Sand trap', HoleNo: 3 }, square(30, 280, 6)),
  area({ SURFACE: 'Sand trap', HoleNo: 4 }, square(60, 280, 6)),
  area({ SURFACE: 'Tee box', HoleNo: 3 }, square(0, 0, 6)),
  area({ SURFACE: 'Car park' }, square(200, 0, 20)),
  point({ SURFACE: 'Tree', species: 'oak' }, at(80, 80)),
  line({ SURFACE: 'Centre line', HoleNo: 3 }, at(0, 0), at(0, 300)),
);

describe('mappings', () => {
  it('are suggested from the words that the file uses', () => {
    const suggested = suggestMappings(survey);
    if (!suggested.ok) throw new Error('refused');
    expect(suggested.value.properties[0]!.property).toBe('SURFACE');
    expect(Object.fromEntries(suggested.value.mappings.map(({ value, kind }) => [value, kind]))).toEqual({
      Green: 'green',
      Fairway: 'fairway',
      'Sand trap': 'bunker',
      'Tee box': 'tee',
      Tree: 'tree',
      'Centre line': 'hole',
    });
    expect(suggested.value.holeProperty).toBe('HoleNo');
    expect(suggested.value.features).toBe(8);
    const carPark = suggested.value.properties[0]!.values.find(({ value }) => value === 'Car park');
    expect(carPark).toEqual({ value: 'Car park', count: 1, geometryTypes: ['Polygon'] });
  });

  it('bring features in with our tags, their holes and all else that they say', () => {
    const suggested = suggestMappings(survey);
    if (!suggested.ok) throw new Error('refused');
    const { mappings, holeProperty } = suggested.value;
    const proposal = mustPropose(
      readGeojson(survey, EMPTY_CONTEXT, { mappings, holeProperty: holeProperty! }),
    );
    expect(countsOf(proposal)).toEqual({ green: 1, fairway: 1, bunker: 2, tee: 1, tree: 1, hole: 1 });
    expect(proposal.features[0]!.properties).toEqual({
      golf: 'green',
      ref: '3',
      SURFACE: 'Green',
      HoleNo: 3,
      area_m2: 412.5,
    });
    expect(proposal.leftOut).toMatchObject([
      {
        what: 'SURFACE=Car park',
        why: expect.stringContaining('no mapping') as string,
        count: 1,
        examples: ['feature 5'],
      },
    ]);
    const course = courseOf(mustApply(proposal).document);
    expect(course.ok && course.value.holes.map(({ number }) => number)).toEqual([3]);
  });

  it('win over tags of the file, and a kind drawn otherwise is left out', () => {
    const mappings: KindMapping[] = [{ property: 'n', value: '1', kind: 'bunker' }];
    const proposal = mustPropose(
      readGeojson(
        text(area({ golf: 'green', n: 1 }, square(0, 0, 9)), point({ n: '1' }, at(0, 0))),
        EMPTY_CONTEXT,
        { mappings },
      ),
    );
    expect(proposal.features[0]!.properties).toMatchObject({ golf: 'bunker' });
    expect(proposal.leftOut[0]).toMatchObject({ what: 'bunker', examples: ['feature 1'] });
  });

  it('words mean kinds that the geometry allows', () => {
    expect(kindOfWord('TEE', ['Polygon'])).toBe('tee');
    expect(kindOfWord('Tee', ['Point'])).toBe('tee-marker');
    expect(kindOfWord('woodland', ['Polygon'])).toBe('woods');
    expect(kindOfWord('trees', ['Polygon'])).toBe('woods');
    expect(kindOfWord('Out of bounds', ['Polygon'])).toBe('out-of-bounds');
    expect(kindOfWord('light rough', ['Polygon'])).toBe('rough');
    expect(kindOfWord('Deep rough', ['MultiPolygon'])).toBe('long-rough');
    expect(kindOfWord('water hazard', ['Polygon'])).toBe('penalty-red');
    expect(kindOfWord('cart path', ['LineString', 'Polygon'])).toBe('path');
    expect(kindOfWord('green', ['LineString'])).toBeUndefined();
    expect(kindOfWord('steep bank', ['Polygon'])).toBeUndefined();
    expect(kindOfWord('', ['Polygon'])).toBeUndefined();
  });
});

describe('a file', () => {
  it('with our tags comes in without any mapping', () => {
    const proposal = mustPropose(
      readGeojson(JSON.stringify(collection(...plainHole(1, 0), ...plainHole(2, 400))), EMPTY_CONTEXT),
    );
    expect(countsOf(proposal)).toEqual({ hole: 2, tee: 2, green: 2 });
    expect(proposal.leftOut).toEqual([]);
  });

  it('may be one feature or a bare geometry', () => {
    const one = area({ golf: 'green' }, square(0, 0, 9));
    expect(countsOf(mustPropose(readGeojson(JSON.stringify(one), EMPTY_CONTEXT)))).toEqual({ green: 1 });
    const bare = mustPropose(readGeojson(JSON.stringify(one.geometry), EMPTY_CONTEXT));
    expect(bare.leftOut[0]!.why).toContain('no mapping');
  });

  it('has its collections of geometries taken apart', () => {
    const proposal = mustPropose(
      readGeojson(
        text(
          {
            type: 'Feature',
            properties: { natural: 'tree' },
            geometry: { type: 'MultiPoint', coordinates: [at(0, 0), at(9, 9)] },
          },
          {
            type: 'Feature',
            properties: { golf: 'cartpath' },
            geometry: {
              type: 'GeometryCollection',
              geometries: [
                {
                  type: 'MultiLineString',
                  coordinates: [
                    [at(0, 0), at(9, 9)],
                    [at(5, 0), at(9, 2)],
                  ],
                },
              ],
            },
          },
        ),
        EMPTY_CONTEXT,
      ),
    );
    expect(countsOf(proposal)).toEqual({ tree: 2, path: 2 });
  });

  it('in other coordinates is refused, by name where it names them', () => {
    const utm = area({ golf: 'green' }, [
      [500_000, 4_400_000],
      [500_020, 4_400_000],
      [500_020, 4_400_020],
      [500_000, 4_400_000],
    ]);
    expect(mustFault(readGeojson(text(utm), EMPTY_CONTEXT))).toMatchObject({
      code: 'not-wgs84',
      message: expect.stringContaining('feature 0') as string,
    });
    const named = JSON.stringify({
      type: 'FeatureCollection',
      crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::25832' } },
      features: [],
    });
    expect(mustFault(readGeojson(named, EMPTY_CONTEXT)).message).toContain('EPSG::25832');
    for (const name of ['urn:ogc:def:crs:OGC:1.3:CRS84', 'EPSG:4326', 'urn:ogc:def:crs:EPSG::4326']) {
      expect(
        readGeojson(
          JSON.stringify({ type: 'FeatureCollection', crs: { properties: { name } }, features: [] }),
          EMPTY_CONTEXT,
        ).ok,
      ).toBe(true);
    }
  });

  it('has features left out one by one, with what is wrong', () => {
    const proposal = mustPropose(
      readGeojson(
        text(
          area({ golf: 'green' }, square(0, 0, 9)),
          { type: 'Feature', properties: { golf: 'green' }, geometry: null },
          area({ golf: 'green' }, [at(0, 0), at(1, 1)]),
          area({ golf: 'green' }, [at(0, 0), at(0, 0), at(1, 1), at(0, 0)]),
          point({ golf: 'hole' }, at(0, 0)),
          point({ holewright_kind: 'ground_level', ele: 'high' }, at(0, 0)),
          'feature',
        ),
        EMPTY_CONTEXT,
      ),
    );
    expect(proposal.features).toHaveLength(1);
    expect(proposal.leftOut.map(({ what, count }) => [what, count])).toEqual([
      ['green', 1],
      ['green', 1],
      ['hole line', 1],
      ['feature', 1],
      ['green', 1],
      ['ground level', 1],
    ]);
  });

  it.each([
    '',
    '{',
    '[]',
    '5',
    'null',
    '{"type":"FeatureCollection"}',
    '{"type":"Topology"}',
    '['.repeat(5000),
  ])('that is none is refused: %s', (broken) => {
    expect(readGeojson(broken.slice(0, 5000), EMPTY_CONTEXT).ok).toBe(false);
    expect(suggestMappings(broken).ok).toBe(false);
  });

  it('of any JSON gives an answer, and what it gives can be read', () => {
    fc.assert(
      fc.property(fc.array(fc.jsonValue({ maxDepth: 4 }), { maxLength: 5 }), (values) => {
        const wild = text(
          ...values.map((value, i) =>
            i % 2 === 0 ? value : area({ golf: 'green', x: value, ref: value, name: value }, square(i, 0, 1)),
          ),
        );
        const result = readGeojson(wild, EMPTY_CONTEXT);
        if (!result.ok || result.value.features.length === 0) return;
        const course = courseOf(mustApply(result.value).document);
        expect(course.ok && course.value.warnings.filter(({ severity }) => severity === 'error')).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
