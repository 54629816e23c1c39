/**
 * Many drawn shots of one club and aim from one spot, step by step for all of them: draw and wind, trees, landing and run,
 * lie. The same model as `ShotResolver`, which plays one shot and is what this is checked against; only a flight past trees is
 * taken along the nearest of the spot's rays (see `sight-lines.ts`).
 */

import { type AimedShot, aimedShot } from '../flight/aimed-shot.ts';
import { LOWEST_RISE_SHARE, RISE_STEPS } from '../flight/flight-table.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { SLOPE_PULL_MPS2 } from '../green/surface.ts';
import { sideSlopeTurn } from '../ground-run/slope-lie.ts';
import { Lie } from '../ground/lies.ts';
import { LONGEST_ROLL_M } from '../ground-run/run.ts';
import { LEVEL_ROW, ROWS_PER_SLOPE, RUN_LIES, RUN_SLOPES } from '../ground-run/run-table.ts';
import {
  CANOPY_STEP_M,
  countOf,
  firstOf,
  rayOf,
  SightBook,
  type SightLines,
  STRETCH,
} from '../ground/sight-lines.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { RasterReader } from './raster-reader.ts';
import { POOR_WIND, SHORTEST_CARRY_M } from './resolve-shot.ts';
import {
  EAST_SHIFT,
  FIRST_HOP_SHARE,
  LEAST_COST_SHARE,
  LIE_BITS,
  MOST_ASIDE,
  NORTH_SHIFT,
  ROLL_STEP_M,
  runWords,
  SAME_BITS,
  SAME_SHIFT,
  SLOPE_BITS,
  SLOPE_STEP,
  SLOPE_ZERO,
} from './run-out.ts';
import { POOR_LAUNCH, TreeWalk } from './tree-walk.ts';

/** Shots at a time. */
export const BATCH_SHOTS = 128;

const LAST_SLOPE = RUN_SLOPES.length - 1;
/** How far trees let a ball through: beyond this they do not stop it. */
const NOT_STOPPED = -1;

const books = new WeakMap<HoleGround, SightBook>();

export class ShotBatch extends RasterReader {
  /** Where each shot came to rest or was lost, metres, inside the raster; its `Lie` code. */
  readonly endX = new Float64Array(BATCH_SHOTS);
  readonly endY = new Float64Array(BATCH_SHOTS);
  readonly endLie = new Uint8Array(BATCH_SHOTS);
  /** 1 where a tree stopped the ball. */
  readonly stopped = new Uint8Array(BATCH_SHOTS);
  private readonly ux = new Float64Array(BATCH_SHOTS);
  private readonly uy = new Float64Array(BATCH_SHOTS);
  /** Carry on level ground, and to the ground that is there. */
  private readonly level = new Float64Array(BATCH_SHOTS);
  private readonly carry = new Float64Array(BATCH_SHOTS);
  private readonly turn = new Float64Array(BATCH_SHOTS);
  private readonly poor = new Uint8Array(BATCH_SHOTS);
  private fromX = NaN;
  private fromY = NaN;
  private startElevation = 0;
  private slopeEast = 0;
  private slopeNorth = 0;
  private readonly trees: TreeWalk | null;
  private readonly sight: SightBook | null;
  private lines: SightLines | null = null;
  private hitWood = false;
  private readonly words: Int32Array;
  private readonly isLevel: boolean;

  constructor(ground: HoleGround) {
    super(ground);
    this.words = runWords(ground);
    this.isLevel = ground.slopes === null;
    this.trees = ground.highestCanopy > -Infinity ? new TreeWalk(ground) : null;
    this.sight = this.trees === null ? null : sightBook(ground, this.trees);
  }

