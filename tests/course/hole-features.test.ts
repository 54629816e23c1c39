import { expect, it } from 'vitest';
import { featuresOfHole, greenOf } from '../../core/course/hole-features.ts';
import { isInside, middleOf } from '../../core/course/polygon.ts';
import { area, at, collection, mustParse, plainHole, point, square } from './builders.ts';

it('gives the green, tees and positions of one hole and nothing of another', () => {
  const course = mustParse(
    collection(
      ...plainHole(1, 0),
      ...plainHole(2, 100),
      point({ holewright_kind: 'tee_marker', ref: 2, name: 'Back' }, at(100, 0)),
      point({ holewright_kind: 'hole_position', ref: 2, name: 'Front' }, at(100, 295)),
    ),
  );
  const features = featuresOfHole(course, 2);
  expect(features!.hole.number).toBe(2);
  expect(features!.green!.featureIndex).toBe(5);
  expect(features!.teeAreas.map(({ featureIndex }) => featureIndex)).toEqual([4]);
  expect(features!.tees.map(({ name }) => name)).toEqual(['Back']);
  expect(features!.positions.map(({ name }) => name)).toEqual(['Front']);
  expect(featuresOfHole(course, 3)).toBeUndefined();
});

it('takes among two greens of a hole the one on which its line ends', () => {
  const winter = area({ golf: 'green', ref: 1 }, square(0, 250, 9));
  const course = mustParse(collection(winter, ...plainHole(1, 0)));
  expect(greenOf(course, course.holes[0]!)!.featureIndex).toBe(3);
});

it('has no green for a hole without one', () => {
  const course = mustParse(collection(...plainHole(1, 0).slice(0, 2)));
  expect(greenOf(course, course.holes[0]!)).toBeUndefined();
  expect(featuresOfHole(course, 1)!.green).toBeUndefined();
});

it('puts the middle of a horseshoe on the horseshoe', () => {
  const horseshoe = [
    [at(0, 0), at(30, 0), at(30, 30), at(20, 30), at(20, 5), at(10, 5), at(10, 30), at(0, 30), at(0, 0)],
  ];
  expect(isInside(middleOf(horseshoe), { rings: horseshoe })).toBe(true);
});

it('puts the middle of a square in its middle, however its points are spread', () => {
  const uneven = [[at(0, 0), at(1, 0), at(2, 0), at(3, 0), at(20, 0), at(20, 20), at(0, 20), at(0, 0)]];
  const [lon, lat] = middleOf(uneven);
  expect(lon).toBeCloseTo(at(10, 10)[0], 9);
  expect(lat).toBeCloseTo(at(10, 10)[1], 9);
});

it('counts the edge as inside and a hole in the area as outside', () => {
  const ring = { rings: [square(0, 0, 10), square(0, 0, 5).toReversed()] };
  expect(isInside(at(10, 0), ring)).toBe(true);
  expect(isInside(at(7, 0), ring)).toBe(true);
  expect(isInside(at(0, 0), ring)).toBe(false);
  expect(isInside(at(11, 0), ring)).toBe(false);
});
