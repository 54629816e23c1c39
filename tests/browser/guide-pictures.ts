/**
 * Takes the pictures of the guide from the running program: `npm run guide-pictures`, after `npm run build`. The seed is the
 * program's own and nothing with a date is in them, so the same program gives the same pictures. Text in them is English,
 * the colours are the light ones. Where a picture takes another size than before, write that into `window-pictures.tsx` (a
 * test tells). A folder as argument takes them there instead, to be looked at.
 */

import { existsSync, mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { programPlaces } from '../../electron/pages/places.ts';
import { eighteenHolesText, threeClubsText } from '../renderer/round/eighteen.ts';
import { beginCourse, Hand, ring } from './course-drawing.ts';
import {
  markerOf,
  openWindow,
  planReady,
  startBrowser,
  type TestWindow,
  type WindowWishes,
} from './window.ts';

const FOLDER = join(import.meta.dirname, '..', '..', 'renderer', 'help', 'pictures');
/** Keeps the program small. */
const MOST_BYTES = 120_000;
/** The hole that the guide speaks of: woods, water and sand are in play. */
const HOLE = 16;
const LONG_MS = 600_000;
/** A window this narrow lays its parts below each other, so that a picture of one fits the column of the help page. */
const NARROW = 620;
/** Spread, balls and labels come a moment after the plan. */
const SETTLING_MS = 2000;

const folder = process.argv[2] ?? FOLDER;
mkdirSync(folder, { recursive: true });
const page = programPlaces(import.meta.dirname).page;
if (!existsSync(page)) throw new Error(`There is no built window in ${page}: run "npm run build" first.`);

const browser = await startBrowser();
try {
  await inWindow({ width: 1280, height: 800 }, async (window) => {
    await planHole(window.page);
    await readTheOdds(window.page);
    await moveTheAim(window.page);
    await printTheCard(window.page);
  });
  await inWindow({ width: 1280, height: 800 }, async (window) => {
    await drawAHole(window.page);
    await enterShots(window.page);
  });
  await inWindow(
    {
      width: NARROW,
      height: 900,
      files: { 'eighteen.geojson': eighteenHolesText(), 'few-clubs.json': threeClubsText() },
      lastOpen: { course: 'eighteen.geojson', player: 'few-clubs.json' },
    },
    (window) => afterTheRound(window.page),
  );
} finally {
  await browser.close();
}

async function inWindow(wishes: WindowWishes, use: (window: TestWindow) => Promise<void>): Promise<void> {
  const window = await openWindow(browser, { ...wishes, colorScheme: 'light' });
  try {
    await use(window);
  } finally {
    await window.close();
  }
}

async function planHole(page: Page): Promise<void> {
  await page.locator(`[data-hole="${HOLE}"]`).click();
  await planReady(page);
  // The other holes are not needed.
  await page.locator('.work-status').getByRole('button', { name: 'Stop' }).click();
  await page.waitForTimeout(SETTLING_MS);
}

async function readTheOdds(page: Page): Promise<void> {
  const card = await boxOf(page.locator('.advice-card'));
  const row = await boxOf(page.locator('.options .option').nth(2));
  const panel = await boxOf(page.locator('.side-panel'));
  await take(page, 'read-the-odds', { ...panel, y: card.y - 8, height: row.y + row.height - card.y + 8 });
}

async function moveTheAim(page: Page): Promise<void> {
  const map = await boxOf(page.locator('.map-area'));
  const aim = await boxOf(markerOf(page, 'aim'));
  const middle = Math.min(Math.max(aim.x, map.x + 220), map.x + map.width - 220);
  await take(page, 'move-the-aim', { x: middle - 220, y: aim.y - 150, width: 440, height: 340 });
}

async function printTheCard(page: Page): Promise<void> {
  await room(page, 'Round');
  await roundPage(page, 'Cards');
  await page.getByRole('combobox', { name: 'Holes' }).selectOption(String(HOLE));
  await page.getByRole('combobox', { name: 'Paper' }).selectOption('a6');
  const card = page.locator('.card-unit').first();
  await card.waitFor({ timeout: LONG_MS });
  await card.scrollIntoViewIfNeeded();
  await page.waitForTimeout(SETTLING_MS);
  await take(page, 'print-the-card', await boxOf(card));
}

/** A hole of an invented course, half done: the bunker by the green is being drawn. */
async function drawAHole(page: Page): Promise<void> {
  const hand = new Hand(page);
  await beginCourse(hand, 'Larkfield', '52.1, 4.3');
  await hand.draw('Line of play', [
    { x: 0.17, y: 0.52 },
    { x: 0.26, y: 0.34 },
    { x: 0.36, y: 0.22 },
  ]);
  await hand.draw('Green', ring({ x: 0.36, y: 0.22 }, 0.034, 0.04, 8));
  await hand.draw('Tee area', ring({ x: 0.17, y: 0.52 }, 0.018, 0.018, 4));
  await hand.draw('Fairway', [
    { x: 0.19, y: 0.44 },
    { x: 0.22, y: 0.34 },
    { x: 0.31, y: 0.26 },
    { x: 0.36, y: 0.29 },
    { x: 0.29, y: 0.37 },
    { x: 0.24, y: 0.46 },
  ]);
  await hand.draw('Penalty area, red', ring({ x: 0.12, y: 0.32 }, 0.04, 0.07, 8));
  await page.locator('.kind-palette').getByRole('button', { name: 'Bunker', exact: true }).click();
  for (const place of ring({ x: 0.46, y: 0.27 }, 0.035, 0.045, 6).slice(0, 4)) await hand.click(place);
  await take(page, 'draw-a-hole', { x: 0, y: 50, width: 620, height: 440 });
}

async function enterShots(page: Page): Promise<void> {
  await room(page, 'Player');
  await page.getByRole('button', { name: 'Make it yours' }).click();
  await page.getByRole('button', { name: 'Shots', exact: true }).click();
  await page.setViewportSize({ width: NARROW, height: 1400 });
  const rows = [
    ['7-iron', 'full', '139', '4 R', '146'],
    ['', '', '132', '7 L', '138'],
    ['', '', '141', '2 R', '149'],
    ['8-iron', '', '128', '0', '133'],
  ];
  for (const [row, cells] of rows.entries())
    for (const [column, cell] of cells.entries())
      await page.locator(`[data-cell="${row},${column}"]`).fill(cell);
  await page.locator('.typed-shots').getByRole('button', { name: 'Add 4 shots' }).focus();
  await page.waitForTimeout(SETTLING_MS);
  const grid = await boxOf(page.locator('.typed-shots'));
  await take(page, 'enter-shots', { ...grid, x: grid.x - 8, width: NARROW - 32, height: grid.height + 6 });
}

/** Of a course of short holes, quick to work out. The names of files further up have a date, so they stay out. */
async function afterTheRound(page: Page): Promise<void> {
  await room(page, 'Round');
  await page.getByText('All 18 holes are worked out').waitFor({ timeout: LONG_MS });
  await roundPage(page, 'After the round');
  await page.getByRole('button', { name: 'Enter a round played today' }).click();
  for (let hole = 1; hole <= 18; hole++) {
    await page.getByLabel(`Score on hole ${hole}`, { exact: true }).fill(hole % 3 === 0 ? '5' : '4');
    await page.getByLabel(`Putts on hole ${hole}`, { exact: true }).fill('2');
    await page
      .getByLabel(`Where the tee shot ended on hole ${hole}`, { exact: true })
      .selectOption(hole % 2 === 0 ? 'fairway' : 'rough');
  }
  await page.getByText(/\d+ against \d+\.\d expected/).waitFor();
  await page.waitForTimeout(SETTLING_MS);
  await page.locator(':focus').blur();
  const first = page.locator('tr', { has: page.getByLabel('Score on hole 15', { exact: true }) });
  const review = page.getByRole('region', { name: 'Against the plan' });
  await review.scrollIntoViewIfNeeded();
  const top = await boxOf(first);
  const bottom = await boxOf(review);
  await take(page, 'after-the-round', {
    x: 0,
    y: top.y,
    width: NARROW,
    height: bottom.y + bottom.height - top.y,
  });
}

function room(page: Page, name: string): Promise<void> {
  return page.locator('.room-switch').getByRole('button', { name, exact: true }).click();
}

function roundPage(page: Page, name: string): Promise<void> {
  return page.getByRole('navigation', { name: 'Pages of the round' }).getByText(name).click();
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

async function boxOf(part: Locator): Promise<Box> {
  const box = await part.boundingBox();
  if (box === null) throw new Error('What the picture is of is not on the page.');
  return box;
}

async function take(page: Page, name: string, clip: Box): Promise<void> {
  const path = join(folder, `${name}.png`);
  await page.mouse.move(0, 0);
  await page.screenshot({ path, clip, animations: 'disabled', caret: 'hide' });
  const { size } = statSync(path);
  console.log(
    `${path}: ${Math.round(clip.width)} × ${Math.round(clip.height)}, ${Math.round(size / 1000)} kB`,
  );
  if (size > MOST_BYTES)
    throw new Error(`${name} has more than ${MOST_BYTES / 1000} kB: show less of the window.`);
}
