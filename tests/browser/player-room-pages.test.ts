/** The room's other pages: short game, distances, worth of shots, field sheet, photo, several players; and axe-core over all. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { smallPlayerText } from '../renderer/small-course.ts';
import { violationsInBothThemes } from './axe.ts';
import { openSmallWindow, settles, startBrowser, type TestWindow } from './window.ts';

const show = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

async function enter(page: Page): Promise<void> {
  await show(page, 'Player');
  await page.locator('.estimates').waitFor();
  await page.getByRole('button', { name: 'Saved', exact: true }).waitFor();
}

describe('pages of the player’s room', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(() => window.close());
  afterAll(() => browser.close());

  it('give axe-core nothing to find, in light and in dark', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await enter(page);
    const check = async (name: string): Promise<void> => {
      expect(await violationsInBothThemes(page), name).toEqual([]);
    };
    for (const name of [
      'Clubs',
      'Distances',
      'Shots',
      'Short game and putting',
      'Without a device',
      'Players',
    ]) {
      await show(page, name);
      await page.waitForTimeout(100);
      await check(name);
    }
    await show(page, 'Shots');
    const table = 'Club;Weite;Seite\nLucky;100,5;2\nLucky;weit;1\n';
    await page
      .getByLabel('Table of shots')
      .setInputFiles({ name: 'a.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
    await page.locator('.table-preview tbody tr').first().waitFor();
    await check('mapping');
    await show(page, 'Read the table');
    await page.locator('.rejected-rows').waitFor();
    await check('what was read');
    expect(window.complaints).toEqual([]);
  });

  it('turn putts into errors with intervals, print a field sheet alone on a page, measure balls in a photo', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await enter(page);
    await show(page, 'Short game and putting');
    const putting = page.getByRole('region', { name: 'Putting', exact: true });
    expect(await putting.textContent()).toContain('As the file states it');
    for (const [feet, holed] of [
      [3, 9],
      [6, 6],
      [10, 4],
      [20, 1],
    ] as const)
      await page.getByLabel(`Holed from ${feet} ft`).fill(String(holed));
    await show(page, 'Record this test');
    await settles(
      () => putting.textContent(),
      (words) => /\d\.\d\d°\d\.\d\d to \d\.\d\d.*From 36 putts on record/.test(words ?? ''),
    );
    await page.getByLabel('First putt from, ft').fill('24');
    await page.getByLabel('First one stopped').fill('-2,5');
    await page.getByLabel('First one stopped').press('Enter');
    await settles(
      () => putting.textContent(),
      (words) => words?.includes('From 38 putts') === true,
    );
    await page.getByLabel('Tried from a chip').fill('12');
    await page.getByLabel('Saved from a chip').fill('5');
    await page.getByLabel('Add up-and-downs from a chip').click();
    await page.getByText('5 of 12').waitFor();
    await page.getByLabel('Tried from a pitch').fill('2');
    await page.getByLabel('Saved from a pitch').fill('3');
    await page.getByLabel('Add up-and-downs from a pitch').click();
    await page.getByText('3 saved of 2 cannot be.').waitFor();

    // The sheet to take along, as it is printed.
    await show(page, 'Without a device');
    await page.locator('.field-sheet').waitFor();
    const folder = mkdtempSync(join(tmpdir(), 'holewright-sheet-'));
    try {
      const path = join(folder, 'sheet.pdf');
      writeFileSync(path, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      const text = execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
      expect(text).toContain('Field sheet');
      expect(text).toContain('never on a range in use');
      expect(text).toMatch(/Off line, L \/ R/);
      expect(text).not.toMatch(/Print the sheet|Pace and tape|Handicap/);
      expect(execFileSync('pdfinfo', [path], { encoding: 'utf8' })).toMatch(/Pages:\s+1\b/);
    } finally {
      rmSync(folder, { recursive: true });
    }

    // And a photo with two marks.
    await page.getByRole('radio', { name: 'Metres' }).check();
    await show(page, 'Without a device');
    await page.getByRole('radio', { name: 'Photo of the ground' }).check();
    const picture = join(import.meta.dirname, '..', '..', 'renderer', 'help', 'pictures', 'window.png');
    await page.getByLabel('Photo', { exact: true }).setInputFiles(picture);
    const stage = page.locator('.photo-stage');
    await stage.waitFor();
    await page.getByLabel('Nearer mark at').fill('50');
    await page.getByLabel('Farther mark at').fill('100');
    await page.getByLabel('Farther mark at').press('Tab');
    // A horizon at 0.3 of the height: marks at 50 and 100 m stand at 0.9 and 0.6, so 75 m at 0.7.
    const click = async (share: number): Promise<void> => {
      const box = (await stage.boundingBox())!;
      // The picture of 1180 by 740 points fills the stage one way and lies in its middle the other.
      const shown = Math.min(box.height, (box.width / 1180) * 740);
      await stage.click({ position: { x: box.width / 2, y: box.height / 2 + (share - 0.5) * shown } });
    };
    await click(0.9);
    await click(0.6);
    await click(0.7);
    await page.locator('.photo-balls li').waitFor();
    expect(await page.locator('.photo-balls li').first().textContent()).toMatch(/^75.m, straight/);
    await stage.focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByLabel('Hit with the').selectOption('7-iron');
    await show(page, 'Add 2 shots');
    await show(page, 'Shots');
    expect(await page.locator('.kept-shots h2').textContent()).toBe('2 shots in the file');
    expect(window.complaints).toEqual([]);
  });

  it('say what ten more shots would gain, list the players of the folder, compare two on one hole', async () => {
    const other = {
      ...(JSON.parse(smallPlayerText()) as object),
      name: 'Second Invented Player',
      handicap: 3,
    };
    window = await openSmallWindow(browser, {
      files: { 'second.player.json': JSON.stringify(other), 'odd.player.json': '{' },
    });
    const { page } = window;
    await enter(page);
    await show(page, 'Distances');
    const worth = page.getByRole('region', { name: 'Worth of more shots' });
    await worth.getByText('Takes a minute or two.').waitFor({ timeout: 120_000 });
    await worth.getByRole('button', { name: 'Work it out' }).click();
    await worth.getByRole('button', { name: 'Stop' }).click();
    expect(await worth.locator('table').count()).toBe(0);
    await worth.getByRole('button', { name: 'Work it out' }).click();
    await worth.getByText(/Knowing everything for sure would gain|Hardly any/).waitFor({ timeout: 120_000 });
    expect(await page.locator('.ladder svg').getAttribute('aria-label')).toMatch(
      /Driver carries \d+ yards on average, half of its solid strikes between \d+ and \d+/,
    );

    // Other players of the folder.
    await show(page, 'Players');
    const row = page.getByRole('row', { name: /Second Invented Player/ });
    expect(await row.textContent()).toMatch(/^Second Invented Player360/);
    expect(await page.getByRole('row', { name: /odd\.player\.json/ }).textContent()).toContain(
      'cannot be read',
    );
    await page.getByLabel('Second', { exact: true }).selectOption({ label: 'Second Invented Player' });
    await page.getByLabel('Hole', { exact: true }).selectOption({ label: '2 ' });
    await show(page, 'Compare them');
    const compared = page.locator('.compared');
    await compared.waitFor({ timeout: 120_000 });
    expect(await compared.textContent()).toMatch(/Strokes to hole out\d\.\d\d ± .*\d\.\d\d ± /);
    await page.getByRole('button', { name: 'Open second.player.json' }).click();
    await settles(
      () => page.locator('.person-card').getByLabel('Name').inputValue(),
      (name) => name === 'Second Invented Player',
    );
    expect(window.complaints).toEqual([]);
  });
});
