/** The estimator: finds the parameters that shots were drawn with, and is not led astray by a few of them. */

import fc from 'fast-check';
import { sampleCorrelation, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
  estimateShots,
  LEAST_SHOTS,
  type MeasuredShot,
  poolPoorStrikes,
  type ShotEstimate,
} from '../../core/player/estimate.ts';
import { inverseNormal } from '../../core/random/normal.ts';
import { drawShots, type ShotLawOfTest } from './sample-player.ts';

const midIron: ShotLawOfTest = {
  carryMean: 140,
  carrySd: 11,
  directionMean: 0.02,
  directionSd: 0.08,
  correlation: 0.3,
  poorShare: 0.08,
  poor: { carryShareMean: 0.6, carryShareSd: 0.18, directionSd: 0.16 },
};

function estimate(shots: readonly MeasuredShot[], expectedPoorShare = 0.08): ShotEstimate {
  const result = estimateShots(shots, expectedPoorShare);
  if (!result.ok) throw new Error(result.error);
  return result.value;
}

describe('estimate of a club’s law', () => {
  it('is the plain sample mean, spread and correlation where no strike is poor', () => {
    // Ten shots well inside the limits: only the correction for the cut tails (under 1 %) is left.
    const shots = [138, 141, 144, 139, 142, 140, 143, 137, 145, 141].map((carryM, i) => ({
      carryM,
      direction: [0.01, -0.02, 0.03, 0, 0.02, -0.01, 0.015, -0.03, 0.025, 0.005][i]!,
    }));
    const carries = shots.map((s) => s.carryM);
    const directions = shots.map((s) => s.direction);
    const found = estimate(shots);
    expect(found.poorCount).toBe(0);
    expect(found.carryMean).toBeCloseTo(141, 1);
    expect(found.directionMean).toBeCloseTo(0.0045, 6);
    expect(found.carrySd / sampleStandardDeviation(carries)).toBeCloseTo(1, 1);
    expect(found.directionSd / sampleStandardDeviation(directions)).toBeCloseTo(1, 1);
    expect(found.correlation).toBeCloseTo(sampleCorrelation(carries, directions), 9);
  });

  it('recovers the law that shots were drawn from', () => {
    const runs = 40;
    const n = 400;
    const sums = { carryMean: 0, carrySd: 0, directionMean: 0, directionSd: 0, correlation: 0, poorShare: 0 };
    for (let run = 0; run < runs; run += 1) {
      const found = estimate(drawShots(midIron, n, `recovers ${run}`));
      for (const key of Object.keys(sums) as (keyof typeof sums)[]) sums[key] += found[key] / runs;
    }
    const solid = n * (1 - midIron.poorShare);
    // Four standard errors of the mean over all runs, and the bias that the method admits to: poor strikes that fly
    // like solid ones (about one in eight here) shift the mean by 1.5 % and widen the spread by 2 % of the SD, cut
    // the share of poor strikes by about an eighth, and blur the correlation.
    const se = (sd: number): number => (4 * sd) / Math.sqrt(runs * solid);
    expect(Math.abs(sums.carryMean - 140)).toBeLessThan(se(11) + 0.02 * 11);
    expect(Math.abs(sums.carrySd - 11)).toBeLessThan(se(11) / Math.SQRT2 + 0.02 * 11);
    expect(Math.abs(sums.directionMean - 0.02)).toBeLessThan(se(0.08));
    expect(Math.abs(sums.directionSd - 0.08)).toBeLessThan(se(0.08) / Math.SQRT2 + 0.02 * 0.08);
    expect(Math.abs(sums.correlation - 0.3)).toBeLessThan(se(1 - 0.3 ** 2) + 0.03);
    expect(Math.abs(sums.poorShare - 0.08)).toBeLessThan(4 * Math.sqrt((0.08 * 0.92) / (runs * n)) + 0.011);
  });

  it('states standard errors that fit the scatter of the estimates themselves', () => {
    const runs = 200;
    const found = Array.from({ length: runs }, (_, i) => estimate(drawShots(midIron, 60, `scatter ${i}`)));
    const ratio = (key: 'carryMean' | 'directionMean' | 'directionSd'): number =>
      sampleStandardDeviation(found.map((f) => f[key])) /
      (found.reduce((sum, f) => sum + f.standardError[key], 0) / runs);
    // A standard deviation from 200 runs is good to 5 %; the classification adds some scatter of its own.
    for (const key of ['carryMean', 'directionMean', 'directionSd'] as const) {
      expect(ratio(key)).toBeGreaterThan(0.85);
      expect(ratio(key)).toBeLessThan(1.25);
    }
  });

  it('does not depend on the order of the shots, to the last bit', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            carryM: fc.double({ min: 20, max: 250, noNaN: true }),
            direction: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
          }),
          { minLength: LEAST_SHOTS, maxLength: 40 },
        ),
        fc.infiniteStream(fc.nat()),
        (shots, keys) => {
          const order = shots.map((_, i) => ({ i, key: keys.next().value as number }));
          order.sort((a, b) => a.key - b.key || a.i - b.i);
          const { poor: shuffledPoor, ...shuffled } = estimate(order.map(({ i }) => shots[i]!));
          const { poor, ...plain } = estimate(shots);
          expect(shuffled).toEqual(plain);
          expect(shuffledPoor).toEqual(order.map(({ i }) => poor[i]));
        },
      ),
    );
  });

  it('scales with the units of carry', () => {
    const shots = drawShots(midIron, 50, 'scales');
    const small = estimate(shots.map((s) => ({ ...s, carryM: s.carryM / 10 })));
    const large = estimate(shots);
    expect(small.carryMean * 10).toBeCloseTo(large.carryMean, 9);
    expect(small.carrySd * 10).toBeCloseTo(large.carrySd, 9);
    expect(small.poor).toEqual(large.poor);
  });

  it('hardly moves when one wild shank is added', () => {
    for (let i = 0; i < 30; i += 1) {
      const shots = drawShots({ ...midIron, poorShare: 0 }, 30, `shank ${i}`);
      const before = estimate(shots);
      const after = estimate([...shots, { carryM: 35, direction: 0.7 }]);
      expect(after.poor.at(-1)).toBe(true);
      // A shot at the limits may change sides; the plain mean and spread would move by 0.3 and 0.75 of an SD.
      expect(Math.abs(after.carryMean - before.carryMean)).toBeLessThan(0.1 * before.carrySd);
      expect(Math.abs(after.carrySd / before.carrySd - 1)).toBeLessThan(0.15);
      expect(Math.abs(after.directionSd / before.directionSd - 1)).toBeLessThan(0.15);
      expect(after.poorShare).toBeGreaterThan(before.poorShare);
    }
  });

  it('calls short and wide shots poor, never long ones', () => {
    const shots = drawShots({ ...midIron, poorShare: 0 }, 40, 'long ones');
    const found = estimate([...shots, { carryM: 190, direction: 0.02 }, { carryM: 80, direction: 0.02 }]);
    expect(found.poor.at(-2)).toBe(false);
    expect(found.poor.at(-1)).toBe(true);
    expect(estimate([...shots, { carryM: 140, direction: -0.6 }]).poor.at(-1)).toBe(true);
  });

  it('does not take none in twenty for never, and trusts many shots over the prior', () => {
    // Twenty shots spread as evenly as the normal law has it, so that none is anywhere near the limits.
    const z = Array.from({ length: 20 }, (_, i) => inverseNormal((i + 0.5) / 20));
    const twenty = z.map((u, i) => ({ carryM: 140 + 11 * u, direction: 0.08 * z[(7 * i) % 20]! }));
    const found = estimate(twenty);
    expect(found.poorCount).toBe(0);
    expect(found.poorShare).toBeGreaterThan(0.01);
    expect(found.poorShare).toBeLessThan(0.08);
    const many = estimate(drawShots({ ...midIron, poorShare: 0 }, 2000, 'none in many'));
    expect(many.poorShare).toBeLessThan(0.005);
  });

  it('keeps a spread above nothing when readings are all alike', () => {
    const found = estimate(Array.from({ length: 8 }, () => ({ carryM: 100, direction: 0 })));
    expect(found.carrySd).toBeGreaterThan(0);
    expect(found.directionSd).toBeGreaterThan(0);
    expect(found.correlation).toBe(0);
  });

  it('refuses too few shots and unusable readings', () => {
    const four = drawShots(midIron, LEAST_SHOTS - 1, 'four');
    expect(estimateShots(four, 0.08)).toMatchObject({ ok: false });
    for (const carryM of [0, -5, NaN, Infinity]) {
      const result = estimateShots([...four, { carryM, direction: 0 }], 0.08);
      expect(result.ok).toBe(false);
    }
  });
});

