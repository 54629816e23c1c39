/** The program's own sources as texts, for checks that read them. */

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

export const ROOT = join(import.meta.dirname, '..', '..', '..');

export interface Source {
  /** From the top of the project, `/`-separated. */
  readonly path: string;
  /** Without comments. */
  readonly code: string;
}

/** TypeScript files below a folder. */
export function sourcesIn(folder: string): readonly Source[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/u.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => !path.includes(`${sep}node_modules${sep}`))
    .sort()
    .map((path) => ({
      path: relative(ROOT, path).split(sep).join('/'),
      code: withoutComments(readFileSync(path, 'utf8')),
    }));
}

/** A slash that follows a colon belongs to an address. */
function withoutComments(code: string): string {
  return code.replace(/\/\*[^]*?\*\//gu, '').replace(/(^|[^:'"`\\])\/\/[^\n]*/gu, '$1');
}
