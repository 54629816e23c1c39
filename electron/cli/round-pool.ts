/** The holes of a round, solved on worker threads, with progress on a terminal. */

import { faultLine, type Fault, type Result } from '../../core/result.ts';
import type { RoundHole } from '../../core/round/round-hole.ts';
import type { Course } from '../../core/course/model.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { EXIT, Stop } from './command.ts';
import { askWorkers } from './hole-pool.ts';
import type { Input } from './inputs.ts';
import type { RoundTask } from './round-task.ts';

export interface RoundWorkerData {
  readonly courseText: string;
  readonly playerText: string;
}

export type RoundReply = { readonly hole: number; readonly result: Result<RoundHole, Fault> };

/** Every hole, or a `Stop` that names each one at fault: a round with a hole missing has no odds. */
export async function solveRound(
  course: Input<Course>,
  player: Input<PlayerModel>,
  tasks: readonly RoundTask[],
): Promise<readonly RoundHole[]> {
  const replies = await askWorkers<RoundReply>(
    {
      name: 'round-worker',
      data: { courseText: course.text, playerText: player.text } satisfies RoundWorkerData,
    },
    tasks,
    progress,
  );
  const failed = replies.flatMap(({ result }) =>
    result.ok ? [] : [`${course.version.file}: ${faultLine(result.error)}`],
  );
  if (failed.length > 0) throw new Stop(EXIT.badInput, failed);
  return replies.flatMap(({ result }) => (result.ok ? [result.value] : []));
}

function progress(done: number, total: number): void {
  if (process.stderr.isTTY)
    process.stderr.write(`\rsolved ${done} of ${total} holes${done === total ? '\n' : ''}`);
}
