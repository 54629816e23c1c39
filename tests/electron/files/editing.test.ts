import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Disk, nodeDisk } from '../../../electron/files/disk.ts';
import { type Editing, type EditingParts, openEditing } from '../../../electron/files/editing.ts';
import { JOURNAL_FOLDER } from '../../../electron/files/journal.ts';
import { LOCK_FOLDER, usualLockTimes } from '../../../electron/files/lock.ts';
import type { FileStore } from '../../../electron/files/store.ts';
import { type Desk, makeChanges, recover, settle, textWith } from './changes.ts';
import { diskOnClock, handClock, type HandClock } from './clock.ts';
import { diskKilledAt, recordingDisk } from './failing-disk.ts';
import { forgetfulDisk } from './power-cut.ts';
import { courseText, failureOf, sha256, storeIn, temporaryFolder, valueOf } from './workspace.ts';

interface Host {
  readonly store: FileStore;
  readonly editing: Editing;
}

/** Locks are renewed when a test says so, not by the machine's clock. */
const times = { ...usualLockTimes, beatMs: 1_000_000 };

async function hostAt(
  folder: string,
  clock: HandClock,
  parts: Partial<EditingParts> = {},
  disk: Disk = diskOnClock(clock),
): Promise<Host> {
  const store = await storeIn(folder, { disk, now: clock.now });
  return {
    store,
    editing: openEditing({ store, shell: 'loopback', computer: 'here', clock, times, ...parts }),
  };
}

async function workspace(): Promise<{ folder: string; path: string; token: string; clock: HandClock }> {
  const folder = await temporaryFolder();
  const path = join(folder, 'a.geojson');
  await writeFile(path, courseText(1));
  const { token } = valueOf(await (await storeIn(folder)).list())[0]!;
  return { folder, path, token, clock: handClock() };
}

const save = (token: string, count: number, baseRevision: string | null = null) => ({
  token,
  text: courseText(count),
  baseRevision,
});
const entry = (token: string, text = 'entry') => ({ token, baseRevision: sha256(courseText(1)), text });

