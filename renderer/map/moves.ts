/** What moving the ball, the aim or the hole position does to the situation. Pure; says why where it may not be. */

import { isInside } from '../../core/course/polygon.ts';
import { greenOf } from '../../core/course/hole-features.ts';
import type { Hole, LonLat } from '../../core/course/model.ts';
import type { Spot } from '../../core/plan/model.ts';
import { refuse, type Result, succeed } from '../../core/result.ts';
import { isComparing } from './shot-scene.ts';
import { type AppState, OWN_AIM, type OwnAim, type Situation } from '../state/app-state.ts';
import { wordsOf } from '../state/use-words.ts';
import { shown, withHole } from '../state/history.ts';
import {
  ballPlace,
  currentHole,
  drawingFrame,
  holeSituation,
  optionOf,
  paintedShot,
  positionOf,
  teeOf,
} from '../state/selectors.ts';

export type MarkerKind = 'ball' | 'aim' | 'pin';

/** A ball put down this near the tee is on it, metres; less than a step of the arrow keys. */
const ON_TEE_M = 0.75;
/** Shortest own aim, metres. */
const NEAREST_AIM_M = 3;

export function moveMarker(state: AppState, kind: MarkerKind, to: Spot): Result<Situation, string> {
  const hole = currentHole(state);
  const frame = drawingFrame(state);
  if (hole === null || frame === null) return refuse(wordsOf(state).map.chooseHoleFirst);
  const place = frame.toLonLat(to);
  switch (kind) {
    case 'ball':
      return succeed(moveBall(state, hole, place, to));
    case 'pin':
      return movePin(state, hole, place);
    case 'aim':
      return moveAim(state, hole, to);
  }
}

function moveBall(state: AppState, hole: Hole, place: LonLat, to: Spot): Situation {
  const tee = drawingFrame(state)?.toSpot(teeOf(hole, shown(state.history).teeName).at);
  const onTee = tee !== undefined && Math.hypot(tee.x - to.x, tee.y - to.y) < ON_TEE_M;
  const change = onTee ? { ball: null, strokesTaken: null } : { ball: place };
  return withHole(state.history.present, hole.number, change);
}

function movePin(state: AppState, hole: Hole, place: LonLat): Result<Situation, string> {
  const course = state.course?.value;
  const green = course === undefined ? undefined : greenOf(course, hole);
  if (green === undefined) return refuse(wordsOf(state).map.noGreen);
  if (!isInside(place, green)) return refuse(wordsOf(state).map.staysOnGreen);
  return succeed(withHole(state.history.present, hole.number, { position: place }));
}

function moveAim(state: AppState, hole: Hole, to: Spot): Result<Situation, string> {
  const reach = aimReach(state);
  const ball = ballSpot(state);
  const frame = drawingFrame(state);
  if (reach === null || ball === null || frame === null) {
    return refuse(wordsOf(state).map.noAim);
  }
  const target = frame.toLonLat(keepInReach(ball, to, reach));
  return succeed(
    withHole(state.history.present, hole.number, { aim: { spreadIndex: reach.spreadIndex, target } }),
  );
}

/** The action in words, for undo. */
export function moveLabel(state: AppState, kind: MarkerKind): string {
  const { steps } = wordsOf(state).plan;
  const hole = state.view.hole ?? 0;
  if (kind === 'ball') return steps.moveBall({ hole });
  return kind === 'pin' ? steps.movePosition({ hole }) : steps.moveAim({ hole });
}

/** Where a marker is by the state; null where it is not on the map. */
export function markerSpot(state: AppState, kind: MarkerKind): Spot | null {
  const hole = currentHole(state);
  const frame = drawingFrame(state);
  if (hole === null || frame === null) return null;
  const { position, aim } = holeSituation(state, hole.number);
  if (kind === 'ball') return ballSpot(state);
  if (kind === 'pin') return frame.toSpot(positionOf(hole, position).at);
  const ball = ballSpot(state);
  const reach = aimReach(state);
  const shot = paintedShot(state);
  const target = shot === OWN_AIM ? aim?.target : optionOf(state, shot)?.aim.lonLat;
  if (ball === null || reach === null || target === undefined || isComparing(state)) return null;
  return keepInReach(ball, frame.toSpot(target), reach);
}

export function ballSpot(state: AppState): Spot | null {
  const place = ballPlace(state);
  const frame = drawingFrame(state);
  return place === null || frame === null ? null : frame.toSpot(place);
}

/** How far the shot on the map may be aimed: its one carry, or anything up to the longest part swing. */
export interface Reach {
  readonly spreadIndex: number;
  readonly nearestM: number;
  readonly farthestM: number;
}

/** Null for a putt or a drop, which have no aim of their own. */
export function aimReach(state: AppState): Reach | null {
  const spreads = state.player?.value.spreads ?? [];
  const shot = paintedShot(state);
  const { hole } = state.view;
  const aim = hole === null ? null : holeSituation(state, hole).aim;
  const option = optionOf(state, shot);
  const spreadIndex =
    shot === OWN_AIM && aim !== null
      ? aim.spreadIndex
      : spreads.findIndex((spread) => spread.club.name === option?.club && spread.swing === option.swing);
  const spread = spreads[spreadIndex];
  if (spread === undefined) return null;
  if (spread.swing === 'part') return { spreadIndex, nearestM: NEAREST_AIM_M, farthestM: spread.carryMean };
  // A lie may shorten the club: the option knows its carry from here.
  const carryM = option?.carryM ?? spread.carryMean;
  return { spreadIndex, nearestM: carryM, farthestM: carryM };
}

/** The nearest spot along the same direction that is in reach. */
export function keepInReach(ball: Spot, to: Spot, reach: Reach): Spot {
  const dx = to.x - ball.x;
  const dy = to.y - ball.y;
  const distance = Math.hypot(dx, dy);
  if (distance === 0) return { x: ball.x, y: ball.y + reach.nearestM };
  const kept = Math.min(reach.farthestM, Math.max(reach.nearestM, distance)) / distance;
  return { x: ball.x + dx * kept, y: ball.y + dy * kept };
}

/** An own aim with another club: same direction, at that club's carry. */
export function aimWithClub(state: AppState, spreadIndex: number): OwnAim | null {
  const spread = state.player?.value.spreads[spreadIndex];
  const ball = ballSpot(state);
  const frame = drawingFrame(state);
  const toward = optionOf(state, paintedShot(state))?.aim.lonLat;
  const hole = currentHole(state);
  if (spread === undefined || ball === null || frame === null || hole === null) return null;
  const mark = frame.toSpot(toward ?? hole.line.at(-1) ?? frame.origin);
  const nearestM = spread.swing === 'part' ? NEAREST_AIM_M : spread.carryMean;
  const target = keepInReach(ball, mark, { spreadIndex, nearestM, farthestM: spread.carryMean });
  return { spreadIndex, target: frame.toLonLat(target) };
}
