/** `npm run --silent plan`: options and recommendation for one hole, several, or all. */

import { DEFAULT_SEED } from '../../core/plan/prepare.ts';
import {
  EXIT,
  optionalText,
  readArguments,
  readLonLat,
  requiredText,
  Stop,
  stopForUsage,
} from './command.ts';
import { DAY_OPTIONS, DAY_USAGE, readDay } from './day-options.ts';
import { readCourse, readPlayer } from './inputs.ts';
import { planDocument } from './plan-document.ts';
import { planOnWorkers } from './plan-pool.ts';
import { planReport } from './plan-report.ts';
import type { PlanTask } from './plan-task.ts';
import { planTask } from './plan-task.ts';
import { faultLine } from '../../core/result.ts';
import { PROGRAM_VERSION } from './version.ts';

const USAGE = `usage: npm run --silent plan -- --course FILE --player FILE --hole N|N,N,...|all
       [--tee NAME] [--from LON,LAT] [--hole-position NAME] [--seed S] [--json] [--sensitivity]
${DAY_USAGE}`;

export async function plan(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    {
      course: text,
      player: text,
      hole: text,
      tee: text,
      from: text,
      'hole-position': text,
      seed: text,
      json: { type: 'boolean' },
      sensitivity: { type: 'boolean' },
      ...DAY_OPTIONS,
    },
    USAGE,
  );
  const conditions = await readDay(values, USAGE);
  const course = await readCourse(requiredText(values, 'course', USAGE));
  const player = await readPlayer(requiredText(values, 'player', USAGE));
  const asked = requiredText(values, 'hole', USAGE);
  const holes = readHoles(
    asked,
    course.value.holes.map((hole) => hole.number),
  );
  if (holes.length === 0) {
    throw new Stop(EXIT.badInput, [
      `${course.version.file}: error: it has no hole to plan. Draw a hole line (golf=hole with ref and par).`,
    ]);
  }
  const from = optionalText(values, 'from');
  const spot = from === undefined ? undefined : readLonLat(from);
  if (spot?.ok === false) throw stopForUsage(`--from: ${spot.error}`, USAGE);
  const tee = optionalText(values, 'tee');
  const holePosition = optionalText(values, 'hole-position');
  const seed = optionalText(values, 'seed') ?? DEFAULT_SEED;
  const tasks = holes.map(
    (hole): PlanTask => ({
      hole,
      seed,
      conditions,
      sensitivity: values.sensitivity === true,
      ...(tee === undefined ? {} : { tee }),
      ...(spot === undefined ? {} : { from: spot.value }),
      ...(holePosition === undefined ? {} : { holePosition }),
    }),
  );
  const results =
    tasks.length === 1
      ? [{ hole: tasks[0]!.hole, result: planTask(course.value, player.value, tasks[0]!) }]
      : await planOnWorkers({ courseText: course.text, playerText: player.text }, tasks, progress);
  const failed = results.flatMap(({ result }) =>
    result.ok ? [] : [`${course.version.file}: ${faultLine(result.error)}`],
  );
  const planned = results.flatMap(({ result }) => (result.ok ? [result.value] : []));
  for (const warning of player.value.warnings)
    process.stderr.write(`${player.version.file}: ${faultLine(warning)}\n`);
  if (planned.length === 0) {
    throw new Stop(EXIT.badInput, failed);
  }
  if (values.json === true) {
    const inputs = { program: PROGRAM_VERSION, course: course.version, player: player.version };
    const documents = planned.map((hole) => planDocument(hole, seed, inputs));
    process.stdout.write(`${JSON.stringify(/^\d+$/.test(asked) ? documents[0] : documents, null, 1)}\n`);
  } else {
    process.stdout.write(`${planned.map((hole) => planReport(hole, player.value.units)).join('\n\n')}\n`);
  }
  if (failed.length > 0) throw new Stop(EXIT.badInput, failed);
}

function readHoles(text: string, known: readonly number[]): number[] {
  if (text === 'all') return [...known];
  const holes = text.split(',').map(Number);
  if (holes.some((hole) => !Number.isInteger(hole) || hole < 1)) {
    throw stopForUsage(`--hole takes hole numbers or “all”, not “${text}”.`, USAGE);
  }
  return holes;
}

function progress(done: number, total: number): void {
  if (process.stderr.isTTY)
    process.stderr.write(`\rplanned ${done} of ${total} holes${done === total ? '\n' : ''}`);
}
