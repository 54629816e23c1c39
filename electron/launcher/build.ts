/** Builds the page, Electron's side or the commands when the sources are newer than what was built. */

import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, readdir, rmdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';

export type Part = 'page' | 'electron' | 'commands';

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
  commands: {
    config: 'electron/cli/vite.config.ts',
    result: 'dist/commands/commands.mjs',
    sources: ['electron', 'core', 'package-lock.json'],
  },
};

const ANNOUNCED: Readonly<Record<Part, string>> = {
  page: 'Building the page (some seconds, once per change) …',
  electron: 'Building the window’s side …',
  commands: 'Building the commands (a second or two, once per change) …',
};

const LONGEST_BUILD_MS = 120_000;

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
  // What is being built is half there.
  if (!existsSync(lockOf(root, part)) && !(await isStale(root, part))) return null;
  const unlock = await lockBuilding(root, part).catch(messageOf);
  if (typeof unlock === 'string')
    return `Building failed: ${unlock}. Is the folder ${root} to be written to?`;
  try {
    // Another program may have built it meanwhile.
    return (await isStale(root, part)) ? await build(root, part, say) : null;
  } finally {
    await unlock();
  }
}

function messageOf(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

function lockOf(root: string, part: Part): string {
  return join(root, 'dist', `.building-${part}`);
}

/** Waits until no other program builds the part; then none does until what is returned is called. */
async function lockBuilding(root: string, part: Part): Promise<() => Promise<void>> {
  const lock = lockOf(root, part);
  await mkdir(join(root, 'dist'), { recursive: true });
  for (;;) {
    try {
      await mkdir(lock);
      return () => rmdir(lock);
    } catch (reason) {
      if (!(reason instanceof Error && 'code' in reason && reason.code === 'EEXIST')) throw reason;
    }
    const begun = await stat(lock).catch(() => null);
    // Whoever builds for so long was ended in the middle.
    if (begun !== null && Date.now() - begun.mtimeMs > LONGEST_BUILD_MS)
      await rmdir(lock).catch(() => undefined);
    else await setTimeout(100);
  }
}

async function build(root: string, part: Part, say: (line: string) => void): Promise<string | null> {
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const { config, result } = parts[part];
  if (!existsSync(vite)) {
    return `The program is not built yet (${result} is missing or old) and the tool for it is not installed. Run "npm ci" in ${root}, then try again.`;
  }
  say(ANNOUNCED[part]);
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
