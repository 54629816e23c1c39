/** For the build: names the sources that a plan's numbers come from, so that plans of another engine are never shown. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Folders and files below the project's root. The lock file stands for all packages, the compiler among them. */
const SOURCES = ['core', 'renderer/workers', 'renderer/kept-plans', 'renderer/state', 'package-lock.json'];

/** SHA-256 over names and contents of all files there, hex. */
export function engineSources(root: string): string {
  const hash = createHash('sha256');
  for (const source of SOURCES) {
    for (const path of filesBelow(root, source)) {
      hash.update(`${path}\0`).update(createHash('sha256').update(readFileSync(join(root, path))).digest());
    }
  }
  return hash.digest('hex');
}

/** Paths with `/`, in one order everywhere. */
function filesBelow(root: string, path: string): readonly string[] {
  if (path.endsWith('.json')) return [path];
  return readdirSync(join(root, path), { withFileTypes: true })
    .flatMap((entry) =>
      entry.isDirectory() ? filesBelow(root, `${path}/${entry.name}`) : [`${path}/${entry.name}`],
    )
    .sort();
}
