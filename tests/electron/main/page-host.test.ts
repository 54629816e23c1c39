import { createHash, randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserWindow } from 'electron';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Language } from '../../../core/words/language.ts';
import { wordsIn } from '../../../core/words/words.ts';
import {
  type Bridge,
  type BridgeMethod,
  bridgeMethods,
  channelOf,
  PROGRESS_CHANNEL,
} from '../../../electron/contract/bridge.ts';
import type { Host } from '../../../electron/contract/host.ts';
import { openAttachments } from '../../../electron/files/attachments.ts';
import { type Editing, openEditing } from '../../../electron/files/editing.ts';
import { keptPlans } from '../../../electron/files/kept-plans.ts';
import { settingsStore } from '../../../electron/files/settings.ts';
import { openTileSets } from '../../../electron/files/tile-sets.ts';
import { electronHost } from '../../../renderer/host/electron-client.ts';
import { insertTile, sqliteFile, TILE_TABLES, tileBytes } from '../files/mbtiles.ts';
import { courseText, failureOf, storeIn, temporaryFolder, valueOf } from '../files/workspace.ts';

type Handler = (event: unknown, request: unknown) => Promise<unknown>;
const handlers = new Map<string, Handler>();
let placed: { canceled: boolean; filePath: string } = { canceled: true, filePath: '' };
let asked: { title: string; defaultPath: string; filters: { name: string; extensions: string[] }[] } | null =
  null;
let picked: { canceled: boolean; filePaths: string[] } = { canceled: true, filePaths: [] };
vi.mock('electron', () => ({
  ipcMain: { handle: (channel: string, handler: Handler) => handlers.set(channel, handler) },
  dialog: {
    showOpenDialog: (_window: unknown, options: typeof asked) => {
      asked = options;
      return Promise.resolve(picked);
    },
    showSaveDialog: (_window: unknown, options: typeof asked) => {
      asked = options;
      return Promise.resolve(placed);
    },
  },
}));

const { answerPage } = await import('../../../electron/main/answer-page.ts');

const frame = { url: 'holewright://app/', parent: null, processId: 1, routingId: 1 };
const hearing = new Set<(told: unknown) => void>();
let onProgress: (told: { doneBytes: number; totalBytes: number }) => void;

/** The window's side of the messages: everything is copied on its way, as between processes. */
function bridge(): Bridge {
  const ask =
    (method: BridgeMethod): ((request: unknown) => Promise<unknown>) =>
    async (request) =>
      structuredClone(
        await handlers.get(channelOf(method))!({ senderFrame: frame }, structuredClone(request)),
      );
  return {
    ...(Object.fromEntries(bridgeMethods.map((method) => [method, ask(method)])) as Omit<
      Bridge,
      'watch' | 'progress'
    >),
    watch: () => () => undefined,
    progress: (listener) => {
      hearing.add(listener);
      return () => hearing.delete(listener);
    },
  };
}

let workspace: string;
let language: Language;
let plansFolder: string;
let editing: Editing;
let token: string;

/** A page, loaded anew with each call; `putAway` is what it does when it is closed. */
function load(): { host: Host; putAway: () => void } {
  let putAway = (): void => undefined;
  const host = electronHost(bridge(), (callback) => (putAway = callback));
  return { host, putAway: () => putAway() };
}

beforeEach(async () => {
  language = 'en';
  handlers.clear();
  hearing.clear();
  picked = { canceled: true, filePaths: [] };
  placed = { canceled: true, filePath: '' };
  onProgress = () => undefined;
  workspace = await temporaryFolder();
  plansFolder = join(await temporaryFolder(), 'kept-plans');
  await writeFile(join(workspace, 'a.geojson'), courseText(1));
  const store = await storeIn(workspace);
  token = valueOf(await store.list())[0]!.token;
  editing = openEditing({ store, shell: 'electron' });
  const attachments = openAttachments(store);
  const window = {
    isDestroyed: () => false,
    webContents: {
      mainFrame: frame,
      send: (channel: string, told: { doneBytes: number; totalBytes: number }) => {
        if (channel !== PROGRESS_CHANNEL) return;
        onProgress(told);
        for (const listener of hearing) listener(structuredClone(told));
      },
    },
  } as unknown as BrowserWindow;
  answerPage({
    store,
    settings: settingsStore(await temporaryFolder()),
    editing,
    attachments,
    tileSets: openTileSets(attachments),
    plans: keptPlans(plansFolder),
    version: '1.2.3',
    window: () => window,
    exportFolder: workspace,
    words: () => wordsIn(language),
  });
  return () => editing.close();
});

