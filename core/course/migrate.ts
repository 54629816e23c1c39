/**
 * Brings a course file of an older format version to the current one, step by step. Version 1 is the first, so the
 * chain is still empty; a released version's fixture stays under tests/course/fixtures/ for good.
 */

import { bringUpToDate } from '../format-version.ts';
import type { Fault, Result } from '../result.ts';
import { told } from '../words/told.ts';
import type { Collection } from './schema.ts';

/** Takes a collection of one version to the next; must not change its argument. */
export type Migration = (collection: Collection) => Collection;

/** `MIGRATIONS[i]` leads from version i + 1 to version i + 2. */
export const MIGRATIONS: readonly Migration[] = [];

/** The version that this program writes. */
export const FORMAT_VERSION = MIGRATIONS.length + 1;

/** Refuses a version newer than the chain reaches, with both versions named. */
export function migrateCollection(
  collection: Collection,
  fileVersion: number,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<Collection, Fault> {
  return bringUpToDate(collection, fileVersion, migrations, (versions) =>
    told(({ courseReading }) => courseReading.file.newer, versions),
  );
}
