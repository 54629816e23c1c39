/**
 * A player's bag estimated from measured shots, with its doubt: for each club and swing the posterior law of every
 * number of a `ShotSpread`, kept as draws that belong together across the bag. Where shots are few a club leans on its
 * neighbours and on what is expected of the player's level; how firmly stands in `posterior/prior.ts`, the model in
 * `posterior/gibbs.ts`. The same evidence gives the same draws, whatever the order of the shots.
 */

import { makeStreamKey, RandomStream, type StreamKey } from '../random/streams.ts';
import type { Club, ShotSpread, SpreadSource, Swing } from './model.ts';
import { type PartLaw, partCarrySd } from './part-law.ts';
import { guessBagRatio, makeReadings, type SpreadEvidence } from './posterior/evidence.ts';
import { BagSampler } from './posterior/gibbs.ts';
import { type Estimate, meanOf, shareInterval, tailInterval } from './posterior/intervals.ts';
import { OtherClubs } from './posterior/other-clubs.ts';
import { BAG_PRIOR, type BagPrior } from './posterior/prior.ts';
import type { Symmetric2 } from './posterior/random-laws.ts';

export type { SpreadEvidence } from './posterior/evidence.ts';
export type { Estimate } from './posterior/intervals.ts';
export { BAG_PRIOR, type BagPrior } from './posterior/prior.ts';

/** The numbers of a spread, in the order in which a draw holds them. Metres and radians; shares in [0, 1]. */
export const SPREAD_NUMBERS = [
  'carryMean',
  'carrySd',
  'directionMean',
  'directionSd',
  'correlation',
  'poorShare',
  'poorCarryShareMean',
  'poorCarryShareSd',
  'poorDirectionSd',
] as const;
export type SpreadNumber = (typeof SPREAD_NUMBERS)[number];
/** Numbers per draw. */
export const SPREAD_WIDTH = SPREAD_NUMBERS.length;

export interface SpreadPosterior {
  readonly club: Club;
  readonly swing: Swing;
  /** Which of several periods of the same club and swing; absent where there are none. */
  readonly period?: number;
  /** Measured shots that count, and their number after weighing. */
  readonly shots: number;
  readonly effectiveShots: number;
  /** Shots that are more likely poor than solid. */
  readonly poorShots: number;
  /** Readings left out because no ball of this club flies so far. */
  readonly strays: number;
  /** Row after row of `SPREAD_NUMBERS`; row i of every club and swing of a bag belongs together. */
  readonly draws: Float64Array;
  /** Of measured part swings: how they scatter with length; a draw widens or narrows it as a whole. */
  readonly part?: PartLaw;
}

export interface BagPosterior {
  /** In the order of the evidence. */
  readonly entries: readonly SpreadPosterior[];
  readonly drawCount: number;
}

export interface EstimateSettings {
  readonly prior?: BagPrior;
  /** Draws that are kept. */
  readonly draws?: number;
  readonly seed?: string;
}

const DEFAULT_DRAWS = 1000;
/** Sweeps before the first draw that is kept: the start is robust, so a few suffice. */
const BURN_IN = 200;
/** Share of the posterior inside the intervals. */
export const INTERVAL_SHARE = 0.9;

/**
 * The posterior of a bag. The work grows with shots times draws; a bag of 450 shots takes about a tenth of a second.
 * Readings must be finite, carries positive: anything else is a broken promise and throws a RangeError.
 */