describe('a claim', () => {
  it('is one window’s; a second one of the program is told so and may read', async () => {
    const { folder, token, clock } = await workspace();
    const { editing, store } = await hostAt(folder, clock);
    expect(valueOf(await editing.claim('window-1', token))).toEqual({ isHeld: true });
    expect(valueOf(await editing.claim('window-1', token))).toEqual({ isHeld: true });
    expect(valueOf(await editing.claim('window-2', token))).toEqual({
      isHeld: false,
      holder: { place: 'other-window', shell: 'loopback', computer: 'here', since: clock.now() },
    });
    expect(failureOf(await editing.save('window-2', save(token, 2)))).toBe('not-claimed');
    expect(failureOf(await editing.journal('window-2', entry(token)))).toBe('not-claimed');
    expect(failureOf(await editing.readJournal('window-2', token))).toBe('not-claimed');
    expect(failureOf(await editing.clearJournal('window-2', { token, journal: 'journal-1', upTo: 1 }))).toBe(
      'not-claimed',
    );
    expect(valueOf(await store.open(token)).text).toBe(courseText(1));
    valueOf(await editing.release('window-1', token));
    expect(valueOf(await editing.claim('window-2', token)).isHeld).toBe(true);
    await editing.close();
  });

  it.each([
    ['another program', 'here', 'other-program'],
    ['another computer', 'there', 'other-computer'],
  ])('of %s on the same folder is told with its name', async (_, computer, place) => {
    const { folder, token, clock } = await workspace();
    const one = await hostAt(folder, clock, { shell: 'electron', computer });
    const two = await hostAt(folder, clock);
    valueOf(await one.editing.claim('window-1', token));
    const since = clock.now();
    clock.turn(2000);
    await one.editing.beat();
    expect(valueOf(await two.editing.claim('window-2', token))).toEqual({
      isHeld: false,
      holder: { place, shell: 'electron', computer, since },
    });
    expect(failureOf(await two.editing.save('window-2', save(token, 2)))).toBe('not-claimed');
    valueOf(await one.editing.save('window-1', save(token, 3)));
    await one.editing.close();
    expect(valueOf(await two.editing.claim('window-2', token)).isHeld).toBe(true);
    await two.editing.close();
    expect(await readdir(join(folder, LOCK_FOLDER))).toEqual([]);
  });

  it('ends with its window, also one that was still being made', async () => {
    const { folder, token, clock } = await workspace();
    const { editing } = await hostAt(folder, clock);
    const claiming = editing.claim('window-1', token);
    const leaving = editing.leave('window-1');
    await Promise.all([claiming, leaving]);
    expect(valueOf(await editing.claim('window-2', token)).isHeld).toBe(true);
    await editing.leave('window-1');
    expect(failureOf(await editing.save('window-2', save(token, 2)))).toBe('none');
    await editing.close();
  });

  it('of a demo file, or one that is not there, is refused', async () => {
    const { folder, clock } = await workspace();
    const demoFolder = await temporaryFolder();
    await writeFile(join(demoFolder, 'demo.geojson'), courseText(1));
    const store = await storeIn(folder, { demoFolder });
    const editing = openEditing({ store, shell: 'loopback', clock });
    const demo = valueOf(await store.list()).find(({ readOnly }) => readOnly)!;
    expect(failureOf(await editing.claim('window-1', demo.token))).toBe('read-only');
    expect(failureOf(await editing.claim('window-1', 'no-such-token'))).toBe('not-found');
  });

  it('left by a crash is free seconds later, and the crashed program, should it live, cannot save', async () => {
    const { folder, path, token, clock } = await workspace();
    const crashed = await hostAt(folder, clock);
    valueOf(await crashed.editing.claim('window-1', token));
    valueOf(await crashed.editing.journal('window-1', entry(token, 'before')));
    clock.turn(usualLockTimes.lapsesAfterMs + 1);
    const next = await hostAt(folder, clock);
    expect(valueOf(await next.editing.claim('window-2', token)).isHeld).toBe(true);
    valueOf(await next.editing.save('window-2', save(token, 5)));

    expect(failureOf(await crashed.editing.save('window-1', save(token, 9)))).toBe('not-claimed');
    expect(await readFile(path, 'utf8')).toBe(courseText(5));
    // Its journal is its own file: what its window still writes down is kept.
    valueOf(await crashed.editing.journal('window-1', entry(token, 'after')));
    const journals = valueOf(await next.editing.readJournal('window-2', token));
    expect(journals.map(({ entries }) => entries.map(({ text }) => text))).toEqual([['before', 'after']]);
    // And it gets the file back when the other one is done, with its journal.
    expect(valueOf(await crashed.editing.claim('window-1', token)).isHeld).toBe(false);
    await next.editing.close();
    expect(valueOf(await crashed.editing.claim('window-1', token)).isHeld).toBe(true);
    expect(valueOf(await crashed.editing.readJournal('window-1', token))[0]).toMatchObject({ isOwn: true });
    await crashed.editing.close();
  });

  it('lost while the new text is being written stops the save before the switch', async () => {
    const { folder, path, token, clock } = await workspace();
    const disk = diskOnClock(clock);
    let armed = false;
    const thief = await hostAt(folder, clock);
    const { editing } = await hostAt(
      folder,
      clock,
      {},
      {
        ...disk,
        writeNew: async (at, bytes) => {
          await disk.writeNew(at, bytes);
          if (!armed || !at.includes('unfinished')) return;
          clock.turn(3_600_000);
          valueOf(await thief.editing.claim('thief-1', token));
        },
      },
    );
    valueOf(await editing.claim('window-1', token));
    armed = true;
    expect(failureOf(await editing.save('window-1', save(token, 2)))).toBe('not-claimed');
    expect(await readFile(path, 'utf8')).toBe(courseText(1));
    expect((await readdir(folder)).filter((name) => name.includes('unfinished'))).toEqual([]);
    await thief.editing.close();
  });

  it('survives a lock folder that somebody deletes', async () => {
    const { folder, token, clock } = await workspace();
    const { editing } = await hostAt(folder, clock);
    valueOf(await editing.claim('window-1', token));
    await rm(join(folder, LOCK_FOLDER), { recursive: true });
    valueOf(await editing.save('window-1', save(token, 2)));
    const other = await hostAt(folder, clock);
    expect(valueOf(await other.editing.claim('window-2', token)).isHeld).toBe(false);
    await editing.close();
  });
});

describe('two programs on one folder', () => {
  it('that both save what they hold, and try what they do not, never lose a held save', async () => {
    const { folder, path, token, clock } = await workspace();
    const hosts = [await hostAt(folder, clock), await hostAt(folder, clock)];
    let count = 1;
    for (let turn = 0; turn < 12; turn++) {
      const [holder, other] = turn % 3 === 0 ? hosts : [hosts[1]!, hosts[0]!];
      expect(valueOf(await holder!.editing.claim('window-h', token)).isHeld).toBe(true);
      expect(valueOf(await other!.editing.claim('window-o', token)).isHeld).toBe(false);
      const base = valueOf(await holder!.store.open(token)).revision;
      const [mine, theirs] = await Promise.all([
        holder!.editing.save('window-h', save(token, ++count, base)),
        other!.editing.save('window-o', save(token, 500, base)),
      ]);
      expect([failureOf(mine), failureOf(theirs)]).toEqual(['none', 'not-claimed']);
      expect(await readFile(path, 'utf8')).toBe(courseText(count));
      valueOf(await holder!.editing.release('window-h', token));
    }
  });
});

