/** The player's room: a new player, changes with undo, saving, what was not saved after a crash, the demo. */

import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { parsePlayerDocumentText } from '../../core/player/parse.ts';
import { openSmallWindow, planReady, settles, startBrowser, type TestWindow } from './window.ts';

async function enter(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Player', exact: true }).click();
  await page.locator('.estimates').waitFor();
}

async function savedPlayer(window: TestWindow, name: string) {
  const read = parsePlayerDocumentText(await readFile(join(window.workspace, name), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.document;
}

const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true });
const saved = (page: Page) => page.getByRole('button', { name: 'Saved', exact: true });

describe('the player’s room', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(() => window.close());
  afterAll(() => browser.close());

  it('makes a player from a handicap and says whose numbers they are; makes a copy of the demo', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await enter(page);
    await page.getByRole('button', { name: 'New player' }).click();
    await page.getByLabel('Handicap').fill('ninety');
    await page.getByRole('button', { name: 'Make this player' }).click();
    expect(await page.getByRole('alert').textContent()).toContain('Type the handicap as a number');
    await page.getByLabel('Name').fill('Invented Newcomer');
    await page.getByLabel('Handicap').fill('21,5');
    await page.getByRole('radio', { name: 'Woman', exact: true }).check();
    await page.getByRole('radio', { name: 'Left-handed' }).check();
    await page.getByRole('button', { name: 'Make this player' }).click();
    const note = page.getByRole('note');
    await note.waitFor();
    expect(await note.textContent()).toMatch(/These are not your shots\..*handicap 21\.5, women/);
    expect(await page.locator('.club-row').count()).toBe(14);
    const made = await savedPlayer(window, 'invented-newcomer.player.json');
    expect(made).toMatchObject({ handicap: 21.5, group: 'women', hand: 'left', shots: [] });
    // The demo stays as it is; a copy of it is one's own.
    await page
      .getByLabel('Player', { exact: true })
      .first()
      .selectOption({ label: 'demo-player.json (invented demo)' });
    await page.getByText('This is a demo player and stays as it is.').waitFor();
    expect(await page.getByLabel('Loft').isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Make it yours' }).click();
    await saved(page).waitFor();
    expect(await page.getByLabel('Loft').isDisabled()).toBe(false);
    const copy = await savedPlayer(window, 'sample-player-invented-copy.player.json');
    expect(copy.shots).toHaveLength(412);
    expect(copy.invented).toBe(true);
    expect(window.complaints).toEqual([]);
  });

  it('refuses what cannot be; changes a club, undoes, redoes, saves, and the plan follows', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await enter(page);
    await page.getByLabel('Loft').fill('95');
    await page.getByLabel('Loft').press('Tab');
    expect(await page.locator('.field-fault').textContent()).toBe('Loft is a number from 0 to 80.');
    await page.locator('form').getByLabel('Name').fill('7-iron');
    await page.locator('form').getByLabel('Name').press('Enter');
    await page.getByText('The bag holds “7-iron” already.').waitFor();
    expect(await save(page).count()).toBe(0);
    const carry = async (): Promise<number> =>
      Number(
        /\d+/.exec(
          await page.locator('.club-row', { hasText: '7-iron' }).locator('.club-carry strong').innerText(),
        )?.[0],
      );
    const before = await carry();
    await page.locator('.club-name', { hasText: '7-iron' }).click();
    const stated = page.getByLabel('Carry, as you state it');
    await stated.fill('180');
    await stated.press('Tab');
    expect(await settles(carry, (now) => now === 180)).not.toBe(before);
    await page.getByRole('button', { name: /^Undo: stated carry of 7-iron/ }).click();
    await settles(carry, (now) => now === before);
    await page.getByRole('button', { name: /^Redo/ }).click();
    await settles(carry, (now) => now === 180);
    await page.getByLabel('7-iron goes out for the round').uncheck();
    expect(await page.locator('.club-list-head').textContent()).toContain('5 of 14');
    await page.getByLabel('7-iron goes out for the round').check();
    await page.keyboard.press('Control+s');
    await saved(page).waitFor();
    const document = await savedPlayer(window, 'few-clubs.json');
    expect(document.bag.find(({ name }) => name === '7-iron')?.stated?.carryM).toBeCloseTo(180 * 0.9144, 0);
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    await planReady(page);
    expect(window.complaints).toEqual([]);
  });

  it('brings back what was not saved, after the person has said so; one window at a time writes', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await enter(page);
    const handicap = page.locator('.person-card').getByLabel('Handicap');
    await handicap.fill('9');
    await handicap.press('Enter');
    await save(page).waitFor();
    await settles(
      async () =>
        (await readdir(window.workspace, { recursive: true })).some(
          (name) => name.includes('few-clubs') && name.includes('journal'),
        ),
      (there) => there,
      5000,
    );
    await page.waitForTimeout(500);
    await page.reload();
    await enter(page);
    await page.getByText(/Unsaved changes from \d\d:\d\d were found/).waitFor();
    expect(await handicap.inputValue()).toBe('17');
    await page.getByRole('button', { name: 'Take them up' }).click();
    expect(await handicap.inputValue()).toBe('9');
    await save(page).click();
    await saved(page).waitFor();
    expect((await savedPlayer(window, 'few-clubs.json')).handicap).toBe(9);
    await page.reload();
    await enter(page);
    await saved(page).waitFor();
    expect(await page.getByText(/Unsaved changes/).count()).toBe(0);
    // A second window of the same file may only look.
    const second = await page.context().newPage();
    await second.goto(page.url());
    await enter(second);
    await second.getByText('Only to be read: the file is being changed in another window.').waitFor();
    await second.close();
  });
});
