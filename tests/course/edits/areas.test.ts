/** Areas cut, merged and hollowed out: no ground is lost or made, and what cannot be done says why. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindOf, propertiesOf } from '../../../core/course/document.ts';
import { cutHole } from '../../../core/course/edits/cut-hole.ts';
import { cutInTwo } from '../../../core/course/edits/cut-in-two.ts';
import { fillHole } from '../../../core/course/edits/fill-hole.ts';
import { merge } from '../../../core/course/edits/merge.ts';
import { splitParts } from '../../../core/course/edits/split-parts.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { findCrossing } from '../../../core/course/ring-crossing.ts';
import { area, at, point, square } from '../builders.ts';
import {
  areaOf,
  feature,
  must,
  open,
  refused,
  ringFaults,
  ringsOf,
  smallCourse,
  totalArea,
  withId,
} from './edit-builders.ts';

const course = smallCourse();
/** What rounding to 8 decimals may change along some hundred metres of outline, square metres. */
const ROUNDING_M2 = 0.5;

describe('cutting in two', () => {
  it('makes two areas of one, with its properties, and keeps its ground', () => {
    const { document, touched, name } = must(
      cutInTwo(course, 'fairway', [at(-60, 140), at(0, 155), at(60, 140)]),
    );
    expect(touched).toHaveLength(2);
    expect(name).toBe('Cut fairway of hole 1 in two');
    const [kept, made] = touched as [string, string];
    expect(kept).toBe('fairway');
    expect(propertiesOf(feature(document, made))).toEqual(propertiesOf(feature(course, 'fairway')));
    expect(areaOf(document, kept) + areaOf(document, made)).toBeCloseTo(areaOf(course, 'fairway'), 0);
    expect(areaOf(document, kept)).toBeGreaterThan(areaOf(document, made));
    // both have the bend of the line, at the very same coordinates
    for (const id of touched) expect(ringsOf(document, id).flat()).toContainEqual(at(0, 155));
    expect(ringFaults(document)).toEqual([]);
    expect(document.features.findIndex(({ id }) => id === made)).toBe(
      document.features.findIndex(({ id }) => id === kept) + 1,
    );
  });

  it('cuts through an island hole, and past one', () => {
    const through = must(cutInTwo(course, 'pond', [at(150, 150), at(250, 151)]));
    expect(through.touched).toHaveLength(2);
    for (const id of through.touched) expect(ringsOf(through.document, id)).toHaveLength(1);
    const past = must(cutInTwo(course, 'pond', [at(150, 170), at(250, 170)]));
    expect(past.touched.map((id) => ringsOf(past.document, id).length)).toEqual([2, 1]);
    for (const { document, touched } of [through, past]) {
      const sum = totalArea(document, touched);
      expect(Math.abs(sum - areaOf(course, 'pond'))).toBeLessThan(ROUNDING_M2);
    }
  });

  it('a line that goes in and out several times gives as many parts', () => {
    const comb = open(
      withId(
        'comb',
        area({ golf: 'rough' }, [
          at(0, 0),
          at(50, 0),
          at(50, 40),
          at(40, 40),
          at(40, 10),
          at(30, 10),
          at(30, 40),
          at(20, 40),
          at(20, 10),
          at(10, 10),
          at(10, 40),
          at(0, 40),
          at(0, 0),
        ]),
      ),
    );
    const { touched, document } = must(cutInTwo(comb, 'comb', [at(-5, 25), at(55, 25)]));
    expect(touched).toHaveLength(4);
    expect(Math.abs(totalArea(document, touched) - areaOf(comb, 'comb'))).toBeLessThan(ROUNDING_M2);
  });

  it('takes ends that were caught on a corner or on a side for ends that go through', () => {
    for (const line of [
      [at(-40, 110), at(40, 190)],
      [at(-40, 130), at(40, 170)],
      // a hair inside
      [
        [at(-40, 0)[0] + 2e-8, at(0, 130)[1]],
        [at(40, 0)[0] - 2e-8, at(0, 170)[1]],
      ],
    ] as LonLat[][]) {
      const { touched, document } = must(cutInTwo(course, 'fairway', line));
      expect(touched).toHaveLength(2);
      expect(areaOf(document, touched[0]!)).toBeCloseTo(areaOf(document, touched[1]!), -1);
    }
  });

  it.each([
    ['it ends inside', [at(-60, 150), at(0, 150)], 'line-does-not-cross'],
    ['it passes by', [at(-60, 300), at(60, 300)], 'line-does-not-cross'],
    ['it runs along a side', [at(-40, 100), at(-40, 200)], 'line-does-not-cross'],
    ['it has no length', [at(0, 150), at(0, 150)], 'line-does-not-cross'],
    ['it crosses itself', [at(-60, 150), at(60, 150), at(0, 180), at(0, 100)], 'line-crosses-itself'],
    ['it leaves the map', [[-200, 50], at(60, 150)], 'not-a-place'],
  ] as [string, LonLat[], string][])('refuses a line where %s', (_, line, reason) => {
    expect(refused(cutInTwo(course, 'fairway', line)).reason).toBe(reason);
  });

  it('refuses what is no single area', () => {
    for (const id of ['marker', 'path', 'double']) {
      expect(refused(cutInTwo(course, id, [at(-60, 150), at(60, 150)])).reason).toBe('wrong-geometry');
    }
    const bow = open(
      withId('bow', area({ golf: 'rough' }, [at(0, 0), at(10, 10), at(10, 0), at(0, 10), at(0, 0)])),
    );
    expect(refused(cutInTwo(bow, 'bow', [at(-5, 5), at(15, 5)])).reason).toBe('crosses-itself');
  });

  it('whatever straight line cuts whatever star, the parts add up and do not cross themselves', () => {
    const star = fc.array(fc.integer({ min: 20, max: 100 }), { minLength: 3, maxLength: 12 }).map((radii) => {
      const corners = radii.map((radius, index) => {
        const angle = (2 * Math.PI * index) / radii.length;
        return at(Math.round(radius * Math.cos(angle)), Math.round(radius * Math.sin(angle)));
      });
      return [...corners, corners[0]!];
    });
    let cuts = 0;
    fc.assert(
      fc.property(
        star,
        fc.integer({ min: -60, max: 60 }),
        fc.integer({ min: -60, max: 60 }),
        (ring, west, east) => {
          if (findCrossing([ring]) !== undefined) return;
          const document = open(withId('star', area({ golf: 'rough' }, ring)));
          const result = cutInTwo(document, 'star', [at(-120, west), at(120, east)]);
          if (!result.ok) {
            expect(result.error.reason).toBe('line-does-not-cross');
            return;
          }
          cuts++;
          const { touched, document: cut } = result.value;
          const sum = totalArea(cut, touched);
          expect(Math.abs(sum - areaOf(document, 'star'))).toBeLessThan(ROUNDING_M2);
          for (const id of touched) expect(findCrossing(ringsOf(cut, id) as never)).toBeUndefined();
          expect(ringFaults(cut)).toEqual([]);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
    expect(cuts).toBeGreaterThan(30);
  });
});

describe('merging', () => {
  it('joins areas that share a side, into the first', () => {
    const { document, touched, name } = must(merge(course, ['fairway', 'neighbour']));
    expect(touched).toEqual(['fairway']);
    expect(name).toBe('Merge 2 fairways');
    expect(propertiesOf(feature(document, 'fairway'))['ref']).toBe('1');
    expect(document.features).toHaveLength(course.features.length - 1);
    expect(
      Math.abs(areaOf(document, 'fairway') - areaOf(course, 'fairway') - areaOf(course, 'neighbour')),
    ).toBeLessThan(ROUNDING_M2);
  });

  it('puts back together what was cut in two', () => {
    const cut = must(cutInTwo(course, 'pond', [at(150, 150), at(250, 151)]));
    const { document } = must(merge(cut.document, cut.touched));
    expect(Math.abs(areaOf(document, 'pond') - areaOf(course, 'pond'))).toBeLessThan(ROUNDING_M2);
    expect(ringsOf(document, 'pond')).toHaveLength(2);
  });

  it('refuses areas apart, areas that touch in a corner only, and different kinds', () => {
    const apart = open(
      withId('a', area({ golf: 'rough' }, square(0, 0, 10))),
      withId('b', area({ golf: 'rough' }, square(30, 0, 10))),
      withId('c', area({ golf: 'rough' }, square(20, 20, 10))),
      withId('d', area({ golf: 'green' }, square(10, 0, 10))),
      withId('bridge', area({ golf: 'rough' }, square(15, 0, 8))),
      withId('two', {
        type: 'Feature',
        properties: { golf: 'rough' },
        geometry: { type: 'MultiPolygon', coordinates: [[square(0, 50, 5)], [square(20, 50, 5)]] },
      }),
      withId('between', area({ golf: 'rough' }, square(10, 50, 8))),
      withId('p', point({ natural: 'tree' }, at(0, 0))),
    );
    expect(refused(merge(apart, ['a', 'b'])).reason).toBe('not-touching');
    expect(refused(merge(apart, ['a', 'c'])).reason).toBe('not-touching');
    expect(refused(merge(apart, ['a', 'd'])).reason).toBe('different-kinds');
    expect(refused(merge(apart, ['a'])).reason).toBe('nothing-chosen');
    expect(refused(merge(apart, ['p', 'p'])).reason).toBe('nothing-chosen');
    expect(must(merge(apart, ['a', 'b', 'bridge'])).touched).toEqual(['a']);
    expect(must(merge(apart, ['two', 'between'])).touched).toEqual(['two']);
    // as many outlines as before, and yet one feature has nothing to do with the others
    expect(refused(merge(apart, ['two', 'between', 'a'])).reason).toBe('not-touching');
  });
});

describe('cutting a hole', () => {
  it('takes the other area out of this one and leaves the other', () => {
    const { document } = must(cutHole(course, 'fairway', { feature: 'bunker' }));
    expect(ringsOf(document, 'fairway')).toHaveLength(2);
    expect(areaOf(document, 'fairway')).toBeCloseTo(areaOf(course, 'fairway') - areaOf(course, 'bunker'), 1);
    expect(feature(document, 'bunker')).toBe(feature(course, 'bunker'));
    expect(ringFaults(document)).toEqual([]);
    const filled = must(fillHole(document, 'fairway', 1));
    expect(areaOf(filled.document, 'fairway')).toBeCloseTo(areaOf(course, 'fairway'), 1);
  });

  it('takes out a drawn outline, whichever way round and open or closed', () => {
    for (const outline of [
      square(0, 150, 10),
      square(0, 150, 10).toReversed(),
      square(0, 150, 10).slice(1),
    ]) {
      const { document } = must(cutHole(course, 'fairway', { outline }));
      expect(ringsOf(document, 'fairway')).toHaveLength(2);
      expect(ringFaults(document)).toEqual([]);
    }
  });

  it('may leave several parts', () => {
    const { document } = must(
      cutHole(course, 'fairway', { outline: [at(-50, 145), at(50, 145), at(50, 155), at(-50, 155)] }),
    );
    const split = must(splitParts(document, 'fairway'));
    expect(split.touched).toHaveLength(2);
    expect(split.touched.map((id) => kindOf(feature(split.document, id)))).toEqual(['fairway', 'fairway']);
    const sum = totalArea(split.document, split.touched);
    expect(sum).toBeCloseTo(areaOf(document, 'fairway'), 6);
  });

  it('refuses what does not overlap, what swallows all, and what is no area', () => {
    expect(refused(cutHole(course, 'bunker', { feature: 'pond' })).reason).toBe('does-not-overlap');
    expect(refused(cutHole(course, 'fairway', { feature: 'neighbour' })).reason).toBe('does-not-overlap');
    expect(refused(cutHole(course, 'bunker', { feature: 'fairway' })).reason).toBe('nothing-left');
    expect(refused(cutHole(course, 'bunker', { feature: 'bunker' })).reason).toBe('no-such-feature');
    expect(refused(cutHole(course, 'path', { feature: 'fairway' })).reason).toBe('wrong-geometry');
    expect(refused(cutHole(course, 'fairway', { outline: [at(0, 0), at(1, 1)] })).reason).toBe(
      'too-few-vertices',
    );
    expect(
      refused(cutHole(course, 'fairway', { outline: [at(0, 150), at(10, 160), at(10, 150), at(0, 160)] }))
        .reason,
    ).toBe('crosses-itself');
    expect(refused(fillHole(course, 'pond', 2)).reason).toBe('no-such-ring');
    expect(refused(fillHole(course, 'pond', 0)).reason).toBe('no-such-ring');
    expect(refused(splitParts(course, 'pond')).reason).toBe('wrong-geometry');
  });
});
