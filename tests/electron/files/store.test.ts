import { execFileSync } from 'node:child_process';
import { mkdir, readdir, readFile, rename, symlink, truncate, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readsInCore } from '../../../electron/files/core-check.ts';
import { openFileStore } from '../../../electron/files/store.ts';
import { diskWithoutLinks, recordingDisk } from './failing-disk.ts';
import { courseText, failureOf, sha256, storeIn, temporaryFolder, valueOf } from './workspace.ts';

describe('listing', () => {
  it('makes the workspace folder on the first start', async () => {
    const folder = join(await temporaryFolder(), 'Documents', 'Holewright');
    const store = await storeIn(folder);
    expect(valueOf(await store.list())).toEqual([]);
    expect(store.workspaceName).toBe('Holewright');
  });

  it('shows courses, players and rounds by name, and plain .json by what it says it is', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    await writeFile(join(folder, 'b.player.json'), '{}');
    await writeFile(join(folder, 'c.round.json'), '{}');
    await writeFile(join(folder, 'd.json'), '{"holewright":{"format":"player","formatVersion":1}}');
    await writeFile(join(folder, 'e.json'), courseText(1));
    await writeFile(join(folder, 'f.json'), '{"something":"else"}');
    await writeFile(join(folder, 'g.txt'), 'notes');
    await writeFile(join(folder, '.hidden.geojson'), courseText(1));
    await mkdir(join(folder, 'folder.geojson'));
    const files = valueOf(await (await storeIn(folder)).list());
    expect(files.map(({ name, kind }) => [name, kind])).toEqual([
      ['a.geojson', 'course'],
      ['b.player.json', 'player'],
      ['c.round.json', 'round'],
      ['d.json', 'player'],
      ['e.json', 'course'],
    ]);
    expect(files.every((file) => !file.readOnly && file.bytes > 0 && file.modifiedAt > 0)).toBe(true);
  });

  it('shows demo files as read-only and refuses to save over them', async () => {
    const demoFolder = await temporaryFolder();
    await writeFile(join(demoFolder, 'demo.geojson'), courseText(1));
    const store = await storeIn(await temporaryFolder(), { demoFolder });
    const [demo] = valueOf(await store.list());
    expect(demo?.readOnly).toBe(true);
    const opened = valueOf(await store.open(demo!.token));
    const saved = await store.save({
      token: demo!.token,
      text: courseText(2),
      baseRevision: opened.revision,
    });
    expect(failureOf(saved)).toBe('read-only');
    expect(await readFile(join(demoFolder, 'demo.geojson'), 'utf8')).toBe(courseText(1));
  });

  it('gives a file the same token after a restart and after the workspace has moved', async () => {
    const folder = await temporaryFolder();
    await mkdir(join(folder, 'one'));
    await writeFile(join(folder, 'one', 'a.geojson'), courseText(1));
    const before = valueOf(await (await storeIn(join(folder, 'one'))).list());
    await rename(join(folder, 'one'), join(folder, 'two'));
    const after = valueOf(await (await storeIn(join(folder, 'two'))).list());
    expect(after[0]?.token).toBe(before[0]?.token);
  });

  it('says so when the workspace is a file or has gone', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'file'), '');
    expect(failureOf(await openFileStore({ workspace: join(folder, 'file'), demoFolder: null }))).not.toBe(
      'none',
    );
    await mkdir(join(folder, 'space'));
    const store = await storeIn(join(folder, 'space'));
    await rename(join(folder, 'space'), join(folder, 'elsewhere'));
    expect(failureOf(await store.list())).toBe('folder-gone');
  });
});