  /** Shots `from` .. `to - 1` of the draws, at most `BATCH_SHOTS`, from (x, y) at `bearing`, into entries 0 .. of the fields. */
  play(
    x: number,
    y: number,
    law: ShotLaw,
    bearing: number,
    draws: ShotDraws,
    from: number,
    to: number,
  ): void {
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const day = aimedShot(law, bearing);
    this.strike(law, day, bearing, draws, from, to);
    if (this.elevation !== null) this.reach(law, to - from);
    else this.carry.set(this.level);
    if (this.lines !== null) this.meetTrees(this.lines, law, day, bearing, draws, from, to);
    this.land(law, day, draws, from, to);
  }

  private stand(x: number, y: number): void {
    this.fromX = x;
    this.fromY = y;
    if (this.elevation !== null) this.startElevation = this.elevation[this.cellAt(x, y)]!;
    this.lines = this.sight?.from(x, y, this.startElevation) ?? null;
    const { slopes } = this.ground;
    const cell = this.cellAt(x, y);
    // A teeing area is level.
    const hasSlope = slopes !== null && this.lie[cell] !== Lie.tee;
    this.slopeEast = hasSlope ? slopes[2 * cell]! : 0;
    this.slopeNorth = hasSlope ? slopes[2 * cell + 1]! : 0;
  }

  /** As `stanceTurn` of shot-turn.ts. */
  private stanceTurn(law: ShotLaw, aimSin: number, aimCos: number): number {
    if (this.slopeEast === 0 && this.slopeNorth === 0) return 0;
    return sideSlopeTurn(law.loft, this.slopeEast * aimCos - this.slopeNorth * aimSin);
  }

  /** Does the middle of the pattern at `bearing` end in a tree more often than not? */
  isBlocked(x: number, y: number, law: ShotLaw, bearing: number): boolean {
    if (this.sight === null) return false;
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const day = aimedShot(law, bearing);
    const direction =
      law.directionMean + day.turn + this.stanceTurn(law, Math.sin(bearing), Math.cos(bearing));
    const carry = law.carryMean * day.carryFactor;
    const entry = this.lines!.entry(rayOf(bearing + direction), carry);
    if (countOf(entry) === 0) return false;
    this.ux[0] = Math.sin(bearing + direction);
    this.uy[0] = Math.cos(bearing + direction);
    this.level[0] = carry;
    this.carry[0] = carry;
    return this.stopOn(this.lines!, entry, 0, day, false, Math.LN2) !== NOT_STOPPED;
  }

  /** Level carry, direction and whether the strike was poor. */
  private strike(
    law: ShotLaw,
    day: AimedShot,
    bearing: number,
    draws: ShotDraws,
    from: number,
    to: number,
  ): void {
    const { ux, uy, level, turn, poor, stopped } = this;
    const { distanceZ, directionZ, poorU, gustZ } = draws;
    const { carryMean, carrySd, directionMean, directionSd, correlation, directionOwn, poorShare } = law;
    const { carryFactor, isGusty, gustCarry, gustTurn } = day;
    const aimSin = Math.sin(bearing);
    const aimCos = Math.cos(bearing);
    const shift = day.turn + this.stanceTurn(law, aimSin, aimCos);
    const poorShift = shift - (1 - POOR_WIND) * day.turn;
    for (let i = from, k = 0; i < to; i++, k++) {
      const z1 = distanceZ[i]!;
      const z2 = directionZ[i]!;
      const isPoor = poorU[i]! < poorShare;
      let factor = carryFactor;
      let strike: number;
      let direction: number;
      if (isPoor) {
        strike = law.poorCarryMean + law.poorCarrySd * z1;
        direction = directionMean + law.poorDirectionSd * z2;
      } else {
        strike = carryMean + carrySd * z1;
        direction = directionMean + directionSd * (correlation * z1 + directionOwn * z2);
      }
      if (isGusty) {
        factor += gustCarry * gustZ[i]!;
        direction += gustTurn * gustZ[i]!;
      }
      if (isPoor && factor !== 1) {
        factor = 1 + POOR_WIND * (factor - 1);
        direction += poorShift;
      } else {
        direction += shift;
      }
      const flown = strike * factor;
      const q = direction * direction;
      let sin: number;
      let cos: number;
      // Below 0.6 four terms after the first give both to 1e-10.
      if (q < 0.36) {
        sin = direction * (1 - (q / 6) * (1 - (q / 20) * (1 - (q / 42) * (1 - q / 72))));
        cos = 1 - (q / 2) * (1 - (q / 12) * (1 - (q / 30) * (1 - (q / 56) * (1 - q / 90))));
      } else {
        sin = Math.sin(direction);
        cos = Math.cos(direction);
      }
      ux[k] = aimSin * cos + aimCos * sin;
      uy[k] = aimCos * cos - aimSin * sin;
      level[k] = flown > SHORTEST_CARRY_M ? flown : SHORTEST_CARRY_M;
      turn[k] = direction;
      poor[k] = isPoor ? 1 : 0;
      stopped[k] = 0;
    }
  }

