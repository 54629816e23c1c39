/** Unsaved work of earlier sittings: each is offered by itself, and none leaves the disk before it is safe elsewhere. */

import { beforeEach, describe, expect, it, vi } from 'vitest';
import { english } from '../../../core/words/english/english.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import type { Host, HostAnswer, Journal } from '../../../electron/contract/host.ts';
import { EMPTY_BAG } from '../../../renderer/bag/state/bag-state.ts';
import { dropFound, findUnsaved, takeFound } from '../../../renderer/bag/state/found-work.ts';
import { keepJournal } from '../../../renderer/bag/state/journal-keeper.ts';
import { reduceBag } from '../../../renderer/bag/state/reduce-bag.ts';
import { makeStore } from '../../../renderer/state/store.ts';
import { minimalPlayer } from '../../player/sample-player.ts';

const entry = {
  token: 'player-token',
  name: 'seven.player.json',
  kind: 'player',
  readOnly: false,
  modifiedAt: 0,
  bytes: 1,
} as const;

const good = <T>(value: T): Promise<HostAnswer<T>> => Promise.resolve({ ok: true, value });

function left(journal: string, writtenAt: number, texts: readonly string[]): Journal {
  const entries = texts.map((text, i) => ({ number: i + 1, writtenAt, baseRevision: 'one', text }));
  return { journal, isOwn: false, startedAt: writtenAt, entries, lostBytes: 0, isNewer: false };
}

const named = (name: string): PlayerDocument => ({ ...minimalPlayer(), name });
const inJournal = (name: string): string => JSON.stringify(named(name));

/** The room with one player open, on a disk that holds these journals. */
async function openRoom(journals: Journal[]) {
  const disk = { journals, full: false };
  const host = {
    readJournal: () => good(disk.journals),
    clearJournal: ({ journal }: { journal: string }) => {
      disk.journals = disk.journals.filter((one) => one.journal !== journal);
      return good(null);
    },
    journal: ({ text }: { text: string }) => {
      if (disk.full)
        return Promise.resolve({ ok: false, failure: 'disk-full', message: 'The disk is full.' } as const);
      const own = disk.journals.find(({ isOwn }) => isOwn) ?? { ...left('own', 9, []), isOwn: true };
      const number = own.entries.length + 1;
      const entries = [...own.entries, { number, writtenAt: 9, baseRevision: 'one', text }];
      disk.journals = [...disk.journals.filter(({ isOwn }) => !isOwn), { ...own, entries }];
      return good({ journal: 'own', number });
    },
  } as unknown as Host;
  const store = makeStore(EMPTY_BAG, reduceBag);
  const journal = keepJournal(store, host, () => english);
  store.dispatch({
    ...{ type: 'opened', entry, revision: 'one', document: named('As saved'), report: null },
    access: { may: 'write' },
  });
  journal.settle();
  const answer = await findUnsaved(host, entry.token, 'one');
  if (answer.ok) store.dispatch({ type: 'found', found: answer.value });
  const finding = { store, host, journal, words: () => english };
  const offered = (): readonly string[] => store.state().file!.found.map(({ document }) => document.name);
  const onDisk = (): readonly string[] => disk.journals.map((one) => one.journal);
  return { disk, store, finding, offered, onDisk, found: () => store.state().file!.found };
}

beforeEach(() => {
  vi.stubGlobal('window', { addEventListener: () => undefined });
  vi.stubGlobal('document', { addEventListener: () => undefined });
  return () => vi.unstubAllGlobals();
});

const two = (): Journal[] => [
  left('shots', 1, [inJournal('With 60 shots')]),
  left('handicap', 2, [inJournal('Handicap 19'), inJournal('Handicap 20')]),
];

describe('unsaved work of two earlier sittings', () => {
  it('is offered sitting by sitting, the newest first, each with what it ended with', async () => {
    const room = await openRoom(two());
    expect(room.offered()).toEqual(['Handicap 20', 'With 60 shots']);
  });

  it('keeps the one on offer and on the disk when the other is taken up', async () => {
    const room = await openRoom(two());
    await takeFound(room.finding, room.found()[0]!);
    expect(room.store.state().file!.history.present.name).toBe('Handicap 20');
    expect(room.offered()).toEqual(['With 60 shots']);
    expect(room.onDisk()).toEqual(['shots', 'own']);
    await takeFound(room.finding, room.found()[0]!);
    expect(room.store.state().file!.history.present.name).toBe('With 60 shots');
    expect(room.onDisk()).toEqual(['own']);
    room.store.dispatch({ type: 'undone' });
    expect(room.store.state().file!.history.present.name).toBe('Handicap 20');
  });

  it('keeps the one on offer and on the disk when the other is dropped', async () => {
    const room = await openRoom(two());
    await dropFound(room.finding, room.found()[1]!);
    expect(room.offered()).toEqual(['Handicap 20']);
    expect(room.onDisk()).toEqual(['handicap']);
  });

  it('stays where it is until this sitting’s own journal has it', async () => {
    const room = await openRoom(two());
    room.disk.full = true;
    await takeFound(room.finding, room.found()[0]!);
    expect(room.store.state().file!.history.present.name).toBe('Handicap 20');
    expect(room.onDisk()).toEqual(['shots', 'handicap']);
    expect(room.offered()).toEqual(['Handicap 20', 'With 60 shots']);
    expect(room.store.state().refusal).toContain('The disk is full.');
  });

  it('is still offered after the file was read anew', async () => {
    const room = await openRoom(two());
    room.store.dispatch({
      ...{ type: 'opened', entry, revision: 'two', document: named('Read again'), report: null },
      access: { may: 'write' },
    });
    expect(room.offered()).toHaveLength(2);
  });
});

describe('a journal whose last entry is damaged', () => {
  it('offers the one before; one that cannot be read at all stays on the disk', async () => {
    const room = await openRoom([
      left('torn', 1, [inJournal('Whole'), '{"name":']),
      left('strange', 2, ['[]']),
    ]);
    expect(room.offered()).toEqual(['Whole']);
    await dropFound(room.finding, room.found()[0]!);
    expect(room.onDisk()).toEqual(['strange']);
  });
});
