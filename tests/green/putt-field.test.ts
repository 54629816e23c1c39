/** Putts from everywhere: against the level table, against putts played out one by one, and what must hold on slopes. */

import { describe, expect, it } from 'vitest';
import { greenPutts } from '../../core/green/green-putts.ts';
import { reportPutt } from '../../core/green/one-putt.ts';
import {
  easiestSide,
  expectedPuttsAt,
  puttChancesAt,
  puttOddsAt,
  solvePutts,
  type PuttField,
} from '../../core/green/putt-field.ts';
import { PuttRoller } from '../../core/green/roll-putt.ts';
import { puttDraws } from '../../core/green/putt-draws.ts';
import { puttsRaster } from '../../core/green/putts-raster.ts';
import { levelChanceToHole } from '../../core/green/stroke-skill.ts';
import { rollDraw, strokeFrom } from '../../core/green/stroke.ts';
import { LEVEL_GREEN, planeGreen } from '../../core/green/surface.ts';

const putting = { directionSd: 0.0285, distanceSdShare: 0.12 };
const slope = planeGreen(0.02, 0);
const tilted = solvePutts({ surface: slope, greenSpeedFt: 10, putting, longestM: 14 });
const level = solvePutts({ surface: LEVEL_GREEN, greenSpeedFt: 10, putting, longestM: 14, draws: 1024 });

