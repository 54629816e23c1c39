/** Preset drives against measured drives of club golfers. */

import { describe, expect, it } from 'vitest';
import { type PlayerGroup, presetPlayer } from '../../core/player/presets.ts';

const YARD_M = 0.9144;
/** Roll on a level fairway, yards (USGA Course Rating System; from memory). */
const ROLL_YD = 20;

/**
 * Average drives of club golfers by handicap (R&A and USGA, Distance Insights; quoted second-hand): handicap in the
 * middle of each band, yards.
 */
const DISTANCE_INSIGHTS: readonly (readonly [PlayerGroup, number, number])[] = [
  ['men', 3, 240],
  ['men', 9, 220],
  ['men', 16.5, 204],
  ['men', 25, 187],
  ['women', 3, 196],
  ['women', 9, 178],
  ['women', 16.5, 153],
  ['women', 24.5, 138],
  ['women', 33, 118],
];

describe('preset drives (R&A/USGA Distance Insights)', () => {
  // The presets are tied to the players of the Course Rating System at scratch and bogey, who hit it a little
  // farther than average; 12 % covers that and the width of the bands.
  it.each(DISTANCE_INSIGHTS)('%s of handicap %d drive about %d yards', (group, handicap, yards) => {
    const drive = presetPlayer({ handicap, group }).spreads.find((s) => s.club.kind === 'driver')!;
    const solid = drive.carryMean / YARD_M + ROLL_YD;
    expect(solid / yards).toBeGreaterThan(0.97);
    expect(solid / yards).toBeLessThan(1.12);
  });

  it.each([
    ['men', 0, 250, 220],
    ['men', 20, 200, 170],
    ['women', 0, 210, 190],
    ['women', 24, 150, 130],
  ] as const)(
    '%s of handicap %d: %d and %d yards (USGA Course Rating System)',
    (group, handicap, drive, second) => {
      // The standard's scratch and bogey players: drive, and what two shots cover beyond it..
      const { spreads } = presetPlayer({ handicap, group });
      const carry = (name: string): number => spreads.find((s) => s.club.name === name)!.carryMean / YARD_M;
      expect(carry('Driver') + ROLL_YD).toBeCloseTo(drive, 6);
      expect(carry('3-wood') + ROLL_YD).toBeCloseTo(second, 6);
    },
  );
});
