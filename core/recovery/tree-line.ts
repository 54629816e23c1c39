/** The trees along one line from a spot: what stands where, and the chance to get through at given heights. */

import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { STEMS_PER_M } from '../ground/tree-kinds.ts';
import type { Trunk } from '../ground/trunks.ts';

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

/** The crown over one place of the line. */
export interface CrownThere {
  readonly atM: number;
  /** Above the ground at the spot, metres. */
  readonly topM: number;
  readonly baseM: number;
  readonly densityPerM: number;
}

/** Crowns over the line from (x, y) along `bearing`, a metre apart, up to `reachM` or the raster's edge. */
export function crownsAlong(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  reachM: number,
): CrownThere[] {
  const start = elevationOf(ground, cellAt(ground, x, y));
  const crowns: CrownThere[] = [];
  for (let r = STEP_M / 2; r < reachM; r += STEP_M) {
    const cell = cellAt(ground, x + r * Math.sin(bearing), y + r * Math.cos(bearing));
    if (cell < 0) break;
    const top = ground.canopyTop[cell]!;
    if (top === 0) continue;
    const rise = elevationOf(ground, cell) - start;
    crowns.push({
      atM: r,
      topM: rise + top,
      baseM: rise + ground.canopyBase[cell]!,
      densityPerM: ground.canopyDensity[cell]!,
    });
  }
  return crowns;
}

/** Stretches of canopy from (x, y) along `bearing` up to `reachM`, nearest first. A crown over the spot itself counts. */
export function treesAlong(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  reachM: number,
): TreeStretch[] {
  const stretches: TreeStretch[] = [];
  for (const { atM, topM, baseM, densityPerM } of crownsAlong(ground, x, y, bearing, reachM)) {
    const last = stretches.at(-1);
    const toM = atM + STEP_M / 2;
    if (last === undefined || last.toM < atM - STEP_M) {
      stretches.push({ fromM: atM - STEP_M / 2, toM, topM, baseM, densityPerM, topAtM: atM });
      continue;
    }
    const count = Math.round((last.toM - last.fromM) / STEP_M);
    stretches[stretches.length - 1] = {
      fromM: last.fromM,
      toM,
      topM: Math.max(last.topM, topM),
      baseM: Math.min(last.baseM, baseM),
      densityPerM: (last.densityPerM * count + densityPerM) / (count + 1),
      topAtM: topM > last.topM ? atM : last.topAtM,
    };
  }
  return stretches;
}

/**
 * Chance that a ball with the heights of `heightAt` gets past all crowns, stems and trunks on its way to where it lands.
 * `densityFactor` for the season; `sideAt` for a draw or fade: metres right of `bearing`, the direction in which it starts.
 */
export function passChance(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  carryM: number,
  heightAt: (alongM: number) => number,
  densityFactor = 1,
  sideAt: ((alongM: number) => number) | null = null,
): number {
  const start = elevationOf(ground, cellAt(ground, x, y));
  let passed = 0;
  const dx = Math.sin(bearing);
  const dy = Math.cos(bearing);
  for (let r = STEP_M / 2; r < carryM; r += STEP_M) {
    const side = sideAt === null ? 0 : sideAt(r);
    const cell = cellAt(ground, x + r * dx + side * dy, y + r * dy - side * dx);
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
    const side = sideAt === null ? 0 : sideAt(along);
    const aside = Math.abs((trunk.x - x) * dy - (trunk.y - y) * dx - side);
    const foot = elevationOf(ground, cellAt(ground, trunk.x, trunk.y));
    if (aside < trunk.radiusM + BALL_RADIUS_M && start + heightAt(along) - foot < trunk.heightM) return 0;
  }
  return Math.exp(-densityFactor * passed);
}
