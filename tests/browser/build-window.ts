/** Builds the page before the browser tests where its sources are newer than the last build. */

import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..', '..');

export default function buildWindow(): void {
  const built = join(ROOT, 'dist', 'renderer', 'index.html');
  const newest = Math.max(...['renderer', 'core'].map((folder) => newestIn(join(ROOT, folder))));
  if (existsSync(built) && statSync(built).mtimeMs > newest) return;
  execFileSync(
    process.execPath,
    [join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js'), 'build', '--config', 'renderer/vite.config.ts'],
    {
      cwd: ROOT,
      stdio: ['ignore', 'ignore', 'inherit'],
    },
  );
}

function newestIn(folder: string): number {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((newest, entry) => Math.max(newest, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);
}
