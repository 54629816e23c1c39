/** Builds the commands before the tests where their sources are newer: the tests start them as people do. */

import { join } from 'node:path';
import { buildWhereStale } from '../electron/launcher/build.ts';

export default async function buildCommands(): Promise<void> {
  const fault = await buildWhereStale(join(import.meta.dirname, '..'), 'commands', () => undefined);
  if (fault !== null) throw new Error(fault);
}
