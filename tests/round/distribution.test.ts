import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDistributions,
  centralRange,
  certainScore,
  chanceOf,
  chanceOfAtMost,
  highestOf,
  makeDistribution,
  meanOf,
  mixDistributions,
  quantile,
  rateForTotal,
  sumOfDistributions,
  tilted,
  varianceOf,
} from '../../core/round/distribution.ts';
import { gaussHermite } from '../../core/round/gauss-hermite.ts';

const distributions = fc
  .tuple(
    fc.integer({ min: 1, max: 6 }),
    fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 9 }),
  )
  .filter(([, weights]) => weights.some((weight) => weight > 1e-3))
  .map(([lowest, weights]) => makeDistribution(lowest, weights));

describe('score distributions', () => {
  it('of a sum have the sum of means and of variances, and sum to 1', () => {
    fc.assert(
      fc.property(distributions, distributions, (a, b) => {
        const sum = addDistributions(a, b);
        expect(sum.chances.reduce((total, chance) => total + chance, 0)).toBeCloseTo(1, 12);
        expect(meanOf(sum)).toBeCloseTo(meanOf(a) + meanOf(b), 9);
        expect(varianceOf(sum)).toBeCloseTo(varianceOf(a) + varianceOf(b), 9);
      }),
    );
  });

  it('of two fair dice are the known ones', () => {
    const die = makeDistribution(1, [1, 1, 1, 1, 1, 1]);
    const two = addDistributions(die, die);
    expect([2, 7, 12].map((pips) => chanceOf(two, pips) * 36)).toEqual([
      expect.closeTo(1, 12),
      expect.closeTo(6, 12),
      expect.closeTo(1, 12),
    ]);
    expect(chanceOfAtMost(two, 4)).toBeCloseTo(6 / 36, 12);
    expect(centralRange(two, 0.8)).toEqual({
      low: 4,
      high: 10,
      share: expect.closeTo(30 / 36, 12) as number,
    });
  });

  it('a range holds at least its share and nothing can be cut from one side', () => {
    fc.assert(
      fc.property(distributions, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (d, share) => {
        const { low, high, share: held } = centralRange(d, share);
        expect(held).toBeGreaterThanOrEqual(share - 1e-9);
        expect(chanceOfAtMost(d, low - 1)).toBeLessThanOrEqual((1 - share) / 2 + 1e-9);
        expect(chanceOfAtMost(d, high - 1)).toBeLessThanOrEqual((1 + share) / 2 + 1e-9);
      }),
    );
  });

  it('a quantile is the lowest score with that chance', () => {
    const d = makeDistribution(4, [0.5, 0.3, 0.2]);
    expect([0, 0.5, 0.51, 0.8, 0.81, 1].map((p) => quantile(d, p))).toEqual([4, 4, 5, 5, 6, 6]);
  });

  it('a mixture has the weighted chances', () => {
    const mixed = mixDistributions([
      { weight: 0.25, distribution: certainScore(3) },
      { weight: 0.75, distribution: makeDistribution(4, [1, 1]) },
    ]);
    expect(mixed).toEqual({ lowest: 3, chances: [0.25, 0.375, 0.375] });
  });

  it('tilting keeps the scores possible, and its slope is the variance', () => {
    fc.assert(
      fc.property(distributions, fc.double({ min: -2, max: 2, noNaN: true }), (d, rate) => {
        const moved = tilted(d, rate);
        expect(moved.lowest).toBeGreaterThanOrEqual(d.lowest);
        expect(highestOf(moved)).toBeLessThanOrEqual(highestOf(d));
        const h = 1e-4;
        const slope = (meanOf(tilted(d, rate + h)) - meanOf(tilted(d, rate - h))) / (2 * h);
        expect(slope).toBeCloseTo(varianceOf(moved), 4);
      }),
    );
  });

  it('a common rate reaches any total that the parts allow', () => {
    fc.assert(
      fc.property(
        fc.array(distributions, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (parts, share) => {
          const sum = sumOfDistributions(parts);
          const total = sum.lowest + share * (highestOf(sum) - sum.lowest);
          const rate = rateForTotal(parts, total);
          const reached = parts.reduce((mean, part) => mean + meanOf(tilted(part, rate)), 0);
          expect(reached).toBeCloseTo(total, 6);
        },
      ),
      { numRuns: 200 },
    );
    expect(rateForTotal([certainScore(4)], 5)).toBe(0);
  });

  it('chances that are none are a broken promise', () => {
    expect(() => makeDistribution(3, [0.5, -0.1])).toThrow(/chance of 4 strokes/);
    expect(() => makeDistribution(3, [0, 0])).toThrow(/sum to 0/);
  });
});

describe('Gauss-Hermite quadrature', () => {
  it('gives the moments of the normal law: 1, 0, 1, 0, 3, 0, 15 …', () => {
    for (const count of [2, 5, 15, 40]) {
      const { nodes, weights } = gaussHermite(count);
      for (let power = 0; power < Math.min(12, 2 * count); power++) {
        const moment = nodes.reduce((sum, node, i) => sum + weights[i]! * node ** power, 0);
        let exact = power % 2 === 1 ? 0 : 1;
        for (let k = power - 1; power % 2 === 0 && k > 1; k -= 2) exact *= k;
        expect(Math.abs(moment - exact)).toBeLessThan(1e-10 * Math.max(1, exact));
      }
    }
  });

  it('five nodes are those of the published table (Abramowitz & Stegun 1964, table 25.10, from memory)', () => {
    const { nodes, weights } = gaussHermite(5);
    // The table is for exp(-x²): nodes shrink by sqrt 2, weights grow by sqrt pi.
    expect(nodes[3]! / Math.SQRT2).toBeCloseTo(0.95857246461, 10);
    expect(nodes[4]! / Math.SQRT2).toBeCloseTo(2.02018287046, 10);
    expect(weights[2]! * Math.sqrt(Math.PI)).toBeCloseTo(0.94530872048, 10);
    expect(weights[4]! * Math.sqrt(Math.PI)).toBeCloseTo(0.01995324206, 10);
  });
});
