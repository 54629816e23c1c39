/** The course's file under edit: journal before save, save at rest, and nothing lost to whatever stands in the way. */

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { courseOf, openDocumentText, serialise } from '../../../core/course/document.ts';
import { addFeature } from '../../../core/course/edits/add-feature.ts';
import type {
  Claim,
  FileChange,
  Host,
  HostAnswer,
  HostFailure,
  Journal,
  JournalRequest,
  SaveRequest,
} from '../../../electron/contract/host.ts';
import type { DrawingAction } from '../../../renderer/drawing/actions.ts';
import { type DrawingState, emptyDrawing } from '../../../renderer/drawing/drawing-state.ts';
import { keepFile } from '../../../renderer/drawing/files/file-keeper.ts';
import { readNote } from '../../../renderer/drawing/files/journal-entry.ts';
import { reduceDrawing } from '../../../renderer/drawing/reduce-drawing.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { makeStore } from '../../../renderer/state/store.ts';
import { square } from '../../course/builders.ts';
import { entry, smallDocument } from './open-course.ts';

const good = <T>(value: T): HostAnswer<T> => ({ ok: true, value });
const bad = (failure: HostFailure, more: { revisionOnDisk?: string } = {}): HostAnswer<never> => ({
  ok: false,
  failure,
  message: `${failure}.`,
  ...more,
});

/** A host of one file that does as it is told, and notes what it is asked. */
function fakeHost(text: string) {
  const disk = { text, revision: 'r1' };
  const asked: string[] = [];
  const notes: JournalRequest[] = [];
  const listeners: ((change: FileChange) => void)[] = [];
  const wishes: {
    save: (request: SaveRequest) => HostAnswer<{ revision: string }> | null;
    journal: () => HostAnswer<never> | null;
    /** Null refuses it: the file is gone. */
    claim: Claim | null;
    lost: readonly Journal[];
    hold: Promise<void> | null;
    onClear: () => void;
    newToken: string;
  } = {
    save: () => null,
    journal: () => null,
    claim: { isHeld: true },
    lost: [],
    hold: null,
    onClear: () => undefined,
    newToken: 'course-token',
  };
  let revisions = 1;
  const host: Pick<
    Host,
    | 'claim'
    | 'release'
    | 'open'
    | 'save'
    | 'create'
    | 'list'
    | 'journal'
    | 'readJournal'
    | 'clearJournal'
    | 'watch'
  > = {
    claim: () => Promise.resolve(wishes.claim === null ? bad('not-found') : good(wishes.claim)),
    release: (token) => {
      asked.push(`release ${token}`);
      return Promise.resolve(good(null));
    },
    open: () => Promise.resolve(good({ entry, text: disk.text, revision: disk.revision })),
    list: () => Promise.resolve(good([entry])),
    create: (_, name, text) => {
      asked.push(`create ${name}`);
      disk.text = text;
      disk.revision = `r${++revisions}`;
      return Promise.resolve(
        good({ entry: { ...entry, name, token: wishes.newToken }, text, revision: disk.revision }),
      );
    },
    save: async (request) => {
      asked.push(`save on ${request.baseRevision ?? ''} up to ${request.journalUpTo ?? 0}`);
      await wishes.hold;
      const refused = wishes.save(request);
      if (refused !== null) return refused;
      if (request.baseRevision !== disk.revision)
        return bad('changed-on-disk', { revisionOnDisk: disk.revision });
      disk.text = request.text;
      disk.revision = `r${++revisions}`;
      return good({ revision: disk.revision });
    },
    journal: (request) => {
      const refused = wishes.journal();
      if (refused !== null) return Promise.resolve(refused);
      notes.push(request);
      asked.push(`journal ${notes.length}`);
      return Promise.resolve(good({ journal: 'own', number: notes.length }));
    },
    readJournal: () => Promise.resolve(good(wishes.lost)),
    clearJournal: ({ journal, upTo }) => {
      asked.push(`clear ${journal} up to ${upTo}`);
      wishes.onClear();
      return Promise.resolve(good(null));
    },
    watch: (listener) => {
      listeners.push(listener);
      return () => undefined;
    },
  };
  return {
    host,
    disk,
    asked,
    notes,
    wishes,
    tell: (change: FileChange) => listeners.forEach((one) => one(change)),
  };
}

