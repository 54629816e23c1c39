/** The commands by the names that `package.json` starts them with. Each is loaded only when it is called. */

import { type Command, EXIT, exitCodeOf } from './command.ts';

export const COMMANDS = {
  card: async () => (await import('./card.ts')).card,
  check: async () => (await import('./check.ts')).check,
  fly: async () => (await import('./fly.ts')).fly,
  import: async () => (await import('./import.ts')).importFile,
  plan: async () => (await import('./plan.ts')).plan,
  'plan-many': async () => (await import('./plan-many.ts')).planMany,
  putt: async () => (await import('./putt.ts')).putt,
  round: async () => (await import('./round.ts')).round,
  simulate: async () => (await import('./simulate.ts')).simulate,
  spread: async () => (await import('./spread.ts')).spread,
} as const satisfies Readonly<Record<string, () => Promise<Command>>>;

export type CommandName = keyof typeof COMMANDS;

/** Runs the command that the first argument names, with the others; resolves with its exit code. */
export async function runNamed([name = '', ...args]: readonly string[]): Promise<number> {
  if (!isName(name)) {
    process.stderr.write(
      `usage error: there is no command “${name}”; there are ${Object.keys(COMMANDS).join(', ')}.\n`,
    );
    return EXIT.badUsage;
  }
  return exitCodeOf(await COMMANDS[name](), args);
}

function isName(name: string): name is CommandName {
  return Object.hasOwn(COMMANDS, name);
}
