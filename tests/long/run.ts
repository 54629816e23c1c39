/**
 * `npm run long -- [--hours H] [--minutes M] [--json FILE]`: works in the built window over and over, as a person would in H hours
 * (the page's clock is moved on between rounds), for M minutes of real time. After each round rubbish is collected and what
 * the page holds is counted. Exits with 1 where any of it grows by more than its scatter explains.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import buildWindow from '../browser/build-window.ts';
import { planReady, startBrowser } from '../browser/window.ts';
import { growthOf, type Growth } from './growth.ts';
import { heldBytes } from './held.ts';
import { openWork, work } from './work.ts';

const { values } = parseArgs({
  options: {
    hours: { type: 'string', default: '4' },
    minutes: { type: 'string', default: '15' },
    json: { type: 'string' },
  },
});
const hours = positive('hours', values.hours);
const minutes = positive('minutes', values.minutes);

function positive(name: string, text: string): number {
  const number = Number(text);
  if (!(number > 0)) throw new Error(`--${name} takes a number above 0, not ${text}`);
  return number;
}

/** What is counted, and how much more per round would be no leak but noise of the counting. */
const COUNTED = [
  { name: 'held', words: 'held by scripts, bytes', noise: 500 },
  { name: 'Nodes', words: 'elements and texts', noise: 0.5 },
  { name: 'JSEventListeners', words: 'listeners', noise: 0.1 },
  { name: 'Documents', words: 'documents', noise: 0.02 },
] as const;

await buildWindow();
const browser = await startBrowser();
const window = await openWork(browser);
const { page } = window;
await planReady(page);
await page.clock.install();
const debugging = await page.context().newCDPSession(page);
await debugging.send('Performance.enable');
await debugging.send('HeapProfiler.enable');

async function count(): Promise<Readonly<Record<string, number>>> {
  // Twice: what is let go of in the first turn may hold more.
  for (let turn = 0; turn < 2; turn++) await debugging.send('HeapProfiler.collectGarbage');
  const { metrics } = await debugging.send('Performance.getMetrics');
  const counts = Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
  return { ...counts, held: await heldBytes(debugging) };
}

const samples: Readonly<Record<string, number>>[] = [];
const begun = performance.now();
let passedMs = 0;
for (let round = 1; performance.now() - begun < minutes * 60_000; round++) {
  const before = performance.now();
  await work(page, round);
  samples.push(await count());
  const share = (performance.now() - before) / (minutes * 60_000);
  const forwardMs = Math.round(share * hours * 3_600_000);
  await page.clock.fastForward(forwardMs);
  passedMs += forwardMs;
  const last = samples.at(-1)!;
  if (round % 10 === 0 || round === 1)
    console.log(
      `round ${round}, ${(passedMs / 3_600_000).toFixed(2)} h on the clock: ${COUNTED.map(({ name, words }) => `${last[name] ?? 0} ${words}`).join(', ')}`,
    );
}
const complaints = [...window.complaints];
await window.close();
await browser.close();

const total = growthOf(samples.map((sample) => sample['JSHeapUsedSize'] ?? 0));
console.log(`for information, with compiled code: ${told(total)}`);
const rows = COUNTED.map(({ name, words, noise }) => ({
  words,
  noise,
  ...growthOf(samples.map((sample) => sample[name] ?? 0)),
}));
for (const row of rows) console.log(`${row.words}: ${told(row)}${grows(row) ? ' GROWS' : ''}`);
for (const complaint of complaints) console.log(`the page complained: ${complaint}`);
const isFine = !rows.some(grows) && complaints.length === 0;
console.log(
  `${samples.length} rounds, ${(passedMs / 3_600_000).toFixed(1)} h on the clock, ${minutes} min: ${isFine ? 'no growth' : 'see above'}`,
);
if (values.json !== undefined)
  writeFileSync(
    values.json,
    `${JSON.stringify({ rounds: samples.length, passedMs, rows, complaints, samples }, null, 1)}\n`,
  );
process.exitCode = isFine ? 0 : 1;

function told({ first, last, slope, error }: Growth): string {
  return `${first.toFixed(0)} after warming up, ${last.toFixed(0)} at the end; ${slope.toFixed(3)} ± ${error.toFixed(3)} a round`;
}

/** More than three standard errors above nothing, and more than noise. */
function grows({ slope, error, noise }: Growth & { readonly noise: number }): boolean {
  return slope > 3 * error && slope > noise;
}
