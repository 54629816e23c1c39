/**
 * Distances from the ball to the near and far side of what lies along a shot: sand, penalty areas, out of
 * bounds. Plain geometry in metres of the hole's frame.
 */

import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { AreaKind, Course } from '../../core/course/model.ts';
import type { Spot } from '../../core/plan/model.ts';
import { remember } from '../state/remember.ts';

export interface Carry {
  readonly kind: AreaKind;
  /** Ball to the nearest and the farthest edge inside the lane, metres. */
  readonly nearM: number;
  readonly farM: number;
  readonly near: Spot;
  readonly far: Spot;
}

/** Half width of the lane beside the line of the shot, metres, and its growth with distance. */
const LANE_M = 12;
const LANE_GROWTH = 0.09;
const EDGE_STEP_M = 2;
const NEAREST_M = 25;
const MOST = 7;

const TOLD: ReadonlySet<AreaKind> = new Set(['bunker', 'penalty-yellow', 'penalty-red']);

interface Outline {
  readonly kind: AreaKind;
  readonly spots: readonly Spot[];
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** A course has thousands of edges, and carries are told anew with every frame of a drag. */
const outlinesOf = remember((course: Course, frame: LocalFrame): readonly Outline[] =>
  course.areas
    .filter(({ kind }) => TOLD.has(kind))
    .map(({ kind, rings }) => {
      const spots = (rings[0] ?? []).map((place) => frame.toSpot(place));
      const xs = spots.map(({ x }) => x);
      const ys = spots.map(({ y }) => y);
      return {
        kind,
        spots,
        west: Math.min(...xs),
        east: Math.max(...xs),
        south: Math.min(...ys),
        north: Math.max(...ys),
      };
    }),
);

/** Carries within the lane from `ball` at `bearing`, out to `reachM`; nearest first. */
export function carriesAlong(
  course: Course,
  frame: LocalFrame,
  ball: Spot,
  bearing: number,
  reachM: number,
): readonly Carry[] {
  const found: Carry[] = [];
  // the lane's far corners are the farthest that anything told may be
  const farthestM = Math.hypot(reachM, LANE_M + LANE_GROWTH * reachM);
  for (const outline of outlinesOf(course, frame)) {
    if (distanceTo(outline, ball) > farthestM) continue;
    const carry = carryOver(outline.spots, ball, bearing, reachM);
    if (carry !== null) found.push({ kind: outline.kind, ...carry });
  }
  return found.sort((a, b) => a.nearM - b.nearM).slice(0, MOST);
}

/** From a spot to the box around an outline; 0 inside it. */
function distanceTo({ west, east, south, north }: Outline, { x, y }: Spot): number {
  return Math.hypot(Math.max(west - x, 0, x - east), Math.max(south - y, 0, y - north));
}

function carryOver(
  outline: readonly Spot[],
  ball: Spot,
  bearing: number,
  reachM: number,
): Omit<Carry, 'kind'> | null {
  const sin = Math.sin(bearing);
  const cos = Math.cos(bearing);
  let near: Spot | null = null;
  let far: Spot | null = null;
  let nearM = Infinity;
  let farM = -Infinity;
  for (const spot of alongEdges(outline)) {
    const dx = spot.x - ball.x;
    const dy = spot.y - ball.y;
    const ahead = dx * sin + dy * cos;
    const aside = Math.abs(dx * cos - dy * sin);
    if (ahead < NEAREST_M || ahead > reachM || aside > LANE_M + LANE_GROWTH * ahead) continue;
    const distance = Math.hypot(dx, dy);
    if (distance < nearM) [nearM, near] = [distance, spot];
    if (distance > farM) [farM, far] = [distance, spot];
  }
  return near === null || far === null ? null : { nearM, farM, near, far };
}

/** Points no more than a step apart along the outline. */
function* alongEdges(outline: readonly Spot[]): Generator<Spot> {
  for (let i = 0; i + 1 < outline.length; i++) {
    const a = outline[i]!;
    const b = outline[i + 1]!;
    const steps = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / EDGE_STEP_M));
    for (let k = 0; k < steps; k++) {
      yield { x: a.x + ((b.x - a.x) * k) / steps, y: a.y + ((b.y - a.y) * k) / steps };
    }
  }
}
