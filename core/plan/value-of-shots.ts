/**
 * What more measured shots of a club would be worth: the expected gain in strokes from settling a close call with them
 * (expected value of sample information, Raiffa & Schlaifer 1961, Applied Statistical Decision Theory, ch. 4).
 *
 * Pre-posterior simulation. The player's laws are known only up to a posterior, given as draws. For each draw in turn,
 * taken for the truth: shots of the club are drawn from it, the other draws are weighed by the likelihood of those
 * shots, the choice that is best under these weights is made, and what it costs under the truth is held against the
 * choice that would be made today. A draw never weighs itself, so nothing is learnt from knowing the answer.
 * Limits: only the law of the shot to be played varies, the strokes surface behind it stays as it is solved; a choice
 * may change its club and its aim, not the length of a part swing.
 */

import type { MeasuredShot } from '../player/measured-shot.ts';
import type { ShotSpread } from '../player/model.ts';
import { type BagPosterior, drawSpreads } from '../player/posterior.ts';
import { drawShot, logShotDensity } from '../player/shot-density.ts';
import { ShotDrawer } from '../random/shot-draws.ts';
import { makeStreamKey, RandomStream } from '../random/streams.ts';
import { choiceOf, LawBook } from './choices.ts';
import { ChoiceEvaluator } from './evaluate.ts';
import type { Choice, SolveProgress, Spot } from './model.ts';
import { planFromSpot } from './options.ts';
import type { PreparedHole } from './prepare.ts';
import { lieOfSpot } from './sample.ts';
import type { StrokesField } from './strokes-field.ts';

export interface ShotValue {
  readonly club: string;
  readonly swing: ShotSpread['swing'];
  /** Expected gain in strokes each time the spot is played, and its Monte Carlo standard error. */
  readonly gainStrokes: number;
  readonly standardError: number;
}

export interface SpotValue {
  /** One entry per club and swing in question, most valuable first. */
  readonly clubs: readonly ShotValue[];
  /** What knowing every law for sure would gain: more than any shots can. */
  readonly perfectStrokes: number;
  /** Choices that were weighed against each other. */
  readonly choices: number;
}

export interface ValueSettings {
  /** Shots that would be measured. */
  readonly shots?: number;
  /** Posterior draws. */
  readonly draws?: number;
  /** Shots on which each choice is valued under each draw. */
  readonly samples?: number;
}

const DEFAULT_SHOTS = 10;
const DEFAULT_DRAWS = 160;
const DEFAULT_SAMPLES = 256;
/** An option that costs this much more than the best is no close call, strokes. */
const CLOSE_STROKES = 0.4;
/** Aims tried beside that of an option: a bias that is better known is aimed off. Degrees. */
const AIM_OFFSETS_DEG = [-3, -1.5, 0, 1.5, 3];
/** Label of the draws on which choices are valued. */
const VALUING = 11;

/** The value of more shots for the decision at `spot`, between the clubs that come close there and aims beside theirs. */
export function* valueOfShots(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  posterior: BagPosterior,
  settings: ValueSettings = {},
): Generator<SolveProgress, SpotValue, void> {
  const choices = closeChoices(prepared, field, spot).flatMap((choice) =>
    AIM_OFFSETS_DEG.map((degrees) => ({ ...choice, bearing: choice.bearing + (degrees * Math.PI) / 180 })),
  );
  return yield* valueForChoices(prepared, field, spot, choices, posterior, settings);
}

/**
 * The value of more shots for a decision between `choices`. `posterior` has one entry per spread of the prepared player,
 * in the same order. Each `next()` values the choices under a few draws.
 */
export function* valueForChoices(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  choices: readonly Choice[],
  posterior: BagPosterior,
  settings: ValueSettings = {},
): Generator<SolveProgress, SpotValue, void> {
  const { player } = prepared;
  if (posterior.entries.length !== player.spreads.length)
    throw new RangeError(
      `Unexpected posterior: ${posterior.entries.length} entries for ${player.spreads.length} spreads.`,
    );
  const shots = settings.shots ?? DEFAULT_SHOTS;
  const count = settings.draws ?? DEFAULT_DRAWS;
  const lie = lieOfSpot(prepared, spot);
  if (choices.length === 0) return { clubs: [], perfectStrokes: 0, choices: 0 };

  const key = makeStreamKey(prepared.seed, 'value of shots', prepared.hole.number);
  const bySpread = posterior.entries.map((entry) => drawSpreads(entry, key, count));
  const draws = new ShotDrawer(settings.samples ?? DEFAULT_SAMPLES).redraw(prepared.key, VALUING);
  const ownValue = field.valueAt(spot.x, spot.y, lie);
  // Row per draw, column per choice; the same shots for all, so that differences are sure.
  const strokes = new Float64Array(count * choices.length);
  for (let row = 0; row < count; row++) {
    if (row % 8 === 0) yield { stage: 'value of more shots', done: row, total: count };
    const spreads = bySpread.map((drawn) => drawn[row]!);
    const evaluator = new ChoiceEvaluator(field, new LawBook({ ...player, spreads }, prepared.book.flights));
    choices.forEach((choice, c) => {
      strokes[row * choices.length + c] = evaluator.valueOf(spot, lie, choice, draws, ownValue);
    });
  }

  const spreadIndices = [...new Set(choices.map(({ spreadIndex }) => spreadIndex))].filter(
    (index) => player.spreads[index]!.swing !== 'part',
  );
  const clubs: ShotValue[] = [];
  for (const index of spreadIndices) {
    yield { stage: 'value of more shots', done: count, total: count };
    const gain = gainFromShots(
      strokes,
      choices.length,
      bySpread[index]!,
      shots,
      makeStreamKey(prepared.seed, 'more shots', index),
    );
    clubs.push({
      club: player.spreads[index]!.club.name,
      swing: player.spreads[index]!.swing,
      gainStrokes: gain.mean,
      standardError: gain.standardError,
    });
  }
  clubs.sort((a, b) => b.gainStrokes - a.gainStrokes);
  return { clubs, perfectStrokes: gainFromCertainty(strokes, choices.length), choices: choices.length };
}

