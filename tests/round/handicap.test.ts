import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustedGrossScore,
  courseHandicap,
  exactCourseHandicap,
  holeRanks,
  netDoubleBogey,
  playingHandicap,
  roundHalfUp,
  scoreDifferential,
  scoreForDifferential,
  strokesReceived,
  type TeeRating,
} from '../../core/round/handicap.ts';

const EIGHTEEN = Array.from({ length: 18 }, (_, i) => ((i * 7) % 18) + 1);
const tees: TeeRating = { courseRating: 69.4, slopeRating: 127, par: 70, holes: 18 };

describe('strokes received', () => {
  const permutation = fc.shuffledSubarray(
    Array.from({ length: 18 }, (_, i) => i + 1),
    { minLength: 18 },
  );

  it('add up to the handicap, plus handicaps and nine holes too', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -20, max: 80 }),
        permutation,
        fc.constantFrom(9, 18),
        (handicap, indexes, holes) => {
          const received = strokesReceived(handicap, indexes.slice(0, holes));
          expect(received.reduce((sum, strokes) => sum + strokes, 0)).toBe(handicap);
          expect(Math.max(...received) - Math.min(...received)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it('go to the harder hole first, and are given back on the easier one first', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 80 }), permutation, (handicap, indexes) => {
        const received = strokesReceived(handicap, indexes);
        for (let a = 0; a < 18; a++)
          for (let b = 0; b < 18; b++)
            if (indexes[a]! < indexes[b]!) expect(received[a]).toBeGreaterThanOrEqual(received[b]!);
      }),
      { numRuns: 30 },
    );
  });

  it('nine holes are ranked among themselves, holes without an index last', () => {
    expect(holeRanks([17, 3, undefined, 9])).toEqual([3, 1, 4, 2]);
    expect(strokesReceived(2, [17, 3, undefined, 9])).toEqual([0, 1, 0, 1]);
  });

  it('a handicap that is not whole is a broken promise', () => {
    expect(() => strokesReceived(4.5, EIGHTEEN)).toThrow(/round it first/);
  });
});

describe('rounding', () => {
  it('takes halves upwards, below zero too, whatever binary fractions do', () => {
    expect([14.5, 14.49, -1.5, -1.51, -0.5, 0.95 * 30, 1.005 * 100].map(roundHalfUp)).toEqual([
      15, 14, -1, -2, 0, 29, 101,
    ]);
    expect(Object.is(roundHalfUp(-0.2), 0)).toBe(true);
  });

  it('happens once on the way to a playing handicap', () => {
    // Course handicap 14.496 (rounded 14): 95 % of 14.496 is 13.77, of 14 it would be 13.3.
    const exact = exactCourseHandicap(13.432, tees);
    expect(exact).toBeCloseTo(14.496, 3);
    expect(courseHandicap(13.432, tees)).toBe(14);
    expect(playingHandicap(13.432, tees, 0.95)).toBe(14);
  });
});

describe('scores for a handicap', () => {
  it('a hole counts no more than net double bogey', () => {
    expect(netDoubleBogey(4, 1)).toBe(7);
    expect(netDoubleBogey(3, -1)).toBe(4);
    expect(netDoubleBogey(5, 4)).toBe(10);
    expect(adjustedGrossScore([9, 4, 3], [7, 7, 6])).toBe(14);
  });

  it('the score that plays to a differential is the last that does', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 540 }), fc.integer({ min: 55, max: 155 }), (tenths, slope) => {
        const rated = { ...tees, slopeRating: slope };
        const score = scoreForDifferential(tenths / 10, rated);
        expect(scoreDifferential(score, rated)).toBeLessThanOrEqual(tenths / 10);
        expect(scoreDifferential(score + 1, rated)).toBeGreaterThan(tenths / 10);
      }),
    );
  });

  it('an impossible slope is named', () => {
    expect(() => courseHandicap(10, { ...tees, slopeRating: 160 })).toThrow(/slope rating: 160/);
  });
});
