/** Handicap arithmetic against the Rules of Handicapping (The R&A and USGA) and the USGA's answers to questions on them. */

import { describe, expect, it } from 'vitest';
import {
  ALLOWANCE,
  courseHandicap,
  exactCourseHandicap,
  matchStrokes,
  netDoubleBogey,
  playingHandicap,
  roundHalfUp,
  strokesReceived,
} from '../../core/round/handicap.ts';

const INDEXES = [7, 15, 1, 11, 5, 17, 3, 13, 9, 8, 16, 2, 12, 6, 18, 4, 14, 10];

describe('Rules of Handicapping', () => {
  it('6.1b: nine holes, half index 4.4, slope 121, rating 35.3, par 36 give 4.011, so 4', () => {
    const tees = { courseRating: 35.3, slopeRating: 121, par: 36, holes: 9 } as const;
    // The published figure is cut after three decimals, not rounded.
    expect(Math.abs(exactCourseHandicap(8.8, tees) - 4.011)).toBeLessThan(0.001);
    expect(courseHandicap(8.8, tees)).toBe(4);
    // Half of 8.7 is 4.35, to one decimal 4.4 (halves upwards; from memory).
    expect(exactCourseHandicap(8.7, tees)).toBe(exactCourseHandicap(8.8, tees));
  });

  it('6.1a: on a course of standard slope rated at its par the index is the course handicap', () => {
    const tees = { courseRating: 72, slopeRating: 113, par: 72, holes: 18 } as const;
    expect(exactCourseHandicap(16.2, tees)).toBeCloseTo(16.2, 12);
    expect(courseHandicap(16.5, tees)).toBe(17);
    expect(courseHandicap(-1.5, tees)).toBe(-1);
  });

  it('6.2: the allowance applies to the unrounded course handicap (USGA, “Where does rounding occur”)', () => {
    const tees = { courseRating: 71.2, slopeRating: 128, par: 72, holes: 18 } as const;
    const exact = exactCourseHandicap(20.1, tees);
    expect(exact).toBeCloseTo(21.968, 3);
    expect(playingHandicap(20.1, tees, ALLOWANCE.strokePlay)).toBe(roundHalfUp(exact * 0.95));
    expect(playingHandicap(20.1, tees, ALLOWANCE.matchPlay)).toBe(22);
  });

  it('Appendix E: 14 strokes go to stroke indexes 1 to 14 (USGA, “Stroke index allocation”)', () => {
    const received = strokesReceived(14, INDEXES);
    INDEXES.forEach((index, hole) => expect(received[hole]).toBe(index <= 14 ? 1 : 0));
  });

  it('Appendix E: 24 strokes are two on stroke indexes 1 to 6 and one elsewhere', () => {
    const received = strokesReceived(24, INDEXES);
    INDEXES.forEach((index, hole) => expect(received[hole]).toBe(index <= 6 ? 2 : 1));
  });

  it('Appendix E: a plus handicap gives strokes back from the highest stroke index (USGA, the same answer)', () => {
    const received = strokesReceived(-2, INDEXES);
    INDEXES.forEach((index, hole) => expect(received[hole]).toBe(index >= 17 ? -1 : 0));
  });

  it('6.2b: in a match the higher handicap receives the difference where the stroke index is lowest, whoever has it', () => {
    const mine = matchStrokes(17, 12, INDEXES);
    const theirs = matchStrokes(12, 17, INDEXES);
    INDEXES.forEach((index, hole) => {
      expect(mine[hole]).toBe(index <= 5 ? 1 : 0);
      expect(theirs[hole]).toBe(index <= 5 ? -1 : 0);
    });
    // against a plus handicap too: +2 and 3 are five strokes apart (from memory)
    expect(matchStrokes(3, -2, INDEXES)).toEqual(mine);
  });

  it('3.1b: net double bogey is par + 2 + strokes received', () => {
    expect(netDoubleBogey(4, 2)).toBe(8);
    expect(netDoubleBogey(3, 0)).toBe(5);
  });
});
