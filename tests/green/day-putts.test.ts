/** Putts on a day's greens, as the planner reads them. */

import { describe, expect, it } from 'vitest';
import { dayPutts, type DayPuttsProblem } from '../../core/green/day-putts.ts';
import { greenPutts } from '../../core/green/green-putts.ts';
import { expectedPuttsAt, puttOddsAt } from '../../core/green/putt-field.ts';
import { ORDINARY_GREEN } from '../../core/green/stroke-skill.ts';
import { makePuttingTable } from '../../core/putting/putting.ts';

const putting = { directionSd: (1.7 * Math.PI) / 180, distanceSdShare: 0.1 };
const table = makePuttingTable(putting);
const problem: DayPuttsProblem = {
  levels: [],
  pin: { x: 3, y: -5 },
  greenSpeedFt: ORDINARY_GREEN.greenSpeedFt,
  putting,
  table,
  reachM: 15,
};
/** A plane that rises by 3 % to the north. */
const levels = [-20, -10, 0, 10, 20].flatMap((x) =>
  [-25, -15, -5, 5, 15].map((y) => ({ x, y, elevationM: 0.03 * y })),
);

describe('putts on a green without levels', () => {
  it('are the player’s record at the ordinary speed, from every side', () => {
    const putts = dayPutts(problem);
    for (const metres of [0.5, 3, 12, 40]) {
      expect(putts.expectedAt(metres, 0)).toBe(table.expectedPutts(metres));
      expect(putts.expectedAt(0, -metres)).toBe(table.expectedPutts(metres));
      expect(putts.oddsAt(-metres, 0)).toEqual(table.scoreOdds(metres));
    }
  });

  it('cost more on faster greens from afar, little from near, and stay odds', () => {
    const [slow, fast] = [7, 13].map((greenSpeedFt) => dayPutts({ ...problem, greenSpeedFt }));
    for (const metres of [2, 5, 10, 20]) {
      const change = fast!.expectedAt(metres, 0) - slow!.expectedAt(metres, 0);
      if (metres >= 10) expect(change).toBeGreaterThan(0.02);
      else expect(Math.abs(change)).toBeLessThan(0.02);
      for (const putts of [slow!, fast!]) {
        const odds = putts.oddsAt(metres, 0);
        expect(odds.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        for (const share of odds) expect(share).toBeGreaterThanOrEqual(0);
        // Four or more putts count as four in the odds alone.
        const mean = odds.reduce((sum, share, k) => sum + (k + 1) * share, 0);
        expect(Math.abs(mean - putts.expectedAt(metres, 0))).toBeLessThan(0.02);
      }
    }
  });
});

describe('putts on a green with levels', () => {
  const putts = dayPutts({ ...problem, levels });
  const field = greenPutts({ ...problem, levels })!;

  it('are those of the field over its slopes, place by place', () => {
    for (const [east, north] of [
      [0.3, 0.1],
      [-2, 1],
      [4, 7],
      [0, -9],
      [-11, -4],
      [30, 30],
    ] as const) {
      expect(putts.expectedAt(east, north)).toBeCloseTo(expectedPuttsAt(field, east, north), 12);
      putts
        .oddsAt(east, north)
        .forEach((share, k) => expect(share).toBeCloseTo(puttOddsAt(field, east, north)[k]!, 12));
    }
  });

  it('are three-putted less from below the hole than from above', () => {
    for (const metres of [3, 5, 8]) {
      const [, , below] = putts.oddsAt(0, -metres);
      const [, , above] = putts.oddsAt(0, metres);
      expect(below).toBeLessThan(above - 0.02);
    }
  });
});