describe('pooled poor strikes', () => {
  const usual = { carryShareMean: 0.6, carryShareSd: 0.18, directionTimes: 2 };

  it('are the usual ones where there are none', () => {
    expect(poolPoorStrikes([], usual)).toEqual({ ...usual, count: 0 });
  });

  it('come from all clubs together, in proportion to each club', () => {
    const clubs = [60, 90, 120, 150, 180].map((carryMean, i) => {
      const law = { ...midIron, carryMean, carrySd: carryMean * 0.08, poorShare: 0.2 };
      const poor = { carryShareMean: 0.45, carryShareSd: 0.1, directionSd: 0.16 };
      const shots = drawShots({ ...law, poor }, 200, `pooled ${i}`);
      return { shots, estimate: estimate(shots) };
    });
    const pooled = poolPoorStrikes(clubs, usual);
    // About 200 poor strikes of mean 0.45 and SD 0.1, a few misjudged solid ones, six of the prior.
    expect(pooled.count).toBeGreaterThan(150);
    expect(pooled.carryShareMean).toBeGreaterThan(0.43);
    expect(pooled.carryShareMean).toBeLessThan(0.5);
    expect(pooled.directionTimes).toBeGreaterThan(1.7);
    expect(pooled.directionTimes).toBeLessThan(2.3);
  });

  it('let one reading gone astray count for ten standard deviations at most', () => {
    const shots = [...drawShots({ ...midIron, poorShare: 0 }, 30, 'astray'), { carryM: 40, direction: 3 }];
    const pooled = poolPoorStrikes([{ shots, estimate: estimate(shots) }], usual);
    expect(pooled.directionTimes).toBeLessThan(Math.sqrt((100 + 6 * 4 + 3 * 16) / 7));
  });
});
