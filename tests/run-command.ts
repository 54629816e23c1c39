/** Runs the program's commands as child processes, in the project's root. */

import { execFile } from 'node:child_process';

export interface CommandRun {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const root = new URL('..', import.meta.url).pathname;
const MOST_OUTPUT_BYTES = 1e8;

/** The command's own file, as its script starts it, without npm's own start. */
export function runCommand(command: string, ...args: readonly string[]): Promise<CommandRun> {
  return run(process.execPath, ['--import', 'tsx', `electron/cli/${command}.ts`, ...args]);
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
