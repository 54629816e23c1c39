/** The person's settings: one small JSON file in the program's own folder, written as safely as a course. */

import { join } from 'node:path';
import * as v from 'valibot';
import { told } from '../../core/words/told.ts';
import type { HostAnswer, Settings, SettingsChange } from '../contract/host.ts';
import { settingsSchema } from '../contract/wire.ts';
import { errorCode, good, refusedByDisk } from './answer.ts';
import { type Disk, nodeDisk } from './disk.ts';
import { mergeSettings } from './merge-settings.ts';
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
  /**
   * Takes a change in. `was` says what the changed parts were for the window that changed them: then lists are merged entry by
   * entry; without it they are meant whole.
   */
  readonly write: (change: SettingsChange, was?: SettingsChange) => Promise<HostAnswer<null>>;
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
    write: (wanted, was) => change((before) => mergeSettings(before, wanted, was ?? null)),
    rememberTour: () => change((before) => ({ ...before, tourSeen: true })),
  };
}

/**
 * Settings that live as long as the program: for showing the demo without touching the person's own. Only that the first
 * walk is over goes to `own`, so that it does not begin again at every start.
 */
export function passingSettings(begin: Settings, own?: KeptSettings): SettingsStore {
  let current: Settings = { ...firstSettings, ...begin };
  return {
    read: () => Promise.resolve(good(current)),
    write: async (wanted, was) => {
      const isTourOver = wanted.tourSeen === true && current.tourSeen !== true;
      current = mergeSettings(current, wanted, was ?? null);
      return isTourOver && own !== undefined ? own.rememberTour() : good(null);
    },
  };
}
