/** Maps of others in the course room: files brought in, and pictures under the drawing. */

import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inTiles } from '../../renderer/drawing/background/tile-grid.ts';
import { area, at, line, PLACE, square } from '../course/builders.ts';
import { GEOGRAPHIC_KEYS, writeTiff } from '../course/import/tiff-builder.ts';
import { beginCourse, Hand, mapEdited, openCourseRoom, showPanel, undoTitle } from './course-drawing.ts';
import { type Colour, mbtilesAround, pmtilesOf, solidPng } from './map-files.ts';
import { openWindow, settles, startBrowser, type TestWindow } from './window.ts';

const mapFile = (page: Page) => page.getByLabel('Map file to bring in');

/** The colour of the background in the middle of the map; null where a page may not look: a picture of elsewhere. */
function middleColour(page: Page): Promise<readonly number[] | null> {
  return page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.leaflet-base-pane canvas')!;
    const spot = new OffscreenCanvas(1, 1).getContext('2d')!;
    try {
      spot.drawImage(canvas, -canvas.width / 2, -canvas.height / 2);
      return [...spot.getImageData(0, 0, 1, 1).data].slice(0, 3);
    } catch {
      return null;
    }
  });
}

const isColour =
  (colour: Colour) =>
  (seen: readonly number[] | null): boolean =>
    seen !== null && seen.every((value, i) => Math.abs(value - colour[i]!) <= 2);

