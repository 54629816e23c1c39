/** Moves positions by metres without changing their distances: off one tangent plane, on to the plane of the new place. */

import { distanceM } from '../ellipsoid.ts';
import { makeLocalFrame } from '../local-frame.ts';
import type { LonLat } from '../model.ts';
import { movedTo, type Position } from '../positions.ts';

/** East and north, metres. */
export interface Shift {
  readonly eastM: number;
  readonly northM: number;
}

/** Farther from the place that is taken hold of nothing is carried along: the plane no longer fits, metres. */
const REACH_M = 20_000;

/**
 * A function that carries positions along when `from` goes to `to` (degrees). Within 1 km of `from` distances between
 * them stay the same to a tenth of a millimetre before rounding. Throws a RangeError where a place is none, and, called
 * for a position more than 20 km from `from`, there.
 */
export function carryAlong(from: LonLat, to: LonLat): (position: Position) => Position {
  const start = makeLocalFrame(from);
  const end = makeLocalFrame(to);
  return (position) => {
    const place: LonLat = [position[0], position[1]];
    if (!(distanceM(from, place) <= REACH_M)) {
      throw new RangeError(
        `Unexpected position: ${String(place)} is more than ${REACH_M} m from ${String(from)}`,
      );
    }
    return movedTo(position, end.toLonLat(start.toSpot(place)));
  };
}

/** The place that lies so many metres east and north of another, in its tangent plane. */
export function shifted(from: LonLat, { eastM, northM }: Shift): LonLat {
  return makeLocalFrame(from).toLonLat({ x: eastM, y: northM });
}
