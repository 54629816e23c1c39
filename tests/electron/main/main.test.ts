import type { EventEmitter } from 'node:events';
import { existsSync } from 'node:fs';
import { readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bridgeMethods, CHANGE_CHANNEL, channelOf } from '../../../electron/contract/bridge.ts';
import type { FileEntry, HostAnswer, Settings } from '../../../electron/contract/host.ts';
import { settingsFolder } from '../../../electron/files/places.ts';
import { firstSettings, settingsStore } from '../../../electron/files/settings.ts';
import type { ProgramPlaces } from '../../../electron/pages/places.ts';
import { courseText, temporaryFolder, valueOf } from '../files/workspace.ts';
import { PAGE } from '../loopback/asking.ts';

const done: string[] = [];
const sent: unknown[][] = [];
const handlers = new Map<string, (event: unknown, request: unknown) => Promise<HostAnswer<unknown>>>();
const mainFrame = { url: 'holewright://app/', parent: null, processId: 1, routingId: 1 };
let isFirst = true;
let locale = 'en-GB';
const menus: string[] = [];
let documents = '';
let paths: Record<string, string> = {};
let switches: readonly string[] = [];
let windows: EventEmitter[] = [];
let app: EventEmitter;

vi.mock('electron', async () => {
  const { EventEmitter } = await import('node:events');
  const path = await import('node:path');
  function makeWindow(): EventEmitter {
    const contents = Object.assign(new EventEmitter(), {
      mainFrame,
      send: (...args: unknown[]) => sent.push(args),
      reload: () => done.push('reload'),
    });
    const window = Object.assign(new EventEmitter(), {
      webContents: contents,
      loadURL: (address: string) => Promise.resolve(done.push(`load ${address}`)),
      isMinimized: () => true,
      restore: () => done.push('restore'),
      focus: () => done.push('focus'),
    });
    done.push('window');
    windows.push(window);
    return window;
  }
  app = Object.assign(new EventEmitter(), {
    isPackaged: false,
    enableSandbox: () => done.push('sandbox'),
    requestSingleInstanceLock: () => {
      done.push('lock');
      return isFirst;
    },
    whenReady: () => {
      done.push('ready');
      return Promise.resolve();
    },
    commandLine: { hasSwitch: (name: string) => switches.includes(name) },
    setPath: (name: string, folder: string) => {
      if (!existsSync(folder)) throw new Error('Failed to set path');
      done.push(`path ${name}`);
      paths[name] = folder;
    },
    getPath: (name: string) => paths[name] ?? path.join(documents, name),
    getVersion: () => '1.2.3',
    getLocale: () => locale,
    getPreferredSystemLanguages: () => [],
    quit: () => done.push('quit'),
    exit: (code: number) => done.push(`exit ${code}`),
  });
  return {
    app,
    // Called with `new`; what it returns is the window.
    BrowserWindow: makeWindow,
    dialog: {
      showErrorBox: (_title: string, text: string) => done.push(`error ${text}`),
      showMessageBox: ({ message }: { message: string }) => Promise.resolve(done.push('told', message)),
    },
    ipcMain: { handle: (channel: string, handler: never) => handlers.set(channel, handler) },
    Menu: {
      buildFromTemplate: (items: readonly { label: string }[]) => [items[0]?.label, items.at(-1)?.label],
      setApplicationMenu: (labels: readonly string[]) => {
        done.push('menu');
        menus.push(labels.join(' '));
      },
    },
    protocol: { registerSchemesAsPrivileged: () => done.push('scheme') },
    session: {
      defaultSession: Object.assign(new EventEmitter(), {
        setPermissionRequestHandler: () => done.push('permissions'),
        setPermissionCheckHandler: () => undefined,
        setDevicePermissionHandler: () => undefined,
        webRequest: { onBeforeRequest: () => undefined },
        protocol: { handle: () => done.push('page') },
      }),
    },
    shell: {},
  };
});

let page = '';
vi.mock('../../../electron/pages/places.ts', async (original) => {
  const real = await original<{ programPlaces: (from: string) => ProgramPlaces }>();
  return { programPlaces: (from: string) => ({ ...real.programPlaces(from), page }) };
});

const argv = [...process.argv];
const faults = ['uncaughtException', 'unhandledRejection'] as const;
const listenersBefore = new Map(faults.map((name) => [name, process.rawListeners(name)]));

