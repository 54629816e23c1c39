/** Flights from one spot against the trees: where crowns, stems and trunks stop a ball, and where it comes down then. */

import type { AimedShot } from '../flight/aimed-shot.ts';
import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import { descentShare } from '../flight/flight-window.ts';
import { CANOPY_STOREYS, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { sectorOf, type Skyline } from '../ground/skyline.ts';
import { STEMS_PER_M } from '../ground/tree-kinds.ts';
import { CANOPY_STEP_M, type MetTrunk } from '../ground/sight-lines.ts';
import { trunksNear } from '../ground/trunks.ts';
import { restAfterHit } from '../recovery/stopped-ball.ts';
import { RasterReader } from './raster-reader.ts';

/** A poor strike starts lower. Common practice, no source. */
export const POOR_LAUNCH = 0.5;

export class TreeWalk extends RasterReader {
  /** Where the last ball that was stopped came to rest. */
  restX = 0;
  restY = 0;
  private fromX = 0;
  private fromY = 0;
  private startElevation = 0;
  private skyline: Skyline = new Float32Array(0);
  /** Those near the spot, out of all. */
  private trunks: readonly MetTrunk[] = [];
  readonly allTrunks: readonly MetTrunk[];
  /** The last ball was stopped by wood, not by a crown. */
  hitWood = false;
  private readonly clear: Uint8Array;
  private readonly highest: number;
  private readonly storeyBase: number;
  private readonly perStorey: number;

  constructor(ground: HoleGround) {
    super(ground);
    this.clear = ground.clearOfTrees;
    this.highest = ground.highestCanopy;
    this.storeyBase = ground.storeyBase;
    this.perStorey = 1 / ground.storeyM;
    this.allTrunks = ground.trunks.map((trunk) => ({
      ...trunk,
      meetsM: trunk.radiusM + BALL_RADIUS_M,
      topM: trunk.heightM + (ground.elevation?.[this.cellAt(trunk.x, trunk.y)] ?? 0),
    }));
  }

  /** Makes ready for `drop` alone. */
  startAt(x: number, y: number, elevation: number): void {
    this.fromX = x;
    this.fromY = y;
    this.startElevation = elevation;
  }

  /** Makes ready for flights from there. */
  stand(x: number, y: number, elevation: number): void {
    this.startAt(x, y, elevation);
    this.skyline = this.ground.skylines.from(x, y);
    this.trunks = trunksNear(this.allTrunks, x, y);
  }

  /**
   * Distance before `reach` along the flight of (level) carry `carry` in the direction (dx, dy), whose bearing is given too, where
   * a tree stops the ball; -1 where none does. `depth`: optical depth that this ball gets through.
   */
  stopOn(
    bearing: number,
    dx: number,
    dy: number,
    carry: number,
    reach: number,
    day: AimedShot,
    poor: boolean,
    depth: number,
  ): number {
    const trunk = this.trunks.length > 0 ? this.trunkStop(dx, dy, reach, carry, day, poor) : -1;
    const before = trunk >= 0 ? trunk : reach;
    const sector = sectorOf(bearing);
    if (this.skyline[sector]! < before) {
      const crown = this.crownStop(sector, dx, dy, carry, before, day, poor, depth);
      if (crown >= 0) return crown;
    }
    this.hitWood = true;
    return trunk;
  }

  /**
   * The same for a curved flight, which leaves the line to where it lands by `sideAt` metres to the right: along its way step by
   * step, since what is known of straight lines does not hold. `stand` comes first.
   */
  stopOnCurve(
    dx: number,
    dy: number,
    carry: number,
    reach: number,
    { window }: AimedShot,
    poor: boolean,
    depth: number,
    sideAt: (alongM: number) => number,
  ): number {
    const { ground } = this;
    const launch = poor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    const heightAt = (r: number): number =>
      this.startElevation + r * launch * (1 - r / carry) * (1 + (window.skew * r) / carry);
    let trunk = -1;
    for (const { x, y, meetsM, topM } of this.trunks) {
      const along = (x - this.fromX) * dx + (y - this.fromY) * dy;
      if (along <= 0 || along >= reach || (trunk >= 0 && along >= trunk)) continue;
      const aside = (x - this.fromX) * dy - (y - this.fromY) * dx - sideAt(along);
      if (Math.abs(aside) <= meetsM && heightAt(along) < topM) trunk = along;
    }
    const before = trunk >= 0 ? trunk : reach;
    let passed = 0;
    for (let r = CANOPY_STEP_M / 2; r < before; r += CANOPY_STEP_M) {
      const side = sideAt(r);
      const cell = this.cellAt(this.fromX + dx * r + dy * side, this.fromY + dy * r - dx * side);
      const crown = ground.canopyTop[cell]!;
      const above = heightAt(r) - (this.elevation === null ? 0 : this.elevation[cell]!);
      if (crown === 0 || above >= crown) continue;
      const isInCrown = above > ground.canopyBase[cell]!;
      if (isInCrown) passed += ground.canopyDensity[cell]! * CANOPY_STEP_M;
      else if (this.lie[cell] === Lie.woods) passed += STEMS_PER_M * CANOPY_STEP_M;
      if (passed > depth) {
        this.hitWood = !isInCrown;
        return r;
      }
    }
    this.hitWood = true;
    return trunk;
  }

  /** The ball that was stopped `at` metres along its way comes to rest. `keptU` uniform and `turnZ` normal are its luck; `sideM`: how far right of the line to its landing. */
  drop(
    dx: number,
    dy: number,
    at: number,
    carry: number,
    day: AimedShot,
    poor: boolean,
    keptU: number,
    turnZ: number,
    byWood = this.hitWood,
    sideM = 0,
  ): void {
    const { window } = day;
    const f = at / carry;
    const launch = poor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    const flown = at * launch * (1 - f) * (1 + window.skew * f);
    const hitX = this.fromX + dx * at + dy * sideM;
    const hitY = this.fromY + dy * at - dx * sideM;
    const fall = this.elevation === null ? 0 : this.elevation[this.cellAt(hitX, hitY)]! - this.startElevation;
    // Air takes speed in proportion to the way; a shorter shot of the same club starts slower.
    const speed =
      day.launchMps *
      Math.sqrt(Math.min(1, carry / day.runCarryM)) *
      Math.pow(day.landingMps / day.launchMps, f);
    const rest = restAfterHit(
      { speedMps: speed, heightM: flown - fall, by: byWood ? 'trunk' : 'crown' },
      keptU,
      turnZ,
    );
    // A ball thrown back comes down between the tree and the player at the nearest.
    const along = Math.max(0, at + rest.along);
    const right = sideM + rest.right;
    this.restX = this.fromX + dx * along + dy * right;
    this.restY = this.fromY + dy * along - dx * right;
  }

  /** Distance of the nearest trunk that a flight of (level) carry `carry` meets before `reach`, or -1. */
  private trunkStop(
    dx: number,
    dy: number,
    reach: number,
    carry: number,
    day: AimedShot,
    poor: boolean,
  ): number {
    const { window } = day;
    const launch = poor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    let nearest = -1;
    for (const trunk of this.trunks) {
      const tx = trunk.x - this.fromX;
      const ty = trunk.y - this.fromY;
      const along = tx * dx + ty * dy;
      if (along <= 0 || along >= reach || (nearest >= 0 && along >= nearest)) continue;
      const aside = tx * dy - ty * dx;
      if (aside > trunk.meetsM || aside < -trunk.meetsM) continue;
      const f = along / carry;
      const height = this.startElevation + along * launch * (1 - f) * (1 + window.skew * f);
      if (height < trunk.topM) nearest = along;
    }
    return nearest;
  }

  /**
   * Distance before `reach` along a flight of (level) carry `carry` where a canopy stops the ball, or a stem under it in woods;
   * else -1. Passing L metres of density k stops with 1 - exp(-kL).
   */
  private crownStop(
    sector: number,
    dx: number,
    dy: number,
    carry: number,
    reach: number,
    { window }: AimedShot,
    poor: boolean,
    depth: number,
  ): number {
    const { ground, perM, columns, rows, clear, highest, storeyBase, perStorey } = this;
    const { skew } = window;
    const launch = poor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    const start = this.elevation === null ? 0 : this.startElevation;
    const perCarry = 1 / carry;
    // Higher than all the sector's canopies where the first of them may be and where the last may: so over all of them.
    const begin = this.skyline[sector]!;
    const end = Math.min(reach, this.skyline[sector + 1]!);
    const top = this.skyline[sector + 2]!;
    const f0 = begin * perCarry;
    if (start + begin * launch * (1 - f0) * (1 + skew * f0) > top) {
      const f1 = end * perCarry;
      if (start + end * launch * (1 - f1) * (1 + skew * f1) > top) return -1;
    }
    // In cells from the raster's corner, so that a step is one multiplication and one addition a coordinate.
    const fromColumn = (this.fromX - this.west) * perM;
    const fromRow = (this.fromY - this.south) * perM;
    const stepColumn = dx * perM;
    const stepRow = dy * perM;
    let passed = 0;
    let r = begin + CANOPY_STEP_M / 2;
    while (r < end) {
      const f = r * perCarry;
      const height = start + r * launch * (1 - f) * (1 + skew * f);
      if (height >= highest) {
        r = Math.max(
          r + CANOPY_STEP_M,
          descentShare(window, ((highest - start) * perCarry) / launch) * carry,
        );
        continue;
      }
      let column = (fromColumn + stepColumn * r) | 0;
      let row = (fromRow + stepRow * r) | 0;
      if (column < 0) column = 0;
      else if (column >= columns) column = columns - 1;
      if (row < 0) row = 0;
      else if (row >= rows) row = rows - 1;
      const cell = row * columns + column;
      // Canopies below the ball's storey cannot stop it while it stays above the storey's floor: the path is concave, so it
      // does from here to any later point that is above it.
      const storey = ((height - storeyBase) * perStorey) | 0;
      if (storey > 0) {
        const high = clear[cell * CANOPY_STOREYS + storey]!;
        if (high > CANOPY_STEP_M) {
          const ahead = r + high;
          const g = ahead * perCarry;
          if ((start + ahead * launch * (1 - g) * (1 + skew * g) - storeyBase) * perStorey > storey) {
            r = ahead;
            continue;
          }
        }
      }
      const open = clear[cell * CANOPY_STOREYS]!;
      if (open > CANOPY_STEP_M) {
        r += open;
        continue;
      }
      const crown = ground.canopyTop[cell]!;
      if (crown > 0) {
        const above = this.elevation === null ? height : height - this.elevation[cell]!;
        if (above > ground.canopyBase[cell]!) {
          if (above < crown) {
            passed += ground.canopyDensity[cell]! * CANOPY_STEP_M;
            if (passed > depth) {
              this.hitWood = false;
              return r;
            }
          }
        } else if (this.lie[cell] === Lie.woods) {
          passed += STEMS_PER_M * CANOPY_STEP_M;
          if (passed > depth) {
            this.hitWood = true;
            return r;
          }
        }
      }
      r += CANOPY_STEP_M;
    }
    return -1;
  }
}
