/** The trees along one line from a spot: what stands where, and the chance to get through at given heights. */

import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';

/** The trunk of a tree that stands by itself; metres in the hole's frame. */
export interface Trunk {
  readonly x: number;
  readonly y: number;
  readonly radiusM: number;
  /** A ball higher than this above the trunk's foot is in the crown, or over it. */
  readonly heightM: number;
}

/** The part of a hole's ground that this needs, and trunks where they are known. */
export type TreeGround = Pick<
  HoleGround,
  | 'cellM'
  | 'columns'
  | 'rows'
  | 'west'
  | 'south'
  | 'lie'
  | 'canopyTop'
  | 'canopyBase'
  | 'canopyDensity'
  | 'elevation'
> & { readonly trunks?: readonly Trunk[] };

/**
 * Chance per metre to meet a trunk under the crowns of a wood: stems per square metre times their width (mean free path
 * 1 / (n d), geometry). 400 stems a hectare of 25 cm: common practice, no source.
 */
export const STEMS_PER_M = 0.04 * 0.25;

/** Index of the cell at a point, or -1 off the raster. */
function cellAt(ground: TreeGround, x: number, y: number): number {
  const column = Math.floor((x - ground.west) / ground.cellM);
  const row = Math.floor((y - ground.south) / ground.cellM);
  const inside = column >= 0 && row >= 0 && column < ground.columns && row < ground.rows;
  return inside ? row * ground.columns + column : -1;
}

function elevationOf(ground: TreeGround, cell: number): number {
  return ground.elevation === null || cell < 0 ? 0 : ground.elevation[cell]!;
}

/** A run of canopy along the line, metres from the spot; heights above the spot's ground. */
export interface TreeStretch {
  readonly fromM: number;
  readonly toM: number;
  readonly topM: number;
  readonly baseM: number;
  /** Mean chance per metre that a ball in the crown is stopped. */
  readonly densityPerM: number;
  /** Distance of the highest top. */
  readonly topAtM: number;
}

const STEP_M = 1;

/** Stretches of canopy from (x, y) along `bearing` up to `reachM`, nearest first. A crown over the spot itself counts. */
export function treesAlong(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  reachM: number,
): TreeStretch[] {
  const start = elevationOf(ground, cellAt(ground, x, y));
  const stretches: TreeStretch[] = [];
  let open: TreeStretch | null = null;
  let count = 0;
  for (let r = STEP_M / 2; r < reachM; r += STEP_M) {
    const px = x + r * Math.sin(bearing);
    const py = y + r * Math.cos(bearing);
    const cell = cellAt(ground, px, py);
    if (cell < 0) break;
    const top = ground.canopyTop[cell]!;
    if (top === 0) {
      if (open !== null) stretches.push(open);
      open = null;
      continue;
    }
    const rise = elevationOf(ground, cell) - start;
    const density = ground.canopyDensity[cell]!;
    const here = {
      fromM: r - STEP_M / 2,
      toM: r + STEP_M / 2,
      topM: rise + top,
      baseM: rise + ground.canopyBase[cell]!,
      densityPerM: density,
      topAtM: r,
    };
    if (open === null) {
      open = here;
      count = 1;
      continue;
    }
    open = {
      fromM: open.fromM,
      toM: here.toM,
      topM: Math.max(open.topM, here.topM),
      baseM: Math.min(open.baseM, here.baseM),
      densityPerM: (open.densityPerM * count + density) / (count + 1),
      topAtM: here.topM > open.topM ? r : open.topAtM,
    };
    count += 1;
  }
  if (open !== null) stretches.push(open);
  return stretches;
}

/** Chance that a ball with the heights of `heightAt` gets past all crowns, stems and trunks on its way to where it lands. */
export function passChance(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  carryM: number,
  heightAt: (alongM: number) => number,
  densityFactor = 1,
): number {
  const start = elevationOf(ground, cellAt(ground, x, y));
  let passed = 0;
  const dx = Math.sin(bearing);
  const dy = Math.cos(bearing);
  for (let r = STEP_M / 2; r < carryM; r += STEP_M) {
    const px = x + r * dx;
    const py = y + r * dy;
    const cell = cellAt(ground, px, py);
    if (cell < 0) break;
    const top = ground.canopyTop[cell]!;
    if (top === 0) continue;
    const above = start + heightAt(r) - elevationOf(ground, cell);
    if (above >= top) continue;
    if (above > ground.canopyBase[cell]!) passed += ground.canopyDensity[cell]! * STEP_M;
    else if (ground.lie[cell] === Lie.woods) passed += STEMS_PER_M * STEP_M;
  }
  for (const trunk of ground.trunks ?? []) {
    const along = (trunk.x - x) * dx + (trunk.y - y) * dy;
    if (along <= 0 || along >= carryM) continue;
    const aside = Math.abs((trunk.x - x) * dy - (trunk.y - y) * dx);
    const foot = elevationOf(ground, cellAt(ground, trunk.x, trunk.y));
    if (aside < trunk.radiusM + BALL_RADIUS_M && start + heightAt(along) - foot < trunk.heightM) return 0;
  }
  return Math.exp(-densityFactor * passed);
}
