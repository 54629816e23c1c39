/** Work on many holes on worker threads. Each task is one worker's whole work, so their number changes no figure. */

import { availableParallelism } from 'node:os';
import { Worker, type WorkerOptions } from 'node:worker_threads';

/** Which of the files beside this one a worker runs, and what it is started with. */
export interface WorkerStart {
  readonly name: 'plan-worker' | 'plan-many-worker' | 'round-worker';
  readonly data: unknown;
}

/** Room for short-lived objects, which a worker makes plenty of; more saves no time that can be measured. */
const YOUNG_GENERATION_MB = 24;

export type TakeReply<Reply> = (reply: Reply, index: number) => void | Promise<void>;

/** Hands each reply over with its task's index, and waits before that worker goes on. Rejects when a worker dies. */
export async function eachReply<Reply>(
  { name, data }: WorkerStart,
  tasks: readonly unknown[],
  take: TakeReply<Reply>,
  workers = availableParallelism(),
): Promise<void> {
  let next = 0;
  const runOne = async (): Promise<void> => {
    const worker = startWorker(name, {
      workerData: data,
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

/** The built file, or the source with a loader of TypeScript before it where this file is a source itself. */
function startWorker(name: WorkerStart['name'], options: WorkerOptions): Worker {
  const here = import.meta.url;
  if (here.endsWith('.mjs')) return new Worker(new URL(`./${name}.mjs`, here), options);
  const argv = [new URL(`./${name}.ts`, here).href];
  return new Worker(new URL('./worker-start.mjs', here), { ...options, argv });
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
