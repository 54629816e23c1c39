/** OpenStreetMap files, XML and JSON: what comes in as what, what is left out and why, and nothing hangs. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { courseOf, serialise } from '../../../core/course/document.ts';
import { checkCourse } from '../../../core/course/check.ts';
import { polygonsOfGeometry } from '../../../core/course/edits/shape.ts';
import { areaM2, distanceM } from '../../../core/course/ellipsoid.ts';
import { OSM_SOURCE, readOsm } from '../../../core/course/import/osm.ts';
import { contextOf, EMPTY_CONTEXT } from '../../../core/course/import/proposal.ts';
import type { LonLat, Rings } from '../../../core/course/model.ts';
import type { Geometry } from '../../../core/course/schema.ts';
import { undo, record, startHistory } from '../../../core/course/history.ts';
import {
  byOrigin,
  countsOf,
  fixture,
  mustApply,
  mustFault,
  mustPropose,
  whyLeftOut,
} from './import-builders.ts';

const links = fixture('invented-links.osm');
const proposal = mustPropose(readOsm(links, EMPTY_CONTEXT));

describe('an extract of a course', () => {
  it('gives features of every kind it draws', () => {
    expect(countsOf(proposal)).toEqual({
      boundary: 1,
      hole: 2,
      tee: 2,
      green: 2,
      fairway: 1,
      bunker: 3,
      'penalty-red': 3,
      woods: 3,
      tree: 2 + 8,
      path: 1,
      'hole-position': 1,
      'tee-marker': 1,
    });
    expect(proposal.courseName).toBe('Invented Links & Downs');
    expect(proposal.sources).toEqual([OSM_SOURCE]);
  });

  it('becomes a course that can be read, with the licence named', () => {
    const { document } = mustApply(proposal);
    const course = courseOf(document);
    if (!course.ok) throw new Error(JSON.stringify(course.error));
    expect(course.value.name).toBe('Invented Links & Downs');
    expect(
      course.value.holes.map(({ number, par, strokeIndex, name }) => [number, par, strokeIndex, name]),
    ).toEqual([
      [1, 4, 7, 'Gorse'],
      [2, 3, undefined, undefined],
    ]);
    expect(document.holewright['sources']).toEqual([OSM_SOURCE]);
    const errors = checkCourse(course.value).filter(({ severity }) => severity === 'error');
    expect(errors).toEqual([]);
  });

  it('puts features to holes by ref, else by nearness, and says which are as near to two', () => {
    const holeOf = (origin: string) => byOrigin(proposal, origin)!.properties['ref'];
    expect(holeOf('way/103')).toBe('1');
    expect(holeOf('way/104')).toBe('2');
    expect(holeOf('way/105')).toBe('1');
    // "2;11" names no single hole: the line that ends there does
    expect(holeOf('way/106')).toBe('2');
    expect(holeOf('way/107')).toBe('1');
    expect(holeOf('way/108')).toBe('1');
    expect(byOrigin(proposal, 'node/' + nodeIdOf('Forward'))!.properties).toMatchObject({
      ref: '2',
      name: 'Forward',
    });
    const middle = proposal.features.findIndex(({ origin }) => origin === 'way/109');
    expect(proposal.unassigned).toMatchObject([
      { feature: middle, why: expect.stringContaining('no hole is near') as string },
    ]);
    const green = proposal.assigned.find(({ feature }) => proposal.features[feature]!.origin === 'way/105');
    expect(green).toMatchObject({ hole: 1, by: 'nearness', distanceM: 0 });
  });

  it('reads heights with units and leaf tags, leaves out what is no length, and gives scrub its own', () => {
    expect(byOrigin(proposal, 'way/119')!.properties).toMatchObject({
      natural: 'wood',
      height: 2,
      canopy_base_m: 0,
    });
    expect(byOrigin(proposal, 'relation/901')!.properties).toMatchObject({
      natural: 'wood',
      height: 17,
      leaf_type: 'mixed',
    });
    const trees = proposal.features.filter(
      ({ kind, origin }) => kind === 'tree' && origin.startsWith('node'),
    );
    // 39 ft 4 in is 11.99 m
    expect(trees[0]!.properties).toMatchObject({ height: 11.99, diameter_crown: 6 });
    expect(trees[0]!.properties).toMatchObject({ leaf_type: 'needleleaved', leaf_cycle: 'deciduous' });
    expect(trees[1]!.properties).not.toHaveProperty('height');
    expect(trees[1]!.properties).not.toHaveProperty('leaf_type');
  });

  it('sets a row of trees crown to crown', () => {
    const row = proposal.features.filter(({ origin }) => origin === 'way/118');
    const places = row.map(({ geometry }) => geometry.coordinates as unknown as LonLat);
    expect(row).toHaveLength(8);
    for (let i = 1; i < 8; i++) expect(distanceM(places[i - 1]!, places[i]!)).toBeCloseTo(8, 1);
    expect(row[0]!.properties).toMatchObject({ natural: 'tree', height: 9 });
  });

  it('widens running water to its width', () => {
    // way/115 is tagged 3 m wide, way/116 not at all
    for (const [origin, widthM] of [
      ['way/115', 3],
      ['way/116', 2],
    ] as const) {
      const { geometry, properties } = byOrigin(proposal, origin)!;
      expect(properties['golf']).toBe('lateral_water_hazard');
      const area = polygonsOfGeometry(geometry).reduce((sum, rings) => sum + areaM2(rings), 0);
      const lengthM = origin === 'way/115' ? 256.3 : 44.4;
      // round ends are a circle of that width
      expect(area / (lengthM * widthM + (Math.PI * widthM ** 2) / 4)).toBeCloseTo(1, 1.5);
    }
  });

  it.each([
    ['way/122', 'barrier=fence', 'fences'],
    ['way/123', 'building', 'buildings'],
    ['way/125', 'highway=residential', 'roads'],
    ['way/121', 'natural=heath', 'natural feature'],
    ['way/117', 'waterway=stream', 'under ground'],
    ['way/127', 'golf=fairway', 'not closed'],
    ['way/128', 'golf=bunker', 'not all of its points'],
    ['relation/902', 'natural=wood', 'not all of its outline'],
  ])('leaves out %s and says why', (element, what, why) => {
    expect(whyLeftOut(proposal, element)).toContain(what);
    expect(whyLeftOut(proposal, element)).toContain(why);
  });

  it('counts alike things once', () => {
    expect(proposal.leftOut.find(({ what }) => what === 'building')).toMatchObject({
      count: 2,
      examples: ['way/123', 'way/124'],
    });
    expect(proposal.leftOut.find(({ what }) => what === 'amenity')).toMatchObject({ count: 1 });
    expect(proposal.leftOut.find(({ what }) => what === 'hole position')!.why).toContain('no hole is near');
  });

  it('says what it took for what', () => {
    const notes = proposal.notes.join('\n');
    expect(notes).toContain('natural=water is taken as a red penalty area');
    expect(notes).toContain('1 hole lines without a number were given 2');
    expect(notes).toContain('waterway=ditch without a width is taken as 2 m wide');
  });

  it('passes over what an editor has deleted', () => {
    expect(
      proposal.features.filter(({ kind, origin }) => kind === 'tree' && origin.startsWith('node/')),
    ).toHaveLength(2);
  });
});

function nodeIdOf(name: string): string {
  return new RegExp(`<node id="(\\d+)"[^>]*>(?:(?!</node>)[\\s\\S])*v="${name}"`).exec(links)![1]!;
}

describe('outlines', () => {
  interface Outline {
    readonly id: string;
    readonly tainted: boolean;
    readonly geometry: Geometry;
  }
  // see the file: outlines by an independent library
  const { outlines } = JSON.parse(fixture('invented-links.outlines.json')) as { outlines: Outline[] };

  /** A ring as a set of places, whatever its direction and start. */
  const places = (rings: Rings) =>
    rings.map((ring) => new Set(ring.map(([lon, lat]) => `${lon.toFixed(7)} ${lat.toFixed(7)}`)));

  it('are those that an independent library gives', () => {
    let compared = 0;
    for (const { id, tainted, geometry } of outlines) {
      // the library calls a relation with its tags on one outline by that way
      const ours = byOrigin(proposal, id === 'way/113' ? 'relation/901' : id);
      if (ours === undefined || tainted || ours.geometry.type !== geometry.type) continue;
      compared++;
      if (geometry.type === 'LineString') expect(ours.geometry.coordinates).toEqual(geometry.coordinates);
      else {
        expect(polygonsOfGeometry(ours.geometry).map(places)).toEqual(
          polygonsOfGeometry(geometry).map(places),
        );
      }
    }
    expect(compared).toBe(16);
    const pond = byOrigin(proposal, 'relation/900')!;
    expect((pond.geometry.coordinates as unknown[]).length).toBe(2);
  });

  const way = (id: number, points: readonly (readonly [number, number])[], tags: object = {}) => ({
    type: 'way',
    id,
    geometry: points.map(([x, y]) => ({ lon: -30 + x / 1000, lat: 40 + y / 1000 })),
    tags,
  });
  const relation = (members: unknown[], tags: object = { type: 'multipolygon', natural: 'wood' }) => ({
    type: 'relation',
    id: 1,
    members,
    tags,
  });
  const member = (ref: number, role: string) => ({ type: 'way', ref, role });
  const read = (...elements: unknown[]) =>
    mustPropose(readOsm(JSON.stringify({ version: 0.6, elements }), EMPTY_CONTEXT));

  it('join however the ways are cut, turned and shuffled', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat(9), { minLength: 1, maxLength: 5 }),
        fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
        fc.integer(),
        (cuts, turned, shuffle) => {
          const round = Array.from({ length: 11 }, (_, i): [number, number] => [
            Math.cos((i % 10) * 0.628),
            Math.sin((i % 10) * 0.628),
          ]);
          const stops = [...cuts].sort((a, b) => a - b);
          const pieces = stops.map((from, index) => {
            const to = stops[index + 1] ?? stops[0]! + 10;
            const piece = Array.from({ length: to - from + 1 }, (_, i) => round[(from + i) % 10]!);
            return turned[index] ? piece.reverse() : piece;
          });
          const order = pieces
            .map((_, i) => i)
            .sort((a, b) => ((a * 7 + shuffle) % 5) - ((b * 7 + shuffle) % 5));
          const result = read(
            ...pieces.map((piece, i) => way(i, piece)),
            relation(order.map((i) => member(i, 'outer'))),
          );
          expect(result.leftOut).toEqual([]);
          const [ring] = polygonsOfGeometry(result.features[0]!.geometry)[0]!;
          expect(ring).toHaveLength(11);
          expect(new Set(ring!.map(String)).size).toBe(10);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('of several parts keep their holes apart', () => {
    const square = (x: number, half: number): [number, number][] => [
      [x - half, -half],
      [x + half, -half],
      [x + half, half],
      [x - half, half],
      [x - half, -half],
    ];
    const result = read(
      way(1, square(0, 3)),
      way(2, square(10, 3)),
      way(3, square(10, 1)),
      way(4, square(30, 1)),
      relation([member(1, 'outer'), member(2, ''), member(3, 'inner'), member(4, 'inner')]),
    );
    const geometry = result.features[0]!.geometry;
    expect(geometry.type).toBe('MultiPolygon');
    expect(polygonsOfGeometry(geometry).map((rings) => rings.length)).toEqual([1, 2]);
    expect(result.notes.join()).toContain('inner outlines that lie in no outer one');
  });

  it('with a gap say where, and members may bring their own places', () => {
    const open = read(
      way(1, [
        [0, 0],
        [1, 0],
        [1, 1],
      ]),
      relation([member(1, 'outer')]),
    );
    expect(open.leftOut[0]!.why).toContain('gap near 40.00100, -29.99900');
    const geometry = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 0],
    ].map(([x, y]) => ({ lon: -30 + x! / 1000, lat: 40 + y! / 1000 }));
    const own = read(relation([{ ...member(5, 'outer'), geometry }]));
    expect(own.features).toHaveLength(1);
  });

  it('tagged twice, on the relation and on its outline, come in once', () => {
    const ring = way(
      1,
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 0],
      ],
      { natural: 'wood' },
    );
    expect(read(ring, relation([member(1, 'outer')])).features).toHaveLength(1);
  });
});

