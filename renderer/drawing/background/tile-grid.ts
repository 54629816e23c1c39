/**
 * The squares of the usual web map: zoom z divides the world in Web Mercator into 2^z by 2^z tiles of 256 pixels,
 * counted from the north-west (OGC Two Dimensional Tile Matrix Set 2.0, 17-083r4, annex D.1 WebMercatorQuad).
 */

import type { LonLat } from '../../../core/course/model.ts';

const RADIANS = Math.PI / 180;
/** Metres round the equator, WGS 84. */
const EQUATOR_M = 2 * Math.PI * 6_378_137;
const TILE_PX = 256;

export interface TileAddress {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

/** North-west corner of a tile; `x` and `y` may have parts, for places inside it. */
export function cornerOfTile(zoom: number, x: number, y: number): LonLat {
  const count = 2 ** zoom;
  return [(x / count) * 360 - 180, Math.atan(Math.sinh(Math.PI * (1 - (2 * y) / count))) / RADIANS];
}

/** Where a place lies in tiles counted from the north-west, with parts. */
export function inTiles([lon, lat]: LonLat, zoom: number): readonly [number, number] {
  const count = 2 ** zoom;
  const mercator = Math.asinh(Math.tan(lat * RADIANS));
  return [((lon + 180) / 360) * count, ((1 - mercator / Math.PI) / 2) * count];
}

/** The zoom whose tiles have about a pixel for a screen pixel, within what there is. */
export function zoomFor(metresPerPixel: number, lat: number, least: number, most: number): number {
  const exact = Math.log2((EQUATOR_M * Math.cos(lat * RADIANS)) / (TILE_PX * metresPerPixel));
  return Math.min(most, Math.max(least, Math.round(exact)));
}

/** Tiles that touch the area between the corners (degrees), nearest to its middle first; at most `most` of them. */
export function tilesOver(corners: readonly LonLat[], zoom: number, most: number): TileAddress[] {
  const places = corners.map((corner) => inTiles(corner, zoom));
  const xs = places.map(([x]) => x);
  const ys = places.map(([, y]) => y);
  const last = 2 ** zoom - 1;
  const west = Math.max(0, Math.floor(Math.min(...xs)));
  const east = Math.min(last, Math.floor(Math.max(...xs)));
  const north = Math.max(0, Math.floor(Math.min(...ys)));
  const south = Math.min(last, Math.floor(Math.max(...ys)));
  if ((east - west + 1) * (south - north + 1) > 4 * most) return [];
  const middleX = (west + east) / 2;
  const middleY = (north + south) / 2;
  const tiles: TileAddress[] = [];
  for (let y = north; y <= south; y++) for (let x = west; x <= east; x++) tiles.push({ zoom, x, y });
  const away = ({ x, y }: TileAddress): number => Math.hypot(x - middleX, y - middleY);
  return tiles.sort((a, b) => away(a) - away(b)).slice(0, most);
}
