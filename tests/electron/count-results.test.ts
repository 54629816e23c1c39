import { describe, expect, it } from 'vitest';
import { countReport } from '../count-results.ts';

const report = (success: boolean, ...files: readonly (readonly [string, ...string[]])[]): string =>
  JSON.stringify({
    success,
    testResults: files.map(([status, ...tests], index) => ({
      name: `file ${index}`,
      status,
      assertionResults: tests.map((test, at) => ({
        fullName: `test ${at}`,
        status: test,
        ...(test === 'failed' ? { failureMessages: ['expected 1 to be 2\n    at somewhere'] } : {}),
      })),
    })),
  });

describe('the count of test results', () => {
  it('adds up what passed, failed and was skipped, and names what failed', () => {
    const count = countReport(
      'unit',
      report(false, ['failed', 'passed', 'failed'], ['passed', 'passed', 'pending']),
    );
    expect(count).toEqual({
      passed: 2,
      failed: 1,
      skipped: ['test 1'],
      failures: ['file 0: test 1: expected 1 to be 2'],
      broken: [],
    });
  });

  it('takes a file that could not be loaded for a failure', () => {
    expect(countReport('unit', report(false, ['failed'], ['passed', 'passed']))).toMatchObject({
      passed: 1,
      failed: 1,
    });
  });

  it('takes a missing or cut-off report, and an error outside of tests, for a failure', () => {
    expect(countReport('unit', null).failed).toBe(1);
    expect(countReport('unit', '{"success":').failed).toBe(1);
    expect(countReport('unit', report(false, ['passed', 'passed'])).failed).toBe(1);
  });
});
