/** Lie codes of the ground raster, and the order in which overlapping features win. */

import type { AreaKind } from '../course/model.ts';

/** What a ball comes to rest in. The numbers are the raster's byte codes. */
export const Lie = {
  rough: 0,
  fairway: 1,
  green: 2,
  bunker: 3,
  tee: 4,
  longRough: 5,
  woods: 6,
  path: 7,
  penaltyYellow: 8,
  penaltyRed: 9,
  outOfBounds: 10,
} as const;

export type LieCode = (typeof Lie)[keyof typeof Lie];
export type LieName = keyof typeof Lie;

export const LIE_NAMES: readonly LieName[] = [
  'rough',
  'fairway',
  'green',
  'bunker',
  'tee',
  'longRough',
  'woods',
  'path',
  'penaltyYellow',
  'penaltyRed',
  'outOfBounds',
];

/**
 * Painting order, first painted first: a later kind covers an earlier one. Ground that nothing covers is rough;
 * ground outside a drawn boundary is out of bounds. The reasons: a fairway is often drawn through its green and
 * bunkers; the margins of water matter more than the grass under them; out of bounds beats everything.
 */
export const PAINTING_ORDER: readonly (readonly [AreaKind, LieCode])[] = [
  ['rough', Lie.rough],
  ['long-rough', Lie.longRough],
  ['woods', Lie.woods],
  ['fairway', Lie.fairway],
  ['path', Lie.path],
  ['tee', Lie.tee],
  ['green', Lie.green],
  ['bunker', Lie.bunker],
  ['penalty-yellow', Lie.penaltyYellow],
  ['penalty-red', Lie.penaltyRed],
  ['out-of-bounds', Lie.outOfBounds],
];
