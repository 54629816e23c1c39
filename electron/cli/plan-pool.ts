/** Plans many holes on worker threads. */

import type { Fault, Result } from '../../core/result.ts';
import { askWorkers } from './hole-pool.ts';
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
  workers?: number,
): Promise<readonly PlanReply[]> {
  return askWorkers({ name: 'plan-worker', data }, tasks, onDone, workers);
}
