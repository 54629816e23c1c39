import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Situation } from '../../../renderer/state/app-state.ts';
import {
  changedHole,
  COURSE_AS_FOUND,
  emptyHistory,
  preview,
  redo,
  redoLabel,
  shown,
  situationOfHole,
  take,
  undo,
  undoLabel,
  withHole,
} from '../../../renderer/state/history.ts';

const moved = (lon: number, hole = 1): Situation => withHole(COURSE_AS_FOUND, hole, { ball: [lon, 0] });

describe('history', () => {
  it('gives back the situation before an action, and again the one after it', () => {
    const first = take(emptyHistory(), moved(1), 'move the ball', null);
    const second = take(first, moved(2), 'move the ball again', null);
    expect(undoLabel(second)).toBe('move the ball again');
    const back = undo(second);
    expect(back.present).toEqual(moved(1));
    expect(redoLabel(back)).toBe('move the ball again');
    expect(redo(back).present).toEqual(moved(2));
  });

  it('shows a drag without making a step of it', () => {
    const dragged = preview(emptyHistory(), moved(5));
    expect(shown(dragged)).toEqual(moved(5));
    expect(undoLabel(dragged)).toBeNull();
    expect(shown(take(dragged, moved(6), 'move the ball', null))).toEqual(moved(6));
  });

  it('makes one step of a key held down, and two of two presses', () => {
    let history = emptyHistory();
    for (const lon of [1, 2, 3]) history = take(history, moved(lon), 'move the ball', 'ball 1');
    expect(history.past).toHaveLength(1);
    history = take(history, moved(4), 'move the ball', 'ball 2');
    expect(history.past).toHaveLength(2);
    expect(undo(undo(history)).present).toEqual(COURSE_AS_FOUND);
  });

  it('does not lengthen a step that was undone meanwhile', () => {
    const held = take(emptyHistory(), moved(1), 'move the ball', 'ball 1');
    const again = redo(undo(held));
    expect(take(again, moved(2), 'move the ball', 'ball 1').past).toHaveLength(2);
  });

  it('forgets what could be redone once something else is done', () => {
    const history = take(undo(take(emptyHistory(), moved(1), 'one', null)), moved(2), 'two', null);
    expect(redoLabel(history)).toBeNull();
  });

  it('comes back to where it was by as many undos as there were actions, whatever they were', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 30 }), (lons) => {
        let history = emptyHistory();
        for (const lon of lons) history = take(history, moved(lon), `to ${lon}`, null);
        const last = history.present;
        lons.forEach(() => (history = undo(history)));
        expect(history.present).toEqual(COURSE_AS_FOUND);
        lons.forEach(() => (history = redo(history)));
        expect(history.present).toEqual(last);
      }),
    );
  });

  it('names the hole on which two situations differ', () => {
    expect(changedHole(moved(1, 4), moved(2, 4))).toBe(4);
    expect(changedHole(COURSE_AS_FOUND, { ...COURSE_AS_FOUND, teeName: 'White' })).toBeNull();
    expect(situationOfHole(COURSE_AS_FOUND, 7).ball).toBeNull();
  });
});
