/** Slopes put down by hand: on the hole's own green only, and the same as levels where both tell of one plane. */

import { describe, expect, it } from 'vitest';
import { dayPutts, type DayPuttsProblem } from '../../core/green/day-putts.ts';
import { greenPutts } from '../../core/green/green-putts.ts';
import { marksOnGreen } from '../../core/green/painted-slopes.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { Course, SlopeMark } from '../../core/course/model.ts';
import { cellIndexAt, type HoleGround } from '../../core/ground/hole-ground.ts';
import { rasteriseHole } from '../../core/ground/rasterise.ts';
import { prepareHole } from '../../core/plan/prepare.ts';
import { makePuttingTable } from '../../core/putting/putting.ts';
import { disc, flatCourse, type FlatHole, fourClubs, statedPlayer } from '../plan/synthetic.ts';

const putting = { directionSd: (1.7 * Math.PI) / 180, distanceSdShare: 0.1 };
const SOUTH_EAST = (3 * Math.PI) / 4;
const problem: DayPuttsProblem = {
  levels: [],
  pin: { x: 3, y: -5 },
  greenSpeedFt: 10,
  putting,
  table: makePuttingTable(putting),
  reachM: 15,
};
/** The plane that falls by 2.5 % to the south-east, as levels and as arrows. */
const rise = { east: -0.025 * Math.sin(SOUTH_EAST), north: -0.025 * Math.cos(SOUTH_EAST) };
const levels = [-20, -10, 0, 10, 20].flatMap((x) =>
  [-25, -15, -5, 5, 15].map((y) => ({ x, y, elevationM: 12 + rise.east * x + rise.north * y })),
);
const marks = [
  [-8, 2],
  [5, -9],
  [9, 4],
].map(([x, y]) => ({ x: x!, y: y!, slopeShare: 0.025, downhill: SOUTH_EAST }));

/** One hole with its arrows, in metres of its frame. */
function courseWith(
  spec: FlatHole,
  arrows: readonly (readonly [x: number, y: number, share: number])[],
): Course {
  const course = flatCourse(spec);
  const frame = frameOf(course);
  const slopeMarks = arrows.map(
    ([x, y, slopeShare]): SlopeMark => ({
      ...{ at: frame.toLonLat({ x, y }), slopeShare, downhill: SOUTH_EAST, featureIndex: 50 },
    }),
  );
  return { ...course, slopeMarks };
}

function frameOf(course: Course) {
  return makeLocalFrame(course.holes[0]!.line[1]!);
}

function groundOf(course: Course): HoleGround {
  return rasteriseHole(course, course.holes[0]!, frameOf(course));
}

function slopeAt(ground: HoleGround, x: number, y: number): readonly [number, number] {
  const i = cellIndexAt(ground, x, y);
  return [ground.slopes![2 * i]!, ground.slopes![2 * i + 1]!];
}

describe('equal arrows', () => {
  it('make the plane that levels make: the same putts from every side', () => {
    const [byLevels, byMarks] = [greenPutts({ ...problem, levels })!, greenPutts({ ...problem, marks })!];
    byMarks.expected.forEach((putts, i) => expect(putts).toBeCloseTo(byLevels.expected[i]!, 5));
    byMarks.one.forEach((share, i) => expect(share).toBeCloseTo(byLevels.one[i]!, 5));
  });

  it('are three-putted less from below the hole than from above', () => {
    const putts = dayPutts({ ...problem, marks });
    const away = 8;
    const [east, north] = [away * Math.sin(SOUTH_EAST), away * Math.cos(SOUTH_EAST)];
    expect(putts.oddsAt(east, north)[2]).toBeLessThan(putts.oddsAt(-east, -north)[2] - 0.02);
  });

  it('go before levels that say otherwise', () => {
    const flat = levels.map((level) => ({ ...level, elevationM: 12 }));
    const both = greenPutts({ ...problem, levels: flat, marks })!;
    expect(both.expected).toEqual(greenPutts({ ...problem, marks })!.expected);
  });
});

describe('the ground of a painted green', () => {
  it('slopes on the green and is level around it where there are no levels', () => {
    const ground = groundOf(
      courseWith({ lengthM: 120 }, [
        [2, 3, 0.025],
        [-4, -2, 0.025],
      ]),
    );
    for (const [x, y] of [
      [0.5, 0.5],
      [-8.5, 4.5],
      [3.5, -10.5],
    ] as const) {
      const [east, north] = slopeAt(ground, x, y);
      expect(east).toBeCloseTo(rise.east, 6);
      expect(north).toBeCloseTo(rise.north, 6);
    }
    expect(slopeAt(ground, 30.5, 0.5)).toEqual([0, 0]);
    expect(slopeAt(ground, 0.5, -60.5)).toEqual([0, 0]);
    expect(ground.elevation).toBeNull();
  });

  it('keeps the slopes of levels off the green', () => {
    const spec: FlatHole = {
      lengthM: 120,
      levels: [-60, 0, 60].flatMap((x) =>
        [-120, -60, 0, 60].map((y) => ({ x, y, elevationM: 20 + 0.02 * x })),
      ),
    };
    const [plain, painted] = [groundOf(flatCourse(spec)), groundOf(courseWith(spec, [[0, 0, 0.025]]))];
    expect(slopeAt(painted, 30.5, -40.5)).toEqual(slopeAt(plain, 30.5, -40.5));
    expect(slopeAt(painted, 0.5, 0.5)[1]).toBeCloseTo(rise.north, 6);
    expect(painted.elevation).toEqual(plain.elevation);
  });

  it('takes no notice of arrows on other greens or on none', () => {
    const spec: FlatHole = { lengthM: 120, patches: [{ ...disc('green', 40, -30, 9), hole: 9 }] };
    const course = courseWith(spec, [
      [40, -30, 0.03],
      [0, -50, 0.03],
    ]);
    expect(marksOnGreen(course, course.holes[0]!, frameOf(course))).toEqual([]);
    expect(groundOf(course).slopes).toBeNull();
  });

  it('changes the putts that a hole is planned with', () => {
    const prepare = (course: Course) => {
      const prepared = prepareHole({
        course,
        holeNumber: 1,
        player: statedPlayer({ spreads: fourClubs() }),
        seed: 'slopes',
      });
      if (!prepared.ok) throw new Error(prepared.error.message);
      return prepared.value.putts;
    };
    const [level, painted] = [flatCourse({ lengthM: 120 }), courseWith({ lengthM: 120 }, [[0, 0, 0.04]])].map(
      prepare,
    );
    const above = [-6 * Math.sin(SOUTH_EAST), -6 * Math.cos(SOUTH_EAST)] as const;
    expect(painted!.expectedAt(...above)).toBeGreaterThan(level!.expectedAt(...above) + 0.02);
  });
});