beforeEach(async () => {
  done.length = 0;
  menus.length = 0;
  locale = 'en-GB';
  sent.length = 0;
  windows = [];
  handlers.clear();
  isFirst = true;
  paths = {};
  switches = [];
  documents = await temporaryFolder();
  vi.stubEnv('XDG_CONFIG_HOME', join(documents, 'config'));
  page = await temporaryFolder();
  await writeFile(join(page, 'index.html'), PAGE);
  vi.resetModules();
});

afterEach(() => {
  vi.unstubAllEnvs();
  process.argv = [...argv];
  // The program listens for its own faults; the tests' runner must go on hearing of its.
  for (const name of faults) {
    for (const listener of process.rawListeners(name)) {
      if (!listenersBefore.get(name)?.includes(listener))
        process.removeListener(name, listener as () => void);
    }
  }
});

async function start(...args: string[]): Promise<void> {
  process.argv = ['electron', '/program', ...args];
  await import('../../../electron/main/main.ts');
  await vi.waitFor(() => {
    expect(done.some((step) => /^(?:load|quit|exit)/u.test(step))).toBe(true);
  });
}

const ask = async <T>(method: (typeof bridgeMethods)[number], request: unknown = {}): Promise<T> =>
  valueOf((await handlers.get(channelOf(method))!({ senderFrame: mainFrame }, request)) as HostAnswer<T>);

