import { describe, expect, it } from 'vitest';
import { verdictOf } from './verdict.ts';

const report = (vulnerabilities: Record<string, number>): string =>
  JSON.stringify({ auditReportVersion: 2, vulnerabilities: {}, metadata: { vulnerabilities } });

describe('the audit of dependencies', () => {
  it('says that nothing is known, or what is', () => {
    expect(verdictOf(report({ info: 0, low: 0, moderate: 0, high: 0, critical: 0 }))).toEqual({
      line: 'Dependencies: no known holes.',
      isBad: false,
    });
    expect(verdictOf(report({ low: 2, moderate: 1, high: 0, critical: 0 })).isBad).toBe(false);
    const bad = verdictOf(report({ low: 0, moderate: 0, high: 3, critical: 1 }));
    expect(bad.isBad).toBe(true);
    expect(bad.line).toContain('1 critical, 3 high');
  });

  it('is no failure where nobody could be asked', () => {
    for (const told of [
      '',
      'null',
      '[]',
      '{"message":"405 Method Not Allowed","statusCode":405}',
      '{"auditReportVersion":2',
      'npm error',
    ]) {
      expect(verdictOf(told)).toMatchObject({ isBad: false });
      expect(verdictOf(told).line).toContain('did not tell');
    }
  });
});
