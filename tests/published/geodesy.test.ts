/**
 * Distances and the local frame against published geodesics.
 *
 * - Karney 2013, "Algorithms for geodesics", J. Geodesy 87:43-55, by the reference library geographiclib-geodesic
 *   (accurate to 15 nm), and the test values that ship with that library.
 * - Flinders Peak to Buninyong: the worked example of the Geocentric Datum of Australia Technical Manual (ICSM), as
 *   repeated in the public tests of Geoscience Australia's geodesy package.
 */

import fc from 'fast-check';
import geographiclib from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { areaM2, bearingRad, distanceM, polylineLengthM } from '../../core/course/ellipsoid.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { LonLat } from '../../core/course/model.ts';

const wgs84 = geographiclib.Geodesic.WGS84;
const DEGREE = Math.PI / 180;

const latitude = fc.double({ min: -70, max: 70, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });
const azimuthDeg = fc.double({ min: 0, max: 360, noNaN: true });
const place = fc.tuple(longitude, latitude).map(([lon, lat]): LonLat => [lon, lat]);

function travel(from: LonLat, azimuth: number, metres: number): LonLat {
  const { lat2, lon2 } = wgs84.Direct(from[1], from[0], azimuth, metres);
  return [lon2!, lat2!];
}

function karneyM(a: LonLat, b: LonLat): number {
  return wgs84.Inverse(a[1], a[0], b[1], b[0]).s12!;
}

/** 1 mm per km, and a micrometre for the rounding of degrees (1e-14 of 180 is 2 nm on the ground). */
function allowance(metres: number): number {
  return metres * 1e-6 + 1e-6;
}

describe('geodesics', () => {
  it('agree with Karney 2013 to 1 mm per km up to 5 km', () => {
    fc.assert(
      fc.property(place, azimuthDeg, fc.double({ min: 0, max: 5000, noNaN: true }), (a, azimuth, metres) => {
        const b = travel(a, azimuth, metres);
        const truth = karneyM(a, b);
        expect(Math.abs(distanceM(a, b) - truth)).toBeLessThan(allowance(truth));
      }),
      { numRuns: 2000 },
    );
  });

  it('start on the bearing that Karney 2013 gives, to 1 mm at the far end', () => {
    fc.assert(
      fc.property(place, azimuthDeg, fc.double({ min: 1, max: 5000, noNaN: true }), (a, azimuth, metres) => {
        const turn = bearingRad(a, travel(a, azimuth, metres)) - azimuth * DEGREE;
        expect(Math.abs(Math.sin(turn / 2)) * 2 * metres).toBeLessThan(1e-3);
      }),
      { numRuns: 2000 },
    );
  });

  it('give the worked example Flinders Peak to Buninyong', () => {
    const dms = (d: number, m: number, s: number) => d + m / 60 + s / 3600;
    const flindersPeak: LonLat = [dms(144, 25, 29.5244), -dms(37, 57, 3.7203)];
    const buninyong: LonLat = [dms(143, 55, 35.3839), -dms(37, 39, 10.1561)];
    // given on GRS 80, whose flattening differs from WGS 84's in the ninth digit: micrometres over this line.
    // Seconds given to 0.0001 (3 mm) and the distance to the millimetre it follows from.
    expect(distanceM(flindersPeak, buninyong)).toBeCloseTo(54972.271, 2);
    expect(bearingRad(flindersPeak, buninyong) / DEGREE).toBeCloseTo(dms(306, 52, 5.37), 5);
    expect(bearingRad(buninyong, flindersPeak) / DEGREE).toBeCloseTo(dms(127, 10, 25.07), 5);
  });

  // latitude 1, longitude 1, azimuth 1, latitude 2, longitude 2, metres: from the test set of geographiclib-geodesic
  it.each([
    [35.60777, -139.44815, 111.098748429560326, -11.17491, -69.95921, 8935244.5604818305],
    [55.52454, 106.05087, 22.020059880982801, 77.03196, 197.18234, 4105086.1713924406],
    [-21.97856, 142.59065, -32.44456876433189, 41.84138, 98.56635, 8394328.894657671],
    [-66.99028, 112.2363, 173.73491240878403, -12.70631, 285.90344, 11150344.2312080241],
  ])('across oceans from (%d, %d) stay within a millimetre', (lat1, lon1, azimuth, lat2, lon2, metres) => {
    // Vincenty 1975: the series are good to 0.1 mm over any line that settles
    expect(Math.abs(distanceM([lon1, lat1], [lon2, lat2]) - metres)).toBeLessThan(1e-3);
    const turn = bearingRad([lon1, lat1], [lon2, lat2]) - azimuth * DEGREE;
    expect(Math.abs(Math.sin(turn))).toBeLessThan(1e-9);
  });

  it('cross the date line', () => {
    const a: LonLat = [179.999, -17];
    const b: LonLat = [-179.998, -17.002];
    const truth = karneyM(a, b);
    expect(Math.abs(distanceM(a, b) - truth)).toBeLessThan(allowance(truth));
    expect(Math.abs(distanceM(b, a) - truth)).toBeLessThan(allowance(truth));
  });

  it('fall back to a sphere between nearly antipodal places, within 0.6 %', () => {
    const a: LonLat = [0, 0];
    const b: LonLat = [179.7, 0.5];
    expect(Math.abs(distanceM(a, b) / karneyM(a, b) - 1)).toBeLessThan(0.006);
  });

  it('add up along a line', () => {
    const points: LonLat[] = [
      [4, 52],
      [4.001, 52.0007],
      [4.0012, 52.003],
    ];
    const truth = karneyM(points[0]!, points[1]!) + karneyM(points[1]!, points[2]!);
    expect(Math.abs(polylineLengthM(points) - truth)).toBeLessThan(allowance(truth));
  });
});

