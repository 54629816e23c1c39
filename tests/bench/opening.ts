/**
 * `npx tsx tests/bench/opening.ts`: from opening the built window on the demo to the map, to a
 * first recommendation and to the full one, seconds, median of three. Needs `npm run build` and Chromium.
 */

import { openWindow, startBrowser } from '../browser/window.ts';
import { quantile } from './measure.ts';

const browser = await startBrowser();
const seconds: Record<string, number[]> = {};
const note = (name: string, begun: number): void => {
  (seconds[name] ??= []).push((performance.now() - begun) / 1e3);
};
// The first opening also warms the disk and the browser; it is left out.
for (let turn = 0; turn < 4; turn++) {
  const window = await openWindow(browser);
  const { page } = window;
  await page.locator('.advice-cost').first().waitFor();
  const begun = performance.now();
  await page.reload();
  await page.locator('.leaflet-container canvas').first().waitFor();
  if (turn > 0) note('map', begun);
  await page.locator('.advice-cost').first().waitFor();
  if (turn > 0) note('first recommendation', begun);
  await page.locator('.advice-card:not(.rough) .advice-cost').first().waitFor({ timeout: 120_000 });
  if (turn > 0) note('full recommendation', begun);
  await window.close();
}
await browser.close();
console.table(
  Object.fromEntries(
    Object.entries(seconds).map(([name, values]) => [name, Number(quantile(values, 0.5).toFixed(2))]),
  ),
);
