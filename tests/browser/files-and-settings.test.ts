/** Files that are broken, changed or missing; units, theme, and what is kept over a reload. */

import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { keptPlans } from '../../electron/files/kept-plans.ts';
import { smallCourse, smallCourseText } from '../renderer/small-course.ts';
import { openSmallWindow, openWindow, planReady, settles, startBrowser, type TestWindow } from './window.ts';

/** Test course, and a file that cannot be a course. */
async function openBesideBroken(browser: Browser): Promise<TestWindow> {
  const broken = smallCourse();
  const features = broken.features as { geometry: { coordinates: unknown } }[];
  features[0]!.geometry.coordinates = [
    [200, 52],
    [4, 52],
  ];
  features[10]!.geometry.coordinates = [[4, 52], 'north'];
  const window = await openSmallWindow(browser, { files: { 'broken.geojson': JSON.stringify(broken) } });
  await planReady(window.page);
  return window;
}

describe('with a course open', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openBesideBroken(browser);
  });
  afterAll(async () => {
    await window.close();
    await browser.close();
  });

  it('lists every fault of a broken course and leaves the open one alone', async () => {
    const { page } = window;
    await page.getByLabel('Course', { exact: true }).selectOption({ label: 'broken.geojson' });
    const notice = page.getByRole('alert');
    await notice.waitFor();
    expect(await notice.textContent()).toContain('broken.geojson could not be opened');
    expect(await notice.textContent()).toContain('Test course stays open');
    const faults = await notice.locator('.faults li').allTextContents();
    expect(faults.length).toBeGreaterThanOrEqual(2);
    for (const fault of faults) expect(fault).toMatch(/^.+: .+\./);
    expect(await page.locator('.option').count()).toBeGreaterThan(1);
    // The list goes back to what is open.
    const selected = await page
      .getByLabel('Course', { exact: true })
      .evaluate((select) => (select as HTMLSelectElement).selectedOptions[0]?.text);
    expect(selected).toBe('Test course');
    await notice.getByRole('button', { name: 'Close this notice' }).click();
    await notice.waitFor({ state: 'detached' });
  });

  it('tells of a change on disk and reads the file again when asked', async () => {
    const { page, workspace } = window;
    const changed = smallCourse();
    changed.holewright.courseName = 'Changed course';
    await writeFile(join(workspace, 'small.geojson'), JSON.stringify(changed));
    await page.getByText('small.geojson was changed by another program').waitFor();
    await page.getByRole('button', { name: 'Read it again' }).click();
    await settles(
      () =>
        page
          .getByLabel('Course', { exact: true })
          .evaluate((select) => (select as HTMLSelectElement).selectedOptions[0]?.text),
      (name) => name === 'Changed course',
    );
    await page.getByRole('alert').waitFor({ state: 'detached' });
  });

  it('brings in a file that the person picks', async () => {
    const { page } = window;
    const picked = smallCourse();
    picked.holewright.courseName = 'Brought in';
    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring in a course file' }).click();
    await (await choosing).setFiles({
      name: 'brought.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(JSON.stringify(picked)),
    });
    await settles(
      () =>
        page
          .getByLabel('Course', { exact: true })
          .evaluate((select) => (select as HTMLSelectElement).selectedOptions[0]?.text),
      (name) => name === 'Brought in',
    );
  });

  it('follows the system from light to dark', async () => {
    const { page } = window;
    const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    await page.locator('.hole-row').first().waitFor();
    const light = await paper();
    await page.emulateMedia({ colorScheme: 'dark' });
    await settles(paper, (colour) => colour !== light);
  });
});