  /** Carry to ground that is higher or lower than where the shot is played from. */
  private reach(law: ShotLaw, count: number): void {
    const { ux, uy, level, carry, fromX, fromY, startElevation } = this;
    const elevation = this.elevation!;
    const { riseCarry, topShare } = law.flight.table;
    const perShare = RISE_STEPS / (topShare - LOWEST_RISE_SHARE);
    for (let k = 0; k < count; k++) {
      const far = level[k]!;
      const rise = elevation[this.cellAt(fromX + ux[k]! * far, fromY + uy[k]! * far)]! - startElevation;
      const at = (rise / far - LOWEST_RISE_SHARE) * perShare;
      const position = at < 0 ? 0 : at > RISE_STEPS ? RISE_STEPS : at;
      const step = position < RISE_STEPS ? position | 0 : RISE_STEPS - 1;
      const share = riseCarry[step]! + (position - step) * (riseCarry[step + 1]! - riseCarry[step]!);
      const reached = far * share;
      carry[k] = reached > SHORTEST_CARRY_M ? reached : SHORTEST_CARRY_M;
    }
  }

  /** Balls that a tree stops come to rest there. */
  private meetTrees(
    lines: SightLines,
    law: ShotLaw,
    day: AimedShot,
    bearing: number,
    draws: ShotDraws,
    from: number,
    to: number,
  ): void {
    const { poorU, canopyDepth, rollZ } = draws;
    for (let i = from, k = 0; i < to; i++, k++) {
      const entry = lines.entry(rayOf(bearing + this.turn[k]!), this.carry[k]!);
      if (countOf(entry) === 0) continue;
      const isPoor = this.poor[k] === 1;
      const at = this.stopOn(lines, entry, k, day, isPoor, canopyDepth[i]!);
      if (at === NOT_STOPPED) continue;
      const u = poorU[i]!;
      const keptU = isPoor ? u / law.poorShare : (u - law.poorShare) / (1 - law.poorShare);
      const trees = this.trees!;
      trees.startAt(this.fromX, this.fromY, this.startElevation);
      trees.drop(this.ux[k]!, this.uy[k]!, at, this.level[k]!, day, isPoor, keptU, rollZ[i]!, this.hitWood);
      this.stopped[k] = 1;
      this.endX[k] = trees.restX;
      this.endY[k] = trees.restY;
    }
  }

