/**
 * Which option to take on each tee to reach an aim, given how the round stands: a dynamic programme over the holes
 * (Bellman 1957). The value of a count before a hole is the best, over the hole's options, of the mean value of the count
 * after it. Options are those of the tee; what follows on the hole is played by the plan. The choice is made for a day of
 * average form; `withForm` then says what the same choices are worth when the form of the day varies.
 */

import { type Aim, startOf, stepsOf, worthOf } from './aim.ts';
import { meanOf, type ScoreDistribution, tilted } from './distribution.ts';
import { FORM_SD_STROKES, formRates } from './score-distribution.ts';

export interface TeeOption {
  readonly id: string;
  readonly scores: ScoreDistribution;
}

export interface HoleChoices {
  readonly hole: number;
  readonly par: number;
  /** At least one. */
  readonly options: readonly TeeOption[];
}

/** What to do with one count before a hole. */
export interface Standing {
  /** Strokes left to spend, points, or holes up. */
  readonly count: number;
  /** Index of the option to take. */
  readonly option: number;
  /** Chance of the aim with the best play from here, and with the lowest mean on this hole and the best play after it. */
  readonly chance: number;
  readonly chanceByLowestMean: number;
  /** Chance that the round stands like this, by best play. */
  readonly reach: number;
}

export interface HoleStandings {
  readonly hole: number;
  /** Index of the option with the lowest mean. */
  readonly lowestMean: number;
  /** Every count that can occur, lowest first. */
  readonly standings: readonly Standing[];
}

export interface TargetPlan {
  readonly aim: Aim;
  /** By best play, and by the lowest mean on every hole, on a day of average form. */
  readonly chance: number;
  readonly chanceByLowestMean: number;
  /** The same two, the form of the day varying. */
  readonly withForm: { readonly chance: number; readonly chanceByLowestMean: number };
  readonly holes: readonly HoleStandings[];
}

/** Differences in value below this are rounding: the lowest mean is kept. */
const EQUAL = 1e-9;

/** Throws a RangeError for a hole without options. */
export function playToTarget(holes: readonly HoleChoices[], aim: Aim, formSd = FORM_SD_STROKES): TargetPlan {
  const steps = stepsOfRound(holes, aim, 0);
  const lowest = holes.map(lowestMeanOf);
  const ranges = rangesOf(steps, startOf(aim));
  // From the last hole back to the first.
  let after = (count: number): number => worthOf(aim, count);
  const standings: Omit<Standing, 'reach'>[][] = [];
  for (let hole = holes.length - 1; hole >= 0; hole--) {
    const value = after;
    const { low, high } = ranges[hole]!;
    const here = Array.from({ length: high - low + 1 }, (_, i) =>
      bestAt(low + i, steps[hole]!, lowest[hole]!, value),
    );
    standings[hole] = here;
    after = (count) => here[count - low]!.chance;
  }
  const chosen = (hole: number, count: number): number => standings[hole]![count - ranges[hole]!.low]!.option;
  const byMean = (hole: number): number => lowest[hole]!;
  const reach = reachOf(steps, ranges, startOf(aim), chosen);
  return {
    aim,
    chance: after(startOf(aim)),
    chanceByLowestMean: chanceOfPolicy(steps, aim, byMean),
    withForm: {
      chance: chanceWithForm(holes, aim, lowest, chosen, formSd),
      chanceByLowestMean: chanceWithForm(holes, aim, lowest, byMean, formSd),
    },
    holes: holes.map(({ hole }, index) => ({
      hole,
      lowestMean: lowest[index]!,
      standings: standings[index]!.map((standing, i) => ({ ...standing, reach: reach[index]![i]! })),
    })),
  };
}

/** Index of the option with the lowest mean. */
export function lowestMeanOf({ hole, options }: HoleChoices): number {
  if (options.length === 0) throw new RangeError(`Unexpected hole ${hole}: it has no options.`);
  const means = options.map(({ scores }) => meanOf(scores));
  return means.indexOf(Math.min(...means));
}

type Steps = readonly (readonly ScoreDistribution[])[];

function stepsOfRound(holes: readonly HoleChoices[], aim: Aim, rate: number): Steps {
  return holes.map(({ par, options }, index) =>
    options.map(({ scores }) => stepsOf(aim, index, par, tilted(scores, rate))),
  );
}

function bestAt(
  count: number,
  options: readonly ScoreDistribution[],
  lowestMean: number,
  after: (count: number) => number,
): Omit<Standing, 'reach'> {
  const values = options.map(({ lowest, chances }) =>
    chances.reduce((sum, chance, i) => sum + chance * after(count + lowest + i), 0),
  );
  const chanceByLowestMean = values[lowestMean]!;
  let option = lowestMean;
  values.forEach((value, i) => {
    if (value > values[option]! + EQUAL) option = i;
  });
  return { count, option, chance: values[option]!, chanceByLowestMean };
}

/** Lowest and highest count before each hole, and after the last. */
function rangesOf(steps: Steps, start: number): { readonly low: number; readonly high: number }[] {
  const ranges = [{ low: start, high: start }];
  steps.forEach((options, hole) => {
    const { low, high } = ranges[hole]!;
    ranges.push({
      low: low + Math.min(...options.map((option) => option.lowest)),
      high: high + Math.max(...options.map((option) => option.lowest + option.chances.length - 1)),
    });
  });
  return ranges;
}

type Policy = (hole: number, count: number) => number;

/** Chance of each count before each hole under a policy. */
function reachOf(
  steps: Steps,
  ranges: readonly { readonly low: number; readonly high: number }[],
  start: number,
  policy: Policy,
): Float64Array[] {
  const reach = ranges.map(({ low, high }) => new Float64Array(high - low + 1));
  reach[0]![start - ranges[0]!.low] = 1;
  steps.forEach((options, hole) => {
    const { low } = ranges[hole]!;
    const into = reach[hole + 1]!;
    reach[hole]!.forEach((share, i) => {
      if (share === 0) return;
      const { lowest, chances } = options[policy(hole, low + i)]!;
      const first = low + i + lowest - ranges[hole + 1]!.low;
      chances.forEach((chance, k) => (into[first + k] = into[first + k]! + share * chance));
    });
  });
  return reach;
}

function chanceOfPolicy(steps: Steps, aim: Aim, policy: Policy): number {
  const ranges = rangesOf(steps, startOf(aim));
  const { low } = ranges.at(-1)!;
  const last = reachOf(steps, ranges, startOf(aim), policy).at(-1)!;
  return last.reduce((sum, share, i) => sum + share * worthOf(aim, low + i), 0);
}

function chanceWithForm(
  holes: readonly HoleChoices[],
  aim: Aim,
  lowestMean: readonly number[],
  policy: Policy,
  formSd: number,
): number {
  const plain = holes.map(({ options }, i) => options[lowestMean[i]!]!.scores);
  return formRates(plain, formSd).reduce(
    (sum, { weight, rate }) => sum + weight * chanceOfPolicy(stepsOfRound(holes, aim, rate), aim, policy),
    0,
  );
}
