/** Typing a round: written down before it is saved, brought back after a crash, never over somebody else's change. */

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type RoundDocument, roundText } from '../../../core/round/format.ts';
import { newRound, withHole } from '../../../core/round/record.ts';
import type { FileEntry, Host, Journal } from '../../../electron/contract/host.ts';
import {
  NO_ROUND,
  reduceRoundFiles,
  type RoundFileAction,
  type RoundFiles,
} from '../../../renderer/round/after/round-file.ts';
import { RoundKeeper } from '../../../renderer/round/after/round-keeper.ts';
import { makeStore } from '../../../renderer/state/store.ts';
import { english } from '../../../core/words/english/english.ts';

const ROUND = newRound({ name: 'Links, today', course: { name: 'Links' }, player: { name: 'Somebody' } });

function played(round: RoundDocument, hole: number, score: number): RoundDocument {
  return withHole(round, { hole, par: 4, score });
}

const ENTRY: FileEntry = {
  ...{ token: 'round-1', name: 'links.round.json', kind: 'round', readOnly: false },
  ...{ modifiedAt: 0, bytes: 1 },
};

/** A host with one round file in memory. */
function memoryHost(start: string = roundText(ROUND)) {
  const file = { text: start, revision: 'r0', saves: 0, failing: false };
  const entries: { number: number; text: string; baseRevision: string; writtenAt: number }[] = [];
  const others: Journal[] = [];
  const cleared: string[] = [];
  const ok = <T>(value: T) => Promise.resolve({ ok: true as const, value });
  const host = {
    create: (_kind: string, _name: string, text: string) => {
      file.text = text;
      return ok({ entry: ENTRY, text, revision: file.revision });
    },
    open: () => ok({ entry: ENTRY, text: file.text, revision: file.revision }),
    claim: () => ok({ isHeld: true as const }),
    release: () => ok(null),
    readJournal: () => ok(others),
    clearJournal: ({ journal }: { journal: string }) => {
      cleared.push(journal);
      const at = others.findIndex((one) => one.journal === journal);
      if (at >= 0) others.splice(at, 1);
      return ok(null);
    },
    journal: ({ text, baseRevision }: { text: string; baseRevision: string }) => {
      if (file.failing)
        return Promise.resolve({ ok: false as const, failure: 'disk-full' as const, message: 'Full.' });
      entries.push({ number: entries.length + 1, text, baseRevision, writtenAt: 5 });
      return ok({ journal: 'mine', number: entries.length });
    },
    save: ({ text, baseRevision }: { text: string; baseRevision: string | null }) => {
      if (file.failing)
        return Promise.resolve({ ok: false as const, failure: 'disk-full' as const, message: 'Full.' });
      if (baseRevision !== file.revision)
        return Promise.resolve({
          ok: false as const,
          failure: 'changed-on-disk' as const,
          message: 'Changed.',
        });
      file.text = text;
      file.saves += 1;
      file.revision = `r${file.saves}`;
      return ok({ revision: file.revision });
    },
    watch: () => () => undefined,
  };
  return { host: host as unknown as Host, file, entries, others, cleared };
}

function keeperOn(host: Host) {
  const store = makeStore<RoundFiles, RoundFileAction>(NO_ROUND, reduceRoundFiles);
  return { store, keeper: new RoundKeeper(host, store, () => english) };
}

