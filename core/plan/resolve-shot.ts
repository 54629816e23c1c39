/**
 * The inner loop: one drawn shot from strike to rest. Draw, trees, landing, bounce and roll, lie, penalty.
 * Assumes that points are in the hole's frame and that the raster covers the hole; balls off it rest on its rim.
 */

import { keptAfterBounce, ROLL_SD_SHARE, runCost } from '../flight/roll.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import { descentShare } from '../flight/trajectory.ts';
import { CANOPY_STOREYS, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { sectorOf, type Skyline } from '../ground/skyline.ts';
import type { ShotDraws } from '../random/shot-draws.ts';

/** Step along the roll, metres: less than the width of the narrowest ditch. */
const ROLL_STEP_M = 1;
/** Step through canopies, metres: crowns are several metres wide. */
const TREE_STEP_M = 2;
/** No shot carries less than this, metres: the worst top still moves. */
const SHORTEST_CARRY_M = 0.5;
/** How far a ball stopped by a tree drops from where it was hit, as a share of what was left of its carry. */
const DROP_BACK = 0.03;

/** Below this angle, radians, four terms after the first give sine and cosine to 1e-10. */
const SERIES_ANGLE = 0.6;

/** Resolves shots one at a time; the outcome of the last one is in its fields. */
export class ShotResolver {
  /** x and y of the landing and of the end: stores into an array are cheaper than into fields. */
  private readonly places = new Float64Array(4);
  /** `Lie` code at the end, penalty areas and out of bounds included. */
  endLie: number = Lie.rough;
  stoppedByTree = false;
  wasPoor = false;
  private fromX = NaN;
  private fromY = NaN;
  private startElevation = 0;
  private skyline: Skyline = new Float32Array(0);
  // The ground's own members, one load away: this is the innermost loop of the program.
  private readonly west: number;
  private readonly south: number;
  private readonly perM: number;
  private readonly columns: number;
  private readonly rows: number;
  private readonly leastX: number;
  private readonly leastY: number;
  private readonly mostX: number;
  private readonly mostY: number;
  private readonly lie: Uint8Array;
  private readonly clear: Uint8Array;
  private readonly sameLie: Uint8Array;
  private readonly elevation: Float32Array | null;
  private readonly highest: number;
  private readonly storeyBase: number;
  private readonly perStorey: number;
  /** The last aim and its sine and cosine: shots come in batches of one aim. */
  private aim = 0;
  private aimSin = 0;
  private aimCos = 1;

  constructor(
    readonly ground: HoleGround,
    private readonly rolls = true,
  ) {
    this.west = ground.west;
    this.south = ground.south;
    this.perM = ground.cellsPerM;
    this.columns = ground.columns;
    this.rows = ground.rows;
    const margin = ground.cellM / 2;
    this.leastX = ground.west + margin;
    this.leastY = ground.south + margin;
    this.mostX = ground.west + ground.columns * ground.cellM - margin;
    this.mostY = ground.south + ground.rows * ground.cellM - margin;
    this.lie = ground.lie;
    this.clear = ground.clearOfTrees;
    this.sameLie = ground.sameLie;
    this.elevation = ground.elevation;
    this.highest = ground.highestCanopy;
    this.storeyBase = ground.storeyBase;
    this.perStorey = 1 / ground.storeyM;
  }

  /** Where the ball came down (or was stopped by a tree), metres. */
  get landX(): number {
    return this.places[0]!;
  }
  get landY(): number {
    return this.places[1]!;
  }
  /** Where it came to rest or was lost, metres, kept inside the raster. */
  get endX(): number {
    return this.places[2]!;
  }
  get endY(): number {
    return this.places[3]!;
  }

  /** Makes ready for shots from there; `resolve` does so itself where it has to. */
  private stand(x: number, y: number): void {
    this.fromX = x;
    this.fromY = y;
    if (this.elevation !== null) this.startElevation = this.elevation[this.cellAt(x, y)]!;
    if (this.highest > -Infinity) this.skyline = this.ground.skylines.from(x, y);
  }

  /** Shot `i` of the draws from (x, y) at `bearing` (radians clockwise from north). */
  resolve(x: number, y: number, law: ShotLaw, bearing: number, draws: ShotDraws, i: number): void {
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const z1 = draws.distanceZ[i]!;
    const z2 = draws.directionZ[i]!;
    const poor = draws.poorU[i]! < law.poorShare;
    const carryDrawn = poor ? law.poorCarryMean + law.poorCarrySd * z1 : law.carryMean + law.carrySd * z1;
    const direction = poor
      ? law.directionMean + law.poorDirectionSd * z2
      : law.directionMean + law.directionSd * (law.correlation * z1 + law.directionOwn * z2);
    if (bearing !== this.aim) {
      this.aim = bearing;
      this.aimSin = Math.sin(bearing);
      this.aimCos = Math.cos(bearing);
    }
    let sin: number;
    let cos: number;
    if (direction < SERIES_ANGLE && direction > -SERIES_ANGLE) {
      const q = direction * direction;
      sin = direction * (1 - (q / 6) * (1 - (q / 20) * (1 - (q / 42) * (1 - q / 72))));
      cos = 1 - (q / 2) * (1 - (q / 12) * (1 - (q / 30) * (1 - (q / 56) * (1 - q / 90))));
    } else {
      sin = Math.sin(direction);
      cos = Math.cos(direction);
    }
    const dx = this.aimSin * cos + this.aimCos * sin;
    const dy = this.aimCos * cos - this.aimSin * sin;
    this.wasPoor = poor;
    this.stoppedByTree = false;

    let carry = carryDrawn > SHORTEST_CARRY_M ? carryDrawn : SHORTEST_CARRY_M;
    if (this.elevation !== null) {
      const rise = this.elevation[this.cellAt(x + dx * carry, y + dy * carry)]! - this.startElevation;
      carry = Math.max(SHORTEST_CARRY_M, carry - rise / law.window.tanDescent);
    }
    if (this.highest > -Infinity) {
      const sector = sectorOf(bearing + direction);
      const nearest = this.skyline[sector]!;
      let stopAt = -1;
      if (nearest < carry) {
        stopAt = this.treeStop(sector, dx, dy, carry, law, poor, draws.canopyDepth[i]!);
      }
      if (stopAt >= 0) {
        const at = Math.max(0, stopAt - DROP_BACK * (carry - stopAt) * Math.abs(z2));
        this.stoppedByTree = true;
        this.finish(x + dx * at, y + dy * at);
        this.places[0] = this.endX;
        this.places[1] = this.endY;
        return;
      }
    }
    const landX = x + dx * carry;
    const landY = y + dy * carry;
    this.places[0] = landX;
    this.places[1] = landY;
    if (!this.rolls) {
      this.finish(landX, landY);
      return;
    }
    // A topped ball runs more of its way than it flies; its law is one of total distance, so it runs as any other.
    const share = 1 + ROLL_SD_SHARE * draws.rollZ[i]!;
    this.roll(landX, landY, dx, dy, share > 0 ? carry * law.runShare * share : 0);
  }

  /** Does the middle of the pattern, flown from (x, y) at `bearing`, end in a tree more often than not? */
  isBlocked(x: number, y: number, law: ShotLaw, bearing: number): boolean {
    if (this.highest === -Infinity) return false;
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const direction = bearing + law.directionMean;
    const sector = sectorOf(direction);
    if (!(this.skyline[sector]! < law.carryMean)) return false;
    const { sin, cos } = Math;
    return this.treeStop(sector, sin(direction), cos(direction), law.carryMean, law, false, Math.LN2) >= 0;
  }

  /** Index of the cell that holds the point; points off the raster belong to the nearest cell of its rim. */
  private cellAt(x: number, y: number): number {
    let column = ((x - this.west) * this.perM) | 0;
    let row = ((y - this.south) * this.perM) | 0;
    if (column < 0) column = 0;
    else if (column >= this.columns) column = this.columns - 1;
    if (row < 0) row = 0;
    else if (row >= this.rows) row = this.rows - 1;
    return row * this.columns + column;
  }

  /** Distance along the flight where a canopy stops the ball, or -1. Passing L metres of density k stops with 1 - exp(-kL). */
  private treeStop(
    sector: number,
    dx: number,
    dy: number,
    carry: number,
    law: ShotLaw,
    poor: boolean,
    depth: number,
  ): number {
    const { ground, perM, columns, rows, clear, highest, storeyBase, perStorey } = this;
    const { window } = law;
    const { skew } = window;
    const launch = poor ? window.tanLaunch * 0.5 : window.tanLaunch;
    const start = this.elevation === null ? 0 : this.startElevation;
    const perCarry = 1 / carry;
    // Higher than all the sector's canopies where the first of them may be and where the last may: so over all of them.
    const begin = this.skyline[sector]!;
    const end = Math.min(carry, this.skyline[sector + 1]!);
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
    let r = begin + TREE_STEP_M / 2;
    while (r < end) {
      const f = r * perCarry;
      const height = start + r * launch * (1 - f) * (1 + skew * f);
      if (height >= highest) {
        r = Math.max(r + TREE_STEP_M, descentShare(window, ((highest - start) * perCarry) / launch) * carry);
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
        if (high > TREE_STEP_M) {
          const ahead = r + high;
          const g = ahead * perCarry;
          if ((start + ahead * launch * (1 - g) * (1 + skew * g) - storeyBase) * perStorey > storey) {
            r = ahead;
            continue;
          }
        }
      }
      const open = clear[cell * CANOPY_STOREYS]!;
      if (open > TREE_STEP_M) {
        r += open;
        continue;
      }
      const crown = ground.canopyTop[cell]!;
      if (crown > 0) {
        const above = this.elevation === null ? height : height - this.elevation[cell]!;
        if (above > ground.canopyBase[cell]! && above < crown) {
          passed += ground.canopyDensity[cell]! * TREE_STEP_M;
          if (passed > depth) return r;
        }
      }
      r += TREE_STEP_M;
    }
    return -1;
  }

  /** Lets the ball run `run` metres of fairway from its landing point; ends in whatever it meets. */
  private roll(landX: number, landY: number, dx: number, dy: number, run: number): void {
    const { lie, sameLie } = this;
    let x = landX;
    let y = landY;
    let cell = this.cellAt(x, y);
    let left = run * keptAfterBounce(lie[cell]!);
    while (left > 0) {
      const cost = runCost(lie[cell]!);
      if (cost === Infinity) break;
      const sure = sameLie[cell]!;
      const whole = left / cost;
      const step = sure > ROLL_STEP_M ? sure : ROLL_STEP_M;
      if (step >= whole) {
        x += dx * whole;
        y += dy * whole;
        break;
      }
      x += dx * step;
      y += dy * step;
      left -= step * cost + 1e-9;
      cell = this.cellAt(x, y);
    }
    this.finish(x, y);
  }

  private finish(x: number, y: number): void {
    const endX = x < this.leastX ? this.leastX : x > this.mostX ? this.mostX : x;
    const endY = y < this.leastY ? this.leastY : y > this.mostY ? this.mostY : y;
    this.places[2] = endX;
    this.places[3] = endY;
    this.endLie = this.lie[this.cellAt(endX, endY)]!;
  }
}
