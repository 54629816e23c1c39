/** One worker thread: parses the files once, then plans the holes it is asked for. */

import { parentPort, workerData } from 'node:worker_threads';
import { parseCourseText } from '../../core/course/parse.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import type { PlanReply, PlanWorkerData } from './plan-pool.ts';
import { planTask, type PlanTask } from './plan-task.ts';

const { courseText, playerText } = workerData as PlanWorkerData;
const course = parseCourseText(courseText);
const player = parsePlayerText(playerText);
if (!course.ok || !player.ok)
  throw new Error('The files that the command has read do not parse in its worker.');
const port = parentPort;
if (port === null) throw new Error('This file runs as a worker thread of the plan command.');
port.on('message', (task: PlanTask) => {
  const reply: PlanReply = { hole: task.hole, result: planTask(course.value, player.value, task) };
  port.postMessage(reply);
});