describe('opening', () => {
  it('gives text and the SHA-256 of the bytes on disk', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(3));
    const store = await storeIn(folder);
    const opened = valueOf(await store.open(valueOf(await store.list())[0]!.token));
    expect(opened.text).toBe(courseText(3));
    expect(opened.revision).toBe(sha256(courseText(3)));
  });

  it('refuses unknown tokens, and paths in the place of tokens', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const store = await storeIn(folder);
    for (const token of [
      '',
      'a.geojson',
      '../a.geojson',
      '/etc/passwd',
      '%2e%2e%2fa',
      'C:\\a',
      '\\\\host\\share',
      'con',
    ]) {
      expect(failureOf(await store.open(token)), token).toBe('not-found');
    }
  });

  it('refuses bytes that are no UTF-8 text, and more than 64 MiB', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'latin.geojson'), Buffer.from([0x7b, 0xe4, 0x7d]));
    await writeFile(join(folder, 'zero.geojson'), '{}\u0000');
    await writeFile(join(folder, 'vast.geojson'), '');
    await truncate(join(folder, 'vast.geojson'), 64 * 1024 * 1024 + 1);
    const store = await storeIn(folder);
    const [latin, vast, zero] = valueOf(await store.list());
    expect(failureOf(await store.open(latin!.token))).toBe('not-text');
    expect(failureOf(await store.open(zero!.token))).toBe('not-text');
    expect(failureOf(await store.open(vast!.token))).toBe('too-large');
  });
});

describe('saving', () => {
  const opened = async (parts: Parameters<typeof storeIn>[1] = {}) => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const store = await storeIn(folder, parts);
    const file = valueOf(await store.open(valueOf(await store.list())[0]!.token));
    return { folder, store, file, token: file.entry.token, path: join(folder, 'a.geojson') };
  };

  it('writes the text and answers its revision', async () => {
    const { path, store, file, token } = await opened();
    const { revision } = valueOf(
      await store.save({ token, text: courseText(2), baseRevision: file.revision }),
    );
    expect(await readFile(path, 'utf8')).toBe(courseText(2));
    expect(revision).toBe(sha256(courseText(2)));
    expect(valueOf(await store.open(token)).revision).toBe(revision);
  });

  it('refuses when another program has changed the file, and leaves that change alone', async () => {
    const { path, store, file, token } = await opened();
    await writeFile(path, courseText(7));
    const saved = await store.save({ token, text: courseText(2), baseRevision: file.revision });
    expect(saved).toMatchObject({ failure: 'changed-on-disk', revisionOnDisk: sha256(courseText(7)) });
    expect(await readFile(path, 'utf8')).toBe(courseText(7));
  });

  it('notices a change that comes while the new text is being written', async () => {
    const { folder, file, token, path } = await opened();
    let reads = 0;
    const { disk } = recordingDisk();
    const store = await storeIn(folder, {
      disk: {
        ...disk,
        read: async (at, most) => {
          // The second look at the file comes just before the switch.
          if (at === path && ++reads === 2) await writeFile(path, courseText(9));
          return disk.read(at, most);
        },
      },
    });
    const saved = await store.save({ token, text: courseText(2), baseRevision: file.revision });
    expect(saved).toMatchObject({ failure: 'changed-on-disk', revisionOnDisk: sha256(courseText(9)) });
    expect(await readFile(path, 'utf8')).toBe(courseText(9));
    expect((await readdir(folder)).filter((name) => name.includes('unfinished'))).toEqual([]);
  });

  it('is content when another program wrote the very same text', async () => {
    const { path, store, file, token } = await opened();
    await writeFile(path, courseText(2));
    const saved = await store.save({ token, text: courseText(2), baseRevision: file.revision });
    expect(valueOf(saved).revision).toBe(sha256(courseText(2)));
  });

  it('writes over a changed file where the page says that it means to', async () => {
    const { path, store, token } = await opened();
    await writeFile(path, courseText(7));
    valueOf(await store.save({ token, text: courseText(2), baseRevision: null }));
    expect(await readFile(path, 'utf8')).toBe(courseText(2));
  });

  it('refuses text that could not be opened again, and says why', async () => {
    const { path, store, file, token } = await opened({ check: readsInCore });
    for (const [text, failure] of [
      ['', 'bad-request'],
      ['{"type":"FeatureCollection","features":[', 'bad-request'],
      ['[]', 'bad-request'],
      ['{"type":"Feature"}', 'bad-request'],
      [`${courseText(1)}\u0000`, 'not-text'],
      [
        JSON.stringify({ type: 'FeatureCollection', features: [] }).replace('}', ',"n":"\ud800"}'),
        'not-text',
      ],
    ] as const) {
      const saved = await store.save({ token, text, baseRevision: file.revision });
      expect(failureOf(saved), text).toBe(failure);
    }
    expect(await readFile(path, 'utf8')).toBe(courseText(1));
  });

  it('refuses more than 64 MiB counted in bytes, not characters', async () => {
    const { store, file, token } = await opened();
    // Each of these takes three bytes in UTF-8, so a third of the limit in characters is just beyond it.
    const wide = '€'.repeat(Math.ceil((64 * 1024 * 1024) / 3));
    const text = JSON.stringify({ type: 'FeatureCollection', features: [], wide });
    expect(failureOf(await store.save({ token, text, baseRevision: file.revision }))).toBe('too-large');
  });

  it('syncs and reads back before the rename, and syncs the folder after it', async () => {
    const { folder, file, token } = await opened();
    const { disk, steps } = recordingDisk();
    const store = await storeIn(folder, { disk });
    const from = steps.length;
    valueOf(await store.save({ token, text: courseText(2), baseRevision: file.revision }));
    const order = steps
      .slice(from)
      .filter((step) => ['writeNew', 'read', 'link', 'rename', 'syncFolder'].includes(step));
    expect(order).toEqual(['read', 'writeNew', 'read', 'read', 'link', 'rename', 'syncFolder']);
  });

  it('does not rename what the disk gives back differently', async () => {
    const { folder, file, token, path } = await opened();
    const { disk } = recordingDisk();
    const store = await storeIn(folder, {
      disk: { ...disk, writeNew: (at, bytes) => disk.writeNew(at, bytes.subarray(0, bytes.byteLength - 1)) },
    });
    const saved = await store.save({ token, text: courseText(2), baseRevision: file.revision });
    expect(failureOf(saved)).toBe('unknown');
    expect(await readFile(path, 'utf8')).toBe(courseText(1));
    expect((await readdir(folder)).filter((name) => name.includes('unfinished'))).toEqual([]);
  });

  it('lets saves that come together go one after the other', async () => {
    const { path, store, file, token } = await opened();
    const answers = await Promise.all(
      [2, 3, 4].map((count) => store.save({ token, text: courseText(count), baseRevision: file.revision })),
    );
    expect(answers.map(failureOf)).toEqual(['none', 'changed-on-disk', 'changed-on-disk']);
    expect(await readFile(path, 'utf8')).toBe(courseText(2));
  });
});

