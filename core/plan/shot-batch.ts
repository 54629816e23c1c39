/**
 * Many drawn shots of one club and aim from one spot, step by step for all of them: draw and wind, trees, landing and run,
 * lie. The same model as `ShotResolver`, which plays one shot and is what this is checked against; only a flight past trees is
 * taken along the nearest of the spot's rays (see `sight-lines.ts`).
 */

import { type AimedShot, aimedShot } from '../flight/aimed-shot.ts';
import { LOWEST_RISE_SHARE, RISE_STEPS } from '../flight/flight-table.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { sideSlopeTurn } from '../ground-run/slope-lie.ts';
import { Lie } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { BatchRun } from './batch-run.ts';
import { BatchShots, BY_LIP } from './batch-shots.ts';
import { BatchTrees } from './batch-trees.ts';
import { LipStrike, OVER_LIP } from './lip-strike.ts';
import { RasterReader } from './raster-reader.ts';
import { POOR_WIND, SHORTEST_CARRY_M } from './resolve-shot.ts';

export class ShotBatch extends RasterReader {
  readonly shots = new BatchShots();
  private fromX = NaN;
  private fromY = NaN;
  private startElevation = 0;
  private slopeEast = 0;
  private slopeNorth = 0;
  /** Null where the hole has no trees. */
  private readonly trees: BatchTrees | null;
  private readonly run: BatchRun;
  private readonly lip: LipStrike;

  constructor(ground: HoleGround) {
    super(ground);
    this.trees = ground.highestCanopy > -Infinity ? new BatchTrees(ground) : null;
    this.run = new BatchRun(ground);
    this.lip = new LipStrike(ground);
  }

  /** Shots `from` .. `to - 1` of the draws, at most `BATCH_SHOTS`, from (x, y) at `bearing`, into entries 0 .. of `shots`. */
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
    if (this.elevation !== null) this.reach(day, to - from);
    else this.shots.carry.set(this.shots.level);
    if (this.lip.isAhead) this.strikeLip(day, bearing, draws, from, to);
    this.trees?.meet(this.shots, law, day, bearing, draws, from, to);
    this.run.land(this.shots, x, y, law, day, draws, from, to);
  }

  private stand(x: number, y: number): void {
    this.fromX = x;
    this.fromY = y;
    const cell = this.cellAt(x, y);
    if (this.elevation !== null) this.startElevation = this.elevation[cell]!;
    this.trees?.stand(x, y);
    this.lip.stand(x, y, this.lie[cell]!);
    const { slopes } = this.ground;
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
    if (this.trees === null) return false;
    if (x !== this.fromX || y !== this.fromY) this.stand(x, y);
    const day = aimedShot(law, bearing);
    const direction =
      law.directionMean + day.turn + this.stanceTurn(law, Math.sin(bearing), Math.cos(bearing));
    const carry = law.carryMean * day.carryFactor;
    const { shots } = this;
    shots.ux[0] = Math.sin(bearing + direction);
    shots.uy[0] = Math.cos(bearing + direction);
    shots.level[0] = carry;
    shots.carry[0] = carry;
    return this.trees.isStopped(shots, law, bearing + direction, day);
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
    const { ux, uy, level, turn, poor, stopped } = this.shots;
    const { distanceZ, directionZ, poorU, gustZ } = draws;
    const { carryMean, carrySd, directionMean, directionSd, correlation, directionOwn, poorShare } = law;
    const { carryFactor, isGusty, gustCarry, gustTurn } = day;
    const aimSin = Math.sin(bearing);
    const aimCos = Math.cos(bearing);
    const stance = this.stanceTurn(law, aimSin, aimCos);
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
      let turned = day.turn;
      if (isGusty) {
        factor += gustCarry * gustZ[i]!;
        turned += gustTurn * gustZ[i]!;
      }
      if (isPoor) {
        factor = 1 + POOR_WIND * (factor - 1);
        turned *= POOR_WIND;
      }
      direction += stance + turned;
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

  /** Balls that strike the bunker's lip fall back into the sand. */
  private strikeLip(day: AimedShot, bearing: number, draws: ShotDraws, from: number, to: number): void {
    const { ux, uy, level, turn, poor, stopped, endX, endY } = this.shots;
    for (let i = from, k = 0; i < to; i++, k++) {
      const isPoor = poor[k] === 1;
      const at = this.lip.stopOn(bearing + turn[k]!, level[k]!, day.window, isPoor, draws.rollZ[i]!);
      if (at === OVER_LIP) continue;
      stopped[k] = BY_LIP;
      endX[k] = this.fromX + ux[k]! * at;
      endY[k] = this.fromY + uy[k]! * at;
    }
  }

  /** Carry to ground that is higher or lower than where the shot is played from. */
  private reach({ rise: { topShare, carryShare, turn }, riseSide }: AimedShot, count: number): void {
    const { ux, uy, level, carry, turn: turned } = this.shots;
    const { fromX, fromY, startElevation } = this;
    const elevation = this.elevation!;
    const perShare = RISE_STEPS / (topShare - LOWEST_RISE_SHARE);
    for (let k = 0; k < count; k++) {
      const far = level[k]!;
      const rise = elevation[this.cellAt(fromX + ux[k]! * far, fromY + uy[k]! * far)]! - startElevation;
      const at = (rise / far - LOWEST_RISE_SHARE) * perShare;
      const position = at < 0 ? 0 : at > RISE_STEPS ? RISE_STEPS : at;
      const step = position < RISE_STEPS ? position | 0 : RISE_STEPS - 1;
      const share = carryShare[step]! + (position - step) * (carryShare[step + 1]! - carryShare[step]!);
      const reached = far * share;
      carry[k] = reached > SHORTEST_CARRY_M ? reached : SHORTEST_CARRY_M;
      if (riseSide !== 0) {
        const t = riseSide * (turn[step]! + (position - step) * (turn[step + 1]! - turn[step]!));
        const s = t * (1 - (t * t) / 6);
        const c = 1 - (t * t) / 2;
        const dx = ux[k]!;
        const dy = uy[k]!;
        turned[k] = turned[k]! + t;
        ux[k] = dx * c + dy * s;
        uy[k] = dy * c - dx * s;
      }
    }
  }
}