  /** Distance at which something on the ray stops shot `k`, or `NOT_STOPPED`. */
  private stopOn(
    lines: SightLines,
    entry: number,
    k: number,
    { window }: AimedShot,
    isPoor: boolean,
    depth: number,
  ): number {
    const { numbers } = lines;
    const reach = this.carry[k]!;
    const perCarry = 1 / this.level[k]!;
    const { skew } = window;
    const launch = isPoor ? window.tanLaunch * POOR_LAUNCH : window.tanLaunch;
    let passed = 0;
    let at = firstOf(entry);
    for (const end = at + STRETCH * countOf(entry); at < end; at += STRETCH) {
      const begin = numbers[at]!;
      if (begin >= reach) break;
      const last = numbers[at + 1]!;
      if (last < 0) {
        const hit = this.trunkHit(lines, -1 - last, k, launch, skew, reach);
        if (hit < 0) continue;
        this.hitWood = true;
        return hit;
      }
      const until = last < reach ? last : reach;
      const top = numbers[at + 2]!;
      const f0 = begin * perCarry;
      const f1 = until * perCarry;
      // A flight is concave: above the top at both ends, above it between them.
      if (
        begin * launch * (1 - f0) * (1 + skew * f0) >= top &&
        until * launch * (1 - f1) * (1 + skew * f1) >= top
      )
        continue;
      const base = numbers[at + 3]!;
      const density = numbers[at + 4]!;
      const stems = numbers[at + 5]!;
      for (let r = begin + CANOPY_STEP_M / 2; r < until; r += CANOPY_STEP_M) {
        const f = r * perCarry;
        const height = r * launch * (1 - f) * (1 + skew * f);
        if (height >= top) continue;
        const inCrown = height > base;
        passed += (inCrown ? density : stems) * CANOPY_STEP_M;
        if (passed > depth) {
          this.hitWood = !inCrown;
          return r;
        }
      }
    }
    return NOT_STOPPED;
  }

  private trunkHit(
    lines: SightLines,
    index: number,
    k: number,
    launch: number,
    skew: number,
    reach: number,
  ): number {
    const trunk = lines.trunks[index]!;
    const tx = trunk.x - this.fromX;
    const ty = trunk.y - this.fromY;
    const along = tx * this.ux[k]! + ty * this.uy[k]!;
    const aside = tx * this.uy[k]! - ty * this.ux[k]!;
    if (along <= 0 || along >= reach || aside > trunk.meetsM || aside < -trunk.meetsM) return NOT_STOPPED;
    const f = along / this.level[k]!;
    const height = this.startElevation + along * launch * (1 - f) * (1 + skew * f);
    return height < trunk.topM ? along : NOT_STOPPED;
  }

