/** One worker thread of `plan-many`: keeps the player and the course of its last hole, then plans what it is asked for. */

import { parentPort, workerData } from 'node:worker_threads';
import type { Course } from '../../core/course/model.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { type Fault, refuse, type Result, succeed } from '../../core/result.ts';
import { Stop } from './command.ts';
import { readCourse } from './inputs.ts';
import type { ManyReply, ManyTask, ManyWorkerData } from './plan-many-task.ts';
import { type PlannedHole, planTask } from './plan-task.ts';

const player = parsePlayerText((workerData as ManyWorkerData).playerText);
if (!player.ok) throw new Error('The player file that the command has read does not parse in its worker.');
const port = parentPort;
if (port === null) throw new Error('This file runs as a worker thread of the plan-many command.');

let last: { readonly sha256: string; readonly course: Course } | null = null;

async function courseOf(task: ManyTask): Promise<Result<Course, Fault>> {
  if (last?.sha256 === task.sha256) return succeed(last.course);
  try {
    const read = await readCourse(task.courseFile);
    if (read.version.sha256 === task.sha256) {
      last = { sha256: task.sha256, course: read.value };
      return succeed(read.value);
    }
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
  }
  const message = 'the file has changed or gone while its holes were planned. Run the command again.';
  return refuse({ severity: 'error', code: 'course-changed', where: `hole ${task.hole}`, message });
}

async function planOne(player: PlayerModel, task: ManyTask): Promise<Result<PlannedHole, Fault>> {
  const course = await courseOf(task);
  return course.ok ? planTask(course.value, player, task) : course;
}

port.on('message', (task: ManyTask) => {
  void planOne(player.value, task).then((result) => port.postMessage({ result } satisfies ManyReply));
});
