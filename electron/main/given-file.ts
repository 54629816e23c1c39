/** Files that the program is started with, or that the system hands to it: opened in the workspace, or copied into it. */

import { basename, dirname, resolve } from 'node:path';
import { told } from '../../core/words/told.ts';
import type { FileEntry, HostAnswer, Settings } from '../contract/host.ts';
import { LARGEST_TEXT_BYTES } from '../contract/wire.ts';
import { good, refused, refusedByDisk } from '../files/answer.ts';
import { revisionOf, textOf } from '../files/content.ts';
import { kindByContent } from '../files/kinds.ts';
import { kindByName } from '../files/names.ts';
import type { FileStore } from '../files/store.ts';

/** Paths among a command line's words; switches, and the folder of the program itself, are none. */
export function givenPaths(words: readonly string[], folder: string): readonly string[] {
  return words
    .filter((word) => !word.startsWith('-') && kindByName(basename(word)) !== null)
    .map((word) => resolve(folder, word));
}

/** The file as the store has it. One from outside is copied in, unless the very same lies there under its name. */
export async function takeGiven(store: FileStore, path: string): Promise<HostAnswer<FileEntry>> {
  const name = basename(path);
  try {
    // The person's own choice may be a link; what it leads to is read once, as a plain file.
    const real = await store.disk.realPath(path);
    const listed = await store.list();
    if (!listed.ok) return listed;
    const namesake = listed.value.find((entry) => !entry.readOnly && entry.name === basename(real));
    if (dirname(real) === store.workspace) {
      return namesake === undefined
        ? refused(
            'unfit',
            told(({ refusals }) => refusals.noneOfOurs, { name }),
          )
        : good(namesake);
    }
    const bytes = await store.disk.read(real, LARGEST_TEXT_BYTES);
    const text = textOf(bytes, name);
    if (!text.ok) return text;
    const byName = kindByName(name);
    const kind = byName === 'ask' ? kindByContent(text.value) : byName;
    if (kind === null)
      return refused(
        'unfit',
        told(({ refusals }) => refusals.noneOfOurs, { name }),
      );
    if (namesake !== undefined) {
      const there = await store.open(namesake.token);
      if (there.ok && there.value.revision === revisionOf(bytes)) return good(namesake);
    }
    const made = await store.create(kind, name, text.value);
    return made.ok ? good(made.value.entry) : made;
  } catch (error) {
    return refusedByDisk(
      error,
      told(({ refusals }) => refusals.doing.reading, { name }),
    );
  }
}

/** Settings under which the page opens this file. Rounds are opened in their room. */
export function opening(settings: Settings, entry: FileEntry): Settings {
  switch (entry.kind) {
    case 'course':
      return { ...settings, lastCourse: entry.token };
    case 'player':
      return { ...settings, lastPlayer: entry.token };
    case 'round':
      return settings;
  }
}