function openRoom(token = 'course-token', claim: Claim | null = { isHeld: true }) {
  const document = smallDocument();
  const text = serialise(document);
  const fake = fakeHost(text);
  fake.wishes.claim = claim;
  const app = makeStore(initialState(), reduce);
  const store = makeStore<DrawingState, DrawingAction>(emptyDrawing(), reduceDrawing);
  const keeper = keepFile({ host: fake.host, store: app }, store);
  const course = courseOf(document);
  if (!course.ok) throw new Error('refused');
  const opened = { entry: { ...entry, token }, text, revision: 'r1', value: course.value };
  app.dispatch({ type: 'course-opened', document: opened });
  const draw = (east: number): void => {
    const made = addFeature(store.state().history.document, {
      kind: 'bunker',
      geometry: { type: 'Polygon', coordinates: [square(east, 300, 4)] },
    });
    if (!made.ok) throw new Error(made.error.message);
    store.dispatch({ type: 'edited', edit: made.value });
  };
  const count = (): number => {
    const read = openDocumentText(fake.disk.text);
    return read.ok ? read.value.document.features.length - document.features.length : -1;
  };
  return { ...fake, app, store, keeper, opened, draw, savedBunkers: count };
}

const settle = (): Promise<void> => vi.advanceTimersByTimeAsync(1).then(() => undefined);
const rest = (ms = 2100): Promise<void> => vi.advanceTimersByTimeAsync(ms).then(() => undefined);

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

