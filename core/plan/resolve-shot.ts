/**
 * The inner loop: one drawn shot from strike to rest. Draw, wind, trees, landing, bounce and roll, lie, penalty.
 * Assumes that points are in the hole's frame and that the raster covers the hole; balls off it rest on its rim.
 */

import { type AimedShot, aimedShot } from '../flight/aimed-shot.ts';
import { sideOfWay } from '../flight/curved-way.ts';
import { carryToRise, turnToRise } from '../flight/flight-table.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { LipStrike, OVER_LIP } from './lip-strike.ts';
import { RasterReader } from './raster-reader.ts';
import { RunOut } from './run-out.ts';
import { stanceTurn } from './shot-turn.ts';
import { TreeWalk } from './tree-walk.ts';

/** No shot carries less than this, metres: the worst top still moves. */
export const SHORTEST_CARRY_M = 0.5;
/** A poor strike flies low and meets so much of the wind. Common practice, no source. */
export const POOR_WIND = 0.5;
/** Below this angle, radians, four terms after the first give sine and cosine to 1e-10. */
const SERIES_ANGLE = 0.6;

/** Resolves shots one at a time; the outcome of the last one is in its fields. */
export class ShotResolver extends RasterReader {
  /** x and y of the landing and of the end: stores into an array are cheaper than into fields. */
  private readonly places = new Float64Array(4);
  /** `Lie` code at the end, penalty areas and out of bounds included. */
  endLie: number = Lie.rough;
  stoppedByTree = false;
  wasPoor = false;
  private fromX = NaN;
  private fromY = NaN;
  private startElevation = 0;
  /** The last aim and its sine and cosine: shots come in batches of one aim. */
  private aim = 0;
  private aimSin = 0;
  private aimCos = 1;
  /** The last law at that aim on the day, and the turn that the stance gives it. */
  private law: ShotLaw | null = null;
  private day: AimedShot | null = null;
  private stance = 0;
  /** Null where the hole has no trees. */
  private readonly trees: TreeWalk | null;
  private readonly runOut: RunOut;
  private readonly lip: LipStrike;

  constructor(
    ground: HoleGround,
    private readonly rolls = true,
  ) {
    super(ground);
    this.trees = ground.highestCanopy > -Infinity ? new TreeWalk(ground) : null;
    this.runOut = new RunOut(ground);
    this.lip = new LipStrike(ground);
  }

  /** Where the ball came down (or was stopped by a tree or a lip), metres. */
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
    const cell = this.cellAt(x, y);
    if (this.elevation !== null) this.startElevation = this.elevation[cell]!;
    this.trees?.stand(x, y, this.startElevation);
    this.lip.stand(x, y, this.lie[cell]!);
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
    this.stance = stanceTurn(this.ground, this.fromX, this.fromY, law.loft, bearing);
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
    let direction = poor
      ? law.directionMean + law.poorDirectionSd * z2
      : law.directionMean + law.directionSd * (law.correlation * z1 + law.directionOwn * z2);
    let factor = day.carryFactor;
    let turn = day.turn;
    if (day.isGusty) {
      const gust = draws.gustZ[i]!;
      factor += day.gustCarry * gust;
      turn += day.gustTurn * gust;
    }
    if (poor) {
      factor = 1 + POOR_WIND * (factor - 1);
      turn *= POOR_WIND;
    }
    direction += this.stance + turn;
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
    let dx = this.aimSin * cos + this.aimCos * sin;
    let dy = this.aimCos * cos - this.aimSin * sin;
    this.wasPoor = poor;
    this.stoppedByTree = false;

    const level = flown > SHORTEST_CARRY_M ? flown : SHORTEST_CARRY_M;
    let carry = level;
    if (this.elevation !== null) {
      const rise = this.elevation[this.cellAt(x + dx * carry, y + dy * carry)]! - this.startElevation;
      carry = Math.max(SHORTEST_CARRY_M, carryToRise(day.rise, level, rise));
      if (day.riseSide !== 0) {
        // A longer fall drifts on. Below 0.2 two terms give sine and cosine to a millionth.
        const turn = day.riseSide * turnToRise(day.rise, level, rise);
        direction += turn;
        const [s, c] = [turn * (1 - (turn * turn) / 6), 1 - (turn * turn) / 2];
        [dx, dy] = [dx * c + dy * s, dy * c - dx * s];
      }
    }
    const back = this.lip.stopOn(bearing + direction, level, day.window, poor, draws.rollZ[i]!);
    if (back !== OVER_LIP) {
      this.finish(x + dx * back, y + dy * back);
      this.places[0] = this.endX;
      this.places[1] = this.endY;
      return;
    }
    if (this.trees !== null) {
      const depth = draws.canopyDepth[i]!;
      const sideAt = sideOfWay(law, level);
      const at =
        sideAt === null
          ? this.trees.stopOn(bearing + direction, dx, dy, level, carry, day, poor, depth)
          : this.trees.stopOnCurve(dx, dy, level, carry, day, poor, depth, sideAt);
      if (at >= 0) {
        const u = draws.poorU[i]!;
        const keptU = poor ? u / law.poorShare : (u - law.poorShare) / (1 - law.poorShare);
        this.trees.drop(dx, dy, at, level, day, poor, keptU, draws.rollZ[i]!, undefined, sideAt?.(at) ?? 0);
        this.stoppedByTree = true;
        this.finish(this.trees.restX, this.trees.restY);
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
    const share = 1 + law.runSdShare * draws.rollZ[i]!;
    const scale = share > 0 ? (share * law.runFactor * level) / day.runCarryM : 0;
    this.runOut.follow(landX, landY, dx, dy, day.run, scale);
    this.finish(this.runOut.x, this.runOut.y);
  }

  private finish(x: number, y: number): void {
    const endX = x < this.leastX ? this.leastX : x > this.mostX ? this.mostX : x;
    const endY = y < this.leastY ? this.leastY : y > this.mostY ? this.mostY : y;
    this.places[2] = endX;
    this.places[3] = endY;
    this.endLie = this.lie[this.cellAt(endX, endY)]!;
  }
}
