/** Shots out of a bunker against its lip: a ball that strikes it falls back into the sand. */

import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import { type BallWindow, heightAlong } from '../flight/flight-window.ts';
import { bunkerAt, type BunkerLip, lipAhead } from '../ground/bunker-lips.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { HEIGHT_SD_SHARE } from '../recovery/shot-heights.ts';
import { POOR_LAUNCH } from './tree-walk.ts';

/** A ball that strikes the lip rolls down its face and comes to rest so far before it, if need be behind where it lay. Common practice, no source. */
const FALLS_BACK_M = 1.5;
/** Bearings on which the edge is looked up; two degrees are a hand's breadth at 5 m. */
const BEARINGS = 180;
const NO_EDGE = Infinity;
/** For a ball that the lip does not stop. */
export const OVER_LIP = -Infinity;

export class LipStrike {
  /** Null off the sand, and where there is no lip. */
  private lip: BunkerLip | null = null;
  private x = 0;
  private y = 0;
  /** By bearing: metres to the edge, NaN where not looked up yet. */
  private readonly edges = new Float64Array(BEARINGS);

  constructor(private readonly ground: Pick<HoleGround, 'lips'>) {}

  stand(x: number, y: number, lie: number): void {
    const lip = lie === Lie.bunker ? bunkerAt(this.ground.lips ?? [], x, y) : undefined;
    this.lip = lip === undefined || lip.heightM === 0 ? null : lip;
    this.x = x;
    this.y = y;
    if (this.lip !== null) this.edges.fill(NaN);
  }

  /** Can a lip stop anything here? */
  get isAhead(): boolean {
    return this.lip !== null;
  }

  /**
   * Metres along its way at which a ball lies that strikes the lip (negative: behind), else `OVER_LIP`. `level`: its carry on level ground; `z`: normal
   * draw of its launch, positive for a lower one, which also runs on longer.
   */
  stopOn(bearing: number, level: number, window: BallWindow, isPoor: boolean, z: number): number {
    if (this.lip === null) return OVER_LIP;
    const atM = this.edgeOn(bearing);
    if (level <= atM) return OVER_LIP;
    const flown = heightAlong(window, level, atM) * (isPoor ? POOR_LAUNCH : 1) * (1 - HEIGHT_SD_SHARE * z);
    return flown < this.lip.heightM + BALL_RADIUS_M ? atM - FALLS_BACK_M : OVER_LIP;
  }

  private edgeOn(bearing: number): number {
    const step = Math.round((bearing * BEARINGS) / (2 * Math.PI));
    const index = ((step % BEARINGS) + BEARINGS) % BEARINGS;
    let atM = this.edges[index]!;
    if (Number.isNaN(atM)) {
      const edge = lipAhead(this.lip!, this.x, this.y, (index * 2 * Math.PI) / BEARINGS);
      atM = edge === null ? NO_EDGE : edge.atM;
      this.edges[index] = atM;
    }
    return atM;
  }
}