describe('putts around a hole', () => {
  it.each([
    ['level', level],
    ['tilted', tilted],
  ])('%s: chances are chances, and nothing costs less than a putt', (_, field: PuttField) => {
    for (let s = 0; s < field.expected.length; s++) {
      const [one, two, mean] = [field.one[s]!, field.two[s]!, field.expected[s]!];
      expect(one).toBeGreaterThanOrEqual(0);
      expect(two).toBeGreaterThanOrEqual(0);
      expect(one + two).toBeLessThanOrEqual(1 + 1e-6);
      // Three or more counted as three can only lower the mean.
      expect(one + 2 * two + 3 * (1 - one - two)).toBeLessThanOrEqual(mean + 1e-6);
      expect(mean).toBeLessThan(6);
    }
  });

  it('on the level the rolled balls drop as often as the integral says', () => {
    const { skill, decelerationMps2 } = level;
    const draws = puttDraws(4096);
    const roller = new PuttRoller(LEVEL_GREEN, decelerationMps2);
    for (const distance of [0.5, 1, 2, 4, 8]) {
      const stroke = strokeFrom(LEVEL_GREEN, decelerationMps2, skill, 0, distance);
      let holed = 0;
      for (let i = 0; i < draws.count; i++) {
        rollDraw(roller, stroke, skill, draws, i);
        if (roller.holed) holed += 1;
      }
      const p = levelChanceToHole(distance, skill, decelerationMps2);
      // Even draws do better than four standard errors of random ones.
      expect(Math.abs(holed / draws.count - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / draws.count));
    }
  });

  it('agrees with putts played out one by one on the slope', () => {
    const { skill, decelerationMps2 } = tilted;
    const draws = puttDraws(2048);
    const roller = new PuttRoller(slope, decelerationMps2);
    let turn = 0;
    for (const [x, y] of [
      [3, 0],
      [0, 8],
    ] as const) {
      const first = strokeFrom(slope, decelerationMps2, skill, x, y);
      let sum = 0;
      const rounds = 600;
      for (let n = 0; n < rounds; n++) {
        rollDraw(roller, first, skill, draws, (turn = (turn + 37) % draws.count));
        let putts = 1;
        while (!roller.holed && putts < 8) {
          const next = strokeFrom(slope, decelerationMps2, skill, roller.endX, roller.endY);
          rollDraw(roller, next, skill, draws, (turn = (turn + 37) % draws.count));
          putts += 1;
        }
        sum += putts;
      }
      // A standard deviation of about 0.55 over 600 plays is 0.022; four of them, and 0.03 for 128 draws and the grid.
      expect(Math.abs(sum / rounds - expectedPuttsAt(tilted, x, y))).toBeLessThan(0.12);
    }
  });

  it('costs more from farther away and no less on a slope', () => {
    for (let ring = 4; ring < 20; ring++)
      expect(level.expected[ring + 1]!).toBeGreaterThan(level.expected[ring]! - 1e-9);
    for (const distance of [1.5, 3, 6, 12]) {
      let mean = 0;
      for (let k = 0; k < 16; k++)
        mean +=
          expectedPuttsAt(
            tilted,
            distance * Math.sin((k * Math.PI) / 8),
            distance * Math.cos((k * Math.PI) / 8),
          ) / 16;
      expect(mean).toBeGreaterThan(expectedPuttsAt(level, 0, distance));
    }
  });

  it('leaves more on a faster green, and more past a downhill hole than past an uphill one', () => {
    const on = (greenSpeedFt: number): PuttField =>
      solvePutts({ surface: slope, greenSpeedFt, putting, longestM: 6, draws: 64, bearings: 8 });
    const leave = (field: PuttField, y: number): number => reportPutt(field, 0, y, 2048).leave.ninthM;
    const [slow, fast] = [on(8), on(12)];
    // The green falls to the north: from the south the putt runs downhill.
    expect(leave(fast, -6)).toBeGreaterThan(leave(slow, -6));
    expect(leave(fast, -6)).toBeGreaterThan(leave(fast, 6));
    const three = (field: PuttField): number => reportPutt(field, 0, -6, 2048).chances.threeOrMore;
    expect(three(fast)).toBeGreaterThan(three(slow));
  });

  it('stays finite where the slope holds no ball', () => {
    const cliff = solvePutts({
      surface: planeGreen(0.08, 0),
      greenSpeedFt: 15,
      putting: { directionSd: 0.1, distanceSdShare: 0.4 },
      longestM: 6,
      draws: 32,
      bearings: 4,
    });
    for (const putts of cliff.expected) expect(putts).toBeLessThanOrEqual(10);
  });

  it('tells the side to be on, and writes the same figures into a raster', () => {
    const { expected, dearest, bearing } = easiestSide(tilted, 3);
    expect(dearest).toBeGreaterThan(expected + 0.02);
    expect(expectedPuttsAt(tilted, 3 * Math.sin(bearing), 3 * Math.cos(bearing))).toBeCloseTo(expected, 9);
    const grid = { cellM: 1, columns: 4, rows: 3, west: 10, south: 20 };
    const raster = puttsRaster(tilted, 11, 21, grid);
    expect(raster[2 * 4 + 3]).toBeCloseTo(expectedPuttsAt(tilted, 2.5, 1.5), 6);
  });

  it('gives its odds in the form of the level table', () => {
    const odds = puttOddsAt(tilted, 7, 2);
    const chances = puttChancesAt(tilted, 7, 2);
    expect(odds[0] + odds[1] + odds[2] + odds[3]).toBeCloseTo(1, 9);
    expect(odds[0]).toBe(chances.one);
    expect(odds[2] + odds[3]).toBeCloseTo(chances.threeOrMore, 9);
    expect(odds[3]).toBeLessThan(odds[2]);
  });

  it('is made from ground levels, or left alone where they show no slope', () => {
    const levels = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => {
      const [x, y] = [100 + 12 * Math.sin(k), 50 + 12 * Math.cos(k)];
      return { x, y, elevationM: 30 - 0.02 * y };
    });
    const problem = { levels, pin: { x: 101, y: 52 }, greenSpeedFt: 10, putting, reachM: 14 };
    const field = greenPutts(problem)!;
    for (const [x, y] of [
      [3, 0],
      [0, 5],
      [-4, -4],
    ] as const)
      expect(Math.abs(expectedPuttsAt(field, x, y) - expectedPuttsAt(tilted, x, y))).toBeLessThan(0.02);
    expect(greenPutts({ ...problem, levels: levels.slice(0, 2) })).toBeNull();
  });

  it('reports one putt: chances sum to one, the mirror image aims the other way', () => {
    const right = reportPutt(tilted, -3, 0, 2048);
    const left = reportPutt(tilted, 3, 0, 2048);
    const { one, two, threeOrMore } = right.chances;
    expect(one + two + threeOrMore).toBeCloseTo(1, 12);
    expect(right.aimOffsetM).toBeCloseTo(-left.aimOffsetM, 2);
    expect(right.leave.tenthM).toBeLessThanOrEqual(right.leave.medianM);
    expect(right.leave.medianM).toBeLessThanOrEqual(right.leave.ninthM);
    expect(Math.abs(puttChancesAt(tilted, -3, 0).one - one)).toBeLessThan(0.06);
  });
});
