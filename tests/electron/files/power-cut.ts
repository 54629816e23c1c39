/**
 * A disk that forgets at a power cut: contents that were synced stay, but a name that was given, changed or
 * taken away lasts only once its folder was synced. Works on real files; `cut` takes back what would be lost.
 */

import { lstat, link, mkdir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type Disk, nodeDisk } from '../../../electron/files/disk.ts';

export interface ForgetfulDisk {
  readonly disk: Disk;
  /** Loses all names that were not synced, the latest first. */
  readonly cut: () => Promise<void>;
}

/** `side` is a folder on the same file system, outside the workspace. */
export function forgetfulDisk(side: string): ForgetfulDisk {
  let log: { readonly folder: string; readonly undo: () => Promise<void> }[] = [];
  let count = 0;
  const isThere = (path: string): Promise<boolean> =>
    lstat(path).then(
      () => true,
      () => false,
    );
  /** A second name for what is at `path`, out of the way; null where there is nothing. */
  const keep = async (path: string): Promise<string | null> => {
    if (!(await isThere(path))) return null;
    await mkdir(side, { recursive: true });
    const kept = join(side, String(++count));
    await link(path, kept);
    return kept;
  };
  const note = (path: string, undo: () => Promise<void>): void => {
    log.push({ folder: dirname(path), undo });
  };
  const makingFolder =
    (make: (path: string) => Promise<void>) =>
    async (path: string): Promise<void> => {
      const was = await isThere(path);
      await make(path);
      if (!was) note(path, () => rm(path, { recursive: true, force: true }));
    };

  return {
    cut: async () => {
      for (const { undo } of log.reverse()) await undo();
      log = [];
    },
    disk: {
      ...nodeDisk,
      writeNew: async (path, bytes) => {
        await nodeDisk.writeNew(path, bytes);
        note(path, () => rm(path, { force: true }));
      },
      link: async (existing, path) => {
        await nodeDisk.link(existing, path);
        note(path, () => rm(path, { force: true }));
      },
      rename: async (from, to) => {
        const kept = await keep(to);
        await nodeDisk.rename(from, to);
        note(to, async () => {
          await rename(to, from);
          if (kept !== null) await rename(kept, to);
        });
      },
      remove: async (path) => {
        const kept = await keep(path);
        await nodeDisk.remove(path);
        note(path, async () => {
          if (kept !== null) await rename(kept, path);
        });
      },
      makeFolder: makingFolder(nodeDisk.makeFolder),
      makeInside: makingFolder(nodeDisk.makeInside),
      syncFolder: async (folder) => {
        await nodeDisk.syncFolder(folder);
        log = log.filter((entry) => entry.folder !== folder);
      },
    },
  };
}
