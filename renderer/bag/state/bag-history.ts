/** Undo and redo over whole player files: each step keeps the file's content before or after it. */

import type { PlayerDocument } from '../../../core/player/format.ts';

export interface BagHistory {
  readonly past: readonly BagStep[];
  readonly present: PlayerDocument;
  readonly future: readonly BagStep[];
}

interface BagStep {
  readonly document: PlayerDocument;
  /** The change in words, e.g. `rename the 7-iron`. */
  readonly label: string;
  /** Steps in a row with the same mark count as one: a number stepped up and up. */
  readonly mark: string | null;
}

/** Contents share their unchanged parts, so a step costs little. */
const LONGEST_PAST = 200;

export function startHistory(document: PlayerDocument): BagHistory {
  return { past: [], present: document, future: [] };
}

export function takeStep(
  history: BagHistory,
  document: PlayerDocument,
  label: string,
  mark: string | null,
): BagHistory {
  if (document === history.present) return history;
  const last = history.past.at(-1);
  const lengthens = mark !== null && last?.mark === mark && history.future.length === 0;
  const past = lengthens
    ? history.past
    : [...history.past, { document: history.present, label, mark }].slice(-LONGEST_PAST);
  return { past, present: document, future: [] };
}

export function undoStep({ past, present, future }: BagHistory): BagHistory {
  const last = past.at(-1);
  if (last === undefined) return { past, present, future };
  return {
    past: past.slice(0, -1),
    present: last.document,
    future: [{ document: present, label: last.label, mark: null }, ...future],
  };
}

export function redoStep({ past, present, future }: BagHistory): BagHistory {
  const [next, ...rest] = future;
  if (next === undefined) return { past, present, future };
  return {
    past: [...past, { document: present, label: next.label, mark: null }],
    present: next.document,
    future: rest,
  };
}
