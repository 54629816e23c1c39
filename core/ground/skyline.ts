/**
 * What trees a ball can meet from one spot, by direction: most shots meet none, and then nobody need walk along their way.
 * Canopies are counted in blocks; each block's circle is looked at from the spot, so nothing that is there is missed.
 */

import type { RasterShape } from './polygon-fill.ts';

/** Side of a block, metres. */
const BLOCK_M = 12;
const SECTORS = 120;
const PER_RADIAN = SECTORS / (2 * Math.PI);
/** Entries of a sector: distance of its nearest and farthest canopies, metres, and height of the highest. */
const SECTOR_ENTRIES = 3;

/** x, y and highest top of each block that bears a canopy; tops measured like `HoleGround.highestCanopy`. */
export type CanopyBlocks = Float64Array;

/** `SECTORS` times nearest, farthest, highest; nearest is Infinity where the sector is open. */
export type Skyline = Float32Array;

/** `tops`: top of the canopy per cell, -Infinity where there is none. */
export function canopyBlocks(raster: RasterShape, tops: Float32Array): CanopyBlocks {
  const { columns, cellM, west, south } = raster;
  const across = Math.ceil((columns * cellM) / BLOCK_M);
  const highest = new Map<number, number>();
  tops.forEach((top, i) => {
    if (top === -Infinity) return;
    const column = Math.floor((((i % columns) + 0.5) * cellM) / BLOCK_M);
    const row = Math.floor(((Math.floor(i / columns) + 0.5) * cellM) / BLOCK_M);
    const block = row * across + column;
    highest.set(block, Math.max(top, highest.get(block) ?? -Infinity));
  });
  const blocks = new Float64Array(3 * highest.size);
  let at = 0;
  for (const [block, top] of highest) {
    blocks[at++] = west + ((block % across) + 0.5) * BLOCK_M;
    blocks[at++] = south + (Math.floor(block / across) + 0.5) * BLOCK_M;
    blocks[at++] = top;
  }
  return blocks;
}

/** The skyline from (x, y). */
export function skylineFrom(raster: RasterShape, blocks: CanopyBlocks, x: number, y: number): Skyline {
  // A cell that lies only in part in the block reaches out of it by half a cell at most.
  const radius = (BLOCK_M / 2 + raster.cellM / 2) * Math.SQRT2;
  const skyline = new Float32Array(SECTORS * SECTOR_ENTRIES);
  for (let s = 0; s < SECTORS; s++) {
    skyline[s * SECTOR_ENTRIES] = Infinity;
    skyline[s * SECTOR_ENTRIES + 2] = -Infinity;
  }
  for (let b = 0; b < blocks.length; b += 3) {
    const dx = blocks[b]! - x;
    const dy = blocks[b + 1]! - y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    let first = 0;
    let count = SECTORS;
    if (distance > radius) {
      const middle = Math.atan2(dx, dy);
      const half = Math.asin(radius / distance);
      // A thousandth of a sector more on either side for rounding.
      first = Math.floor((middle - half) * PER_RADIAN - 1e-3);
      count = Math.floor((middle + half) * PER_RADIAN + 1e-3) - first + 1;
    }
    // Half a millimetre for single precision.
    const nearest = Math.max(0, distance - radius - 5e-4);
    const farthest = distance + radius + 5e-4;
    const top = blocks[b + 2]! + 5e-4;
    let s = ((first + SECTORS) % SECTORS) * SECTOR_ENTRIES;
    for (let k = 0; k < count; k++) {
      if (nearest < skyline[s]!) skyline[s] = nearest;
      if (farthest > skyline[s + 1]!) skyline[s + 1] = farthest;
      if (top > skyline[s + 2]!) skyline[s + 2] = top;
      s += SECTOR_ENTRIES;
      if (s === SECTORS * SECTOR_ENTRIES) s = 0;
    }
  }
  return skyline;
}

/** Index of the sector's first entry for a direction in radians clockwise from north. */
export function sectorOf(bearing: number): number {
  let s = Math.floor(bearing * PER_RADIAN) % SECTORS;
  if (s < 0) s += SECTORS;
  return s * SECTOR_ENTRIES;
}

/** Skylines that were worked out before: a solution comes back to the same nodes many times. */
export class SkylineBook {
  private readonly known = new Map<
    number,
    { readonly x: number; readonly y: number; readonly skyline: Skyline }
  >();

  constructor(
    private readonly raster: RasterShape,
    private readonly blocks: CanopyBlocks,
  ) {}

  from(x: number, y: number): Skyline {
    const { west, south } = this.raster;
    const key = Math.round((x - west) * 8) * 65536 + Math.round((y - south) * 8);
    const entry = this.known.get(key);
    if (entry !== undefined && entry.x === x && entry.y === y) return entry.skyline;
    const skyline = skylineFrom(this.raster, this.blocks, x, y);
    if (this.known.size >= MOST_KNOWN) this.known.clear();
    this.known.set(key, { x, y, skyline });
    return skyline;
  }
}

/** About 9 MB. */
const MOST_KNOWN = 6000;
