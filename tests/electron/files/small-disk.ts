/** Small file systems for tests, where the machine lets us mount them. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type SmallDisk =
  | { readonly folder: string; readonly remount: (how: 'ro' | 'rw') => void; readonly unmount: () => void }
  | { readonly reason: string };

/** A file system in memory of so many KiB, or the reason why there is none. */
export function mountSmallDisk(kib: number): SmallDisk {
  const folder = mkdtempSync(join(tmpdir(), 'holewright-small-'));
  const mount = (...options: string[]): void => {
    execFileSync('mount', [...options, folder], { stdio: 'pipe' });
  };
  try {
    mount('-t', 'tmpfs', '-o', `size=${kib}k`, 'tmpfs');
  } catch (error) {
    rmdirSync(folder);
    const words = error instanceof Error ? (error.message.split('\n')[0] ?? '') : '';
    return { reason: `mounting a small tmpfs needs root (${words})` };
  }
  return {
    folder,
    remount: (how) => {
      mount('-o', `remount,${how}`);
    },
    unmount: () => {
      execFileSync('umount', [folder]);
      rmdirSync(folder);
    },
  };
}
