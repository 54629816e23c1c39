/** What is taken where a course file gives no measure. Common practice, no source; each use is told to the person. */

import type { Canopy } from './model.ts';

export const DEFAULT_DENSITY_PER_M = 0.12;

export const WOODS_CANOPY: Canopy = { topM: 12, baseM: 2, densityPerM: DEFAULT_DENSITY_PER_M };
export const TREE_CANOPY: Canopy = { topM: 10, baseM: 2.5, densityPerM: DEFAULT_DENSITY_PER_M };
export const TREE_CROWN_RADIUS_M = 4;

/** Height of a bunker's edge above its sand where the file has none, metres: a low one. */
export const DEFAULT_LIP_M = 0.3;

/** Width given to a path that is drawn as a line, metres. */
export const PATH_WIDTH_M = 2.5;

export const UNNAMED_COURSE = 'Unnamed course';

/** Par of a hole of this length in metres, where the file has none: 3 to 240 m, 4 to 430 m, 5 to 630 m, else 6. */
export function parForLength(lengthM: number): number {
  if (lengthM <= 240) return 3;
  if (lengthM <= 430) return 4;
  return lengthM <= 630 ? 5 : 6;
}