describe('typing a round', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  const open = (store: ReturnType<typeof keeperOn>['store']) => store.state().open!;

  it('is in the journal a third of a second later and in the file when it rests', async () => {
    const { host, file, entries } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    store.dispatch({ type: 'changed', label: 'score of hole 1', document: played(ROUND, 1, 5) });
    await vi.advanceTimersByTimeAsync(320);
    expect(entries).toHaveLength(1);
    expect(entries[0]!.text).toContain('"score": 5');
    expect(file.saves).toBe(0);
    await vi.advanceTimersByTimeAsync(1500);
    expect(file.saves).toBe(1);
    expect(file.text).toContain('"score": 5');
    expect(open(store).saved).toBe(open(store).document);
  });

  it('that could not be saved stays, says so, and is tried again', async () => {
    const { host, file } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    file.failing = true;
    store.dispatch({ type: 'changed', label: 'score of hole 1', document: played(ROUND, 1, 5) });
    await vi.advanceTimersByTimeAsync(2000);
    expect(open(store).trouble).toContain('Full.');
    file.failing = false;
    await vi.advanceTimersByTimeAsync(10_100);
    expect(file.text).toContain('"score": 5');
    expect(open(store).trouble).toBeNull();
  });

  it('is never saved over what another program wrote', async () => {
    const { host, file } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    file.revision = 'foreign';
    store.dispatch({ type: 'changed', label: 'score of hole 1', document: played(ROUND, 1, 5) });
    await vi.advanceTimersByTimeAsync(2000);
    expect(open(store).isChangedOnDisk).toBe(true);
    expect(file.saves).toBe(0);
    expect(open(store).document.played).toHaveLength(1);
  });

  it('kept as a copy is no longer in the journal of the file that it was typed into', async () => {
    const { host, file, cleared } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    file.revision = 'foreign';
    store.dispatch({ type: 'changed', label: 'score of hole 1', document: played(ROUND, 1, 5) });
    await vi.advanceTimersByTimeAsync(2000);
    await keeper.keepAsCopy();
    expect(cleared).toEqual(['mine']);
    expect(open(store)).toMatchObject({ isChangedOnDisk: false, trouble: null });
    expect(open(store).document.played[0]?.score).toBe(5);
  });

  it('from before a crash is offered, and brought back as a step that can be undone', async () => {
    const { host, others, cleared } = memoryHost();
    const text = roundText(played(ROUND, 3, 7));
    others.push({
      ...{ journal: 'theirs', isOwn: false, startedAt: 0, lostBytes: 0, isNewer: false },
      entries: [{ number: 4, writtenAt: 9, baseRevision: 'r0', text }],
    });
    const { store, keeper } = keeperOn(host);
    await keeper.openFile(ENTRY);
    expect(open(store).lost?.document.played[0]?.score).toBe(7);
    await keeper.bringBack(open(store).lost!);
    expect(open(store).document.played[0]?.score).toBe(7);
    expect(cleared).toEqual(['theirs']);
    store.dispatch({ type: 'undone' });
    expect(open(store).document.played).toHaveLength(0);
  });

  it('of two sittings is offered one by one, and leaves the disk only once it is written down here', async () => {
    const { host, file, others, cleared } = memoryHost();
    for (const [journal, score] of [
      ['older', 7],
      ['newer', 8],
    ] as const)
      others.push({
        ...{ journal, isOwn: false, startedAt: score, lostBytes: 0, isNewer: false },
        entries: [
          { number: 4, writtenAt: score, baseRevision: 'r0', text: roundText(played(ROUND, 3, score)) },
        ],
      });
    const { store, keeper } = keeperOn(host);
    await keeper.openFile(ENTRY);
    file.failing = true;
    await keeper.bringBack(open(store).lost!);
    expect(open(store).document.played[0]?.score).toBe(8);
    expect(cleared).toEqual([]);
    expect(open(store).lost?.journal).toBe('newer');
    expect(open(store).trouble).toContain('Full.');
    file.failing = false;
    await keeper.bringBack(open(store).lost!);
    expect(cleared).toEqual(['newer']);
    expect(open(store).lost?.document.played[0]?.score).toBe(7);
    await keeper.giveUp(open(store).lost!);
    expect(cleared).toEqual(['newer', 'older']);
    expect(open(store).lost).toBeNull();
  });

  it('in one field is one step of undo', async () => {
    const { host } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    for (const score of [1, 12])
      store.dispatch({
        ...{ type: 'changed', label: 'score of hole 1', field: 'score 1' },
        document: played(ROUND, 1, score),
      });
    store.dispatch({
      type: 'changed',
      label: 'score of hole 2',
      document: played(open(store).document, 2, 4),
    });
    store.dispatch({ type: 'undone' });
    expect(open(store).document.played.map(({ score }) => score)).toEqual([12]);
    store.dispatch({ type: 'undone' });
    expect(open(store).document.played).toEqual([]);
    store.dispatch({ type: 'redone' });
    store.dispatch({ type: 'redone' });
    expect(open(store).document.played.map(({ score }) => score)).toEqual([12, 4]);
  });

  it('in one field is another step once the field was left, and choices of one name are steps each', async () => {
    const { host } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    const type = (score: number): void =>
      store.dispatch({
        ...{ type: 'changed', label: 'score of hole 1', field: 'score 1' },
        document: played(ROUND, 1, score),
      });
    type(4);
    store.dispatch({ type: 'field-left' });
    type(5);
    for (const score of [6, 7])
      store.dispatch({ type: 'changed', label: 'places of hole 1', document: played(ROUND, 1, score) });
    const seen: (number | undefined)[] = [];
    for (let i = 0; i < 4; i++) {
      store.dispatch({ type: 'undone' });
      seen.push(open(store).document.played[0]?.score);
    }
    expect(seen).toEqual([6, 5, 4, undefined]);
  });

  it('that could not be saved keeps the round open when another is asked for, until it is saved or dropped', async () => {
    const { host, file } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    file.failing = true;
    store.dispatch({ type: 'changed', label: 'score of hole 1', document: played(ROUND, 1, 5) });
    expect(await keeper.leave()).toBe(false);
    await keeper.openFile(ENTRY);
    await keeper.begin(ROUND, 'another');
    expect(open(store).document.played[0]?.score).toBe(5);
    expect(open(store).trouble).toMatch(/Full\..*stays open/);
    file.failing = false;
    expect(await keeper.leave()).toBe(true);
    expect(store.state().open).toBeNull();
    expect(file.text).toContain('"score": 5');
    await keeper.openFile(ENTRY);
    file.failing = true;
    store.dispatch({ type: 'changed', label: 'score of hole 1', document: played(ROUND, 1, 6) });
    await keeper.leave();
    await keeper.drop();
    expect(store.state().open).toBeNull();
    expect(file.text).toContain('"score": 5');
  });

  it('while a save is under way is saved too before the round closes', async () => {
    const { host, file } = memoryHost();
    const { store, keeper } = keeperOn(host);
    await keeper.begin(ROUND, ROUND.name);
    store.dispatch({ type: 'changed', label: 'a', document: played(ROUND, 1, 5) });
    const first = keeper.save();
    await vi.advanceTimersByTimeAsync(0);
    store.dispatch({ type: 'changed', label: 'b', document: played(ROUND, 1, 6) });
    expect(await keeper.leave()).toBe(true);
    await first;
    expect(file.text).toContain('"score": 6');
  });

  it('a damaged file is refused in words and nothing is opened', async () => {
    const { host } = memoryHost('{"holewright":{"format":"round","formatVersion":99}}');
    const { store, keeper } = keeperOn(host);
    await keeper.openFile(ENTRY);
    expect(store.state().open).toBeNull();
    expect(store.state().refused?.faults[0]?.message).toContain('version 99');
  });
});
