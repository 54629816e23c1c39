/** The whole path of a round: a target and its odds, cards and the day's sheet on paper, the round typed in, the plan changed. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { eighteenHolesText, threeClubsText } from '../renderer/round/eighteen.ts';
import { openWindow, settles, startBrowser, type TestWindow } from './window.ts';

const POINT_PER_MM = 72 / 25.4;
const YARD_MM = 914.4;

/** Width of the scale bars' lines in the drawing, millimetres: by it they are found in the file. */
const BAR_WIDTH = '0.293';

describe('a round from target to learning', () => {
  let browser: Browser;
  let window: TestWindow;
  let page: Page;
  const paper = mkdtempSync(join(tmpdir(), 'holewright-round-'));

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openWindow(browser, {
      files: { 'eighteen.geojson': eighteenHolesText(), 'few-clubs.json': threeClubsText() },
      lastOpen: { course: 'eighteen.geojson', player: 'few-clubs.json' },
    });
    ({ page } = window);
    await page.getByRole('button', { name: 'Round', exact: true }).click();
  });
  afterAll(async () => {
    rmSync(paper, { recursive: true, force: true });
    await window.close();
    await browser.close();
  });

  const show = (name: string) =>
    page.getByRole('navigation', { name: 'Pages of the round' }).getByText(name).click();

  async function pdf(name: string): Promise<string> {
    const path = join(paper, name);
    writeFileSync(path, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    return path;
  }

  it('says what is not worked out yet, then the odds of the target that is set', async () => {
    await page.getByLabel('Beat', { exact: true }).fill('76');
    await page
      .getByText(/of 18 holes are worked out/)
      .first()
      .waitFor();
    await page.getByText('All 18 holes are worked out').waitFor({ timeout: 200_000 });
    await page.getByText('Chance to beat 76: 75 or fewer on par 54').waitFor();
    const chance = async (): Promise<number> =>
      Number.parseInt((await page.locator('.big-odds').textContent()) ?? '', 10);
    const at76 = await chance();
    expect(at76).toBeGreaterThan(5);
    expect(at76).toBeLessThan(95);
    expect(await page.locator('.holes-table tbody tr').count()).toBe(18);
    // Budgets add up to the last score that beats the target.
    const budgets = await page.locator('.holes-table tbody td strong').allTextContents();
    expect(budgets.reduce((sum, text) => sum + Number(text), 0)).toBe(75);
    await page.getByLabel('Beat', { exact: true }).fill('73');
    await settles(chance, (now) => now < at76);
  });

  it('prints a card for each hole to scale, with text that can be taken out', async () => {
    await show('Cards');
    await page.getByText('All 18 cards are made').waitFor();
    const path = await pdf('cards.pdf');
    // Eighteen cards and the card of the round, four to a sheet.
    expect(execFileSync('pdfinfo', [path], { encoding: 'utf8' })).toMatch(/Pages:\s+5\b/);
    const text = execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
    for (const words of ['72 or fewer', 'tee Oak', 'play for', 'Miss', 'tee club', 'Eat:'])
      expect(text).toContain(words);
    expect(text).not.toContain('Cards to carry');
    const bars = barsOf(path, 2);
    expect(bars.length).toBeGreaterThanOrEqual(8);
    for (const { lengthPt, yards, scale } of bars) {
      const printed = (lengthPt / POINT_PER_MM) * scale;
      expect(Math.abs(printed / (yards * YARD_MM) - 1)).toBeLessThan(0.005);
    }
  });

  it('prints on A6, one card to a page, and as a booklet on both sides', async () => {
    await page.getByRole('combobox', { name: 'Paper' }).selectOption('a6');
    const a6 = await pdf('a6.pdf');
    expect(execFileSync('pdfinfo', [a6], { encoding: 'utf8' })).toMatch(/Pages:\s+19\b/);
    await page.getByRole('combobox', { name: 'Paper' }).selectOption('booklet-a4');
    const booklet = await pdf('booklet.pdf');
    expect(execFileSync('pdfinfo', [booklet], { encoding: 'utf8' })).toMatch(/Pages:\s+6\b/);
    await page.getByRole('combobox', { name: 'Paper' }).selectOption('a4');
  });

  it('prints the sheet of the day', async () => {
    await show('The day');
    await page.getByLabel('Tee-off').fill('25:00');
    await page.getByText('no time of day').waitFor();
    await page.getByLabel('Tee-off').fill('10:10');
    await page.getByLabel('Allergies, with commas').fill('nut');
    const path = await pdf('day.pdf');
    expect(execFileSync('pdfinfo', [path], { encoding: 'utf8' })).toMatch(/Pages:\s+[12]\b/);
    const text = execFileSync('pdftotext', [path, '-'], { encoding: 'utf8' });
    for (const words of ['Tee-off 10:10', 'Allergies: nut', 'Gentle warm-up', 'Thunder', 'green speed today'])
      expect(text).toContain(words);
    expect(text).not.toContain('handful of nuts');
  });

  it('takes a round from the card by keyboard alone and keeps it in a file', async () => {
    await show('After the round');
    await page.getByRole('button', { name: 'Enter a round played today' }).click();
    await page.getByLabel('Score on hole 1', { exact: true }).focus();
    for (let hole = 1; hole <= 18; hole++) {
      await page.keyboard.type(hole % 3 === 0 ? '5' : '4');
      await focused(page, 'putts');
      await page.keyboard.type('2');
      await focused(page, null);
      await page.keyboard.press('Tab');
      await page.keyboard.type('r');
      await page.keyboard.press('Enter');
    }
    expect(await page.locator('[data-total="score"]').textContent()).toBe('78');
    await page.locator('[data-save-state="saved"]').waitFor();
    const name = readdirSync(window.workspace).find((file) => file.includes('round'));
    const saved = JSON.parse(readFileSync(join(window.workspace, name!), 'utf8')) as {
      played: { score: number; putts: number; teeClub: string; teeEnd: string }[];
      plan: { holes: unknown[] };
    };
    expect(saved.played).toHaveLength(18);
    expect(saved.played[17]).toMatchObject({ score: 5, putts: 2, teeEnd: 'rough' });
    expect(saved.plan.holes).toHaveLength(18);
    await page.getByText(/78 against \d+\.\d expected: \d+\.\d strokes lost/).waitFor();
    await page.getByText('The club on the card was played from 18 of 18 tees.').waitFor();
  });

  it('undoes a typed score and brings it back', async () => {
    await page.getByLabel('Score on hole 4', { exact: true }).fill('9');
    await settles(
      () => page.locator('[data-total="score"]').textContent(),
      (sum) => sum === '83',
    );
    await page.getByRole('button', { name: 'Undo: score of hole 4 (Ctrl+Z)' }).click();
    expect(await page.locator('[data-total="score"]').textContent()).toBe('78');
  });

  it('adds shots to the player only with consent, and says how the next plan changes', async () => {
    for (const hole of [14, 15, 16, 17, 18]) {
      await page.getByRole('button', { name: `places of the shots on hole ${hole}` }).click();
      const map = page.locator('.hole-map');
      const box = (await map.boundingBox())!;
      // Well past the green and to the right: longer and wider than the plan took the club to be.
      await map.click({ position: { x: box.width * 0.62, y: box.height * 0.06 } });
    }
    await page.getByRole('button', { name: 'Done' }).click();
    expect(await page.getByRole('button', { name: /^Add .* shot/ }).count()).toBe(0);
    await page.getByLabel('I allow the shots of this round').check();
    await page.getByRole('button', { name: 'Add 5 shots to' }).click();
    await page.getByText('The next plan changes').waitFor();
    await page.getByText(/7-iron full: 5 more shots/).waitFor();
    const change = page.getByText(/Expected score \d+\.\d → \d+\.\d/);
    await change.waitFor({ timeout: 200_000 });
    expect(await change.textContent()).not.toContain('(0.00)');
    const player = readFileSync(join(window.workspace, 'few-clubs.json'), 'utf8');
    expect((JSON.parse(player) as { shots: unknown[] }).shots).toHaveLength(5);
  });

  it('breaks no rule of the content policy and throws nothing', () => {
    expect(window.complaints).toEqual([]);
  });
});

