/**
 * What a lie does to a shot: whether the club is played from it, how much carry it takes, how much wider the shot
 * becomes, and how many more poor strikes. Common practice, no source, but the size is held against two published
 * figures: tour players lose about 0.2 strokes in rough and 0.4 in sand from 100 to 200 yards (Broadie 2012), and
 * leave 7.8 % of a chip's length from the fairway, 12.8 % from light rough, 15.8 % from sand (Cochran & Stobbs 1968).
 */

import type { LieName } from '../ground/lies.ts';
import type { Club, LieEffect, Swing } from './model.ts';

const NOT_PLAYED: LieEffect = {
  playable: false,
  carryFactor: 1,
  carrySdFactor: 1,
  directionSdFactor: 1,
  poorShareAdded: 0,
};

const CLEAN: LieEffect = { ...NOT_PLAYED, playable: true };

/** Loft in degrees from which an iron counts as short enough for bad lies (about a 7-iron). */
const MID_IRON_LOFT_DEG = 30;

/**
 * The effect of `lie` on a swing of `club`. `skill` scales the poor strikes that a lie adds: 1 for a player who goes
 * round in about 90, less for better ones (see `lieEffectsFor`). From a green only the putter is played; nothing is
 * played from a penalty area or from out of bounds.
 */
export function lieEffect(club: Club, swing: Swing, lie: LieName, skill = 1): LieEffect {
  if (club.kind === 'putter') return lie === 'green' ? CLEAN : NOT_PLAYED;
  if (club.kind === 'driver') return lie === 'tee' ? CLEAN : NOT_PLAYED;
  const long = longness(club);
  switch (lie) {
    case 'tee':
      return CLEAN;
    case 'fairway':
    case 'path': // free relief from a path puts the ball on good ground beside it (Rule 16.1)
      return scaled({ ...CLEAN, poorShareAdded: 0.005 + 0.01 * long }, skill);
    case 'rough':
      return scaled(fromRough(swing, long), skill);
    case 'longRough':
      return scaled(fromLongRough(club, swing, long), skill);
    case 'bunker':
      return scaled(fromBunker(club, swing), skill);
    case 'woods':
      return scaled(fromWoods(club, swing), skill);
    case 'green':
    case 'penaltyYellow':
    case 'penaltyRed':
    case 'outOfBounds':
      return NOT_PLAYED;
  }
}

/** `lieEffect` for a player of this handicap: tour players add 0.4 of the poor strikes, handicap 28 adds 1.4. */
export function lieEffectsFor(handicap: number): (club: Club, swing: Swing, lie: LieName) => LieEffect {
  const skill = Math.min(1.6, Math.max(0.4, 0.4 + (0.6 * (handicap + 5)) / 21));
  return (club, swing, lie) => lieEffect(club, swing, lie, skill);
}

/** 1 for a 3-wood, 0 for a sand wedge, by loft. */
function longness(club: Club): number {
  return Math.min(1, Math.max(0, (56 - club.loftDeg) / (56 - 15)));
}

function scaled(effect: LieEffect, skill: number): LieEffect {
  return { ...effect, poorShareAdded: effect.poorShareAdded * skill };
}

/** Grass between face and ball: 3 % (wedge) to 7 % (3-wood) shorter, about 5 % for a mid-iron, and wider. */
function fromRough(swing: Swing, long: number): LieEffect {
  if (swing === 'part') return wide(1, 1.95, 1.4, 0.01);
  return wide(0.97 - 0.04 * long, 1.4 + 0.2 * long, 1.3 + 0.1 * long, 0.01 + 0.03 * long);
}

/** Deep grass: wedges keep 0.86 of their carry, long irons 0.77; no woods. */
function fromLongRough(club: Club, swing: Swing, long: number): LieEffect {
  if (club.kind === 'wood') return NOT_PLAYED;
  if (swing === 'part') return wide(1, 2.5, 1.7, 0.04);
  return wide(0.86 - 0.12 * long, 1.7 + 0.4 * long, 1.5 + 0.2 * long, 0.04 + 0.16 * long);
}

/** Sand: no woods or hybrids; full irons are picked off it, 12 % shorter; part swings splash, wedges only. */
function fromBunker(club: Club, swing: Swing): LieEffect {
  if (club.kind === 'wood' || club.kind === 'hybrid') return NOT_PLAYED;
  if (swing === 'part') return club.kind === 'wedge' ? wide(1, 2.4, 1.6, 0.04) : NOT_PLAYED;
  if (club.kind === 'wedge') return wide(0.92, 2, 1.5, 0.1);
  return wide(0.88, 2, 1.5, 0.13 + 0.05 * longness(club));
}

/** Under trees, bare and among roots: short and mid-irons, and punches with anything but a wood. */
function fromWoods(club: Club, swing: Swing): LieEffect {
  if (club.kind === 'wood') return NOT_PLAYED;
  const low = swing === 'punch' || swing === 'part';
  if (!low && (club.kind === 'hybrid' || club.loftDeg < MID_IRON_LOFT_DEG)) return NOT_PLAYED;
  if (swing === 'part') return wide(1, 2.1, 1.5, 0.03);
  return wide(0.9, 1.5, 1.3, low ? 0.04 : 0.08);
}

function wide(
  carryFactor: number,
  carrySdFactor: number,
  directionSdFactor: number,
  poor: number,
): LieEffect {
  return { playable: true, carryFactor, carrySdFactor, directionSdFactor, poorShareAdded: poor };
}
