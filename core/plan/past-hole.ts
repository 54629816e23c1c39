/** A full swing that carries this much farther than the hole is not sensible. */

const PAST_HOLE_SHARE = 1.12;
const PAST_HOLE_M = 12;

export function isPastHole(carryM: number, distanceM: number): boolean {
  return carryM > distanceM * PAST_HOLE_SHARE + PAST_HOLE_M;
}
