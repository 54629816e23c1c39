/** Opens the built window in Chromium on a loopback host with its own workspace, for tests and pictures. */

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Locator, type Page } from 'playwright-core';
import { readsInCore } from '../../electron/files/core-check.ts';
import type { Disk } from '../../electron/files/disk.ts';
import type { KeptPlans } from '../../electron/files/kept-plans.ts';
import { firstSettings, type SettingsStore, settingsStore } from '../../electron/files/settings.ts';
import { type FileStore, openFileStore } from '../../electron/files/store.ts';
import { startLoopback } from '../../electron/loopback/server.ts';
import { readAssets } from '../../electron/pages/assets.ts';
import { programPlaces } from '../../electron/pages/places.ts';
import { smallCourseText, smallPlayerText } from '../renderer/small-course.ts';

export interface TestWindow {
  readonly page: Page;
  readonly workspace: string;
  readonly settings: SettingsStore;
  /** What the page complained of: errors, refusals by the content policy, and the like. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

export interface WindowWishes {
  readonly width?: number;
  readonly height?: number;
  /** Files to lie in the workspace before the window opens, by name. */
  readonly files?: Readonly<Record<string, string>>;
  /** Names of workspace files that were open last. */
  readonly lastOpen?: { readonly course: string; readonly player: string };
  readonly colorScheme?: 'light' | 'dark';
  /** Makes the cache of plans for the next opening, in a folder that goes with the window; nothing is kept where absent. */
  readonly plans?: (folder: string) => KeptPlans;
  /** Stands in for the computer's own. */
  readonly disk?: Disk;
  /** The first walk round the window begins, as for somebody new; otherwise it was seen already. */
  readonly isFirstTime?: boolean;
}

/** Debian's Chromium, without what only a desktop needs. */
export const CHROMIUM = {
  executablePath: '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

export function startBrowser(): Promise<Browser> {
  return chromium.launch(CHROMIUM);
}

export async function openWindow(browser: Browser, wishes: WindowWishes = {}): Promise<TestWindow> {
  const home = await mkdtemp(join(tmpdir(), 'holewright-window-'));
  const workspace = join(home, 'workspace');
  const places = programPlaces(import.meta.dirname);
  const store = await openFileStore({
    workspace,
    demoFolder: places.demo,
    check: readsInCore,
    ...(wishes.disk === undefined ? {} : { disk: wishes.disk }),
  });
  if (!store.ok) throw new Error(store.message);
  for (const [name, text] of Object.entries(wishes.files ?? {})) await writeFile(join(workspace, name), text);
  const settings = settingsStore(join(home, 'settings'));
  if (wishes.isFirstTime !== true) await settings.rememberTour();
  if (wishes.lastOpen !== undefined) await keepLastOpen(store.value, settings, wishes.lastOpen);
  const server = await startLoopback({
    store: store.value,
    settings,
    assets: await readAssets(places.page),
    version: 'test',
    ...(wishes.plans === undefined ? {} : { plans: wishes.plans(join(home, 'kept-plans')) }),
    waitMs: 600_000,
  });
  const context = await browser.newContext({
    viewport: { width: wishes.width ?? 1280, height: wishes.height ?? 800 },
    colorScheme: wishes.colorScheme ?? 'light',
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(server.startAddress());
  return {
    page,
    workspace,
    settings,
    complaints,
    close: async () => {
      await context.close();
      await server.close();
      await rm(home, { recursive: true, force: true });
    },
  };
}

/** The window with a small course and player open that are worked out within seconds. */
export function openSmallWindow(browser: Browser, wishes: WindowWishes = {}): Promise<TestWindow> {
  return openWindow(browser, {
    ...wishes,
    files: { 'small.geojson': smallCourseText(), 'few-clubs.json': smallPlayerText(), ...wishes.files },
    lastOpen: { course: 'small.geojson', player: 'few-clubs.json' },
  });
}

async function keepLastOpen(
  store: FileStore,
  settings: SettingsStore,
  names: { readonly course: string; readonly player: string },
): Promise<void> {
  const files = await store.list();
  const tokenOf = (name: string): string | null =>
    (files.ok ? files.value : []).find((file) => file.name === name)?.token ?? null;
  await settings.write({
    ...firstSettings,
    lastCourse: tokenOf(names.course),
    lastPlayer: tokenOf(names.player),
  });
}

/** Resolves when the hole on screen shows its full plan: neither rough nor under way. */
export async function planReady(page: Page): Promise<void> {
  await page.locator('.options:not(.rough) .option').first().waitFor({ timeout: 200_000 });
  await page.locator('.work-line').waitFor({ state: 'detached', timeout: 200_000 });
}

/** Strokes of the recommendation, as shown. */
export async function expectedStrokes(page: Page): Promise<number> {
  return Number(await page.locator('.advice-cost strong').textContent());
}

/** Middle of a marker on the map: `ball`, `aim` or `pin`. */
export async function markerPlace(
  page: Page,
  marker: string,
): Promise<{ readonly x: number; readonly y: number }> {
  const box = await markerOf(page, marker).boundingBox();
  if (box === null) throw new Error(`no ${marker} on the map`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export function markerOf(page: Page, marker: string): Locator {
  return page.locator(`[data-marker="${marker}"]`);
}

/** Drags a marker by pixels, in steps as a hand would; leaves the button down unless told to drop. */
export async function dragMarker(
  page: Page,
  marker: string,
  dx: number,
  dy: number,
  drop = true,
): Promise<void> {
  const { x, y } = await markerPlace(page, marker);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx, y + dy, { steps: 10 });
  if (drop) await page.mouse.up();
}

/** Waits until `read` gives something that `good` accepts; says what it gave last otherwise. */
export async function settles<T>(
  read: () => Promise<T>,
  good: (value: T) => boolean,
  within = 60_000,
): Promise<T> {
  const end = Date.now() + within;
  for (;;) {
    const value = await read();
    if (good(value)) return value;
    if (Date.now() > end)
      throw new Error(`It did not settle within ${within} ms; the last was ${JSON.stringify(value)}`);
    await new Promise((resolve) => setTimeout(resolve, 60));
  }
}
