/**
 * Odds of a whole round: the holes' score distributions added up exactly (convolution), with the form of the day as one
 * factor that all holes share.
 *
 * Form: on a given day every hole's distribution is tilted at one common rate (see `tilted`), such that the round's
 * expected score lies z x `FORM_SD_STROKES` above the plan's, z standard normal. Given z the holes are independent and
 * are convolved; the mean over z is taken by Gauss-Hermite quadrature. Holes on which scores vary more move more; a
 * certain score does not move, so that without any spread a round is plain arithmetic. The mean stays that of the plan.
 */

import type { Option } from '../plan/model.ts';
import {
  centralRange,
  chanceOfAtMost,
  makeDistribution,
  meanOf,
  mixDistributions,
  rateForTotal,
  type ScoreDistribution,
  sumOfDistributions,
  tilted,
  varianceOf,
} from './distribution.ts';
import { gaussHermite } from './gauss-hermite.ts';

/**
 * Standard deviation of the form of the day, in strokes over 18 holes. An assumption, for no figure for club players was
 * found; two sources bound it. Holes of one round depend little on each other: not at all in a large set of junior
 * amateurs, weakly among the least skilled (Cotton, McIntyre & Price 2016, "Correcting for bias in hot hand analysis:
 * analyzing performance streaks in youth golf"). And a club player's rounds, conditions of the day included, have a
 * standard deviation of 3.6 to 4.4 strokes: a handicap is met or beaten in one round of five and lies three below the
 * average, while half the rounds fall within three of the average (Knuth 2008, on the handicap system of the USGA).
 * The holes' own luck makes 3.6 of that for the sample player, with this figure 3.9 in all.
 */
export const FORM_SD_STROKES = 1.5;

/** Nodes of the quadrature: doubling them moves no chance by more than 1e-6 for the spreads of a round. */
const FORM_NODES = 15;
const FULL_ROUND_HOLES = 18;

/**
 * Score on a hole under an option from its tee. The last entry of the odds (that many or more) counts as just that many,
 * and the odds come from a coarser look than the mean; so the odds are tilted to have the option's own mean.
 */
export function holeScores(
  option: Pick<Option, 'scoreOdds' | 'meanStrokes'>,
  strokesTaken = 0,
): ScoreDistribution {
  const odds = makeDistribution(0, option.scoreOdds);
  const scores = tilted(odds, rateForTotal([odds], option.meanStrokes));
  return { ...scores, lowest: scores.lowest + strokesTaken };
}

/** One day's form: the common rate at which all holes are tilted, and the weight of that day. */
export interface FormRate {
  /** In standard deviations; positive: more strokes. */
  readonly z: number;
  readonly weight: number;
  readonly rate: number;
}

/** The days over which a round is averaged; one plain day where form counts for nothing. `formSd`: strokes over 18 holes. */
export function formRates(
  holes: readonly ScoreDistribution[],
  formSd = FORM_SD_STROKES,
  nodes = FORM_NODES,
): readonly FormRate[] {
  if (!(formSd >= 0 && formSd < 20)) throw new RangeError(`Unexpected spread of form: ${formSd} strokes.`);
  const canMove = holes.some((hole) => hole.chances.length > 1);
  if (formSd === 0 || !canMove) return [{ z: 0, weight: 1, rate: 0 }];
  const rule = gaussHermite(nodes);
  return rule.nodes.map((z, i) => ({ z, weight: rule.weights[i]!, rate: rateInForm(holes, z, formSd) }));
}

function rateInForm(holes: readonly ScoreDistribution[], z: number, formSd: number): number {
  const mean = holes.reduce((sum, hole) => sum + meanOf(hole), 0);
  return rateForTotal(holes, mean + (z * formSd * holes.length) / FULL_ROUND_HOLES);
}

/** The holes on a day of form `z`. */
export function holesInForm(
  holes: readonly ScoreDistribution[],
  z: number,
  formSd = FORM_SD_STROKES,
): readonly ScoreDistribution[] {
  const rate = rateInForm(holes, z, formSd);
  return holes.map((hole) => tilted(hole, rate));
}

export function roundDistribution(
  holes: readonly ScoreDistribution[],
  formSd = FORM_SD_STROKES,
  nodes = FORM_NODES,
): ScoreDistribution {
  const days = formRates(holes, formSd, nodes).map(({ weight, rate }) => ({
    weight,
    distribution: sumOfDistributions(holes.map((hole) => tilted(hole, rate))),
  }));
  return days.length === 1 ? days[0]!.distribution : mixDistributions(days);
}

export interface RoundOdds {
  readonly distribution: ScoreDistribution;
  readonly expected: number;
  readonly sd: number;
  /** The scores between which at least 8 of 10 rounds fall. */
  readonly range: { readonly low: number; readonly high: number; readonly share: number };
  /** Strokes over 18 holes; 0: every day alike. */
  readonly formSd: number;
  /** Chance of `target` or fewer; null without a target. */
  readonly target: { readonly score: number; readonly chance: number } | null;
}

const TOLD_SHARE = 0.8;

/** `target`: the highest score that still counts (see target.ts). */
export function roundOdds(
  holes: readonly ScoreDistribution[],
  target: number | null,
  formSd = FORM_SD_STROKES,
): RoundOdds {
  const distribution = roundDistribution(holes, formSd);
  return {
    distribution,
    expected: meanOf(distribution),
    sd: Math.sqrt(varianceOf(distribution)),
    range: centralRange(distribution, TOLD_SHARE),
    formSd,
    target: target === null ? null : { score: target, chance: chanceOfAtMost(distribution, target) },
  };
}