describe('a course under edit', () => {
  it('has every change in the journal at once and on the disk when drawing rests', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    room.draw(40);
    await settle();
    expect(room.notes.map(({ text }) => readNote(text)?.what)).toEqual(['whole', 'change']);
    expect(room.savedBunkers()).toBe(0);
    await rest();
    expect(room.savedBunkers()).toBe(2);
    expect(room.asked.slice(-2)).toEqual(['save on r1 up to 2', 'clear own up to 2']);
    expect(room.store.state().file).toMatchObject({ baseRevision: 'r2', saving: false, trouble: null });
  });

  it('is handed on to the other rooms when saved, and not read again here', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    await room.keeper.save();
    expect(room.app.state().course).toMatchObject({ revision: 'r2' });
    expect(room.app.state().course?.value.areas).toHaveLength(room.opened.value.areas.length + 1);
    expect(room.store.state().history.past).toHaveLength(1);
  });

  it('keeps what was drawn when the window hears of something else just after the save', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    room.wishes.onClear = () => room.app.dispatch({ type: 'room-shown', room: 'round' });
    await rest();
    expect(room.savedBunkers()).toBe(1);
    const { history, file } = room.store.state();
    expect(history.past).toHaveLength(1);
    expect(file).toMatchObject({ baseRevision: 'r2', onDisk: null });
  });

  it('begins the journal with the whole again for what is drawn while it is saved', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    let go = (): void => undefined;
    room.wishes.hold = new Promise((resolve) => {
      go = resolve;
    });
    const saving = room.keeper.save();
    await settle();
    room.draw(40);
    go();
    await saving;
    await settle();
    expect(readNote(room.notes.at(-1)!.text)?.what).toBe('whole');
    await rest();
    expect(room.savedBunkers()).toBe(2);
  });

  it('keeps the work on a full disk, says so, and saves by itself once there is room', async () => {
    const room = openRoom();
    await settle();
    room.wishes.save = () => bad('disk-full');
    room.draw(0);
    await rest();
    expect(room.store.state().file?.trouble).toContain('disk-full');
    expect(room.store.state().history.past).toHaveLength(1);
    room.wishes.save = () => null;
    await rest(10_100);
    expect(room.savedBunkers()).toBe(1);
    expect(room.store.state().file?.trouble).toBeNull();
  });

  it('writes the whole after a journal entry that failed, for nothing can build on it', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    await settle();
    room.wishes.journal = () => bad('disk-full');
    room.draw(40);
    await settle();
    expect(room.store.state().file?.trouble).toContain('not in the journal');
    room.wishes.journal = () => null;
    room.draw(80);
    await settle();
    expect(readNote(room.notes.at(-1)!.text)?.what).toBe('whole');
  });

  it('never overwrites a change by others unasked, and does so when told to', async () => {
    const room = openRoom();
    await settle();
    room.disk.text = serialise(smallDocument()).replace('Test course', 'Their course');
    room.disk.revision = 'theirs';
    room.draw(0);
    await rest();
    expect(room.disk.revision).toBe('theirs');
    expect(room.store.state().file?.onDisk).toEqual({ revision: 'theirs' });
    room.draw(40);
    await rest(60_000);
    expect(room.disk.revision).toBe('theirs');
    await room.keeper.saveOver();
    expect(room.savedBunkers()).toBe(2);
    expect(room.store.state().file?.onDisk).toBeNull();
  });

  it('reads the version of others when the person takes it', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    await settle();
    room.disk.text = serialise(smallDocument()).replace('Test course', 'Their course');
    room.disk.revision = 'theirs';
    room.tell({ token: 'course-token', change: 'changed' });
    await settle();
    expect(room.store.state().file?.onDisk).toEqual({ revision: 'theirs' });
    await room.keeper.readAgain();
    expect(room.store.state().history.document.holewright['courseName']).toBe('Their course');
    expect(room.store.state().history.past).toEqual([]);
    expect(room.app.state().course?.value.name).toBe('Their course');
    expect(room.asked.filter((one) => one.startsWith('journal'))).toEqual(['journal 1']);
    // editing goes on with the same claim
    room.draw(40);
    await rest();
    expect(room.savedBunkers()).toBe(1);
  });

  it('takes news of its own save, come late, for no change by others', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    await room.keeper.save();
    room.tell({ token: 'course-token', change: 'changed' });
    await settle();
    expect(room.store.state().file?.onDisk).toBeNull();
  });

  it('is saved and let go of when another course is opened', async () => {
    const room = openRoom();
    await settle();
    room.draw(0);
    await settle();
    const other = { ...room.opened, entry: { ...entry, token: 'other' } };
    room.app.dispatch({ type: 'course-opened', document: other });
    await rest(100);
    expect(room.savedBunkers()).toBe(1);
    expect(room.asked).toContain('release course-token');
    expect(room.store.state().file?.entry.token).toBe('other');
  });
});

describe('a course that another window has', () => {
  it('may be looked at, and edited once it is free', async () => {
    const document = smallDocument();
    const room = openRoom('course-token', {
      isHeld: false,
      holder: { place: 'other-window', shell: 'loopback', computer: 'here', since: 0 },
    });
    await settle();
    expect(room.store.state().file?.access).toMatchObject({ may: 'look', why: 'held' });
    room.wishes.claim = { isHeld: true };
    await room.keeper.claimAgain();
    expect(room.store.state().file?.access).toEqual({ may: 'edit' });
    expect(room.store.state().history.document.features).toHaveLength(document.features.length);
  });
});

