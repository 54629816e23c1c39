/** GPX: waypoints by their names, tracks round areas, routes as lines. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { courseOf } from '../../../core/course/document.ts';
import { readGpx } from '../../../core/course/import/gpx.ts';
import { EMPTY_CONTEXT } from '../../../core/course/import/proposal.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import { countsOf, fixture, mustApply, mustFault, mustPropose, whyLeftOut } from './import-builders.ts';

const walk = fixture('invented-walk.gpx');
const gpx = (inside: string) => `<gpx version="1.1">${inside}</gpx>`;
const waypoint = (name: string) => `<wpt lat="40" lon="-30"><name>${name}</name></wpt>`;

describe('a walk', () => {
  it('becomes markers, a line and areas', () => {
    const proposal = mustPropose(readGpx(walk, EMPTY_CONTEXT, { trackKind: 'bunker' }));
    expect(countsOf(proposal)).toEqual({ 'tee-marker': 2, 'hole-position': 1, hole: 1, green: 1, bunker: 1 });
    const course = courseOf(mustApply(proposal).document);
    if (!course.ok) throw new Error('unreadable');
    const [hole] = course.value.holes;
    expect(hole!.number).toBe(3);
    expect(hole!.tees.map(({ name }) => name)).toEqual(['white', '<forward>']);
    expect(hole!.line).toHaveLength(3);
    const green = course.value.areas.find(({ kind }) => kind === 'green')!;
    expect(green.hole).toBe(3);
    // the point walked twice is one corner, and the ring is closed
    expect(green.rings[0]).toHaveLength(6);
    expect(proposal.notes.join()).toContain('1 points without a readable lat and lon');
  });

  it('says what it could not use', () => {
    const proposal = mustPropose(readGpx(walk, EMPTY_CONTEXT));
    expect(whyLeftOut(proposal, 'waypoint "bench"')).toContain('neither tee nor hole position');
    expect(whyLeftOut(proposal, 'track "Track 01"')).toContain('choose what it goes round');
    expect(whyLeftOut(proposal, 'track "bunker 3 not finished"')).toContain('does not come back');
  });

  it('takes a kind chosen for one track before what its name says', () => {
    const kindsByName = new Map<string, FeatureKind>([
      ['Green 3', 'bunker'],
      ['Track 01', 'tee-marker'],
    ]);
    const proposal = mustPropose(readGpx(walk, EMPTY_CONTEXT, { kindsByName }));
    expect(countsOf(proposal)).toMatchObject({ bunker: 1 });
    expect(whyLeftOut(proposal, 'track "Track 01"')).toContain('mark it as a waypoint');
  });
});

it.each([
  ['3 tee white', 'tee-marker', '3', 'white'],
  ['Tee 12', 'tee-marker', '12', undefined],
  ['hole 7 pin', 'hole-position', '7', undefined],
  ['Flag no. 9 front', 'hole-position', '9', 'front'],
  ['tee 3 of 18', undefined, undefined, undefined],
  ['steel post 4', undefined, undefined, undefined],
])('a waypoint called %j', (name, kind, ref, label) => {
  const proposal = mustPropose(readGpx(gpx(waypoint(name)), EMPTY_CONTEXT));
  const feature = proposal.features[0];
  expect(feature?.kind).toBe(kind);
  expect(feature?.properties['ref']).toBe(ref);
  expect(feature?.properties['name']).toBe(label);
});

describe('files that are none, or mean harm', () => {
  it.each([
    ['', 'not-xml'],
    ['plain text', 'not-xml'],
    ['<osm></osm>', 'not-gpx'],
    ['<gpx><wpt lat="1"', 'not-xml'],
    ['<!DOCTYPE gpx [<!ENTITY a "b">]><gpx/>', 'xml-doctype'],
    [`<gpx>${'<extensions>'.repeat(100)}`, 'xml-too-deep'],
  ])('%j is refused', (text, code) => {
    expect(mustFault(readGpx(text, EMPTY_CONTEXT)).code).toBe(code);
  });

  it('any text gives an answer', () => {
    const piece = fc.constantFrom(
      '<wpt lat="40" lon="-30">',
      '</wpt>',
      '<name>3 tee</name>',
      '<trk>',
      '</trk>',
      '<trkseg>',
      '</trkseg>',
      '<trkpt lat="40" lon="-30"/>',
      '<rte/>',
      'x',
      '<x:rtept lat="1e3" lon=""/>',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
        const result = readGpx(gpx(pieces.join('')), EMPTY_CONTEXT, { trackKind: 'green' });
        if (!result.ok || result.value.features.length === 0) return;
        expect(courseOf(mustApply(result.value).document).ok).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});
