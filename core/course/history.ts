/**
 * Undo and redo of one sitting, without limit. A state is a plain value; each function gives the next one. What is
 * selected is no part of it, so selecting never clears what can be redone.
 */

import type { Told } from '../words/told.ts';
import { applyPatches, type Patch } from 'immer';
import type { EditableDocument } from './document.ts';
import type { Edit } from './edits/edit.ts';

export interface HistoryEntry {
  /** `Move fairway of hole 3`. */
  readonly name: string;
  readonly told?: Told;
  readonly patches: readonly Patch[];
  readonly inverse: readonly Patch[];
  /** The state that the entry led to; no other state of the history has this number. */
  readonly revision: number;
}

/** A change still going on: the mouse is down, or a text is being typed. */
export interface Drag {
  /** The document when it began; every step is an edit of this one. */
  readonly start: EditableDocument;
  readonly edit: Edit | null;
}

export interface History {
  /** What the map shows, a drag in progress included. */
  readonly document: EditableDocument;
  /** Oldest first. */
  readonly past: readonly HistoryEntry[];
  /** What redo brings back, next first. */
  readonly future: readonly HistoryEntry[];
  readonly drag: Drag | null;
  readonly nextRevision: number;
}

export function startHistory(document: EditableDocument): History {
  return { document, past: [], future: [], drag: null, nextRevision: 1 };
}

/**
 * Takes an edit of `history.document` in as one entry; a drag in progress ends first, as its own entry. An edit
 * that changes nothing leaves no entry. Throws where the edit was made from another document.
 */
export function record(history: History, edit: Edit): History {
  const settled = commitDrag(history);
  if (edit.before !== settled.document) {
    throw new Error(
      `"${edit.name}" was made from another state of the document than the one it is to change`,
    );
  }
  return append(settled, edit);
}

function append(history: History, edit: Edit): History {
  if (edit.patches.length === 0) return history;
  const { name, told, patches, inverse } = edit;
  return {
    document: edit.document,
    past: [
      ...history.past,
      { name, ...(told === undefined ? {} : { told }), patches, inverse, revision: history.nextRevision },
    ],
    future: [],
    drag: null,
    nextRevision: history.nextRevision + 1,
  };
}

/** Begins a drag; one in progress ends first, as its own entry. */
export function beginDrag(history: History): History {
  const settled = commitDrag(history);
  return { ...settled, drag: { start: settled.document, edit: null } };
}

/** The drag so far: an edit of `history.drag.start` that takes the place of the step before. Throws without a drag. */
export function continueDrag(history: History, edit: Edit): History {
  if (history.drag === null) throw new Error('there is no drag to continue');
  if (edit.before !== history.drag.start) {
    throw new Error(`"${edit.name}" was not made from the document on which the drag began`);
  }
  return { ...history, document: edit.document, drag: { start: history.drag.start, edit } };
}

/** Ends the drag as one entry; without a drag, or where it changed nothing, no entry. */
export function commitDrag(history: History): History {
  if (history.drag === null) return history;
  const { start, edit } = history.drag;
  const before: History = { ...history, document: start, drag: null };
  return edit === null ? before : append(before, edit);
}

/** Ends the drag as if it had not been (Escape). */
export function abandonDrag(history: History): History {
  return history.drag === null ? history : { ...history, document: history.drag.start, drag: null };
}

/** One step back; a drag in progress is abandoned instead. The same history where there is nothing to undo. */
export function undo(history: History): History {
  if (history.drag !== null) return abandonDrag(history);
  const entry = history.past.at(-1);
  if (entry === undefined) return history;
  return {
    ...history,
    document: applyPatches(history.document, entry.inverse),
    past: history.past.slice(0, -1),
    future: [entry, ...history.future],
  };
}

/** One step forward again; the same history where there is nothing to redo. */
export function redo(history: History): History {
  const [entry, ...future] = history.future;
  if (entry === undefined || history.drag !== null) return history;
  return {
    ...history,
    document: applyPatches(history.document, entry.patches),
    past: [...history.past, entry],
    future,
  };
}

/** Number of the present state: 0 as opened, back to an earlier number on undo. Keep it on saving. */
export function revisionOf(history: History): number {
  return history.past.at(-1)?.revision ?? 0;
}

/** Whether the document differs from the state with this number; a drag that has moved something counts. */
export function isChangedSince(history: History, revision: number): boolean {
  return revisionOf(history) !== revision || (history.drag?.edit?.patches.length ?? 0) > 0;
}
