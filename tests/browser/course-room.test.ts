/** The course room in a real browser: a par 4 drawn from a picture with the mouse, through a crash, to plan and paper. */

import { execFileSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseCourseText } from '../../core/course/parse.ts';
import { checkCourse } from '../../core/course/check.ts';
import { distanceM } from '../../core/course/ellipsoid.ts';
import { smallPlayerText } from '../renderer/small-course.ts';
import {
  beginCourse,
  Hand,
  openCourseRoom,
  ring,
  savedByItself,
  showPanel,
  type Spot,
} from './course-drawing.ts';
import { solidPng } from './map-files.ts';
import { openWindow, planReady, settles, startBrowser, type TestWindow } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

async function courseFile(window: TestWindow, start: string): Promise<string> {
  const names = await readdir(window.workspace);
  const name = names.find((one) => one.startsWith(start) && one.endsWith('.geojson'));
  if (name === undefined) throw new Error(`no ${start} among ${names.join()}`);
  return readFile(join(window.workspace, name), 'utf8');
}

/** Side of the aerial picture, pixels of half a metre: as much ground as the empty map shows. */
const PICTURE_PX = 1200;

/** An aerial picture comes under the map: two spots of it, and how far they are apart. */
async function layPicture(hand: Hand): Promise<void> {
  const { page } = hand;
  hand.clicks++;
  await showPanel(page, 'course');
  hand.clicks += 3;
  await page.locator('summary', { hasText: 'Under the drawing' }).click();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring in a picture or map file …' }).click();
  const buffer = solidPng(PICTURE_PX, [96, 128, 80]);
  await (await chooser).setFiles({ name: 'aerial.png', mimeType: 'image/png', buffer });
  for (const x of [300, 500]) {
    await hand.button('Add a control point');
    hand.clicks++;
    await page.locator('.pixel-picker canvas').click({ position: { x, y: 300 } });
  }
  // the picker shows the picture at half its size: 400 pixels lie between
  hand.clicks++;
  await page.getByLabel(/^From 1 to 2/).click();
  await hand.type('200');
  await hand.press('Enter');
  await page.getByText('A pixel is 0.50 m.').waitFor();
  hand.clicks++;
  await page.locator('.picture-placer').getByRole('button', { name: 'Close' }).click();
}

