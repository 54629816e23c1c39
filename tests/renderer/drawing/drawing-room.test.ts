/** The course room's state: drawing, choosing, undoing. */

import { english } from '../../../core/words/english/english.ts';
import { describe, expect, it } from 'vitest';
import { courseOf, newDocument, openDocumentText, serialise } from '../../../core/course/document.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import type { DrawingAction } from '../../../renderer/drawing/actions.ts';
import type { DrawingDesk } from '../../../renderer/drawing/desk.ts';
import { type DrawingState, emptyDrawing, type Mode } from '../../../renderer/drawing/drawing-state.ts';
import { reduceDrawing } from '../../../renderer/drawing/reduce-drawing.ts';
import { dropSketch, finishSketch, placeAt } from '../../../renderer/drawing/sketching.ts';
import { makeStore } from '../../../renderer/state/store.ts';
import { at, square } from '../../course/builders.ts';
import { entry, file, smallDocument } from './open-course.ts';

/** A desk without files and map. */
function deskWith(document = smallDocument()): DrawingDesk {
  const store = makeStore<DrawingState, DrawingAction>(emptyDrawing(), reduceDrawing);
  store.dispatch({ type: 'course-loaded', file, document });
  return {
    store,
    words: () => english,
    attempt: (make, select) => {
      const made = make(store.state().history.document);
      if (made.ok)
        store.dispatch({
          type: 'edited',
          edit: made.value,
          ...(select === undefined ? {} : { select: true }),
        });
      else store.dispatch({ type: 'said', said: { tone: 'refusal', words: made.error.message } });
      return made.ok;
    },
    say: (words, tone = 'news') => store.dispatch({ type: 'said', said: { tone, words } }),
    undo: () => store.dispatch({ type: 'undone' }),
    redo: () => store.dispatch({ type: 'redone' }),
    stage: { current: null },
    get files(): never {
      throw new Error('no files here');
    },
  };
}

const draw = (kind: Extract<Mode, { do: 'draw' }>['kind']): DrawingAction => ({
  type: 'mode-set',
  mode: { do: 'draw', kind },
});