describe('kept copies', () => {
  const start = Date.UTC(2026, 0, 31, 14, 5, 9, 123);

  const opened = async (parts: Parameters<typeof storeIn>[1] = {}) => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(0));
    const clock = { now: start };
    const store = await storeIn(folder, { now: () => clock.now, ...parts });
    const { token } = valueOf(await store.list())[0]!;
    const save = async (count: number) =>
      valueOf(await store.save({ token, text: courseText(count), baseRevision: null }));
    return { folder, clock, store, token, save };
  };

  it.each([
    ['with second names', {}],
    ['on a file system without second names', { disk: diskWithoutLinks }],
  ])('hold the earlier version, byte for byte, %s', async (_, parts) => {
    const { store, token, save } = await opened(parts);
    await save(1);
    const copies = valueOf(await store.copies(token));
    expect(copies.map(({ keptAt }) => keptAt)).toEqual([start]);
    expect(valueOf(await store.openCopy(token, start)).text).toBe(courseText(0));
  });

  it('are at most ten, the newest', async () => {
    const { store, token, save, clock } = await opened();
    for (let count = 1; count <= 14; count++) {
      clock.now += 61_000;
      await save(count);
    }
    const copies = valueOf(await store.copies(token));
    expect(copies).toHaveLength(10);
    expect(valueOf(await store.openCopy(token, copies[0]!.keptAt)).text).toBe(courseText(13));
    expect(valueOf(await store.openCopy(token, copies[9]!.keptAt)).text).toBe(courseText(4));
  });

  it('are at least a minute apart, so that autosave does not push the older ones out', async () => {
    const { store, token, save, clock } = await opened();
    for (let count = 1; count <= 50; count++) {
      clock.now += 300;
      await save(count);
    }
    expect(valueOf(await store.copies(token))).toHaveLength(1);
    expect(valueOf(await store.openCopy(token, start + 300)).text).toBe(courseText(0));
  });

  it('go on after the clock was set back, as far apart as ever: none of the older ones is pushed out', async () => {
    const { store, token, save, clock } = await opened();
    for (let count = 1; count <= 6; count++) {
      clock.now += 61_000;
      await save(count);
    }
    clock.now -= 3_600_000;
    for (let count = 7; count <= 40; count++) {
      clock.now += 300;
      await save(count);
    }
    const copies = valueOf(await store.copies(token));
    expect(copies).toHaveLength(7);
    expect(valueOf(await store.openCopy(token, start + 61_000)).text).toBe(courseText(0));
    expect(valueOf(await store.openCopy(token, copies[6]!.keptAt)).text).toBe(courseText(6));
  });

  it('never take a damaged version for a good one, and set it aside', async () => {
    const { folder, store, token, save } = await opened();
    await writeFile(join(folder, 'a.geojson'), '{"type":"FeatureColl');
    await save(1);
    expect(valueOf(await store.copies(token))).toEqual([]);
    const aside = await readdir(join(folder, '.holewright-backups', 'a.geojson'));
    expect(aside).toEqual(['20260131T140509123Z.damaged']);
  });

  it('that cannot be kept do not stand in the way of saving, but are reported', async () => {
    const said: string[] = [];
    const { folder, save } = await opened({ notice: (message) => said.push(message) });
    await writeFile(join(folder, '.holewright-backups'), 'in the way');
    await save(1);
    expect(await readFile(join(folder, 'a.geojson'), 'utf8')).toBe(courseText(1));
    expect(said).toHaveLength(1);
  });
});

