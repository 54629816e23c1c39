import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../core/course/local-frame.ts';

const latitude = fc.double({ min: -89, max: 89, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });
const metres = fc.double({ min: -5000, max: 5000, noNaN: true });

describe('local frame', () => {
  it('puts its origin at (0, 0)', () => {
    const frame = makeLocalFrame([-3.2, 56.1]);
    const spot = frame.toSpot(frame.origin);
    expect(Math.hypot(spot.x, spot.y)).toBeLessThan(1e-9);
  });

  it('has x towards the east and y towards the north', () => {
    const frame = makeLocalFrame([10, 50]);
    const east = frame.toSpot([10.001, 50]);
    const north = frame.toSpot([10, 50.001]);
    expect(east.x).toBeGreaterThan(70);
    expect(Math.abs(east.y)).toBeLessThan(0.01);
    expect(north.y).toBeGreaterThan(110);
    expect(Math.abs(north.x)).toBeLessThan(1e-6);
  });

  it('comes back to the same spot to a micrometre', () => {
    fc.assert(
      fc.property(longitude, latitude, metres, metres, (lon, lat, x, y) => {
        const frame = makeLocalFrame([lon, lat]);
        const back = frame.toSpot(frame.toLonLat({ x, y }));
        // 6.4e6 m carries 1e-9 m per rounding; a micrometre leaves room
        expect(Math.hypot(back.x - x, back.y - y)).toBeLessThan(1e-6);
      }),
      { numRuns: 500 },
    );
  });

  it('comes back to the same spot from a thousand kilometres too: the inverse is exact', () => {
    fc.assert(
      fc.property(longitude, latitude, metres, metres, (lon, lat, x, y) => {
        const frame = makeLocalFrame([lon, lat]);
        const far = { x: x * 200, y: y * 200 };
        const back = frame.toSpot(frame.toLonLat(far));
        expect(Math.hypot(back.x - far.x, back.y - far.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('says so when a spot lies beyond the earth', () => {
    expect(() => makeLocalFrame([0, 0]).toLonLat({ x: 7e6, y: 0 })).toThrow(/no point of the ellipsoid/);
  });

  it('refuses an origin that is no place', () => {
    expect(() => makeLocalFrame([0, 91])).toThrow(/latitude 91/);
    expect(() => makeLocalFrame([Number.NaN, 0])).toThrow(/longitude NaN/);
  });
});
