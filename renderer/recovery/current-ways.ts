/** The ways out for where the ball lies now, on the day as it is now; older ones say nothing about it. */

import type { AppState, WaysOutAnswer } from '../state/app-state.ts';
import { ballPlace, currentHole, workKey } from '../state/selectors.ts';

export function currentWays(state: AppState): WaysOutAnswer | null {
  const answer = state.answers.waysOut;
  const hole = currentHole(state);
  const ball = ballPlace(state);
  if (answer === null || hole === null || ball === null || answer.hole !== hole.number) return null;
  const isHere = answer.ball[0] === ball[0] && answer.ball[1] === ball[1];
  return isHere && answer.resultKey === workKey(state, hole) ? answer : null;
}
