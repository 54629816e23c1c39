/** Changing a course in a real browser: without a mouse, with it, in two windows, with a map file, for everybody. */

import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { Hand, mapEdited, openCourseRoom, savedByItself, showPanel, undoTitle } from './course-drawing.ts';
import { violationsInBothThemes } from './axe.ts';
import { openSmallWindow, openWindow, settles, startBrowser, type TestWindow } from './window.ts';

const said = (page: Page): Promise<string | null> =>
  page.locator('.drawing-line [role="status"]').textContent();

describe('changing a course', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openSmallWindow(browser);
    await openCourseRoom(window.page);
    await mapEdited(window.page);
  });
  afterAll(async () => {
    await window.close();
    await browser.close();
  });

  it('needs no mouse: a bunker is drawn, a corner nudged, all of it undone', async () => {
    const { page } = window;
    const hand = new Hand(page);
    await hand.press('F6', 'b', 'k', 'ArrowUp', 'Enter');
    for (const arrow of ['ArrowRight', 'ArrowUp', 'ArrowLeft'])
      await hand.press(arrow, arrow, arrow, 'Enter');
    await hand.press('Shift+Enter');
    await settles(
      () => said(page),
      (words) => words === 'Add bunker of hole 1: done.',
    );
    await hand.press('Escape', '.', '.', 'ArrowRight', 'ArrowRight', 'ArrowRight');
    await settles(
      () => undoTitle(page),
      (title) => title.includes('Move a corner of bunker of hole 1'),
    );
    await hand.press('Control+z');
    await settles(
      () => undoTitle(page),
      (title) => title.includes('Add bunker of hole 1'),
    );
    await hand.press('Control+z');
    await settles(
      () => undoTitle(page),
      (title) => title === 'Nothing to undo',
    );
    expect(window.complaints).toEqual([]);
  });

  it('tells a fault at once, leads to it and mends it', async () => {
    const { page } = window;
    await page.locator('input[name="drawing-listed"][value="features"]').check();
    await page.getByPlaceholder('Find').fill('front');
    await page.locator('.feature-row').click();
    // its latitude, written by hand: the hole position goes far off the green
    await page.getByLabel('Latitude').fill('52.0005');
    await page.keyboard.press('Enter');
    await showPanel(page, 'checks');
    const fault = page.locator('[data-fault="position-off-green"]');
    await fault.waitFor();
    await fault.locator('.fault-place').click();
    await fault.getByRole('button', { name: 'Move it to the middle of the green' }).click();
    await fault.waitFor({ state: 'detached' });
    expect(window.complaints).toEqual([]);
  });

  it('drags what is chosen, and refuses with words what cannot be done', async () => {
    const { page } = window;
    const hand = new Hand(page);
    await page.locator('input[name="drawing-listed"][value="features"]').check();
    await page.getByPlaceholder('Find').fill('bunker');
    await page.locator('.feature-row').click();
    await hand.drag({ x: 0.5, y: 0.5 }, { x: 0.52, y: 0.48 });
    await settles(
      () => undoTitle(page),
      (title) => title.includes('Move bunker of hole 1'),
    );
    await hand.button('Smooth');
    await settles(
      () => undoTitle(page),
      (title) => title.includes('Smooth bunker'),
    );
    await page.getByLabel('off by at most').fill('100000');
    await hand.button('Simplify');
    await settles(
      () => said(page),
      (words) => words?.includes('up to 1000') === true,
    );
    await savedByItself(page);
  });
});

describe('a course', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(() => window.close());
  afterAll(() => browser.close());

  it('in two windows is for one of them, and for the other once that is closed', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await openCourseRoom(page);
    await mapEdited(page);
    const second = await page.context().newPage();
    await second.goto(page.url());
    await openCourseRoom(second);
    await second.getByText('Another window has had this course open').waitFor();
    expect(await second.locator('.kind-button', { hasText: 'Bunker' }).isDisabled()).toBe(true);
    await page.close();
    await settles(
      async () => {
        const again = second.getByRole('button', { name: 'Try again' });
        // it may go by itself between the look and the click
        if (await again.isVisible()) await again.click({ timeout: 2000 }).catch(() => undefined);
        return second.locator('.kind-button', { hasText: 'Bunker' }).isEnabled();
      },
      (enabled) => enabled,
      20_000,
    );
  });

  it('takes a map file in as one step, after a look at what it brings', async () => {
    window = await openWindow(browser);
    const { page } = window;
    await openCourseRoom(page);
    await showPanel(page, 'course');
    await page.getByText('Begin another course').click();
    await page.getByLabel('Name of the course').fill('Brought in');
    await page.keyboard.press('Enter');
    await mapEdited(page);
    await showPanel(page, 'course');
    const map = join(import.meta.dirname, '../course/import/fixtures/invented-links.osm');
    await page.getByLabel('Map file to bring in').setInputFiles(map);
    await page.getByText('2 hole lines').waitFor();
    await page.getByText('Put to no hole').waitFor();
    expect(await undoTitle(page)).toBe('Nothing to undo');
    await page.getByRole('button', { name: 'Take it in' }).click();
    await settles(
      () => undoTitle(page),
      (title) => title.includes('from OpenStreetMap'),
    );
    await page.locator('.drawn-hole[data-hole="2"]').waitFor();
    await page.keyboard.press('Control+z');
    await settles(
      () => undoTitle(page),
      (title) => title === 'Nothing to undo',
    );
    expect(window.complaints).toEqual([]);
  });

  it('axe-core finds nothing wrong, in light and in dark', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await openCourseRoom(page);
    await mapEdited(page);
    await page.locator('input[name="drawing-listed"][value="features"]').check();
    await page.getByPlaceholder('Find').fill('green of hole 1');
    await page.locator('.feature-row').first().click();
    expect(await violationsInBothThemes(page)).toEqual([]);
    await showPanel(page, 'course');
    for (const part of ['Under the drawing', 'Bring in a map file', 'Take it out', 'Begin another course'])
      await page.locator('summary', { hasText: part }).click();
    expect(await violationsInBothThemes(page)).toEqual([]);
    await showPanel(page, 'hole');
    await page.getByRole('button', { name: 'Keys' }).click();
    expect(await violationsInBothThemes(page)).toEqual([]);
  });
});
