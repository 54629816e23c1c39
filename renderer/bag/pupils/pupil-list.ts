/** What is said of each player file in the folder without estimating anything. */

import type { Words } from '../../../core/words/words.ts';
import * as v from 'valibot';
import type { FileEntry, Host } from '../../../electron/contract/host.ts';

/** Only what the list shows; everything else of the file is left alone. */
const HeadSchema = v.looseObject({
  name: v.string(),
  handicap: v.optional(v.number()),
  invented: v.optional(v.boolean()),
  bag: v.array(v.unknown()),
  shots: v.optional(v.array(v.looseObject({ at: v.optional(v.string()) }))),
});

export interface Pupil {
  readonly entry: FileEntry;
  readonly name: string;
  readonly handicap: number | null;
  readonly clubs: number;
  readonly shots: number;
  /** Day of the latest dated shot. */
  readonly lastShot: string | null;
  /** Text of the file, for comparing. */
  readonly text: string;
}

export type PupilLine = Pupil | { readonly entry: FileEntry; readonly fault: string };

/** Files that are looked into. */
export const MOST_PUPILS = 60;

export async function readPupil(host: Host, entry: FileEntry, words: Words): Promise<PupilLine> {
  const opened = await host.open(entry.token);
  if (!opened.ok) return { entry, fault: opened.message };
  return pupilOf(entry, opened.value.text, words);
}

export function pupilOf(entry: FileEntry, text: string, words: Words): PupilLine {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { entry, fault: words.player.pupils.unreadable };
  }
  const read = v.safeParse(HeadSchema, json);
  if (!read.success) return { entry, fault: words.player.pupils.noPlayer };
  const { name, handicap, bag, shots = [] } = read.output;
  const days = shots.flatMap(({ at }) => (at === undefined ? [] : [at.slice(0, 10)])).sort();
  return {
    entry,
    name,
    handicap: handicap ?? null,
    clubs: bag.length,
    shots: shots.length,
    lastShot: days.at(-1) ?? null,
    text,
  };
}
