/**
 * How far a ball bounces and rolls after it has landed, on one kind of ground with an even slope. Source and limits of
 * the bounce: see `bounce.ts`. Hops are flown without air; the roll loses a constant deceleration.
 */

import { SLOPE_PULL_MPS2 } from '../green/surface.ts';
import { bounceOff, type Motion } from './bounce.ts';
import type { RunGround } from './surfaces.ts';

export interface Landing {
  readonly speedMps: number;
  /** Below the horizontal, radians. */
  readonly descent: number;
  /** Backspin, radians per second. */
  readonly backspin: number;
}

/** Metres of rise per metre, along the ball's way and to its right. */
export interface RunSlope {
  readonly along: number;
  readonly right: number;
}

export interface Run {
  /** Metres along the way from the landing; negative is backwards. */
  readonly bounceM: number;
  readonly rollM: number;
  readonly totalM: number;
  /** To the right, by the side slope. */
  readonly sideM: number;
  readonly bounces: number;
  readonly firstBounceHeightM: number;
  /** Speed with which the roll begins, m/s; negative is backwards. */
  readonly rollSpeedMps: number;
  /** The slope is steeper than the ground can hold a ball on: cut off at `LONGEST_ROLL_M`. */
  readonly ranAway: boolean;
}

export const LEVEL: RunSlope = { along: 0, right: 0 };
/** Bounces lower than this are rolling (Penner 2002). */
const LOWEST_BOUNCE_M = 0.005;
const MOST_BOUNCES = 40;
const GRAVITY_MPS2 = 9.80665;
export const LONGEST_ROLL_M = 80;

export function runAfterLanding(landing: Landing, ground: RunGround, slope: RunSlope = LEVEL): Run {
  let motion: Motion = {
    along: landing.speedMps * Math.cos(landing.descent),
    vertical: landing.speedMps * Math.sin(landing.descent),
    backspin: landing.backspin,
  };
  const nothing = { bounceM: 0, rollM: 0, totalM: 0, sideM: 0, bounces: 0, firstBounceHeightM: 0 };
  if (ground.rollMps2 === Infinity) return { ...nothing, rollSpeedMps: 0, ranAway: false };
  let bounceM = 0;
  let sideM = 0;
  let bounces = 0;
  let sideSpeed = 0;
  let firstBounceHeightM = 0;
  for (; bounces < MOST_BOUNCES; bounces++) {
    const down = motion.vertical;
    motion = bounceOff(motion, ground.turf, slope.along);
    // A side slope turns part of the rebound sideways.
    sideSpeed = (5 / 7) * sideSpeed - slope.right * (motion.vertical + down);
    // Up to the flight and down to the slope again: the ground comes to meet the ball uphill.
    const climb = motion.vertical - slope.along * motion.along;
    const height = (climb * climb) / (2 * GRAVITY_MPS2);
    if (bounces === 0) firstBounceHeightM = Math.max(0, climb) ** 2 / (2 * GRAVITY_MPS2);
    if (climb <= 0 || height < LOWEST_BOUNCE_M) break;
    const time = (2 * climb) / GRAVITY_MPS2;
    bounceM += motion.along * time;
    sideM += sideSpeed * time;
    motion = { ...motion, vertical: GRAVITY_MPS2 * time - motion.vertical };
  }
  const rollSpeedMps = motion.along;
  const roll = rollOut(rollSpeedMps, ground.rollMps2, slope);
  return {
    bounceM,
    rollM: roll.along,
    totalM: bounceM + roll.along,
    sideM: sideM + roll.right,
    bounces,
    firstBounceHeightM,
    rollSpeedMps,
    ranAway: roll.ranAway,
  };
}

/**
 * A roll from `speedMps` (negative: backwards): along v² / 2(a + p), p the slope's pull against it; to the side, with k =
 * a / (a + p) and the pull c, c T² / (2 (1 + k)), exact for small side speeds.
 */
export function rollOut(
  speedMps: number,
  rollMps2: number,
  slope: RunSlope,
): { readonly along: number; readonly right: number; readonly ranAway: boolean } {
  const forwards = speedMps < 0 ? -1 : 1;
  const slowing = rollMps2 + forwards * SLOPE_PULL_MPS2 * slope.along;
  const speed = Math.abs(speedMps);
  const free = (speed * speed) / (2 * slowing);
  const ranAway = slowing <= 0 || free > LONGEST_ROLL_M;
  if (ranAway) return { along: forwards * LONGEST_ROLL_M, right: 0, ranAway };
  const time = speed / slowing;
  const pull = -SLOPE_PULL_MPS2 * slope.right;
  return {
    along: forwards * free,
    right: (pull * time * time) / (2 * (1 + rollMps2 / slowing)),
    ranAway,
  };
}
