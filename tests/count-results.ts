/**
 * Adds up vitest's JSON reports given on the command line and prints `N passed, N failed` as the last line.
 * A file that could not even be loaded, and a report that is missing, count as one failure each.
 */

import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import * as v from 'valibot';

const reportSchema = v.object({
  success: v.boolean(),
  testResults: v.array(
    v.object({
      name: v.string(),
      status: v.string(),
      assertionResults: v.array(
        v.object({
          fullName: v.string(),
          status: v.string(),
          failureMessages: v.optional(v.nullable(v.array(v.string()))),
        }),
      ),
    }),
  ),
});

export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: readonly string[];
  /** Tests that failed, with the file and the first line of why: the end of a log is what is read first. */
  readonly failures: readonly string[];
  /** What failed without being a test. */
  readonly broken: readonly string[];
}

/** Counts one report's text; null stands for a report that was not written. */
export function countReport(name: string, text: string | null): Count {
  const report = v.safeParse(v.pipe(v.string(), v.parseJson(), reportSchema), text);
  if (!report.success)
    return { passed: 0, failed: 1, skipped: [], failures: [], broken: [`${name}: the run wrote no report`] };
  const { success, testResults } = report.output;
  const tests = testResults.flatMap((file) => file.assertionResults);
  const broken = testResults
    .filter(
      (file) => file.status === 'failed' && file.assertionResults.every(({ status }) => status !== 'failed'),
    )
    .map((file) => `${file.name}: could not be run`);
  const failures = testResults.flatMap((file) =>
    file.assertionResults
      .filter(({ status }) => status === 'failed')
      .map(({ fullName, failureMessages }) => {
        const why = failureMessages?.[0]?.split('\n')[0] ?? 'without a word';
        return `${basename(file.name)}: ${fullName}: ${why}`;
      }),
  );
  if (!success && failures.length + broken.length === 0) broken.push(`${name}: an error outside of any test`);
  return {
    passed: tests.filter(({ status }) => status === 'passed').length,
    failed: failures.length + broken.length,
    failures,
    skipped: tests
      .filter(({ status }) => status !== 'passed' && status !== 'failed')
      .map(({ fullName }) => fullName),
    broken,
  };
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}

if (process.argv[1] === import.meta.filename) {
  const counts = process.argv.slice(2).map((path) => countReport(basename(path, '.json'), textOf(path)));
  for (const line of counts.flatMap(({ broken }) => broken)) console.log(line);
  for (const line of counts.flatMap(({ failures }) => failures)) console.log(`failed: ${line}`);
  for (const name of counts.flatMap(({ skipped }) => skipped)) console.log(`skipped: ${name}`);
  const sum = (part: 'passed' | 'failed'): number => counts.reduce((total, count) => total + count[part], 0);
  console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
  process.exitCode = sum('failed') === 0 && sum('passed') > 0 ? 0 : 1;
}
