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

/** A mean and the weight behind it. */
interface WeighedMean {
  weight: number;
  mean: number;
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
  /** Of the solid strikes: their weight, how it counts for the means, and squares about the means. */
  weight: number;
  carries: WeighedMean;
  directions: WeighedMean;
  /** Both together: what each says of the other. */
  both: { weight: number; carry: number; direction: number };
  cc: number;
  cd: number;
  dd: number;
  /** Of poor strikes that are the player's own, and of those that a bad lie made. */
  poorWeight: number;
  lieWeight: number;
  /** Per reading, 1: the lie made it poor. */
  readonly isOfLie: Uint8Array;
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
    carries: { weight: 0, mean: 0 },
    directions: { weight: 0, mean: 0 },
    both: { weight: 0, carry: 0, direction: 0 },
    cc: 0,
    cd: 0,
    dd: 0,
    poorWeight: 0,
    lieWeight: 0,
    isOfLie: new Uint8Array(readings.count),
  };
}

/**
 * Weight, means and squares of the strikes that are taken for solid at present. A reading from a lie that scatters k
 * times as widely has its deviations divided by k in the squares, and counts 1 / k² for the means.
 */
export function summariseSolid(state: EntryState): void {
  const { readings, isPoor, isOfLie, carries, directions, both } = state;
  const { carryWidth, directionWidth } = readings;
  let weight = 0;
  let lie = 0;
  carries.weight = carries.mean = directions.weight = directions.mean = 0;
  both.weight = both.carry = both.direction = 0;
  for (let i = 0; i < readings.count; i++) {
    const w = readings.weight[i]!;
    if (isPoor[i] === 1) {
      if (isOfLie[i] === 1) lie += w;
      continue;
    }
    const [carry, direction] = [readings.carry[i]!, readings.direction[i]!];
    const c = w / (carryWidth[i]! * carryWidth[i]!);
    const d = w / (directionWidth[i]! * directionWidth[i]!);
    const cd = w / (carryWidth[i]! * directionWidth[i]!);
    weight += w;
    carries.weight += c;
    carries.mean += c * carry;
    directions.weight += d;
    directions.mean += d * direction;
    both.weight += cd;
    both.carry += cd * carry;
    both.direction += cd * direction;
  }
  state.weight = weight;
  state.lieWeight = lie;
  state.poorWeight = readings.total - weight - lie;
  carries.mean = weight > 0 ? carries.mean / carries.weight : 0;
  directions.mean = weight > 0 ? directions.mean / directions.weight : 0;
  both.carry = weight > 0 ? both.carry / both.weight : 0;
  both.direction = weight > 0 ? both.direction / both.weight : 0;
  let cc = 0;
  let cd = 0;
  let dd = 0;
  for (let i = 0; i < readings.count; i++) {
    if (isPoor[i] === 1) continue;
    const w = readings.weight[i]!;
    const [wide, turned] = [carryWidth[i]!, directionWidth[i]!];
    const c = (readings.carry[i]! - carries.mean) / wide;
    const d = (readings.direction[i]! - directions.mean) / turned;
    cc += w * c * c;
    cd +=
      (w * ((readings.carry[i]! - both.carry) / wide) * (readings.direction[i]! - both.direction)) / turned;
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