describe('creating', () => {
  it('picks a free name near the suggestion, letter case aside', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'Elm Row.geojson'), courseText(1));
    const store = await storeIn(folder);
    const first = valueOf(await store.create('course', 'elm row', courseText(2)));
    const second = valueOf(await store.create('course', 'Elm Row.geojson', courseText(3)));
    expect([first.entry.name, second.entry.name]).toEqual(['elm row 2.geojson', 'Elm Row 3.geojson']);
    expect(first.text).toBe(courseText(2));
    expect(await readFile(join(folder, 'Elm Row.geojson'), 'utf8')).toBe(courseText(1));
  });

  it('works on a file system without second names', async () => {
    const folder = await temporaryFolder();
    const store = await storeIn(folder, { disk: diskWithoutLinks });
    valueOf(await store.create('course', 'a', courseText(2)));
    expect(await readFile(join(folder, 'a.geojson'), 'utf8')).toBe(courseText(2));
    expect(await readdir(folder)).toEqual(['a.geojson']);
  });

  it.each([
    '../../outside',
    '..\\..\\outside',
    '%2e%2e%2foutside',
    '/etc/outside',
    'C:\\outside',
    '\\\\host\\share\\outside',
    'file:///outside',
    'outside\u0000.geojson',
    'CON',
    'nul.geojson',
    'COM1.txt',
    '.hidden',
    '   ',
    '...',
    'a'.repeat(500),
    '\ud800',
    'right\u202eto left',
  ])('turns %j into a plain name inside the workspace', async (suggested) => {
    const parent = await temporaryFolder();
    const store = await storeIn(join(parent, 'space'));
    const made = valueOf(await store.create('course', suggested, courseText(1)));
    expect(await readdir(parent)).toEqual(['space']);
    expect(await readdir(join(parent, 'space'))).toEqual([made.entry.name]);
    expect(made.entry.name).toMatch(/^[^./\\:%][^/\\:%\u0000]*\.geojson$/u);
    expect(made.entry.name).not.toMatch(/^(con|nul|com1)\b/iu);
  });

  it('does not write through a link that has the wanted name', async () => {
    const parent = await temporaryFolder();
    await mkdir(join(parent, 'space'));
    await symlink(join(parent, 'outside.geojson'), join(parent, 'space', 'a.geojson'));
    const store = await storeIn(join(parent, 'space'));
    const made = valueOf(await store.create('course', 'a', courseText(1)));
    expect(made.entry.name).toBe('a 2.geojson');
    expect(await readdir(parent)).toEqual(['space']);
  });
});

