/**
 * Runs of one flight on every lie, for a planner that follows the ball over a raster: per lie where the bounces end, and the
 * speed squared with which the roll begins; rolling on, each metre of a lie takes `2 rollMps2` from it.
 */

import type { Conditions } from '../conditions/conditions.ts';
import { LIE_NAMES } from '../ground/lies.ts';
import { type Landing, runAfterLanding } from './run.ts';
import { plugShare, runGround } from './surfaces.ts';

export interface RunTable {
  /** By lie code: metres that the bounces cover if the ball lands there (negative: it spins back). */
  readonly bounceM: Float64Array;
  /** By lie code: speed squared as the roll begins, m²/s², negative where it rolls backwards. */
  readonly rollSquare: Float64Array;
  /** By lie code: what a metre of it takes from that, m/s² (twice the deceleration); infinite where the ball stays. */
  readonly costPerM: Float64Array;
  /** Mean run on the level if all the ground were that lie, metres. */
  readonly totalM: Float64Array;
  /** Chance that the ball plugs if it lands in sand. */
  readonly plugShare: number;
}

export function runTable(
  landing: Landing,
  conditions: Pick<Conditions, 'firmness' | 'greenSpeedFt'>,
): RunTable {
  const lies = LIE_NAMES.length;
  const table: RunTable = {
    bounceM: new Float64Array(lies),
    rollSquare: new Float64Array(lies),
    costPerM: new Float64Array(lies),
    totalM: new Float64Array(lies),
    plugShare: plugShare(landing.speedMps * Math.sin(landing.descent), conditions.firmness),
  };
  for (let lie = 0; lie < lies; lie++) {
    const ground = runGround(lie, conditions.firmness, conditions.greenSpeedFt);
    const run = runAfterLanding(landing, ground);
    table.bounceM[lie] = run.bounceM;
    table.rollSquare[lie] = Math.sign(run.rollSpeedMps) * run.rollSpeedMps ** 2;
    table.costPerM[lie] = 2 * ground.rollMps2;
    table.totalM[lie] = run.totalM;
  }
  return table;
}
