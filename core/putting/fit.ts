/**
 * A player's two putting errors from putts on record, by maximum likelihood, with intervals by profile likelihood
 * (Wilks 1938, Ann. Math. Stat. 9:60: where twice the logarithm falls by the chi-square quantile). Three kinds of record, alone or together: how
 * many of how many were holed per distance (as in a ten-minute test at 3, 6, 10, 20, 30 and 40 feet), how many putts
 * it took from each distance, and how far past or short misses stopped. Model: Gelman & Nolan 2002 for the direction,
 * Gelman 2019 for the run; see `capture.ts`.
 */

import type { PuttingSkill } from '../player/model.ts';
import { normalCdf } from '../random/normal.ts';
import { type Result, refuse, succeed } from '../result.ts';
import { CAPTURE_PAST_M, chanceOnLine, chanceToHole, INTENDED_PAST_M, runSd } from './capture.ts';
import { climb, type HeightOf, maximise, type Peak } from './maximise.ts';
import { holeChanceTable, puttCountOdds } from './second-putt.ts';
import { told, type Told } from '../words/told.ts';

export interface HoledCount {
  readonly distanceM: number;
  readonly tries: number;
  readonly made: number;
}

/** One green on the course: from how far, and how many putts it took. */
export interface PuttsTaken {
  readonly distanceM: number;
  readonly putts: number;
}

/** A putt that missed: how far beyond the hole it stopped (negative: short of it), measured along the putt. */
export interface MissedPutt {
  readonly distanceM: number;
  readonly pastM: number;
}

