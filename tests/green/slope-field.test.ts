/** The fall of a green from levels and from marks. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  slopesFromLevels,
  slopesFromMarks,
  STEEPEST_SLOPE,
  surfaceAround,
} from '../../core/green/slope-field.ts';

const grid = { cellM: 2, columns: 12, rows: 10, west: -12, south: -10 };

describe('slopes from levels', () => {
  it('are those of the plane that the levels lie on', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        fc.array(
          fc.tuple(
            fc.double({ min: -12, max: 12, noNaN: true }),
            fc.double({ min: -10, max: 10, noNaN: true }),
          ),
          { minLength: 8, maxLength: 20 },
        ),
        (east, north, spots) => {
          const corners = [
            [-12, -10],
            [12, -10],
            [0, 10],
            [-11, 9],
          ] as const;
          const levels = [...spots, ...corners].map(([x, y]) => ({
            x,
            y,
            elevationM: 50 + east * x + north * y,
          }));
          const field = slopesFromLevels(levels, grid)!;
          for (let i = 0; i < field.east.length; i++) {
            expect(field.east[i]).toBeCloseTo(east, 5);
            expect(field.north[i]).toBeCloseTo(north, 5);
          }
        },
      ),
      { numRuns: 40, seed: 5 },
    );
  });

  it('follow a bowl: they rise away from its middle', () => {
    const levels = [];
    for (let x = -12; x <= 12; x += 3)
      for (let y = -10; y <= 10; y += 3) levels.push({ x, y, elevationM: 0.001 * (x * x + y * y) });
    const around = surfaceAround(slopesFromLevels(levels, grid)!, 0, 0);
    expect(around.riseEast(6, 0)).toBeGreaterThan(0.008);
    expect(around.riseEast(-6, 0)).toBeLessThan(-0.008);
    expect(around.riseNorth(0, 6)).toBeGreaterThan(0.008);
    expect(Math.abs(around.riseEast(0, 0))).toBeLessThan(0.002);
  });

  it('are refused where levels are too few or in line, and never steeper than a ball can lie on', () => {
    const line = [0, 1, 2, 3, 4].map((x) => ({ x, y: x, elevationM: x }));
    expect(slopesFromLevels(line, grid)).toBeNull();
    expect(slopesFromLevels(line.slice(0, 2), grid)).toBeNull();
    const cliff = [-10, -5, 0, 5, 10].flatMap((x) => [-9, 9].map((y) => ({ x, y, elevationM: x })));
    const field = slopesFromLevels(cliff, grid)!;
    for (const east of field.east) expect(east).toBeLessThanOrEqual(STEEPEST_SLOPE + 1e-6);
  });
});

describe('slopes from marks', () => {
  it('are the marks where they stand and between them in between', () => {
    const marks = [
      { x: -11, y: -9, slopeShare: 0.03, downhill: 0 },
      { x: 11, y: 9, slopeShare: 0.03, downhill: Math.PI / 2 },
    ];
    const around = surfaceAround(slopesFromMarks(marks, grid)!, 0, 0);
    expect(around.riseNorth(-11, -9)).toBeCloseTo(-0.03, 3);
    expect(around.riseEast(11, 9)).toBeCloseTo(-0.03, 3);
    expect(around.riseEast(0, 0)).toBeCloseTo(-0.015, 3);
    expect(slopesFromMarks([], grid)).toBeNull();
  });
});
