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
/** Times over: `npx tsx tests/browser/course-room-frames.ts 3`. */
const RUNS = Number(process.argv[2] ?? 1);

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

interface Pace {
  /** Animation frames a second. */
  readonly frames: number;
  /** Milliseconds that the page's own thread worked for a frame, which a busy computer does not change much. */
  readonly workMs: number;
}

/** How it goes while `act` is done again and again. */
async function pace(page: Page, act: (i: number) => Promise<void>): Promise<Pace> {
  const session = await page.context().newCDPSession(page);
  // time that the thread itself has run, not time that has passed
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0;
  };
  const before = await worked();
  await page.evaluate(
    'window.frames = 0; window.counting = true; (function count() { frames++; if (counting) requestAnimationFrame(count); })()',
  );
  const start = performance.now();
  for (let i = 0; i < MOVES; i++) await act(i);
  const seconds = (performance.now() - start) / 1000;
  const frames = await page.evaluate<number>('counting = false, frames');
  const workMs = (1000 * ((await worked()) - before)) / frames;
  await session.detach();
  return { frames: frames / seconds, workMs };
}

async function measure(browser: Browser, areas: number, corners: number): Promise<{ pan: Pace; drag: Pace }> {
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
  const pan = await pace(page, move);
  await page.mouse.up();
  await page.locator('input[name="drawing-listed"][value="features"]').check();
  await page.locator('.group-name', { hasText: 'Fairway' }).click();
  await page.locator('.feature-row').first().click();
  await page.waitForTimeout(500);
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  const drag = await pace(page, move);
  await page.mouse.up();
  await window.close();
  return { pan, drag };
}

const words = ({ frames, workMs }: Pace): string =>
  `${frames.toFixed(0)} frames a second (${workMs.toFixed(1)} ms of work each)`;

await buildWindow();
const browser = await startBrowser();
for (let run = 1; run <= RUNS; run++) {
  const empty = await measure(browser, 1, 4);
  console.info(`empty map: ${words(empty.pan)} moving it, ${words(empty.drag)} dragging a feature`);
  for (const [areas, corners] of [
    [50, 100],
    [100, 200],
  ] as const) {
    const { pan, drag } = await measure(browser, areas, corners);
    const ratio = `${(pan.frames / empty.pan.frames).toFixed(2)} and ${(drag.frames / empty.drag.frames).toFixed(2)} of the empty map`;
    console.info(`${areas * corners} vertices: ${words(pan)} and ${words(drag)}, ${ratio}`);
  }
}
await browser.close();
