/** Over the trees: how high the ball must be and where, how high this club has it there, and how sure that is. */

import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import type { Words } from '../words/words.ts';
import { normalCdf } from '../random/normal.ts';
import { heightThere, type RecoveryShot } from './shot-heights.ts';
import { crownsAlong, type TreeGround } from './tree-line.ts';

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

/**
 * The place along `bearing` where the shot is least surely above the crowns, within its carry; null where no crown stands
 * in the way. Crowns that it passes below are left to `clearanceUnder`.
 */
export function clearanceOver(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  shot: RecoveryShot,
): Clearance | null {
  let worst: Clearance | null = null;
  const reach = shot.carryM(bearing) + 2 * shot.carrySd;
  for (const { atM, topM, baseM } of crownsAlong(ground, x, y, bearing, reach)) {
    const { mean, sd } = heightThere(shot, bearing, atM);
    if (mean <= baseM) continue;
    const chance = normalCdf((mean - topM) / Math.max(1e-6, sd));
    if (worst === null || chance < worst.chance) worst = { atM, needsM: topM, hasM: mean, sdM: sd, chance };
  }
  return worst;
}

/**
 * The place where the shot is least surely below the branches; null where there are none. Crowns that it flies over are
 * left to `clearanceOver`; `chance` is that of staying below.
 */
export function clearanceUnder(
  ground: TreeGround,
  x: number,
  y: number,
  bearing: number,
  shot: RecoveryShot,
): Clearance | null {
  let worst: Clearance | null = null;
  for (const { atM, topM, baseM } of crownsAlong(ground, x, y, bearing, shot.carryM(bearing))) {
    const { mean, sd } = heightThere(shot, bearing, atM);
    if (mean >= topM) continue;
    const chance = normalCdf((baseM - mean) / Math.max(1e-6, sd));
    if (worst === null || chance < worst.chance) worst = { atM, needsM: baseM, hasM: mean, sdM: sd, chance };
  }
  return worst;
}

/**
 * Chance that a solid strike clears a bunker's lip of `lipM` metres that stands `atM` ahead. From sand the spread given
 * should be that of the lie.
 */
export function lipChance(shot: RecoveryShot, bearing: number, lipM: number, atM: number): number {
  const { mean, sd } = heightThere(shot, bearing, atM);
  return normalCdf((mean - BALL_RADIUS_M - lipM) / Math.max(1e-6, sd));
}

/** Heights below this are told to a tenth, metres. */
const LOW_M = 5;

/**
 * `needs 14 m at 35 m; your 9-iron has 17 ± 3`, or `stay below 2.5 m at 12 m; your punch 5-iron has 1.4 ± 0.3`; metres, or
 * feet of height and yards of distance.
 */
export function clearanceWords(
  clearance: Clearance,
  shot: Pick<RecoveryShot, 'club' | 'swing'>,
  units: 'yards' | 'metres',
  words: Words,
  way: 'over' | 'under' = 'over',
): string {
  const { trees, golf, figures } = words;
  const digits = units === 'metres' && clearance.needsM < LOW_M ? 1 : 0;
  const height = (metres: number): string =>
    figures.fixed(units === 'yards' ? metres / 0.3048 : metres, digits);
  const [high, far] = units === 'yards' ? ['ft', 'yd'] : ['m', 'm'];
  const distance = Math.round(units === 'yards' ? clearance.atM / 0.9144 : clearance.atM);
  return trees.clearance({
    asks: way === 'over' ? trees.needs : trees.stayBelow,
    height: `${height(clearance.needsM)} ${high}`,
    at: `${distance} ${far}`,
    club:
      shot.swing === 'full'
        ? shot.club
        : trees.swungClub({ swing: golf.shortSwings[shot.swing], club: shot.club }),
    has: height(clearance.hasM),
    sd: height(clearance.sdM),
  });
}
