/**
 * What is written is GeoJSON as RFC 7946 (IETF, 2016) has it: by the validator @placemarkio/check-geojson, which reads
 * the text on its own. It does not look at the turn of rings (section 3.1.6), so that is measured by @turf/turf.
 */

import { readFileSync } from 'node:fs';
import { getIssues } from '@placemarkio/check-geojson';
import { booleanClockwise } from '@turf/turf';
import fc from 'fast-check';
import geographiclib from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { type EditableDocument, openDocumentText, serialise } from '../../core/course/document.ts';
import { orderAllRings } from '../../core/course/edits/order-rings.ts';
import { readGeojson } from '../../core/course/import/geojson.ts';
import { readGpx } from '../../core/course/import/gpx.ts';
import { readOsm } from '../../core/course/import/osm.ts';
import { EMPTY_CONTEXT } from '../../core/course/import/proposal.ts';
import { smallCourse } from '../course/edits/edit-builders.ts';
import { randomEdit } from '../course/edits/random-edits.ts';
import { fixture, mustApply, mustPropose } from '../course/import/import-builders.ts';

interface Written {
  readonly features: readonly {
    readonly id?: unknown;
    readonly geometry: { readonly type: string; readonly coordinates: unknown } | null;
  }[];
}

/** Outer rings that turn clockwise and inner ones that do not: none may. */
function wrongTurns({ features }: Written): readonly unknown[] {
  return features.flatMap(({ id, geometry }) => {
    const polygons =
      geometry?.type === 'Polygon'
        ? [geometry.coordinates]
        : geometry?.type === 'MultiPolygon'
          ? (geometry.coordinates as unknown[])
          : [];
    const rings = polygons.flatMap((polygon) =>
      (polygon as [number, number][][]).map((ring, i) => ({ ring, isInner: i > 0 })),
    );
    return rings.some(({ ring, isInner }) => booleanClockwise(ring) !== isInner) ? [id] : [];
  });
}

function faultsOf(document: EditableDocument): readonly unknown[] {
  const text = serialise(document);
  return [...getIssues(text).map(({ message }) => message), ...wrongTurns(JSON.parse(text) as Written)];
}

const wgs84 = geographiclib.Geodesic.WGS84;
const place = fc.tuple(
  fc.double({ min: -179.9, max: 179.9, noNaN: true }),
  fc.double({ min: -80, max: 80, noNaN: true }),
);
/** A lobed ring of some 5 to 200 m round a place anywhere on earth, with all the digits there are. */
const outline = fc
  .tuple(place, fc.array(fc.double({ min: 5, max: 200, noNaN: true }), { minLength: 4, maxLength: 20 }))
  .map(([[lon, lat], radii]) =>
    radii.map((radius, i) => {
      const { lon2, lat2 } = wgs84.Direct(lat, lon, (-360 * i) / radii.length, radius);
      return [lon2!, lat2!] as const;
    }),
  );

describe('a map that comes in and goes out', () => {
  // distances by Karney 2013, library geographiclib-geodesic
  it('has every corner within 1 cm of where it was', () => {
    fc.assert(
      fc.property(outline, (corners) => {
        fc.pre(corners.every(([lon]) => Math.abs(lon) < 180));
        const file = JSON.stringify({
          type: 'FeatureCollection',
          features: [
            {
              type: 'Feature',
              properties: { golf: 'bunker' },
              geometry: { type: 'Polygon', coordinates: [[...corners, corners[0]]] },
            },
          ],
        });
        const { document } = mustApply(mustPropose(readGeojson(file, EMPTY_CONTEXT)));
        const written = JSON.parse(serialise(document)) as Written;
        const [ring] = written.features[0]!.geometry!.coordinates as [number, number][][];
        expect(ring).toHaveLength(corners.length + 1);
        const off = corners.map(([lon, lat]) =>
          Math.min(...ring!.map(([x, y]) => wgs84.Inverse(lat, lon, y, x).s12!)),
        );
        expect(Math.max(...off)).toBeLessThan(0.01);
      }),
      { numRuns: 100, seed: 8 },
    );
  });
});

describe('a course as it is written', () => {
  it('is looked at by a validator that finds faults', () => {
    const open = '{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,1]]]}';
    expect(getIssues(open).length).toBeGreaterThan(0);
    const clockwise = {
      id: 1,
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [0, 0],
            [0, 1],
            [1, 1],
            [0, 0],
          ],
        ],
      },
    };
    expect(wrongTurns({ features: [clockwise] })).toEqual([1]);
  });

  it('conforms for the demo course', () => {
    const opened = openDocumentText(
      readFileSync(new URL('../../maps/demo-course.geojson', import.meta.url), 'utf8'),
    );
    expect(opened.ok && faultsOf(opened.value.document)).toEqual([]);
  });

  it('conforms after any edits', () => {
    fc.assert(
      fc.property(fc.array(randomEdit, { minLength: 1, maxLength: 12 }), (edits) => {
        let document = smallCourse();
        for (const edit of edits) {
          const result = edit(document);
          if (result.ok) document = result.value.document;
        }
        expect(getIssues(serialise(document)).map(({ message }) => message)).toEqual([]);
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it('conforms after an import', () => {
    for (const proposal of [
      readOsm(fixture('invented-links.osm'), EMPTY_CONTEXT),
      readGpx(fixture('invented-walk.gpx'), EMPTY_CONTEXT),
    ])
      expect(faultsOf(mustApply(mustPropose(proposal)).document)).toEqual([]);
  });

  it('turns all rings the right way where it is told to', () => {
    const turned = orderAllRings(smallCourse());
    const document = turned.ok ? turned.value.document : smallCourse();
    expect(wrongTurns(JSON.parse(serialise(document)) as Written)).toEqual([]);
  });
});
