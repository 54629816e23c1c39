import { randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import type { HostAnswer } from '../../../electron/contract/host.ts';
import { type Attachments, openAttachments } from '../../../electron/files/attachments.ts';
import { nodeDisk } from '../../../electron/files/disk.ts';
import { type Editing, openEditing } from '../../../electron/files/editing.ts';
import type { FileStore } from '../../../electron/files/store.ts';
import { mountSmallDisk, type SmallDisk } from './small-disk.ts';
import { courseText, failureOf, sha256, storeIn, temporaryFolder, valueOf } from './workspace.ts';

const BASE = sha256(courseText(1));
const editings: Editing[] = [];
afterEach(async () => {
  for (const editing of editings.splice(0)) await editing.close();
});

interface Desk {
  readonly store: FileStore;
  readonly editing: Editing;
  readonly attachments: Attachments;
  readonly token: string;
}

/** A window of a program that works in `folder`, with one course in it, not yet claimed. */
async function deskIn(folder: string): Promise<Desk> {
  const store = await storeIn(folder);
  const editing = openEditing({ store, shell: 'loopback' });
  editings.push(editing);
  const { token } = valueOf(await store.list())[0]!;
  return { store, editing, attachments: openAttachments(store), token };
}

function picture(
  bytes: number,
  content: Buffer = Buffer.alloc(bytes, 7),
): Parameters<Attachments['take']>[1] {
  content.write('\u0089PNG\r\n\u001a\n', 'latin1');
  return {
    name: 'aerial.png',
    bytes,
    parts: (async function* () {
      for (let from = 0; from < bytes; from += 16_384)
        yield await Promise.resolve(content.subarray(from, from + 16_384));
    })(),
  };
}

/** Everything that a window might ask for while something is wrong, and what it was told. */
async function tryAll({ store, editing, attachments, token }: Desk, count: number) {
  const journal = await editing.journal('window-1', {
    token,
    baseRevision: BASE,
    text: 'x'.repeat(count * 20),
  });
  const save = await editing.save('window-1', {
    token,
    text: courseText(count),
    baseRevision: null,
    ...(journal.ok ? { journalUpTo: journal.value.number } : {}),
  });
  return {
    journal,
    save,
    create: await store.create('course', 'new', courseText(count)),
    attach: await attachments.take(token, picture(count * 100)),
  };
}

/** All regular files below a folder, with their content. */
async function snapshot(folder: string): Promise<ReadonlyMap<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return new Map(await Promise.all(files.map(async (path) => [path, sha256(await readFile(path))] as const)));
}

/** Neither system words nor paths: what happened, and what to do. */
function expectWords(answer: HostAnswer<unknown>, folder: string): void {
  if (answer.ok) throw new Error('should have been refused');
  expect(answer.message).not.toContain(folder);
  expect(answer.message).not.toMatch(/\bE[A-Z]{3,}\b[^)]/u);
  expect(answer.message).toMatch(/[Tt]ry again|[Cc]heck|[Mm]ake room|[Pp]ut /u);
}

function mounted(small: SmallDisk): string {
  return 'folder' in small ? small.folder : '';
}

const roomy = mountSmallDisk(20_000);
const tight = mountSmallDisk(384);
for (const small of [roomy, tight]) if ('reason' in small) console.warn(`skipped: ${small.reason}`);
afterAll(() => {
  for (const small of [roomy, tight]) if ('folder' in small) small.unmount();
});

describe.skipIf('reason' in roomy)('a folder that becomes read-only', () => {
  it('refuses everything with words and changes nothing; later all goes through', async () => {
    const folder = mounted(roomy);
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const desk = await deskIn(folder);
    valueOf(await desk.editing.claim('window-1', desk.token));
    valueOf(
      await desk.editing.journal('window-1', { token: desk.token, baseRevision: BASE, text: 'before' }),
    );
    const before = await snapshot(folder);
    if ('remount' in roomy) roomy.remount('ro');
    try {
      for (const answer of Object.values(await tryAll(desk, 50))) {
        expect(failureOf(answer)).toBe('not-allowed');
        expectWords(answer, folder);
      }
      expect(await snapshot(folder)).toEqual(before);
      // Reading goes on, and a second program hears who has the file.
      expect(valueOf(await desk.store.open(desk.token)).text).toBe(courseText(1));
      const store = await storeIn(folder);
      const other = openEditing({ store, shell: 'electron', computer: 'other' });
      expect(valueOf(await other.claim('window-2', desk.token)).isHeld).toBe(false);
    } finally {
      if ('remount' in roomy) roomy.remount('rw');
    }
    for (const answer of Object.values(await tryAll(desk, 50))) expect(failureOf(answer)).toBe('none');
    expect(await readFile(join(folder, 'a.geojson'), 'utf8')).toBe(courseText(50));
  });
});

