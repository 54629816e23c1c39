/** Files of an older format version are brought to the current one step by step; newer ones are refused. */

import { type Fault, type Result, refuse, succeed } from './result.ts';
import { type Told, toldFault } from './words/told.ts';

export interface Versions {
  readonly version: number;
  /** The newest that this program reads. */
  readonly current: number;
}

/**
 * `migrations[i]` leads from version i + 1 to version i + 2, so the current one is one more than they are. `newer` is told of
 * a file beyond that, with both versions named.
 */
export function bringUpToDate<T>(
  file: T,
  version: number,
  migrations: readonly ((file: T) => T)[],
  newer: (versions: Versions) => Told,
): Result<T, Fault> {
  const current = migrations.length + 1;
  if (version > current) {
    return refuse(
      toldFault({
        severity: 'error',
        code: 'newer-format',
        where: 'holewright.formatVersion',
        message: newer({ version, current }),
      }),
    );
  }
  return succeed(migrations.slice(version - 1).reduce((migrated, step) => step(migrated), file));
}
