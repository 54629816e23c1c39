/** Putts around one hole position from what the course file knows of the green: its slope arrows or its ground levels. */

import type { Level } from '../ground/elevation.ts';
import type { PuttingSkill } from '../player/model.ts';
import { type PuttField, solvePutts } from './putt-field.ts';
import { type SlopeMark, slopesFromLevels, slopesFromMarks, surfaceAround } from './slope-field.ts';

export interface GreenPuttsProblem {
  /** Ground levels in the hole's frame, metres; empty where the file has none. */
  readonly levels: readonly Level[];
  /** Slope arrows on this green, in the hole's frame; with one or more the levels are not asked. */
  readonly marks?: readonly SlopeMark[];
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
 * Expected putts from everywhere around the pin; null where neither arrows nor the levels near it show a slope. Then the level
 * putting table is the better guess: it is what the player holes on greens of ordinary slopes.
 */
export function greenPutts(problem: GreenPuttsProblem): PuttField | null {
  const { levels, marks = [], pin, reachM } = problem;
  const cells = Math.ceil((2 * reachM) / SLOPE_SPACING_M) + 1;
  const grid = {
    cellM: SLOPE_SPACING_M,
    columns: cells,
    rows: cells,
    west: pin.x - (cells * SLOPE_SPACING_M) / 2,
    south: pin.y - (cells * SLOPE_SPACING_M) / 2,
  };
  const slopes = slopesFromMarks(marks, grid) ?? slopesFromLevels(levels, grid);
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
