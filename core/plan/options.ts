/** The options from a spot: the best aim of every sensible club, what each costs, and which one to take. */

import { isPenaltyArea } from '../ground/hole-ground.ts';
import { Lie, LIE_NAMES, type LieCode } from '../ground/lies.ts';
import { ShotDrawer, type ShotDraws } from '../random/shot-draws.ts';
import { lipBlocks, overLip } from './bunker-lip.ts';
import { aimSpot, neighbouringChoices, OPEN_FAN, sensibleChoices, TREES_FAN } from './choices.ts';
import { ChoiceEvaluator } from './evaluate.ts';
import {
  differenceOf,
  measureChoice,
  measuringBatches,
  measuringEvaluators,
  type MeasuredChoice,
} from './measure-choice.ts';
import type { Choice, Comparison, Option, Spot, SpotPlan } from './model.ts';
import { parOddsOf } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import { recommend } from './recommend.ts';
import { lieOfSpot } from './sample.ts';
import { puttOption, reliefOptions } from './swingless-options.ts';
import { doubtOfOptions } from './spread-doubt.ts';
import type { StrokesField } from './strokes-field.ts';

export interface OptionSettings {
  /** Strokes already taken on the hole; by default 0 on the tee and 1 elsewhere. */
  readonly strokesTaken?: number;
  /** Shots per option; rounded to whole batches. */
  readonly samples?: number;
  /** Whether each option is to say what the doubt about the player's shots leaves open. */
  readonly withDoubt?: boolean;
}

export const DEFAULT_SAMPLES = 2048;
/** Draws on which aims are searched. */
const SEARCH_DRAWS = 256;
/** Neighbouring aims differ by little: the last steps of the search look at as many draws as the measurement, to this limit. */
const FINE_SEARCH_DRAWS = 1024;
const FINE_STEP_DEG = 1.2;
/** Label of the draws with which aims are searched. */
const SEARCHING = 4;
/** Options costing this much more than the best are of no interest unless few are left, strokes. */
const SENSIBLE_LOSS = 1.5;
const FEWEST_OPTIONS = 4;
const DEGREE = Math.PI / 180;

/** Everything that planning a spot shares between its options. */
interface SpotWork {
  readonly prepared: PreparedHole;
  readonly field: StrokesField;
  readonly evaluator: ChoiceEvaluator;
  /** One for each valuation of the field. */
  readonly evaluators: readonly ChoiceEvaluator[];
  readonly spot: Spot;
  readonly lie: LieCode;
  readonly strokesTaken: number;
  readonly ownValue: number;
}

/** Plans the shot from `spot`. Same seed and spot, same numbers. */
export function planFromSpot(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  settings: OptionSettings = {},
): SpotPlan {
  const work = startWork(prepared, field, spot, settings);
  const { lie } = work;
  let options: Option[];
  if (lie === Lie.green) {
    options = [puttOption(prepared, field, spot, work.strokesTaken)];
  } else if (isPenaltyArea(lie) || lie === Lie.outOfBounds) {
    options = reliefOptions(prepared, field, spot, lie, work.strokesTaken);
  } else {
    options = [
      ...shotOptions(work, settings.samples ?? DEFAULT_SAMPLES),
      ...reliefOptions(prepared, field, spot, lie, work.strokesTaken),
    ];
  }
  options = rankOptions(options, prepared.player.marginStrokes);
  if (settings.withDoubt === true) {
    const doubts = doubtOfOptions(prepared, field, spot, options);
    options = options.map((option) => {
      const doubt = doubts.get(option.id);
      return doubt === undefined ? option : { ...option, doubt };
    });
  }
  const blocks = lipBlocks(prepared.book, prepared.ground, spot, lie, prepared.pin);
  return {
    hole: prepared.hole.number,
    from: spot,
    fromLonLat: prepared.frame.toLonLat(spot),
    lie: LIE_NAMES[lie]!,
    distanceToHoleM: Math.hypot(prepared.pin.x - spot.x, prepared.pin.y - spot.y),
    strokesTaken: work.strokesTaken,
    par: prepared.hole.par,
    options,
    recommendation: recommend({ options, lie: LIE_NAMES[lie]! }),
    ...(blocks.length === 0 ? {} : { lipBlocks: blocks }),
    expectedStrokes: options[0]?.meanStrokes ?? NaN,
    seed: prepared.seed,
  };
}