/** What the page puts on paper, as text. */
async function printed(page: Page): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'holewright-print-'));
  try {
    const path = join(folder, 'hole.pdf');
    await writeFile(path, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    return execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Pages of a context that the browser has crashed cannot be loaded again, so another one opens the same address. */
async function crash(page: Page): Promise<Page> {
  const context = page.context();
  const address = page.url();
  const session = await context.newCDPSession(page);
  const gone = new Promise((resolve) => page.once('crash', resolve));
  void session.send('Page.crash').catch(() => undefined);
  await gone;
  const next = await context.newPage();
  await next.goto(address);
  return next;
}

describe('a par 4 from a picture', () => {
  let window: TestWindow;
  let hand: Hand;
  let page: Page;

  beforeAll(async () => {
    window = await openWindow(browser, { files: { 'few-clubs.json': smallPlayerText() } });
    page = window.page;
    hand = new Hand(page);
  });
  afterAll(() => window.close());

  it('is drawn, lives through a crash in the middle, is planned and printed', async () => {
    await beginCourse(hand, 'Larkfield', '52.1, 4.3');
    await layPicture(hand);
    await hand.draw('Line of play', [
      { x: 0.5, y: 0.82 },
      { x: 0.52, y: 0.5 },
      { x: 0.58, y: 0.34 },
    ]);
    await hand.draw('Green', ring({ x: 0.58, y: 0.34 }, 0.025, 0.022, 8));
    await hand.draw('Tee area', ring({ x: 0.5, y: 0.82 }, 0.012, 0.012, 4));
    await hand.draw('Fairway', [
      { x: 0.48, y: 0.68 },
      { x: 0.48, y: 0.5 },
      { x: 0.54, y: 0.38 },
      { x: 0.61, y: 0.4 },
      { x: 0.55, y: 0.52 },
      { x: 0.54, y: 0.68 },
    ]);
    await page.getByRole('status').filter({ hasText: 'Add fairway of hole 1' }).waitFor();
    // every acknowledged change is in the journal by now or within a moment; nothing waits for the save
    await page.waitForTimeout(400);

    page = await crash(page);
    hand = hand.on(page);
    await openCourseRoom(page);
    await bringBackWhatWasLost(page);
    await settles(
      () => page.locator('.drawn-hole[data-hole="1"]').textContent(),
      (text) => text !== null && !text.includes('no line'),
    );

    await hand.button('Show it whole');
    await hand.draw('Bunker', ring(whole({ x: 0.545, y: 0.36 }), 0.018, 0.03, 6));
    await hand.draw('Tee marker', [whole({ x: 0.5, y: 0.815 })]);
    await hand.draw('Hole position', [whole({ x: 0.583, y: 0.335 })]);
    await hand.draw('Penalty area, red', ring(whole({ x: 0.64, y: 0.55 }), 0.06, 0.07, 7));
    await hand.draw('Woods', ring(whole({ x: 0.4, y: 0.55 }), 0.07, 0.18, 8));
    await hand.press('Escape');
    hand.clicks++;
    await showPanel(page, 'hole');
    await hand.button(/^Write par 4$/);
    hand.clicks += 2;
    await page.locator('.missing-list select').first().selectOption('1');
    await hand.button(/^Write 39\.4 ft high/);
    await page.getByText('Nothing: the hole is complete.').waitFor();
    await savedByItself(page);

    const course = parseCourseText(await courseFile(window, 'Larkfield'));
    if (!course.ok) throw new Error(course.error[0]?.message);
    expect(checkCourse(course.value)).toEqual([]);
    const [hole] = course.value.holes;
    expect(hole).toMatchObject({ number: 1, par: 4, strokeIndex: 1 });
    expect(course.value.areas.map(({ kind }) => kind).toSorted()).toEqual(
      ['bunker', 'fairway', 'green', 'penalty-red', 'tee', 'woods'].toSorted(),
    );
    // drawn where the hand was: the tee lies south of the green, within the 600 m that the empty map shows
    expect(distanceM(hole!.line[0]!, hole!.line.at(-1)!)).toBeGreaterThan(240);
    expect(distanceM(hole!.line[0]!, hole!.line.at(-1)!)).toBeLessThan(600);

    await page.locator('.file-picker select').nth(1).selectOption({ label: 'few-clubs.json' });
    await page.locator('.room-switch').getByRole('button', { name: 'Plan', exact: true }).click();
    await planReady(page);
    expect(await page.locator('.hole-row[data-hole="1"] .advice-club').textContent()).not.toBe('');
    const paper = await printed(page);
    expect(paper).toContain('Larkfield, hole 1');
    expect(paper).toMatch(/Recommended: \S+/);
    expect(paper).toMatch(/Shot and aim\s+Strokes/);

    const seconds = hand.seconds();
    console.info(
      `A par 4 drawn whole from a picture: ${hand.clicks} clicks and ${hand.keys} keys in ${hand.steps} steps, ${seconds.toFixed(0)} s by hand.`,
    );
    expect(hand.clicks).toBeLessThan(125);
    // under five minutes
    expect(seconds).toBeLessThan(300);
    expect(window.complaints).toEqual([]);
  });
});

/**
 * Where a spot of the empty map lies once what was drawn up to the crash is shown whole: 0.514 of the map's height
 * (750 pixels, 650 m) and 25 m round it fill all but 80 pixels.
 */
function whole({ x, y }: Spot): Spot {
  const drawnM = (0.514 * 750 * 650) / 670;
  const larger = 650 / (drawnM + 50);
  return { x: 0.5 + (x - 0.545) * larger, y: 0.5 + (y - 0.575) * larger };
}

/** The file is free again seconds after the crash; then the lost work is offered. */
async function bringBackWhatWasLost(page: Page): Promise<void> {
  const lost = page.getByRole('button', { name: 'Bring it back' });
  const held = page.getByRole('button', { name: 'Try again' });
  const saved = page.locator('.drawn-hole[data-hole="1"]', { hasNotText: 'no line' });
  for (let tries = 0; tries < 20; tries++) {
    await lost.or(held).or(saved).first().waitFor({ timeout: 20_000 });
    if (await lost.isVisible()) {
      await lost.click();
      return;
    }
    if (await held.isVisible()) await held.click();
    await page.waitForTimeout(700);
  }
  throw new Error('the lost work was never offered');
}
