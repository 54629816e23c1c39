/** Runs cases one after the other in a thread that can be ended, and tells which one it is at. */

import { parentPort, workerData } from 'node:worker_threads';
import { readerOf, runCase, seedOf } from './readers.ts';

export interface Order {
  readonly reader: string;
  readonly seed: string;
  readonly from: number;
  readonly to: number;
  /** Two numbers: the case under way, and how many have been begun, so that standing still can be told. */
  readonly at: SharedArrayBuffer;
}

export type Told =
  | { readonly what: 'failed'; readonly number: number; readonly message: string }
  | { readonly what: 'done'; readonly read: number; readonly slowestMs: number; readonly slowest: number };

const { reader: name, seed, from, to, at } = workerData as Order;
const place = new Int32Array(at);
const port = parentPort;
if (port === null) throw new Error('This file runs as a worker thread of the fuzzing command.');
const tell = (told: Told): void => port.postMessage(told);

const reader = readerOf(name);
let read = 0;
let slowestMs = 0;
let slowest = from;
for (let number = from; number < to; number++) {
  Atomics.store(place, 0, number);
  let begun = performance.now();
  const begins = (): void => {
    Atomics.add(place, 1, 1);
    begun = performance.now();
  };
  try {
    if (await runCase(reader, seedOf(seed, name, number), begins)) read++;
  } catch (error) {
    const message = error instanceof Error ? (error.stack ?? error.message) : String(error);
    tell({ what: 'failed', number, message: message.split('\n').slice(0, 6).join('\n').slice(0, 900) });
  }
  const ms = performance.now() - begun;
  if (ms > slowestMs) [slowestMs, slowest] = [ms, number];
}
tell({ what: 'done', read, slowestMs, slowest });
