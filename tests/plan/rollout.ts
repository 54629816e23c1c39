/**
 * Plays a hole out shot by shot under a solved field's own policy, with a random source of its own: the check on
 * values that were never played, only computed backwards.
 */

import seedrandom from 'seedrandom';
import { lieAt } from '../../core/ground/hole-ground.ts';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import { ChoiceEvaluator } from '../../core/plan/evaluate.ts';
import { choiceTo } from '../../core/plan/finish.ts';
import type { Choice, Spot } from '../../core/plan/model.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { unplayablePenalty } from '../../core/plan/relief.ts';
import {
  layerOfLie,
  RELIEF_ACTION,
  REPLAY_ACTION,
  type StrokesField,
} from '../../core/plan/strokes-field.ts';
import { inverseNormal } from '../../core/random/normal.ts';
import { handDraws } from './synthetic.ts';

export interface RolledOut {
  readonly mean: number;
  readonly standardError: number;
  /** Share of rounds per number of strokes; the last entry is that many or more. */
  readonly shares: readonly number[];
}

/** More strokes than this and the policy is going round in circles. */
const MOST_STROKES = 60;

/** The action of the nearest known node of the lie's layer: what to hit and the point to aim at. */
function nearestAction(field: StrokesField, spot: Spot, lie: number): { spreadIndex: number; aim: Spot } {
  const layer = field.layers[layerOfLie(lie)]!;
  const column = (spot.x - field.ground.west) / field.spacingM;
  const row = (spot.y - field.ground.south) / field.spacingM;
  let nearest = Infinity;
  let best = -1;
  for (let r = Math.floor(row) - 1; r <= Math.floor(row) + 2; r++) {
    for (let c = Math.floor(column) - 1; c <= Math.floor(column) + 2; c++) {
      if (c < 0 || r < 0 || c >= field.columns || r >= field.rows) continue;
      const node = r * field.columns + c;
      const away = Math.hypot(c - column, r - row);
      if (Number.isNaN(layer.value[node]!) || away >= nearest) continue;
      nearest = away;
      best = node;
    }
  }
  if (best < 0) throw new Error(`no node near ${spot.x}, ${spot.y} in lie ${lie}`);
  return {
    spreadIndex: layer.spreadIndex[best]!,
    aim: { x: layer.aimX[best]!, y: layer.aimY[best]! },
  };
}

/** `rounds` rounds from `from`; `first` is played there instead of the field's own action. */
export function rollOut(
  prepared: PreparedHole,
  field: StrokesField,
  from: Spot,
  lie: LieCode,
  rounds: number,
  seed: string,
  first?: Choice,
): RolledOut {
  const random = seedrandom(seed);
  const evaluator = new ChoiceEvaluator(field, prepared.book);
  const shares = new Array<number>(11).fill(0);
  let sum = 0;
  let squares = 0;
  for (let round = 0; round < rounds; round++) {
    const strokes = playHole(prepared, evaluator, from, lie, random, first);
    sum += strokes;
    squares += strokes * strokes;
    shares[Math.min(10, strokes)] = shares[Math.min(10, strokes)]! + 1 / rounds;
  }
  const mean = sum / rounds;
  return { mean, standardError: Math.sqrt((squares / rounds - mean * mean) / rounds), shares };
}

function playHole(
  prepared: PreparedHole,
  evaluator: ChoiceEvaluator,
  from: Spot,
  fromLie: LieCode,
  random: () => number,
  first: Choice | undefined,
): number {
  const { field } = evaluator;
  let spot = from;
  let lie: number = fromLie;
  let strokes = 0;
  let isFirst = true;
  while (lie !== Lie.green) {
    if (strokes > MOST_STROKES) throw new Error(`no end from ${from.x}, ${from.y}`);
    const action = isFirst && first !== undefined ? null : nearestAction(field, spot, lie);
    if (action?.spreadIndex === RELIEF_ACTION) {
      const dropLie = lieAt(field.ground, action.aim.x, action.aim.y);
      strokes += unplayablePenalty(lie, dropLie);
      spot = action.aim;
      lie = dropLie;
      continue;
    }
    if (action?.spreadIndex === REPLAY_ACTION) {
      strokes += 1;
      spot = prepared.tee;
      lie = Lie.tee;
      continue;
    }
    const choice =
      action === null
        ? first!
        : choiceTo(prepared.book, spot, lie as LieCode, action.spreadIndex, action.aim);
    const law = evaluator.book.lawOf(choice.spreadIndex, lie as LieCode, choice.carryM)!;
    const draws = handDraws({
      distanceZ: inverseNormal(random() + 1e-16),
      directionZ: inverseNormal(random() + 1e-16),
      rollZ: inverseNormal(random() + 1e-16),
      gustZ: inverseNormal(random() + 1e-16),
      poorU: random(),
      canopyDepth: -Math.log(1 - random()),
    });
    const next = evaluator.play(spot, law, choice.bearing, draws, 0, field.valueAt(spot.x, spot.y, lie));
    strokes += 1 + next.penalty;
    if (next.replay) continue;
    isFirst = false;
    spot = { x: next.x, y: next.y };
    lie = next.lie;
  }
  return strokes + putts(prepared, spot, random());
}

/** Putts to hole out; four or more count as four. */
function putts(prepared: PreparedHole, spot: Spot, u: number): number {
  const odds = prepared.putts.oddsAt(spot.x - prepared.pin.x, spot.y - prepared.pin.y);
  let sum = 0;
  for (let k = 0; k < 3; k++) {
    sum += odds[k]!;
    if (u < sum) return k + 1;
  }
  return 4;
}