describe('maps of others', () => {
  let browser: Browser;
  let window: TestWindow;
  let page: Page;

  beforeAll(async () => {
    browser = await startBrowser();
    window = await openWindow(browser);
    ({ page } = window);
    await beginCourse(new Hand(page), 'Brought in', `${PLACE[1] + 0.0015}, ${PLACE[0]}`);
    await mapEdited(page);
    await showPanel(page, 'course');
  });
  afterAll(async () => {
    expect(window.complaints).toEqual([]);
    await window.close();
    await browser.close();
  });

  const takenIn = async (): Promise<void> => {
    await page.getByRole('button', { name: 'Take it in' }).click();
    await page.getByText('Taken in from').waitFor();
  };

  it('GeoJSON with words of its own comes in once it is said what they mean', async () => {
    const features = [
      line({ SURFACE: 'Centre line', HoleNo: 3 }, at(0, 0), at(0, 300)),
      area({ SURFACE: 'Green', HoleNo: 3 }, square(0, 300, 12)),
      area({ SURFACE: 'Waste', HoleNo: 3 }, square(30, 280, 6)),
      area({ SURFACE: 'Car park' }, square(90, 0, 10)),
    ];
    const buffer = Buffer.from(JSON.stringify({ type: 'FeatureCollection', features }));
    await mapFile(page).setInputFiles({ name: 'survey.geojson', mimeType: 'application/json', buffer });
    await page.getByText('What it is stands in').waitFor();
    await page.getByLabel('Waste is drawn as').selectOption('bunker');
    await page.getByText('1 bunker', { exact: true }).waitFor();
    await page
      .getByText(/Car park/)
      .first()
      .waitFor();
    await takenIn();
    await page.locator('.drawn-hole[data-hole="3"]').waitFor();
    expect(await undoTitle(page)).toContain('GeoJSON');
  });

  it('heights of the ground come from an elevation model', async () => {
    const buffer = Buffer.from(
      writeTiff({
        width: 80,
        height: 80,
        keys: GEOGRAPHIC_KEYS,
        tiepoint: [0, 0, 0, PLACE[0] - 0.004, PLACE[1] + 0.006, 0],
        pixelScale: [1e-4, 1e-4, 0],
        cell: (column) => 20 + column / 10,
      }),
    );
    await mapFile(page).setInputFiles({ name: 'ground.tif', mimeType: 'image/tiff', buffer });
    await page.getByLabel('One level every').fill('40');
    await page.getByRole('button', { name: 'Work out again' }).click();
    await page.getByText(/ground levels$/).waitFor();
    await takenIn();
    expect(await undoTitle(page)).toContain('from an elevation model');
  });

  it('points and tracks walked come in from GPX, and one step takes them back', async () => {
    await mapFile(page).setInputFiles(
      join(import.meta.dirname, '../course/import/fixtures/invented-walk.gpx'),
    );
    await page.getByText('2 tee markers').waitFor();
    await page.getByRole('heading', { name: 'Left out' }).waitFor();
    await takenIn();
    const title = await undoTitle(page);
    expect(title).toContain('GPX');
    await page.keyboard.press('Control+z');
    await settles(
      () => undoTitle(page),
      (now) => now !== title,
    );
    // the walk lies far away
    await page.getByRole('button', { name: 'Show it whole' }).click();
  });

  const bringIn = async (name: string, buffer: Buffer): Promise<void> => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring in a picture or map file …' }).click();
    await (await chooser).setFiles({ name, mimeType: 'application/octet-stream', buffer });
    await page.getByRole('radio', { name }).waitFor();
  };

  it('tiles of PMTiles and MBTiles lie under the drawing, with whom to name', async () => {
    await page.locator('summary', { hasText: 'Under the drawing' }).click();
    const red: Colour = [180, 40, 60];
    await bringIn('aerial.pmtiles', pmtilesOf(solidPng(256, red), 'Invented flights'));
    await settles(() => middleColour(page), isColour(red));
    await page.locator('.attribution', { hasText: 'Invented flights' }).waitFor();

    const zoom = 14;
    const [x, y] = inTiles([PLACE[0], PLACE[1] + 0.0015], zoom);
    const blue: Colour = [30, 60, 170];
    const tiles = await mbtilesAround(solidPng(256, blue), { zoom, x: Math.floor(x), y: Math.floor(y) });
    await bringIn('survey.mbtiles', tiles);
    await settles(() => middleColour(page), isColour(blue));
    await page.locator('.attribution', { hasText: 'Invented survey' }).waitFor();
    await page.getByRole('radio', { name: 'Nothing' }).check();
    await page.locator('.attribution').waitFor({ state: 'detached' });
  });

  it('an address of one’s own is asked only once its terms are accepted, and is named', async () => {
    const asked: string[] = [];
    await page.context().route('https://tiles.invented.example/**', async (route) => {
      asked.push(route.request().url());
      await route.fulfill({ contentType: 'image/png', body: solidPng(256, [90, 90, 20]) });
    });
    await page.locator('summary', { hasText: 'Tile addresses of your own' }).click();
    const form = page.locator('.tile-addresses form');
    await form.getByLabel('Name', { exact: true }).fill('Flights');
    await form.getByLabel('Address', { exact: true }).fill('https://tiles.invented.example/{z}/{x}/{y}.png');
    await form.getByLabel('Whom it asks to be named').fill('Invented tiles');
    await form.getByRole('button', { name: 'Keep the address' }).click();
    await page.getByText('whose terms you have not accepted').waitFor();
    await form.getByLabel('I have read its terms').check();
    await form.getByRole('button', { name: 'Keep the address' }).click();
    const loaded = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Load the window anew' }).click();
    await loaded;
    await openCourseRoom(page);
    await mapEdited(page);
    expect(asked).toEqual([]);
    await showPanel(page, 'course');
    await page.locator('summary', { hasText: 'Under the drawing' }).click();
    await page.getByRole('radio', { name: 'Flights (tile address)' }).check();
    await page.locator('.attribution', { hasText: 'Invented tiles' }).waitFor();
    // what came from elsewhere is on the map: the page may no longer look at its own canvas
    await settles(
      () => middleColour(page),
      (seen) => seen === null,
    );
    expect(asked.length).toBeGreaterThan(0);
    expect(asked[0]).toMatch(/^https:\/\/tiles\.invented\.example\/\d+\/\d+\/\d+\.png$/u);
  });
});
