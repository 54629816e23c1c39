/** Puts the ways of a multipolygon relation together to closed rings, and its holes into the areas that hold them. */

import { told, type Told } from '../../words/told.ts';
import type { LonLat, Rings } from '../model.ts';
import { isInside } from '../polygon.ts';
import { samePosition } from '../positions.ts';
import type { OsmMember, OsmWay } from './osm-data.ts';
import { type Result, refuse, succeed } from '../../result.ts';

/** The areas that a relation's members enclose, or why they do not. */
export function outlineOf(
  members: readonly OsmMember[],
  ways: ReadonlyMap<string, OsmWay>,
): Result<NestedRings, Told> {
  const outers: Chain[] = [];
  const inners: Chain[] = [];
  for (const { type, ref, role, points } of members) {
    if (type !== 'way') continue;
    const chain = points ?? ways.get(ref)?.points;
    if (chain === undefined || chain.length === 0 || !isComplete(chain)) {
      return refuse(told(({ courseImport }) => courseImport.why.partOfOutline));
    }
    (role === 'inner' ? inners : outers).push(chain);
  }
  const outerRings = joinRings(outers);
  if (!outerRings.ok) return outerRings;
  const innerRings = joinRings(inners);
  if (!innerRings.ok) return innerRings;
  if (outerRings.value.length === 0) return refuse(told(({ courseImport }) => courseImport.why.noOutline));
  return nestRings(outerRings.value, innerRings.value);
}

export function isComplete(points: readonly (LonLat | null)[]): points is readonly LonLat[] {
  return !points.includes(null);
}

/** A way's points, all of them known. */
export type Chain = readonly LonLat[];

/**
 * Chains joined end to end, either way round, into closed rings of at least three corners. Refuses, in words, where
 * a ring does not close. Where several chains meet in a point, the one that stands first in the file goes on.
 */
export function joinRings(chains: readonly Chain[]): Result<readonly (readonly LonLat[])[], Told> {
  const ends = new Map<string, number[]>();
  chains.forEach((chain, index) => {
    for (const end of [chain[0], chain.at(-1)]) {
      if (end === undefined) continue;
      const key = String(end);
      const there = ends.get(key);
      if (there === undefined) ends.set(key, [index]);
      else there.push(index);
    }
  });
  const used = new Set<number>();
  const rings: LonLat[][] = [];
  for (const [start, chain] of chains.entries()) {
    if (used.has(start) || chain.length === 0) continue;
    used.add(start);
    const ring = [...chain];
    while (!samePosition(ring[0]!, ring.at(-1)!) || ring.length === 1) {
      const end = ring.at(-1)!;
      const there = ends.get(String(end))!;
      // those used before are of no use to a later ring either
      while (there.length > 0 && used.has(there[0]!)) there.shift();
      const [next] = there;
      if (next === undefined)
        return refuse(
          told(({ courseImport }) => courseImport.why.gap, {
            lat: end[1].toFixed(5),
            lon: end[0].toFixed(5),
          }),
        );
      used.add(next);
      const points = chains[next]!;
      const forward = samePosition(points[0]!, end);
      for (let i = 1; i < points.length; i++) ring.push(points[forward ? i : points.length - 1 - i]!);
    }
    if (ring.length < 4) return refuse(told(({ courseImport }) => courseImport.why.fewCorners));
    rings.push(ring);
  }
  return succeed(rings);
}

export interface NestedRings {
  readonly polygons: readonly Rings[];
  /** Inner rings that lie in no outer one. */
  readonly stray: number;
}

/** Looking at more corners than this, an area counts as too intricate: only a file made to be slow has such. */
const MOST_LOOKS = 5_000_000;

/** Each outer ring with the inner rings that lie in it. Inner rings in no outer ring are counted, not kept. */
export function nestRings(
  outers: readonly (readonly LonLat[])[],
  inners: readonly (readonly LonLat[])[],
): Result<NestedRings, Told> {
  const homes = outers.map((outer) => ({ rings: [outer], box: boxOf(outer) }));
  let stray = 0;
  let looks = 0;
  for (const inner of inners) {
    const box = boxOf(inner);
    const home = homes.find((each) => {
      if (!contains(each.box, box)) return false;
      looks += inner.length * each.rings[0]!.length;
      if (looks > MOST_LOOKS) return false;
      // an outer ring may touch its hole in a corner: most corners decide
      const inside = inner.filter((at) => isInside(at, { rings: [each.rings[0]!] })).length;
      return inside > inner.length / 2;
    });
    if (looks > MOST_LOOKS) return refuse(told(({ courseImport }) => courseImport.why.intricate));
    if (home === undefined) stray++;
    else home.rings.push(inner);
  }
  return succeed({ polygons: homes.map(({ rings }) => rings), stray });
}

type Box = readonly [west: number, south: number, east: number, north: number];

function boxOf(ring: readonly LonLat[]): Box {
  let box: Box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [lon, lat] of ring) {
    box = [Math.min(box[0], lon), Math.min(box[1], lat), Math.max(box[2], lon), Math.max(box[3], lat)];
  }
  return box;
}

function contains(outer: Box, inner: Box): boolean {
  return outer[0] <= inner[0] && outer[1] <= inner[1] && outer[2] >= inner[2] && outer[3] >= inner[3];
}
