/**
 * Longitudes on either side of the 180° meridian. GeoJSON keeps them within 180° (RFC 7946, 4) and asks that what crosses
 * that meridian be cut there (3.1.9), yet files draw across it with a jump from 180 to -180. On reading, a course is
 * turned whole turns of 360° until it hangs together: its longitudes may then lie beyond 180°, and only there.
 */

import type { LonLat, Rings } from './model.ts';

/** The same longitude, whole turns added until it lies within 180° of `about`; itself where it does already. Degrees. */
export function turnedAbout(lon: number, about: number): number {
  const turns = wholeTurns(lon, about);
  return turns === 0 ? lon : lon + 360 * turns;
}

/** The same longitude within 180°, as files keep it; itself where it lies there already. Degrees. */
export function withinHalfTurn(lon: number): number {
  return turnedAbout(lon, 0);
}

/** The place with its longitude as files keep it. */
export function filedPlace([lon, lat]: LonLat): LonLat {
  return [withinHalfTurn(lon), lat];
}

/** A line or ring without jumps: every place turned about the first, or about `about`. */
export function turnedLine(points: readonly LonLat[], about = points[0]?.[0] ?? 0): readonly LonLat[] {
  return points.every(([lon]) => wholeTurns(lon, about) === 0)
    ? points
    : points.map(([lon, lat]): LonLat => [turnedAbout(lon, about), lat]);
}

/** Rings of one polygon without jumps, each about the first place of the outer ring. */
export function turnedRings(rings: Rings): Rings {
  const about = rings[0]?.[0]?.[0] ?? 0;
  return rings.map((ring) => turnedLine(ring, about));
}

/** A thing without jumps moved by whole turns until its first place lies within 180° of `about`: it stays in one piece. */
export function broughtNear<T extends { readonly rings: Rings }>(area: T, about: number): T {
  const turns = wholeTurns(area.rings[0]?.[0]?.[0] ?? about, about);
  return turns === 0 ? area : { ...area, rings: area.rings.map((ring) => moved(ring, turns)) };
}

/** The same for a line. */
export function lineNear<T extends { readonly line: readonly LonLat[] }>(hole: T, about: number): T {
  const turns = wholeTurns(hole.line[0]?.[0] ?? about, about);
  return turns === 0 ? hole : { ...hole, line: moved(hole.line, turns) };
}

/** The same for a thing that stands in one place. */
export function placedNear<T extends { readonly at: LonLat }>(thing: T, about: number): T {
  const [lon, lat] = thing.at;
  return wholeTurns(lon, about) === 0 ? thing : { ...thing, at: [turnedAbout(lon, about), lat] };
}

function moved(points: readonly LonLat[], turns: number): readonly LonLat[] {
  return points.map(([lon, lat]): LonLat => [lon + 360 * turns, lat]);
}

function wholeTurns(lon: number, about: number): number {
  return Math.abs(lon - about) <= 180 ? 0 : Math.round((about - lon) / 360);
}
