/** Builds the page before the browser tests where its sources are newer than the last build. */

import { join } from 'node:path';
import { buildWhereStale } from '../../electron/launcher/build.ts';

export default async function buildWindow(): Promise<void> {
  const fault = await buildWhereStale(join(import.meta.dirname, '..', '..'), 'page', () => undefined);
  if (fault !== null) throw new Error(fault);
}
