/** Outlines smoothed, simplified and put in order; features moved whole. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { geometryOf } from '../../../core/course/document.ts';
import { moveFeatures } from '../../../core/course/edits/move-features.ts';
import { orderAllRings } from '../../../core/course/edits/order-rings.ts';
import { simplify } from '../../../core/course/edits/simplify.ts';
import { smooth } from '../../../core/course/edits/smooth.ts';
import { distanceM } from '../../../core/course/ellipsoid.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { positionsOf } from '../../../core/course/positions.ts';
import { findCrossing } from '../../../core/course/ring-crossing.ts';
import { area, at, line, square } from '../builders.ts';
import {
  areaOf,
  feature,
  must,
  open,
  refused,
  ringFaults,
  ringsOf,
  smallCourse,
  withId,
} from './edit-builders.ts';

const course = smallCourse();

describe('smoothing', () => {
  it('cuts every corner at a quarter of its sides', () => {
    const { document } = must(smooth(course, ['fairway'], 1));
    const [ring] = ringsOf(document, 'fairway');
    expect(ring).toHaveLength(9);
    expect(ring![0]).toEqual(at(-20, 110));
    expect(ring![1]).toEqual(at(20, 110));
    // each of four corners loses a triangle of half a quarter side squared: 8 of 256 parts
    expect(areaOf(document, 'fairway') / areaOf(course, 'fairway')).toBeCloseTo(1 - 1 / 8, 4);
  });

  it('keeps the ends of a line', () => {
    const { document } = must(smooth(course, ['path'], 3));
    const { coordinates } = geometryOf(feature(document, 'path')) as { coordinates: unknown[] };
    expect([coordinates[0], coordinates.at(-1)]).toEqual([at(50, 0), at(50, 200)]);
  });

  it('keeps any outline free of crossings, or refuses', () => {
    let done = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(100), fc.nat(100)), { minLength: 3, maxLength: 9 }), (spots) => {
        const ring = [...spots, spots[0]!].map(([east, north]) => at(east, north));
        if (findCrossing([ring]) !== undefined || new Set(ring.map(String)).size < 3) return;
        const document = open(withId('a', area({ golf: 'rough' }, ring)));
        const result = smooth(document, ['a'], 2);
        if (!result.ok) return;
        done++;
        expect(findCrossing(ringsOf(result.value.document, 'a') as never)).toBeUndefined();
        expect(ringFaults(result.value.document)).toEqual([]);
      }),
      { numRuns: 200, seed: 2 },
    );
    expect(done).toBeGreaterThan(30);
  });

  it('refuses where an outline would be cut through by its own hole', () => {
    // the hole reaches into a corner that smoothing cuts off
    const corner = open(
      withId(
        'a',
        area({ golf: 'rough' }, square(0, 0, 40), [at(36, 36), at(38, 38), at(38, 36), at(36, 36)]),
      ),
    );
    expect(refused(smooth(corner, ['a'])).reason).toBe('would-cross-itself');
  });

  it('refuses rounds that are none, and a bow tie', () => {
    for (const rounds of [0, 5, 1.5])
      expect(refused(smooth(course, ['fairway'], rounds)).reason).toBe('value-not-accepted');
    const bow = open(
      withId('a', area({ golf: 'rough' }, [at(0, 0), at(9, 9), at(9, 0), at(0, 9), at(0, 0)])),
    );
    expect(refused(smooth(bow, ['a'])).reason).toBe('crosses-itself');
  });
});

describe('simplifying', () => {
  // about 100 m round, with a corner every 3 degrees
  const round = Array.from({ length: 121 }, (_, i) => {
    const angle = (2 * Math.PI * (i % 120)) / 120;
    return [4 + Math.cos(angle) / 1000, 52 + (0.62 * Math.sin(angle)) / 1000];
  });
  const disc = open(withId('disc', area({ golf: 'green' }, round)));

  it('keeps old corners only, fewer the wider the tolerance, none farther off than it says', () => {
    let before = 121;
    for (const toleranceM of [0.2, 1, 5]) {
      const { document } = must(simplify(disc, ['disc'], toleranceM));
      const [ring] = ringsOf(document, 'disc');
      expect(ring!.length).toBeLessThan(before);
      before = ring!.length;
      const old = new Set(ringsOf(disc, 'disc')[0]!.map(String));
      for (const point of ring!) expect(old).toContain(String(point));
      for (const point of ringsOf(disc, 'disc')[0]!) {
        expect(distanceToRingM([point[0], point[1]], ring as never)).toBeLessThan(toleranceM * 1.001);
      }
    }
  });

  it('does not let a small ring vanish', () => {
    const { document } = must(simplify(course, ['bunker', 'pond', 'double'], 900));
    for (const id of ['bunker', 'pond', 'double'])
      expect(ringsOf(document, id)[0]!.length).toBeGreaterThanOrEqual(4);
  });

  it('refuses tolerances that are none', () => {
    for (const tolerance of [0, -1, NaN, 5000])
      expect(refused(simplify(disc, ['disc'], tolerance)).reason).toBe('value-not-accepted');
  });
});

/** The smallest distance to any side, metres, by stepping along it: slow, and of another make than what it checks. */
function distanceToRingM(at: LonLat, ring: readonly LonLat[]): number {
  let least = Infinity;
  for (let i = 1; i < ring.length; i++) {
    const [a, b] = [ring[i - 1]!, ring[i]!];
    for (let step = 0; step <= 100; step++) {
      const share = step / 100;
      least = Math.min(least, distanceM(at, [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]));
    }
  }
  return least;
}

