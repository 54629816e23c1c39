/** A hole played at the desk: what was decided and what came of it, and the same hole by the plan with the same luck. */

import type { Choice, SpotPlan } from '../../../core/plan/model.ts';
import type { Decision } from '../../../core/round/own-policy.ts';
import type { Ball, PlayedShot } from '../../../core/round/play-hole.ts';
import type { ChoiceCost } from '../../../core/round/try-out.ts';

export interface TriedStroke {
  readonly shot: PlayedShot;
  readonly cost: ChoiceCost | null;
}

/** One way the hole went. */
export interface Attempt {
  readonly strokes: readonly TriedStroke[];
  /** Null once holed. */
  readonly ball: Ball | null;
  readonly score: number;
}

export interface TryHole {
  readonly hole: number;
  readonly resultKey: string;
  /** Counts the lucks of this hole. */
  readonly luck: number;
  readonly attempt: Attempt;
  /** Earlier ways with the same luck, the first first. */
  readonly others: readonly { readonly words: string; readonly attempt: Attempt }[];
  readonly plan: SpotPlan | null;
  readonly own: Decision | null;
}

export function emptyAttempt(ball: Ball): Attempt {
  return { strokes: [], ball, score: 0 };
}

/** The attempt with one more stroke. */
export function withStroke(attempt: Attempt, stroke: TriedStroke): Attempt {
  const { shot } = stroke;
  const taken = attempt.ball?.taken ?? 0;
  const score = taken + shot.penalty + (shot.kind === 'drop' ? 0 : 1);
  return { strokes: [...attempt.strokes, stroke], ball: shot.next, score };
}

/** Strokes that the own choices cost against the plan's, over the strokes where both can be weighed. */
export function costOf({ strokes }: Attempt): number {
  return strokes.reduce((sum, { cost }) => sum + (cost?.cost ?? 0), 0);
}

/** Towards a point: the full carry of the club, or less with a part swing. */
export function choiceTowards(
  ball: Pick<Ball, 'spot'>,
  target: { readonly x: number; readonly y: number },
  spreadIndex: number,
  spread: { readonly swing: string; readonly carryMean: number },
): Choice {
  const dx = target.x - ball.spot.x;
  const dy = target.y - ball.spot.y;
  const carryM = spread.swing === 'part' ? Math.min(spread.carryMean, Math.hypot(dx, dy)) : spread.carryMean;
  return { spreadIndex, bearing: Math.atan2(dx, dy), carryM };
}
