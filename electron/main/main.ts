/** Electron's main process: locks first, then files, then the window. */

import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { app, type BrowserWindow, dialog, session } from 'electron';
import { CHANGE_CHANNEL } from '../contract/bridge.ts';
import { acceptedOrigins } from '../contract/tile-source.ts';
import { openAttachments } from '../files/attachments.ts';
import { readsInCore } from '../files/core-check.ts';
import { demoSettings } from '../files/demo.ts';
import { type Editing, openEditing } from '../files/editing.ts';
import { WORKSPACE_NAME } from '../files/places.ts';
import { firstSettings, passingSettings, settingsStore, type SettingsStore } from '../files/settings.ts';
import { type FileStore, openFileStore } from '../files/store.ts';
import { openTileSets } from '../files/tile-sets.ts';
import { watchStore } from '../files/watch.ts';
import { type Asset, assetAt, readAssets } from '../pages/assets.ts';
import { programPlaces } from '../pages/places.ts';
import { answerPage } from './answer-page.ts';
import { confineContents, confineSession } from './confine.ts';
import { setMenu } from './menu.ts';
import { tellAndEnd, watchProgram, watchWindow } from './mishaps.ts';
import { registerPageScheme, servePage } from './page-scheme.ts';
import { openWindow } from './window.ts';

const here = dirname(fileURLToPath(import.meta.url));
let window: BrowserWindow | null = null;
let editing: Editing | null = null;
let hasBegun = false;
/** Origins that the page on screen may ask for tiles. */
let tileOrigins: readonly string[] = [];

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
  );
}

function showWindow(): void {
  if (window !== null) {
    if (window.isMinimized()) window.restore();
    window.focus();
    return;
  }
  window = openWindow(join(here, 'preload.cjs'), app.isPackaged);
  watchWindow(window, app);
  window.on('closed', () => {
    window = null;
    void editing?.close();
  });
}

async function begin(): Promise<void> {
  await app.whenReady();
  const places = programPlaces(here);
  confineSession(session.defaultSession, () => tileOrigins);
  const assets = await readAssets(places.page).catch(() => new Map<string, Asset>());
  if (assetAt(assets, '') === null) {
    tellAndEnd(app, `The page is not built: there is no index.html in ${places.page}.`);
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
    tellAndEnd(app, store.message);
    return;
  }
  const settings = await settingsFor(store.value, isDemo);
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
    version,
    window: () => window,
    exportFolder: app.getPath('documents'),
  });
  watchStore(store.value).listen((change) => {
    window?.webContents.send(CHANGE_CHANNEL, change);
  });
  setMenu(() => {
    void dialog.showMessageBox({
      title: 'Holewright',
      message: `Holewright ${version}`,
      detail: `Your files: ${store.value.workspace}`,
    });
  });
  hasBegun = true;
  showWindow();
}

watchProgram(app);
app.enableSandbox();
registerPageScheme();
confineContents(app);
if (app.requestSingleInstanceLock()) {
  // Before the first window stands there is none to show: `begin` opens it when it is ready.
  const showAgain = (): void => {
    if (hasBegun) showWindow();
  };
  app.on('second-instance', showAgain);
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
