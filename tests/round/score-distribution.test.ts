import { describe, expect, it } from 'vitest';
import { inverseNormal } from '../../core/random/normal.ts';
import {
  certainScore,
  chanceOf,
  chanceOfAtMost,
  meanOf,
  sumOfDistributions,
  tilted,
  varianceOf,
} from '../../core/round/distribution.ts';
import {
  formRates,
  FORM_SD_STROKES,
  holeScores,
  holesInForm,
  roundDistribution,
  roundOdds,
} from '../../core/round/score-distribution.ts';
import { drawScore, eighteenHoles, randomNumbers } from './scores.ts';

const { pars, holes } = eighteenHoles();

describe('a round', () => {
  it('without any spread is arithmetic: 18 bogeys on par 70 are 88, and 89 is the last score that beats 90', () => {
    const bogeys = pars.map((par) => certainScore(par + 1));
    const odds = roundOdds(bogeys, 89);
    expect(odds.distribution).toEqual({ lowest: 88, chances: [1] });
    expect(odds).toMatchObject({ expected: 88, sd: 0, range: { low: 88, high: 88, share: 1 } });
    expect(odds.target).toEqual({ score: 89, chance: 1 });
    expect(roundOdds(bogeys, 87).target?.chance).toBe(0);
  });

  it('keeps the mean of the plan, and form adds its own variance', () => {
    const plain = sumOfDistributions(holes);
    const withForm = roundDistribution(holes, 2);
    expect(meanOf(withForm)).toBeCloseTo(meanOf(plain), 6);
    const within = formRates(holes, 2).reduce(
      (sum, { weight, rate }) =>
        sum + weight * holes.reduce((part, hole) => part + varianceOf(tilted(hole, rate)), 0),
      0,
    );
    expect(varianceOf(withForm)).toBeCloseTo(within + 4, 4);
    expect(roundDistribution(holes, 0)).toEqual(plain);
  });

  it('nine holes have half the form', () => {
    const half = holesInForm(holes.slice(0, 9), 1, 2);
    const shift = half.reduce((sum, hole, i) => sum + meanOf(hole) - meanOf(holes[i]!), 0);
    expect(shift).toBeCloseTo(1, 9);
  });

  it('has enough quadrature nodes', () => {
    const usual = roundDistribution(holes);
    const fine = roundDistribution(holes, FORM_SD_STROKES, 41);
    for (let score = 70; score < 120; score++)
      expect(Math.abs(chanceOfAtMost(usual, score) - chanceOfAtMost(fine, score))).toBeLessThan(1e-6);
  });

  it('agrees with rounds drawn one by one, within their standard error', () => {
    // Form is drawn in 199 steps of equal chance, so that the tilts can be made once.
    const next = randomNumbers('rounds');
    const steps = Array.from({ length: 199 }, (_, i) => holesInForm(holes, inverseNormal((i + 0.5) / 199)));
    const rounds = 200_000;
    const counts = new Float64Array(200);
    for (let round = 0; round < rounds; round++) {
      const day = steps[Math.floor(next() * 199)]!;
      let score = 0;
      for (const hole of day) score += drawScore(hole, next());
      counts[score] = counts[score]! + 1;
    }
    const exact = roundDistribution(holes);
    let drawnAtMost = 0;
    let worst = 0;
    for (let score = 60; score < 130; score++) {
      drawnAtMost += counts[score]! / rounds;
      const chance = chanceOfAtMost(exact, score);
      const standardError = Math.sqrt((chance * (1 - chance)) / rounds);
      if (standardError > 0)
        worst = Math.max(worst, Math.abs(drawnAtMost - chance) / Math.max(standardError, 1e-5));
    }
    // The largest of some thirty strongly dependent normal deviates.
    expect(worst).toBeLessThan(3.5);
    expect(worst).toBeGreaterThan(0.1);
  });
});

describe('the score on a hole', () => {
  it('has the mean of the option, strokes taken before are added', () => {
    const option = { scoreOdds: [0, 0, 0, 0.2, 0.4, 0.25, 0.1, 0.03, 0.01, 0.005, 0.005], meanStrokes: 4.45 };
    const scores = holeScores(option);
    expect(meanOf(scores)).toBeCloseTo(4.45, 9);
    expect(scores.lowest).toBe(3);
    expect(chanceOf(scores, 3)).toBeLessThan(0.2);
    expect(meanOf(holeScores(option, 2))).toBeCloseTo(6.45, 9);
  });
});
