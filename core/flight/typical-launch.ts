/**
 * How a club sends the ball off: launch angle, and spin as a share of speed. By loft, on straight lines between the points
 * given. Speed is left open: it follows from the player's carry. A rigid club of given loft makes spin in proportion to
 * speed, so a slower player's ball leaves with the same spin ratio. Faces, balls and players differ by a third and
 * more from these lines: a measured launch beats them.
 */

import { type BrokenLine, readLine } from '../broken-line.ts';
import type { Club, Swing } from '../player/model.ts';
import { BALL_RADIUS_M } from './ball-flight.ts';

export interface LaunchShape {
  /** Upwards from the horizontal, radians. */
  readonly angle: number;
  /** S = ω r / v. */
  readonly spinRatio: number;
}

/** A launch that was measured for this player, club and swing; what is absent comes from the lines. */
export interface MeasuredLaunch {
  readonly angle?: number;
  /** Radians per second. */
  readonly spin?: number;
  readonly speedMps?: number;
  /** Height of the flight's top, metres; decides the angle where that is absent. */
  readonly apexM?: number;
}

/** Driver: 10.8 degrees, mean of tour drives (R&A and USGA, 2015 Distance Report). The rest: common practice, no source. */
const LAUNCH_DEG: BrokenLine = [
  [10.5, 10.8],
  [15, 11.3],
  [18, 12.2],
  [22, 13.2],
  [25, 14.2],
  [28, 15.3],
  [32, 17],
  [36, 19],
  [41, 21.5],
  [46, 24.5],
  [50, 27],
  [56, 30],
  [60, 32.5],
];

/**
 * Driver: 2599 rpm at 167.7 mph (the same report). 7-iron, 33 degrees: 7097 rpm at 120 mph (tour mean in P. Dewhurst 2015,
 * The Science of the Perfect Swing, second-hand). 9-iron: within the 129 to 191 revolutions a second of Penner 2002
 * (Can. J. Phys. 80:931). The rest: common practice, no source.
 */
const SPIN_RATIO: BrokenLine = [
  [10.5, spinRatio(2599, 167.7)],
  [33, spinRatio(7097, 120)],
  [41, 0.4],
  [46, 0.44],
  [50, 0.47],
  [56, 0.5],
  [60, 0.51],
];

/** On a full swing's angle and spin ratio. Common practice, no source. */
const SWING_FACTORS: Readonly<Record<Swing, { readonly angle: number; readonly spin: number }>> = {
  full: { angle: 1, spin: 1 },
  'three-quarter': { angle: 0.95, spin: 0.95 },
  half: { angle: 0.95, spin: 0.9 },
  part: { angle: 1, spin: 0.9 },
  punch: { angle: 0.42, spin: 0.5 },
  'curved-left': { angle: 1, spin: 1 },
  'curved-right': { angle: 1, spin: 1 },
};

/**
 * Carry of a tour player's full swing by loft, metres. The presets' figures for that level; common practice, no source.
 */
const TOUR_CARRY_M: BrokenLine = [
  [10.5, 242],
  [15, 219],
  [25, 182],
  [32, 160],
  [41, 136],
  [46, 123],
  [56, 92],
  [60, 76],
];
const DRIVER_LOFT_DEG = 10.5;

/** Carry of a swing as a share of the full one; part swings say nothing about the player's length. */
const SWING_CARRY: Readonly<Record<Exclude<Swing, 'part'>, number>> = {
  full: 1,
  'three-quarter': 0.87,
  half: 0.62,
  punch: 0.6,
  'curved-left': 0.96,
  'curved-right': 0.96,
};
/** A shorter hitter launches higher: so much of the angle is added for a carry of nothing. Common practice, no source. */
const SHORT_HITTER_RAISE = 1;
const MOST_RAISE = 1.6;
/**
 * A slower swing needs and gets more spin off the long clubs: so much of the ratio is added for a carry of nothing, less with
 * loft, none from a 7-iron on. Chosen so that a drive at 58 m/s has about 3,200 rpm (average club golfers; from memory).
 */
const SHORT_HITTER_SPIN = 2.3;
const MOST_SPIN_RAISE = 2.2;
const NO_SPIN_RAISE_LOFT_DEG = 33;

/** A chip is played with less loft than a pitch: factor on the angle by carry in metres. Common practice, no source. */
const PITCH_RAISE: BrokenLine = [
  [8, 1],
  [30, 1.35],
];

/** `carryM`: what that club and swing carries, by which a short hitter is known. */
export function typicalLaunch(club: Pick<Club, 'loftDeg'>, swing: Swing, carryM: number): LaunchShape {
  const factors = SWING_FACTORS[swing];
  const asPitch = swing === 'part' ? readLine(PITCH_RAISE, carryM) : 1;
  const length = swing === 'part' ? 1 : carryM / SWING_CARRY[swing] / readLine(TOUR_CARRY_M, club.loftDeg);
  const raise = Math.min(MOST_RAISE, Math.max(1, 1 + SHORT_HITTER_RAISE * (1 - length)));
  const loftShare = Math.max(
    0,
    1 - (club.loftDeg - DRIVER_LOFT_DEG) / (NO_SPIN_RAISE_LOFT_DEG - DRIVER_LOFT_DEG),
  );
  const short = Math.max(0, 1 - length) * Math.min(1, loftShare);
  const spinRaise = Math.min(MOST_SPIN_RAISE, 1 + SHORT_HITTER_SPIN * short);
  return {
    angle: (raise * asPitch * factors.angle * readLine(LAUNCH_DEG, club.loftDeg) * Math.PI) / 180,
    spinRatio: factors.spin * spinRaise * readLine(SPIN_RATIO, club.loftDeg),
  };
}

function spinRatio(rpm: number, mph: number): number {
  return (((rpm * 2 * Math.PI) / 60) * BALL_RADIUS_M) / (mph * 0.44704);
}
