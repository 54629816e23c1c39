/**
 * What a swing gained, in three parts that add up.
 * Choice: what the club and aim cost on average against the plan's. Execution: how far the ball strayed from the middle of
 * the player's own pattern, valued at what misses of that size cost on average, whichever way they go. Luck: the rest, that
 * is on which side it strayed and what lay there. Execution and luck both average zero for somebody who plays to the
 * measured spread; execution that stays above or below zero says that the spread is no longer right.
 */

import type { Choice, Spot } from '../plan/model.ts';
import { LuckSource } from './luck.ts';
import type { Ball, HolePlay } from './play-hole.ts';
import { costOfChoice } from './try-out.ts';

export interface ShotSplit {
  readonly choice: number;
  readonly execution: number;
  readonly luck: number;
}

const PATTERN_SHOTS = 512;
/** Pattern shots of about the same miss over which its cost is averaged. */
const ALIKE = 64;

/**
 * Splits `gained` of a swing from `ball` that ended at `end` (before relief). Null where the choice cannot be weighed
 * against the plan's: that club is not played from there, or the plan would drop.
 */
export function splitShot(
  play: HolePlay,
  ball: Ball,
  choice: Choice,
  end: Spot,
  gained: number,
  seed: string,
): ShotSplit | null {
  const cost = costOfChoice(play, ball, choice, 1024);
  if (cost === null) return null;
  const source = new LuckSource(`${seed} split`, play.prepared.hole.number);
  const pattern = Array.from({ length: PATTERN_SHOTS }, (_, i) => {
    const shot = play.play(ball, { kind: 'swing', choice }, source.luckOf(i, ball.step));
    return { end: shot.end, gained: shot.gained };
  });
  const stray = strayOf(pattern.map((shot) => shot.end));
  const own = stray(end);
  const alike = pattern
    .map((shot) => ({ away: Math.abs(stray(shot.end) - own), gained: shot.gained }))
    .sort((a, b) => a.away - b.away)
    .slice(0, ALIKE);
  const execution = meanOf(alike.map((shot) => shot.gained)) - meanOf(pattern.map((shot) => shot.gained));
  return { choice: -cost.cost, execution, luck: gained + cost.cost - execution };
}

/** Distance from the middle of the pattern in its own standard deviations (Mahalanobis 1936). */
function strayOf(ends: readonly Spot[]): (end: Spot) => number {
  const mx = meanOf(ends.map(({ x }) => x));
  const my = meanOf(ends.map(({ y }) => y));
  const xx = meanOf(ends.map(({ x }) => (x - mx) ** 2));
  const yy = meanOf(ends.map(({ y }) => (y - my) ** 2));
  const xy = meanOf(ends.map(({ x, y }) => (x - mx) * (y - my)));
  const determinant = Math.max(1e-12, xx * yy - xy * xy);
  return ({ x, y }) => {
    const dx = x - mx;
    const dy = y - my;
    return Math.sqrt(Math.max(0, (yy * dx * dx - 2 * xy * dx * dy + xx * dy * dy) / determinant));
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
