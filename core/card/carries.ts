/** What lies along a shot: distances to reach and to carry sand and water, and where the fairway runs out. */

import type { Words } from '../words/words.ts';
import type { Course } from '../course/model.ts';
import { isOnRaster, lieAt } from '../ground/hole-ground.ts';
import { Lie, LIE_NAMES } from '../ground/lies.ts';
import type { Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { alongRing, distanceOf, pointAlong } from './frame.ts';
import type { CardDistance, RunOut } from './model.ts';

/** Half width of the lane beside the aim, metres at the ball and growth per metre: about five degrees either side. */
const LANE_M = 10;
const LANE_GROWTH = 0.09;
const EDGE_STEP_M = 2;
const NEAREST_M = 25;

const TOLD = ['bunker', 'penalty-yellow', 'penalty-red'] as const;

/** Sand and penalty areas within the lane from `from` at `bearing`, out to `reachM`; nearest first, `most` at most. */
export function carriesAlong(
  course: Course,
  prepared: PreparedHole,
  from: Spot,
  bearing: number,
  reachM: number,
  words: Words,
  most = 5,
): readonly CardDistance[] {
  const found: CardDistance[] = [];
  for (const area of course.areas) {
    const kind = TOLD.find((told) => told === area.kind);
    if (kind === undefined) continue;
    const outline = (area.rings[0] ?? []).map((place) => prepared.frame.toSpot(place));
    const carry = carryOver(outline, from, bearing, reachM);
    if (carry !== null) found.push({ words: words.cards.carries[kind], ...carry });
  }
  return found.sort((a, b) => a.nearM - b.nearM).slice(0, most);
}

function carryOver(
  outline: readonly Spot[],
  from: Spot,
  bearing: number,
  reachM: number,
): Omit<CardDistance, 'words'> | null {
  const sin = Math.sin(bearing);
  const cos = Math.cos(bearing);
  let near: Spot | null = null;
  let far: Spot | null = null;
  let nearM = Infinity;
  let farM = -Infinity;
  let leftmost = Infinity;
  let rightmost = -Infinity;
  for (const spot of alongRing(outline, EDGE_STEP_M)) {
    const dx = spot.x - from.x;
    const dy = spot.y - from.y;
    const ahead = dx * sin + dy * cos;
    const aside = dx * cos - dy * sin;
    if (ahead < NEAREST_M || ahead > reachM || Math.abs(aside) > LANE_M + LANE_GROWTH * ahead) continue;
    const distance = distanceOf(from, spot);
    if (distance < nearM) [nearM, near] = [distance, spot];
    if (distance > farM) [farM, far] = [distance, spot];
    leftmost = Math.min(leftmost, aside);
    rightmost = Math.max(rightmost, aside);
  }
  if (near === null || far === null) return null;
  const side = leftmost > 0 ? 'right' : rightmost < 0 ? 'left' : 'across';
  return { nearM, farM, near, far, side };
}

const RUN_STEP_M = 1;

/** Where the fairway that the ball comes down on ends along the aim; null where it does not end before the green. */
export function runOutAlong(
  prepared: PreparedHole,
  from: Spot,
  bearing: number,
  carryM: number,
  words: Words,
): RunOut | null {
  const { ground } = prepared;
  let onFairway = false;
  const last = distanceOf(from, prepared.pin) * 1.3;
  for (let metres = Math.max(NEAREST_M, carryM * 0.85); metres < last; metres += RUN_STEP_M) {
    const at = pointAlong(from, bearing, metres);
    if (!isOnRaster(ground, at.x, at.y)) return null;
    const lie = lieAt(ground, at.x, at.y);
    if (lie === Lie.green) return null;
    if (lie === Lie.fairway || lie === Lie.path) onFairway ||= lie === Lie.fairway;
    else if (onFairway) {
      const into = LIE_NAMES[lie]!;
      return { atM: metres, into, at, words: words.cards.into[into] };
    } else if (metres > carryM * 1.1) return null;
  }
  return null;
}
