/** The putting table: what must hold for any player, and a brute-force twin. */

import fc from 'fast-check';
import seedrandom from 'seedrandom';
import { describe, expect, it } from 'vitest';
import type { PuttingSkill } from '../../core/player/model.ts';
import {
  CAPTURE_PAST_M,
  captureAngle,
  chanceOfGoodRun,
  chanceOnLine,
  INTENDED_PAST_M,
  runSd,
} from '../../core/putting/capture.ts';
import { gaussLegendre } from '../../core/putting/gauss-legendre.ts';
import { missTransitions } from '../../core/putting/misses.ts';
import { makePuttingTable, type PuttingTable } from '../../core/putting/putting.ts';
import { inverseNormal } from '../../core/random/normal.ts';

const tour: PuttingSkill = { directionSd: 0.0178, distanceSdShare: 0.08 };
const tourTable = makePuttingTable(tour);

const anySkill = fc.record({
  directionSd: fc.double({ min: 0.008, max: 0.08, noNaN: true }),
  distanceSdShare: fc.double({ min: 0.03, max: 0.3, noNaN: true }),
});

/** Checks what no putting table may break; used on every table that a test makes. */
function validate(table: PuttingTable): void {
  expect(table.expected).toHaveLength(601);
  expect(table.odds).toHaveLength(4 * 601);
  for (let i = 0; i <= 600; i += 1) {
    const odds = table.odds.subarray(4 * i, 4 * i + 4);
    const mean = odds[0]! + 2 * odds[1]! + 3 * odds[2]! + 4 * odds[3]!;
    for (const chance of odds) expect(chance).toBeGreaterThanOrEqual(0);
    expect(odds[0]! + odds[1]! + odds[2]! + odds[3]!).toBeCloseTo(1, 9);
    // Four or more counted as four can only lower the mean.
    expect(mean).toBeLessThanOrEqual(table.expected[i]! + 1e-9);
    expect(table.expected[i]!).toBeGreaterThanOrEqual(1);
  }
}

describe('chance to hole', () => {
  it('is certain next to the hole and falls with distance', () => {
    expect(tourTable.chanceToHole(0)).toBeCloseTo(1, 9);
    let last = 1;
    for (let d = 0.05; d < 40; d += 0.05) {
      const chance = tourTable.chanceToHole(d);
      expect(chance).toBeLessThanOrEqual(last);
      if (d > 0.5) expect(chance).toBeLessThan(last);
      last = chance;
    }
  });

  it('is the product of the direction window and the run window', () => {
    for (const d of [0.5, 1, 3, 10]) {
      expect(tourTable.chanceToHole(d)).toBeCloseTo(
        chanceOnLine(d, tour.directionSd) * chanceOfGoodRun(d, tour.distanceSdShare),
        14,
      );
    }
  });
});

describe('putting table', () => {
  it('keeps its invariants for any player', () => {
    fc.assert(
      fc.property(anySkill, (skill) => validate(makePuttingTable(skill))),
      { numRuns: 12, seed: 7 },
    );
  });

  it('knows every miss: what the quadrature finds is what the formula leaves', () => {
    fc.assert(
      fc.property(anySkill, (skill) => {
        // Cut at six standard deviations: 2e-9 in each of two variables, and rounding.
        expect(missTransitions(skill, 0.5, 121).quadratureError).toBeLessThan(1e-7);
      }),
      { numRuns: 10, seed: 3 },
    );
  });

  it('costs more putts from farther away, beyond arm’s length', () => {
    for (let i = 6; i < 600; i += 1) {
      expect(tourTable.expected[i + 1]!).toBeGreaterThan(tourTable.expected[i]!);
    }
  });

  it('costs a poorer putter more, from everywhere beyond half a metre', () => {
    const wild = makePuttingTable({ directionSd: 0.03, distanceSdShare: 0.08 });
    const heavy = makePuttingTable({ directionSd: 0.0178, distanceSdShare: 0.14 });
    for (let i = 5; i <= 600; i += 5) {
      expect(wild.expected[i]!).toBeGreaterThan(tourTable.expected[i]!);
      expect(heavy.expected[i]!).toBeGreaterThan(tourTable.expected[i]!);
    }
  });

  it('lets three-putts come out: rare from short, common from long', () => {
    expect(tourTable.scoreOdds(2)[2]).toBeLessThan(0.002);
    expect(tourTable.scoreOdds(20)[2]).toBeGreaterThan(0.1);
  });

  it('agrees with putts simulated one by one to the hole', () => {
    // Independent of the table: plays each putt out.
    const random = seedrandom('putts one by one');
    const rounds = 40_000;
    for (const start of [1.5, 6, 18]) {
      let sum = 0;
      let squares = 0;
      for (let n = 0; n < rounds; n += 1) {
        const putts = playOut(start, tour, random);
        sum += putts;
        squares += putts * putts;
      }
      const mean = sum / rounds;
      const standardError = Math.sqrt((squares / rounds - mean * mean) / rounds);
      // Four standard errors, and 0.001 for the table's linear interpolation.
      expect(Math.abs(mean - tourTable.expectedPutts(start))).toBeLessThan(4 * standardError + 0.001);
    }
  });

  it('reads between its entries along a straight line and goes on beyond the last', () => {
    const between = tourTable.expectedPutts(7.03);
    const [a, b] = [tourTable.expected[70]!, tourTable.expected[71]!];
    expect(between).toBeCloseTo(a + 0.3 * (b - a), 12);
    const slope = (tourTable.expected[600]! - tourTable.expected[500]!) / 10;
    expect(tourTable.expectedPutts(75)).toBeCloseTo(tourTable.expected[600]! + 15 * slope, 9);
    expect(tourTable.expectedPutts(60)).toBeCloseTo(tourTable.expected[600]!, 12);
    expect(tourTable.scoreOdds(75)).toEqual(tourTable.scoreOdds(60));
  });

  it('refuses spreads that are not a putter’s', () => {
    for (const directionSd of [0, -1, NaN, 2]) {
      expect(() => makePuttingTable({ directionSd, distanceSdShare: 0.1 })).toThrow(/directionSd/);
    }
    for (const distanceSdShare of [0, -1, NaN, 0.9]) {
      expect(() => makePuttingTable({ directionSd: 0.02, distanceSdShare })).toThrow(/distanceSdShare/);
    }
  });
});

describe('Gauss-Legendre rule', () => {
  it('has the nodes and weights of Abramowitz & Stegun 1964, table 25.4', () => {
    // n = 2: 1/sqrt 3, weight 1. n = 3: 0 and sqrt 0.6, weights 8/9 and 5/9.
    expect(gaussLegendre(2).nodes[1]).toBeCloseTo(Math.sqrt(1 / 3), 14);
    expect(gaussLegendre(3).nodes[2]).toBeCloseTo(Math.sqrt(0.6), 14);
    expect(gaussLegendre(3).weights[1]).toBeCloseTo(8 / 9, 14);
    expect(gaussLegendre(3).weights[0]).toBeCloseTo(5 / 9, 14);
  });
});

function playOut(start: number, skill: PuttingSkill, random: () => number): number {
  let distance = start;
  for (let putts = 1; ; putts += 1) {
    const angle = inverseNormal(random()) * skill.directionSd;
    const run = distance + INTENDED_PAST_M + inverseNormal(random()) * runSd(distance, skill.distanceSdShare);
    const onLine = Math.abs(angle) < captureAngle(distance);
    if (onLine && run >= distance && run <= distance + CAPTURE_PAST_M) return putts;
    distance = Math.hypot(run * Math.cos(angle) - distance, run * Math.sin(angle));
  }
}