describe('files and settings', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(() => window.close());
  afterAll(() => browser.close());

  it('tells what is odd in a file that opens all the same, and shows its names as text, whatever they hold', async () => {
    const odd = smallCourse();
    const name = '<img src=x onerror="document.title=1">';
    odd.holewright.courseName = name;
    const hole = (odd.features as { properties: Record<string, unknown> }[])[0]!;
    hole.properties = { ...hole.properties, par: 'four', name };
    window = await openSmallWindow(browser, { files: { 'small.geojson': JSON.stringify(odd) } });
    const { page } = window;
    await page.getByRole('button', { name: /notes? on the course file/ }).click();
    expect(await page.getByRole('alert').textContent()).toMatch(
      /Notes on small\.geojson.*hole 1.*par is "four"/,
    );
    await planReady(page);
    expect(await page.locator('.hole-title h2').textContent()).toContain(name);
    expect(await page.locator('img').count()).toBe(0);
    expect(window.complaints).toEqual([]);
  });

  it('keeps units, theme, language, the open files and the plan over a reload', async () => {
    const plans = { kept: 0, found: 0 };
    window = await openSmallWindow(browser, {
      plans: (folder) => {
        const cache = keptPlans(folder);
        return {
          ...cache,
          keep: async (key, text) => {
            const answer = await cache.keep(key, text);
            plans.kept += 1;
            return answer;
          },
          kept: async (key) => {
            const answer = await cache.kept(key);
            if (answer.ok && answer.value.text !== null) plans.found += 1;
            return answer;
          },
        };
      },
    });
    const { page, settings } = window;
    await planReady(page);
    expect(await page.locator('.hole-length').first().textContent()).toContain('yd');
    await page.getByRole('radio', { name: 'Metres' }).check();
    expect(await page.locator('.hole-length').first().textContent()).toMatch(/145\u202fm/);
    await page.getByLabel('Theme').selectOption('dark');
    await page.getByLabel('Language').selectOption('de');
    expect(await page.getByRole('button', { name: 'Planung' }).count()).toBe(1);
    expect(await page.locator('[data-announcement]').textContent()).toMatch(/^Loch|^$/);
    await settles(
      () => settings.read(),
      (answer) =>
        answer.ok &&
        answer.value.units === 'metres' &&
        answer.value.theme === 'dark' &&
        answer.value.language === 'de',
    );
    const table = page.locator('.options:not(.rough) table');
    const numbers = await table.textContent();
    await settles(
      () => Promise.resolve(plans.kept),
      (kept) => kept === 2,
    );
    await page.reload();
    // the plan of before, then the same worked out anew
    expect(await table.textContent()).toBe(numbers);
    expect(plans.found).toBe(1);
    await page.locator('[data-hole="1"] .advice-strokes').waitFor();
    expect(await table.textContent()).toBe(numbers);
    expect(await page.getByRole('radio', { name: 'Meter' }).isChecked()).toBe(true);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    expect(await page.locator('.advice-strokes').first().textContent()).toMatch(/^\d,\d\d$/);
    expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    expect(await page.locator('.hole-row').count()).toBe(3);
    // Who has seen the first walk is not led round again.
    expect(await page.locator('.tour-card').count()).toBe(0);
  });

  it('walks a newcomer round the window, and remembers that it did', async () => {
    window = await openSmallWindow(browser, { isFirstTime: true });
    const { page, settings } = window;
    const card = page.locator('.tour-card');
    await page.locator('.advice-card').waitFor();
    expect(await card.locator('[data-tour-said]').textContent()).toContain('What to hit, and the odds');
    const focused: (string | null)[] = [];
    for (const room of ['Plan', 'Plan', 'Player', 'Course', 'Round', 'Round']) {
      expect(await page.locator('.room-switch [aria-current]').textContent()).toBe(room);
      await page.locator('.tour-ring').waitFor();
      await card.getByRole('button', { name: 'Go to what is outlined' }).press('Enter');
      const into = await settles(
        () =>
          page.evaluate(() => {
            const { activeElement } = document;
            const box = activeElement?.getBoundingClientRect();
            const ring = document.querySelector('.tour-ring')?.getBoundingClientRect();
            const isWithin =
              box !== undefined && ring !== undefined && box.top >= ring.top && box.bottom <= ring.bottom;
            return isWithin ? (activeElement?.textContent ?? '') : null;
          }),
        (text) => text !== null,
      );
      focused.push(into);
      await card.locator('.main-button').click();
    }
    expect(focused.slice(2)).toEqual(['Shots', 'Choose and change', 'Cards', 'Playing to it']);
    expect(await page.locator('.room-switch [aria-current]').textContent()).toBe('Plan');
    expect(await card.count()).toBe(0);
    await settles(
      () => settings.read(),
      (kept) => kept.ok && kept.value.tourSeen === true,
    );
  });

  it('says what to do next where a hole cannot be planned', async () => {
    const course = smallCourse();
    const features = course.features as { properties: Record<string, unknown> }[];
    course.features = features.filter(
      ({ properties }) => !(properties['golf'] === 'green' && properties['ref'] === '1'),
    );
    window = await openSmallWindow(browser, { files: { 'small.geojson': JSON.stringify(course) } });
    const { page } = window;
    const fault = page.locator('.fault-box');
    await fault.waitFor();
    expect(await fault.textContent()).toMatch(/hole 1: .*green/);
    await page.locator('[data-hole="2"]').click();
    await planReady(page);
  });

  it('opens the demo where what was open last is gone', async () => {
    window = await openWindow(browser, {
      files: { 'other.geojson': smallCourseText() },
      lastOpen: { course: 'gone.geojson', player: 'gone.json' },
    });
    const { page } = window;
    await page.locator('[data-hole="18"]').waitFor();
  });
});
