/** What the estimator is given for one club and swing, made ready: readings sorted, checked, and a first guess. */

import type { MeasuredShot } from '../measured-shot.ts';
import type { BagEntry } from './prior.ts';

/** One club and swing: what is expected of it, and the shots that were measured. */
export interface SpreadEvidence extends BagEntry {
  readonly shots: readonly MeasuredShot[];
  /** A carry that the player states without having measured it, metres. */
  readonly statedCarryM?: number;
}

/** Readings in rising order of carry, so that the order of a file changes nothing. */
export interface Readings {
  readonly count: number;
  readonly carry: Float64Array;
  readonly direction: Float64Array;
  readonly weight: Float64Array;
  /** Of the reading's lie, see `LieWidening`: 1, 1 and 0 from a good one. */
  readonly carryWidth: Float64Array;
  readonly directionWidth: Float64Array;
  readonly poorAdded: Float64Array;
  /** Sum of the weights. */
  readonly total: number;
  /** Readings left out because no ball of this club flies so far. */
  readonly strays: number;
  /** First guess: where solid strikes lie, and which of the readings are not among them. */
  readonly startCarry: number;
  readonly startDirection: number;
  /** 1: poor. */
  readonly startPoor: Uint8Array;
}

/** A reading this many scales beyond the median, and this much beyond what is expected, is an error of measurement. */
const STRAY_SCALES = 5;
const STRAY_SHARE = 1.3;
/** First guess of what is poor: this many scales short of the middle, or this many to either side. */
const START_SHORT = 3;
const START_WIDE = 3.5;
/** With fewer readings than this the middle is taken from what is expected. */
const FEWEST_FOR_MIDDLE = 5;

/** `bagRatio`: by how much this player outcarries what is expected, a first guess over the whole bag. */
export function makeReadings(evidence: SpreadEvidence, bagRatio: number): Readings {
  const { expected } = evidence;
  const sorted = [...evidence.shots].sort(
    (a, b) =>
      a.carryM - b.carryM ||
      a.direction - b.direction ||
      (a.weight ?? 1) - (b.weight ?? 1) ||
      (a.lie?.carryWidth ?? 1) - (b.lie?.carryWidth ?? 1) ||
      (a.lie?.poorAdded ?? 0) - (b.lie?.poorAdded ?? 0),
  );
  const isEnough = sorted.length >= FEWEST_FOR_MIDDLE;
  const carryScaleExpected = expected.carrySd * bagRatio;
  const carry = middleAndScale(sorted.map((shot) => shot.carryM));
  const middle = isEnough ? carry.middle : expected.carryMean * bagRatio;
  const scale = Math.max(isEnough ? carry.scale : 0, carryScaleExpected);
  const longest = Math.max(middle + STRAY_SCALES * scale, STRAY_SHARE * expected.carryMean);
  const kept = sorted.filter((shot) => shot.carryM <= longest);

  const direction = middleAndScale(kept.map((shot) => shot.direction));
  const aside = isEnough ? direction.middle : expected.directionMean;
  const width = Math.max(isEnough ? direction.scale : 0, expected.directionSd);
  const isPoor = (shot: MeasuredShot): boolean =>
    shot.carryM < middle - START_SHORT * scale * (shot.lie?.carryWidth ?? 1) ||
    Math.abs(shot.direction - aside) > START_WIDE * width * (shot.lie?.directionWidth ?? 1);
  return {
    count: kept.length,
    carry: Float64Array.from(kept, (shot) => shot.carryM),
    direction: Float64Array.from(kept, (shot) => shot.direction),
    weight: Float64Array.from(kept, (shot) => shot.weight ?? 1),
    carryWidth: Float64Array.from(kept, (shot) => shot.lie?.carryWidth ?? 1),
    directionWidth: Float64Array.from(kept, (shot) => shot.lie?.directionWidth ?? 1),
    poorAdded: Float64Array.from(kept, (shot) => shot.lie?.poorAdded ?? 0),
    total: kept.reduce((sum, shot) => sum + (shot.weight ?? 1), 0),
    strays: sorted.length - kept.length,
    startCarry: middle,
    startDirection: aside,
    startPoor: Uint8Array.from(kept, (shot) => (isPoor(shot) ? 1 : 0)),
  };
}

/** Median of the clubs' median carries as shares of what is expected; 1 where no club has shots enough. */
export function guessBagRatio(evidence: readonly SpreadEvidence[]): number {
  const ratios = evidence
    .filter(({ shots }) => shots.length >= FEWEST_FOR_MIDDLE)
    .map(({ shots, expected }) => middleAndScale(shots.map((s) => s.carryM)).middle / expected.carryMean);
  return ratios.length === 0 ? 1 : Math.min(1.8, Math.max(0.5, middleAndScale(ratios).middle));
}

/** Median, and the median absolute deviation in standard deviations of a normal law (Hampel 1974). */
function middleAndScale(values: readonly number[]): { readonly middle: number; readonly scale: number } {
  const middle = median(values);
  return { middle, scale: 1.4826 * median(values.map((value) => Math.abs(value - middle))) };
}

function median(values: readonly number[]): number {
  if (values.length === 0) return 0;
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
