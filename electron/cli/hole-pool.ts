/** Work on many holes on worker threads. Each task is one worker's whole work, so their number changes no figure. */

import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

/** What a worker runs, and what it is started with. */
export interface WorkerStart {
  readonly file: URL;
  readonly data: unknown;
}

/** Room for short-lived objects, which a worker makes plenty of; more saves no time that can be measured. */
const YOUNG_GENERATION_MB = 24;

export type TakeReply<Reply> = (reply: Reply, index: number) => void | Promise<void>;

/** Hands each reply over with its task's index, and waits before that worker goes on. Rejects when a worker dies. */
export async function eachReply<Reply>(
  { file, data }: WorkerStart,
  tasks: readonly unknown[],
  take: TakeReply<Reply>,
  workers = availableParallelism(),
): Promise<void> {
  let next = 0;
  const runOne = async (): Promise<void> => {
    const worker = new Worker(new URL('./worker-start.mjs', import.meta.url), {
      workerData: data,
      argv: [file.href],
      resourceLimits: { maxYoungGenerationSizeMb: YOUNG_GENERATION_MB },
    });
    try {
      for (let index = next++; index < tasks.length; index = next++)
        await take(await ask<Reply>(worker, tasks[index]), index);
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(workers, tasks.length) }, runOne));
}

/** Replies in the order of the tasks. Rejects when a worker dies. */
export async function askWorkers<Reply>(
  start: WorkerStart,
  tasks: readonly unknown[],
  onDone: (done: number, total: number) => void,
  workers?: number,
): Promise<readonly Reply[]> {
  const replies = new Array<Reply>(tasks.length);
  let done = 0;
  const keep = (reply: Reply, index: number): void => {
    replies[index] = reply;
    onDone(++done, tasks.length);
  };
  await eachReply<Reply>(start, tasks, keep, workers);
  return replies;
}

function ask<Reply>(worker: Worker, task: unknown): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const failed = (error: unknown): void =>
      reject(error instanceof Error ? error : new Error(String(error)));
    worker.once('error', failed);
    worker.once('message', (reply: Reply) => {
      worker.off('error', failed);
      resolve(reply);
    });
    worker.postMessage(task);
  });
}