describe.skipIf('reason' in tight)('a disk that is full', () => {
  it('refuses everything with words, keeps file and journal whole, and takes all once there is room', async () => {
    const folder = mounted(tight);
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const desk = await deskIn(folder);
    valueOf(await desk.editing.claim('window-1', desk.token));
    const written = { token: desk.token, baseRevision: BASE, text: 'before' };
    const { journal } = valueOf(await desk.editing.journal('window-1', written));
    await fill(folder);
    const before = await snapshot(folder);
    for (const answer of Object.values(await tryAll(desk, 800))) {
      expect(failureOf(answer)).toBe('disk-full');
      expectWords(answer, folder);
    }
    expect(await snapshot(folder)).toEqual(before);
    const texts = async () =>
      valueOf(await desk.editing.readJournal('window-1', desk.token)).map(({ entries, lostBytes }) => [
        entries.map(({ text }) => text.slice(0, 6)),
        lostBytes,
      ]);
    expect(await texts()).toEqual([[['before'], 0]]);
    // The lock is renewed without room, too.
    await desk.editing.beat();
    expect(failureOf(await desk.editing.claim('window-2', desk.token))).toBe('none');

    await rm(join(folder, 'filler'));
    valueOf(await desk.editing.journal('window-1', { ...written, text: 'after…' }));
    expect(await texts()).toEqual([[['before', 'after…'], 0]]);
    valueOf(
      await desk.editing.save('window-1', {
        token: desk.token,
        text: courseText(300),
        baseRevision: BASE,
        journalUpTo: 2,
      }),
    );
    valueOf(await desk.editing.clearJournal('window-1', { token: desk.token, journal, upTo: 2 }));
    expect(await texts()).toEqual([]);
    expect(await readFile(join(folder, 'a.geojson'), 'utf8')).toBe(courseText(300));
  });

  it('that fills up in the middle of a copy keeps nothing of it', async () => {
    const folder = mounted(tight);
    await writeFile(join(folder, 'b.geojson'), courseText(1));
    // The disk says that there is room, and then there is not.
    const store = await storeIn(folder, { disk: { ...nodeDisk, freeBytes: () => Promise.resolve(1e12) } });
    const token = valueOf(await store.list()).find(({ name }) => name === 'b.geojson')!.token;
    const answer = await openAttachments(store).take(token, picture(1_000_000, randomBytes(1_000_000)));
    expect(failureOf(answer)).toBe('disk-full');
    expect((await readdir(folder)).filter((name) => name.endsWith('.files'))).toEqual([]);
  });

  /** Fills the disk to the last byte. */
  async function fill(folder: string): Promise<void> {
    for (let bytes = 1_000_000; bytes >= 1; bytes = Math.floor(bytes / 2)) {
      await writeFile(join(folder, 'filler'), Buffer.alloc(bytes, 1), { flag: 'a' }).catch(() => undefined);
    }
  }
});

describe('a drive that is taken away', () => {
  it('is said to be away, nothing is made in its place, and all goes on when it is back', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'drive');
    await mkdir(folder);
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const desk = await deskIn(folder);
    valueOf(await desk.editing.claim('window-1', desk.token));
    const journal = valueOf(
      await desk.editing.journal('window-1', { token: desk.token, baseRevision: BASE, text: 'before' }),
    );
    const [picked] = [valueOf(await desk.attachments.take(desk.token, picture(500)))];

    await rename(folder, join(parent, 'elsewhere'));
    const before = await snapshot(parent);
    const answers = [
      ...Object.values(await tryAll(desk, 50)),
      await desk.store.list(),
      await desk.store.open(desk.token),
      await desk.store.copies(desk.token),
      await desk.editing.readJournal('window-1', desk.token),
      await desk.editing.clearJournal('window-1', { token: desk.token, journal: journal.journal, upTo: 1 }),
      await desk.editing.claim('window-2', 'other-token'),
      await desk.attachments.list(desk.token),
      await desk.attachments.read(picked.token, 0, 10),
    ];
    for (const answer of answers) {
      expect(failureOf(answer)).toBe('folder-gone');
      expectWords(answer, folder);
    }
    await desk.editing.beat();
    expect(await readdir(parent)).toEqual(['elsewhere']);
    expect(await snapshot(parent)).toEqual(before);

    await rename(join(parent, 'elsewhere'), folder);
    const later = await tryAll(desk, 50);
    for (const answer of Object.values(later)) expect(failureOf(answer)).toBe('none');
    const entries = valueOf(await desk.editing.readJournal('window-1', desk.token)).flatMap(
      (left) => left.entries,
    );
    // Saved with the second entry, so the first is in the file as well.
    expect(entries).toEqual([]);
    expect(await readFile(join(folder, 'a.geojson'), 'utf8')).toBe(courseText(50));
  });

  it('and comes back claimed by another program is not written to', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'drive');
    await mkdir(folder);
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const desk = await deskIn(folder);
    valueOf(await desk.editing.claim('window-1', desk.token));
    await rename(folder, join(parent, 'elsewhere'));
    await rm(join(parent, 'elsewhere', '.holewright-locks'), { recursive: true });
    const other = await deskIn(join(parent, 'elsewhere'));
    valueOf(await other.editing.claim('window-2', other.token));
    valueOf(
      await other.editing.save('window-2', { token: other.token, text: courseText(3), baseRevision: null }),
    );
    await rename(join(parent, 'elsewhere'), folder);
    const answer = await desk.editing.save('window-1', {
      token: desk.token,
      text: courseText(9),
      baseRevision: null,
    });
    expect(failureOf(answer)).toBe('not-claimed');
    expect(await readFile(join(folder, 'a.geojson'), 'utf8')).toBe(courseText(3));
  });
});
