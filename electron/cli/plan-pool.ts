/** Plans many holes on worker threads. Each hole is one worker's whole work, so their number changes no figure. */

import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Fault, Result } from '../../core/result.ts';
import type { PlannedHole, PlanTask } from './plan-task.ts';

/** What a worker is started with: the files' text, which it parses for itself. */
export interface PlanWorkerData {
  readonly courseText: string;
  readonly playerText: string;
}

export type PlanReply = { readonly hole: number; readonly result: Result<PlannedHole, Fault> };

/** Replies in the order of the tasks. Rejects when a worker dies. */
export async function planOnWorkers(
  data: PlanWorkerData,
  tasks: readonly PlanTask[],
  onDone: (done: number, total: number) => void,
  workers = availableParallelism(),
): Promise<readonly PlanReply[]> {
  const replies = new Array<PlanReply>(tasks.length);
  let next = 0;
  let done = 0;
  const runOne = async (): Promise<void> => {
    const worker = new Worker(new URL('./plan-worker-start.mjs', import.meta.url), { workerData: data });
    try {
      for (let index = next++; index < tasks.length; index = next++) {
        replies[index] = await ask(worker, tasks[index]!);
        onDone(++done, tasks.length);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(workers, tasks.length) }, runOne));
  return replies;
}

function ask(worker: Worker, task: PlanTask): Promise<PlanReply> {
  return new Promise((resolve, reject) => {
    const failed = (error: unknown): void =>
      reject(error instanceof Error ? error : new Error(String(error)));
    worker.once('error', failed);
    worker.once('message', (reply: PlanReply) => {
      worker.off('error', failed);
      resolve(reply);
    });
    worker.postMessage(task);
  });
}
