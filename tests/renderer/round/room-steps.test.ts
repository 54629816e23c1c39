/** The room's undo: one order over parts that keep their own steps. */

import { describe, expect, it } from 'vitest';
import { FIRST_ROUND, reduceRound, type RoundAction } from '../../../renderer/round/state/round-state.ts';
import { makeDeeds, makeRoomSteps } from '../../../renderer/round/state/room-steps.ts';

function parts() {
  const steps = makeRoomSteps();
  const [first, second] = [makeDeeds(), makeDeeds()];
  steps.join(first);
  steps.join(second);
  const done: string[] = [];
  const doing = (part: typeof first, label: string, undoes = true): void =>
    part.did(
      {
        label,
        undo: () => {
          done.push(`undo ${label}`);
          return Promise.resolve(undoes);
        },
        redo: () => {
          done.push(`redo ${label}`);
          return Promise.resolve(true);
        },
      },
      steps.stamp(),
    );
  return { steps, first, second, done, doing };
}

const rest = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('the undo of the room', () => {
  it('takes steps back in the order in which they were made, whichever part keeps them, and does them again', async () => {
    const { steps, first, second, done, doing } = parts();
    doing(first, 'a');
    doing(second, 'b');
    doing(first, 'c');
    for (let i = 0; i < 3; i++) {
      steps.undo();
      await rest();
    }
    expect(done).toEqual(['undo c', 'undo b', 'undo a']);
    expect(steps.undoLabel()).toBeNull();
    expect(steps.redoLabel()).toBe('a');
    for (let i = 0; i < 3; i++) {
      steps.redo();
      await rest();
    }
    expect(done.slice(3)).toEqual(['redo a', 'redo b', 'redo c']);
    expect(steps.undoLabel()).toBe('c');
  });

  it('does nothing again once something new was done in any part', async () => {
    const { steps, first, second, doing } = parts();
    doing(first, 'a');
    steps.undo();
    await rest();
    expect(steps.redoLabel()).toBe('a');
    doing(second, 'b');
    expect(steps.redoLabel()).toBeNull();
  });

  it('keeps a step whose undoing failed', async () => {
    const { steps, first, doing } = parts();
    doing(first, 'a', false);
    steps.undo();
    await rest();
    expect(steps.undoLabel()).toBe('a');
    expect(steps.redoLabel()).toBeNull();
  });
});

describe('what is wished for', () => {
  const after = (...actions: RoundAction[]) => actions.reduce(reduceRound, FIRST_ROUND);

  it('is a step of undo, typing in one field a single one', () => {
    const state = after(
      { type: 'wished', change: { score: 8 } },
      { type: 'wished', change: { score: 89 } },
      { type: 'wish-field-left' },
      { type: 'wished', change: { score: 9 } },
      { type: 'wished', change: { game: 'match' } },
      { type: 'paper-wished', change: { style: 'large-print' } },
    );
    expect(state.wishesPast.map(({ what }) => what)).toEqual(['score', 'score', 'game', 'style']);
    const back = [1, 2, 3].reduce((one) => reduceRound(one, { type: 'wish-undone' }), state);
    expect(back.wishes).toEqual({ ...FIRST_ROUND.wishes, score: 89 });
    const again = [1, 2, 3].reduce((one) => reduceRound(one, { type: 'wish-redone' }), back);
    expect(again.wishes).toEqual(state.wishes);
  });

  it('of another player or course begins without steps', () => {
    const state = after(
      { type: 'wished', change: { game: 'match' } },
      { type: 'wishes-restored', wishes: FIRST_ROUND.wishes },
    );
    expect(state.wishesPast).toEqual([]);
  });
});
