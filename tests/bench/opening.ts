/**
 * `npx tsx tests/bench/opening.ts [TURNS]`: from opening the built window on the demo to the map and to a recommendation, seconds,
 * median and range over the turns (5). Each turn opens it without a kept plan (to a first, quick recommendation, then the full one)
 * and with the plan kept by the opening before (shown in full; then worked out anew). Needs `npm run build` and Chromium.
 */

import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { good } from '../../electron/files/answer.ts';
import { keptPlans } from '../../electron/files/kept-plans.ts';
import { openWindow, startBrowser } from '../browser/window.ts';
import { quantile } from './measure.ts';

const turns = Number(process.argv[2] ?? 5);
const browser = await startBrowser();
const seconds: Record<string, number[]> = {};
const note = (name: string, begun: number): void => {
  (seconds[name] ??= []).push((performance.now() - begun) / 1e3);
};

const folder = await mkdtemp(join(tmpdir(), 'holewright-opening-'));
const cache = keptPlans(folder);
let isKnown = false;
const window = await openWindow(browser, {
  plans: () => ({
    ...cache,
    kept: (key) => (isKnown ? cache.kept(key) : Promise.resolve(good({ text: null }))),
  }),
});
const { page } = window;
const anyAdvice = page.locator('.advice-cost').first();
const fullAdvice = page.locator('.advice-card:not(.rough) .advice-cost').first();
/** In the list of holes: only what this opening has worked out. */
const workedOut = page.locator('[data-hole="1"] .advice-strokes');
const within = { timeout: 180_000 };

// The first opening also warms the disk and the browser, and is the one whose plan is kept.
await workedOut.waitFor(within);
while ((await readdir(folder)).length === 0) await new Promise((resolve) => setTimeout(resolve, 50));
const loadBefore = loadavg()[0] ?? 0;
for (let turn = 0; turn < turns; turn++) {
  for (isKnown of [false, true]) {
    const kind = isKnown ? 'with a kept plan' : 'without';
    const begun = performance.now();
    await page.reload();
    await page.locator('.leaflet-container canvas').first().waitFor();
    note(`map, ${kind}`, begun);
    await anyAdvice.waitFor(within);
    note(`first recommendation, ${kind}`, begun);
    await fullAdvice.waitFor(within);
    note(`full recommendation, ${kind}`, begun);
    await workedOut.waitFor(within);
    note(`worked out, ${kind}`, begun);
  }
}
await window.close();
await browser.close();
await rm(folder, { recursive: true, force: true });
console.table(
  Object.fromEntries(
    Object.entries(seconds)
      .sort(([a], [b]) => Number(a.includes('with a')) - Number(b.includes('with a')))
      .map(([name, values]) => {
        const at = (share: number): number => Number(quantile(values, share).toFixed(2));
        return [name, { median: at(0.5), least: at(0), most: at(1) }];
      }),
  ),
);
console.log(
  `${turns} turns; load of the machine ${loadBefore.toFixed(1)} before, ${(loadavg()[0] ?? 0).toFixed(1)} after`,
);