describe('doing it again', () => {
  it('brings in nothing that came from there before', () => {
    const { document } = mustApply(proposal);
    const again = mustPropose(readOsm(links, contextOf(document)));
    expect(again.features).toEqual([]);
    expect(
      again.leftOut.filter(({ why }) => why.includes('already')).reduce((sum, { count }) => sum + count, 0),
    ).toBe(proposal.features.length);
  });

  it('is one step that can be undone', () => {
    const { document } = mustApply(proposal);
    const start = startHistory(document);
    const more = mustPropose(
      readOsm(
        JSON.stringify({ elements: [{ type: 'node', id: 1, lat: 40, lon: -30, tags: { natural: 'tree' } }] }),
        contextOf(document),
      ),
    );
    const history = record(start, mustApply(more, document));
    expect(history.past.map(({ name }) => name)).toEqual(['Import 1 feature from OpenStreetMap']);
    expect(serialise(undo(history).document)).toBe(serialise(document));
  });
});

describe('files that are none, or mean harm', () => {
  it.each([
    ['', 'not-json'],
    ['<', 'not-xml'],
    ['<osm', 'not-xml'],
    ['<osm></os>', 'not-xml'],
    ['<osm><node id="1" lat="1" lon="1"></osm>', 'not-xml'],
    ['<gpx></gpx>', 'not-osm'],
    ['{}', 'not-osm'],
    ['{"elements": 5}', 'not-osm'],
    ['<osm>&undefined;</osm>', 'not-xml'],
  ])('%j is refused', (text, code) => {
    expect(mustFault(readOsm(text, EMPTY_CONTEXT)).code).toBe(code);
  });

  it('a fault in the XML is told with its line', () => {
    const fault = mustFault(readOsm('<osm>\n<node id="1" lat="1" lon="1"/>\n<way>\n</osm>', EMPTY_CONTEXT));
    expect(fault.where).toMatch(/^line 4, column \d+$/);
    expect(fault.message).toContain('OpenStreetMap XML');
  });

  it('entities of the file itself are never expanded', () => {
    const laughs = `<?xml version="1.0"?><!DOCTYPE osm [<!ENTITY a "ha">${'bcdefghijklmnop'
      .split('')
      .map((name, i) => `<!ENTITY ${name} "${`&${'abcdefghijklmno'[i]!};`.repeat(10)}">`)
      .join('')}]><osm><node id="1" lat="1" lon="1"><tag k="name" v="&p;"/></node></osm>`;
    expect(mustFault(readOsm(laughs, EMPTY_CONTEXT)).code).toBe('xml-doctype');
    const outside = '<!DOCTYPE osm SYSTEM "file:///etc/passwd"><osm/>';
    expect(mustFault(readOsm(outside, EMPTY_CONTEXT)).code).toBe('xml-doctype');
  });

  it('depth is bounded', () => {
    expect(mustFault(readOsm(`<osm>${'<a>'.repeat(100_000)}`, EMPTY_CONTEXT)).code).toBe('xml-too-deep');
  });

  it('elements that cannot be read are listed, the others come in', () => {
    const result = mustPropose(
      readOsm(
        JSON.stringify({
          elements: [
            null,
            { type: 'area', id: 1 },
            { type: 'node', id: 2, lat: 95, lon: 0, tags: { natural: 'tree' } },
            { type: 'node', id: 3, lat: 'x', lon: 0 },
            { type: 'way', id: 4, nodes: [1, 2], tags: { golf: 5 } },
            { type: 'way', id: 5, tags: { golf: 'green' } },
            {
              type: 'node',
              id: 6,
              lat: 40,
              lon: -30,
              tags: { natural: 'tree', __proto__: { golf: 'green' } },
            },
            { type: 'node', id: 7, lat: 40, lon: -30, tags: { natural: 'constructor' } },
          ],
        }),
        EMPTY_CONTEXT,
      ),
    );
    expect(result.features.map(({ origin }) => origin)).toEqual(['node/6']);
    expect(result.leftOut.reduce((sum, { count }) => sum + count, 0)).toBe(7);
  });

  it('whatever the tags and places, the course can be read afterwards', () => {
    const word = fc.constantFrom(
      'tee',
      'fairway',
      'green',
      'bunker',
      'hole',
      'pin',
      'water',
      'wood',
      'tree',
      'tree_row',
      'sand',
      'scrub',
      'stream',
      'cartpath',
      'golf_course',
      'yes',
      '',
      '7',
      '0',
      '1;2',
      '-3',
      '1e9',
      '12 m',
    );
    const key = fc.constantFrom(
      'golf',
      'natural',
      'waterway',
      'landuse',
      'leisure',
      'highway',
      'golf_cart',
      'ref',
      'par',
      'handicap',
      'name',
      'height',
      'width',
      'diameter_crown',
      'type',
      'area',
    );
    const tags = fc.dictionary(key, word, { maxKeys: 4 });
    const place = fc.tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -3, max: 3 }));
    const id = fc.nat(8);
    const element = fc.oneof(
      fc.record({
        type: fc.constant('node'),
        id,
        lat: fc.constantFrom(40, 40.001, 40.002),
        lon: fc.constantFrom(-30, -30.001, -30.002),
        tags,
      }),
      fc.record({ type: fc.constant('way'), id, nodes: fc.array(id, { maxLength: 6 }), tags }),
      fc.record({
        type: fc.constant('way'),
        id,
        geometry: fc
          .array(
            place.map(([x, y]) => ({ lat: 40 + y / 1000, lon: -30 + x / 1000 })),
            { maxLength: 7 },
          )
          .map((points) => [...points, ...points.slice(0, 1)]),
        tags,
      }),
      fc.record({
        type: fc.constant('relation'),
        id,
        members: fc.array(
          fc.record({
            type: fc.constantFrom('way', 'node', 'relation'),
            ref: id,
            role: fc.constantFrom('outer', 'inner', ''),
          }),
          { maxLength: 4 },
        ),
        tags: tags.map((own) => ({ ...own, type: 'multipolygon' })),
      }),
    );
    let features = 0;
    fc.assert(
      fc.property(fc.array(element, { minLength: 5, maxLength: 30 }), (elements) => {
        const result = mustPropose(readOsm(JSON.stringify({ elements }), EMPTY_CONTEXT));
        features += result.features.length;
        if (result.features.length === 0) return;
        const { document } = mustApply(result);
        const course = courseOf(document);
        expect(course.ok && course.value.warnings.filter(({ severity }) => severity === 'error')).toEqual([]);
      }),
      { numRuns: 150, seed: 11 },
    );
    expect(features).toBeGreaterThan(200);
  });

  it('any text gives an answer', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string().map((text) => `<osm>${text}`),
          fc.json(),
        ),
        (text) => {
          const result = readOsm(text, EMPTY_CONTEXT);
          if (!result.ok) expect(result.error.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});
