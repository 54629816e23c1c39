/** Questions that panels and the map ask of the state. */

import { foldNotes } from '../../core/player/fold-notes.ts';
import type { Conditions } from '../../core/conditions/conditions.ts';
import { dayKey } from '../../core/conditions/day-words.ts';
import { makeLocalFrame, type LocalFrame } from '../../core/course/local-frame.ts';
import type { Course, Hole, HolePosition, LonLat, TeeMarker } from '../../core/course/model.ts';
import type { Option, SpotPlan } from '../../core/plan/model.ts';
import type { Fault } from '../../core/result.ts';
import {
  type AppState,
  type HoleResult,
  type HoleSituation,
  type HoleWork,
  OWN_AIM,
  type ShotId,
  type Situation,
} from './app-state.ts';
import { shown, situationOfHole } from './history.ts';
import { holeContent } from './hole-content.ts';
import { remember } from './remember.ts';

export function currentHole(state: AppState): Hole | null {
  return holeOf(state.course?.value ?? null, state.view.hole);
}

function holeOf(course: Course | null, number: number | null): Hole | null {
  return course?.holes.find((hole) => hole.number === number) ?? null;
}

/** The hole's situation as shown, a drag included. */
export function holeSituation(state: AppState, hole: number): HoleSituation {
  return situationOfHole(shown(state.history), hole);
}

/** What was noticed in an open file without keeping it from opening. */
export function fileNotes(state: AppState, kind: 'course' | 'player'): readonly Fault[] {
  return kind === 'course' ? state.courseNotes : foldedNotes(state.player?.value.warnings ?? NO_FAULTS);
}
const foldedNotes = remember(foldNotes);
const NO_FAULTS: readonly Fault[] = [];

/** The chosen tee of a hole: a hole without a tee of that name is played from its first. */
export function teeOf(hole: Hole, teeName: string | null): TeeMarker {
  return (
    hole.tees.find((tee) => tee.name === teeName) ??
    hole.tees[0] ?? { name: 'tee', at: hole.line[0] ?? [0, 0] }
  );
}

/** The hole position that the situation asks for. */
export function positionOf(hole: Hole, position: string | LonLat | null): HolePosition {
  if (position !== null && typeof position !== 'string') return { name: 'your own', at: position };
  const named = hole.positions.find((candidate) => candidate.name === position) ?? hole.positions[0];
  return named ?? { name: 'green', at: hole.line.at(-1) ?? [0, 0] };
}

/** Every tee name of the course, in the order in which the holes bring them. */
export const teeNames = remember((course: Course | null): readonly string[] => {
  const names = new Set<string>();
  for (const hole of course?.holes ?? []) for (const tee of hole.tees) names.add(tee.name);
  return [...names];
});

/** The frame that a hole is drawn in before its result brings one: the same origin as the engine takes. */
const frameAt = remember((lon: number, lat: number): LocalFrame => makeLocalFrame([lon, lat]));
const frameOfCourse = remember((lon: number, lat: number): LocalFrame => makeLocalFrame([lon, lat]));

export function drawingFrame(state: AppState): LocalFrame | null {
  const course = state.course?.value;
  if (course === undefined) return null;
  const hole = currentHole(state);
  if (hole === null) {
    const first = course.holes[0]?.line[0];
    return first === undefined ? null : frameOfCourse(first[0], first[1]);
  }
  const middle = hole.line[Math.floor(hole.line.length / 2)] ?? hole.tees[0]?.at;
  return middle === undefined ? null : frameAt(middle[0], middle[1]);
}

/** Names a piece of work: same key, same numbers. The tee is part of it because the result's plan starts there. */
export function workKey(state: AppState, hole: Hole): string {
  return keyFor(state, hole, shown(state.history));
}

function keyFor(state: AppState, hole: Hole, situation: Situation): string {
  const tee = teeOf(hole, situation.teeName).name;
  const { at } = positionOf(hole, situationOfHole(situation, hole.number).position);
  // what the hole depends on, not the file's revision: an edit elsewhere on the course changes nothing here
  const content = state.course === null ? '' : holeContent(state.course.value, hole.number);
  return `${content}/${state.player?.revision ?? ''}/${hole.number}/${tee}/${at[0].toFixed(8)},${at[1].toFixed(8)}/${dayKey(situation.conditions)}/${state.seed}`;
}

/** The day as shown, a drag included. */
export function currentDay(state: AppState): Conditions {
  return shown(state.history).conditions;
}