export interface PuttingRecord {
  readonly holed?: readonly HoledCount[];
  readonly taken?: readonly PuttsTaken[];
  readonly missed?: readonly MissedPutt[];
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface PuttingFit {
  readonly skill: PuttingSkill;
  /** 90 % intervals. */
  readonly intervals: { readonly directionSd: Interval; readonly distanceSdShare: Interval };
  /** False where the record hardly tells: the interval's ends lie more than a factor of four apart. */
  readonly isSettled: { readonly directionSd: boolean; readonly distanceSdShare: boolean };
  /** Putts that count. */
  readonly putts: number;
  readonly logLikelihood: number;
  /** Standard deviation of the model's own error in the share holed; 0 unless it was asked for. */
  readonly misfitSd: number;
}

export interface FitSettings {
  /** What is expected, and the standard deviation of its logarithm: holds what the record does not tell. */
  readonly leanOn?: { readonly skill: PuttingSkill; readonly logSd: number };
  /**
   * For tens of thousands of putts, where the model's own error outweighs chance: the share holed is taken as normal
   * with variance p (1 - p) / n + misfit², the misfit fitted too (Gelman 2019).
   */
  readonly fitMisfit?: boolean;
}

/** Bounds within which errors are looked for. */
const DIRECTION_BOUNDS: Interval = { low: 0.002, high: 0.3 };
const DISTANCE_BOUNDS: Interval = { low: 0.01, high: 0.5 };
/** Half the 90 % quantile of chi-square with one degree of freedom. */
const PROFILE_DROP = 2.705543 / 2;
const SETTLED_FACTOR = 4;
/** Of the last step towards an interval's end, which is some hundredths: enough for three figures. */
const HALVINGS = 6;
const LONGEST_M = 60;
/** Distances of a log are told apart to this share of them. */
const LOG_STEP_SHARE = 0.06;

/** Both errors. Refuses an empty record and numbers that are no putts. */
export function fitPutting(record: PuttingRecord, settings: FitSettings = {}): Result<PuttingFit, Told> {
  const problem = faultOf(record);
  if (problem !== null) return refuse(problem);
  const terms = likelihoodTerms(record, settings);
  const best = bestOf(terms, settings.fitMisfit === true ? 3 : 2);
  const direction = profile(terms, best, 0, DIRECTION_BOUNDS);
  const distance = profile(terms, best, 1, DISTANCE_BOUNDS);
  return succeed({
    skill: skillOf(best.at),
    intervals: { directionSd: direction, distanceSdShare: distance },
    isSettled: { directionSd: isSettled(direction), distanceSdShare: isSettled(distance) },
    putts: countPutts(record),
    logLikelihood: best.value,
    misfitSd: settings.fitMisfit === true ? Math.exp(best.at[2]!) : 0,
  });
}

/** The direction error alone, every putt taken as long enough: the model of Gelman & Nolan 2002. */
export function fitDirection(
  holed: readonly HoledCount[],
): Result<{ readonly directionSd: number; readonly interval: Interval }, Told> {
  const problem = faultOf({ holed });
  if (problem !== null) return refuse(problem);
  const value = ([log]: readonly number[]): number =>
    clampPenalty(log!, DIRECTION_BOUNDS) +
    holed.reduce(
      (sum, { distanceM, tries, made }) =>
        sum + binomialTerm(chanceOnLine(distanceM, boundedExp(log!, DIRECTION_BOUNDS)), tries, made),
      0,
    );
  const best = maximise(value, [Math.log(0.025)]);
  const interval = profile(value, best, 0, DIRECTION_BOUNDS);
  return succeed({ directionSd: Math.exp(best.at[0]!), interval });
}

/** Logarithms of direction, distance and misfit from which the search sets out: there may be more than one hill. */
const STARTS = [
  [0.016, 0.08, 0.003],
  [0.024, 0.12, 0.003],
  [0.036, 0.18, 0.003],
  [0.012, 0.2, 0.003],
  [0.04, 0.06, 0.003],
].map((errors) => errors.map(Math.log));

/** From the two most promising starts. */
function bestOf(f: HeightOf, free: number): Peak {
  const starts = STARTS.map((start) => start.slice(0, free)).map((at): Peak => ({ at, value: f(at) }));
  starts.sort((a, b) => b.value - a.value);
  const [first, second] = [maximise(f, starts[0]!.at), maximise(f, starts[1]!.at)];
  return second.value > first.value ? second : first;
}

function faultOf({ holed = [], taken = [], missed = [] }: PuttingRecord): Told | null {
  if (holed.every(({ tries }) => tries === 0) && taken.length === 0 && missed.length === 0)
    return told(({ faults }) => faults.putts.noRecord);
  const isDistance = (metres: number): boolean => metres > 0 && metres <= LONGEST_M;
  const isCount = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= 1e7;
  for (const { distanceM, tries, made } of holed) {
    if (!isDistance(distanceM) || !isCount(tries) || !isCount(made) || made > tries)
      return told(({ faults }) => faults.putts.holedMetres, { made, tries, metres: distanceM });
  }
  for (const { distanceM, putts } of taken) {
    if (!isDistance(distanceM) || !isCount(putts) || putts < 1)
      return told(({ faults }) => faults.putts.count, { putts, metres: distanceM });
  }
  for (const { distanceM, pastM } of missed) {
    if (!isDistance(distanceM) || !(pastM >= -distanceM && pastM <= LONGEST_M))
      return told(({ faults }) => faults.putts.past, { metres: distanceM, past: pastM });
  }
  return null;
}

function countPutts({ holed = [], taken = [], missed = [] }: PuttingRecord): number {
  return holed.reduce((sum, { tries }) => sum + tries, 0) + taken.length + missed.length;
}

function isSettled({ low, high }: Interval): boolean {
  return high / low < SETTLED_FACTOR;
}

function skillOf(logs: readonly number[]): PuttingSkill {
  return {
    directionSd: boundedExp(logs[0]!, DIRECTION_BOUNDS),
    distanceSdShare: boundedExp(logs[1]!, DISTANCE_BOUNDS),
  };
}

function boundedExp(log: number, { low, high }: Interval): number {
  return Math.min(high, Math.max(low, Math.exp(log)));
}

/** Draws the search back inside the bounds. */
function clampPenalty(log: number, { low, high }: Interval): number {
  const outside = Math.max(0, Math.log(low) - log, log - Math.log(high));
  return -50 * outside * outside;
}

function likelihoodTerms(record: PuttingRecord, settings: FitSettings): HeightOf {
  const { holed = [], missed = [] } = record;
  const taken = groupTaken(record.taken ?? []);
  const { leanOn } = settings;
  return (logs) => {
    const skill = skillOf(logs);
    let sum = clampPenalty(logs[0]!, DIRECTION_BOUNDS) + clampPenalty(logs[1]!, DISTANCE_BOUNDS);
    for (const { distanceM, tries, made } of holed) {
      const chance = chanceToHole(distanceM, skill);
      sum +=
        settings.fitMisfit === true
          ? misfitTerm(chance, tries, made, Math.exp(logs[2]!))
          : binomialTerm(chance, tries, made);
    }
    const holeChance = taken.length > 0 ? holeChanceTable(skill) : undefined;
    for (const { distanceM, one, two, more } of taken) {
      const odds = puttCountOdds(distanceM, skill, holeChance);
      sum += weigh(one, odds[0]) + weigh(two, odds[1]) + weigh(more, odds[2]);
    }
    for (const { distanceM, pastM } of missed) sum += missTerm(distanceM, pastM, skill);
    if (leanOn !== undefined) {
      const a = (logs[0]! - Math.log(leanOn.skill.directionSd)) / leanOn.logSd;
      const b = (logs[1]! - Math.log(leanOn.skill.distanceSdShare)) / leanOn.logSd;
      sum -= (a * a + b * b) / 2;
    }
    return sum;
  };
}

function weigh(count: number, chance: number): number {
  return count === 0 ? 0 : count * Math.log(Math.max(1e-300, chance));
}

function binomialTerm(chance: number, tries: number, made: number): number {
  return weigh(made, chance) + weigh(tries - made, 1 - chance);
}

/** Logarithm of the normal density of the share holed, chance and misfit in its variance (Gelman 2019). */
function misfitTerm(chance: number, tries: number, made: number, misfitSd: number): number {
  if (tries === 0) return 0;
  const variance = (chance * (1 - chance)) / tries + misfitSd * misfitSd;
  return -0.5 * ((made / tries - chance) ** 2 / variance + Math.log(variance));
}

/** Where a miss stopped: the density of its run, times the chance to miss with that run. */
function missTerm(distanceM: number, pastM: number, skill: PuttingSkill): number {
  const sd = runSd(distanceM, skill.distanceSdShare);
  const z = (pastM - INTENDED_PAST_M) / sd;
  const isLongEnough = pastM >= 0 && pastM <= CAPTURE_PAST_M;
  const miss = isLongEnough ? Math.max(1e-12, 1 - chanceOnLine(distanceM, skill.directionSd)) : 1;
  // A ball that stopped where it was hit cannot have run shorter.
  if (pastM <= -distanceM + 1e-9) return Math.log(Math.max(1e-300, normalCdf(z)));
  return -0.5 * z * z - Math.log(sd) + Math.log(miss);
}

interface TakenCount {
  readonly distanceM: number;
  one: number;
  two: number;
  more: number;
}

function groupTaken(taken: readonly PuttsTaken[]): readonly TakenCount[] {
  const groups = new Map<number, TakenCount>();
  for (const { distanceM, putts } of taken) {
    const step = Math.round(Math.log(distanceM) / LOG_STEP_SHARE);
    const group = groups.get(step) ?? { distanceM: Math.exp(step * LOG_STEP_SHARE), one: 0, two: 0, more: 0 };
    if (putts === 1) group.one++;
    else if (putts === 2) group.two++;
    else group.more++;
    groups.set(step, group);
  }
  return [...groups.values()];
}

/** Where the likelihood, highest over the other numbers, has fallen by `PROFILE_DROP`; the bound where it never does. */
function profile(f: HeightOf, best: Peak, index: number, bounds: Interval): Interval {
  const end = (direction: -1 | 1): number => {
    const bound = Math.log(direction < 0 ? bounds.low : bounds.high);
    let others = best.at.filter((_, k) => k !== index);
    const drop = (x: number): number => {
      const whole = (rest: readonly number[]): number[] => [...rest.slice(0, index), x, ...rest.slice(index)];
      if (others.length === 0) return best.value - f(whole([]));
      const peak = climb((rest) => f(whole(rest)), others);
      others = [...peak.at];
      return best.value - peak.value;
    };
    let inside = best.at[index]!;
    let step = 0.06;
    let outside = inside;
    for (;;) {
      outside = direction < 0 ? Math.max(bound, inside - step) : Math.min(bound, inside + step);
      if (drop(outside) >= PROFILE_DROP) break;
      if (outside === bound) return Math.exp(bound);
      inside = outside;
      step *= 1.6;
    }
    for (let k = 0; k < HALVINGS; k++) {
      const middle = (inside + outside) / 2;
      if (drop(middle) >= PROFILE_DROP) outside = middle;
      else inside = middle;
    }
    return Math.exp((inside + outside) / 2);
  };
  return { low: end(-1), high: end(1) };
}