export function estimateBag(
  evidence: readonly SpreadEvidence[],
  settings: EstimateSettings = {},
): BagPosterior {
  const steps = estimateBagInSteps(evidence, settings);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** As `estimateBag`, sweep by sweep: each `next()` tells the share done, and the work can be left there. */
export function* estimateBagInSteps(
  evidence: readonly SpreadEvidence[],
  settings: EstimateSettings = {},
): Generator<number, BagPosterior, void> {
  for (const { club, shots } of evidence) {
    const bad = shots.find(
      (shot) => !(shot.carryM > 0 && shot.carryM < 1e6 && Number.isFinite(shot.direction)),
    );
    if (bad !== undefined)
      throw new RangeError(`Unexpected shot of ${club.name}: ${bad.carryM} m, ${bad.direction} rad.`);
  }
  const prior = settings.prior ?? BAG_PRIOR;
  const drawCount = settings.draws ?? DEFAULT_DRAWS;
  const key = makeStreamKey(settings.seed ?? 'holewright', 'spread');
  if (evidence.length === 0) return { entries: [], drawCount };
  const ratio = guessBagRatio(evidence);
  const readings = evidence.map((one) => makeReadings(one, ratio));
  const known = evidence.map((one, i) => readings[i]!.count > 0 || one.statedCarryM !== undefined);
  // Without any evidence the first entry stands in for the bag: its draws are then the prior's.
  if (!known.includes(true)) known[0] = true;
  const draws = evidence.map(() => new Float64Array(drawCount * SPREAD_WIDTH));

  const inside = evidence.flatMap((entry, i) =>
    known[i] === true ? [{ entry, readings: readings[i]!, statedCarryM: entry.statedCarryM }] : [],
  );
  const knownAt = known.flatMap((isKnown, i) => (isKnown ? [i] : []));
  const others = known.flatMap((isKnown, i) => (isKnown ? [] : [i]));
  const sampler = new BagSampler(inside, prior, key);
  const outside = new OtherClubs(
    sampler,
    inside.map(({ entry }) => entry),
    others.map((i) => evidence[i]!),
    prior,
  );
  const sweeps = BURN_IN + drawCount;
  for (let sweep = 0; sweep < BURN_IN; sweep++) {
    sampler.sweep();
    yield sweep / sweeps;
  }
  for (let row = 0; row < drawCount; row++) {
    yield (BURN_IN + row) / sweeps;
    sampler.sweep();
    sampler.countKinds();
    knownAt.forEach((i, j) => {
      const { carryMean, spread, directionMean, poorShare } = sampler.states[j]!;
      writeRow(draws[i]!, row, carryMean, directionMean, spread, poorShare, sampler);
    });
    outside.draw();
    others.forEach((i, j) => {
      const { carryMean, directionMean, spread, poorShare } = outside.laws[j]!;
      writeRow(draws[i]!, row, carryMean, directionMean, spread, poorShare, sampler);
    });
  }
  const entries = evidence.map((one, i): SpreadPosterior => {
    const state = known[i] === true ? sampler.states[knownAt.indexOf(i)] : undefined;
    const { count, total, strays } = readings[i]!;
    return {
      club: one.club,
      swing: one.swing,
      ...(one.period === undefined ? {} : { period: one.period }),
      shots: count,
      effectiveShots: total,
      poorShots: state === undefined ? 0 : state.poorSum.filter((sum) => sum > drawCount / 2).length,
      strays,
      draws: draws[i]!,
    };
  });
  return { entries, drawCount };
}

function writeRow(
  draws: Float64Array,
  row: number,
  carryMean: number,
  directionMean: number,
  spread: Symmetric2,
  poorShare: number,
  poor: {
    readonly poorCarryMean: number;
    readonly poorCarrySd: number;
    readonly poorDirectionTimes: number;
  },
): void {
  const at = row * SPREAD_WIDTH;
  const directionSd = Math.sqrt(spread.dd);
  draws[at] = carryMean;
  draws[at + 1] = Math.sqrt(spread.cc);
  draws[at + 2] = directionMean;
  draws[at + 3] = directionSd;
  draws[at + 4] = spread.cd / Math.sqrt(spread.cc * spread.dd);
  draws[at + 5] = poorShare;
  draws[at + 6] = poor.poorCarryMean;
  draws[at + 7] = poor.poorCarrySd;
  draws[at + 8] = poor.poorDirectionTimes * directionSd;
}

/** Posterior mean of every number. */
export function meanSpread(posterior: SpreadPosterior, source: SpreadSource): ShotSpread {
  const mean = SPREAD_NUMBERS.map((_, column) => meanOf(posterior.draws, column, SPREAD_WIDTH));
  return toSpread(posterior, mean, source);
}

/**
 * Posterior mean and 90 % interval of every number: five per cent lie below and above it, but for the poor share,
 * whose interval is the shortest that holds as much, since none at all must be able to lie inside.
 */
export function estimatesOf(
  posterior: SpreadPosterior,
  share = INTERVAL_SHARE,
): Readonly<Record<SpreadNumber, Estimate>> {
  const entries = SPREAD_NUMBERS.map((name, column): [SpreadNumber, Estimate] => [
    name,
    (name === 'poorShare' ? shareInterval : tailInterval)(posterior.draws, column, SPREAD_WIDTH, share),
  ]);
  return Object.fromEntries(entries) as Record<SpreadNumber, Estimate>;
}

/**
 * `n` draws of a whole law from the posterior, to carry its doubt into whatever is computed from it. The same `key`
 * and `n` pick rows that belong together in every club and swing of one bag.
 */
export function drawSpreads(posterior: SpreadPosterior, key: StreamKey, n: number): ShotSpread[] {
  const source: SpreadSource =
    posterior.shots > 0
      ? { from: 'measured', shots: posterior.shots, poorShots: posterior.poorShots }
      : { from: 'preset', level: 'drawn' };
  return pickRows(key, n, posterior.draws.length / SPREAD_WIDTH).map((row) => drawAt(posterior, row, source));
}

/** Row `row` of the draws as a law. */
export function drawAt(posterior: SpreadPosterior, row: number, source: SpreadSource): ShotSpread {
  const numbers = posterior.draws.subarray(row * SPREAD_WIDTH, (row + 1) * SPREAD_WIDTH);
  return toSpread(posterior, numbers, source);
}

/** A law's numbers in the order of `SPREAD_NUMBERS`. */
export function numbersOf(spread: ShotSpread): number[] {
  const { poor } = spread;
  return [
    spread.carryMean,
    spread.carrySd,
    spread.directionMean,
    spread.directionSd,
    spread.correlation,
    spread.poorShare,
    poor.carryShareMean,
    poor.carryShareSd,
    poor.directionSd,
  ];
}

/** `n` of `count` rows: all different while there are enough, in an order that depends on the key. */
function pickRows(key: StreamKey, n: number, count: number): number[] {
  const stream = new RandomStream();
  stream.restart(key, count);
  const rows: number[] = [];
  let deck: number[] = [];
  while (rows.length < n) {
    if (deck.length === 0) deck = Array.from({ length: count }, (_, i) => i);
    const at = Math.floor(stream.nextUniform() * deck.length);
    rows.push(deck[at]!);
    deck[at] = deck[deck.length - 1]!;
    deck.pop();
  }
  return rows;
}

function toSpread(
  { club, swing, part }: SpreadPosterior,
  numbers: ArrayLike<number>,
  source: SpreadSource,
): ShotSpread {
  const wider = part === undefined ? 1 : numbers[1]! / partCarrySd(part, numbers[0]!);
  return {
    ...(part === undefined ? {} : { part: { ...part, carrySdAt10M: part.carrySdAt10M * wider } }),
    club,
    swing,
    carryMean: numbers[0]!,
    carrySd: numbers[1]!,
    directionMean: numbers[2]!,
    directionSd: numbers[3]!,
    correlation: numbers[4]!,
    poorShare: numbers[5]!,
    poor: { carryShareMean: numbers[6]!, carryShareSd: numbers[7]!, directionSd: numbers[8]! },
    source,
  };
}
