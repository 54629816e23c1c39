/**
 * Takes the picture of the window that the README shows: `npx tsx tests/browser/take-screenshots.ts`.
 * With a folder as argument it takes the window's states in both themes and two sizes there instead, to be looked at.
 */

import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import buildWindow from './build-window.ts';
import { openWindow, planReady, startBrowser } from './window.ts';

const README_PICTURE = join(import.meta.dirname, '..', '..', 'renderer', 'help', 'pictures', 'window.png');
const MOST_BYTES = 400_000;
const README_HOLE = 16;

type Browser = Awaited<ReturnType<typeof startBrowser>>;

async function takeReadmePicture(browser: Browser): Promise<void> {
  const { page, close } = await openWindow(browser, { width: 1180, height: 740 });
  await page.getByText(/All \d+ holes are worked out/).waitFor({ timeout: 600_000 });
  await showHole(page, README_HOLE);
  mkdirSync(join(README_PICTURE, '..'), { recursive: true });
  await page.screenshot({ path: README_PICTURE });
  await close();
  const { size } = statSync(README_PICTURE);
  console.log(`${README_PICTURE}: ${Math.round(size / 1000)} kB`);
  if (size > MOST_BYTES)
    throw new Error(`The picture has more than ${MOST_BYTES / 1000} kB: make the window smaller.`);
}

async function takeStates(browser: Browser, folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const [width, height] of [
      [1280, 800],
      [1920, 1080],
    ] as const) {
      const { page, close } = await openWindow(browser, { width, height, colorScheme });
      for (const [name, show] of STATES) {
        await show(page);
        await page.waitForTimeout(700);
        await page.screenshot({ path: join(folder, `${colorScheme}-${width}-${name}.png`) });
      }
      await close();
    }
  }
}

async function showHole(page: Page, hole: number): Promise<void> {
  await page.locator(`[data-hole="${hole}"]`).click();
  await planReady(page);
  // Spread and balls come a moment after the plan.
  await page.waitForTimeout(1500);
}

const STATES: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['hole', (page) => showHole(page, README_HOLE)],
  [
    'compare',
    async (page) => {
      await page.locator('.side-A').nth(0).click();
      await page.locator('.side-B').nth(3).click();
      await page.locator('.verdict strong').waitFor();
    },
  ],
  [
    'surface',
    async (page) => {
      await page.getByRole('button', { name: 'End comparing' }).click();
      await page.getByLabel('Strokes surface').check();
      await page.locator('.surface-key svg').waitFor();
    },
  ],
  ['legend', (page) => page.locator('.legend summary').click()],
  ['course', (page) => page.locator('[data-hole="all"]').click()],
  ['help', (page) => page.getByRole('button', { name: 'Help' }).click()],
];

await buildWindow();
const browser = await startBrowser();
const folder = process.argv[2];
if (folder === undefined) await takeReadmePicture(browser);
else await takeStates(browser, folder);
await browser.close();
