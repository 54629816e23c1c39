/** Runs the program's commands in the project's root: as child processes, or within this one where that will do. */

import { execFile } from 'node:child_process';
import { exitCodeOf } from '../electron/cli/command.ts';
import { type CommandName, COMMANDS } from '../electron/cli/commands.ts';

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

/**
 * The command in this process, which spares the seconds that a program takes to start; what it prints is caught.
 * One call at a time: the standard streams are shared.
 */
export async function callCommand(command: CommandName, ...args: readonly string[]): Promise<CommandRun> {
  const run = await COMMANDS[command]();
  const out = catchWords(process.stdout);
  const err = catchWords(process.stderr);
  try {
    const code = await exitCodeOf(run, args);
    return { code, out: out.words(), err: err.words() };
  } finally {
    out.letGo();
    err.letGo();
  }
}

function catchWords(stream: NodeJS.WriteStream): {
  readonly words: () => string;
  readonly letGo: () => void;
} {
  const parts: string[] = [];
  const write = stream.write.bind(stream);
  stream.write = (part: string | Uint8Array) => {
    parts.push(typeof part === 'string' ? part : new TextDecoder().decode(part));
    return true;
  };
  return {
    words: () => parts.join(''),
    letGo: () => {
      stream.write = write;
    },
  };
}
