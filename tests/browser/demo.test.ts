/** The window as it first opens: the invented demo course and player. */

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openWindow, planReady, startBrowser, type TestWindow } from './window.ts';

describe('a first start', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openWindow(browser);
  });
  afterAll(async () => {
    await window.close();
    await browser.close();
  });

  it('opens the demo course and player, both marked as invented', async () => {
    const { page } = window;
    await page.locator('[data-hole="1"]').waitFor();
    const shown = await page
      .locator('.file-picker select')
      .evaluateAll((selects) =>
        selects.map((select) => (select as HTMLSelectElement).selectedOptions[0]?.textContent),
      );
    expect(shown).toHaveLength(2);
    for (const words of shown) expect(words).toContain('(invented demo)');
    expect(await page.locator('.hole-title .tag').textContent()).toBe('invented demo');
  });

  it('lists eighteen holes with par, stroke index and length', async () => {
    const rows = window.page.locator('.hole-row[data-hole]:not([data-hole="all"])');
    expect(await rows.count()).toBe(18);
    for (const text of await rows.allTextContents())
      expect(text).toMatch(/\d+.*Par [345] · SI \d+.*\d+\u202fyd/);
  });

  it('works out the hole that is clicked before the others, a rough answer first', async () => {
    const { page } = window;
    await page.locator('[data-hole="16"]').click();
    await page.locator('.options .option').first().waitFor();
    await planReady(page);
    expect(await page.locator('.big-number').textContent()).toBe('16');
    expect(await page.locator('.option').count()).toBeGreaterThan(3);
    expect(await page.locator('.advice-reason').textContent()).toMatch(/\w+.*\./);
    expect(await page.locator('[data-announcement]').textContent()).toContain('Hole 16');
    expect(await page.locator('[data-hole="16"] .advice-strokes').textContent()).toMatch(/^\d\.\d\d$/);
  });

  it('stops the rest of the work when asked, and takes it up again', async () => {
    const { page } = window;
    await page.locator('.work-status').getByRole('button', { name: 'Stop' }).click();
    await page.locator('.hole-row', { hasText: 'stopped' }).first().waitFor();
    const ready = await page.locator('.advice-strokes').count();
    // The workers are free at once: another hole's rough answer comes although nothing runs in the background.
    await page.locator('[data-hole="3"]').click();
    await page.locator('.options .option').first().waitFor();
    // One that came to its end as the rest was stopped is kept: only this one must not have been worked out.
    expect(await page.locator('[data-hole="3"] .advice-strokes').count()).toBe(0);
    expect(await page.locator('.hole-row[data-hole="3"]').textContent()).toContain('stopped');
    await page.locator('.work-status').getByRole('button', { name: 'Go on' }).click();
    await planReady(page);
    expect(await page.locator('.advice-strokes').count()).toBeGreaterThan(ready);
  });

  it('shows the whole course and opens a hole from its number there', async () => {
    const { page } = window;
    await page.locator('[data-hole="all"]').click();
    await page.locator('.hole-button').first().waitFor();
    expect(await page.locator('.hole-button').count()).toBe(18);
    await page.getByRole('button', { name: 'Hole 7, par 4' }).click();
    expect(await page.locator('.big-number').textContent()).toBe('7');
  });

  it('breaks no rule of the content policy and throws nothing', () => {
    expect(window.complaints).toEqual([]);
  });
});
