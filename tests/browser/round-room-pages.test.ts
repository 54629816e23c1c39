/** The room's other pages on two short holes: playing to an aim, trying out, over rounds, sharing; accessibility of all. */

import { readdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { openSmallWindow, settles, startBrowser, type TestWindow } from './window.ts';

const PAGES = [
  ...['Target', 'Playing to it', 'Cards', 'The day', 'After the round', 'Over rounds', 'Try it out'],
  'Share',
];

describe('the pages of the round', () => {
  let browser: Browser;
  let window: TestWindow;
  let page: Page;

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openSmallWindow(browser);
    ({ page } = window);
    await page.getByRole('button', { name: 'Round', exact: true }).click();
    await page.getByText('All 2 holes are worked out').waitFor({ timeout: 120_000 });
  });
  afterAll(async () => {
    await window.close();
    await browser.close();
  });

  const show = (name: string) =>
    page
      .getByRole('navigation', { name: 'Pages of the round' })
      .getByRole('button', { name: new RegExp(`^${name}`) })
      .click();

  it('weighs points and a match too', async () => {
    await show('Playing to it');
    await page.getByRole('radio', { name: 'Stableford points' }).check();
    await page.getByLabel('Points to reach').fill('4');
    await page.getByText('with the best choice on each tee').waitFor();
    await page.getByRole('radio', { name: 'A match' }).check();
    await page.getByText('A halved match counts half.').waitFor({ timeout: 60_000 });
    await page.getByRole('radio', { name: 'The target' }).check();
  });

  it('works out what would help, with progress, and stops when asked', async () => {
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByRole('progressbar', { name: 'Improvements worked out' }).waitFor();
    await page.getByText('driver 10 % tighter').waitFor({ timeout: 60_000 });
    const stop = page
      .getByRole('region', { name: 'What would help most' })
      .getByRole('button', { name: 'Stop' });
    if ((await stop.count()) > 0) {
      await stop.click();
      await page.getByText('Stopped; what was worked out stays.').waitFor();
    }
  });

  it('plays a hole at the desk and again with the same luck', async () => {
    await show('Try it out');
    await page.getByRole('button', { name: 'Play', exact: true }).click();
    await page.locator('.places-list tbody tr').first().waitFor();
    const end = await page.locator('.places-list tbody tr').first().textContent();
    await page.getByRole('button', { name: 'Plan to the end' }).click();
    await page.getByText('Holed out in').waitFor();
    await page.getByRole('button', { name: 'From the tee, same luck' }).click();
    await page.getByText('Other ways with this luck').waitFor();
    await page.getByRole('button', { name: 'Play the plan’s choice' }).click();
    await settles(
      () => page.locator('.places-list tbody tr').first().textContent(),
      (text) => text === end,
    );
  });

  it('aims by keyboard on the map', async () => {
    await page.getByRole('button', { name: 'From the tee, other luck' }).click();
    await page.locator('.hole-map').focus();
    const aim = () => page.locator('circle.map-aim').getAttribute('cx');
    const before = await aim();
    for (let i = 0; i < 4; i++) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press('Enter');
    await settles(aim, (now) => now !== before);
  });

  it('shares course, player and round in one file, and shows what a shared file carries', async () => {
    await show('Share');
    await page.getByRole('button', { name: 'Make the file' }).click();
    await page.getByText('Written:').waitFor();
    expect(readdirSync(window.workspace).some((name) => name.includes('to share'))).toBe(true);
    await show('After the round');
    await page.getByRole('combobox', { name: 'Round' }).selectOption({ index: 1 });
    await page.locator('[data-save-state="saved"]').waitFor();
    await show('Share');
    await page.getByText('the course Test course, 2 holes').waitFor();
    await page.getByRole('button', { name: 'Add them to the workspace and open them' }).click();
    await page.getByText('Added and opened.').waitFor();
    await page.getByText('All 2 holes are worked out').waitFor({ timeout: 120_000 });
  });

  it('tells trends only from enough rounds', async () => {
    await show('After the round');
    await page.getByLabel('Score on hole 1', { exact: true }).fill('4');
    await page.locator('[data-save-state="saved"]').waitFor();
    await show('Over rounds');
    // Two holes say too little per eighteen.
    await page.getByText(/fewer than 9 holes/).waitFor();
  });

  it('axe-core finds nothing wrong on any of them', async () => {
    for (const name of PAGES) {
      await show(name);
      if (name === 'After the round') {
        const begin = page.getByRole('button', { name: 'Enter a round played today' });
        if ((await begin.count()) > 0) await begin.click();
        await page.locator('.entry-table').waitFor();
        await page.getByLabel('Score on hole 1', { exact: true }).fill('4');
        await page.getByRole('button', { name: 'places of the shots on hole 1' }).click();
        await page.locator('.hole-map').waitFor();
      }
      await page.waitForTimeout(300);
      expect(await violations(page), name).toEqual([]);
    }
  });

  it('keeps its contrast in the dark', async () => {
    await page.getByLabel('Theme').selectOption('dark');
    for (const name of PAGES) {
      await show(name);
      expect(await violations(page, ['color-contrast']), name).toEqual([]);
    }
  });

  it('brings the target, the paper and the day back when the window is opened again', async () => {
    await show('Target');
    await page.getByLabel('Beat', { exact: true }).fill('11');
    await show('Cards');
    await page.getByRole('combobox', { name: 'Paper' }).selectOption('booklet-letter');
    await show('The day');
    await page.getByLabel('Allergies, with commas').fill('nut');
    for (const [name, value] of [
      ['It rolled, paces', '10'],
      ['on a green of, feet', '10'],
      ['Today up, paces', '9'],
      ['down, paces', '9'],
    ] as const)
      await page.getByLabel(name, { exact: true }).fill(value);
    await page.getByRole('button', { name: 'Use it today' }).click();
    await settles(
      async () => JSON.stringify(await window.settings.read()),
      (text) => text.includes('nut') && text.includes('greenSpeedFt'),
    );
    await page.reload();
    await page.getByRole('button', { name: 'Round', exact: true }).click();
    // The room is there before the settings have been read.
    await settles(
      () => page.getByLabel('Beat', { exact: true }).inputValue(),
      (value) => value === '11',
    );
    await show('Cards');
    expect(await page.getByRole('combobox', { name: 'Paper' }).inputValue()).toBe('booklet-letter');
    await show('The day');
    expect(await page.getByLabel('Allergies, with commas').inputValue()).toBe('nut');
    // One day with the plan's.
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    await page.getByRole('button', { name: /^Day.*greens 9 ft/i }).waitFor();
  });

  it('breaks no rule of the content policy and throws nothing', () => {
    expect(window.complaints).toEqual([]);
  });
});
