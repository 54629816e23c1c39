/** Runs the program's commands in the project's root, as child processes. */

import { execFile } from 'node:child_process';
import type { CommandName } from '../electron/cli/commands.ts';

export interface CommandRun {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const root = new URL('..', import.meta.url).pathname;
const MOST_OUTPUT_BYTES = 1e8;

/** As its script starts it, without npm's own start. */
export function runCommand(command: CommandName, ...args: readonly string[]): Promise<CommandRun> {
  return run(process.execPath, ['electron/cli/start.mjs', command, ...args]);
}

/** As a person types it: through the script in `package.json`. */
export function runScript(script: string, ...args: readonly string[]): Promise<CommandRun> {
  return run('npm', ['run', '--silent', script, '--', ...args]);
}

function run(program: string, args: readonly string[]): Promise<CommandRun> {
  return new Promise((resolve) => {
    execFile(program, args, { cwd: root, maxBuffer: MOST_OUTPUT_BYTES }, (error, out, err) => {
      resolve({ code: error === null ? 0 : Number(error.code), out, err });
    });
  });
}
