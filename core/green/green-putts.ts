/** Putts around one hole position from what the course file knows of the green: its ground levels. */

import type { Level } from '../ground/elevation.ts';
import type { PuttingSkill } from '../player/model.ts';
import { type PuttField, solvePutts } from './putt-field.ts';
import { slopesFromLevels, surfaceAround } from './slope-field.ts';

export interface GreenPuttsProblem {
  /** Ground levels in the hole's frame, metres; empty where the file has none. */
  readonly levels: readonly Level[];
  readonly pin: { readonly x: number; readonly y: number };
  readonly greenSpeedFt: number;
  readonly putting: PuttingSkill;
  /** Farthest point of the green from the pin, metres. */
  readonly reachM: number;
  readonly bearings?: number;
  readonly draws?: number;
}

/** Spacing of the slopes, metres: levels are seldom closer. */
const SLOPE_SPACING_M = 2;

/**
 * Expected putts from everywhere around the pin; null where the levels near it do not show a slope. Then the level
 * putting table is the better guess: it is what the player holes on greens of ordinary slopes.
 */
export function greenPutts(problem: GreenPuttsProblem): PuttField | null {
  const { levels, pin, reachM } = problem;
  const cells = Math.ceil((2 * reachM) / SLOPE_SPACING_M) + 1;
  const slopes = slopesFromLevels(levels, {
    cellM: SLOPE_SPACING_M,
    columns: cells,
    rows: cells,
    west: pin.x - (cells * SLOPE_SPACING_M) / 2,
    south: pin.y - (cells * SLOPE_SPACING_M) / 2,
  });
  if (slopes === null) return null;
  return solvePutts({
    surface: surfaceAround(slopes, pin.x, pin.y),
    greenSpeedFt: problem.greenSpeedFt,
    putting: problem.putting,
    longestM: reachM,
    ...(problem.bearings === undefined ? {} : { bearings: problem.bearings }),
    ...(problem.draws === undefined ? {} : { draws: problem.draws }),
  });
}
