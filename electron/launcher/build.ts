/** Builds the page (and Electron's side) when the sources are newer than what was built. */

import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';

export type Part = 'page' | 'electron';

interface Built {
  readonly config: string;
  readonly result: string;
  readonly sources: readonly string[];
}

const parts: Readonly<Record<Part, Built>> = {
  page: {
    config: 'renderer/vite.config.ts',
    result: 'dist/renderer/index.html',
    sources: ['renderer', 'core', 'electron/contract', 'package-lock.json'],
  },
  electron: {
    config: 'electron/vite.config.ts',
    result: 'dist/electron/main.cjs',
    sources: ['electron', 'core', 'package-lock.json'],
  },
};

/** Whether anything the part is made from is newer than what was made. Folders count: files may have gone. */
export async function isStale(root: string, part: Part): Promise<boolean> {
  const { result, sources } = parts[part];
  const made = await stat(join(root, result)).catch(() => null);
  if (made === null) return true;
  for (const source of sources) {
    if ((await newest(join(root, source))) > made.mtimeMs) return true;
  }
  return false;
}

async function newest(path: string): Promise<number> {
  const seen = await stat(path).catch(() => null);
  if (seen === null) return 0;
  if (!seen.isDirectory()) return seen.mtimeMs;
  const inside = await Promise.all((await readdir(path)).map((name) => newest(join(path, name))));
  return Math.max(seen.mtimeMs, ...inside);
}

/** Builds the part where it is stale. Null where all is well, else words for the person. */
export async function buildWhereStale(
  root: string,
  part: Part,
  say: (line: string) => void,
): Promise<string | null> {
  if (!(await isStale(root, part))) return null;
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const { config, result } = parts[part];
  if (!existsSync(vite)) {
    return `The program is not built yet (${result} is missing or old) and the tool for it is not installed. Run "npm ci" in ${root}, then try again.`;
  }
  say(
    part === 'page' ? 'Building the page (some seconds, once per change) …' : 'Building the window’s side …',
  );
  const { code, said } = await run(
    process.execPath,
    [vite, 'build', '--config', config, '--logLevel', 'warn'],
    root,
  );
  return code === 0 ? null : `Building failed:\n${said.trim()}\nRun "npm ci" in ${root} and try again.`;
}

function run(program: string, args: readonly string[], cwd: string): Promise<{ code: number; said: string }> {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    const hear = (part: Buffer): void => {
      said = (said + part.toString()).slice(-8000);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', (error) => resolve({ code: 1, said: error.message }));
    child.on('close', (code) => resolve({ code: code ?? 1, said }));
  });
}
