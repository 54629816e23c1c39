/** One worker thread of the round and card commands: parses the files once, then works on the holes it is asked for. */

import { parentPort, workerData } from 'node:worker_threads';
import { parseCourseText } from '../../core/course/parse.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import type { RoundReply, RoundWorkerData } from './round-pool.ts';
import { roundTask, type RoundTask } from './round-task.ts';

const { courseText, playerText } = workerData as RoundWorkerData;
const course = parseCourseText(courseText);
const player = parsePlayerText(playerText);
if (!course.ok || !player.ok)
  throw new Error('The files that the command has read do not parse in its worker.');
const port = parentPort;
if (port === null) throw new Error('This file runs as a worker thread of the round and card commands.');
port.on('message', (task: RoundTask) => {
  const reply: RoundReply = { hole: task.hole, result: roundTask(course.value, player.value, task) };
  port.postMessage(reply);
});
