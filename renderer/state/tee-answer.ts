/** For a ball on the tee the hole's result brings plan and picture with it: no worker need be asked again. */

import type { LonLat } from '../../core/course/model.ts';
import { isSwing, type ShotPicture } from '../workers/planner-api.ts';
import type { AppState, HoleResult, ShotId } from './app-state.ts';
import { shown } from './history.ts';
import { currentHole, currentResult, heldResult, holeSituation, teeOf } from './selectors.ts';

export interface TeeAnswer {
  readonly result: HoleResult;
  readonly ball: LonLat;
  /** From an earlier start: no worker holds the hole yet. */
  readonly isKept: boolean;
}

/** Null where the spot on screen asks for more than the result's own plan from the tee. */
export function teeAnswer(state: AppState): TeeAnswer | null {
  const hole = currentHole(state);
  const result = currentResult(state);
  if (hole === null || result === null) return null;
  const { ball, aim, strokesTaken } = holeSituation(state, hole.number);
  const tee = teeOf(hole, shown(state.history).teeName);
  if (ball !== null || (strokesTaken ?? 0) > 0 || result.teeName !== tee.name) return null;
  // while something is dragged, all answers are quick ones
  if (state.history.preview !== null && !result.rough) return null;
  const isKept = result !== heldResult(state);
  // an aim of one's own is weighed by a worker, against a plan of the same worker
  if (isKept && aim !== null) return null;
  return { result, ball: tee.at, isKept };
}

/** The picture of a shot, where the result brought it. */
export function teePictureOf(answer: TeeAnswer | null, shot: ShotId): ShotPicture | null {
  if (answer === null) return null;
  const { teePlan, teePicture } = answer.result;
  const isRecommended = teePlan.recommendation.optionId === shot;
  return isRecommended && teePlan.options.some((option) => option.id === shot && isSwing(option))
    ? teePicture
    : null;
}
