/** A landed ball bounces and rolls over the raster until it stops, or ends in whatever it meets. */

import { SLOPE_PULL_MPS2 } from '../green/surface.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { LONGEST_ROLL_M } from '../ground-run/run.ts';
import { LEVEL_ROW, ROWS_PER_SLOPE, RUN_LIES, RUN_SLOPES, type RunTable } from '../ground-run/run-table.ts';
import { RasterReader } from './raster-reader.ts';

/** Step along the roll, metres: less than the width of the narrowest ditch. */
export const ROLL_STEP_M = 1;
/** The first hop passes over what lies there: about half of the way that the bounces cover. */
export const FIRST_HOP_SHARE = 0.5;
/** A slope never pulls a ball on for longer than if it took this share of what level ground takes. */
export const LEAST_COST_SHARE = 0.1;
/** A side slope is taken to turn a run by no more than this, metres aside per metre. */
export const MOST_ASIDE = 0.6;

/** A cell's word: its lie, metres within which the lie is the same, and the slope to the east and north. */
export const LIE_BITS = 15;
export const SAME_SHIFT = 4;
export const SAME_BITS = 255;
export const EAST_SHIFT = 12;
export const NORTH_SHIFT = 22;
export const SLOPE_BITS = 1023;
/** Slopes are kept to a thousandth, up to half. */
export const SLOPE_ZERO = 512;
export const SLOPE_STEP = 1e-3;

const wordsOf = new WeakMap<HoleGround, Int32Array>();

/** One word per cell: what a rolling ball asks of the ground lies together. */
export function runWords(ground: HoleGround): Int32Array {
  const known = wordsOf.get(ground);
  if (known !== undefined) return known;
  const { lie, sameLie, slopes } = ground;
  const kept = (slope: number): number =>
    Math.min(SLOPE_BITS, Math.max(0, Math.round(slope / SLOPE_STEP) + SLOPE_ZERO));
  const words = new Int32Array(lie.length);
  for (let i = 0; i < words.length; i++) {
    const flat = lie[i]! | (sameLie[i]! << SAME_SHIFT);
    words[i] =
      slopes === null
        ? flat
        : flat | (kept(slopes[2 * i]!) << EAST_SHIFT) | (kept(slopes[2 * i + 1]!) << NORTH_SHIFT);
  }
  wordsOf.set(ground, words);
  return words;
}

/** Follows one ball at a time; where it stopped is in its fields. */
export class RunOut extends RasterReader {
  x = 0;
  y = 0;
  private readonly words: Int32Array;
  private readonly isLevel: boolean;

  constructor(ground: HoleGround) {
    super(ground);
    this.words = runWords(ground);
    this.isLevel = ground.slopes === null;
  }

  /** From its landing along (dx, dy), `scale` times the day's run. */
  follow(landX: number, landY: number, dx: number, dy: number, run: RunTable, scale: number): void {
    const { words, west, south, perM, columns } = this;
    const lastColumn = columns - 1;
    const lastRow = this.rows - 1;
    const { costPerM } = run;
    let word = words[this.cellAt(landX, landY)]!;
    const landLie = word & LIE_BITS;
    if (scale === 0 || costPerM[landLie] === Infinity) {
      this.x = landX;
      this.y = landY;
      return;
    }
    let slopeRow = LEVEL_ROW;
    let above = 0;
    let pull = 0;
    let aside = 0;
    if (!this.isLevel) {
      const east = (((word >>> EAST_SHIFT) & SLOPE_BITS) - SLOPE_ZERO) * SLOPE_STEP;
      const north = ((word >>> NORTH_SHIFT) - SLOPE_ZERO) * SLOPE_STEP;
      const along = east * dx + north * dy;
      const last = RUN_SLOPES.length - 1;
      const at = Math.min(last, Math.max(0, LEVEL_ROW + ROWS_PER_SLOPE * along));
      slopeRow = Math.min(last - 1, Math.floor(at));
      above = at - slopeRow;
      pull = 2 * SLOPE_PULL_MPS2 * along;
      aside = run.sideM[landLie]! * scale * (east * dy - north * dx);
    }
    const here = slopeRow * RUN_LIES + landLie;
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
    for (;;) {
      let column = ((x - west) * perM) | 0;
      let row = ((y - south) * perM) | 0;
      if (column < 0) column = 0;
      else if (column > lastColumn) column = lastColumn;
      if (row < 0) row = 0;
      else if (row > lastRow) row = lastRow;
      word = words[row * columns + column]!;
      const level = costPerM[word & LIE_BITS]!;
      if (level === Infinity || left <= 0) break;
      const least = LEAST_COST_SHARE * level;
      cost = level + pull > least ? level + pull : least;
      const sure = (word >>> SAME_SHIFT) & SAME_BITS;
      const step = sure > ROLL_STEP_M ? sure : ROLL_STEP_M;
      const taken = step * cost;
      if (taken >= left) {
        const whole = left / cost;
        x += ux * whole;
        y += uy * whole;
        break;
      }
      x += ux * step;
      y += uy * step;
      left -= taken + 1e-9;
    }
    this.x = x;
    this.y = y;
  }
}