describe('the journal of a held file', () => {
  const desk = ({ editing, store }: Host, window = 'window-1'): Desk => ({
    open: (token) => store.open(token),
    claim: (token) => editing.claim(window, token),
    save: (request) => editing.save(window, request),
    journal: (request) => editing.journal(window, request),
    readJournal: (token) => editing.readJournal(window, token),
    clearJournal: (request) => editing.clearJournal(window, request),
  });
  const courseOfChanges = async () => {
    const { folder, path, clock } = await workspace();
    await writeFile(path, textWith([]));
    const { token } = valueOf(await (await storeIn(folder)).list())[0]!;
    return { folder, token, clock };
  };

  it('is gone after release where all is saved, and offered to the next one where not', async () => {
    const { folder, token, clock } = await courseOfChanges();
    const host = await hostAt(folder, clock);
    const one = desk(host);
    valueOf(await one.claim(token));
    const begin = await recover(one, token);
    expect(
      await makeChanges(
        one,
        token,
        begin,
        4,
        (change) => change === 4,
        () => undefined,
      ),
    ).toBeNull();
    valueOf(await host.editing.release('window-1', token));
    expect(await readdir(join(folder, JOURNAL_FOLDER))).toEqual([]);

    valueOf(await one.claim(token));
    await makeChanges(
      one,
      token,
      await recover(one, token),
      6,
      () => false,
      () => undefined,
    );
    await host.editing.leave('window-1');
    const two = desk(host, 'window-2');
    valueOf(await two.claim(token));
    const found = await recover(two, token);
    expect([found.changes, found.inFile]).toEqual([[1, 2, 3, 4, 5, 6], 4]);
    await settle(two, token, found);
    expect((await recover(two, token)).journals).toEqual([]);
    await host.editing.close();
  });

  it('is kept when the file itself is deleted or changed by somebody', async () => {
    const { folder, token, clock } = await courseOfChanges();
    const host = await hostAt(folder, clock);
    const one = desk(host);
    valueOf(await one.claim(token));
    await makeChanges(
      one,
      token,
      await recover(one, token),
      2,
      () => false,
      () => undefined,
    );
    await rename(join(folder, 'a.geojson'), join(folder, 'aside'));
    valueOf(await one.journal({ token, baseRevision: sha256(''), text: '3' }));
    expect(failureOf(await one.save({ token, text: textWith([1, 2, 3]), baseRevision: null }))).toBe(
      'not-found',
    );
    await writeFile(join(folder, 'a.geojson'), textWith([77]));
    const saved = await one.save({
      token,
      text: textWith([1, 2, 3]),
      baseRevision: sha256(textWith([])),
      journalUpTo: 3,
    });
    expect(saved).toMatchObject({ failure: 'changed-on-disk', revisionOnDisk: sha256(textWith([77])) });
    expect((await recover(one, token)).changes).toEqual([77, 1, 2, 3]);
    await host.editing.close();
  });

  // Every second change is saved, so both the journal and the file are at every stage.
  const isSaved = (change: number): boolean => change % 2 === 0;

  it.each(['killed', 'without power'])(
    'and the file together have every acknowledged change once, %s at any step',
    async (end) => {
      const work = async (host: Host, token: string, acked: number[]): Promise<void> => {
        const one = desk(host);
        if (!(await one.claim(token)).ok) return;
        const begin = await recover(one, token).catch(() => null);
        if (begin === null) return;
        await makeChanges(one, token, begin, 3, isSaved, (change) => acked.push(change));
      };
      const whole = recordingDisk();
      const first = await courseOfChanges();
      await work(await hostAt(first.folder, first.clock, {}, whole.disk), first.token, []);
      expect(whole.steps.length).toBeGreaterThan(40);
      for (let deadline = 0; deadline < whole.steps.length; deadline++) {
        const { folder, token, clock } = await courseOfChanges();
        const forgetful = forgetfulDisk(join(folder, '..', `side-${folder.split('/').at(-1)!}`));
        const killed = diskKilledAt(deadline, end === 'killed' ? nodeDisk : forgetful.disk);
        const acked: number[] = [];
        const host = await hostAt(folder, clock, {}, killed.disk).catch(() => null);
        if (host !== null) await work(host, token, acked);
        await forgetful.cut();
        await rm(join(folder, '..', `side-${folder.split('/').at(-1)!}`), { recursive: true, force: true });

        const where = `step ${deadline}: ${whole.steps[deadline]}`;
        clock.turn(3_600_000);
        const nextHost = await hostAt(folder, clock);
        const next = desk(nextHost, 'window-2');
        expect(valueOf(await next.claim(token)).isHeld, where).toBe(true);
        const found = await recover(next, token);
        const changes = [...found.changes];
        // At most the one under way may be there besides.
        if (changes.length > acked.length) expect(changes.pop(), where).toBe(acked.length + 1);
        expect(changes, where).toEqual(acked);
        await settle(next, token, found);
        expect((await recover(next, token)).changes, where).toEqual(found.changes);
        await nextHost.editing.close();
      }
    },
    240_000,
  );
});

