/** The course room and its file: what is taken out, earlier versions, a full disk, another program at the same file. */

import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Disk, nodeDisk } from '../../electron/files/disk.ts';
import {
  Hand,
  mapEdited,
  openCourseRoom,
  ring,
  savedByItself,
  showPanel,
  undoTitle,
} from './course-drawing.ts';
import { openSmallWindow, settles, startBrowser, type TestWindow } from './window.ts';

describe('the file of a course', () => {
  let browser: Browser;
  let window: TestWindow;
  let page: Page;
  let hand: Hand;
  let isFull = false;
  const onlyWhileRoom: Disk = {
    ...nodeDisk,
    writeNew: (path, bytes) =>
      isFull
        ? Promise.reject(Object.assign(new Error('full'), { code: 'ENOSPC' }))
        : nodeDisk.writeNew(path, bytes),
    append: (path, end, bytes) =>
      isFull
        ? Promise.reject(Object.assign(new Error('full'), { code: 'ENOSPC' }))
        : nodeDisk.append(path, end, bytes),
  };

  const onDisk = async (): Promise<string> => readFile(join(window.workspace, 'small.geojson'), 'utf8');
  const said = (): Promise<string | null> => page.locator('.drawing-line [role="status"]').textContent();

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openSmallWindow(browser, { disk: onlyWhileRoom });
    ({ page } = window);
    hand = new Hand(page);
    await openCourseRoom(page);
    await mapEdited(page);
  });
  afterAll(async () => {
    expect(window.complaints).toEqual([]);
    await window.close();
    await browser.close();
  });

  it('keeps an earlier version, which comes back as one step', async () => {
    await hand.draw('Bunker', ring({ x: 0.2, y: 0.8 }, 0.04, 0.04, 6));
    await hand.press('Escape', 'Control+s');
    await savedByItself(page);
    await showPanel(page, 'course');
    await page.locator('summary', { hasText: 'Earlier versions' }).click();
    await page.getByRole('button', { name: 'Go back to it' }).click();
    await settles(
      () => undoTitle(page),
      (title) => title.includes('Go back to'),
    );
    await hand.press('Control+s');
    await savedByItself(page);
    expect((JSON.parse(await onDisk()) as { features: unknown[] }).features).toHaveLength(14);
    await hand.press('Control+z', 'Control+s');
    await savedByItself(page);
    expect((JSON.parse(await onDisk()) as { features: unknown[] }).features).toHaveLength(15);
  });

  it('goes out as GeoJSON, a hole as SVG and PNG', async () => {
    await page.locator('summary', { hasText: 'Take it out' }).click();
    for (const button of ['Course as GeoJSON', 'Hole 1 as SVG', 'Hole 1 as PNG']) {
      await hand.button(button);
      await settles(said, (words) => words?.startsWith('Saved as exports/') === true);
      await page.locator('.panel-body button:enabled', { hasText: button }).waitFor();
    }
    const folder = join(window.workspace, 'exports');
    await settles(
      () => readdir(folder),
      (names) => names.length === 3,
    );
    expect(await readFile(join(folder, 'small.geojson'), 'utf8')).toBe(await onDisk());
    expect(await readFile(join(folder, 'small-hole-1.svg'), 'utf8')).toMatch(/^<\?xml|^<svg/u);
    const png = await readFile(join(folder, 'small-hole-1.png'));
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    // 8 dots to the millimetre
    expect(png.readUInt32BE(20)).toBeGreaterThan(500);
  });

  it('on a full disk stays in the window, says so, and is saved once there is room', async () => {
    isFull = true;
    const before = await onDisk();
    await hand.draw('Bunker', ring({ x: 0.7, y: 0.85 }, 0.03, 0.03, 5));
    const banner = page.getByRole('alert').filter({ hasText: 'disk is full' });
    await banner.waitFor();
    expect(await onDisk()).toBe(before);
    isFull = false;
    await banner.getByRole('button', { name: 'Try to save now' }).click();
    await banner.waitFor({ state: 'detached' });
    await savedByItself(page);
    expect((JSON.parse(await onDisk()) as { features: unknown[] }).features).toHaveLength(16);
  });

  it('changed by another program is told, and the other version can be taken', async () => {
    const other = JSON.parse(await onDisk()) as { features: unknown[] };
    other.features.pop();
    await writeFile(join(window.workspace, 'small.geojson'), JSON.stringify(other));
    const banner = page.locator('.banner', { hasText: 'changed by another program' });
    await banner.getByRole('button', { name: 'Read it again' }).click({ timeout: 20_000 });
    await banner.waitFor({ state: 'detached' });
    await page.locator('input[name="drawing-listed"][value="features"]').check();
    await settles(
      () => page.locator('.group-name', { hasText: 'Bunker' }).textContent(),
      (words) => words?.trim() === 'Bunker 2',
    );
  });
});