/** Is the plan on screen a rough one, or still that of another day, hole position or seed? */
export function isPlanRough(state: AppState): boolean {
  const { plan } = state.answers;
  const hole = currentHole(state);
  if (plan === null || hole === null) return false;
  return plan.rough || plan.resultKey !== workKey(state, hole);
}

/** Work on the situation as taken, leaving a drag out: only that is worth the full effort. */
export function settledWorkKey(state: AppState, hole: Hole): string {
  return keyFor(state, hole, state.history.present);
}

export function workOf(state: AppState, hole: number): HoleWork | null {
  return state.work[hole] ?? null;
}

/** The best result there is for the hole on screen: exact, kept from an earlier start, quick, or null. */
export function currentResult(state: AppState): HoleResult | null {
  const hole = currentHole(state);
  const held = heldResult(state);
  if (hole === null || held?.rough === false) return held;
  const { kept } = state.answers;
  return kept?.key === workKey(state, hole) ? kept : held;
}

/**
 * The best result for the hole on screen that a worker can be asked about: exact, else quick, else null. Never one for another
 * hole position, but while that is being dragged the last quick one follows it, a moment behind.
 */
export function heldResult(state: AppState): HoleResult | null {
  const hole = currentHole(state);
  if (hole === null) return null;
  const key = workKey(state, hole);
  const exact = state.work[hole.number]?.result;
  if (exact?.key === key) return exact;
  const { rough } = state.answers;
  if (rough?.hole !== hole.number) return null;
  return rough.key === key || state.history.preview !== null ? rough : null;
}

export function ballPlace(state: AppState): LonLat | null {
  const hole = currentHole(state);
  if (hole === null) return null;
  return holeSituation(state, hole.number).ball ?? teeOf(hole, shown(state.history).teeName).at;
}

/** The last plan for the hole on screen; it may lag a drag by a moment. */
export function currentPlan(state: AppState): SpotPlan | null {
  const answer = state.answers.plan;
  return answer !== null && answer.hole === state.view.hole ? answer.plan : null;
}

/** The shot that the map paints: the chosen one where the plan still has it, else the recommendation. */
export function paintedShot(state: AppState): ShotId | null {
  const plan = currentPlan(state);
  if (plan === null) return null;
  const { chosen } = state.view;
  if (chosen !== null && optionOf(state, chosen) !== null) return chosen;
  return plan.recommendation.optionId;
}

export function optionOf(state: AppState, shot: ShotId | null): Option | null {
  if (shot === null) return null;
  if (shot === OWN_AIM) return ownOption(state);
  return currentPlan(state)?.options.find((option) => option.id === shot) ?? null;
}

/** The own aim's option as last evaluated, while the situation still has an own aim. */
export function ownOption(state: AppState): Option | null {
  const { hole } = state.view;
  const { own } = state.answers;
  if (hole === null || own === null || own.hole !== hole) return null;
  return holeSituation(state, hole).aim === null ? null : own.option;
}

/** Strokes played before this one: told by the person, or guessed from how much of the hole is behind the ball. */
export function strokesTaken(state: AppState): { readonly strokes: number; readonly guessed: boolean } {
  const { hole } = state.view;
  if (hole === null) return { strokes: 0, guessed: true };
  const situation = holeSituation(state, hole);
  if (situation.strokesTaken !== null) return { strokes: situation.strokesTaken, guessed: false };
  const plan = currentPlan(state);
  if (situation.ball === null || plan === null || plan.lie === 'tee') return { strokes: 0, guessed: true };
  const fromTee = currentResult(state)?.teePlan.expectedStrokes;
  if (fromTee === undefined) return { strokes: 1, guessed: true };
  return { strokes: Math.max(1, Math.round(fromTee - plan.expectedStrokes)), guessed: true };
}

export interface Tallied {
  readonly total: number;
  readonly ready: number;
  readonly unfinished: number;
  readonly stopped: number;
  readonly failed: number;
}

/** How far the background work has come over the course. */
export const tallyWork = remember((course: Course | null, work: AppState['work']): Tallied => {
  const all = (course?.holes ?? []).map((hole) => work[hole.number]?.status ?? 'waiting');
  const count = (status: HoleWork['status']): number => all.filter((one) => one === status).length;
  return {
    total: all.length,
    ready: count('ready'),
    unfinished: count('waiting') + count('working'),
    stopped: count('stopped'),
    failed: count('failed'),
  };
});
