/**
 * Frames a second in the course room while the map is moved and a feature is dragged, on an empty map and on full
 * ones: `npx tsx tests/browser/course-room-frames.ts`. Figures of one machine at one time; the ratio tells more.
 */

import type { Browser, Page } from 'playwright-core';
import { smallPlayerText } from '../renderer/small-course.ts';
import buildWindow from './build-window.ts';
import { openCourseRoom } from './course-drawing.ts';
import { openWindow, startBrowser } from './window.ts';

const MOVES = 90;

/** Bunkers and fairways in rows, each a lobed ring. */
function courseOf(areas: number, corners: number): string {
  const ring = (lon: number, lat: number): number[][] => {
    const points = Array.from({ length: corners }, (_, i) => {
      const angle = (2 * Math.PI * i) / corners;
      const lobe = 1 + 0.1 * Math.sin(7 * angle);
      return [lon + 0.0004 * lobe * Math.cos(angle), lat + 0.00025 * Math.sin(angle)];
    });
    return [...points, points[0]!];
  };
  const line = {
    type: 'Feature',
    properties: { golf: 'hole', ref: '1', par: '4' },
    geometry: {
      type: 'LineString',
      coordinates: [
        [4, 52],
        [4, 52.003],
      ],
    },
  };
  const drawn = Array.from({ length: areas }, (_, i) => ({
    type: 'Feature',
    properties: { golf: i % 3 === 0 ? 'fairway' : 'bunker' },
    geometry: {
      type: 'Polygon',
      coordinates: [ring(4 + 0.001 * ((i % 10) - 5), 52 + 0.0006 * Math.floor(i / 10))],
    },
  }));
  const holewright = { formatVersion: 1, courseName: 'Frames', invented: true };
  return JSON.stringify({ type: 'FeatureCollection', holewright, features: [line, ...drawn] });
}

/** Animation frames a second while `act` is done again and again. */
async function frames(page: Page, act: (i: number) => Promise<void>): Promise<number> {
  await page.evaluate(
    'window.frames = 0; window.counting = true; (function count() { frames++; if (counting) requestAnimationFrame(count); })()',
  );
  const start = performance.now();
  for (let i = 0; i < MOVES; i++) await act(i);
  const seconds = (performance.now() - start) / 1000;
  return (await page.evaluate<number>('counting = false, frames')) / seconds;
}

async function measure(
  browser: Browser,
  areas: number,
  corners: number,
): Promise<{ pan: number; drag: number }> {
  const window = await openWindow(browser, {
    files: { 'frames.geojson': courseOf(areas, corners), 'few-clubs.json': smallPlayerText() },
    lastOpen: { course: 'frames.geojson', player: 'few-clubs.json' },
  });
  const { page } = window;
  await openCourseRoom(page);
  await page.locator('.kind-button:enabled', { hasText: 'Bunker' }).waitFor();
  await page.waitForTimeout(5000);
  const box = (await page.locator('.drawing-map').boundingBox())!;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const move = (i: number): Promise<void> => page.mouse.move(middle.x + 2 * i, middle.y + (i % 20));
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  const pan = await frames(page, move);
  await page.mouse.up();
  await page.locator('input[name="drawing-listed"][value="features"]').check();
  await page.locator('.group-name', { hasText: 'Fairway' }).click();
  await page.locator('.feature-row').first().click();
  await page.waitForTimeout(500);
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  const drag = await frames(page, move);
  await page.mouse.up();
  await window.close();
  return { pan, drag };
}

buildWindow();
const browser = await startBrowser();
const empty = await measure(browser, 1, 4);
console.info(`empty map: ${empty.pan.toFixed(0)} moving it, ${empty.drag.toFixed(0)} dragging a feature`);
for (const [areas, corners] of [
  [50, 100],
  [100, 200],
] as const) {
  const { pan, drag } = await measure(browser, areas, corners);
  const ratio = `${(pan / empty.pan).toFixed(2)} and ${(drag / empty.drag).toFixed(2)} of the empty map`;
  console.info(`${areas * corners} vertices: ${pan.toFixed(0)} and ${drag.toFixed(0)}, ${ratio}`);
}
await browser.close();