/** The best choice of every club that comes close, as planned from the spot. */
function closeChoices(prepared: PreparedHole, field: StrokesField, spot: Spot): Choice[] {
  return planFromSpot(prepared, field, spot)
    .options.filter(
      (option) =>
        option.kind === 'shot' &&
        option.clubKind !== 'putter' &&
        (option.tooCloseToCall || option.lossToBest < CLOSE_STROKES),
    )
    .map((option) => choiceOf(prepared, option));
}

export interface Gain {
  readonly mean: number;
  readonly standardError: number;
}

/** Expected gain from `count` shots whose law is `laws[row]` under the row's draw. */
function gainFromShots(
  strokes: Float64Array,
  choices: number,
  laws: readonly ShotSpread[],
  count: number,
  key: ReturnType<typeof makeStreamKey>,
): Gain {
  const stream = new RandomStream();
  return expectedGain(strokes, choices, (truth) => {
    stream.restart(key, truth);
    const shots: MeasuredShot[] = Array.from({ length: count }, () => drawShot(laws[truth]!, stream));
    return laws.map((law) => shots.reduce((sum, shot) => sum + logShotDensity(law, shot), 0));
  });
}

/**
 * Expected value of sample information from a table of costs (row per draw, column per choice). `logLikelihoods(row)`
 * draws a sample as if that row were the truth and returns its log-likelihood under every row. Sums over the choice
 * made with the sample against the choice made without, both paid for under the truth.
 */
export function expectedGain(
  costs: Float64Array,
  choices: number,
  logLikelihoods: (truth: number) => ArrayLike<number>,
): Gain {
  const rows = costs.length / choices;
  const even = new Float64Array(rows).fill(1);
  const gains = new Float64Array(rows);
  const weights = new Float64Array(rows);
  for (let truth = 0; truth < rows; truth++) {
    // Today's choice knows no more of this row than the sample's does: it leaves it out too.
    const today = bestChoice(costs, choices, even, truth);
    const logs = logLikelihoods(truth);
    let top = -Infinity;
    for (let row = 0; row < rows; row++) if (row !== truth) top = Math.max(top, logs[row]!);
    for (let row = 0; row < rows; row++) weights[row] = Math.exp(logs[row]! - top);
    const informed = bestChoice(costs, choices, weights, truth);
    gains[truth] = costs[truth * choices + today]! - costs[truth * choices + informed]!;
  }
  return meanAndError(gains);
}

/** The choice with the lowest weighted mean cost, row `without` left out. */
function bestChoice(costs: Float64Array, choices: number, weights: Float64Array, without: number): number {
  let best = 0;
  let lowest = Infinity;
  for (let choice = 0; choice < choices; choice++) {
    let sum = 0;
    for (let row = 0; row < weights.length; row++) {
      if (row !== without) sum += weights[row]! * costs[row * choices + choice]!;
    }
    if (sum < lowest) {
      lowest = sum;
      best = choice;
    }
  }
  return best;
}

/** Expected value of perfect information: the best choice under each draw against the best for all of them. */
function gainFromCertainty(costs: Float64Array, choices: number): number {
  const rows = costs.length / choices;
  const today = bestChoice(costs, choices, new Float64Array(rows).fill(1), -1);
  let sum = 0;
  for (let row = 0; row < rows; row++) {
    let lowest = Infinity;
    for (let c = 0; c < choices; c++) lowest = Math.min(lowest, costs[row * choices + c]!);
    sum += costs[row * choices + today]! - lowest;
  }
  return sum / rows;
}

function meanAndError(values: Float64Array): Gain {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, standardError: Math.sqrt(squares / (values.length - 1) / values.length) };
}

/** Values of several spots of a course added up, club by club, most valuable first; a spot may count several times. */
export function addShotValues(
  spots: readonly { readonly value: SpotValue; readonly times?: number }[],
): readonly ShotValue[] {
  const sums = new Map<
    string,
    { club: string; swing: ShotSpread['swing']; gain: number; variance: number }
  >();
  for (const { value, times = 1 } of spots) {
    for (const { club, swing, gainStrokes, standardError } of value.clubs) {
      const name = `${club}\n${swing}`;
      const sum = sums.get(name) ?? { club, swing, gain: 0, variance: 0 };
      sum.gain += times * gainStrokes;
      sum.variance += (times * standardError) ** 2;
      sums.set(name, sum);
    }
  }
  return [...sums.values()]
    .map(({ club, swing, gain, variance }) => ({
      club,
      swing,
      gainStrokes: gain,
      standardError: Math.sqrt(variance),
    }))
    .sort((a, b) => b.gainStrokes - a.gainStrokes);
}
