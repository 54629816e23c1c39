/** The program's own version, as package.json states it. */

import { readFileSync } from 'node:fs';

const manifest: unknown = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));

export const PROGRAM_VERSION: string =
  typeof manifest === 'object' && manifest !== null && 'version' in manifest
    ? String(manifest.version)
    : 'unknown';
