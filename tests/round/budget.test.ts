import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBudget } from '../../core/round/budget.ts';
import { certainScore, meanOf } from '../../core/round/distribution.ts';
import { scoreToMeet, targetWords } from '../../core/round/target.ts';
import { eighteenHoles, scoresAround } from './scores.ts';
import { english } from '../../core/words/english/english.ts';

const { pars, holes } = eighteenHoles();
const plain = pars.map((par, i) => ({ hole: i + 1, par, strokeIndex: ((i * 5) % 18) + 1 }));
const known = plain.map((hole, i) => ({ ...hole, scores: holes[i]! }));

describe('the budget of a round', () => {
  it('adds up to the target, by stroke index alone and by the own scores', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 130 }), fc.boolean(), (target, withScores) => {
        const budget = makeBudget(withScores ? known : plain, target);
        expect(budget.holes.reduce((sum, hole) => sum + hole.budget, 0)).toBe(target);
        expect(budget.holes.reduce((sum, hole) => sum + hole.byStrokeIndex, 0)).toBe(target);
        for (const hole of budget.holes)
          if (hole.pace !== null) expect(Math.abs(hole.budget - hole.pace)).toBeLessThan(1);
      }),
    );
  });

  it('rounds up the holes of which most would be cut off', () => {
    for (let target = 78; target <= 98; target++) {
      const cut = makeBudget(known, target).holes.map(({ pace, budget }) => ({
        share: pace! - Math.floor(pace!),
        isUp: budget > pace!,
      }));
      const up = cut.filter(({ isUp }) => isUp).map(({ share }) => share);
      const down = cut.filter(({ isUp }) => !isUp).map(({ share }) => share);
      expect(Math.min(1, ...up)).toBeGreaterThanOrEqual(Math.max(0, ...down));
    }
  });

  it('to beat 90 on a par 70 is a bogey on every hole and one more on the hardest (common practice)', () => {
    const budget = makeBudget(plain, scoreToMeet({ kind: 'beat', score: 90 }, 70));
    expect(budget).toMatchObject({ target: 89, par: 70, allowance: 19 });
    for (const hole of budget.holes) {
      const hardest = plain[hole.hole - 1]!.strokeIndex === 1;
      expect(hole.budget - hole.par).toBe(hardest ? 2 : 1);
      expect(hole.words).toBe(hardest ? 'Double bogey is your par here.' : 'Bogey is your par here.');
    }
  });

  it('at the expected score is the expected score of each hole, in whole strokes', () => {
    const expected = holes.reduce((sum, scores) => sum + meanOf(scores), 0);
    const budget = makeBudget(known, Math.round(expected));
    for (const hole of budget.holes) expect(Math.abs(hole.pace! - hole.expected!)).toBeLessThan(0.05);
    expect(budget.expected).toBeCloseTo(expected, 9);
    expect(budget.possible).toBe(true);
  });

  it('asks less of a hole that the player finds hard than its stroke index says', () => {
    const hard = known.map((hole) =>
      hole.hole === 5 ? { ...hole, scores: scoresAround(6, [1, 3, 4, 2]) } : hole,
    );
    const before = makeBudget(known, 89).holes[4]!;
    const after = makeBudget(hard, 89).holes[4]!;
    expect(after.byStrokeIndex).toBe(before.byStrokeIndex);
    expect(after.budget).toBeGreaterThan(before.budget);
  });

  it('says where the odds allow no such round', () => {
    const certain = plain.map((hole) => ({ ...hole, scores: certainScore(hole.par + 1) }));
    expect(makeBudget(certain, 88)).toMatchObject({ possible: true });
    const out = makeBudget(certain, 80);
    expect(out.possible).toBe(false);
    expect(out.holes.reduce((sum, hole) => sum + hole.budget, 0)).toBe(80);
  });
});

describe('a target', () => {
  it('is the last score that still meets it', () => {
    expect(scoreToMeet({ kind: 'score', score: 89 }, 70)).toBe(89);
    expect(scoreToMeet({ kind: 'net-par', playingHandicap: 17 }, 70)).toBe(87);
    expect(scoreToMeet({ kind: 'handicap', aim: 16 }, 70)).toBe(86);
    const tees = { courseRating: 69.1, slopeRating: 125, par: 70, holes: 18 } as const;
    // 69.1 + 16 x 125 / 113 = 86.80; 86 gives a differential of 15.3, 87 one of 16.2.
    expect(scoreToMeet({ kind: 'handicap', aim: 16, tees }, 70)).toBe(86);
    // Over nine holes half of it: 36 + 18 / 2.
    const nine = { courseRating: 36, slopeRating: 113, par: 36, holes: 9 } as const;
    expect(scoreToMeet({ kind: 'handicap', aim: 18, tees: nine }, 36)).toBe(45);
    expect(targetWords({ kind: 'beat', score: 90 }, english)).toBe('beat 90');
  });
});
