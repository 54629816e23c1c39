/** The way of a shot that is bent on purpose: off its line to the landing and back to it. */

import { curveAt } from './flight-table.ts';
import type { ShotLaw } from './shot-law.ts';

/** Metres right of the straight line from the start to the landing, at `alongM` of a carry of `carryM`; null for a straight shot. */
export function sideOfWay(
  law: Pick<ShotLaw, 'curveShare' | 'flight'>,
  carryM: number,
): ((alongM: number) => number) | null {
  const { curveShare, flight } = law;
  if (curveShare === 0) return null;
  // The line to the landing leaves the starting line by as much as the ball has come aside when it lands.
  return (alongM) => curveAt(flight.table, carryM, alongM, curveShare * carryM) - curveShare * alongM;
}