/** One choice of the person's own, as an option; null where that club cannot be played from there. */
export function evaluateChoice(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  choice: Choice,
  settings: OptionSettings = {},
): Option | null {
  const work = startWork(prepared, field, spot, settings);
  const measured = measure(work, choice, measuringBatches(prepared, settings.samples ?? DEFAULT_SAMPLES));
  return measured === null ? null : toOption(work, measured, 'chosen');
}

/** Two choices side by side on the same draws; null where either cannot be played from there. */
export function compareChoices(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  a: Choice,
  b: Choice,
  settings: OptionSettings = {},
): Comparison | null {
  const work = startWork(prepared, field, spot, settings);
  const batches = measuringBatches(prepared, settings.samples ?? 2 * DEFAULT_SAMPLES);
  const first = measure(work, a, batches);
  const second = measure(work, b, batches);
  if (first === null || second === null) return null;
  const difference = differenceOf(first, second);
  return {
    first: toOption(work, first, 'first'),
    second: toOption(work, second, 'second'),
    difference: difference.mean,
    standardError: difference.standardError,
    tooCloseToCall:
      Math.abs(difference.mean) <= Math.max(2 * difference.standardError, prepared.player.marginStrokes),
  };
}

function startWork(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  settings: OptionSettings,
): SpotWork {
  const lie = lieOfSpot(prepared, spot);
  return {
    prepared,
    field,
    evaluator: new ChoiceEvaluator(field, prepared.book),
    evaluators: measuringEvaluators(field, prepared.book),
    spot,
    lie,
    strokesTaken: settings.strokesTaken ?? (lie === Lie.tee ? 0 : 1),
    ownValue: field.valueAt(spot.x, spot.y, lie),
  };
}

function shotOptions(work: SpotWork, samples: number): Option[] {
  const { prepared, evaluator, spot, lie } = work;
  const drawer = new ShotDrawer(Math.min(SEARCH_DRAWS, samples));
  const draws = drawer.redraw(prepared.key, SEARCHING);
  const fineDraws = new ShotDrawer(Math.min(FINE_SEARCH_DRAWS, samples)).redraw(prepared.key, 1, SEARCHING);
  const fan = lie === Lie.woods ? { ...TREES_FAN, stepDeg: 6 } : { ...OPEN_FAN, stepDeg: 4 };
  const choices = sensibleChoices(prepared.book, prepared.ground, spot, lie, prepared.pin, fan);
  const batches = measuringBatches(prepared, samples);
  const bySpread = new Map<number, Choice[]>();
  for (const choice of choices) {
    const group = bySpread.get(choice.spreadIndex);
    if (group === undefined) bySpread.set(choice.spreadIndex, [choice]);
    else group.push(choice);
  }
  const options: Option[] = [];
  for (const group of bySpread.values()) {
    const best = searchAim(
      evaluator,
      prepared,
      spot,
      lie,
      group,
      draws,
      fineDraws,
      work.ownValue,
      fan.stepDeg * DEGREE,
    );
    if (best === undefined) continue;
    const measured = measure(work, best, batches);
    if (measured !== null) options.push(toOption(work, measured, 'best'));
  }
  return options;
}

