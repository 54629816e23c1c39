/** `npm run --silent check`: is this course file fit to plan, and what does it still lack? The same as the window tells. */

import { openDocumentText } from '../../core/course/document.ts';
import { type CourseFault, faultsIn, reportOn } from '../../core/course/report.ts';
import { EXIT, readArguments, requiredText, Stop, stopForFaults } from './command.ts';
import { readCourse } from './inputs.ts';

const USAGE = 'usage: npm run --silent check -- --course FILE [--json]';

export async function check(args: readonly string[]): Promise<void> {
  const values = readArguments(args, { course: { type: 'string' }, json: { type: 'boolean' } }, USAGE);
  const file = requiredText(values, 'course', USAGE);
  const course = await readCourse(file);
  const opened = openDocumentText(course.text);
  if (!opened.ok) throw stopForFaults(file, opened.error);
  const faults = faultsIn(reportOn(opened.value.document));
  const errors = faults.filter((fault) => fault.severity === 'error');
  const warnings = faults.filter((fault) => fault.severity === 'warning');
  const line = ({ severity, where, message }: CourseFault): string =>
    `${file}: ${severity}: ${where}: ${message}`;
  if (values.json === true) {
    process.stdout.write(
      `${JSON.stringify({ file, name: course.value.name, holes: course.value.holes.length, errors, warnings }, null, 1)}\n`,
    );
  } else {
    for (const fault of warnings) process.stdout.write(`${line(fault)}\n`);
    process.stdout.write(
      `${file}: ${course.value.name}, ${course.value.holes.length} holes, par ${course.value.holes.reduce((sum, hole) => sum + hole.par, 0)}: ` +
        `${errors.length} errors, ${warnings.length} warnings\n`,
    );
  }
  if (errors.length > 0) {
    throw new Stop(EXIT.badInput, errors.map(line));
  }
}
