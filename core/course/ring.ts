/** Rings of a polygon put in order on reading: closed, outer ring counter-clockwise, holes clockwise (RFC 7946, 3.1.6). */

import type { LonLat, Rings } from './model.ts';

export interface OrderedRings {
  readonly rings: Rings;
  /** Indices of rings that were open. */
  readonly open: readonly number[];
  /** Indices of rings with fewer than three different positions, which enclose nothing. */
  readonly empty: readonly number[];
}

export function orderRings(rings: Rings): OrderedRings {
  const open: number[] = [];
  const empty: number[] = [];
  const ordered = rings.map((ring, index) => {
    const wasClosed = samePlace(ring[0]!, ring.at(-1)!);
    if (!wasClosed) open.push(index);
    const closed = wasClosed ? ring : [...ring, ring[0]!];
    if (new Set(closed.map(([lon, lat]) => `${lon} ${lat}`)).size < 3) empty.push(index);
    const wantsCounterClockwise = index === 0;
    return signedArea(closed) > 0 === wantsCounterClockwise ? closed : closed.toReversed();
  });
  return { rings: ordered, open, empty };
}

/** In square degrees; positive for a counter-clockwise ring. Taken from the first vertex so that digits survive. */
function signedArea(ring: readonly LonLat[]): number {
  const [lon0, lat0] = ring[0]!;
  let twice = 0;
  for (let i = 1; i < ring.length; i++) {
    const [lonA, latA] = ring[i - 1]!;
    const [lonB, latB] = ring[i]!;
    twice += (lonA - lon0) * (latB - lat0) - (lonB - lon0) * (latA - lat0);
  }
  return twice / 2;
}

function samePlace(a: LonLat, b: LonLat): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