describe('the main process', () => {
  it('locks itself up before the app is ready, and the session before the window opens', async () => {
    await start();
    const order = [
      'path userData',
      'sandbox',
      'scheme',
      'lock',
      'ready',
      'permissions',
      'page',
      'menu',
      'window',
      'load holewright://app/',
    ];
    expect(done.filter((step) => order.includes(step))).toEqual(order);
  });

  it('makes the workspace in the documents folder and answers every method', async () => {
    await start();
    expect(existsSync(join(documents, 'documents', 'Holewright'))).toBe(true);
    expect([...handlers.keys()].sort()).toEqual(bridgeMethods.map(channelOf).sort());
    expect(await ask('info')).toEqual({ shell: 'electron', version: '1.2.3', workspaceName: 'Holewright' });
    const entries = await ask<readonly FileEntry[]>('list');
    expect(entries.filter(({ readOnly }) => readOnly).map(({ kind }) => kind)).toContain('course');
  });

  it('uses the folder that it is told, among Chromium’s own switches', async () => {
    const workspace = join(documents, 'elsewhere');
    await start('--ozone-platform=x11', '--workspace', workspace, '--no-zygote');
    expect(await ask('info')).toMatchObject({ workspaceName: 'elsewhere' });
  });

  it('opens the demo for --demo without keeping that for next time', async () => {
    await start('--demo');
    const entries = await ask<readonly FileEntry[]>('list');
    const course = entries.find(({ kind, readOnly }) => kind === 'course' && readOnly);
    const settings = await ask<Settings>('readSettings');
    expect(settings.lastCourse).toBe(course?.token);
    await ask('writeSettings', { settings });
    expect(existsSync(join(documents, 'config', 'holewright', 'settings.json'))).toBe(false);
    // its plans are: they say what they were made from
    const key = 'ab'.repeat(32);
    await ask('keepPlan', { key, text: '{}' });
    expect(existsSync(join(documents, 'config', 'holewright', 'kept-plans', key))).toBe(true);
  });

  it('keeps its settings where the browser’s host does, or where Chromium’s switch says', async () => {
    await start();
    const settings = await ask<Settings>('readSettings');
    await ask('writeSettings', { settings });
    expect(valueOf(await settingsStore(settingsFolder()).read()).isNew).toBeUndefined();
    expect(settingsFolder()).toBe(join(documents, 'config', 'holewright'));
    vi.resetModules();
    done.length = 0;
    paths = {};
    switches = ['user-data-dir'];
    await start();
    await ask('writeSettings', { settings });
    expect(existsSync(join(documents, 'userData', 'settings.json'))).toBe(true);
  });

  it('tells the page of changes on disk', async () => {
    await start();
    const { entry } = await ask<{ entry: FileEntry }>('create', {
      kind: 'course',
      suggestedName: 'a',
      text: courseText(0),
    });
    await vi.waitFor(
      () => expect(sent).toContainEqual([CHANGE_CHANNEL, expect.objectContaining({ token: entry.token })]),
      20_000,
    );
  });

  it('takes in the file that it is started with, and those that a second start hands over', async () => {
    const given = join(documents, 'oak.geojson');
    await writeFile(given, courseText(3));
    await start(given);
    const named = async (name: string): Promise<FileEntry | undefined> =>
      (await ask<readonly FileEntry[]>('list')).find((entry) => entry.name === name);
    expect((await ask<Settings>('readSettings')).lastCourse).toBe((await named('oak.geojson'))?.token);

    const second = join(documents, 'elm.geojson');
    await writeFile(second, courseText(4));
    app.emit('second-instance', {}, ['electron', '/program', 'elm.geojson'], documents);
    await vi.waitFor(() => expect(done).toContain('reload'));
    expect((await ask<Settings>('readSettings')).lastCourse).toBe((await named('elm.geojson'))?.token);
    app.emit('open-file', { preventDefault: () => done.push('own') }, join(documents, 'gone.geojson'));
    await vi.waitFor(() => expect(done).toContain('told'));
    expect(done).toContain('own');
  });

  it('speaks the system’s language until the settings have another, and changes its menu over', async () => {
    locale = 'de-AT';
    await start();
    expect(menus).toEqual(['&Holewright &Fenster']);
    const settings = await ask<Settings>('readSettings');
    await ask('writeSettings', { settings: { ...settings, units: 'metres' } });
    expect(menus).toHaveLength(1);
    await ask('writeSettings', { settings: { ...settings, language: 'en' } });
    expect(menus).toEqual(['&Holewright &Fenster', '&Holewright &Window']);
    await ask('writeSettings', { settings: { ...settings, language: 'de' } });
    app.emit('open-file', { preventDefault: () => undefined }, join(documents, 'gone.geojson'));
    await vi.waitFor(() => expect(done).toContain('told'));
    expect(done.some((step) => step.startsWith('Das Lesen von gone.geojson ist gescheitert'))).toBe(true);
  });

  it('ends when another one is running, whose window comes to the front', async () => {
    isFirst = false;
    await start();
    expect(done).toContain('quit');
    expect(windows).toEqual([]);

    vi.resetModules();
    isFirst = true;
    done.length = 0;
    menus.length = 0;
    locale = 'en-GB';
    await start();
    app.emit('second-instance', {}, ['electron', '/program'], '/');
    expect(windows).toHaveLength(1);
    expect(done.slice(-2)).toEqual(['restore', 'focus']);
  });

  it('lets go of files when its window is closed, and only then ends', async () => {
    await start();
    const { entry } = await ask<{ entry: FileEntry }>('create', {
      kind: 'course',
      suggestedName: 'a',
      text: courseText(0),
    });
    await ask('claim', { window: 'window-1', token: entry.token });
    const locks = join(documents, 'documents', 'Holewright', '.holewright-locks');
    expect(await readdir(locks)).toEqual(['a.geojson.lock']);
    windows[0]!.emit('closed');
    app.emit('window-all-closed');
    expect(done).not.toContain('quit');
    await vi.waitFor(() => expect(done).toContain('quit'));
    expect(await readdir(locks)).toEqual([]);
  });

  it('says so and ends where the workspace cannot be made', async () => {
    await writeFile(join(documents, 'file'), '');
    await start('--workspace', join(documents, 'file', 'inside'));
    expect(done.find((step) => step.startsWith('error'))).toContain(join(documents, 'file', 'inside'));
    expect(done).toContain('exit 1');
  });

  it('says so in the language of the settings, whatever the system’s is', async () => {
    valueOf(await settingsStore(settingsFolder()).write({ ...firstSettings, language: 'de' }));
    await writeFile(join(documents, 'file'), '');
    await start('--workspace', join(documents, 'file', 'inside'));
    expect(done.find((step) => step.startsWith('error'))).toMatch(/ wurde | ist /u);
    vi.resetModules();
    done.length = 0;
    await rm(join(page, 'index.html'));
    await start();
    expect(done.find((step) => step.startsWith('error'))).toContain(' nicht gebaut');
  });

  it('says so and ends where the page is not built', async () => {
    await rm(join(page, 'index.html'));
    await start();
    expect(done.find((step) => step.startsWith('error'))).toContain('npm run build');
    expect(windows).toEqual([]);
  });
});
