/** Runs the program in the browser until its last window is closed or Ctrl+C is pressed. */

import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { errorCode } from '../files/answer.ts';
import { readsInCore } from '../files/core-check.ts';
import { demoSettings } from '../files/demo.ts';
import { keptPlans, PLANS_FOLDER } from '../files/kept-plans.ts';
import { settingsFolder, standardWorkspace } from '../files/places.ts';
import { firstSettings, passingSettings, type SettingsStore, settingsStore } from '../files/settings.ts';
import { openFileStore } from '../files/store.ts';
import { startLoopback } from '../loopback/server.ts';
import { readAssets } from '../pages/assets.ts';
import type { ProgramPlaces } from '../pages/places.ts';
import type { Wanted } from './arguments.ts';
import { chooseOpener, openBrowser } from './browser.ts';
import type { Surroundings } from './electron-binary.ts';

/** Exit code for the shell. */
export async function runLoopback(
  places: ProgramPlaces,
  wanted: Wanted,
  version: string,
  around: Surroundings,
  say: (line: string) => void,
): Promise<number> {
  const store = await openFileStore({
    workspace: wanted.workspace ?? (await standardWorkspace()),
    demoFolder: places.demo,
    check: readsInCore,
    notice: say,
  });
  if (!store.ok) {
    say(store.message);
    return 1;
  }
  const own = settingsStore(settingsFolder());
  let settings: SettingsStore = own;
  if (wanted.isDemo) {
    const [begin, entries] = [await own.read(), await store.value.list()];
    settings = passingSettings(
      demoSettings(begin.ok ? begin.value : firstSettings, entries.ok ? entries.value : []),
      own,
    );
  }

  const assets = await readAssets(places.page);
  const server = await startLoopback({
    store: store.value,
    settings,
    assets,
    version,
    // The demo's too: a plan is told by what it was made from, so none meets another's.
    plans: keptPlans(join(settingsFolder(), PLANS_FOLDER)),
    port: wanted.port,
  }).catch((error: unknown) => errorCode(error));
  if (typeof server === 'string') {
    say(
      server === 'EADDRINUSE'
        ? `Port ${wanted.port} is taken by another program. Leave --port out, or give another one.`
        : `Port ${wanted.port} cannot be used here (${server}). Leave --port out, or give another one.`,
    );
    return 1;
  }

  const ending = { by: 'The last window was closed' };
  const interrupt = (): void => {
    ending.by = 'Stopped from the terminal';
    void server.close();
  };
  process.once('SIGINT', interrupt);
  process.once('SIGTERM', interrupt);

  say(`Holewright keeps your files in ${store.value.workspace}`);
  say(`Holewright runs at ${server.startAddress()}`);
  const offer = process.stdin.isTTY ? ' Press Enter for a fresh address.' : '';
  say(`That address opens one browser, once. Ctrl+C ends the program.${offer}`);
  const keyboard = process.stdin.isTTY ? createInterface({ input: process.stdin }) : null;
  keyboard?.on('line', () => {
    say(`Holewright runs at ${server.startAddress()}`);
  });

  if (wanted.opensBrowser) {
    const obstacle = await openBrowser(chooseOpener(around), server.startAddress());
    if (obstacle !== null) say(`No browser was opened (${obstacle}): open the address above in one.`);
  }
  await server.ended;
  keyboard?.close();
  process.off('SIGINT', interrupt);
  process.off('SIGTERM', interrupt);
  say(`${ending.by}: Holewright has ended.`);
  return 0;
}
