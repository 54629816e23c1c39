/**
 * A course is the same wherever its longitudes lie: turned round the earth's axis, across the 180° meridian too, nothing of
 * it changes. GeoJSON keeps longitudes within 180° (RFC 7946, 4; 3.1.9 speaks of that meridian).
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCourse } from '../../core/course/check.ts';
import { completenessOf } from '../../core/course/completeness.ts';
import { openDocument } from '../../core/course/document.ts';
import { polylineLengthM } from '../../core/course/ellipsoid.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { Course } from '../../core/course/model.ts';
import { distanceToLineM } from '../../core/course/nearness.ts';
import { isPlace } from '../../core/course/positions.ts';
import { rasteriseHole } from '../../core/ground/rasterise.ts';
import { area, collection, line, mustParse, point, type TestFeature } from '../course/builders.ts';

/** Oblique shapes: no edge runs through the middle of a row of cells. Degrees from the middle, east and north. */
const FEATURES: readonly TestFeature[] = [
  line({ golf: 'hole', ref: '1', par: '4' }, [-0.00143, 51.9987], [0.00017, 52.0001], [0.00101, 52.00093]),
  area({ golf: 'tee', ref: '1' }, ring([-0.00143, 51.9987], 0.00009)),
  area({ golf: 'green', ref: '1' }, ring([0.00101, 52.00093], 0.00021)),
  area({ golf: 'fairway' }, ring([0.00007, 52.00003], 0.00061), ring([-0.00013, 52.00013], 0.00011)),
  area({ golf: 'bunker' }, ring([0.00061, 52.00071], 0.00013)),
  area({ natural: 'wood', height: '14', ref: '1' }, ring([-0.00071, 51.99961], 0.00037)),
  area({ holewright_kind: 'boundary' }, ring([0.00003, 52.00007], 0.0027)),
  line({ golf: 'cartpath' }, [-0.00161, 51.99911], [-0.00003, 52.00051], [0.00093, 52.00117]),
  point({ natural: 'tree', height: '12', diameter_crown: '9' }, [0.00047, 52.00029]),
  point({ holewright_kind: 'ground_level', ele: '31' }, [-0.00091, 51.99931]),
  point({ holewright_kind: 'ground_level', ele: '27' }, [0.00083, 52.00081]),
  point({ holewright_kind: 'ground_level', ele: '25' }, [0.00031, 51.99957]),
];

/** An uneven ring around a place, counter-clockwise. */
function ring([lon, lat]: readonly [number, number], half: number): [number, number][] {
  const corners = Array.from({ length: 7 }, (_, k): [number, number] => {
    const turn = (2 * Math.PI * k) / 7 + 0.3;
    const far = half * (1 + 0.17 * Math.sin(5 * k + 1));
    return [lon + 1.6 * far * Math.cos(turn), lat + far * Math.sin(turn)];
  });
  return [...corners, corners[0]!];
}

/** The course with its middle at a longitude, every longitude brought into [-180, 180). */
function at(middle: number): ReturnType<typeof collection> {
  const turned = (value: unknown): unknown => {
    if (!Array.isArray(value)) return value;
    const [lon, lat] = value as unknown[];
    if (typeof lon !== 'number') return value.map(turned);
    const east = lon + middle + 180;
    return [east - 360 * Math.floor(east / 360) - 180, lat];
  };
  return collection(
    ...FEATURES.map((feature) => ({
      ...feature,
      geometry: { ...feature.geometry, coordinates: turned(feature.geometry!.coordinates) },
    })),
  );
}

function groundOf(course: Course) {
  const [hole] = course.holes;
  return rasteriseHole(course, hole!, makeLocalFrame(hole!.line[1]!));
}

const HOME = mustParse(at(4.25));
const HOME_GROUND = groundOf(HOME);

function expectAlike(course: Course): void {
  const ground = groundOf(course);
  const { columns, rows, west, south } = HOME_GROUND;
  expect(ground).toMatchObject({ columns, rows, west, south });
  const differs = ground.lie.findIndex((lie, i) => lie !== HOME_GROUND.lie[i]);
  expect(differs).toBe(-1);
  for (const layer of ['canopyTop', 'canopyBase', 'elevation'] as const) {
    const before = HOME_GROUND[layer]!;
    expect(ground[layer]!.findIndex((value, i) => Math.abs(value - before[i]!) > 1e-4)).toBe(-1);
  }
  expect(ground.trunks).toHaveLength(HOME_GROUND.trunks.length);
  expect(ground.ownFairways).toHaveLength(HOME_GROUND.ownFairways.length);
  // degrees keep 14 digits: a shift of all longitudes rounds each by some nanometres
  const lengths = ({ holes: [hole] }: Course) => [
    polylineLengthM(hole!.line),
    polylineLengthM([hole!.tees[0]!.at, hole!.positions[0]!.at]),
  ];
  lengths(HOME).forEach((length, i) => expect(lengths(course)[i]).toBeCloseTo(length, 5));
  const codes = (of: Course) => checkCourse(of).map(({ code, where }) => `${code} ${where}`);
  expect(codes(course)).toEqual(codes(HOME));
}

describe('a course moved along its parallel', () => {
  it.each([180, -180, 179.9999, -179.9991, 180.0007, 90, -4.25])('is the same at %d°', (middle) => {
    expectAlike(mustParse(at(middle)));
  });

  it('is the same anywhere, most of all around the 180° meridian', () => {
    const anywhere = fc.oneof(
      fc.double({ min: -180, max: 180, noNaN: true }),
      fc.double({ min: 179.997, max: 180.003, noNaN: true }),
    );
    fc.assert(
      fc.property(anywhere, (middle) => expectAlike(mustParse(at(middle)))),
      { numRuns: 25 },
    );
  });

  it('is asked for what it lacks at places that a file may keep', () => {
    const opened = openDocument(at(179.9995));
    if (!opened.ok) throw new Error(opened.error[0]!.message);
    const { holes } = completenessOf(opened.value.document);
    const places = holes[0]!.missing.flatMap(({ fix }) =>
      fix?.how === 'add' && fix.feature.geometry.type === 'Point' ? [fix.feature.geometry.coordinates] : [],
    );
    expect(places).toHaveLength(2);
    for (const place of places) {
      expect(isPlace(place)).toBe(true);
      expect(Math.abs(place[0])).toBeGreaterThan(179.99);
    }
  });

  it('has a bunker as near to its line on either side of the meridian', () => {
    const nearness = (middle: number) => {
      const bunker = at(middle).features[4] as TestFeature;
      return distanceToLineM(bunker.geometry as never, mustParse(at(middle)).holes[0]!.line);
    };
    for (const middle of [179.9988, 179.9992, 179.9995, 180, -179.9993])
      expect(nearness(middle)).toBeCloseTo(nearness(4.25), 4);
  });
});
