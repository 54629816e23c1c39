/** The estimator against closed forms and a published worked example. */

import { jStat } from 'jstat';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import type { ShotSpread } from '../../core/player/model.ts';
import { BAG_PRIOR, type BagPrior, estimateBag, estimatesOf } from '../../core/player/posterior.ts';
import { drawChiSquare, drawGamma, drawInverseWishart } from '../../core/player/posterior/random-laws.ts';
import { inverseNormal } from '../../core/random/normal.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';

/** The laws of jstat that these checks use; the package ships no types. */
const laws = jStat as unknown as {
  readonly studentt: { inv(p: number, degrees: number): number };
  readonly chisquare: { inv(p: number, degrees: number): number };
  readonly gamma: { cdf(x: number, shape: number, scale: number): number };
};

const club = { name: 'Iron', kind: 'iron', loftDeg: 32, swings: ['full'] } as const;

/** A law that expects next to nothing, and a prior that counts for next to nothing. */
function expectedAbout(carryMean: number, carrySd: number, poorShare: number): ShotSpread {
  return {
    club,
    swing: 'full',
    carryMean,
    carrySd,
    directionMean: 0,
    directionSd: 0.08,
    correlation: 0,
    poorShare,
    poor: { carryShareMean: 0.4, carryShareSd: 0.15, directionSd: 0.16 },
    source: { from: 'stated' },
  };
}

/**
 * One degree of freedom and no scale make the classical limit: the posterior of the mean is then Student's t with
 * n - 1 degrees of freedom, that of the variance inverse chi-square with n - 1 (Gelman et al., Bayesian Data Analysis,
 * 3rd ed. 2013, section 3.2).
 */
const WEAK: BagPrior = {
  ...BAG_PRIOR,
  carry: { ...BAG_PRIOR.carry, bag: 100 },
  direction: { ...BAG_PRIOR.direction, bag: 1000 },
  spreadShots: 1e-6,
  // Holds the factor of the bag still.
  bagSpreadShape: 1e6,
  // No poor strikes, and nothing that could suggest any.
  poorShareShots: 1e7,
  poorLevelSd: 1e-6,
};

/** Quantiles of the normal law: a sample without anything that looks poor; directions in an order of their own. */
function evenSample(count: number): { readonly carryM: number; readonly direction: number }[] {
  const order = shuffled(count);
  return Array.from({ length: count }, (_, i) => ({
    carryM: 140 + 9 * inverseNormal((i + 0.5) / count),
    direction: 0.02 + 0.05 * inverseNormal((order[i]! + 0.5) / count),
  }));
}

function shuffled(count: number): number[] {
  const keys = Array.from({ length: count }, (_, i) => ((i + 1) ** 2 * Math.SQRT2) % 1);
  return keys.map((key) => keys.filter((other) => other < key).length);
}

describe('closed forms where no strike is poor and the prior is weak', () => {
  // 20,000 draws, of which one in nine counts at the fewest shots, since successive draws hang together: the mean is
  // good to 0.02 and the 5 % point, sqrt(0.05 0.95 / n) / density, to 0.05 standard errors.
  it.each([6, 12, 41])('Student’s t and chi-square intervals of %d shots', (count) => {
    const shots = evenSample(count);
    const { entries } = estimateBag([{ club, swing: 'full', expected: expectedAbout(140, 9, 0), shots }], {
      prior: WEAK,
      draws: 20_000,
    });
    const found = estimatesOf(entries[0]!);
    for (const [middle, width, values] of [
      ['carryMean', 'carrySd', shots.map((shot) => shot.carryM)],
      ['directionMean', 'directionSd', shots.map((shot) => shot.direction)],
    ] as const) {
      const average = mean([...values]);
      const sd = sampleStandardDeviation([...values]);
      const standardError = sd / Math.sqrt(count);
      const t = laws.studentt.inv(0.95, count - 1);
      expect(Math.abs(found[middle].mean - average)).toBeLessThan(0.08 * standardError);
      expect(Math.abs(found[middle].low - (average - t * standardError))).toBeLessThan(0.15 * standardError);
      expect(Math.abs(found[middle].high - (average + t * standardError))).toBeLessThan(0.15 * standardError);
      const low = sd * Math.sqrt((count - 1) / laws.chisquare.inv(0.95, count - 1));
      const high = sd * Math.sqrt((count - 1) / laws.chisquare.inv(0.05, count - 1));
      expect(Math.abs(found[width].low / low - 1)).toBeLessThan(0.03);
      expect(Math.abs(found[width].high / high - 1)).toBeLessThan(0.06);
    }
    expect(found.poorShare.high).toBeLessThan(0.01);
  });
});

