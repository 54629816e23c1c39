/** For people who do not see colours, use no mouse, or carry paper: axe-core, the help drawer, printing. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsInBothThemes } from './axe.ts';
import { openSmallWindow, planReady, startBrowser, type TestWindow } from './window.ts';

describe('accessibility and paper', () => {
  let browser: Browser;
  let window: TestWindow;

  // All share one window, in an order in which none is in another's way.
  beforeAll(async () => {
    browser = await startBrowser();
    window = await openSmallWindow(browser);
    await planReady(window.page);
  });
  afterAll(async () => {
    await window.close();
    await browser.close();
  });

  it('can be walked through by Tab, with the focus always to be seen', async () => {
    const { page } = window;
    const seen = new Set<string>();
    for (let i = 0; i < 70; i++) {
      await page.keyboard.press('Tab');
      const focus = await page.evaluate(() => {
        const element = document.activeElement;
        if (element === null || element === document.body) return null;
        const box = element.getBoundingClientRect();
        const style = getComputedStyle(element);
        const strip = element.closest('.choice');
        const outlined =
          style.outlineStyle !== 'none' ||
          (strip !== null && getComputedStyle(strip).outlineStyle !== 'none');
        const name =
          element.getAttribute('data-marker') ?? element.getAttribute('data-hole') ?? element.className;
        return { name, outlined, inSight: box.width > 0 && box.height > 0 };
      });
      if (focus === null) continue;
      seen.add(focus.name);
      expect(focus, focus.name).toMatchObject({ outlined: true, inSight: true });
    }
    expect([...seen]).toEqual(expect.arrayContaining(['ball', 'aim', 'pin', '1', 'all']));
  });

  it('prints a page of the hole: drawing, advice and table, nothing of the window', async () => {
    const { page } = window;
    const club = (await page.locator('.option-name').first().textContent()) ?? '?';
    const folder = mkdtempSync(join(tmpdir(), 'holewright-print-'));
    try {
      const path = join(folder, 'hole.pdf');
      writeFileSync(path, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      const text = execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
      expect(text).toContain('Test course, hole 1: Pond');
      expect(text).toContain(`Recommended: ${club.trim()}`);
      expect(text).toMatch(/Shot and aim\s+Strokes/);
      expect(text).toContain('check them on the course');
      expect(text).not.toContain('Strokes surface');
      const info = execFileSync('pdfinfo', [path], { encoding: 'utf8' });
      expect(info).toMatch(/Pages:\s+1\b/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('opens help beside the plan, turns its pages, closes by Escape', async () => {
    const { page } = window;
    await page.getByRole('button', { name: 'Help' }).click();
    const drawer = page.getByRole('dialog', { name: 'Help' });
    expect(await drawer.textContent()).toContain('The first minute');
    await drawer.getByRole('button', { name: 'Limits' }).click();
    expect(await drawer.textContent()).toContain('thunder');
    expect(await drawer.textContent()).toContain('group ahead');
    await page.keyboard.press('Escape');
    await drawer.waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Help');
    // From another room the guide opens where that room is told.
    await page.getByRole('button', { name: 'Player', exact: true }).click();
    await page.getByRole('button', { name: 'Help' }).click();
    const top = await drawer.getByRole('heading', { name: 'The player' }).boundingBox();
    const body = await drawer.locator('.help-body').boundingBox();
    expect(top!.y - body!.y).toBeGreaterThanOrEqual(0);
    expect(top!.y - body!.y).toBeLessThan(120);
    await drawer.getByRole('button', { name: 'Licences' }).click();
    expect(await drawer.textContent()).toContain('MIT');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
  });

  it('axe-core finds nothing wrong, in light and in dark', async () => {
    const { page } = window;
    await page.locator('.side-A').first().click();
    await page.locator('.side-B').last().click();
    await page.locator('.verdict').waitFor();
    await page.getByLabel('Strokes surface').check();
    await page.locator('.legend summary').click();
    await page.getByText('About these numbers').click();
    await page.getByRole('button', { name: 'How far the day may change' }).click();
    await page
      .getByText(/^From .* aim \d+° further/)
      .first()
      .waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: /^Day/ }).click();
    await page.getByText(/^Local rules:/).click();
    expect(await violationsInBothThemes(page)).toEqual([]);
    await page.getByRole('button', { name: 'Help' }).click();
    expect(await violationsInBothThemes(page)).toEqual([]);
    // The first walk's card stays over the course.
    await page.getByRole('button', { name: 'Walk me round the window again' }).click();
    await page.locator('[data-hole="all"]').click();
    await page.locator('.course-table').waitFor();
    await page.locator('.tour-card').waitFor();
    expect(await violationsInBothThemes(page)).toEqual([]);
    // Escape leaves it from anywhere.
    await page.locator('[data-hole="1"]').focus();
    await page.keyboard.press('Escape');
    await page.locator('.tour-card').waitFor({ state: 'detached' });
  });
});