describe('editing in the window', () => {
  it('serves claims, journal and saves', async () => {
    const { host } = load();
    const { revision } = valueOf(await host.open(token));
    expect(failureOf(await host.save({ token, text: courseText(2), baseRevision: revision }))).toBe(
      'not-claimed',
    );
    expect(valueOf(await host.claim(token)).isHeld).toBe(true);
    const { journal, number } = valueOf(await host.journal({ token, baseRevision: revision, text: 'entry' }));
    expect(valueOf(await host.readJournal(token))[0]).toMatchObject({
      journal,
      entries: [{ text: 'entry' }],
    });
    valueOf(await host.save({ token, text: courseText(2), baseRevision: revision, journalUpTo: number }));
    valueOf(await host.clearJournal({ token, journal, upTo: number }));
    const stale = await host.save({ token, text: courseText(3), baseRevision: revision });
    expect(stale).toMatchObject({ failure: 'changed-on-disk' });
    expect(stale.ok ? '' : stale.revisionOnDisk).toMatch(/^[0-9a-f]{64}$/u);
    valueOf(await host.release(token));
    expect(await readFile(join(workspace, 'a.geojson'), 'utf8')).toBe(courseText(2));
  });

  it('a page that was loaded anew gets what it had before, and its unsaved journal', async () => {
    const before = load();
    valueOf(await before.host.claim(token));
    const baseRevision = valueOf(await before.host.open(token)).revision;
    valueOf(await before.host.journal({ token, baseRevision, text: 'unsaved' }));
    // The page crashed: it could not let go.
    const after = load();
    expect(valueOf(await after.host.claim(token)).isHeld).toBe(true);
    expect(valueOf(await after.host.readJournal(token))).toMatchObject([
      { isOwn: false, entries: [{ text: 'unsaved' }] },
    ]);
    expect(failureOf(await before.host.save({ token, text: courseText(2), baseRevision }))).toBe(
      'not-claimed',
    );
  });

  it('a page that is put away lets go', async () => {
    const { host, putAway } = load();
    valueOf(await host.claim(token));
    putAway();
    await vi.waitFor(async () =>
      expect((await readdir(join(workspace, '.holewright-locks'))).length).toBe(0),
    );
  });
});

describe('plans kept for the next start', () => {
  const key = 'a1'.repeat(32);

  it('come back as they were given, to a page loaded anew too, and lie in a folder of their own', async () => {
    const text = JSON.stringify({ club: '5-wood “old”' });
    expect(valueOf(await load().host.keptPlan(key))).toEqual({ text: null });
    expect(valueOf(await load().host.keepPlan(key, text))).toEqual({ isKept: true });
    expect(valueOf(await load().host.keptPlan(key))).toEqual({ text });
    expect(await readdir(plansFolder)).toEqual([key]);
    expect(await readdir(workspace)).toEqual(['a.geojson']);
  });

  it('take nothing but a hash for a name, and no text beyond 256 KiB', async () => {
    const { host } = load();
    for (const name of ['', '../settings', key.slice(1), `${key}0`, key.toUpperCase(), `${key.slice(1)}/`]) {
      expect(failureOf(await host.keepPlan(name, 'x'))).toBe('bad-request');
      expect(failureOf(await host.keptPlan(name))).toBe('bad-request');
    }
    expect(failureOf(await host.keepPlan(key, 'x'.repeat(256 * 1024 + 1)))).toBe('bad-request');
    expect(valueOf(await host.keepPlan(key, '"'.repeat(256 * 1024)))).toEqual({ isKept: true });
    expect(failureOf(await host.keepPlan(key, 'x'.repeat(1024 * 1024)))).toBe('too-large');
  });
});

describe('an export from the window', () => {
  const bytes = Uint8Array.from([0, 255, 10, 13]).buffer;

  it('goes where the person says, over the file that the dialog has asked about', async () => {
    const { host } = load();
    placed = { canceled: false, filePath: join(await temporaryFolder(), 'hole.svg') };
    await writeFile(placed.filePath, 'old');
    expect(valueOf(await host.saveExport('../Larkfield hole 1.svg', bytes)).where).toBe(placed.filePath);
    expect(asked?.defaultPath).toBe(join(workspace, 'Larkfield hole 1.svg'));
    expect(asked?.filters[0]?.extensions).toEqual(['svg']);
    expect([...(await readFile(placed.filePath))]).toEqual([0, 255, 10, 13]);
  });

  it('gets its ending where the dialog left it out, and then replaces nothing', async () => {
    const { host } = load();
    placed = { canceled: false, filePath: join(await temporaryFolder(), 'table') };
    expect(valueOf(await host.saveExport('a.csv', bytes)).where).toBe(`${placed.filePath}.csv`);
    expect(failureOf(await host.saveExport('a.csv', bytes))).toBe('not-allowed');
  });

  it('called off, of another kind, or no bytes is not written', async () => {
    const { host } = load();
    expect(failureOf(await host.saveExport('a.csv', bytes))).toBe('cancelled');
    expect(failureOf(await host.saveExport('a.desktop', bytes))).toBe('bad-request');
    expect(failureOf(await host.saveExport('a.csv', new Uint8Array(4) as never))).toBe('too-large');
    expect(await readdir(workspace)).toEqual(['a.geojson']);
  });
});

