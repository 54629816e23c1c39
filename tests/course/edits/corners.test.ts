/** Corners of areas and points of lines: moved, put in, taken out, set by numbers. */

import { describe, expect, it } from 'vitest';
import { geometryOf } from '../../../core/course/document.ts';
import { insertVertex } from '../../../core/course/edits/insert-vertex.ts';
import { moveVertex } from '../../../core/course/edits/move-vertex.ts';
import { removeVertex } from '../../../core/course/edits/remove-vertex.ts';
import { setPosition } from '../../../core/course/edits/set-position.ts';
import { area, at, line, point, square } from '../builders.ts';
import { feature, must, open, refused, ringFaults, ringsOf, smallCourse, withId } from './edit-builders.ts';

const course = smallCourse();

describe('moving a corner', () => {
  it('moves that corner and no other, the ring stays closed', () => {
    const { document, touched, name } = must(
      moveVertex(course, { feature: 'fairway', vertex: 1 }, at(55, 100)),
    );
    expect(ringsOf(document, 'fairway')[0]).toEqual(square(0, 150, 40).with(1, at(55, 100)));
    expect(touched).toEqual(['fairway']);
    expect(name).toBe('Move a corner of fairway of hole 1');
  });

  it('takes the closing corner for the first one', () => {
    for (const vertex of [0, 4]) {
      const { document } = must(moveVertex(course, { feature: 'fairway', vertex }, at(-50, 100)));
      const [ring] = ringsOf(document, 'fairway');
      expect([ring![0], ring![4]]).toEqual([at(-50, 100), at(-50, 100)]);
    }
  });

  it('finds inner rings and parts', () => {
    const inner = must(moveVertex(course, { feature: 'pond', ring: 1, vertex: 0 }, at(195, 145)));
    expect(ringsOf(inner.document, 'pond')[1]).toContainEqual(at(195, 145));
    expect(ringsOf(inner.document, 'pond')[0]).toEqual(ringsOf(course, 'pond')[0]);
    const part = must(moveVertex(course, { feature: 'double', part: 1, vertex: 2 }, at(-170, 125)));
    const geometry = geometryOf(feature(part.document, 'double'));
    expect(geometry?.type === 'MultiPolygon' && geometry.coordinates[1]![0]![2]).toEqual(at(-170, 125));
    expect(ringsOf(part.document, 'double')).toEqual(ringsOf(course, 'double'));
  });

  it('keeps a height that stands behind the coordinates', () => {
    const document = open(withId('p', point({ natural: 'tree' }, [...at(0, 0), 31.5])));
    const moved = must(moveVertex(document, { feature: 'p', vertex: 0 }, at(3, 4)));
    expect(geometryOf(feature(moved.document, 'p'))?.coordinates).toEqual([...at(3, 4), 31.5]);
  });

  it('keeps the right-hand rule where the ring turns over', () => {
    const triangle = open(withId('t', area({ golf: 'green' }, [at(0, 0), at(10, 0), at(5, 10), at(0, 0)])));
    const { document } = must(moveVertex(triangle, { feature: 't', vertex: 2 }, at(5, -10)));
    expect(ringFaults(document)).toEqual([]);
  });

  it('closes a ring that the file left open', () => {
    const document = open(withId('o', area({ golf: 'green' }, square(0, 0, 5).slice(0, 4))));
    const moved = must(moveVertex(document, { feature: 'o', vertex: 3 }, at(-6, 6)));
    expect(ringsOf(moved.document, 'o')[0]).toHaveLength(5);
    expect(ringFaults(moved.document)).toEqual([]);
  });

  it.each([
    [{ feature: 'gone', vertex: 0 }, 'no-such-feature'],
    [{ feature: 'fairway', vertex: 5 }, 'no-such-vertex'],
    [{ feature: 'fairway', vertex: -1 }, 'no-such-vertex'],
    [{ feature: 'fairway', vertex: 0.5 }, 'no-such-vertex'],
    [{ feature: 'fairway', ring: 1, vertex: 0 }, 'no-such-vertex'],
    [{ feature: 'strange', vertex: 0 }, 'wrong-geometry'],
  ] as const)('refuses %j', (address, reason) => {
    expect(refused(moveVertex(course, address, at(0, 0))).reason).toBe(reason);
  });

  it('refuses a place that is none and a corner on top of another of three', () => {
    expect(refused(moveVertex(course, { feature: 'fairway', vertex: 0 }, [181, 0])).reason).toBe(
      'not-a-place',
    );
    expect(refused(moveVertex(course, { feature: 'fairway', vertex: 0 }, [NaN, 0])).reason).toBe(
      'not-a-place',
    );
    const triangle = open(withId('t', area({ golf: 'green' }, [at(0, 0), at(10, 0), at(5, 10), at(0, 0)])));
    expect(refused(moveVertex(triangle, { feature: 't', vertex: 2 }, at(10, 0))).reason).toBe(
      'too-few-vertices',
    );
  });
});

describe('putting in a corner', () => {
  it('puts it behind the one named, also across the seam of the ring', () => {
    const ring = (vertex: number, east: number, north: number) =>
      ringsOf(
        must(insertVertex(course, { feature: 'fairway', vertex }, at(east, north))).document,
        'fairway',
      )[0];
    expect(ring(0, 0, 105)).toEqual(square(0, 150, 40).toSpliced(1, 0, at(0, 105)));
    expect(ring(3, -45, 150)).toEqual(square(0, 150, 40).toSpliced(4, 0, at(-45, 150)));
  });

  it('lengthens a line behind its last point', () => {
    const { document } = must(insertVertex(course, { feature: 'path', vertex: 2 }, at(55, 300)));
    expect(geometryOf(feature(document, 'path'))?.coordinates).toEqual([
      at(50, 0),
      at(60, 100),
      at(50, 200),
      at(55, 300),
    ]);
  });

  it('refuses a point', () => {
    expect(refused(insertVertex(course, { feature: 'marker', vertex: 0 }, at(0, 0))).reason).toBe(
      'wrong-geometry',
    );
  });
});

describe('taking out a corner', () => {
  it('leaves the others', () => {
    const { document } = must(removeVertex(course, { feature: 'fairway', vertex: 0 }));
    const square1 = square(0, 150, 40);
    expect(ringsOf(document, 'fairway')[0]).toEqual([square1[1], square1[2], square1[3], square1[1]]);
  });

  it('stops at 3 corners of an area and 2 points of a line', () => {
    const small = open(
      withId('t', area({ golf: 'green' }, [at(0, 0), at(10, 0), at(5, 10), at(0, 0)])),
      withId('l', line({ golf: 'cartpath' }, at(0, 0), at(10, 0))),
      withId('p', point({ natural: 'tree' }, at(0, 0))),
    );
    for (const id of ['t', 'l', 'p']) {
      expect(refused(removeVertex(small, { feature: id, vertex: 0 })).reason).toBe('too-few-vertices');
    }
  });
});

describe('a position in numbers', () => {
  it('is kept to 8 decimals', () => {
    const { document } = must(
      setPosition(course, { feature: 'marker', vertex: 0 }, 4.123456789, -33.987654321),
    );
    expect(geometryOf(feature(document, 'marker'))?.coordinates).toEqual([4.12345679, -33.98765432]);
  });

  it('is refused where it is no place', () => {
    for (const [lon, lat] of [
      [180.1, 0],
      [0, -91],
      [NaN, 0],
      [0, Infinity],
    ] as const) {
      expect(refused(setPosition(course, { feature: 'marker', vertex: 0 }, lon, lat)).reason).toBe(
        'not-a-place',
      );
    }
  });
});
