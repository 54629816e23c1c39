/**
 * Balls measured in a photo, against a camera of the test's own: a 3 by 4 projection matrix applied to points of the
 * ground (Hartley & Zisserman 2004, Multiple View Geometry, ch. 6; from memory).
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metresPerPoint, placeInPicture, scaleOfPicture } from '../../core/player/picture-target.ts';
import { inEnglish } from '../../core/words/told.ts';

const WIDTH = 4000;

interface Camera {
  readonly focal: number;
  readonly heightM: number;
  readonly horizonY: number;
}

/** Ground at `distanceM` and `bearing` from below the camera: homogeneous K [R | t] X, camera at (0, h, 0) looking along z. */
function project({ focal, heightM, horizonY }: Camera, distanceM: number, bearing: number) {
  const [X, Y, Z] = [distanceM * Math.sin(bearing), heightM, distanceM * Math.cos(bearing)];
  const P = [
    [focal, 0, WIDTH / 2],
    [0, focal, horizonY],
    [0, 0, 1],
  ];
  const [u, v, w] = P.map((row) => row[0]! * X + row[1]! * Y + row[2]! * Z) as [number, number, number];
  return { x: u / w, y: v / w };
}

const camera = fc.record({
  focal: fc.double({ min: 1500, max: 9000, noNaN: true }),
  heightM: fc.double({ min: 1, max: 3, noNaN: true }),
  horizonY: fc.double({ min: 300, max: 2000, noNaN: true }),
});
const bearing = fc.double({ min: -0.3, max: 0.3, noNaN: true });

function scaleFor(eye: Camera, near: readonly [number, number], far: readonly [number, number]) {
  const scale = scaleOfPicture(
    [
      { at: project(eye, ...near), distanceM: near[0] },
      { at: project(eye, ...far), distanceM: far[0] },
    ],
    eye.heightM,
    WIDTH,
  );
  if (!scale.ok) throw new Error(inEnglish(scale.error));
  return scale.value;
}

describe('a photo with two marks', () => {
  it('gives back where balls lie, whatever the camera and wherever the marks', () => {
    fc.assert(
      fc.property(
        camera,
        bearing,
        bearing,
        fc.double({ min: 20, max: 250, noNaN: true }),
        bearing,
        (eye, nearBearing, farBearing, ballM, ballBearing) => {
          const scale = scaleFor(eye, [70, nearBearing], [150, farBearing]);
          const place = placeInPicture(scale, project(eye, ballM, ballBearing));
          if (!place.ok) throw new Error(inEnglish(place.error));
          expect(place.value.distanceM).toBeCloseTo(ballM, 2);
          expect(place.value.direction).toBeCloseTo(ballBearing - farBearing, 4);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('takes the marks in either order', () => {
    const eye = { focal: 3000, heightM: 1.6, horizonY: 900 };
    const marks = [
      { at: project(eye, 50, 0.02), distanceM: 50 },
      { at: project(eye, 120, -0.01), distanceM: 120 },
    ] as const;
    const one = scaleOfPicture([marks[0], marks[1]], 1.6, WIDTH);
    expect(scaleOfPicture([marks[1], marks[0]], 1.6, WIDTH)).toEqual(one);
  });

  it('tells how much a point of the picture is worth: more, the farther', () => {
    const eye = { focal: 3000, heightM: 1.6, horizonY: 900 };
    const scale = scaleFor(eye, [50, 0], [120, 0]);
    const moved = placeInPicture(scale, { ...project(eye, 100, 0), y: project(eye, 100, 0).y + 1 });
    if (!moved.ok) throw new Error(inEnglish(moved.error));
    expect(100 - moved.value.distanceM).toBeCloseTo(metresPerPoint(scale, 100), 0);
    expect(metresPerPoint(scale, 200)).toBeCloseTo(4 * metresPerPoint(scale, 100), 6);
  });

  it.each([
    ['distances that are alike', 100, 105, 1.6, 400, 500, 'nearly as far'],
    ['marks the wrong way round', 150, 100, 1.6, 500, 400, 'lower in the picture'],
    ['a camera in the ground', 100, 150, 0, 500, 400, 'height'],
    ['a mark beyond all reach', 100, 900, 1.6, 500, 400, '5 to 400'],
  ])('refuses %s', (_, first, second, height, y1, y2, words) => {
    const scale = scaleOfPicture(
      [
        { at: { x: 2000, y: y1 }, distanceM: first },
        { at: { x: 2000, y: y2 }, distanceM: second },
      ],
      height,
      WIDTH,
    );
    expect(!scale.ok && inEnglish(scale.error)).toContain(words);
  });

  it('refuses a ball in the sky', () => {
    const scale = scaleFor({ focal: 3000, heightM: 1.6, horizonY: 900 }, [50, 0], [120, 0]);
    const sky = placeInPicture(scale, { x: 2000, y: 880 });
    expect(!sky.ok && inEnglish(sky.error)).toContain('above the horizon');
  });
});
