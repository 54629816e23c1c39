/** Settings under which the page opens the demo course and its player. */

import type { FileEntry, Settings } from '../contract/host.ts';

/** The first demo course and the first demo player, in the order of their names. */
export function demoSettings(begin: Settings, entries: readonly FileEntry[]): Settings {
  const demo = (kind: FileEntry['kind']): string | null =>
    entries.find((entry) => entry.readOnly && entry.kind === kind)?.token ?? null;
  return { ...begin, lastCourse: demo('course'), lastPlayer: demo('player') };
}