describe('attaching in the window', () => {
  const pick = async (name: string, content: Uint8Array): Promise<string> => {
    const path = join(await temporaryFolder(), name);
    await writeFile(path, content);
    picked = { canceled: false, filePaths: [path] };
    return path;
  };
  const picture = (bytes: number): Buffer => {
    const content = randomBytes(bytes);
    content.write('\u0089PNG\r\n\u001a\n', 'latin1');
    return content;
  };

  it('copies the picked file, telling how far it is, and gives its parts as plain bytes', async () => {
    const content = picture(5_000_000);
    await pick('aerial.png', content);
    const { host } = load();
    const told: [number, number][] = [];
    const made = valueOf(await host.attach(token, { progress: (done, total) => told.push([done, total]) }));
    expect(made).toMatchObject({ name: 'aerial.png', bytes: 5_000_000 });
    expect(told.length).toBeGreaterThan(2);
    expect(told.at(-1)).toEqual([5_000_000, 5_000_000]);
    expect(hearing.size).toBe(0);
    const part = valueOf(await host.readAttachment(made.token, 1_000_000, 123_456));
    expect(Object.prototype.toString.call(part)).toBe('[object ArrayBuffer]');
    const sha = (bytes: ArrayBuffer | Uint8Array) =>
      createHash('sha256').update(new Uint8Array(bytes)).digest('hex');
    expect(sha(part)).toBe(sha(content.subarray(1_000_000, 1_123_456)));
    expect(valueOf(await host.readAttachment(made.token, 5_000_000, 10)).byteLength).toBe(0);
    expect(valueOf(await host.listAttachments(token))).toEqual([made]);
  });

  it('can be stopped, and leaves nothing then', async () => {
    await pick('aerial.png', picture(8_000_000));
    const { host } = load();
    const stop = new AbortController();
    onProgress = ({ doneBytes }) => {
      if (doneBytes > 2_000_000) stop.abort();
    };
    expect(failureOf(await host.attach(token, { signal: stop.signal }))).toBe('cancelled');
    expect(await readdir(workspace)).toEqual(['a.geojson']);
  });

  it('is no file where none was chosen, it is gone, a folder, or of no use', async () => {
    const { host } = load();
    expect(failureOf(await host.attach(token))).toBe('cancelled');
    picked = { canceled: false, filePaths: [join(workspace, 'gone.png')] };
    expect(failureOf(await host.attach(token))).toBe('not-found');
    const folder = join(await temporaryFolder(), 'folder.png');
    await mkdir(folder);
    picked = { canceled: false, filePaths: [folder] };
    expect(failureOf(await host.attach(token))).toBe('not-allowed');
    await pick('a.png', Buffer.from('<!doctype html>'.repeat(9)));
    const unfit = await host.attach(token);
    expect(unfit).toMatchObject({ failure: 'unfit' });
    expect(unfit.ok ? '' : unfit.message).not.toContain('/');
    expect(await readdir(workspace)).toEqual(['a.geojson']);
  });

  it('reads tiles of an MBTiles file', async () => {
    await pick('elm.mbtiles', await sqliteFile(TILE_TABLES + insertTile(1, 0, 1, 5)));
    const { host } = load();
    const made = valueOf(await host.attach(token));
    const tile = valueOf(await host.readTile(made.token, 1, 0, 0));
    expect([tile?.mediaType, Buffer.from(tile!.bytes)]).toEqual(['image/png', tileBytes(5)]);
    expect(valueOf(await host.readTile(made.token, 1, 1, 0))).toBeNull();
    expect(valueOf(await host.tileSetInfo(made.token)).name).toBeNull();
  });
});

describe('a question for a file', () => {
  it('is asked in the language that is spoken', async () => {
    const { host } = load();
    language = 'de';
    await host.importFile('player');
    expect(asked).toMatchObject({ title: 'Spielerdatei, die in den Arbeitsordner kopiert wird' });
    expect(asked!.filters.map(({ name }) => name)).toEqual(['Spieler', 'Alle Dateien']);
    await host.attach(token);
    expect(asked!.filters.map(({ name }) => name)).toEqual(['Bilder und Kartendateien', 'Alle Dateien']);
    await host.saveExport('a.csv', new ArrayBuffer(2));
    expect(asked!.title).toBe('Speichern als Tabelle (CSV)');
    await host.exportPdf('card');
    expect(asked!.title).toBe('Speichern als PDF');
  });
});
