/**
 * `npx tsx tests/bench/window.ts`: the built window works out all 18 holes of the demo: seconds from opening it, and the memory of
 * the page's process with its workers (proportional set size, Linux) while it does and when it is done. Needs `npm run build`
 * and Chromium.
 */

import { readdir, readFile } from 'node:fs/promises';
import { loadavg } from 'node:os';
import { openWindow, startBrowser } from '../browser/window.ts';

/** Of the largest of Chromium's page processes; a spare one is small. */
async function pageMegabytes(): Promise<number> {
  let largest = 0;
  for (const pid of await readdir('/proc')) {
    if (!/^\d+$/u.test(pid)) continue;
    try {
      if (!(await readFile(`/proc/${pid}/cmdline`, 'utf8')).includes('--type=renderer')) continue;
      const pss = /^Pss:\s+(\d+) kB/mu.exec(await readFile(`/proc/${pid}/smaps_rollup`, 'utf8'));
      largest = Math.max(largest, (Number(pss?.[1] ?? 0) * 1024) / 1e6);
    } catch {
      // It ended meanwhile.
    }
  }
  return largest;
}

const browser = await startBrowser();
const loadBefore = loadavg()[0] ?? 0;
const begun = performance.now();
const window = await openWindow(browser);
const { page } = window;
const told = page.locator('[data-hole] .advice-strokes');
let most = 0;
while ((await told.count()) < 18) {
  most = Math.max(most, await pageMegabytes());
  await new Promise((resolve) => setTimeout(resolve, 500));
}
const seconds = (performance.now() - begun) / 1e3;
const after = await pageMegabytes();
await window.close();
await browser.close();
console.table({
  '18 holes worked out, seconds': Number(seconds.toFixed(1)),
  'page and workers, most, MB': Math.round(most),
  'page and workers, afterwards, MB': Math.round(after),
});
console.log(`load of the machine ${loadBefore.toFixed(1)} before, ${(loadavg()[0] ?? 0).toFixed(1)} after`);
