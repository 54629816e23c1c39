/**
 * The whole path of a round on the demo itself, in Chromium: `npx tsx tests/browser/demo-round.ts [FOLDER]`. It takes
 * minutes, since eighteen real holes are worked out twice, so `npm test` walks the same path on short holes instead
 * (`round-room.test.ts`). Sheets and pictures go to FOLDER, by default `demo-round` in the system's temporary folder.
 */

import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import buildWindow from './build-window.ts';
import { openWindow, settles, startBrowser } from './window.ts';

const LONG_MS = 900_000;
const PAPERS = ['a4', 'letter', 'a6', 'booklet-a4', 'booklet-letter'] as const;
const STYLES = ['Normal', 'Ink-saving', 'Large print'] as const;

/** Seconds for a keystroke and for making up one's mind, of an average typist (Card, Moran & Newell 1980, keystroke-level model). */
const KEY_S = 0.28;
const MIND_S = 1.35;

/** Scores of a played round that misses 89 by two. */
const SCORES = [5, 6, 4, 5, 5, 4, 5, 6, 5, 5, 4, 6, 5, 4, 6, 5, 5, 6];

const folder = process.argv[2] ?? join(tmpdir(), 'demo-round');
mkdirSync(folder, { recursive: true });
await buildWindow();
const begun = Date.now();

function say(words: string): void {
  console.log(`${((Date.now() - begun) / 1000).toFixed(0).padStart(5)} s  ${words}`);
}

function demand(isSo: boolean, words: string): void {
  if (!isSo) throw new Error(`Not so: ${words}`);
  say(words);
}

const browser = await startBrowser();
const window = await openWindow(browser, { width: 1280, height: 800 });
const { page } = window;
try {
  await walk(page);
  demand(window.complaints.length === 0, `the page complained of nothing ${window.complaints.join('; ')}`);
} finally {
  await window.close();
  await browser.close();
}

async function walk(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Round', exact: true }).click();
  await page.getByLabel('Beat', { exact: true }).fill('90');
  await page.getByText('All 18 holes are worked out').waitFor({ timeout: LONG_MS });
  await page.getByText('Chance to beat 90: 89 or fewer on par').waitFor();
  const odds = (await page.locator('.big-odds').textContent()) ?? '';
  const budgets = await page.locator('.holes-table tbody td strong').allTextContents();
  const sum = budgets.reduce((total, text) => total + Number(text), 0);
  demand(sum === 89, `"beat 90" is ${odds}; budgets of 18 holes add up to ${sum}`);
  await picture(page, 'target');

  await show(page, 'The day');
  await page.getByLabel('Allergies, with commas').fill('nut');
  await page.getByText('Take care').first().waitFor();
  await show(page, 'Cards');
  await page.getByText('All 18 cards are made').waitFor({ timeout: LONG_MS });
  await picture(page, 'cards');
  for (const paper of PAPERS) {
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper);
    for (const style of STYLES) {
      await page.getByRole('radio', { name: style }).check();
      const path = await print(page, `cards-${paper}-${style.toLowerCase().replace(' ', '-')}`);
      const text = textOf(path);
      const missing = SCORES.flatMap((_, i) => (hasCard(text, i + 1) ? [] : [i + 1]));
      demand(missing.length === 0, `${paper}, ${style}: ${pagesOf(path)} pages, cards of 18 holes`);
    }
  }
  await show(page, 'The day');
  for (const [paper, style] of [
    ['a4', 'Normal'],
    ['letter', 'Large print'],
    ['a6', 'Normal'],
    ['a6', 'Large print'],
  ] as const) {
    await show(page, 'Cards');
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper);
    await page.getByRole('radio', { name: style }).check();
    await show(page, 'The day');
    const path = await print(page, `day-${paper}-${style.toLowerCase().replace(' ', '-')}`);
    demand(
      textOf(path).includes('Allergies: nut'),
      `the day's sheet on ${paper}, ${style}: ${pagesOf(path)} pages`,
    );
  }

  await show(page, 'After the round');
  await page.getByRole('button', { name: 'Enter a round played today' }).click();
  const keys = await enterRound(page);
  const seconds = keys * KEY_S + 3 * SCORES.length * MIND_S;
  demand(
    seconds < 180,
    `18 holes entered with ${keys} keystrokes: about ${Math.round(seconds)} s for an average typist (keystroke-level model)`,
  );
  const total = SCORES.reduce((a, b) => a + b, 0);
  await page.locator('[data-save-state="saved"]').waitFor();
  const review = page.getByText(new RegExp(`${total} against \\d+\\.\\d expected`));
  await review.waitFor();
  say((await review.textContent()) ?? '');
  await picture(page, 'after');

  for (const hole of [1, 4, 9, 13, 17]) {
    await page
      .getByRole('button', { name: `places of the shots on hole ${hole}`, exact: false })
      .first()
      .click();
    const map = page.locator('.hole-map');
    const box = (await map.boundingBox())!;
    await map.click({ position: { x: box.width * 0.56, y: box.height * 0.5 } });
  }
  await picture(page, 'places');
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByLabel('I allow the shots of this round').check();
  await page.getByRole('button', { name: /^Add .* shots? to a copy of/ }).click();
  const change = page.getByText(/Expected score \d+\.\d → \d+\.\d/);
  await change.waitFor({ timeout: LONG_MS });
  demand(!/\(0\.00\)/u.test((await change.textContent()) ?? ''), (await change.textContent()) ?? '');
  await picture(page, 'next-plan');
  await show(page, 'Target');
  const target = await settles(
    () => page.locator('.big-odds').textContent(),
    (text) => text !== null,
  );
  say(
    `the target of the copied player is still beat 90: ${await page.getByLabel('Beat', { exact: true }).inputValue()}, now ${target}`,
  );
}

async function enterRound(page: Page): Promise<number> {
  let keys = 0;
  const type = async (text: string): Promise<void> => {
    await page.keyboard.type(text);
    keys += text.length;
  };
  const press = async (key: string): Promise<void> => {
    await page.keyboard.press(key);
    keys += 1;
  };
  const focused = (tag: string): Promise<unknown> =>
    page.waitForFunction((wanted) => document.activeElement?.matches(wanted) ?? false, tag);
  await page.getByLabel('Score on hole 1', { exact: true }).focus();
  for (const [i, score] of SCORES.entries()) {
    await type(String(score));
    await focused('[data-field="putts"]');
    await type('2');
    await focused('select');
    await press('Tab');
    await type(i % 3 === 0 ? 'r' : 'f');
    await press('Enter');
  }
  return keys;
}

function show(page: Page, name: string): Promise<void> {
  return page.getByRole('navigation', { name: 'Pages of the round' }).getByText(name).click();
}

async function print(page: Page, name: string): Promise<string> {
  const path = join(folder, `${name}.pdf`);
  writeFileSync(path, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  return path;
}

async function picture(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: join(folder, `${name}.png`) });
}

function textOf(path: string): string {
  return execFileSync('pdftotext', [path, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
}

function hasCard(text: string, hole: number): boolean {
  return new RegExp(`^${hole}$`, 'mu').test(text);
}

function pagesOf(path: string): number {
  return Number(/Pages:\s+(\d+)/u.exec(execFileSync('pdfinfo', [path], { encoding: 'utf8' }))?.[1] ?? 0);
}
