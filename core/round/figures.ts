/** What a round comes to under its plan: odds, budgets, ledger, and what may be played instead on each tee. */

import type { SpotPlan } from '../plan/model.ts';
import { makeBudget, type RoundBudget } from './budget.ts';
import type { ScoreDistribution } from './distribution.ts';
import { type HoleLedger, type RoundLedger, roundLedger } from './ledger.ts';
import { type HoleChoices, playToTarget, type TargetPlan } from './play-to-target.ts';
import { recommendedOf } from './round-hole.ts';
import { holeScores, roundOdds, type RoundOdds } from './score-distribution.ts';

/** A hole and its plan from the tee. */
export interface TeePlanned {
  readonly hole: number;
  readonly par: number;
  readonly strokeIndex: number | null;
  readonly plan: SpotPlan;
}

export interface RoundOutlook {
  /** The highest score that still counts. */
  readonly target: number;
  readonly odds: RoundOdds;
  readonly scores: readonly ScoreDistribution[];
  readonly budget: RoundBudget;
}

export interface RoundFigures extends RoundOutlook {
  readonly ledger: RoundLedger | null;
  readonly choices: readonly HoleChoices[];
  readonly playing: TargetPlan;
}

/** Odds and budgets alone: quick enough to follow every keystroke. */
export function roundOutlook(holes: readonly TeePlanned[], target: number, formSd?: number): RoundOutlook {
  const scores = holes.map(({ plan }) => holeScores(recommendedOf(plan)));
  return {
    target,
    odds: roundOdds(scores, target, formSd),
    scores,
    budget: makeBudget(
      holes.map(({ hole, par, strokeIndex }, i) => ({
        hole,
        par,
        scores: scores[i]!,
        ...(strokeIndex === null ? {} : { strokeIndex }),
      })),
      target,
    ),
  };
}

/** What may be played from each tee. */
export function choicesOf(holes: readonly TeePlanned[]): readonly HoleChoices[] {
  return holes.map(({ hole, par, plan }) => ({
    hole,
    par,
    options: plan.options
      .filter(({ kind }) => kind === 'shot')
      .map((option) => ({ id: option.id, scores: holeScores(option) })),
  }));
}

export function roundFigures(
  holes: readonly (TeePlanned & { readonly ledger: HoleLedger | null })[],
  target: number,
  formSd?: number,
): RoundFigures {
  const choices = choicesOf(holes);
  const ledgers = holes.flatMap(({ ledger }) => (ledger === null ? [] : [ledger]));
  return {
    ...roundOutlook(holes, target, formSd),
    ledger: ledgers.length === holes.length && holes.length > 0 ? roundLedger(ledgers) : null,
    choices,
    playing: playToTarget(choices, { kind: 'score', target }, formSd),
  };
}
