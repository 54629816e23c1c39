/** Electron's main process: locks first, then files, then the window. */

import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { app, type BrowserWindow, dialog, session } from 'electron';
import { CHANGE_CHANNEL } from '../contract/bridge.ts';
import { readsInCore } from '../files/core-check.ts';
import { demoSettings } from '../files/demo.ts';
import { WORKSPACE_NAME } from '../files/places.ts';
import { firstSettings, passingSettings, settingsStore, type SettingsStore } from '../files/settings.ts';
import { type FileStore, openFileStore } from '../files/store.ts';
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
  });
}

async function begin(): Promise<void> {
  await app.whenReady();
  const places = programPlaces(here);
  confineSession(session.defaultSession);
  const assets = await readAssets(places.page).catch(() => new Map<string, Asset>());
  if (assetAt(assets, '') === null) {
    tellAndEnd(app, `The page is not built: there is no index.html in ${places.page}.`);
    return;
  }
  servePage(session.defaultSession, assets);
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
  const version = app.getVersion();
  answerPage({
    store: store.value,
    settings,
    version,
    window: () => window,
    pdfFolder: app.getPath('documents'),
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
  showWindow();
}

watchProgram(app);
app.enableSandbox();
registerPageScheme();
confineContents(app);
if (app.requestSingleInstanceLock()) {
  app.on('second-instance', showWindow);
  app.on('activate', showWindow);
  app.on('window-all-closed', () => {
    app.quit();
  });
  void begin();
} else {
  app.quit();
}
