/** Where the sampler stands with one club and swing. */

import type { Readings } from './evidence.ts';
import type { BagEntry, BagPrior } from './prior.ts';
import type { Symmetric2 } from './random-laws.ts';

/** No expected poor share is taken outside of these. */
const LEAST_POOR_SHARE = 0.002;
const MOST_POOR_SHARE = 0.6;

/** What the sampler is told of one club and swing. */
export interface KnownEntry {
  readonly entry: BagEntry;
  readonly readings: Readings;
  readonly statedCarryM: number | undefined;
}

/** The state of one club and swing. */
export interface EntryState {
  readonly entry: BagEntry;
  readonly readings: Readings;
  /** Precision of a stated carry's deviation, and the deviation; precision 0 where none is stated. */
  readonly statedPrecision: number;
  readonly statedDeviation: number;
  readonly isPoor: Uint8Array;
  /** Sum of the sampled indicators after the burn-in, per reading. */
  readonly poorSum: Float64Array;
  carryMean: number;
  directionMean: number;
  spread: Symmetric2;
  poorShare: number;
  /** Of the solid strikes: weight, means, and squares about the means. */
  weight: number;
  carryAverage: number;
  directionAverage: number;
  cc: number;
  cd: number;
  dd: number;
  poorWeight: number;
}

export function startEntry({ entry, readings, statedCarryM }: KnownEntry, prior: BagPrior): EntryState {
  const { expected } = entry;
  return {
    entry,
    readings,
    statedPrecision: statedCarryM === undefined ? 0 : 1 / prior.statedSd ** 2,
    statedDeviation: statedCarryM === undefined ? 0 : statedCarryM / expected.carryMean - 1,
    isPoor: readings.startPoor.slice(),
    poorSum: new Float64Array(readings.count),
    carryMean: readings.count > 0 ? readings.startCarry : (statedCarryM ?? expected.carryMean),
    directionMean: readings.startDirection,
    spread: { cc: expected.carrySd ** 2, cd: 0, dd: expected.directionSd ** 2 },
    poorShare: expectedPoorShare(entry, 1),
    weight: 0,
    carryAverage: 0,
    directionAverage: 0,
    cc: 0,
    cd: 0,
    dd: 0,
    poorWeight: 0,
  };
}

/** Weight, means and squares of the strikes that are taken for solid at present. */
export function summariseSolid(state: EntryState): void {
  const { readings, isPoor } = state;
  let weight = 0;
  let carry = 0;
  let direction = 0;
  for (let i = 0; i < readings.count; i++) {
    if (isPoor[i] === 1) continue;
    const w = readings.weight[i]!;
    weight += w;
    carry += w * readings.carry[i]!;
    direction += w * readings.direction[i]!;
  }
  state.weight = weight;
  state.poorWeight = readings.total - weight;
  state.carryAverage = weight > 0 ? carry / weight : 0;
  state.directionAverage = weight > 0 ? direction / weight : 0;
  let cc = 0;
  let cd = 0;
  let dd = 0;
  for (let i = 0; i < readings.count; i++) {
    if (isPoor[i] === 1) continue;
    const w = readings.weight[i]!;
    const c = readings.carry[i]! - state.carryAverage;
    const d = readings.direction[i]! - state.directionAverage;
    cc += w * c * c;
    cd += w * c * d;
    dd += w * d * d;
  }
  state.cc = cc;
  state.cd = cd;
  state.dd = dd;
}

/** At this level of the whole bag. */
export function expectedPoorShare({ expected }: BagEntry, level: number): number {
  return Math.min(MOST_POOR_SHARE, Math.max(LEAST_POOR_SHARE, expected.poorShare * level));
}
