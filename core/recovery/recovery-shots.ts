/**
 * The ways out of trees worth comparing from a spot: for each club and swing, through or over, forwards, sideways and
 * backwards. They are places to aim at, with the chance to get out; what they cost is for the planner to say, which plays each
 * of them to the end.
 */

import { gapsFor, throughChance } from './gaps.ts';
import type { RecoveryShot } from './shot-heights.ts';
import { type TreeGround, treesAlong } from './tree-line.ts';

export type WayOut = 'forwards' | 'sideways' | 'backwards';
/** How it passes the trees: none in the way, below the branches, above the tops, or through crowns. */
export type Passage = 'open' | 'under' | 'over' | 'through';

export interface RecoveryOption {
  /** Index into the shots given. */
  readonly shot: number;
  readonly bearing: number;
  readonly way: WayOut;
  readonly passage: Passage;
  readonly gapDeg: number;
  readonly spreadDeg: number;
  readonly throughChance: number;
}

const DEGREE = Math.PI / 180;
const FORWARDS_DEG = 60;
const BACKWARDS_DEG = 120;
/** Gaps narrower than this are no plan, degrees. */
const NARROWEST_DEG = 2;
/** Options that get out less often than this are left away. */
const LEAST_CHANCE = 0.25;
/** Bearings tried where none is open, degrees apart. */
const LAST_RESORT_DEG = 10;
/** Of each shot and way, this many are kept: the likeliest, and those nearest to the line to the hole. */
const KEPT_PER_WAY = 3;

/** Options from (x, y), never none; `toHole`: bearing in which play goes on, radians clockwise from north. */
export function recoveryOptions(
  ground: TreeGround,
  x: number,
  y: number,
  toHole: number,
  shots: readonly RecoveryShot[],
): RecoveryOption[] {
  const options: RecoveryOption[] = [];
  shots.forEach((shot, index) => {
    const found = gapsFor(ground, x, y, toHole, Math.PI, shot)
      .filter((gap) => gap.widthDeg >= NARROWEST_DEG)
      .flatMap((gap) =>
        aimsIn(gap.from, gap.to, toHole, shot.directionSd).map((bearing) => ({ gap, bearing })),
      )
      .map(
        ({ gap, bearing }): RecoveryOption => ({
          shot: index,
          bearing,
          way: wayOf(bearing - toHole),
          passage: passageOf(ground, x, y, bearing, shot),
          gapDeg: gap.widthDeg,
          spreadDeg: gap.spreadDeg,
          throughChance: throughChance(ground, x, y, bearing, shot),
        }),
      )
      .filter((option) => option.throughChance >= LEAST_CHANCE);
    for (const way of ['forwards', 'sideways', 'backwards'] as const) {
      const those = found.filter((option) => option.way === way);
      those.sort((a, b) => score(b, toHole) - score(a, toHole));
      options.push(...those.slice(0, KEPT_PER_WAY));
    }
  });
  return options.length > 0 ? options : lastResorts(ground, x, y, toHole, shots);
}

/** Deep in a wood no bearing is open: of each shot the likeliest way out, for what it is worth. */
function lastResorts(
  ground: TreeGround,
  x: number,
  y: number,
  toHole: number,
  shots: readonly RecoveryShot[],
): RecoveryOption[] {
  return shots.map((shot, index) => {
    let best = { bearing: toHole, throughChance: -1 };
    for (let degrees = -180; degrees < 180; degrees += LAST_RESORT_DEG) {
      const bearing = toHole + degrees * DEGREE;
      const chance = throughChance(ground, x, y, bearing, shot);
      if (chance > best.throughChance) best = { bearing, throughChance: chance };
    }
    return {
      shot: index,
      ...best,
      way: wayOf(best.bearing - toHole),
      passage: passageOf(ground, x, y, best.bearing, shot),
      gapDeg: 0,
      spreadDeg: (2 * shot.directionSd) / DEGREE,
    };
  });
}

/** Likely, and towards the hole. */
function score(option: RecoveryOption, toHole: number): number {
  return option.throughChance + 0.3 * Math.cos(option.bearing - toHole);
}

/** The middle of a gap, and the bearing in it nearest to the hole that keeps a standard deviation from its edges. */
function aimsIn(from: number, to: number, toHole: number, directionSd: number): number[] {
  const middle = (from + to) / 2;
  const inset = Math.min((to - from) / 2, directionSd);
  const nearest = Math.min(to - inset, Math.max(from + inset, toHole));
  return Math.abs(nearest - middle) < 0.5 * DEGREE ? [middle] : [middle, nearest];
}

/** `turn`: of the bearing from that to the hole, radians. */
export function wayOf(turn: number): WayOut {
  const degrees = Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) / DEGREE;
  if (degrees <= FORWARDS_DEG) return 'forwards';
  return degrees < BACKWARDS_DEG ? 'sideways' : 'backwards';
}

function passageOf(ground: TreeGround, x: number, y: number, bearing: number, shot: RecoveryShot): Passage {
  const carry = shot.carryM(bearing);
  let over = false;
  let under = false;
  for (const stretch of treesAlong(ground, x, y, bearing, carry)) {
    for (let at = stretch.fromM + 0.5; at < Math.min(carry, stretch.toM); at += 1) {
      const height = shot.heightAt(carry, at, bearing);
      if (height >= stretch.topM) over = true;
      else if (height <= stretch.baseM) under = true;
      else return 'through';
    }
  }
  return over ? 'over' : under ? 'under' : 'open';
}
