/** The person's settings: one small JSON file in the program's own folder, written as safely as a course. */

import { join } from 'node:path';
import * as v from 'valibot';
import { told } from '../../core/words/told.ts';
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

const newSettings: Settings = { ...firstSettings, isNew: true };

export interface SettingsStore {
  readonly read: () => Promise<HostAnswer<Settings>>;
  readonly write: (settings: Settings) => Promise<HostAnswer<null>>;
}

/** Settings on disk. */
export interface KeptSettings extends SettingsStore {
  /** Keeps that the first walk is over and nothing else: who has chosen nothing yet stays new. */
  readonly rememberTour: () => Promise<HostAnswer<null>>;
}

/**
 * `folder` is made on the first write. Settings that cannot be understood are put aside as
 * `settings.damaged.json` by the next write, and the first settings serve meanwhile.
 */
export function settingsStore(folder: string, disk: Disk = nodeDisk): KeptSettings {
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

  const change = (make: (before: Settings) => Settings): Promise<HostAnswer<null>> =>
    inTurn(async () => {
      try {
        await disk.makeFolder(folder);
        const found = await onDisk();
        if (found === 'damaged') await disk.rename(path, join(folder, 'settings.damaged.json'));
        const before = found === 'none' ? newSettings : found === 'damaged' ? firstSettings : found;
        await replaceFile(disk, path, Buffer.from(`${JSON.stringify(make(before), null, 2)}\n`));
        return good(null);
      } catch (error) {
        return refusedByDisk(
          error,
          told(({ refusals }) => refusals.doing.savingSettings),
        );
      }
    });

  return {
    read: async () => {
      try {
        const found = await onDisk();
        return good(found === 'none' ? newSettings : found === 'damaged' ? firstSettings : found);
      } catch (error) {
        return refusedByDisk(
          error,
          told(({ refusals }) => refusals.doing.readingSettings),
        );
      }
    },
    write: (settings) => change((before) => withKept(before, settings)),
    rememberTour: () => change((before) => ({ ...before, tourSeen: true })),
  };
}

/** New settings; those that say nothing of the walk, of tile sources, of rounds or of days leave the old ones. */
function withKept(before: Settings, settings: Settings): Settings {
  const after: { -readonly [K in keyof Settings]: Settings[K] } = { ...settings };
  // What is kept is not new any more.
  delete after.isNew;
  const rounds = after.rounds ?? before.rounds;
  const days = after.days ?? before.days;
  const tourSeen = after.tourSeen ?? before.tourSeen;
  return {
    ...after,
    ...(tourSeen === undefined ? {} : { tourSeen }),
    tileSources: after.tileSources ?? before.tileSources ?? [],
    ...(rounds === undefined ? {} : { rounds }),
    ...(days === undefined ? {} : { days }),
  };
}

/**
 * Settings that live as long as the program: for showing the demo without touching the person's own. Only that the first
 * walk is over goes to `own`, so that it does not begin again at every start.
 */
export function passingSettings(begin: Settings, own?: KeptSettings): SettingsStore {
  let current: Settings = { ...withKept(firstSettings, begin), ...(begin.isNew && { isNew: true }) };
  return {
    read: () => Promise.resolve(good(current)),
    write: async (settings) => {
      const isTourOver = settings.tourSeen === true && current.tourSeen !== true;
      current = withKept(current, settings);
      return isTourOver && own !== undefined ? own.rememberTour() : good(null);
    },
  };
}
