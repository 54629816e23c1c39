/** What lies at a place that a person puts on the map. */

import { describe, expect, it } from 'vitest';
import { lieOfPlace } from '../../core/round/place-lie.ts';
import { area, at, collection, mustParse, plainHole, square } from '../course/builders.ts';

describe('the lie at a place', () => {
  const course = mustParse(
    collection(
      ...plainHole(1, 0),
      area({ golf: 'fairway', ref: '1' }, square(0, 150, 60)),
      area({ golf: 'bunker', ref: '1' }, square(10, 150, 8)),
      area({ golf: 'lateral_water_hazard' }, square(-40, 150, 15)),
    ),
  );

  it('is what is painted last there, rough where nothing is drawn', () => {
    expect(lieOfPlace(course, at(0, 120))).toBe('fairway');
    expect(lieOfPlace(course, at(10, 150))).toBe('bunker');
    expect(lieOfPlace(course, at(-40, 150))).toBe('penaltyRed');
    expect(lieOfPlace(course, at(0, 300))).toBe('green');
    expect(lieOfPlace(course, at(200, 150))).toBe('rough');
  });

  it('is out of bounds outside a drawn boundary', () => {
    const fenced = {
      areas: [...course.areas, { kind: 'boundary' as const, rings: [square(0, 150, 180)], featureIndex: 99 }],
    };
    expect(lieOfPlace(fenced, at(0, 120))).toBe('fairway');
    expect(lieOfPlace(fenced, at(300, 150))).toBe('outOfBounds');
  });
});
