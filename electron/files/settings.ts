/** The person's settings: one small JSON file in the program's own folder, written as safely as a course. */

import { join } from 'node:path';
import * as v from 'valibot';
import type { HostAnswer, Settings } from '../contract/host.ts';
import { settingsSchema } from '../contract/wire.ts';
import { errorCode, good, refusedByDisk } from './answer.ts';
import { type Disk, nodeDisk } from './disk.ts';
import { replaceFile } from './replace.ts';
import { oneAtATime } from './turns.ts';

const FILE = 'settings.json';
const MOST_BYTES = 320 * 1024;

export const firstSettings: Settings = {
  units: 'yards',
  theme: 'system',
  lastCourse: null,
  lastPlayer: null,
  tileSources: [],
};

export interface SettingsStore {
  readonly read: () => Promise<HostAnswer<Settings>>;
  readonly write: (settings: Settings) => Promise<HostAnswer<null>>;
}

/**
 * `folder` is made on the first write. Settings that cannot be understood are put aside as
 * `settings.damaged.json` by the next write, and the first settings serve meanwhile.
 */
export function settingsStore(folder: string, disk: Disk = nodeDisk): SettingsStore {
  const path = join(folder, FILE);
  const inTurn = oneAtATime();

  const parse = (bytes: Uint8Array): Settings | null => {
    const read = v.safeParse(
      v.pipe(v.string(), v.parseJson(), settingsSchema),
      new TextDecoder().decode(bytes),
    );
    return read.success ? { ...firstSettings, ...read.output } : null;
  };

  const onDisk = async (): Promise<Settings | 'none' | 'damaged'> => {
    try {
      return parse(await disk.read(path, MOST_BYTES)) ?? 'damaged';
    } catch (error) {
      if (errorCode(error) === 'ENOENT') return 'none';
      if (errorCode(error) === 'ETOOLARGE') return 'damaged';
      throw error;
    }
  };

  return {
    read: async () => {
      try {
        const found = await onDisk();
        return good(
          found === 'none' ? { ...firstSettings, isNew: true } : found === 'damaged' ? firstSettings : found,
        );
      } catch (error) {
        return refusedByDisk(error, 'reading your settings');
      }
    },
    write: (settings) =>
      inTurn(async () => {
        try {
          await disk.makeFolder(folder);
          const before = await onDisk();
          if (before === 'damaged') await disk.rename(path, join(folder, 'settings.damaged.json'));
          const after = withKept(typeof before === 'string' ? firstSettings : before, settings);
          await replaceFile(disk, path, Buffer.from(`${JSON.stringify(after, null, 2)}\n`));
          return good(null);
        } catch (error) {
          return refusedByDisk(error, 'saving your settings');
        }
      }),
  };
}

/** New settings; those that say nothing of tile sources, of rounds or of days leave the old ones. */
function withKept(before: Settings, settings: Settings): Settings {
  const after: { -readonly [K in keyof Settings]: Settings[K] } = { ...settings };
  // What is kept is not new any more.
  delete after.isNew;
  const rounds = after.rounds ?? before.rounds;
  const days = after.days ?? before.days;
  return {
    ...after,
    tileSources: after.tileSources ?? before.tileSources ?? [],
    ...(rounds === undefined ? {} : { rounds }),
    ...(days === undefined ? {} : { days }),
  };
}

/** Settings that live as long as the program: for showing the demo without touching the person's own. */
export function passingSettings(begin: Settings): SettingsStore {
  let current: Settings = { ...withKept(firstSettings, begin), ...(begin.isNew && { isNew: true }) };
  return {
    read: () => Promise.resolve(good(current)),
    write: (settings) => {
      current = withKept(current, settings);
      return Promise.resolve(good(null));
    },
  };
}
