/** Electron's main process: locks first, then files, then the window. */

import { mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { app, type BrowserWindow, dialog, session } from 'electron';
import { CHANGE_CHANNEL } from '../contract/bridge.ts';
import { acceptedOrigins } from '../contract/tile-source.ts';
import { openAttachments } from '../files/attachments.ts';
import { readsInCore } from '../files/core-check.ts';
import { demoSettings } from '../files/demo.ts';
import { type Editing, openEditing } from '../files/editing.ts';
import { keptPlans, PLANS_FOLDER } from '../files/kept-plans.ts';
import { settingsFolder, WORKSPACE_NAME } from '../files/places.ts';
import { firstSettings, passingSettings, settingsStore, type SettingsStore } from '../files/settings.ts';
import { type FileStore, openFileStore } from '../files/store.ts';
import { openTileSets } from '../files/tile-sets.ts';
import { watchStore } from '../files/watch.ts';
import { type Asset, assetAt, readAssets } from '../pages/assets.ts';
import { programPlaces } from '../pages/places.ts';
import { answerPage } from './answer-page.ts';
import { confineContents, confineSession } from './confine.ts';
import { givenPaths, opening, takeGiven } from './given-file.ts';
import { setMenu } from './menu.ts';
import { tellAndEnd, watchProgram, watchWindow } from './mishaps.ts';
import { ownWords, refusalText } from './own-words.ts';
import { registerPageScheme, servePage } from './page-scheme.ts';
import { openWindow } from './window.ts';

const here = dirname(fileURLToPath(import.meta.url));
let window: BrowserWindow | null = null;
let editing: Editing | null = null;
let hasBegun = false;
/** Origins that the page on screen may ask for tiles. */
let tileOrigins: readonly string[] = [];
/** Files that the system hands over before there is a store to take them. */
const waiting: string[] = [];
/** Takes files in once the program has begun, and shows them. */
let give: ((paths: readonly string[]) => Promise<void>) | null = null;
/** Puts the menu up in the language that is spoken now; not before the program has begun. */
let showMenu: (() => void) | null = null;
const { words, hearSystem, follow } = ownWords(() => showMenu?.());

/**
 * The folder that the browser's host has too: by itself Electron names it as the packaged program, with a capital. Before
 * anything asks for it, the lock of the single instance among them; `setPath` wants a folder that is there.
 */
function useSettingsFolder(): void {
  // Chromium's own switch, for those who want it elsewhere.
  if (app.commandLine.hasSwitch('user-data-dir')) return;
  const folder = resolve(settingsFolder());
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  app.setPath('userData', folder);
}

function chosen(): { readonly workspace: string; readonly isDemo: boolean } {
  const { values } = parseArgs({
    args: process.argv.slice(1),
    options: { workspace: { type: 'string' }, demo: { type: 'boolean' } },
    // Chromium's own switches stand among the arguments.
    strict: false,
  });
  const { workspace, demo } = values;
  return {
    workspace: typeof workspace === 'string' ? workspace : join(app.getPath('documents'), WORKSPACE_NAME),
    isDemo: demo === true,
  };
}

async function settingsFor(store: FileStore, isDemo: boolean): Promise<SettingsStore> {
  const own = settingsStore(app.getPath('userData'));
  if (!isDemo) return own;
  const [begin, entries] = [await own.read(), await store.list()];
  return passingSettings(
    demoSettings(begin.ok ? begin.value : firstSettings, entries.ok ? entries.value : []),
    own,
  );
}

/** What follows the program's own name, and in a source tree its folder, on a command line. */
function wordsOf(commandLine: readonly string[]): readonly string[] {
  return commandLine.slice(app.isPackaged ? 1 : 2);
}

/** Takes files in and makes the page open them; a refusal is told in words. */
async function takeIn(store: FileStore, settings: SettingsStore, paths: readonly string[]): Promise<boolean> {
  let isTaken = false;
  for (const path of paths) {
    const taken = await takeGiven(store, path);
    if (!taken.ok) {
      void dialog.showMessageBox({
        type: 'warning',
        title: words().system.program,
        message: refusalText(taken, words()),
      });
      continue;
    }
    const kept = await settings.read();
    if (kept.ok) await settings.write(opening(kept.value, taken.value));
    isTaken = true;
  }
  return isTaken;
}

function showWindow(): void {
  if (window !== null) {
    if (window.isMinimized()) window.restore();
    window.focus();
    return;
  }
  window = openWindow(join(here, 'preload.cjs'), app.isPackaged);
  watchWindow(window, app, words);
  window.on('closed', () => {
    window = null;
    void editing?.close();
  });
}

async function begin(): Promise<void> {
  await app.whenReady();
  hearSystem([app.getLocale(), ...app.getPreferredSystemLanguages()]);
  // Also what goes wrong before the window opens is told in the language that was chosen.
  await follow(settingsStore(app.getPath('userData')));
  const places = programPlaces(here);
  confineSession(session.defaultSession, () => tileOrigins);
  const assets = await readAssets(places.page).catch(() => new Map<string, Asset>());
  if (assetAt(assets, '') === null) {
    tellAndEnd(app, words(), ({ notBuilt }) => notBuilt({ folder: places.page }));
    return;
  }
  const { workspace, isDemo } = chosen();
  const store = await openFileStore({
    workspace,
    demoFolder: places.demo,
    check: readsInCore,
    notice: (message) => {
      console.error(message);
    },
  });
  if (!store.ok) {
    tellAndEnd(app, words(), () => refusalText(store, words()));
    return;
  }
  const settings = await follow(await settingsFor(store.value, isDemo));
  await takeIn(store.value, settings, [
    ...waiting.splice(0),
    ...givenPaths(wordsOf(process.argv), process.cwd()),
  ]);
  give = async (paths) => {
    // The page asks about unsaved work before it lets itself be loaded anew.
    if ((await takeIn(store.value, settings, paths)) && window !== null) window.webContents.reload();
    showWindow();
  };
  servePage(session.defaultSession, assets, async () => {
    const kept = await settings.read();
    tileOrigins = kept.ok ? acceptedOrigins(kept.value.tileSources ?? []) : [];
    return tileOrigins;
  });
  const version = app.getVersion();
  editing = openEditing({ store: store.value, shell: 'electron' });
  const attachments = openAttachments(store.value, (message) => {
    console.error(message);
  });
  answerPage({
    store: store.value,
    settings,
    editing,
    attachments,
    tileSets: openTileSets(attachments),
    plans: keptPlans(join(app.getPath('userData'), PLANS_FOLDER)),
    version,
    window: () => window,
    exportFolder: app.getPath('documents'),
    words,
  });
  watchStore(store.value).listen((change) => {
    window?.webContents.send(CHANGE_CHANNEL, change);
  });
  const showAbout = (): void => {
    const { about, program } = words().system;
    void dialog.showMessageBox({
      title: program,
      message: about.version({ version }),
      detail: about.files({ folder: store.value.workspace }),
    });
  };
  showMenu = () => {
    setMenu(showAbout, words());
  };
  showMenu();
  hasBegun = true;
  if (waiting.length > 0) await give(waiting.splice(0));
  else showWindow();
}

watchProgram(app, words);
useSettingsFolder();
app.enableSandbox();
registerPageScheme();
confineContents(app);
if (app.requestSingleInstanceLock()) {
  // Before the first window stands there is none to show: `begin` opens it when it is ready.
  const showAgain = (): void => {
    if (hasBegun) showWindow();
  };
  const handOver = (paths: readonly string[]): void => {
    if (paths.length === 0) showAgain();
    else if (hasBegun && give !== null) void give(paths);
    else waiting.push(...paths);
  };
  app.on('second-instance', (_event, commandLine, folder) => {
    handOver(givenPaths(wordsOf(commandLine), folder));
  });
  app.on('open-file', (event, path) => {
    event.preventDefault();
    handOver([path]);
  });
  app.on('activate', showAgain);
  app.on('window-all-closed', () => {
    // What the window held is let go of before the program ends.
    const released = editing?.close() ?? Promise.resolve();
    void released.finally(() => {
      app.quit();
    });
  });
  void begin();
} else {
  app.quit();
}