describe('work of a sitting that crashed', () => {
  it('waits for the person, is taken into this sitting first and dropped only then', async () => {
    const crashed = openRoom();
    await settle();
    crashed.draw(0);
    crashed.draw(40);
    await settle();
    const entries = crashed.notes.map(({ text, baseRevision }, i) => ({
      number: i + 1,
      writtenAt: 5,
      baseRevision,
      text,
    }));
    const room = openRoom();
    room.wishes.lost = [
      { journal: 'theirs', isOwn: false, startedAt: 0, entries, lostBytes: 0, isNewer: false },
    ];
    await settle();
    const [found] = room.store.state().file!.recovered;
    expect(found).toMatchObject({ difference: { added: 2 } });
    await rest();
    expect(room.asked).toEqual([]);
    await room.keeper.bringBack(found!);
    expect(room.asked).toEqual(['journal 1', 'clear theirs up to 2']);
    expect(room.store.state().file?.recovered).toEqual([]);
    await rest();
    expect(room.savedBunkers()).toBe(2);
  });

  it('stays where it is while this sitting cannot write it down', async () => {
    const crashed = openRoom();
    await settle();
    crashed.draw(0);
    await settle();
    const entries = crashed.notes.map(({ text }) => ({ number: 1, writtenAt: 5, baseRevision: 'r1', text }));
    const room = openRoom();
    room.wishes.lost = [
      { journal: 'theirs', isOwn: false, startedAt: 0, entries, lostBytes: 0, isNewer: false },
    ];
    await settle();
    room.wishes.journal = () => bad('disk-full');
    await room.keeper.bringBack(room.store.state().file!.recovered[0]!);
    expect(room.asked).toEqual([]);
    expect(room.store.state().file?.recovered).toHaveLength(1);
  });
});

describe('a course whose file is gone from its folder', () => {
  const goneRoom = async () => {
    const room = openRoom();
    await settle();
    room.wishes.save = () => bad('not-found');
    room.draw(0);
    await rest();
    return room;
  };

  it('is said to be gone, not that saving would put it back, and stays in the journal', async () => {
    const room = await goneRoom();
    expect(room.store.state().file).toMatchObject({ isGone: true, trouble: null, saving: false });
    expect(room.notes).toHaveLength(1);
    expect(room.asked.some((one) => one.startsWith('clear') || one.startsWith('create'))).toBe(false);
  });

  it('is written anew where the person says so: under its name, with its steps of undo kept', async () => {
    const room = await goneRoom();
    await room.keeper.putBack();
    expect(room.savedBunkers()).toBe(1);
    expect(room.asked.slice(-2)).toEqual([`create ${entry.name}`, 'clear own up to 1']);
    expect(room.store.state().file).toMatchObject({ isGone: false, baseRevision: room.disk.revision });
    expect(room.store.state().history.past).toHaveLength(1);
    room.wishes.save = () => null;
    room.draw(40);
    await rest();
    expect(room.savedBunkers()).toBe(2);
  });

  it('and was so before it was taken is written anew too, and taken then', async () => {
    const room = openRoom('course-token', null);
    await settle();
    expect(room.store.state().file).toMatchObject({ isGone: true, access: { may: 'look' } });
    room.wishes.claim = { isHeld: true };
    await room.keeper.putBack();
    expect(room.asked).toContain(`create ${entry.name}`);
    expect(room.store.state().file).toMatchObject({ isGone: false, access: { may: 'edit' } });
  });

  it('is opened under another name where its own is taken by then', async () => {
    const room = await goneRoom();
    room.wishes.newToken = 'another-token';
    await room.keeper.putBack();
    await settle();
    expect(room.store.state().file?.entry.token).toBe('another-token');
    expect(room.savedBunkers()).toBe(1);
    expect(room.asked).toContain('release course-token');
    expect(room.store.state().said?.tone).toBe('news');
  });

  it('is no longer said to be gone once it is there again', async () => {
    const room = await goneRoom();
    room.wishes.save = () => null;
    room.tell({ token: 'course-token', change: 'added' });
    expect(room.store.state().file?.isGone).toBe(false);
    await rest(10_100);
    expect(room.savedBunkers()).toBe(1);
  });
});