  /** Landing, bounce and roll of the others, and the lie of all. The arithmetic of `RunOut.follow`, for many. */
  private land(law: ShotLaw, day: AimedShot, draws: ShotDraws, from: number, to: number): void {
    const { endX, endY, endLie, stopped, ux, uy, carry, level, fromX, fromY, words, isLevel } = this;
    const { west, south, perM, columns, leastX, leastY, mostX, mostY } = this;
    const { rollZ } = draws;
    const { costPerM, bounceM, rollSquare, sideM } = day.run;
    const { runSdShare } = law;
    const perCarry = law.runFactor / day.runCarryM;
    const lastColumn = columns - 1;
    const lastRow = this.rows - 1;
    for (let i = from, k = 0; i < to; i++, k++) {
      let x: number;
      let y: number;
      if (stopped[k] === 0) {
        const dx = ux[k]!;
        const dy = uy[k]!;
        x = fromX + dx * carry[k]!;
        y = fromY + dy * carry[k]!;
        let column = ((x - west) * perM) | 0;
        let row = ((y - south) * perM) | 0;
        if (column < 0) column = 0;
        else if (column > lastColumn) column = lastColumn;
        if (row < 0) row = 0;
        else if (row > lastRow) row = lastRow;
        let word = words[row * columns + column]!;
        const landLie = word & LIE_BITS;
        let cost = costPerM[landLie]!;
        const scale = (1 + runSdShare * rollZ[i]!) * perCarry * level[k]!;
        if (scale > 0 && cost < Infinity) {
          let here = LEVEL_ROW * RUN_LIES + landLie;
          let bounce = bounceM[here]!;
          let square = rollSquare[here]!;
          let pull = 0;
          let aside = 0;
          if (!isLevel) {
            const east = (((word >>> EAST_SHIFT) & SLOPE_BITS) - SLOPE_ZERO) * SLOPE_STEP;
            const north = ((word >>> NORTH_SHIFT) - SLOPE_ZERO) * SLOPE_STEP;
            const along = east * dx + north * dy;
            let at = LEVEL_ROW + ROWS_PER_SLOPE * along;
            if (at < 0) at = 0;
            else if (at > LAST_SLOPE) at = LAST_SLOPE;
            const slopeRow = at < LAST_SLOPE ? at | 0 : LAST_SLOPE - 1;
            const above = at - slopeRow;
            here = slopeRow * RUN_LIES + landLie;
            bounce = bounceM[here]! + above * (bounceM[here + RUN_LIES]! - bounceM[here]!);
            square = rollSquare[here]! + above * (rollSquare[here + RUN_LIES]! - rollSquare[here]!);
            pull = 2 * SLOPE_PULL_MPS2 * along;
            aside = sideM[landLie]! * scale * (east * dy - north * dx);
            const least = LEAST_COST_SHARE * cost;
            cost += pull;
            if (cost < least) cost = least;
          }
          bounce *= scale;
          let total = bounce + (scale * square) / cost;
          if (total > LONGEST_ROLL_M) total = LONGEST_ROLL_M;
          const length = total < 0 ? -total : total;
          let sx = dx;
          let sy = dy;
          if (aside !== 0) {
            let q = aside / (length > 1 ? length : 1);
            if (q > MOST_ASIDE) q = MOST_ASIDE;
            else if (q < -MOST_ASIDE) q = -MOST_ASIDE;
            if (total < 0) q = -q;
            const norm = 1 / Math.sqrt(1 + q * q);
            sx = (dx + dy * q) * norm;
            sy = (dy - dx * q) * norm;
          }
          let hop = 0;
          if (total < 0) {
            sx = -sx;
            sy = -sy;
            pull = -pull;
          } else if (bounce > 0) {
            hop = FIRST_HOP_SHARE * bounce;
            if (hop > length) hop = length;
          }
          x += sx * hop;
          y += sy * hop;
          let left = (length - hop) * cost;
          while (left > 0) {
            column = ((x - west) * perM) | 0;
            row = ((y - south) * perM) | 0;
            if (column < 0) column = 0;
            else if (column > lastColumn) column = lastColumn;
            if (row < 0) row = 0;
            else if (row > lastRow) row = lastRow;
            word = words[row * columns + column]!;
            const flat = costPerM[word & LIE_BITS]!;
            if (flat === Infinity) break;
            cost = flat + pull;
            if (cost < LEAST_COST_SHARE * flat) cost = LEAST_COST_SHARE * flat;
            const sure = (word >>> SAME_SHIFT) & SAME_BITS;
            const step = sure > ROLL_STEP_M ? sure : ROLL_STEP_M;
            const taken = step * cost;
            if (taken >= left) {
              const whole = left / cost;
              x += sx * whole;
              y += sy * whole;
              break;
            }
            x += sx * step;
            y += sy * step;
            left -= taken + 1e-9;
          }
        }
      } else {
        x = endX[k]!;
        y = endY[k]!;
      }
      x = x < leastX ? leastX : x > mostX ? mostX : x;
      y = y < leastY ? leastY : y > mostY ? mostY : y;
      endX[k] = x;
      endY[k] = y;
      endLie[k] = words[(((y - south) * perM) | 0) * columns + (((x - west) * perM) | 0)]! & LIE_BITS;
    }
  }
}

/** All that play on a ground share what was seen on it. */
function sightBook(ground: HoleGround, trees: TreeWalk): SightBook {
  let book = books.get(ground);
  if (book === undefined) {
    book = new SightBook(ground, trees.allTrunks);
    books.set(ground, book);
  }
  return book;
}
