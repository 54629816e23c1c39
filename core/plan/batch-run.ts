/** Landing, bounce and roll of the shots of a batch. */

import type { AimedShot } from '../flight/aimed-shot.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import { SLOPE_PULL_MPS2 } from '../green/surface.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { LONGEST_ROLL_M } from '../ground-run/run.ts';
import { LEVEL_ROW, ROWS_PER_SLOPE, RUN_LIES, RUN_SLOPES } from '../ground-run/run-table.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import type { BatchShots } from './batch-shots.ts';
import { RasterReader } from './raster-reader.ts';
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

const LAST_SLOPE = RUN_SLOPES.length - 1;

export class BatchRun extends RasterReader {
  private readonly words: Int32Array;
  private readonly isLevel: boolean;

  constructor(ground: HoleGround) {
    super(ground);
    this.words = runWords(ground);
    this.isLevel = ground.slopes === null;
  }

  /** Landing, bounce and roll of those that nothing stopped, and the lie of all. The arithmetic of `RunOut.follow`, for many. */
  land(
    shots: BatchShots,
    fromX: number,
    fromY: number,
    law: ShotLaw,
    day: AimedShot,
    draws: ShotDraws,
    from: number,
    to: number,
  ): void {
    const { endX, endY, endLie, stopped, ux, uy, carry, level } = shots;
    const { words, isLevel } = this;
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