describe('links and other strange things in the workspace', () => {
  it('are neither listed nor followed', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'space');
    await mkdir(folder);
    await writeFile(join(parent, 'secret.geojson'), courseText(5));
    await mkdir(join(parent, 'other'));
    await writeFile(join(parent, 'other', 'b.geojson'), courseText(5));
    await symlink(join(parent, 'secret.geojson'), join(folder, 'a.geojson'));
    await symlink(join(parent, 'other'), join(folder, 'dir.geojson'));
    execFileSync('mkfifo', [join(folder, 'pipe.geojson')]);
    const store = await storeIn(folder);
    expect(valueOf(await store.list())).toEqual([]);
  });

  it('a file exchanged for a link after listing is not read or written through', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'space');
    await mkdir(folder);
    const secret = join(parent, 'secret.geojson');
    await writeFile(secret, courseText(5));
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const { disk } = recordingDisk();
    let isArmed = false;
    const store = await storeIn(folder, {
      disk: {
        ...disk,
        plainFiles: async (at) => {
          const files = await disk.plainFiles(at);
          if (isArmed && at === folder) {
            isArmed = false;
            await rename(join(folder, 'a.geojson'), join(parent, 'moved'));
            await symlink(secret, join(folder, 'a.geojson'));
          }
          return files;
        },
      },
    });
    const { token } = valueOf(await store.list())[0]!;
    isArmed = true;
    expect(failureOf(await store.open(token))).toBe('not-allowed');
    await rename(join(parent, 'moved'), join(folder, 'a.geojson'));
    isArmed = true;
    expect(failureOf(await store.save({ token, text: courseText(2), baseRevision: null }))).toBe(
      'not-allowed',
    );
    expect(await readFile(secret, 'utf8')).toBe(courseText(5));
  });

  it('a linked backups folder is not used', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'space');
    await mkdir(folder);
    await mkdir(join(parent, 'outside'));
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    await symlink(join(parent, 'outside'), join(folder, '.holewright-backups'));
    const store = await storeIn(folder);
    const { token } = valueOf(await store.list())[0]!;
    valueOf(await store.save({ token, text: courseText(2), baseRevision: null }));
    expect(await readdir(join(parent, 'outside'))).toEqual([]);
    await mkdir(join(parent, 'outside', 'a.geojson'));
    await writeFile(join(parent, 'outside', 'a.geojson', '20260131T140509123Z.good'), courseText(9));
    expect(failureOf(await store.copies(token))).toBe('not-allowed');
    expect(failureOf(await store.openCopy(token, Date.UTC(2026, 0, 31, 14, 5, 9, 123)))).toBe('not-allowed');
  });

  it('a workspace that becomes a link is refused', async () => {
    const parent = await temporaryFolder();
    const folder = join(parent, 'space');
    await mkdir(folder);
    await mkdir(join(parent, 'other'));
    await writeFile(join(parent, 'other', 'a.geojson'), courseText(1));
    const store = await storeIn(folder);
    await rename(folder, join(parent, 'moved'));
    await symlink(join(parent, 'other'), folder);
    expect(failureOf(await store.list())).toBe('not-allowed');
  });
});
