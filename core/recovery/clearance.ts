/** Over the trees: how high the ball must be and where, how high this club has it there, and how sure that is. */

import { normalCdf } from '../random/normal.ts';
import { heightThere, type RecoveryShot } from './shot-heights.ts';
import { type TreeGround, treesAlong } from './tree-line.ts';

export interface Clearance {
  /** Distance of the place that decides, metres. */
  readonly atM: number;
  /** Height that the ball needs there, above the spot's ground, metres. */
  readonly needsM: number;
  /** Height that this shot has there, and its standard deviation. */
  readonly hasM: number;
  readonly sdM: number;
  /** Chance that a solid strike is higher. */
  readonly chance: number;
}

/** Places at which a stretch of trees is tested, metres apart. */
const TEST_EVERY_M = 2;

/**
 * The place along `bearing` that is hardest to clear within the shot's carry; null where no tree stands in the way. The
 * top of a stretch is taken over its whole length, which errs to the careful side by a crown's rounding.
 */
export function clearanceOver(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  shot: RecoveryShot,
): Clearance | null {
  let worst: Clearance | null = null;
  for (const stretch of treesAlong(ground, x, y, bearing, shot.carryM(bearing) + 2 * shot.carrySd)) {
    for (let at = stretch.fromM; at <= stretch.toM; at += TEST_EVERY_M) {
      const { mean, sd } = heightThere(shot, bearing, Math.max(0.5, at));
      const chance = normalCdf((mean - stretch.topM) / Math.max(1e-6, sd));
      if (worst === null || chance < worst.chance)
        worst = { atM: Math.max(0.5, at), needsM: stretch.topM, hasM: mean, sdM: sd, chance };
    }
  }
  return worst;
}

/** Under the branches: the place where the shot comes nearest to the crown above it, or null where there is none. */
export function clearanceUnder(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  shot: RecoveryShot,
): Clearance | null {
  let worst: Clearance | null = null;
  for (const stretch of treesAlong(ground, x, y, bearing, shot.carryM(bearing))) {
    for (let at = stretch.fromM; at <= stretch.toM; at += TEST_EVERY_M) {
      const { mean, sd } = heightThere(shot, bearing, Math.max(0.5, at));
      const chance = normalCdf((stretch.baseM - mean) / Math.max(1e-6, sd));
      if (worst === null || chance < worst.chance)
        worst = { atM: Math.max(0.5, at), needsM: stretch.baseM, hasM: mean, sdM: sd, chance };
    }
  }
  return worst;
}

/** `needs 14 m at 35 m; your 9-iron has 17 ± 3`; metres, or feet of height and yards of distance. */
export function clearanceWords(
  clearance: Clearance,
  shot: Pick<RecoveryShot, 'club' | 'swing'>,
  units: 'yards' | 'metres',
): string {
  const height = (metres: number): string => `${Math.round(units === 'yards' ? metres / 0.3048 : metres)}`;
  const [high, far] = units === 'yards' ? ['ft', 'yd'] : ['m', 'm'];
  const distance = Math.round(units === 'yards' ? clearance.atM / 0.9144 : clearance.atM);
  const club = shot.swing === 'full' ? shot.club : `${shot.swing} ${shot.club}`;
  return `needs ${height(clearance.needsM)} ${high} at ${distance} ${far}; your ${club} has ${height(clearance.hasM)} ± ${height(clearance.sdM)}`;
}