/** Coarse fan, then halves of its step around the best, down to about half a degree. */
function searchAim(
  evaluator: ChoiceEvaluator,
  prepared: PreparedHole,
  spot: Spot,
  lie: LieCode,
  group: readonly Choice[],
  draws: ShotDraws,
  fineDraws: ShotDraws,
  ownValue: number,
  stepRad: number,
): Choice | undefined {
  const clears = overLip(prepared.book, prepared.ground, spot, lie);
  let best = evaluator.bestOf(spot, lie, group, draws, ownValue, 2).map((ranked) => ranked.choice);
  for (let step = stepRad / 2; step > 0.4 * DEGREE; step /= 2) {
    const around = best.flatMap((choice) => [
      choice,
      ...neighbouringChoices(prepared.player, choice, step).filter(clears),
    ]);
    best =
      step < FINE_STEP_DEG * DEGREE
        ? bestOfNeighbours(evaluator, spot, lie, around, fineDraws, ownValue)
        : evaluator.bestOf(spot, lie, around, draws, ownValue, 2).map((ranked) => ranked.choice);
  }
  return best[0];
}

/** The two best of a handful, each on all the draws: on a part of them a single ball out of bounds would decide. */
function bestOfNeighbours(
  evaluator: ChoiceEvaluator,
  spot: Spot,
  lie: LieCode,
  choices: readonly Choice[],
  draws: ShotDraws,
  ownValue: number,
): Choice[] {
  const values = new Map<string, { readonly choice: Choice; readonly value: number }>();
  for (const choice of choices) {
    const key = `${choice.bearing.toFixed(5)} ${choice.carryM.toFixed(2)}`;
    if (!values.has(key))
      values.set(key, { choice, value: evaluator.valueOf(spot, lie, choice, draws, ownValue) });
  }
  const ranked = [...values.values()].sort((a, b) => a.value - b.value);
  return ranked.slice(0, 2).map((entry) => entry.choice);
}

function measure(work: SpotWork, choice: Choice, batches: readonly ShotDraws[]): MeasuredChoice | null {
  return measureChoice(work.evaluators, work.spot, work.lie, choice, batches, work.ownValue);
}

/** Measured options carry their batch means until they are ranked. */
type MeasuredOption = Option & { readonly measured?: MeasuredChoice };

function toOption(work: SpotWork, measured: MeasuredChoice, rank: string): MeasuredOption {
  const { prepared, spot } = work;
  const spread = prepared.player.spreads[measured.choice.spreadIndex]!;
  const at = aimSpot(spot, measured.choice);
  const option: MeasuredOption = {
    id: `${spread.club.name}/${spread.swing}/${rank}`,
    kind: 'shot',
    club: spread.club.name,
    clubKind: spread.club.kind,
    swing: spread.swing,
    aim: { bearing: measured.choice.bearing, spot: at, lonLat: prepared.frame.toLonLat(at) },
    carryM: measured.choice.carryM,
    meanStrokes: measured.meanStrokes,
    standardError: measured.standardError,
    lossToBest: 0,
    lossStandardError: 0,
    tooCloseToCall: false,
    scoreOdds: [0, ...measured.odds],
    parOdds: parOddsOf(measured.odds, work.strokesTaken, prepared.hole.par),
    trouble: measured.trouble,
    leave: measured.leave,
    endShare: measured.endShare,
    spreadSource: spread.source,
  };
  // Not enumerable: it serves the ranking and is not part of what is posted or printed.
  Object.defineProperty(option, 'measured', { value: measured, enumerable: false });
  return option;
}

function rankOptions(options: readonly MeasuredOption[], margin: number): Option[] {
  const sorted = [...options].sort((a, b) => a.meanStrokes - b.meanStrokes);
  const best = sorted[0];
  if (best === undefined) return [];
  return sorted
    .map((option): Option => {
      const loss =
        option.measured !== undefined && best.measured !== undefined
          ? differenceOf(option.measured, best.measured)
          : {
              mean: option.meanStrokes - best.meanStrokes,
              standardError: Math.hypot(option.standardError, best.standardError),
            };
      const tooCloseToCall = option !== best && loss.mean <= Math.max(2 * loss.standardError, margin);
      return {
        ...option,
        lossToBest: loss.mean,
        lossStandardError: option === best ? 0 : loss.standardError,
        tooCloseToCall,
      };
    })
    .filter((option, rank) => rank < FEWEST_OPTIONS || option.lossToBest < SENSIBLE_LOSS);
}
