/** Runs the program's commands in the project's root: as child processes, or within this one where that will do. */

import { execFile } from 'node:child_process';
import { type Command, exitCodeOf } from '../electron/cli/command.ts';

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

const COMMANDS = {
  card: async () => (await import('../electron/cli/card.ts')).card,
  check: async () => (await import('../electron/cli/check.ts')).check,
  fly: async () => (await import('../electron/cli/fly.ts')).fly,
  import: async () => (await import('../electron/cli/import.ts')).importFile,
  plan: async () => (await import('../electron/cli/plan.ts')).plan,
  putt: async () => (await import('../electron/cli/putt.ts')).putt,
  round: async () => (await import('../electron/cli/round.ts')).round,
  simulate: async () => (await import('../electron/cli/simulate.ts')).simulate,
  spread: async () => (await import('../electron/cli/spread.ts')).spread,
} as const satisfies Readonly<Record<string, () => Promise<Command>>>;

/**
 * The command in this process, which spares the seconds that a program takes to start; what it prints is caught.
 * One call at a time: the standard streams are shared.
 */
export async function callCommand(
  command: keyof typeof COMMANDS,
  ...args: readonly string[]
): Promise<CommandRun> {
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
