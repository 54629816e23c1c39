/**
 * Runs of one flight on every lie, for a planner that follows the ball over a raster: per lie and slope where the bounces
 * end, and the speed squared with which the roll begins; rolling on, each metre of a lie takes `2 rollMps2` from it.
 */

import type { Conditions } from '../conditions/conditions.ts';
import { LIE_NAMES } from '../ground/lies.ts';
import { type Landing, runAfterLanding } from './run.ts';
import { plugShare, runGround } from './surfaces.ts';

/** Lies in a row of a table: entry `slope * RUN_LIES + lie`. */
export const RUN_LIES = LIE_NAMES.length;
/** Rise along the way, metres per metre, for which the bounces are kept; beyond the ends the ends stand. */
export const RUN_SLOPES = [-0.2, -0.1, 0, 0.1, 0.2] as const;
/** Row of level ground. */
export const LEVEL_ROW = 2;
/** Rows per unit of slope. */
export const ROWS_PER_SLOPE = 10;
/** A side slope by which the way aside is found; it grows in proportion (small slopes). */
const SIDE_SLOPE = 0.05;

export interface RunTable {
  /** By slope and lie: metres that the bounces cover if the ball lands there (negative: it spins back). */
  readonly bounceM: Float64Array;
  /** By slope and lie: speed squared as the roll begins, m²/s², negative where it rolls backwards. */
  readonly rollSquare: Float64Array;
  /** By lie: what a metre of it takes from that on the level, m/s² (twice the deceleration); infinite where the ball stays. */
  readonly costPerM: Float64Array;
  /** By lie: mean run on the level if all the ground were that lie, metres. */
  readonly totalM: Float64Array;
  /** By lie: metres to the right for a side slope of 1 (rising to the right: negative), on ground level along the way. */
  readonly sideM: Float64Array;
  /** Chance that the ball plugs if it lands in sand. */
  readonly plugShare: number;
}

export function runTable(
  landing: Landing,
  conditions: Pick<Conditions, 'firmness' | 'greenSpeedFt'>,
): RunTable {
  const table: RunTable = {
    bounceM: new Float64Array(RUN_LIES * RUN_SLOPES.length),
    rollSquare: new Float64Array(RUN_LIES * RUN_SLOPES.length),
    costPerM: new Float64Array(RUN_LIES),
    totalM: new Float64Array(RUN_LIES),
    sideM: new Float64Array(RUN_LIES),
    plugShare: plugShare(landing.speedMps * Math.sin(landing.descent), conditions.firmness),
  };
  for (let lie = 0; lie < RUN_LIES; lie++) {
    const ground = runGround(lie, conditions.firmness, conditions.greenSpeedFt);
    RUN_SLOPES.forEach((along, row) => {
      const run = runAfterLanding(landing, ground, { along, right: SIDE_SLOPE });
      table.bounceM[row * RUN_LIES + lie] = run.bounceM;
      table.rollSquare[row * RUN_LIES + lie] = Math.sign(run.rollSpeedMps) * run.rollSpeedMps ** 2;
      if (row !== LEVEL_ROW) return;
      table.totalM[lie] = run.totalM;
      table.sideM[lie] = run.sideM / SIDE_SLOPE;
    });
    table.costPerM[lie] = 2 * ground.rollMps2;
  }
  return table;
}
