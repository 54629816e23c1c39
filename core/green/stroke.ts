/** One putt with its errors: what the player meant, and what the stroke and the read make of it. */

import { aimPutt, type IntendedPutt } from './aim-putt.ts';
import type { PuttDraws } from './putt-draws.ts';
import type { PuttRoller } from './roll-putt.ts';
import type { StrokeSkill } from './stroke-skill.ts';
import type { GreenSurface } from './surface.ts';

export interface Stroke {
  readonly x: number;
  readonly y: number;
  readonly intended: IntendedPutt;
  /** Turn from the straight line to the hole that the player means to start with, radians, positive to the right. */
  readonly breakTurn: number;
  /** Intended speed squared, m²/s². */
  readonly square: number;
  /** That of a putt as long on the level, m²/s². */
  readonly levelSquare: number;
  /** What one standard deviation of misread slope adds to bearing and squared speed, along and across the line. */
  readonly turnByAlong: number;
  readonly turnByAcross: number;
  readonly squareByAlong: number;
  readonly squareByAcross: number;
}

/** Slope of an ordinary green, metres per metre, on which `readSdShare` is meant. Common practice, no source. */
export const ORDINARY_SLOPE_SHARE = 0.015;
/** Tilt by which the effect of a misread is found, metres per metre. */
const PROBE = 0.002;

/**
 * The intended putt from (x, y) and what a misread does to it. The slope is misread as a whole, by a tilt whose parts
 * along and across the line have the same standard deviation: `readSdShare` of the slope on an ordinary green, and with the
 * square root of the slope from there (a steep slope is read better for its size than a slight one). The slope is the mean
 * of those at ball, halfway and hole; the misread's effect is taken to grow in proportion to it.
 */
export function strokeFrom(
  surface: GreenSurface,
  decelerationMps2: number,
  skill: StrokeSkill,
  x: number,
  y: number,
): Stroke {
  const intended = aimPutt(surface, decelerationMps2, x, y, skill.pastM);
  const straight = Math.atan2(-x, -y);
  const square = intended.speedMps ** 2;
  const stroke = {
    x,
    y,
    intended,
    breakTurn: turnBetween(straight, intended.bearing),
    square,
    levelSquare: 2 * decelerationMps2 * (Math.hypot(x, y) + skill.pastM),
    turnByAlong: 0,
    turnByAcross: 0,
    squareByAlong: 0,
    squareByAcross: 0,
  };
  const misread = skill.readSdShare * Math.sqrt(ORDINARY_SLOPE_SHARE * meanSlope(surface, x, y));
  if (misread === 0) return stroke;
  const probe = (bearing: number): { turn: number; square: number } => {
    const east = PROBE * Math.sin(bearing);
    const north = PROBE * Math.cos(bearing);
    const tilted: GreenSurface = {
      isLevel: false,
      riseEast: (px, py) => surface.riseEast(px, py) + east,
      riseNorth: (px, py) => surface.riseNorth(px, py) + north,
    };
    const putt = aimPutt(tilted, decelerationMps2, x, y, skill.pastM);
    return {
      turn: (misread / PROBE) * turnBetween(intended.bearing, putt.bearing),
      square: (misread / PROBE) * (putt.speedMps ** 2 - square),
    };
  };
  const along = probe(straight);
  const across = probe(straight + Math.PI / 2);
  return {
    ...stroke,
    turnByAlong: along.turn,
    turnByAcross: across.turn,
    squareByAlong: along.square,
    squareByAcross: across.square,
  };
}

/**
 * Rolls draw `i`. The error of the run is one of energy, since on the level the run goes with the speed squared, and it is that of
 * a level putt as long: so an uphill putt stops nearer to where it is meant to than a downhill one, as players find.
 */
export function rollDraw(
  roller: PuttRoller,
  stroke: Stroke,
  skill: StrokeSkill,
  draws: PuttDraws,
  i: number,
): void {
  const along = draws.readAlong[i]!;
  const across = draws.readAcross[i]!;
  const bearing =
    stroke.intended.bearing +
    skill.directionSd * draws.direction[i]! +
    stroke.turnByAlong * along +
    stroke.turnByAcross * across;
  const meant = stroke.square + stroke.squareByAlong * along + stroke.squareByAcross * across;
  const square = meant + skill.runSdShare * draws.run[i]! * stroke.levelSquare;
  roller.roll(stroke.x, stroke.y, Math.sqrt(Math.max(SLOWEST_MPS ** 2, square)), bearing);
}

/** The ball always moves: no stroke is slower than this. */
const SLOWEST_MPS = 0.05;

function meanSlope(surface: GreenSurface, x: number, y: number): number {
  let sum = 0;
  for (const share of [0, 0.5, 1])
    sum += Math.hypot(surface.riseEast(share * x, share * y), surface.riseNorth(share * x, share * y));
  return sum / 3;
}

function turnBetween(from: number, to: number): number {
  return Math.atan2(Math.sin(to - from), Math.cos(to - from));
}
