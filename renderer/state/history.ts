/** Undo and redo as a list of immutable situations. A drag previews; only its end makes a step. */

import { type Conditions, DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import type { HoleSituation, Situation } from './app-state.ts';

export interface History {
  readonly past: readonly Step[];
  readonly present: Situation;
  readonly future: readonly Step[];
  /** What is being dragged to, not yet a step. */
  readonly preview: Situation | null;
}

/** In the past: the situation before the action. In the future: the one after it. */
interface Step {
  readonly situation: Situation;
  /** The action in words for the undo and redo buttons, e.g. `move the ball`. */
  readonly label: string;
  /** Steps of one held key share a mark and count as one. */
  readonly mark: string | null;
}

const LONGEST_PAST = 200;

export const HOLE_AS_FOUND: HoleSituation = { ball: null, aim: null, position: null, strokesTaken: null };
export const COURSE_AS_FOUND: Situation = { teeName: null, conditions: DEFAULT_CONDITIONS, holes: {} };

export function emptyHistory(conditions: Conditions = DEFAULT_CONDITIONS): History {
  return { past: [], present: { ...COURSE_AS_FOUND, conditions }, future: [], preview: null };
}

/** What the window shows: the preview while something is dragged. */
export function shown(history: History): Situation {
  return history.preview ?? history.present;
}

export function situationOfHole(situation: Situation, hole: number): HoleSituation {
  return situation.holes[hole] ?? HOLE_AS_FOUND;
}

export function withHole(situation: Situation, hole: number, change: Partial<HoleSituation>): Situation {
  const next = { ...situationOfHole(situation, hole), ...change };
  return { ...situation, holes: { ...situation.holes, [hole]: next } };
}

export function preview(history: History, situation: Situation): History {
  return { ...history, preview: situation };
}

export function dropPreview(history: History): History {
  return history.preview === null ? history : { ...history, preview: null };
}

/** Makes `situation` the present. With a mark equal to the last step's, that step is lengthened instead. */
export function take(history: History, situation: Situation, label: string, mark: string | null): History {
  const last = history.past.at(-1);
  const lengthens = mark !== null && last?.mark === mark;
  const past = lengthens
    ? history.past
    : [...history.past, { situation: history.present, label, mark }].slice(-LONGEST_PAST);
  return { past, present: situation, future: [], preview: null };
}

export function undo(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return dropPreview(history);
  return {
    past: history.past.slice(0, -1),
    present: last.situation,
    future: [{ situation: history.present, label: last.label, mark: null }, ...history.future],
    preview: null,
  };
}

export function redo(history: History): History {
  const [next, ...rest] = history.future;
  if (next === undefined) return dropPreview(history);
  return {
    past: [...history.past, { situation: history.present, label: next.label, mark: null }],
    present: next.situation,
    future: rest,
    preview: null,
  };
}

export function undoLabel(history: History): string | null {
  return history.past.at(-1)?.label ?? null;
}

export function redoLabel(history: History): string | null {
  return history.future[0]?.label ?? null;
}

/** The hole on which two situations differ; null where it is none in particular. */
export function changedHole(before: Situation, after: Situation): number | null {
  const numbers = new Set([...Object.keys(before.holes), ...Object.keys(after.holes)].map(Number));
  const changed = [...numbers].filter((hole) => before.holes[hole] !== after.holes[hole]);
  return changed.length === 1 ? changed[0]! : null;
}
