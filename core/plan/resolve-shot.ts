/**
 * The inner loop: one drawn shot from strike to rest. Draw, trees, landing, bounce and roll, lie, penalty.
 * Assumes that points are in the hole's frame and that the raster covers the hole; balls off it rest on its rim.
 */

import { keptAfterBounce, ROLL_SD_SHARE, runCost } from '../flight/roll.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import { BLOCK_M, blockIndexAt, cellIndexAt, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';

/** Step along the roll, metres: less than the width of the narrowest ditch. */
const ROLL_STEP_M = 1;
/** Step through canopies, metres: crowns are several metres wide. */
const TREE_STEP_M = 2;
/** Halvings by which the place is found where a ball comes down to the canopies again. */
const DESCENT_HALVINGS = 7;
/** No shot carries less than this, metres: the worst top still moves. */
const SHORTEST_CARRY_M = 0.5;
/** How far a ball stopped by a tree drops from where it was hit, as a share of what was left of its carry. */
const DROP_BACK = 0.03;

/** Resolves shots one at a time; the outcome of the last one is in its fields. */
export class ShotResolver {
  /** Where the ball came down (or was stopped by a tree), metres. */
  landX = 0;
  landY = 0;
  /** Where it came to rest or was lost, metres, kept inside the raster. */
  endX = 0;
  endY = 0;
  /** `Lie` code at the end, penalty areas and out of bounds included. */
  endLie: number = Lie.rough;
  stoppedByTree = false;
  wasPoor = false;
  private startElevation = 0;

  constructor(
    readonly ground: HoleGround,
    private readonly rolls = true,
  ) {}

  /** Shot `i` of the draws from (x, y) at `bearing` (radians clockwise from north). */
  resolve(x: number, y: number, law: ShotLaw, bearing: number, draws: ShotDraws, i: number): void {
    const z1 = draws.distanceZ[i]!;
    const z2 = draws.directionZ[i]!;
    const poor = draws.poorU[i]! < law.poorShare;
    const carryDrawn = poor ? law.poorCarryMean + law.poorCarrySd * z1 : law.carryMean + law.carrySd * z1;
    const direction = poor
      ? law.directionMean + law.poorDirectionSd * z2
      : law.directionMean + law.directionSd * (law.correlation * z1 + law.directionOwn * z2);
    const dx = Math.sin(bearing + direction);
    const dy = Math.cos(bearing + direction);
    this.wasPoor = poor;
    this.stoppedByTree = false;

    let carry = Math.max(SHORTEST_CARRY_M, carryDrawn);
    const { ground } = this;
    if (ground.elevation !== null) {
      this.startElevation = ground.elevation[cellIndexAt(ground, x, y)]!;
      const rise =
        ground.elevation[cellIndexAt(ground, x + dx * carry, y + dy * carry)]! - this.startElevation;
      carry = Math.max(SHORTEST_CARRY_M, carry - rise / law.window.tanDescent);
    }
    if (ground.highestCanopy > -Infinity) {
      const stopAt = this.treeStop(x, y, dx, dy, carry, law, poor, draws.canopyDepth[i]!);
      if (stopAt >= 0) {
        const at = Math.max(0, stopAt - DROP_BACK * (carry - stopAt) * Math.abs(z2));
        this.stoppedByTree = true;
        this.finish(x + dx * at, y + dy * at);
        this.landX = this.endX;
        this.landY = this.endY;
        return;
      }
    }
    this.landX = x + dx * carry;
    this.landY = y + dy * carry;
    if (!this.rolls) {
      this.finish(this.landX, this.landY);
      return;
    }
    // A topped ball runs more of its way than it flies; its law is one of total distance, so it runs as any other.
    this.roll(dx, dy, carry * law.runShare * Math.max(0, 1 + ROLL_SD_SHARE * draws.rollZ[i]!));
  }

  /** Distance along the flight where a canopy stops the ball, or -1. Passing L metres of density k stops with 1 - exp(-kL). */
  private treeStop(
    x: number,
    y: number,
    dx: number,
    dy: number,
    carry: number,
    law: ShotLaw,
    poor: boolean,
    depth: number,
  ): number {
    const { ground } = this;
    const { tanLaunch, skew } = law.window;
    const launch = poor ? tanLaunch * 0.5 : tanLaunch;
    const start = ground.elevation === null ? 0 : this.startElevation;
    let passed = 0;
    let r = TREE_STEP_M / 2;
    while (r < carry) {
      const cell = cellIndexAt(ground, x + dx * r, y + dy * r);
      const clear = ground.clearOfTrees[cell]!;
      if (clear > TREE_STEP_M) {
        r += clear;
        continue;
      }
      const f = r / carry;
      const height = start + r * launch * (1 - f) * (1 + skew * f);
      if (height > ground.highestCanopy) {
        r = Math.max(r + TREE_STEP_M, descentTo(ground.highestCanopy - start, carry, launch, skew, r));
        continue;
      }
      // Above every crown within a block's reach now and at its end, and so in between: the path is concave.
      const blockTop = ground.blockTop[blockIndexAt(ground, x + dx * r, y + dy * r)]!;
      if (height > blockTop) {
        const ahead = Math.min(carry, r + BLOCK_M);
        const g = ahead / carry;
        if (start + ahead * launch * (1 - g) * (1 + skew * g) > blockTop) {
          r = ahead;
          continue;
        }
      }
      const top = ground.canopyTop[cell]!;
      if (top > 0) {
        const above = ground.elevation === null ? height : height - ground.elevation[cell]!;
        if (above > ground.canopyBase[cell]! && above < top) {
          passed += ground.canopyDensity[cell]! * TREE_STEP_M;
          if (passed > depth) return r;
        }
      }
      r += TREE_STEP_M;
    }
    return -1;
  }

  /** Lets the ball run `run` metres of fairway from its landing point; ends in whatever it meets. */
  private roll(dx: number, dy: number, run: number): void {
    const { ground } = this;
    let x = this.landX;
    let y = this.landY;
    let left = run * keptAfterBounce(ground.lie[cellIndexAt(ground, x, y)]!);
    while (left > 0) {
      const cell = cellIndexAt(ground, x, y);
      const cost = runCost(ground.lie[cell]!);
      if (cost === Infinity) break;
      const step = Math.min(Math.max(ROLL_STEP_M, ground.sameLie[cell]!), left / cost);
      x += dx * step;
      y += dy * step;
      left -= step * cost + 1e-9;
    }
    this.finish(x, y);
  }

  private finish(x: number, y: number): void {
    const { ground } = this;
    const margin = ground.cellM / 2;
    const east = ground.west + ground.columns * ground.cellM - margin;
    const north = ground.south + ground.rows * ground.cellM - margin;
    this.endX = Math.min(east, Math.max(ground.west + margin, x));
    this.endY = Math.min(north, Math.max(ground.south + margin, y));
    this.endLie = ground.lie[cellIndexAt(ground, this.endX, this.endY)]!;
  }
}

/** A distance not after the last one at which the ball is `height` above its start; it is higher at `from`. */
function descentTo(height: number, carry: number, launch: number, skew: number, from: number): number {
  let low = from;
  let high = carry;
  for (let k = 0; k < DESCENT_HALVINGS; k++) {
    const r = (low + high) / 2;
    const f = r / carry;
    if (r * launch * (1 - f) * (1 + skew * f) > height) low = r;
    else high = r;
  }
  return low;
}
