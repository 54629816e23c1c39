/**
 * `npm run fuzz -- --cases N [--reader NAME] [--seed TEXT] [--case NUMBER] [--json FILE]`: every reader of files from
 * outside with N spoilt files each. A failure prints what repeats it. Exits with 1 where there was any.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { diceOf } from './mutate.ts';
import { READERS, readerOf, seedOf } from './readers.ts';
import type { Order, Told } from './worker.ts';

/** A case that takes longer than this hangs. */
const LIMIT_MS = 10_000;
/** Of the worker's heap, and of the whole process beyond what it had at the beginning. */
const MOST_HEAP_MB = 600;
const MOST_GROWTH_BYTES = 1_500 * 1024 * 1024;
const LOOK_MS = 100;

interface Failure {
  readonly reader: string;
  readonly number: number;
  readonly message: string;
}

interface Row {
  readonly reader: string;
  readonly cases: number;
  readonly read: number;
  readonly refused: number;
  readonly failures: number;
  readonly slowestMs: number;
  readonly seconds: number;
}

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '1000' },
    reader: { type: 'string' },
    seed: { type: 'string', default: 'fuzz' },
    case: { type: 'string' },
    json: { type: 'string' },
  },
});
const cases = Number(values.cases);
if (!Number.isInteger(cases) || cases < 1)
  throw new Error(`--cases takes a whole number, not ${values.cases}`);
const readers = values.reader === undefined ? READERS : [readerOf(values.reader)];
const failures: Failure[] = [];

if (values.case === undefined) {
  const rows: Row[] = [];
  for (const { name } of readers) {
    const row = await fuzz(name);
    rows.push(row);
    console.log(
      `${name.padEnd(15)} ${row.cases} cases: ${row.read} read, ${row.refused} refused, ${row.failures} failed; slowest ${row.slowestMs} ms; ${row.seconds} s`,
    );
  }
  const total = rows.reduce((sum, row) => sum + row.cases, 0);
  console.log(`${total} cases, ${failures.length} failures, seed ${values.seed}`);
  if (values.json !== undefined)
    writeFileSync(
      values.json,
      `${JSON.stringify({ seed: values.seed, cases: total, rows, failures }, null, 1)}\n`,
    );
} else {
  const number = Number(values.case);
  await fuzz(readers[0]!.name, number, number + 1);
  const dice = diceOf(seedOf(values.seed, readers[0]!.name, number));
  process.stdout.write(Buffer.from(await readers[0]!.make(dice)));
}
process.exitCode = failures.length === 0 ? 0 : 1;

async function fuzz(reader: string, from = 0, to = cases): Promise<Row> {
  const begun = performance.now();
  let read = 0;
  let slowestMs = 0;
  let next = from;
  const before = failures.length;
  while (next < to) {
    const told = await runUntilEnd(reader, next, to);
    read += told.read;
    slowestMs = Math.max(slowestMs, told.slowestMs);
    ({ next } = told);
  }
  const failed = failures.length - before;
  return {
    ...{ reader, cases: to - from, read, refused: to - from - read - failed, failures: failed },
    slowestMs: Math.round(slowestMs),
    seconds: Math.round((performance.now() - begun) / 100) / 10,
  };
}

interface End {
  readonly next: number;
  readonly read: number;
  readonly slowestMs: number;
}

/** One worker until all cases are done, or until one of them hangs, takes all memory or kills it. */
function runUntilEnd(reader: string, from: number, to: number): Promise<End> {
  const at = new SharedArrayBuffer(8);
  const place = new Int32Array(at);
  Atomics.store(place, 0, from);
  const order: Order = { reader, seed: values.seed, from, to, at };
  const worker = new Worker(new URL('./worker-start.mjs', import.meta.url), {
    workerData: order,
    resourceLimits: { maxOldGenerationSizeMb: MOST_HEAP_MB },
    stderr: true,
  });
  const memoryBefore = process.memoryUsage().rss;
  return new Promise((resolve) => {
    let begunCases = 0;
    let since = performance.now();
    const end = (told: End): void => {
      clearInterval(look);
      void worker.terminate().then(() => resolve(told));
    };
    const giveUp = (message: string): void => {
      const number = Atomics.load(place, 0);
      fail(reader, number, message);
      end({ next: number + 1, read: 0, slowestMs: performance.now() - since });
    };
    const look = setInterval(() => {
      const count = Atomics.load(place, 1);
      if (count !== begunCases) [begunCases, since] = [count, performance.now()];
      // Before its first case the worker loads.
      if (count > 0 && performance.now() - since > LIMIT_MS) giveUp(`it took more than ${LIMIT_MS} ms`);
      else if (process.memoryUsage().rss - memoryBefore > MOST_GROWTH_BYTES)
        giveUp(`memory grew by more than ${MOST_GROWTH_BYTES / 1024 / 1024} MiB`);
    }, LOOK_MS);
    worker.on('message', (told: Told) => {
      if (told.what === 'failed') fail(reader, told.number, told.message);
      else end({ next: to, read: told.read, slowestMs: told.slowestMs });
    });
    worker.on('error', (error) => giveUp(`the thread ended: ${error.message}`));
  });
}

function fail(reader: string, number: number, message: string): void {
  failures.push({ reader, number, message });
  console.log(
    `FAILED ${reader} case ${number}: ${message}\n  again: npm run fuzz -- --reader ${reader} --seed ${values.seed} --case ${number}`,
  );
}
