/** What a drawn point catches on, and what the drawing measures. */

import fc from 'fast-check';
import { Geodesic } from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { metresPerDegree } from '../../../core/course/degree-lengths.ts';
import { measureDrawing } from '../../../core/course/edits/measure.ts';
import { makeSnapIndex, snap } from '../../../core/course/edits/snap.ts';
import { distanceM } from '../../../core/course/ellipsoid.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { at, line, point, square } from '../builders.ts';
import { open, smallCourse, withId } from './edit-builders.ts';

const course = smallCourse();
const index = makeSnapIndex(course);

describe('snapping', () => {
  it('to a corner gives exactly its coordinates', () => {
    const exact: LonLat = [4.12345678, 52.87654321];
    const document = open(withId('p', point({ natural: 'tree' }, exact)));
    const found = snap(makeSnapIndex(document), [exact[0] + 2e-6, exact[1] - 3e-6], 2);
    expect(found).toMatchObject({ kind: 'vertex', feature: 'p' });
    expect(found!.at[0]).toBe(exact[0]);
    expect(found!.at[1]).toBe(exact[1]);
  });

  it('prefers a corner within reach to a nearer side', () => {
    const near = snap(index, at(-40.5, 112), 4);
    expect(near).toMatchObject({ kind: 'vertex', at: at(-40, 110), feature: 'fairway' });
    const beyond = snap(index, at(-40.5, 130), 4);
    expect(beyond).toMatchObject({ kind: 'edge', feature: 'fairway' });
    expect(beyond!.at[0]).toBeCloseTo(at(-40, 130)[0], 8);
    expect(beyond!.distanceM).toBeCloseTo(distanceM(at(-40.5, 130), beyond!.at), 3);
  });

  it('finds nothing out of reach, in an empty course, or on what is left out', () => {
    expect(snap(index, at(-60, 130), 4)).toBeNull();
    expect(snap(makeSnapIndex(open()), at(0, 0), 100)).toBeNull();
    const without = makeSnapIndex(course, new Set(['fairway', 'bunker', 'neighbour']));
    expect(snap(without, at(-40, 110), 4)).toBeNull();
  });

  it('finds what a search over every side by geodesics finds', () => {
    const path = [at(0, 0), at(100, 30), at(130, 200), at(-50, 180)];
    const one = makeSnapIndex(open(withId('l', line({ golf: 'cartpath' }, ...path))));
    fc.assert(
      fc.property(fc.integer({ min: -80, max: 160 }), fc.integer({ min: -40, max: 240 }), (east, north) => {
        const place = at(east, north);
        const slow = Math.min(
          ...path.slice(1).flatMap((end, i) =>
            Array.from({ length: 401 }, (_, step) => {
              const [a, share] = [path[i]!, step / 400];
              return distanceM(place, [a[0] + (end[0] - a[0]) * share, a[1] + (end[1] - a[1]) * share]);
            }),
          ),
        );
        const found = snap(one, place, 30);
        if (found === null) expect(slow).toBeGreaterThan(29.9);
        else if (found.kind === 'edge') expect(Math.abs(found.distanceM - slow)).toBeLessThan(0.3);
        else expect(path).toContainEqual(found.at);
      }),
      { numRuns: 40 },
    );
  });

  it('degrees have the lengths that an independent geodesic library gives them', () => {
    // geographiclib-geodesic (Karney 2013, "Algorithms for geodesics")
    for (const lat of [-60, 0, 33, 71]) {
      const { eastM, northM } = metresPerDegree(lat);
      const tiny = 1e-4;
      const east = Geodesic.WGS84.Inverse(lat, 10, lat, 10 + tiny).s12! / tiny;
      const north = Geodesic.WGS84.Inverse(lat - tiny / 2, 10, lat + tiny / 2, 10).s12! / tiny;
      expect(eastM / east).toBeCloseTo(1, 7);
      expect(northM / north).toBeCloseTo(1, 7);
    }
  });
});

describe('measuring while drawing', () => {
  it('gives length, last side and area as they grow', () => {
    const ring = square(0, 0, 50);
    expect(measureDrawing([], 'area')).toEqual({ lengthM: 0, lastSideM: 0, lastBearing: null, areaM2: 0 });
    expect(measureDrawing(ring.slice(0, 1), 'line').lastBearing).toBeNull();
    const line2 = measureDrawing(ring.slice(0, 3), 'line');
    expect(line2.areaM2).toBe(0);
    expect(line2.lastBearing).toBeCloseTo(0, 6);
    const whole = measureDrawing(ring.slice(0, 4), 'area');
    const [width, height] = [distanceM(ring[0]!, ring[1]!), distanceM(ring[1]!, ring[2]!)];
    expect(whole.lengthM).toBeCloseTo(2 * (width + height), 1);
    expect(whole.areaM2).toBeCloseTo(width * height, 0);
    expect(measureDrawing(ring.slice(0, 4).toReversed(), 'area').areaM2).toBeCloseTo(whole.areaM2, 6);
  });
});