describe('a robust estimate of real measurements with outliers', () => {
  /**
   * 24 determinations of copper in wholemeal flour, parts per million (Analytical Methods Committee 1989, Analyst
   * 114:1693; printed in Venables & Ripley, Modern Applied Statistics with S, 4th ed. 2002, section 5.5, and in the
   * documentation of statsmodels' Huber scale, from where they are taken).
   */
  const COPPER = [
    2.2, 2.2, 2.4, 2.4, 2.5, 2.7, 2.8, 2.9, 3.03, 3.03, 3.1, 3.37, 3.4, 3.4, 3.4, 3.5, 3.6, 3.7, 3.7, 3.7,
    3.7, 3.77, 5.28, 28.95,
  ];
  /** Huber's proposal 2 on them, as printed there: location and scale. */
  const HUBER = { location: 3.2054980819923693, scale: 0.67365260010478967 };

  it('lies where Huber’s does, though the plain mean is 4.28 and the plain standard deviation 5.30', () => {
    expect(mean(COPPER)).toBeCloseTo(4.28, 2);
    expect(sampleStandardDeviation(COPPER)).toBeCloseTo(5.3, 2);
    // Mirrored, since a poor strike falls short: 40 less the reading, the outlier at 11 of about 37.
    const order = shuffled(COPPER.length);
    const shots = COPPER.map((reading, i) => ({
      carryM: 40 - reading,
      direction: 0.02 * inverseNormal((order[i]! + 0.5) / COPPER.length),
    }));
    const prior: BagPrior = { ...WEAK, spreadShots: 2, poorShareShots: 2, poorLevelSd: 0.5 };
    const { entries } = estimateBag(
      [{ club, swing: 'full', expected: expectedAbout(37, 0.7, 0.05), shots }],
      {
        prior,
        draws: 4000,
      },
    );
    const found = estimatesOf(entries[0]!);
    expect(entries[0]!.poorShots).toBe(1);
    const location = 40 - found.carryMean.mean;
    // Both are estimates from 24 readings: half a standard error, 0.07, is close agreement between two methods.
    expect(Math.abs(location - HUBER.location)).toBeLessThan(HUBER.scale / Math.sqrt(24) / 2);
    expect(40 - found.carryMean.high).toBeLessThan(HUBER.location);
    expect(40 - found.carryMean.low).toBeGreaterThan(HUBER.location);
    // The scale of 23 readings is good to 15 %.
    expect(Math.abs(found.carrySd.mean / HUBER.scale - 1)).toBeLessThan(0.15);
  });
});

describe('random laws (Marsaglia & Tsang 2000; Bartlett 1933)', () => {
  const stream = new RandomStream();

  it.each([0.3, 1, 2.7, 40])('gamma draws of shape %d follow jstat’s distribution function', (shape) => {
    stream.restart(makeStreamKey('gamma'), Math.round(10 * shape));
    const count = 4000;
    const sorted = Float64Array.from({ length: count }, () => drawGamma(stream, shape)).sort();
    let largest = 0;
    sorted.forEach((x, i) => {
      const cdf = laws.gamma.cdf(x, shape, 1);
      largest = Math.max(largest, Math.abs(cdf - i / count), Math.abs(cdf - (i + 1) / count));
    });
    // Kolmogorov's limit for one in a thousand: 1.95 / sqrt(n).
    expect(largest).toBeLessThan(1.95 / Math.sqrt(count));
  });

  it('inverse-Wishart draws have the mean scale / (degrees - 3) and chi-square margins', () => {
    stream.restart(makeStreamKey('wishart'), 1);
    const scale = { cc: 12, cd: -3, dd: 2 };
    const degrees = 13;
    const count = 20_000;
    const sum = { cc: 0, cd: 0, dd: 0 };
    for (let i = 0; i < count; i++) {
      const drawn = drawInverseWishart(stream, degrees, scale);
      expect(drawn.cc * drawn.dd - drawn.cd ** 2).toBeGreaterThan(0);
      sum.cc += drawn.cc / count;
      sum.cd += drawn.cd / count;
      sum.dd += drawn.dd / count;
    }
    // A diagonal entry's standard deviation is its mean times sqrt(2 / (degrees - 5)), here a half.
    for (const name of ['cc', 'cd', 'dd'] as const) {
      const value = scale[name] / (degrees - 3);
      expect(Math.abs(sum[name] - value)).toBeLessThan(
        (4 * 0.8 * Math.max(Math.abs(value), 0.3)) / Math.sqrt(count),
      );
    }
    const squares = Array.from({ length: 4000 }, () => drawChiSquare(stream, 5));
    expect(Math.abs(mean(squares) - 5)).toBeLessThan((4 * Math.sqrt(10)) / Math.sqrt(4000));
  });
});
