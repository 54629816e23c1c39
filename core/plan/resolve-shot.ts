/**
 * The inner loop: one drawn shot from strike to rest. Draw, trees, landing, bounce and roll, lie, penalty.
 * Assumes that points are in the hole's frame and that the raster covers the hole; balls off it rest on its rim.
 */

import { type AimedShot, aimedShot } from '../flight/aimed-shot.ts';
import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import { carryToRise } from '../flight/flight-table.ts';
import { descentShare } from '../flight/flight-window.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import { SLOPE_PULL_MPS2 } from '../green/surface.ts';
import { LONGEST_ROLL_M } from '../ground-run/run.ts';
import { LEVEL_ROW, ROWS_PER_SLOPE, RUN_LIES, RUN_SLOPES } from '../ground-run/run-table.ts';
import { CANOPY_STOREYS, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { sectorOf, type Skyline } from '../ground/skyline.ts';
import { STEMS_PER_M } from '../ground/tree-kinds.ts';
import { type Trunk, trunksNear } from '../ground/trunks.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { restAfterHit } from '../recovery/stopped-ball.ts';
import { stanceTurn } from './shot-turn.ts';

/** Step along the roll, metres: less than the width of the narrowest ditch. */
const ROLL_STEP_M = 1;
/** Step through canopies, metres: crowns are several metres wide. */
const TREE_STEP_M = 2;
/** No shot carries less than this, metres: the worst top still moves. */
const SHORTEST_CARRY_M = 0.5;
/** The first hop passes over what lies there: about half of the way that the bounces cover. */
const FIRST_HOP_SHARE = 0.5;
/** A slope never pulls a ball on for longer than if it took this share of what level ground takes. */
const LEAST_COST_SHARE = 0.1;
/** A poor strike starts lower, and meets so much less of the wind. Common practice, no source. */
const POOR_LAUNCH = 0.5;
const POOR_WIND = 0.5;
/** A side slope is taken to turn a run by no more than this, metres aside per metre. */
const MOST_ASIDE = 0.6;

/** Below this angle, radians, four terms after the first give sine and cosine to 1e-10. */
const SERIES_ANGLE = 0.6;

interface MetTrunk extends Trunk {
  /** Half the width in which the middle of a ball meets it. */
  readonly meetsM: number;
  /** Above the datum of the hole's heights. */
  readonly topM: number;
}

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
  /** Those near the last spot, out of all. */
  private trunks: readonly MetTrunk[] = [];
  private readonly allTrunks: readonly MetTrunk[];
  /** A tree has stopped the ball by its wood, not its crown. */
  private hitWood = false;
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
  private readonly slopes: Float32Array | null;
  private readonly highest: number;
  private readonly storeyBase: number;
  private readonly perStorey: number;
  /** The last aim and its sine and cosine: shots come in batches of one aim. */
  private aim = 0;
  private aimSin = 0;
  private aimCos = 1;
  /** The last law at that aim on the day, and the turn that day and stance give it. */
  private law: ShotLaw | null = null;
  private day: AimedShot | null = null;
  private turn = 0;

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
    this.slopes = ground.slopes;
    this.highest = ground.highestCanopy;
    this.storeyBase = ground.storeyBase;
    this.perStorey = 1 / ground.storeyM;
    this.allTrunks = ground.trunks.map((trunk) => ({
      ...trunk,
      meetsM: trunk.radiusM + BALL_RADIUS_M,
      topM: trunk.heightM + (ground.elevation?.[this.cellAt(trunk.x, trunk.y)] ?? 0),
    }));
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
    if (this.highest > -Infinity) {
      this.skyline = this.ground.skylines.from(x, y);
    }
    this.trunks = trunksNear(this.allTrunks, x, y);
    this.law = null;
  }

  /** Makes ready for shots of that law at that aim. */
  private face(law: ShotLaw, bearing: number): AimedShot {
    if (bearing !== this.aim) {
      this.aim = bearing;
      this.aimSin = Math.sin(bearing);
      this.aimCos = Math.cos(bearing);
    }
    const day = aimedShot(law, bearing);
    this.law = law;
    this.day = day;
    this.turn = day.turn + stanceTurn(this.ground, this.fromX, this.fromY, law.loft, bearing);
    return day;
  }

  /** Shot `i` of the draws from (x, y) at `bearing` (radians clockwise from north). */
  resolve(x: number, y: number, law: ShotLaw, bearing: number, draws: ShotDraws, i: number): void {
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const day = law === this.law && bearing === this.aim ? this.day! : this.face(law, bearing);
    const z1 = draws.distanceZ[i]!;
    const z2 = draws.directionZ[i]!;
    const poor = draws.poorU[i]! < law.poorShare;
    const strike = poor ? law.poorCarryMean + law.poorCarrySd * z1 : law.carryMean + law.carrySd * z1;
    let direction =
      this.turn +
      (poor
        ? law.directionMean + law.poorDirectionSd * z2
        : law.directionMean + law.directionSd * (law.correlation * z1 + law.directionOwn * z2));
    let factor = day.carryFactor;
    if (day.gustCarry !== 0) {
      const gust = draws.gustZ[i]!;
      factor += day.gustCarry * gust;
      direction += day.gustTurn * gust;
    }
    if (poor && factor !== 1) {
      factor = 1 + POOR_WIND * (factor - 1);
      direction -= (1 - POOR_WIND) * day.turn;
    }
    const flown = strike * factor;
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

    const level = flown > SHORTEST_CARRY_M ? flown : SHORTEST_CARRY_M;
    let carry = level;
    if (this.elevation !== null) {
      const rise = this.elevation[this.cellAt(x + dx * carry, y + dy * carry)]! - this.startElevation;
      carry = Math.max(SHORTEST_CARRY_M, carryToRise(law.flight.table, level, rise));
    }
    if (this.highest > -Infinity) {
      const sector = sectorOf(bearing + direction);
      let stopAt = this.trunks.length > 0 ? this.trunkStop(dx, dy, carry, level, day, poor) : -1;
      this.hitWood = stopAt >= 0;
      if (this.skyline[sector]! < (stopAt >= 0 ? stopAt : carry)) {
        const crown = this.treeStop(
          sector,
          dx,
          dy,
          level,
          stopAt >= 0 ? stopAt : carry,
          day,
          poor,
          draws.canopyDepth[i]!,
        );
        if (crown >= 0) stopAt = crown;
      }
      if (stopAt >= 0) {
        const u = draws.poorU[i]!;
        const share = poor ? u / law.poorShare : (u - law.poorShare) / (1 - law.poorShare);
        this.dropFromTree(dx, dy, stopAt, level, law, day, poor, share, draws.rollZ[i]!);
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
    const share = 1 + law.runSdShare * draws.rollZ[i]!;
    this.run(landX, landY, dx, dy, day, share > 0 ? (share * law.runFactor * level) / day.runCarryM : 0);
  }

  /** Does the middle of the pattern, flown from (x, y) at `bearing`, end in a tree more often than not? */
  isBlocked(x: number, y: number, law: ShotLaw, bearing: number): boolean {
    if (this.highest === -Infinity) return false;
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const day = law === this.law && bearing === this.aim ? this.day! : this.face(law, bearing);
    const direction = bearing + law.directionMean + this.turn;
    const sector = sectorOf(direction);
    const carry = law.carryMean * day.carryFactor;
    const { sin, cos } = Math;
    if (
      this.trunks.length > 0 &&
      this.trunkStop(sin(direction), cos(direction), carry, carry, day, false) >= 0
    )
      return true;
    if (!(this.skyline[sector]! < carry)) return false;
    return this.treeStop(sector, sin(direction), cos(direction), carry, carry, day, false, Math.LN2) >= 0;
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
  private treeStop(
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
        if (above > ground.canopyBase[cell]!) {
          if (above < crown) {
            passed += ground.canopyDensity[cell]! * TREE_STEP_M;
            if (passed > depth) {
              this.hitWood = false;
              return r;
            }
          }
        } else if (this.lie[cell] === Lie.woods) {
          passed += STEMS_PER_M * TREE_STEP_M;
          if (passed > depth) {
            this.hitWood = true;
            return r;
          }
        }
      }
      r += TREE_STEP_M;
    }
    return -1;
  }

  /** A tree has stopped the ball `at` metres along its way: where it comes to rest. */
  private dropFromTree(
    dx: number,
    dy: number,
    at: number,
    carry: number,
    law: ShotLaw,
    day: AimedShot,
    poor: boolean,
    keptU: number,
    turnZ: number,
  ): void {
    const { window } = day;
    const f = at / carry;
    const launch = poor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    const flown = at * launch * (1 - f) * (1 + window.skew * f);
    const hitX = this.fromX + dx * at;
    const hitY = this.fromY + dy * at;
    const fall = this.elevation === null ? 0 : this.elevation[this.cellAt(hitX, hitY)]! - this.startElevation;
    // Air takes speed in proportion to the way; a shorter shot of the same club starts slower.
    const speed =
      day.launchMps *
      Math.sqrt(Math.min(1, carry / day.runCarryM)) *
      Math.pow(day.landingMps / day.launchMps, f);
    const rest = restAfterHit(
      { speedMps: speed, heightM: flown - fall, by: this.hitWood ? 'trunk' : 'crown' },
      keptU,
      turnZ,
    );
    // A ball thrown back comes down between the tree and the player at the nearest.
    const along = Math.max(0, at + rest.along);
    this.stoppedByTree = true;
    this.finish(this.fromX + dx * along + dy * rest.right, this.fromY + dy * along - dx * rest.right);
    this.places[0] = this.endX;
    this.places[1] = this.endY;
  }

  /** Lets the ball bounce and roll on from its landing, `scale` times the day's run; ends in whatever it meets. */
  private run(landX: number, landY: number, dx: number, dy: number, { run }: AimedShot, scale: number): void {
    const { lie, sameLie } = this;
    const { costPerM } = run;
    let cell = this.cellAt(landX, landY);
    const landLie = lie[cell]!;
    if (scale === 0 || costPerM[landLie] === Infinity) {
      this.finish(landX, landY);
      return;
    }
    let row = LEVEL_ROW;
    let above = 0;
    let pull = 0;
    let aside = 0;
    if (this.slopes !== null) {
      const east = this.slopes[2 * cell]!;
      const north = this.slopes[2 * cell + 1]!;
      const along = east * dx + north * dy;
      const last = RUN_SLOPES.length - 1;
      const at = Math.min(last, Math.max(0, LEVEL_ROW + ROWS_PER_SLOPE * along));
      row = Math.min(last - 1, Math.floor(at));
      above = at - row;
      pull = 2 * SLOPE_PULL_MPS2 * along;
      aside = run.sideM[landLie]! * scale * (east * dy - north * dx);
    }
    const here = row * RUN_LIES + landLie;
    const next = above === 0 ? here : here + RUN_LIES;
    const bounce = scale * ((1 - above) * run.bounceM[here]! + above * run.bounceM[next]!);
    const square = scale * ((1 - above) * run.rollSquare[here]! + above * run.rollSquare[next]!);
    let cost = Math.max(LEAST_COST_SHARE * costPerM[landLie]!, costPerM[landLie]! + pull);
    const total = Math.min(LONGEST_ROLL_M, bounce + square / cost);
    let ux = dx;
    let uy = dy;
    if (aside !== 0) {
      // Along the way and aside in one straight line.
      const q = Math.min(MOST_ASIDE, Math.max(-MOST_ASIDE, aside / Math.max(1, Math.abs(total))));
      const norm = 1 / Math.sqrt(1 + q * q);
      ux = (dx + dy * q) * norm;
      uy = (dy - dx * q) * norm;
    }
    if (total < 0) {
      ux = -ux;
      uy = -uy;
      pull = -pull;
    }
    let left = Math.abs(total);
    const hop = total > 0 ? Math.min(left, Math.max(0, FIRST_HOP_SHARE * bounce)) : 0;
    let x = landX + ux * hop;
    let y = landY + uy * hop;
    left = (left - hop) * cost;
    cell = this.cellAt(x, y);
    while (left > 0) {
      const level = costPerM[lie[cell]!]!;
      if (level === Infinity) break;
      cost = Math.max(LEAST_COST_SHARE * level, level + pull);
      const sure = sameLie[cell]!;
      const whole = left / cost;
      const step = sure > ROLL_STEP_M ? sure : ROLL_STEP_M;
      if (step >= whole) {
        x += ux * whole;
        y += uy * whole;
        break;
      }
      x += ux * step;
      y += uy * step;
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