describe('drawing', () => {
  it('makes an area of three places or more when its first corner is clicked again', () => {
    const desk = deskWith();
    const before = desk.store.state().history.document.features.length;
    desk.store.dispatch(draw('bunker'));
    for (const place of [at(50, 50), at(60, 50), at(60, 60)]) placeAt(desk, place, 0.5);
    expect(desk.store.state().history.document.features).toHaveLength(before);
    placeAt(desk, at(50, 50), 0.5);
    const { history, selection, sketch } = desk.store.state();
    expect(history.document.features).toHaveLength(before + 1);
    expect(history.document.features.at(-1)).toMatchObject({ properties: { golf: 'bunker', ref: '1' } });
    expect(selection).toEqual([history.document.features.at(-1)!.id]);
    expect(sketch).toEqual([]);
  });

  it('ends a line with a double click: the second click falls on the place of the first', () => {
    const desk = deskWith();
    desk.store.dispatch(draw('path'));
    for (const place of [at(0, -50), at(40, -50), at(80, -40), at(80, -40)]) placeAt(desk, place, 0.5);
    expect(desk.store.state().history.document.features.at(-1)).toMatchObject({
      geometry: { type: 'LineString', coordinates: [at(0, -50), at(40, -50), at(80, -40)] },
    });
  });

  it('keeps the places of an outline that crosses itself, and says why', () => {
    const desk = deskWith();
    desk.store.dispatch(draw('bunker'));
    for (const place of [at(50, 50), at(60, 60), at(60, 50), at(50, 60)]) placeAt(desk, place, 0.5);
    finishSketch(desk);
    expect(desk.store.state().sketch).toHaveLength(4);
    expect(desk.store.state().said).toMatchObject({ tone: 'refusal' });
  });

  it('does not end an area of two places', () => {
    const desk = deskWith();
    desk.store.dispatch(draw('green'));
    placeAt(desk, at(0, 0), 0.5);
    placeAt(desk, at(9, 0), 0.5);
    finishSketch(desk);
    expect(desk.store.state().said?.words).toContain('1 more place');
    dropSketch(desk);
    expect(desk.store.state().sketch).toEqual([]);
    dropSketch(desk);
    expect(desk.store.state().mode.do).toBe('choose');
  });

  it('gives a second line of play the next free number and goes on with that hole', () => {
    const desk = deskWith();
    desk.store.dispatch(draw('hole'));
    placeAt(desk, at(300, 0), 0.5);
    placeAt(desk, at(300, 200), 0.5);
    finishSketch(desk);
    expect(desk.store.state().hole).toBe(3);
    desk.store.dispatch(draw('tee-marker'));
    placeAt(desk, at(300, 0), 0.5);
    placeAt(desk, at(300, 10), 0.5);
    const markers = desk.store.state().history.document.features.slice(-2);
    // the names that the course uses already, one after the other
    expect(markers.map(({ properties }) => (properties as { name: string }).name)).toEqual(['Oak', 'Ash']);
    expect(markers[0]).toMatchObject({ properties: { ref: '3' } });
  });

  it('takes the height of the nearest level for a new one, to be corrected', () => {
    const desk = deskWith(newDocumentOf());
    desk.store.dispatch(draw('ground-level'));
    placeAt(desk, at(0, 0), 0.5);
    expect(desk.store.state().history.document.features.at(-1)).toMatchObject({ properties: { ele: 0 } });
  });

  it('makes a slope arrow of where it was seen and a place downhill of it', () => {
    const desk = deskWith();
    const before = serialise(desk.store.state().history.document);
    desk.store.dispatch(draw('slope-mark'));
    placeAt(desk, at(0, 100), 0.5);
    expect(desk.store.state().sketch).toHaveLength(1);
    placeAt(desk, at(0, 90), 0.5);
    const { history, selection, sketch } = desk.store.state();
    const made = history.document.features.at(-1)!;
    expect(made).toMatchObject({
      properties: { holewright_kind: 'slope_mark', slope_percent: 1.5, downhill_deg: 180 },
      geometry: { type: 'Point', coordinates: at(0, 100) },
    });
    expect(selection).toEqual([made.id]);
    expect(desk.store.state().panel).toBe('chosen');
    expect(sketch).toEqual([]);
    const course = courseOf(history.document);
    expect(course.ok && course.value.slopeMarks).toMatchObject([{ slopeShare: 0.015, downhill: Math.PI }]);
    // what the file holds is what comes back from it
    const again = openDocumentText(serialise(history.document));
    expect(again.ok && courseOf(again.value.document)).toEqual(course);
    desk.undo();
    expect(serialise(desk.store.state().history.document)).toBe(before);
  });

  it('takes the fall of the nearest arrow for a new one', () => {
    const desk = deskWith();
    const arrow = (east: number): void => {
      placeAt(desk, at(east, 100), 0.1);
      placeAt(desk, at(east + 5, 100), 0.1);
    };
    desk.store.dispatch(draw('slope-mark'));
    arrow(0);
    const [id] = desk.store.state().selection;
    desk.attempt((document) => setProperties(document, [id!], { slope_percent: 2.5 }));
    arrow(4);
    expect(desk.store.state().history.document.features.at(-1)).toMatchObject({
      properties: { slope_percent: 2.5, downhill_deg: 90 },
    });
    expect(desk.attempt((document) => setProperties(document, [id!], { slope_percent: 40 }))).toBe(false);
    expect(desk.store.state().said?.words).toContain('per cent from 0 to 15');
  });
});

function newDocumentOf() {
  return newDocument('Blank');
}

describe('undoing', () => {
  it('brings back the first file byte for byte, and lets go of what is no longer there', () => {
    const desk = deskWith();
    const first = serialise(desk.store.state().history.document);
    desk.store.dispatch(draw('woods'));
    for (const place of square(70, 70, 9)) placeAt(desk, place, 0.1);
    expect(desk.store.state().selection).toHaveLength(1);
    desk.undo();
    expect(serialise(desk.store.state().history.document)).toBe(first);
    expect(desk.store.state().selection).toEqual([]);
    expect(desk.store.state().said?.words).toBe('Undone: Add woods.');
  });

  it('keeps what can be redone while things are chosen, shown and hidden', () => {
    const desk = deskWith();
    desk.store.dispatch(draw('woods'));
    for (const place of square(70, 70, 9)) placeAt(desk, place, 0.1);
    desk.undo();
    const [first] = desk.store.state().history.document.features;
    desk.store.dispatch({ type: 'selected', ids: [first!.id] });
    desk.store.dispatch({ type: 'kind-shown', kind: 'green', on: false });
    desk.redo();
    expect(desk.store.state().history.past.at(-1)?.name).toBe('Add woods');
  });
});

describe('a file', () => {
  it('that is read again keeps the hole worked on, another one begins with its first', () => {
    const desk = deskWith();
    desk.store.dispatch({ type: 'hole-chosen', hole: 2 });
    desk.store.dispatch({ type: 'course-loaded', file, document: smallDocument() });
    expect(desk.store.state().hole).toBe(2);
    const other = { ...file, entry: { ...entry, token: 'other' } };
    desk.store.dispatch({ type: 'course-loaded', file: other, document: smallDocument() });
    expect(desk.store.state().hole).toBe(1);
  });

  it('takes no news of another file', () => {
    const desk = deskWith();
    desk.store.dispatch({ type: 'file-told', token: 'other', change: { trouble: 'full' } });
    expect(desk.store.state().file?.trouble).toBeNull();
  });
});
