import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import type { Course } from '../../../core/course/model.ts';
import { carriesAlong } from '../../../renderer/map/carries.ts';
import { area, collection, mustParse, plainHole } from '../../course/builders.ts';

const PLACE = [4, 52] as const;
const frame = makeLocalFrame(PLACE);

/** A course with boxes of the given kinds, in metres east and north of the ball. */
function courseWith(
  ...boxes: (readonly [golf: string, west: number, south: number, east: number, north: number])[]
): Course {
  const corner = (x: number, y: number): readonly [number, number] => frame.toLonLat({ x, y });
  return mustParse(
    collection(
      ...plainHole(1, 2000),
      ...boxes.map(([golf, west, south, east, north]) =>
        area({ golf }, [
          corner(west, south),
          corner(east, south),
          corner(east, north),
          corner(west, north),
          corner(west, south),
        ]),
      ),
    ),
  );
}

const ball = { x: 0, y: 0 };

describe('carries', () => {
  it('tell the near and the far edge of a bunker across the line', () => {
    const [carry] = carriesAlong(courseWith(['bunker', -5, 180, 5, 200]), frame, ball, 0, 260);
    expect(carry?.kind).toBe('bunker');
    expect(carry?.nearM).toBeCloseTo(180, 0);
    // The far corners are 200 m ahead and 5 m aside: sqrt(200² + 5²).
    expect(carry?.farM).toBeCloseTo(Math.hypot(200, 5), 0);
  });

  it('leave out what lies beside the lane, behind the ball or beyond reach', () => {
    const course = courseWith(
      ['bunker', 80, 180, 95, 200],
      ['bunker', -5, -80, 5, -60],
      ['bunker', -5, 300, 5, 320],
    );
    expect(carriesAlong(course, frame, ball, 0, 260)).toEqual([]);
  });

  it('follow the shot when it is turned', () => {
    const course = courseWith(['lateral_water_hazard', 150, -6, 170, 6]);
    expect(carriesAlong(course, frame, ball, 0, 260)).toEqual([]);
    expect(carriesAlong(course, frame, ball, Math.PI / 2, 260)[0]?.nearM).toBeCloseTo(150, 0);
  });

  it('come nearest first', () => {
    const course = courseWith(['bunker', -5, 200, 5, 210], ['bunker', -5, 100, 5, 110]);
    expect(carriesAlong(course, frame, ball, 0, 260).map((carry) => Math.round(carry.nearM))).toEqual([
      100, 200,
    ]);
  });
});