describe('a workspace that is read-only', () => {
  it('cannot be claimed in, with words, and can be read', async () => {
    const { folder, token, clock } = await workspace();
    const readOnly = Object.assign(new Error('EROFS'), { code: 'EROFS' });
    const { editing, store } = await hostAt(
      folder,
      clock,
      {},
      {
        ...nodeDisk,
        makeInside: () => Promise.reject(readOnly),
        writeNew: () => Promise.reject(readOnly),
      },
    );
    const claimed = await editing.claim('window-1', token);
    expect(claimed).toMatchObject({ ok: false, failure: 'not-allowed' });
    expect(valueOf(await store.open(token)).text).toBe(courseText(1));
    await mkdir(join(folder, 'x'));
  });
});

describe('a journal whose file is gone', () => {
  it('is told of by the file’s name, and can be claimed, read and cleared', async () => {
    const { folder, path, token, clock } = await workspace();
    const one = await hostAt(folder, clock);
    valueOf(await one.editing.claim('window-1', token));
    valueOf(await one.editing.journal('window-1', entry(token, 'work')));
    expect(valueOf(await one.editing.leftBehind())).toEqual([]);
    await rm(path);
    // the window that has it still keeps it, and may write on
    expect(valueOf(await one.editing.leftBehind())).toEqual([]);
    valueOf(await one.editing.journal('window-1', entry(token, 'more work')));
    await one.editing.close();

    const two = await hostAt(folder, clock);
    expect(valueOf(await two.editing.leftBehind())).toEqual([{ token, name: 'a.geojson' }]);
    expect(failureOf(await two.editing.readJournal('window-2', token))).toBe('not-found');
    expect(valueOf(await two.editing.claim('window-2', token))).toEqual({ isHeld: true });
    const [journal] = valueOf(await two.editing.readJournal('window-2', token));
    expect(journal?.entries.map(({ text }) => text)).toEqual(['work', 'more work']);
    expect(failureOf(await two.editing.save('window-2', save(token, 2)))).toBe('not-found');
    valueOf(await two.editing.clearJournal('window-2', { token, journal: journal!.journal, upTo: 2 }));
    valueOf(await two.editing.release('window-2', token));
    expect(valueOf(await two.editing.leftBehind())).toEqual([]);
    expect(failureOf(await two.editing.claim('window-2', token))).toBe('not-found');
    await two.editing.close();
  });

  it('is one window’s at a time, and the second of a file counts once', async () => {
    const { folder, path, token, clock } = await workspace();
    const one = await hostAt(folder, clock);
    for (const window of ['window-1', 'window-2']) {
      valueOf(await one.editing.claim(window, token));
      valueOf(await one.editing.journal(window, entry(token)));
      valueOf(await one.editing.release(window, token));
    }
    await rename(path, join(folder, 'b.geojson'));
    await writeFile(join(folder, JOURNAL_FOLDER, 'notes.txt.log'), '');
    const two = await hostAt(folder, clock);
    expect(valueOf(await two.editing.leftBehind())).toEqual([{ token, name: 'a.geojson' }]);
    valueOf(await one.editing.claim('window-1', token));
    expect(valueOf(await two.editing.claim('window-1', token))).toMatchObject({ isHeld: false });
    await one.editing.close();
    await two.editing.close();
  });

  it('is none where nothing was ever written down', async () => {
    const { folder, clock } = await workspace();
    const { editing } = await hostAt(folder, clock);
    expect(valueOf(await editing.leftBehind())).toEqual([]);
    await editing.close();
  });
});