/** Waits until a field of this name (null: any list) has the focus. */
async function focused(page: Page, field: string | null): Promise<void> {
  await page.waitForFunction(
    (name) =>
      name === null
        ? document.activeElement instanceof HTMLSelectElement
        : document.activeElement?.getAttribute('data-field') === name,
    field,
  );
}

interface Bar {
  readonly lengthPt: number;
  readonly yards: number;
  readonly scale: number;
}

/** The scale bars of one page, in the file's own coordinates, with what is written beside them. */
function barsOf(path: string, pageNumber: number): readonly Bar[] {
  const at = ['-f', String(pageNumber), '-l', String(pageNumber)];
  const svg = execFileSync('pdftocairo', ['-svg', ...at, path, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
  const lengths = svg
    .split('<path')
    .filter((part) => part.includes(`stroke-width:${BAR_WIDTH};`))
    .flatMap((part) => {
      const [x1, x2] = [.../[ML] (-?[\d.]+) /gu[Symbol.matchAll](part)].map((found) => Number(found[1]));
      const factor = Number(/matrix\(([\d.]+)/u.exec(part)?.[1]);
      return x1 === undefined || x2 === undefined ? [] : [Math.abs(x2 - x1) * factor];
    })
    .sort((a, b) => a - b);
  const text = execFileSync('pdftotext', [...at, path, '-'], { encoding: 'utf8' });
  const told = [...text.matchAll(/(\d+) yd, 1:(\d+)/gu)]
    .map((found) => ({ yards: Number(found[1]), scale: Number(found[2]) }))
    .sort((a, b) => a.yards / a.scale - b.yards / b.scale);
  expect(told).toHaveLength(lengths.length);
  return lengths.map((lengthPt, i) => ({ lengthPt, ...told[i]! }));
}
