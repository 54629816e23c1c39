/** What tells entries of the lists in the settings apart: page and host must agree on it. */

import type { KeptDay, KeptRound, TileSource } from './host.ts';

export const tileSourceKey = ({ name, address }: TileSource): string => JSON.stringify([name, address]);
export const roundKey = ({ course, player }: KeptRound): string => JSON.stringify([course, player]);
export const dayKey = ({ course }: KeptDay): string => course;
