/** Odds of each score along the solved policy, settled from the hole outwards like the values. */

import { lieAt } from '../ground/hole-ground.ts';
import type { LieCode } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import type { ChoiceEvaluator } from './evaluate.ts';
import { choiceTo } from './finish.ts';
import type { ParOdds, SolveProgress, Spot } from './model.ts';
import { unplayablePenalty } from './relief.ts';
import { RELIEF_ACTION, REPLAY_ACTION, SCORE_COLUMNS, type FieldLayer } from './strokes-field.ts';

/** A node in the order of the sweep, and its own draws. */
export interface OddsState {
  readonly layer: number;
  readonly node: number;
  readonly spot: Spot;
  readonly lie: LieCode;
  readonly draws: () => ShotDraws;
}

const ODDS_SWEEPS = 2;
/** The first sweep only brings the odds near; it looks at so many draws a node. */
const FIRST_ODDS_DRAWS = 16;
const NODES_PER_STEP = 96;

/**
 * Fills `odds` of every layer. Two sweeps: play goes towards the hole but for the odd ball past or behind. `teeOdds`: odds from
 * the tee by what is settled so far, for places from which the tee stroke is played again.
 */
export function* settleOdds(
  evaluator: ChoiceEvaluator,
  states: readonly OddsState[],
  teeOdds: () => Float64Array,
  stage: string,
): Generator<SolveProgress, void, void> {
  const { field } = evaluator;
  evaluator.relief.forget();
  for (const layer of field.layers) {
    layer.value.forEach((value, node) => {
      if (!Number.isNaN(value)) guessOdds(layer, node);
    });
  }
  const into = new Float64Array(SCORE_COLUMNS);
  for (let sweep = 0; sweep < ODDS_SWEEPS; sweep++) {
    const fromTee = teeOdds();
    for (const [i, state] of states.entries()) {
      if (i % NODES_PER_STEP === 0)
        yield { stage: `${stage}, odds ${sweep + 1}`, done: i, total: states.length };
      const layer = field.layers[state.layer]!;
      const action = layer.spreadIndex[state.node]!;
      into.fill(0);
      const aim = { x: layer.aimX[state.node]!, y: layer.aimY[state.node]! };
      if (action === RELIEF_ACTION) {
        const lie = lieAt(field.ground, aim.x, aim.y);
        field.addOdds(aim.x, aim.y, lie, 1, unplayablePenalty(state.lie, lie), into);
      } else if (action === REPLAY_ACTION) {
        fromTee.forEach((share, k) => {
          const later = Math.min(SCORE_COLUMNS - 1, k + 1);
          into[later] = into[later]! + share;
        });
      } else if (action >= 0) {
        const choice = choiceTo(evaluator.book, state.spot, state.lie, action, aim);
        addChoiceOdds(
          evaluator,
          state.spot,
          state.lie,
          choice,
          state.draws(),
          layer.value[state.node]!,
          into,
          sweep < ODDS_SWEEPS - 1 ? FIRST_ODDS_DRAWS : undefined,
        );
      } else {
        continue;
      }
      layer.odds.set(into, state.node * SCORE_COLUMNS);
    }
  }
}

/** Odds of each score under one choice by `draws`, into `into` (overwritten; entry k is k + 1 strokes). */
export function addChoiceOdds(
  evaluator: ChoiceEvaluator,
  spot: Spot,
  lie: LieCode,
  choice: { readonly spreadIndex: number; readonly bearing: number; readonly carryM: number },
  draws: ShotDraws,
  ownValue: number,
  into: Float64Array,
  count = draws.count,
): void {
  const law = evaluator.book.lawOf(choice.spreadIndex, lie, choice.carryM);
  into.fill(0);
  if (law === null) return;
  let replays = 0;
  evaluator.playEach(spot, law, choice.bearing, draws, 0, count, ownValue, (next) => {
    if (next.replay) replays++;
    else evaluator.field.addOdds(next.x, next.y, next.lie, 1 / count, 1 + next.penalty, into);
  });
  addReplays(into, replays / count);
}

/** A share `p` of shots is played again two strokes later: odds[k] = rest[k] + p odds[k - 2]; the last entry takes what is left. */
export function addReplays(odds: Float64Array, p: number): void {
  if (p === 0) return;
  const last = SCORE_COLUMNS - 1;
  let sum = 0;
  for (let k = 0; k < last; k++) {
    if (k >= 2) odds[k] = odds[k]! + p * odds[k - 2]!;
    sum += odds[k]!;
  }
  odds[last] = Math.max(0, 1 - sum);
}

/** Starting odds with the right mean: two neighbouring scores. */
function guessOdds(layer: FieldLayer, node: number): void {
  const strokes = Math.min(SCORE_COLUMNS - 1, Math.max(1, layer.value[node]!));
  const low = Math.floor(strokes);
  layer.odds[node * SCORE_COLUMNS + low - 1] = 1 - (strokes - low);
  layer.odds[node * SCORE_COLUMNS + low] = strokes - low;
}

/** Chances against par with `taken` strokes behind; `odds[k]` is for k + 1 more strokes. */
export function parOddsOf(odds: ArrayLike<number>, taken: number, par: number): ParOdds {
  let parOrBetter = 0;
  let bogey = 0;
  let doubleOrWorse = 0;
  for (let k = 0; k < odds.length; k++) {
    const score = taken + k + 1;
    if (score <= par) parOrBetter += odds[k]!;
    else if (score === par + 1) bogey += odds[k]!;
    else doubleOrWorse += odds[k]!;
  }
  return { parOrBetter, bogey, doubleOrWorse };
}