describe('local frame', () => {
  it('has planar distances equal to geodesics to 1 mm per km within 700 m of its origin', () => {
    const away = fc.double({ min: 0, max: 700, noNaN: true });
    fc.assert(
      fc.property(place, azimuthDeg, away, azimuthDeg, away, (origin, azimuthA, awayA, azimuthB, awayB) => {
        const frame = makeLocalFrame(origin);
        const a = travel(origin, azimuthA, awayA);
        const b = travel(origin, azimuthB, awayB);
        const p = frame.toSpot(a);
        const q = frame.toSpot(b);
        const truth = karneyM(a, b);
        expect(Math.abs(Math.hypot(p.x - q.x, p.y - q.y) - truth)).toBeLessThan(allowance(truth));
      }),
      { numRuns: 2000 },
    );
  });

  it('brings a spot back to the place that Karney 2013 reaches on the same bearing', () => {
    fc.assert(
      fc.property(
        place,
        azimuthDeg,
        fc.double({ min: 0, max: 700, noNaN: true }),
        (origin, azimuth, metres) => {
          const spot = { x: metres * Math.sin(azimuth * DEGREE), y: metres * Math.cos(azimuth * DEGREE) };
          const reached = makeLocalFrame(origin).toLonLat(spot);
          expect(karneyM(reached, travel(origin, azimuth, metres))).toBeLessThan(allowance(metres) * 2);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('areas', () => {
  it('agree with the geodesic polygon area of Karney 2013', () => {
    fc.assert(
      fc.property(
        place,
        fc.array(fc.double({ min: 20, max: 600, noNaN: true }), { minLength: 3, maxLength: 12 }),
        (centre, radii) => {
          const ring = radii.map((radius, i) => travel(centre, (360 * i) / radii.length, radius));
          const polygon = wgs84.Polygon(false);
          for (const [lon, lat] of ring) polygon.AddPoint(lat, lon);
          const truth = Math.abs(polygon.Compute(false, true).area!);
          // the plane shrinks with (s/R)²/2: 2e-8 at 1.2 km; 1e-4 m² for the library's global area sums
          expect(Math.abs(areaM2([[...ring, ring[0]!]]) - truth)).toBeLessThan(truth * 1e-7 + 1e-2);
        },
      ),
      { numRuns: 300 },
    );
  });
});
