/** Trying a hole out at the desk: what the player's own choice costs, and the same luck with another choice. */

import { compareChoices } from '../plan/options.ts';
import type { Choice } from '../plan/model.ts';
import { decideBy, type Ball, type HolePlay, type PlayedHole, playHole } from './play-hole.ts';
import type { Decision } from './own-policy.ts';
import type { HoleLuck } from './luck.ts';

/** Strokes that a choice costs on average against the plan's, with its standard error. */
export interface ChoiceCost {
  readonly cost: number;
  readonly standardError: number;
  readonly tooCloseToCall: boolean;
}

/** Null where the plan does not swing there, or one of the two cannot be played. */
export function costOfChoice(
  play: HolePlay,
  ball: Ball,
  choice: Choice,
  samples?: number,
): ChoiceCost | null {
  const plan = play.ownDecision(ball);
  if (plan.kind !== 'swing') return null;
  const settings = samples === undefined ? {} : { samples };
  const compared = compareChoices(play.prepared, play.field, ball.spot, choice, plan.choice, settings);
  if (compared === null) return null;
  return {
    cost: compared.difference,
    standardError: compared.standardError,
    tooCloseToCall: compared.tooCloseToCall,
  };
}

/**
 * The hole again with the same luck, another decision at `step`, everything before as it was played, and the plan's own
 * decisions after it.
 */
export function replayHole(
  play: HolePlay,
  played: PlayedHole,
  luck: HoleLuck,
  step: number,
  decision: Decision,
): PlayedHole {
  const before = played.shots.slice(0, step).map((shot) => shot.decision);
  return playHole(play, luck, decideBy(play, [...before, decision]));
}
