/** What panels need to put the current plan into words: frame, ball and hole position in metres. */

import type { Hole } from '../../core/course/model.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { Option, Spot, SpotPlan } from '../../core/plan/model.ts';
import type { AppState } from '../state/app-state.ts';
import { lengthText } from '../state/measures.ts';
import { currentHole, currentPlan, drawingFrame, holeSituation, positionOf } from '../state/selectors.ts';
import type { Words } from '../../core/words/words.ts';
import { wordsOf } from '../state/use-words.ts';
import { aimWords, noAimWords } from './shot-words.ts';

export interface PlanFrame {
  readonly hole: Hole;
  readonly frame: LocalFrame;
  readonly plan: SpotPlan;
  readonly from: Spot;
  readonly pin: Spot;
}

export function planFrame(state: AppState): PlanFrame | null {
  const hole = currentHole(state);
  const frame = drawingFrame(state);
  const plan = currentPlan(state);
  if (hole === null || frame === null || plan === null) return null;
  const { position } = holeSituation(state, hole.number);
  return {
    hole,
    frame,
    plan,
    from: frame.toSpot(plan.fromLonLat),
    pin: frame.toSpot(positionOf(hole, position).at),
  };
}

/** `carry 231 yd, aim 8 yd left of the hole’s line`; for a putt or a drop what it is. */
export function aimPhrase(state: AppState, option: Option): string {
  const words = wordsOf(state);
  const carry = lengthText(option.carryM, state.settings.units);
  return (
    noAimWords(option, words) ?? words.plan.carryAndAim({ carry, aim: aimOf(state, option, false, words) })
  );
}

/** `231 yd, 8 yd left of line`, for narrow places. */
export function aimNote(state: AppState, option: Option): string {
  const words = wordsOf(state);
  return (
    noAimWords(option, words) ??
    `${lengthText(option.carryM, state.settings.units)}, ${aimOf(state, option, true, words)}`
  );
}

function aimOf(state: AppState, option: Option, short: boolean, words: Words): string {
  const found = planFrame(state);
  return found === null ? '' : aimWords(option, found, state.settings.units, words, short);
}
