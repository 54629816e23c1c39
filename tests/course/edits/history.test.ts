/** Undo and redo: exact to the byte, drags as one entry, and knowing whether anything has changed. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EditableDocument, openDocumentText, serialise } from '../../../core/course/document.ts';
import { moveFeatures } from '../../../core/course/edits/move-features.ts';
import { moveVertex } from '../../../core/course/edits/move-vertex.ts';
import { removeFeatures } from '../../../core/course/edits/remove-features.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import {
  abandonDrag,
  beginDrag,
  commitDrag,
  continueDrag,
  type History,
  isChangedSince,
  record,
  redo,
  revisionOf,
  startHistory,
  undo,
} from '../../../core/course/history.ts';
import { at } from '../builders.ts';
import { must, ringFaults, smallCourse } from './edit-builders.ts';
import { randomEdit } from './random-edits.ts';

const start = smallCourse();
const nudge = (document: EditableDocument, east: number) =>
  must(moveFeatures(document, ['fairway'], { from: at(0, 0), to: at(east, 0) }));

describe('undo and redo', () => {
  it('undoing everything gives the first text byte for byte, redoing everything the last one', () => {
    const done = new Map<string, number>();
    fc.assert(
      fc.property(fc.array(randomEdit, { minLength: 1, maxLength: 24, size: 'max' }), (edits) => {
        let history = startHistory(start);
        const texts = [serialise(start)];
        for (const edit of edits) {
          const result = edit(history.document);
          if (!result.ok || result.value.patches.length === 0) continue;
          history = record(history, result.value);
          texts.push(serialise(history.document));
          const verb = result.value.name.split(' ')[0]!;
          done.set(verb, (done.get(verb) ?? 0) + 1);
        }
        expect(history.past).toHaveLength(texts.length - 1);
        expect(ringFaults(history.document)).toEqual([]);
        for (let at = texts.length - 1; at >= 0; at--) {
          expect(serialise(history.document)).toBe(texts[at]);
          history = undo(history);
        }
        expect(revisionOf(history)).toBe(0);
        for (const text of texts) {
          expect(serialise(history.document)).toBe(text);
          history = redo(history);
        }
        expect(history.future).toEqual([]);
      }),
      { numRuns: 100, seed: 5 },
    );
    // the property would hold for edits that all refuse
    const verbs = 'Add Change Copy Cut Fill Make Merge Move Remove Rename Reorder Simplify Smooth Split Turn';
    expect([...done.keys()].sort().join(' ')).toBe(verbs);
    expect(Math.min(...done.values())).toBeGreaterThan(2);
  });

  it('what is saved is what is opened again, whatever was edited', () => {
    fc.assert(
      fc.property(fc.array(randomEdit, { maxLength: 8 }), (edits) => {
        let document = start;
        for (const edit of edits) {
          const result = edit(document);
          if (result.ok) document = result.value.document;
        }
        const text = serialise(document);
        const opened = openDocumentText(text);
        if (!opened.ok) throw new Error(JSON.stringify(opened.error));
        expect(opened.value.document).toEqual(document);
        expect(opened.value.repairs).toEqual([]);
        expect(serialise(opened.value.document)).toBe(text);
      }),
      { numRuns: 60, seed: 6 },
    );
  });

  it('a new edit clears what could be redone; one that changes nothing does not', () => {
    const moved = record(startHistory(start), nudge(start, 5));
    const back = undo(moved);
    const nothing = record(back, nudge(back.document, 0));
    expect(nothing.past).toHaveLength(0);
    expect(nothing.future).toHaveLength(1);
    const other = record(nothing, must(removeFeatures(nothing.document, ['path'])));
    expect(other.future).toHaveLength(0);
    expect(other.past.map(({ name }) => name)).toEqual(['Remove path']);
  });

  it('many features removed at once come back in their places', () => {
    const ids = start.features.filter((_, index) => index % 2 === 0).map(({ id }) => id);
    const wide: EditableDocument = {
      ...start,
      features: Array.from({ length: 60 }, (_, index) => ({
        type: 'Feature',
        id: index,
        properties: null,
        geometry: null,
      })),
    };
    for (const [document, gone] of [
      [start, ids],
      [wide, wide.features.slice(5, 45).map(({ id }) => id)],
    ] as const) {
      const removed = record(startHistory(document), must(removeFeatures(document, gone)));
      expect(removed.document.features).toHaveLength(document.features.length - gone.length);
      expect(undo(removed).document).toEqual(document);
      expect(redo(undo(removed)).document).toEqual(removed.document);
    }
  });

  it('an edit of another state is refused as a fault of the program', () => {
    const moved = record(startHistory(start), nudge(start, 5));
    expect(() => record(moved, nudge(start, 7))).toThrow('another state');
  });
});

describe('a drag', () => {
  const dragged = (): History => {
    let history = beginDrag(startHistory(start));
    for (let east = 1; east <= 40; east++) history = continueDrag(history, nudge(history.drag!.start, east));
    return history;
  };

  it('is one entry, and lands where one move would have landed', () => {
    const history = commitDrag(dragged());
    expect(history.past.map(({ name }) => name)).toEqual(['Move fairway of hole 1']);
    expect(history.document).toEqual(nudge(start, 40).document);
    expect(undo(history).document).toEqual(start);
  });

  it('shows its way, and leaves nothing when it is abandoned or undone half-way', () => {
    const history = dragged();
    expect(history.document).toEqual(nudge(start, 40).document);
    expect(isChangedSince(history, 0)).toBe(true);
    for (const end of [abandonDrag(history), undo(history)]) {
      expect(end.document).toBe(start);
      expect(end.past).toHaveLength(0);
      expect(isChangedSince(end, 0)).toBe(false);
    }
  });

  it('that comes back to where it began leaves no entry and keeps what can be redone', () => {
    const undone = undo(record(startHistory(start), nudge(start, 3)));
    let history = beginDrag(undone);
    history = continueDrag(history, nudge(history.drag!.start, 9));
    history = continueDrag(history, nudge(history.drag!.start, 0));
    history = commitDrag(history);
    expect(history.past).toHaveLength(0);
    expect(history.future).toHaveLength(1);
  });

  it('ends as an entry of its own when something else is done', () => {
    const history = dragged();
    const after = record(history, must(setProperties(history.document, ['bunker'], { name: 'Deep' })));
    expect(after.past.map(({ name }) => name)).toEqual([
      'Move fairway of hole 1',
      'Change name of bunker of hole 1',
    ]);
  });

  it('of one corner may be steered over itself and back', () => {
    let history = beginDrag(startHistory(start));
    const corner = { feature: 'fairway', vertex: 0 };
    for (const [east, north] of [
      [-30, 120],
      [60, 210],
      [-41, 109],
    ] as const) {
      history = continueDrag(history, must(moveVertex(history.drag!.start, corner, at(east, north))));
    }
    history = commitDrag(history);
    expect(history.past).toHaveLength(1);
    expect(undo(history).document).toEqual(start);
  });
});

describe('whether anything has changed', () => {
  it('is told by the state, not by the number of steps', () => {
    let history = record(startHistory(start), nudge(start, 5));
    const saved = revisionOf(history);
    expect(isChangedSince(history, saved)).toBe(false);
    history = record(history, nudge(history.document, 5));
    expect(isChangedSince(history, saved)).toBe(true);
    history = undo(history);
    expect(isChangedSince(history, saved)).toBe(false);
    history = undo(history);
    expect(isChangedSince(history, saved)).toBe(true);
    // another way from here has as many steps as the saved one, and is not it
    history = record(history, nudge(history.document, 8));
    expect(isChangedSince(history, saved)).toBe(true);
  });
});
