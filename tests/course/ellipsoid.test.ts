import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaM2, bearingRad, distanceM, polylineLengthM } from '../../core/course/ellipsoid.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { LonLat } from '../../core/course/model.ts';

const place = fc
  .tuple(fc.double({ min: -180, max: 180, noNaN: true }), fc.double({ min: -90, max: 90, noNaN: true }))
  .map(([lon, lat]): LonLat => [lon, lat]);

describe('measuring on the ellipsoid', () => {
  it('gives the same distance there and back, finite wherever the places are', () => {
    fc.assert(
      fc.property(place, place, (a, b) => {
        const there = distanceM(a, b);
        expect(Number.isFinite(there)).toBe(true);
        expect(Math.abs(there - distanceM(b, a))).toBeLessThan(1e-6 * Math.max(1, there * 1e-6));
      }),
      { numRuns: 2000 },
    );
  });

  it('gives 0 from a place to itself, at the poles and the date line too', () => {
    for (const a of [
      [4, 52],
      [0, 90],
      [180, 0],
      [-180, -90],
      [0, 0],
    ] as LonLat[]) {
      expect(distanceM(a, a)).toBe(0);
      expect(bearingRad(a, a)).toBe(0);
    }
    expect(distanceM([180, 10], [-180, 10])).toBeLessThan(1e-6);
  });

  it('gives bearings from 0 to a full turn, clockwise from north', () => {
    const from: LonLat = [4, 52];
    const bearings = [
      [4, 52.001],
      [4.001, 52],
      [4, 51.999],
      [3.999, 52],
    ] as LonLat[];
    expect(bearings.map((to) => Math.round((bearingRad(from, to) * 180) / Math.PI))).toEqual([
      0, 90, 180, 270,
    ]);
    fc.assert(
      fc.property(place, place, (a, b) => {
        const bearing = bearingRad(a, b);
        expect(bearing >= 0 && bearing < 2 * Math.PI).toBe(true);
      }),
    );
  });

  it('adds nothing for a line of one point or none', () => {
    expect(polylineLengthM([])).toBe(0);
    expect(polylineLengthM([[4, 52]])).toBe(0);
  });

  it('takes the holes off an area, whatever way round the rings run, closed or open', () => {
    const frame = makeLocalFrame([4, 52]);
    const box = (half: number) =>
      [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
        [-1, -1],
      ].map(([x, y]) => frame.toLonLat({ x: x! * half, y: y! * half }));
    // 100 m squares: flat to better than 1e-9
    expect(areaM2([box(50)])).toBeCloseTo(10_000, 4);
    expect(areaM2([box(50), box(10)])).toBeCloseTo(9_600, 4);
    expect(areaM2([box(50).toReversed(), box(10).toReversed().slice(1)])).toBeCloseTo(9_600, 4);
    expect(areaM2([])).toBe(0);
  });
});
