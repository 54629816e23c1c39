/** Opens the built window in Chromium on a loopback host with its own workspace, for tests and pictures. */

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { readsInCore } from '../../electron/files/core-check.ts';
import { settingsStore } from '../../electron/files/settings.ts';
import { openFileStore } from '../../electron/files/store.ts';
import { startLoopback } from '../../electron/loopback/server.ts';
import { readAssets } from '../../electron/pages/assets.ts';
import { programPlaces } from '../../electron/pages/places.ts';

export interface TestWindow {
  readonly page: Page;
  readonly workspace: string;
  /** What the page complained of: errors, refused by the content policy, and the like. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

export interface WindowWishes {
  readonly width?: number;
  readonly height?: number;
  /** Files to lie in the workspace before the window opens, by name. */
  readonly files?: Readonly<Record<string, string>>;
  readonly colorScheme?: 'light' | 'dark';
}

const CHROMIUM = {
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
  const store = await openFileStore({ workspace, demoFolder: places.demo, check: readsInCore });
  if (!store.ok) throw new Error(store.message);
  for (const [name, text] of Object.entries(wishes.files ?? {})) await writeFile(join(workspace, name), text);
  const server = await startLoopback({
    store: store.value,
    settings: settingsStore(join(home, 'settings')),
    assets: await readAssets(places.page),
    version: 'test',
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
    complaints,
    close: async () => {
      await context.close();
      await server.close();
      await rm(home, { recursive: true, force: true });
    },
  };
}

/** Resolves when every hole is worked out. */
export async function allHolesReady(page: Page): Promise<void> {
  await page.getByText(/All \d+ holes are worked out/).waitFor({ timeout: 240_000 });
}

/** Resolves when the hole on screen shows its full plan: neither rough nor under way. */
export async function planReady(page: Page): Promise<void> {
  await page.locator('.options:not(.rough) .option').first().waitFor({ timeout: 120_000 });
  await page.locator('.work-line').waitFor({ state: 'detached', timeout: 120_000 });
}
