/** `npm run --silent check`: is this course file fit to plan? */

import { checkCourse } from '../../core/course/check.ts';
import { faultLine } from '../../core/result.ts';
import { EXIT, readArguments, requiredText, runCommand, Stop } from './command.ts';
import { readCourse } from './inputs.ts';

const USAGE = 'usage: npm run --silent check -- --course FILE [--json]';

async function check(args: readonly string[]): Promise<void> {
  const values = readArguments(args, { course: { type: 'string' }, json: { type: 'boolean' } }, USAGE);
  const file = requiredText(values, 'course', USAGE);
  const course = await readCourse(file);
  const faults = checkCourse(course.value);
  const errors = faults.filter((fault) => fault.severity === 'error');
  const warnings = faults.filter((fault) => fault.severity === 'warning');
  if (values.json === true) {
    process.stdout.write(
      `${JSON.stringify({ file, name: course.value.name, holes: course.value.holes.length, errors, warnings }, null, 1)}\n`,
    );
  } else {
    for (const fault of warnings) process.stdout.write(`${file}: ${faultLine(fault)}\n`);
    process.stdout.write(
      `${file}: ${course.value.name}, ${course.value.holes.length} holes, par ${course.value.holes.reduce((sum, hole) => sum + hole.par, 0)}: ` +
        `${errors.length} errors, ${warnings.length} warnings\n`,
    );
  }
  if (errors.length > 0) {
    throw new Stop(
      EXIT.badInput,
      errors.map((fault) => `${file}: ${faultLine(fault)}`),
    );
  }
}

await runCommand(check);
