/** Questions that map and panels ask of the course room's state. */

import {
  type DocumentFeature,
  type EditableDocument,
  type FeatureId,
  holeOf,
  kindOf,
} from '../../core/course/document.ts';
import { holeNumbers } from '../../core/course/edits/renumber-holes.ts';
import { isChangedSince } from '../../core/course/history.ts';
import { remember } from '../state/remember.ts';
import type { DrawingState } from './drawing-state.ts';
import { type Shape, shapesOf } from './shapes.ts';

const shapesFor = remember(
  (
    document: EditableDocument,
    frame: DrawingState['frame'],
    hiddenKinds: DrawingState['hiddenKinds'],
    hiddenFeatures: DrawingState['hiddenFeatures'],
  ): readonly Shape[] => {
    const shapes = shapesOf(document, frame);
    if (hiddenKinds.size === 0 && hiddenFeatures.size === 0) return shapes;
    return shapes.filter(
      ({ kind, feature }) =>
        !hiddenFeatures.has(feature.id) && (kind === undefined || !hiddenKinds.has(kind)),
    );
  },
);

/** What the map shows, in the order of the document. */
export function visibleShapes({
  history,
  frame,
  hiddenKinds,
  hiddenFeatures,
}: DrawingState): readonly Shape[] {
  return shapesFor(history.document, frame, hiddenKinds, hiddenFeatures);
}

export function chosenShapes(state: DrawingState): readonly Shape[] {
  if (state.selection.length === 0) return NO_SHAPES;
  return pickShapes(visibleShapes(state), state.selection);
}
const NO_SHAPES: readonly Shape[] = [];
const pickShapes = remember((shapes: readonly Shape[], ids: readonly FeatureId[]): readonly Shape[] => {
  const wanted = new Set(ids);
  return shapes.filter(({ feature }) => wanted.has(feature.id));
});

const pickFeatures = remember(
  (document: EditableDocument, ids: readonly FeatureId[]): readonly DocumentFeature[] => {
    const wanted = new Set(ids);
    return document.features.filter(({ id }) => wanted.has(id));
  },
);

export function chosenFeatures(state: DrawingState): readonly DocumentFeature[] {
  return pickFeatures(state.history.document, state.selection);
}

/** Numbers of the holes in the document, and the one worked on where nothing of it is drawn yet. */
export const holesShown = remember((document: EditableDocument, hole: number | null): readonly number[] => {
  const numbers = holeNumbers(document);
  return hole === null || numbers.includes(hole) ? numbers : [...numbers, hole].sort((a, b) => a - b);
});

/** The document without the drag under way: lists that read the whole course wait for its end. */
export function settledDocument({ drag, document }: DrawingState['history']): EditableDocument {
  return drag?.start ?? document;
}

const lines = new WeakMap<EditableDocument, ReadonlyMap<number, DocumentFeature>>();

/** The hole's line (the first where there are several); undefined until it is drawn. */
export function lineOfHole(document: EditableDocument, hole: number): DocumentFeature | undefined {
  let known = lines.get(document);
  if (known === undefined) {
    const found = new Map<number, DocumentFeature>();
    for (const feature of document.features) {
      const number = kindOf(feature) === 'hole' ? holeOf(feature) : undefined;
      if (number !== undefined && !found.has(number)) found.set(number, feature);
    }
    known = found;
    lines.set(document, known);
  }
  return known.get(hole);
}

export function isUnsaved({ file, history }: DrawingState): boolean {
  return file !== null && isChangedSince(history, file.saved);
}
