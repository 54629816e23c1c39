/** A landed ball bounces and rolls over the raster until it stops, or ends in whatever it meets. */

import { SLOPE_PULL_MPS2 } from '../green/surface.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { LONGEST_ROLL_M } from '../ground-run/run.ts';
import { LEVEL_ROW, ROWS_PER_SLOPE, RUN_LIES, RUN_SLOPES, type RunTable } from '../ground-run/run-table.ts';
import { RasterReader } from './raster-reader.ts';

/** Step along the roll, metres: less than the width of the narrowest ditch. */
const ROLL_STEP_M = 1;
/** The first hop passes over what lies there: about half of the way that the bounces cover. */
const FIRST_HOP_SHARE = 0.5;
/** A slope never pulls a ball on for longer than if it took this share of what level ground takes. */
const LEAST_COST_SHARE = 0.1;
/** A side slope is taken to turn a run by no more than this, metres aside per metre. */
const MOST_ASIDE = 0.6;

/** Follows one ball at a time; where it stopped is in its fields. */
export class RunOut extends RasterReader {
  x = 0;
  y = 0;
  private readonly sameLie: Uint8Array;
  private readonly slopes: Float32Array | null;

  constructor(ground: HoleGround) {
    super(ground);
    this.sameLie = ground.sameLie;
    this.slopes = ground.slopes;
  }

  /** From its landing along (dx, dy), `scale` times the day's run. */
  follow(landX: number, landY: number, dx: number, dy: number, run: RunTable, scale: number): void {
    const { lie, sameLie } = this;
    const { costPerM } = run;
    let cell = this.cellAt(landX, landY);
    const landLie = lie[cell]!;
    if (scale === 0 || costPerM[landLie] === Infinity) {
      this.x = landX;
      this.y = landY;
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
      const share = Math.min(MOST_ASIDE, Math.max(-MOST_ASIDE, aside / Math.max(1, Math.abs(total))));
      // A ball that spins back is turned round below, the slope is not.
      const q = total < 0 ? -share : share;
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
    this.x = x;
    this.y = y;
  }
}
