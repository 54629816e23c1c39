/** Work on many holes on worker threads. Each task is one worker's whole work, so their number changes no figure. */

import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

/**
 * Replies in the order of the tasks. `start`: the worker's own file. Rejects when a worker dies. With `keep` each reply is
 * handed over and waited for instead, and the list stays empty.
 */
export async function askWorkers<Reply>(
  start: URL,
  workerData: unknown,
  tasks: readonly unknown[],
  onDone: (done: number, total: number) => void,
  workers = availableParallelism(),
  keep?: (reply: Reply, index: number) => Promise<void>,
): Promise<readonly Reply[]> {
  const replies: Reply[] = [];
  let next = 0;
  let done = 0;
  const runOne = async (): Promise<void> => {
    const worker = new Worker(start, { workerData });
    try {
      for (let index = next++; index < tasks.length; index = next++) {
        const reply = await ask<Reply>(worker, tasks[index]);
        if (keep === undefined) replies[index] = reply;
        else await keep(reply, index);
        onDone(++done, tasks.length);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(workers, tasks.length) }, runOne));
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
