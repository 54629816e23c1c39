/** Expected putts around a hole position on a square grid, for a planner that asks for them millions of times. */

import type { PuttsAround } from './putts-around.ts';

/** Between nodes so close the values bend by less than two thousandths of a putt. */
const SPACING_M = 0.25;
/** Most greens lie within this of their hole position; a ball farther away is asked for at the source. */
const REACH_M = 32;
const ACROSS = 2 * (REACH_M / SPACING_M) + 1;

export interface GreenValues {
  /** Expected putts to hole out, metres east and north of the hole. */
  readonly at: (east: number, north: number) => number;
}

const known = new WeakMap<PuttsAround, GreenValues>();

export function greenValues(putts: PuttsAround): GreenValues {
  let values = known.get(putts);
  if (values === undefined) {
    values = tabulate(putts);
    known.set(putts, values);
  }
  return values;
}

/** Nodes are filled when they are first asked for: a green covers a small part of the square. */
function tabulate({ expectedAt }: PuttsAround): GreenValues {
  const values = new Float32Array(ACROSS * ACROSS).fill(NaN);
  const fill = (node: number): number => {
    values[node] = expectedAt(
      (node % ACROSS) * SPACING_M - REACH_M,
      Math.floor(node / ACROSS) * SPACING_M - REACH_M,
    );
    // As it is read from now on: to the array's precision.
    return values[node];
  };
  const read = (node: number): number => {
    const value = values[node]!;
    return value === value ? value : fill(node);
  };
  return {
    at: (east, north) => {
      const u = (east + REACH_M) / SPACING_M;
      const v = (north + REACH_M) / SPACING_M;
      if (!(u >= 0 && v >= 0 && u < ACROSS - 1 && v < ACROSS - 1)) return expectedAt(east, north);
      const column = u | 0;
      const row = v | 0;
      const fu = u - column;
      const fv = v - row;
      const node = row * ACROSS + column;
      return (
        (read(node) * (1 - fu) + read(node + 1) * fu) * (1 - fv) +
        (read(node + ACROSS) * (1 - fu) + read(node + ACROSS + 1) * fu) * fv
      );
    },
  };
}
