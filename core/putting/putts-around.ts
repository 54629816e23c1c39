/** Putts to hole out around a hole position, as the planner reads them: from a level table, or over slopes. */

import type { PuttingTable, PuttOdds } from './putting.ts';

/** What chance does to one putt: standard normal, direction positive to the right. */
export interface PuttErrors {
  readonly direction: number;
  readonly run: number;
  /** Of the slope as it is read, along the line and across it. */
  readonly readAlong: number;
  readonly readAcross: number;
}

/** Places are metres east and north of the hole. */
export interface PuttsAround {
  readonly expectedAt: (east: number, north: number) => number;
  readonly oddsAt: (east: number, north: number) => PuttOdds;
  /** Where one putt comes to rest; null: in the hole. Absent where the green's slopes are not known. */
  readonly rollOnce?: (
    east: number,
    north: number,
    errors: PuttErrors,
  ) => { readonly east: number; readonly north: number } | null;
}

/** The same from every side. */
export function levelPutts(table: Pick<PuttingTable, 'expectedPutts' | 'scoreOdds'>): PuttsAround {
  // Math.hypot costs several times as much and guards against overflow, which metres do not need.
  const distance = (east: number, north: number): number => Math.sqrt(east * east + north * north);
  return {
    expectedAt: (east, north) => table.expectedPutts(distance(east, north)),
    oddsAt: (east, north) => table.scoreOdds(distance(east, north)),
  };
}
