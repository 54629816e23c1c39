/** What all commands share: reading arguments, exit codes, and where words go. */

import { parseArgs, type ParseArgsConfig } from 'node:util';
import { faultLine, refuse, succeed, type Fault, type Result } from '../../core/result.ts';
import type { LonLat } from '../../core/course/model.ts';

/** Exit codes: done; the input is at fault; the command was called wrongly. */
export const EXIT = { done: 0, badInput: 1, badUsage: 2, ownFault: 3 } as const;

/** What a command's file does with the arguments after its name. */
export type Command = (args: readonly string[]) => void | Promise<void>;

/** A command that stops: its exit code and the lines for standard error. */
export class Stop extends Error {
  constructor(
    readonly exitCode: number,
    readonly lines: readonly string[],
  ) {
    super(lines.join('\n'));
  }
}

export function stopForUsage(problem: string, usage: string): Stop {
  return new Stop(EXIT.badUsage, [`usage error: ${problem}`, usage]);
}

/** A file that could not be read, by what the file system threw. */
export function stopUnread(file: string, error: unknown): Stop {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  const why =
    code === 'ENOENT'
      ? 'there is no such file. Check the path.'
      : code === 'EISDIR'
        ? 'it is a folder, not a file.'
        : `it cannot be read (${String(code)}).`;
  return new Stop(EXIT.badInput, [`${file}: error: ${why}`]);
}

/** One line per fault, each beginning with the file's name. */
export function stopForFaults(file: string, faults: readonly Fault[]): Stop {
  return new Stop(
    EXIT.badInput,
    faults.map((fault) => `${file}: ${faultLine(fault)}`),
  );
}

type Options = NonNullable<ParseArgsConfig['options']>;
type Values = Readonly<Record<string, string | boolean | undefined>>;

/** Values by option name. Throws `Stop` with the usage for unknown options, and prints the usage for `--help`. */
export function readArguments(args: readonly string[], options: Options, usage: string): Values {
  try {
    const { values } = parseArgs({
      args: joinNegativeValues(args),
      options: { ...options, help: { type: 'boolean' } },
      allowPositionals: false,
    });
    const single = values as Values;
    if (single.help === true) throw new Stop(EXIT.done, [usage]);
    return single;
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw stopForUsage(error instanceof Error ? error.message : String(error), usage);
  }
}

/** `--aim -30.01,40.02`: a value that begins with a minus sign and a digit is a value, not an option. */
function joinNegativeValues(args: readonly string[]): string[] {
  const joined: string[] = [];
  for (const arg of args) {
    const before = joined.at(-1);
    if (/^-\d/.test(arg) && before?.startsWith('--') === true && !before.includes('='))
      joined[joined.length - 1] = `${before}=${arg}`;
    else joined.push(arg);
  }
  return joined;
}

export function requiredText(values: Values, name: string, usage: string): string {
  const value = values[name];
  if (typeof value !== 'string' || value === '') throw stopForUsage(`--${name} is missing.`, usage);
  return value;
}

export function optionalText(values: Values, name: string): string | undefined {
  const value = values[name];
  return typeof value === 'string' ? value : undefined;
}

/** A whole number in lowest..highest, or the fallback. */
export function wholeNumber(
  values: Values,
  name: string,
  range: { readonly lowest: number; readonly highest: number; readonly fallback?: number },
  usage: string,
): number {
  const text = optionalText(values, name);
  if (text === undefined && range.fallback !== undefined) return range.fallback;
  const value = Number(text);
  if (text === undefined || !Number.isInteger(value) || value < range.lowest || value > range.highest) {
    throw stopForUsage(
      `--${name} takes a whole number from ${range.lowest} to ${range.highest}${text === undefined ? '' : `, not “${text}”`}.`,
      usage,
    );
  }
  return value;
}

/** `LON,LAT` in degrees. */
export function readLonLat(text: string): Result<LonLat, string> {
  const parts = text.split(',').map((part) => (part.trim() === '' ? NaN : Number(part)));
  const [lon, lat] = parts;
  if (
    parts.length !== 2 ||
    lon === undefined ||
    lat === undefined ||
    !(Math.abs(lon) <= 180) ||
    !(Math.abs(lat) <= 90)
  ) {
    return refuse(`“${text}” is not LON,LAT in degrees, such as -37.9966,44.0040.`);
  }
  return succeed([lon, lat]);
}

/** Runs a command: its exit code. Words of a `Stop` go to standard error (to standard output where it is no failure). */
export async function exitCodeOf(command: Command, args: readonly string[]): Promise<number> {
  try {
    await command(args);
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof Stop)) {
      // A fault of the program, not of what it was given: told apart by its own code.
      const words = error instanceof Error ? error.message : String(error);
      process.stderr.write(
        `the program itself failed: ${words}. Nothing was written. Set HOLEWRIGHT_TRACE=1 to see where, and report it.\n`,
      );
      if (process.env['HOLEWRIGHT_TRACE'] === '1' && error instanceof Error)
        process.stderr.write(`${error.stack}\n`);
      return EXIT.ownFault;
    }
    const stream = error.exitCode === EXIT.done ? process.stdout : process.stderr;
    stream.write(`${error.lines.join('\n')}\n`);
    return error.exitCode;
  }
}
