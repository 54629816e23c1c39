/** Reads the course and player files of a command, with one clear line per fault. */

import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { parseCourseText } from '../../core/course/parse.ts';
import type { Course } from '../../core/course/model.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import type { Fault, Result } from '../../core/result.ts';
import { EXIT, Stop, stopForFaults, stopUnread } from './command.ts';

/** Which input a result was computed from. */
export interface InputVersion {
  readonly file: string;
  readonly name: string;
  readonly formatVersion: number;
  readonly sha256: string;
}

export interface Input<T> {
  readonly text: string;
  readonly value: T;
  readonly version: InputVersion;
}

export async function readCourse(file: string): Promise<Input<Course>> {
  return readInput(file, parseCourseText);
}

export async function readPlayer(file: string): Promise<Input<PlayerModel>> {
  return readInput(file, parsePlayerText);
}

async function readInput<T extends { readonly name: string }>(
  file: string,
  parse: (text: string) => Result<T, readonly Fault[]>,
): Promise<Input<T>> {
  const text = await readText(file);
  const parsed = parse(text);
  if (!parsed.ok) throw stopForFaults(file, parsed.error);
  return {
    text,
    value: parsed.value,
    version: {
      file,
      name: parsed.value.name,
      formatVersion: formatVersionOf(text),
      sha256: createHash('sha256').update(text).digest('hex'),
    },
  };
}

async function readText(file: string): Promise<string> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    throw stopUnread(file, error);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Stop(EXIT.badInput, [`${file}: error: it is not UTF-8 text. Save it again as UTF-8.`]);
  }
}

/** The version that the file itself states; 1 where it states none. The text has parsed before. */
function formatVersionOf(text: string): number {
  const head: unknown = (JSON.parse(text) as { readonly holewright?: { readonly formatVersion?: unknown } })
    .holewright?.formatVersion;
  return typeof head === 'number' ? head : 1;
}
