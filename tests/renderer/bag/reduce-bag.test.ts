/** The room's state: undo, redo, what counts as unsaved, and which club stays on show. */

import { describe, expect, it } from 'vitest';
import { changeClub } from '../../../core/player/edits/clubs.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import { type BagState, EMPTY_BAG } from '../../../renderer/bag/state/bag-state.ts';
import { type BagAction, isFresh, isUnsaved, reduceBag } from '../../../renderer/bag/state/reduce-bag.ts';
import { minimalPlayer } from '../../player/sample-player.ts';
import { inEnglish } from '../../../core/words/told.ts';

const entry = {
  token: 't',
  name: 'few-clubs.json',
  kind: 'player',
  readOnly: false,
  modifiedAt: 0,
  bytes: 1,
} as const;

function opened(document: PlayerDocument = minimalPlayer(), before: BagState = EMPTY_BAG): BagState {
  return reduceBag(before, {
    type: 'opened',
    entry,
    revision: 'one',
    document,
    report: null,
    access: { may: 'write' },
  });
}

function after(state: BagState, ...actions: readonly BagAction[]): BagState {
  return actions.reduce(reduceBag, state);
}

function named(state: BagState, name: string, mark: string | null = null): BagState {
  const document = { ...state.file!.history.present, name };
  return after(state, { type: 'edited', document, label: `name it ${name}`, mark });
}

const nameOf = (state: BagState): string => state.file!.history.present.name;

describe('undo and redo', () => {
  it('walks back and forth through every step', () => {
    const state = named(named(named(opened(), 'A'), 'B'), 'C');
    const back = after(state, { type: 'undone' }, { type: 'undone' });
    expect(nameOf(back)).toBe('A');
    expect(back.file!.history.future.map(({ label }) => label)).toEqual(['name it B', 'name it C']);
    expect(nameOf(after(back, { type: 'redone' }, { type: 'redone' }, { type: 'redone' }))).toBe('C');
    expect(nameOf(after(state, ...Array<BagAction>(9).fill({ type: 'undone' })))).toBe('Invented Player');
  });

  it('counts steps with the same mark as one, but not after an undo', () => {
    const state = named(named(opened(), 'A', 'typing'), 'B', 'typing');
    expect(state.file!.history.past).toHaveLength(1);
    const undone = after(state, { type: 'undone' });
    expect(nameOf(undone)).toBe('Invented Player');
    expect(named(after(state, { type: 'undone' }, { type: 'redone' }), 'C').file!.history.past).toHaveLength(
      2,
    );
  });

  it('gives up the steps ahead when something new is done, and keeps two hundred behind', () => {
    let state = named(after(named(opened(), 'A'), { type: 'undone' }), 'B');
    expect(state.file!.history.future).toEqual([]);
    for (let i = 0; i < 300; i++) state = named(state, `N${i}`);
    expect(state.file!.history.past).toHaveLength(200);
  });
});

describe('unsaved work', () => {
  it('is none after saving, nor after undoing back to what is saved', () => {
    const state = named(opened(), 'A');
    expect(isUnsaved(state.file!)).toBe(true);
    expect(isUnsaved(after(state, { type: 'undone' }).file!)).toBe(false);
    const saved = { document: state.file!.history.present, revision: 'two' };
    const kept = after(state, { type: 'save-begun' }, { type: 'save-ended', saved });
    expect(kept.file).toMatchObject({ revision: 'two', saving: false });
    expect(isUnsaved(kept.file!)).toBe(false);
    // Undo reaches back before a save, and that is a change again.
    expect(isUnsaved(after(kept, { type: 'undone' }).file!)).toBe(true);
  });

  it('stays unsaved where the save failed', () => {
    const state = after(named(opened(), 'A'), { type: 'save-begun' }, { type: 'save-ended', saved: null });
    expect(isUnsaved(state.file!)).toBe(true);
    expect(state.file!.saving).toBe(false);
  });
});

describe('the club on show', () => {
  it('is let go of when it is renamed or taken out, kept when another changes', () => {
    const state = after(opened(), { type: 'club-shown', shown: { club: '7-iron', swing: 'punch' } });
    const change = (name: string, to: string): BagState => {
      const next = changeClub(state.file!.history.present, name, { name: to });
      if (!next.ok) throw new Error(inEnglish(next.error));
      return after(state, { type: 'edited', document: next.value, label: 'rename', mark: null });
    };
    expect(change('7-iron', 'Seven').shown).toBeNull();
    expect(change('Driver', 'Big one').shown).toEqual({ club: '7-iron', swing: 'punch' });
    expect(opened(minimalPlayer(), state).shown).toEqual({ club: '7-iron', swing: 'punch' });
  });
});

describe('the report', () => {
  it('is fresh only for the very content it was made of', () => {
    const state = opened();
    const report = { lines: [] } as unknown as Extract<BagAction, { type: 'estimate-done' }>['report'];
    const done = after(state, { type: 'estimate-done', of: state.file!.history.present, report });
    expect(isFresh(done.file!)).toBe(true);
    const edited = named(done, 'A');
    expect(isFresh(edited.file!)).toBe(false);
    expect(edited.file!.estimate.report).toBe(report);
    expect(isFresh(after(edited, { type: 'undone' }).file!)).toBe(true);
  });
});

describe('what was done, for those who do not see it', () => {
  it('is no longer told once another player is open, and stays while the same one is read anew', () => {
    const told = after(opened(), { type: 'said', words: '60 shots added.' });
    expect(opened(minimalPlayer(), told).said).toBe('60 shots added.');
    const other = after(told, {
      ...{ type: 'opened', entry: { ...entry, token: 'another' }, revision: 'one', report: null },
      document: minimalPlayer(),
      access: { may: 'write' },
    });
    expect(other.said).toBeNull();
  });
});

describe('a player whose file is gone from its folder', () => {
  it('is so until a file has the work again', () => {
    const gone = after(named(opened(), 'A'), { type: 'gone', isGone: true });
    expect(gone.file!.isGone).toBe(true);
    const document = gone.file!.history.present;
    const back = after(gone, { type: 'save-ended', saved: { document, revision: 'two' } });
    expect([back.file!.isGone, isUnsaved(back.file!), back.file!.revision]).toEqual([false, false, 'two']);
    expect(after(gone, { type: 'gone', isGone: false }).file!.isGone).toBe(false);
  });
});
