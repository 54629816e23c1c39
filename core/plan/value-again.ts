/**
 * Values settled choices anew on shots that had no part in choosing them, in independent groups: each group's shots are
 * valued by a field of its own, so that the error of places near the hole is carried to those that play towards them, and the
 * scatter of the groups is the field's whole chance error.
 */

import { lieAt } from '../ground/hole-ground.ts';
import type { LieCode } from '../ground/lies.ts';
import { DrawPool } from '../random/shot-draws.ts';
import type { ChoiceEvaluator, Tally } from './evaluate.ts';
import { meansOf } from './measure-choice.ts';
import type { NodeState } from './inherit.ts';
import type { SolveProgress, Spot } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import { unplayablePenalty } from './relief.ts';
import { NO_ACTION, RELIEF_ACTION, REPLAY_ACTION, REPLICAS, type StrokesField } from './strokes-field.ts';

/** Label of the sets, and how many the nodes share out among themselves. */
const REVALUING = 16;
const POOL_SIZE = 64;
const NODES_PER_STEP = 96;

/**
 * One sweep from the hole outwards. `states` in that order; `draws` shots a node in all. The field becomes the mean of its
 * replicas. `coarser`: its replicas, if it has any, are where these start from. `smooths`: see `StrokesField.smooth`.
 */
export function* valueAgain(
  prepared: PreparedHole,
  evaluator: ChoiceEvaluator,
  coarser: StrokesField | null,
  states: readonly NodeState[],
  draws: number,
  replayCost: number,
  smooths: boolean,
  stage: string,
): Generator<SolveProgress, void, void> {
  const { field } = evaluator;
  const replicas = Array.from({ length: REPLICAS }, (_, r) => startReplica(field, coarser, r));
  const pool = new DrawPool(prepared.key, draws, POOL_SIZE, REVALUING, REPLICAS);
  const tallies = replicas.map((): Tally => ({ sum: 0, replays: 0, count: 0 }));
  evaluator.relief.forget();
  for (const [i, state] of states.entries()) {
    if (i % NODES_PER_STEP === 0) yield { stage: `${stage}, error`, done: i, total: states.length };
    const layer = field.layers[state.layer]!;
    const action = layer.spreadIndex[state.node]!;
    if (action === NO_ACTION || action === REPLAY_ACTION) continue;
    const choice = state.choices[0]?.choice;
    if (action === RELIEF_ACTION) {
      const drop = { x: layer.aimX[state.node]!, y: layer.aimY[state.node]! };
      for (const replica of replicas) {
        const value = reliefValue(replica, state.lie, drop);
        if (Number.isFinite(value))
          replica.layers[state.layer]!.value[state.node] = Math.min(value, replayCost);
      }
    } else if (choice !== undefined) {
      const law = evaluator.book.lawOf(choice.spreadIndex, state.lie, choice.carryM);
      if (law === null) continue;
      const set = pool.drawsOf(state.node, state.layer);
      evaluator.addGroups(state.spot, law, choice.bearing, set, layer.value[state.node]!, replicas, tallies);
      const means = meansOf(tallies);
      if (means === null) continue;
      // Playing the last stroke again caps the mean, not each group: that would cut off the scatter's dear side only.
      const over = Math.max(0, means.meanStrokes - replayCost);
      means.batchMeans.forEach((mean, r) => {
        replicas[r]!.layers[state.layer]!.value[state.node] = mean - over;
      });
    }
  }
  if (smooths) for (const replica of replicas) replica.smooth();
  field.layers.forEach((layer, index) => {
    for (let node = 0; node < layer.value.length; node++) {
      let sum = 0;
      for (const replica of replicas) sum += replica.layers[index]!.value[node]!;
      layer.value[node] = sum / replicas.length;
    }
  });
  field.replicas = replicas;
}

/** The field, moved by as much as the coarser field's replica differs from the coarser field there. */
function startReplica(field: StrokesField, coarser: StrokesField | null, r: number): StrokesField {
  const replica = field.makeReplica();
  const before = coarser?.replicas[r];
  if (coarser !== null && before !== undefined) replica.addDifference(before, coarser);
  return replica;
}

export function reliefValue(field: StrokesField, from: LieCode, drop: Spot): number {
  const lie = lieAt(field.ground, drop.x, drop.y);
  return unplayablePenalty(from, lie) + field.valueAt(drop.x, drop.y, lie);
}
