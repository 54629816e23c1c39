/** One putt told in full: the line and pace to aim for, the chance to hole it, where misses stop, how many putts it takes. */

import { expectedPuttsAt, puttChancesAt, type PuttChances, type PuttField } from './putt-field.ts';
import { puttDraws } from './putt-draws.ts';
import { PuttRoller } from './roll-putt.ts';
import { rollDraw, strokeFrom } from './stroke.ts';

export interface PuttReport {
  readonly distanceM: number;
  readonly chances: PuttChances;
  readonly expectedPutts: number;
  /** Standard error of the chance to hole, from the number of putts drawn (an upper bound: the draws are evenly spread). */
  readonly holeError: number;
  /** Where to aim beside the hole, metres at the hole's distance, positive to the right of it. */
  readonly aimOffsetM: number;
  /** Speed off the club, m/s, and the length of the level putt on this green that starts as fast and runs as far past. */
  readonly speedMps: number;
  readonly playsLikeM: number;
  readonly leave: LeaveReport;
}

/** Of the putts that miss. */
export interface LeaveReport {
  readonly meanM: number;
  /** Lengths that one, five and nine of ten leaves do not exceed. */
  readonly tenthM: number;
  readonly medianM: number;
  readonly ninthM: number;
  /** Share of the misses that stop short of the hole (seen along the straight line), and that pass it on the right. */
  readonly shortShare: number;
  readonly rightShare: number;
}

/** `draws` a power of two. The second putt and those after come from `field`. */
export function reportPutt(field: PuttField, x: number, y: number, draws = 8192): PuttReport {
  const { problem, decelerationMps2, skill } = field;
  const stroke = strokeFrom(problem.surface, decelerationMps2, skill, x, y);
  const roller = new PuttRoller(problem.surface, decelerationMps2);
  const errors = puttDraws(draws);
  const distanceM = Math.hypot(x, y);
  const leaves: number[] = [];
  let [short, right, two, more] = [0, 0, 0, 0];
  for (let i = 0; i < draws; i++) {
    rollDraw(roller, stroke, skill, errors, i);
    if (roller.holed) continue;
    leaves.push(Math.hypot(roller.endX, roller.endY));
    // Along and right of the straight line from the ball to the hole.
    if (-(x * roller.endX + y * roller.endY) < 0) short += 1;
    if (x * roller.endY - y * roller.endX > 0) right += 1;
    two += puttChancesAt(field, roller.endX, roller.endY).one;
    more += expectedPuttsAt(field, roller.endX, roller.endY);
  }
  const missed = leaves.length;
  const one = (draws - missed) / draws;
  leaves.sort((a, b) => a - b);
  const quantile = (share: number): number =>
    missed === 0 ? 0 : leaves[Math.min(missed - 1, Math.floor(share * missed))]!;
  return {
    distanceM,
    chances: { one, two: two / draws, threeOrMore: Math.max(0, 1 - one - two / draws) },
    expectedPutts: 1 + more / draws,
    holeError: Math.sqrt((one * (1 - one)) / draws),
    aimOffsetM: distanceM * Math.tan(stroke.breakTurn),
    speedMps: stroke.intended.speedMps,
    playsLikeM: stroke.square / (2 * decelerationMps2) - skill.pastM,
    leave: {
      meanM: missed === 0 ? 0 : leaves.reduce((sum, leave) => sum + leave, 0) / missed,
      tenthM: quantile(0.1),
      medianM: quantile(0.5),
      ninthM: quantile(0.9),
      shortShare: missed === 0 ? 0 : short / missed,
      rightShare: missed === 0 ? 0 : right / missed,
    },
  };
}
