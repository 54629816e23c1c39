/** What `npm audit --json` (report version 2) says, in one line, and whether a release has to wait for it. */

export interface Verdict {
  readonly line: string;
  /** Known holes that count as high or critical; false too where nobody could be asked. */
  readonly isBad: boolean;
}

const LEVELS = ['critical', 'high', 'moderate', 'low'] as const;

export function verdictOf(told: string): Verdict {
  const counts = countsIn(told);
  if (counts === null)
    return {
      line: 'Dependencies: the registry did not tell, so nothing is known about them today.',
      isBad: false,
    };
  const found = LEVELS.filter((level) => (counts[level] ?? 0) > 0).map(
    (level) => `${counts[level]!} ${level}`,
  );
  const isBad = (counts['critical'] ?? 0) + (counts['high'] ?? 0) > 0;
  return {
    line: `Dependencies: ${found.length === 0 ? 'no known holes' : `known holes: ${found.join(', ')}; "npm audit" names them`}.`,
    isBad,
  };
}

function countsIn(told: string): Readonly<Record<string, number>> | null {
  try {
    const report = JSON.parse(told) as {
      readonly auditReportVersion?: unknown;
      readonly metadata?: { readonly vulnerabilities?: Readonly<Record<string, number>> };
    } | null;
    if (report?.auditReportVersion === undefined) return null;
    return report.metadata?.vulnerabilities ?? null;
  } catch {
    return null;
  }
}
