/** A place well inside a polygon, never on its outline: the middle of the widest stretch on the emptiest line of latitude. */

import type { LonLat, Rings } from '../model.ts';

/** Undefined for a polygon that encloses nothing. */
export function interiorPoint(rings: Rings): LonLat | undefined {
  const lats = [...new Set(rings.flatMap((ring) => ring.map(([, lat]) => lat)))].sort((a, b) => a - b);
  let gap = 0;
  let lat = 0;
  for (let i = 1; i < lats.length; i++) {
    if (lats[i]! - lats[i - 1]! <= gap) continue;
    gap = lats[i]! - lats[i - 1]!;
    lat = lats[i - 1]! + gap / 2;
  }
  if (gap === 0) return undefined;
  // no corner lies on this line, so every side crosses it or does not
  const crossings: number[] = [];
  for (const ring of rings) {
    for (let i = 1; i < ring.length; i++) {
      const [lonA, latA] = ring[i - 1]!;
      const [lonB, latB] = ring[i]!;
      if (latA > lat === latB > lat) continue;
      crossings.push(lonA + ((lat - latA) / (latB - latA)) * (lonB - lonA));
    }
  }
  crossings.sort((a, b) => a - b);
  let width = 0;
  let lon: number | undefined;
  for (let i = 1; i < crossings.length; i += 2) {
    if (crossings[i]! - crossings[i - 1]! <= width) continue;
    width = crossings[i]! - crossings[i - 1]!;
    lon = crossings[i - 1]! + width / 2;
  }
  return lon === undefined ? undefined : [lon, lat];
}
