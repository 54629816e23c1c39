/** The program's own folders, from where this code runs: the source tree, or `dist/electron` after a build. */

import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

export interface ProgramPlaces {
  readonly root: string;
  readonly page: string;
  readonly demo: string;
}

/** Climbs from `from` to the folder that holds `package.json`. */
export function programPlaces(from: string): ProgramPlaces {
  let root = from;
  while (!existsSync(join(root, 'package.json'))) {
    const above = dirname(root);
    if (above === root) throw new Error(`No package.json above ${from}: the program's folder is incomplete.`);
    root = above;
  }
  // A packed program is one archive; what has to be opened as plain files lies beside it.
  const outside = root.endsWith('.asar') ? dirname(root) : root;
  return { root, page: join(root, 'dist', 'renderer'), demo: join(outside, 'maps') };
}
