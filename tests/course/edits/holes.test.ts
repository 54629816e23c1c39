/** Holes renumbered, reordered, and features copied from one to another. */

import { describe, expect, it } from 'vitest';
import { courseOf, geometryOf, holeOf, propertiesOf } from '../../../core/course/document.ts';
import { copyToHole } from '../../../core/course/edits/copy-to-hole.ts';
import { holeNumbers, renumberHoles } from '../../../core/course/edits/renumber-holes.ts';
import { reorderHoles } from '../../../core/course/edits/reorder-holes.ts';
import { distanceM } from '../../../core/course/ellipsoid.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { positionsOf } from '../../../core/course/positions.ts';
import { point } from '../builders.ts';
import { feature, must, open, refused, smallCourse, withId } from './edit-builders.ts';

const course = smallCourse();

describe('renumbering', () => {
  it('takes everything that names the hole along', () => {
    const { document, name, touched } = must(renumberHoles(course, new Map([[1, 10]])));
    expect(name).toBe('Make hole 1 number 10');
    expect(holeNumbers(document)).toEqual([2, 10]);
    expect(touched).toEqual(course.features.filter((each) => holeOf(each) === 1).map(({ id }) => id));
    expect(propertiesOf(feature(document, 'marker'))).toEqual({
      holewright_kind: 'tee_marker',
      ref: '10',
      name: 'Long',
    });
    const parsed = courseOf(document);
    expect(parsed.ok && parsed.value.holes.map(({ number, tees }) => [number, tees[0]!.name])).toEqual([
      [2, 'Start of the line'],
      [10, 'Long'],
    ]);
  });

  it('swaps two holes at once', () => {
    const { document } = must(
      renumberHoles(
        course,
        new Map([
          [1, 2],
          [2, 1],
        ]),
      ),
    );
    expect(holeOf(feature(document, 'fairway'))).toBe(2);
    expect(holeOf(feature(document, 'neighbour'))).toBe(1);
  });

  it('keeps a ref that is a number a number', () => {
    const numbers = open(withId('m', point({ holewright_kind: 'tee_marker', ref: 3 }, [4, 52])));
    expect(propertiesOf(feature(must(renumberHoles(numbers, new Map([[3, 4]]))).document, 'm'))['ref']).toBe(
      4,
    );
  });

  it.each([
    [[[1, 2]], 'number-taken'],
    [[[3, 4]], 'no-such-hole'],
    [[[1, 0]], 'value-not-accepted'],
    [[[1, 1.5]], 'value-not-accepted'],
  ] as const)('refuses %j', (numbers, reason) => {
    expect(refused(renumberHoles(course, new Map(numbers as never))).reason).toBe(reason);
  });
});

describe('reordering', () => {
  it('deals the numbers out anew', () => {
    const { document, name } = must(reorderHoles(course, [2, 1]));
    expect(name).toBe('Reorder the holes');
    expect(holeOf(feature(document, 'fairway'))).toBe(2);
    expect(must(reorderHoles(course, [1, 2])).patches).toEqual([]);
  });

  it('wants every hole once', () => {
    for (const order of [[1], [1, 1], [1, 2, 3], [1, 3], []]) {
      expect(refused(reorderHoles(course, order)).message).toContain('1, 2');
    }
  });
});

describe('copying to a hole', () => {
  it('makes new features of that hole, as far away as asked', () => {
    const { document, touched } = must(
      copyToHole(course, ['bunker', 'marker'], 2, { eastM: 300, northM: -40 }),
    );
    expect(touched).toHaveLength(2);
    const [bunker, marker] = touched.map((id) => feature(document, id));
    expect(propertiesOf(bunker!)).toEqual({ golf: 'bunker', ref: '2' });
    expect(propertiesOf(marker!)['name']).toBe('Long');
    const place = (of: typeof bunker) => positionsOf(geometryOf(of!)!)[0]!.slice(0, 2) as unknown as LonLat;
    expect(distanceM(place(feature(course, 'bunker')), place(bunker))).toBeCloseTo(Math.hypot(300, 40), 2);
    expect(document.features.slice(0, course.features.length)).toEqual(course.features);
  });

  it('refuses hole lines, numbers that are none and shifts off the map', () => {
    expect(refused(copyToHole(course, ['feature-1'], 2)).reason).toBe('wrong-kind');
    expect(refused(copyToHole(course, ['bunker'], 0)).reason).toBe('value-not-accepted');
    expect(refused(copyToHole(course, ['bunker'], 2, { eastM: 1e9, northM: 0 })).reason).toBe('not-a-place');
    expect(refused(copyToHole(course, ['strange'], 2)).reason).toBe('wrong-geometry');
  });
});