describe('putting rings in order', () => {
  it('turns and closes what needs it and touches nothing else', () => {
    const document = open(
      withId('wrong', area({ golf: 'green' }, square(0, 0, 9).toReversed(), square(0, 0, 3))),
      withId('open', area({ golf: 'green' }, square(30, 0, 9).slice(0, 4))),
      withId('right', area({ golf: 'green' }, square(60, 0, 9))),
    );
    const ordered = must(orderAllRings(document));
    expect(ordered.touched).toEqual(['wrong', 'open']);
    expect(ringFaults(ordered.document)).toEqual([]);
    expect(refused(orderAllRings(ordered.document)).reason).toBe('nothing-to-do');
  });
});

describe('moving features', () => {
  it('keeps shape and size: distances between corners stay to a millimetre, whatever the latitude', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -70, max: 70 }),
        fc.double({ min: -0.009, max: 0.009, noNaN: true }),
        fc.double({ min: -0.009, max: 0.009, noNaN: true }),
        (lat, east, north) => {
          const corner = (x: number, y: number): LonLat => [20 + x, lat + y];
          const ring = [corner(0, 0), corner(0.003, 0), corner(0.003, 0.002), corner(0, 0.002), corner(0, 0)];
          const document = open(withId('a', area({ golf: 'green' }, ring)));
          const from = corner(0, 0);
          const moved = must(moveFeatures(document, ['a'], { from, to: [from[0] + east, from[1] + north] }));
          const [before] = ringsOf(document, 'a') as never as LonLat[][];
          const [after] = ringsOf(moved.document, 'a') as never as LonLat[][];
          for (let i = 1; i < 4; i++) {
            // 8 decimals are 1.1 mm at either end
            expect(
              Math.abs(distanceM(after![0]!, after![i]!) - distanceM(before![0]!, before![i]!)),
            ).toBeLessThan(0.0025);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('takes a corner to where it was let go', () => {
    const { document } = must(moveFeatures(course, ['marker', 'bunker'], { from: at(1, 2), to: at(31, -8) }));
    expect(positionsOf(geometryOf(feature(document, 'marker'))!)[0]).toEqual(at(31, -8));
    expect(feature(document, 'fairway')).toBe(feature(course, 'fairway'));
  });

  it('refuses places that are none and features without a shape', () => {
    expect(refused(moveFeatures(course, ['marker'], { from: at(0, 0), to: [200, 0] })).reason).toBe(
      'not-a-place',
    );
    expect(
      refused(moveFeatures(course, ['marker', 'strange'], { from: at(0, 0), to: at(1, 0) })).reason,
    ).toBe('wrong-geometry');
  });

  it('refuses to carry along what lies on the other side of the earth', () => {
    const far = open(withId('a', line({ golf: 'cartpath' }, [4, 52], [-176, -52])));
    expect(refused(moveFeatures(far, ['a'], { from: [4, 52], to: [80, 10] })).reason).toBe('not-a-place');
  });
});
