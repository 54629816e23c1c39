/** One hole of one of many courses as a worker's piece of work. */

import type { Conditions } from '../../core/conditions/conditions.ts';
import type { Fault, Result } from '../../core/result.ts';
import type { PlannedHole } from './plan-task.ts';

export interface ManyWorkerData {
  readonly playerText: string;
}

export interface ManyTask {
  readonly courseFile: string;
  /** Of the file as the command has read it: a file changed since then is refused. */
  readonly sha256: string;
  readonly hole: number;
  readonly seed: string;
  readonly conditions: Conditions;
}

export interface ManyReply {
  readonly result: Result<PlannedHole, Fault>;
}
