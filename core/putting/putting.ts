/**
 * Putts to hole out from a distance, for one player. The chance to hole comes from `capture.ts`; a miss stops where
 * its run and direction take it, and the putt from there is a putt like any other, so three-putts come out of the
 * same two errors and are not put in. Limits: level green of even speed, no break, no wind; the leave is measured
 * as if a missed ball passed the hole undisturbed (no lip-outs).
 */

import type { PuttingSkill } from '../player/model.ts';
import { chanceToHole } from './capture.ts';
import { missTransitions, type MissTransitions } from './misses.ts';

/** Spacing of the look-up tables in metres. */
export const PUTTING_STEP_M = 0.1;
/** Last distance of the look-up tables in metres. */
export const PUTTING_MAX_M = 60;

/** Chances of holing out in one, two, three, and four or more putts. */
export type PuttOdds = readonly [one: number, two: number, three: number, fourOrMore: number];

export interface PuttingTable {
  readonly skill: PuttingSkill;
  /** Entry i belongs to a distance of i * `stepM` metres; the last one to `maxM`. */
  readonly stepM: number;
  readonly maxM: number;
  /** Expected putts to hole out, per distance. */
  readonly expected: Float64Array;
  /** Four numbers per distance: chance of holing out in 1, 2, 3 and in 4 or more putts. */
  readonly odds: Float64Array;
  /** Chance to hole the putt, from the formula itself (not from the table). */
  readonly chanceToHole: (distanceM: number) => number;
  /** Linear between table entries; beyond the last one the slope of the last ten metres goes on. */
  readonly expectedPutts: (distanceM: number) => number;
  /** Linear between table entries; beyond the last one its odds stand. */
  readonly scoreOdds: (distanceM: number) => PuttOdds;
}

/** The putting table of a player. Both spreads must be positive and finite; anything else is a broken promise. */
export function makePuttingTable(skill: PuttingSkill): PuttingTable {
  if (!(skill.directionSd > 0 && skill.directionSd < Math.PI / 4)) {
    throw new RangeError(`directionSd of a putt must lie between 0 and pi/4 radians: ${skill.directionSd}`);
  }
  if (!(skill.distanceSdShare > 0 && skill.distanceSdShare <= 0.5)) {
    throw new RangeError(`distanceSdShare of a putt must lie between 0 and 0.5: ${skill.distanceSdShare}`);
  }
  const entries = Math.round(PUTTING_MAX_M / PUTTING_STEP_M) + 1;
  const transitions = missTransitions(skill, PUTTING_STEP_M, entries);
  const expected = solveExpected(transitions);
  const odds = solveOdds(skill, transitions);
  return {
    skill,
    stepM: PUTTING_STEP_M,
    maxM: PUTTING_MAX_M,
    expected,
    odds,
    chanceToHole: (distanceM) => chanceToHole(Math.max(0, distanceM), skill),
    expectedPutts: (distanceM) => readExpected(expected, distanceM),
    scoreOdds: (distanceM) => readOdds(odds, distanceM),
  };
}

/** E(x) = 1 + sum over leaves of P(miss and leave y) E(y), swept until nothing changes by more than 1e-10. */
function solveExpected(transitions: MissTransitions): Float64Array {
  const { entries } = transitions;
  const expected = new Float64Array(entries).fill(1);
  for (let sweep = 0; sweep < 10_000; sweep += 1) {
    let largest = 0;
    // In place, shortest putts first: long putts see this sweep's values of the short ones.
    for (let i = 0; i < entries; i += 1) {
      const value = 1 + rowTimes(transitions, i, expected);
      largest = Math.max(largest, Math.abs(value - expected[i]!));
      expected[i] = value;
    }
    if (largest < 1e-10) return expected;
  }
  return expected;
}

/** P(k putts from x) = sum over leaves of P(miss and leave y) P(k - 1 putts from y). */
function solveOdds(skill: PuttingSkill, transitions: MissTransitions): Float64Array {
  const { entries, stepM } = transitions;
  const one = new Float64Array(entries);
  for (let i = 0; i < entries; i += 1) one[i] = chanceToHole(i * stepM, skill);
  const two = one.map((_, i) => rowTimes(transitions, i, one));
  const three = two.map((_, i) => rowTimes(transitions, i, two));
  const odds = new Float64Array(4 * entries);
  for (let i = 0; i < entries; i += 1) {
    odds[4 * i] = one[i]!;
    odds[4 * i + 1] = two[i]!;
    odds[4 * i + 2] = three[i]!;
    odds[4 * i + 3] = Math.max(0, 1 - one[i]! - two[i]! - three[i]!);
  }
  return odds;
}

function rowTimes(transitions: MissTransitions, row: number, values: Float64Array): number {
  const { weights, entries, lastLeave } = transitions;
  const start = row * entries;
  const end = lastLeave[row]!;
  let sum = 0;
  for (let j = 0; j <= end; j += 1) sum += weights[start + j]! * values[j]!;
  return sum;
}

function readExpected(expected: Float64Array, distanceM: number): number {
  const last = expected.length - 1;
  const position = Math.max(0, distanceM) / PUTTING_STEP_M;
  if (position >= last) {
    const base = Math.round(10 / PUTTING_STEP_M);
    const slope = (expected[last]! - expected[last - base]!) / base;
    return expected[last]! + slope * (position - last);
  }
  const i = Math.floor(position);
  return expected[i]! + (position - i) * (expected[i + 1]! - expected[i]!);
}

function readOdds(odds: Float64Array, distanceM: number): PuttOdds {
  const last = odds.length / 4 - 1;
  const position = Math.min(last, Math.max(0, distanceM) / PUTTING_STEP_M);
  const i = Math.min(last - 1, Math.floor(position));
  const t = position - i;
  const at = (k: number): number => (1 - t) * odds[4 * i + k]! + t * odds[4 * i + 4 + k]!;
  return [at(0), at(1), at(2), at(3)];
}
