import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { inverseNormal } from '../../core/random/normal.ts';
import { studentReach, studentWithin } from '../../core/round/student.ts';
import { measuredFormSd, perEighteen, trendOf } from '../../core/round/trends.ts';
import { randomNumbers } from './scores.ts';

const { studentt } = jStat as unknown as {
  readonly studentt: { cdf(t: number, freedom: number): number; inv(p: number, freedom: number): number };
};

function normals(seed: string): () => number {
  const next = randomNumbers(seed);
  return () => inverseNormal(next() * 0.999999 + 5e-7);
}

describe('Student’s law', () => {
  it('agrees with an independent library (jStat)', () => {
    for (const freedom of [1, 2, 3, 4, 7, 12, 29, 60]) {
      for (const t of [0.1, 0.8, 1.5, 3, 8])
        expect(studentWithin(t, freedom)).toBeCloseTo(2 * studentt.cdf(t, freedom) - 1, 7);
      for (const share of [0.5, 0.8, 0.9, 0.99])
        expect(studentReach(share, freedom)).toBeCloseTo(studentt.inv((1 + share) / 2, freedom), 5);
    }
  });
});

describe('a trend', () => {
  it('covers the true mean and slope nine times in ten', () => {
    const normal = normals('trend');
    let meanHit = 0;
    let slopeHit = 0;
    const runs = 4000;
    for (let run = 0; run < runs; run++) {
      const values = Array.from({ length: 6 }, (_, i) => 2 - 0.3 * i + 1.5 * normal());
      const { meanInterval, slopeInterval } = trendOf(values);
      // The mean's own interval is for values without a trend.
      const flat = trendOf(values.map((value, i) => value + 0.3 * i)).meanInterval!;
      if (meanInterval !== null && flat.low <= 2 && 2 <= flat.high) meanHit++;
      if (slopeInterval!.low <= -0.3 && -0.3 <= slopeInterval!.high) slopeHit++;
    }
    const error = 3.5 * Math.sqrt((0.9 * 0.1) / runs);
    expect(Math.abs(meanHit / runs - 0.9)).toBeLessThan(error);
    expect(Math.abs(slopeHit / runs - 0.9)).toBeLessThan(error);
  });

  it('says nothing before there is anything to say', () => {
    expect(trendOf([])).toMatchObject({ count: 0, meanInterval: null, slope: null, direction: 'unclear' });
    expect(trendOf([3])).toMatchObject({ mean: 3, meanInterval: null });
    expect(trendOf([3, 5]).meanInterval!.high).toBeGreaterThan(5);
    expect(trendOf([1, 2.1, 2.9, 4.2, 5])).toMatchObject({ direction: 'up' });
    expect(trendOf([5, 4.2, 2.9, 2.1, 1])).toMatchObject({ direction: 'down' });
    expect(trendOf([1, 3, 0, 2, 1])).toMatchObject({ direction: 'unclear' });
  });
});

describe('the form of the day', () => {
  it('is measured from what rounds vary beyond the holes’ own luck', () => {
    const normal = normals('form');
    const rounds = Array.from({ length: 4000 }, () => {
      const form = 2 * normal();
      return { score: 88 + form + 3.6 * normal(), expected: 86, holeVariance: 3.6 ** 2 };
    });
    // The variance of the round is known to 2 / n of its square: 17 ± 0.38, so form² 4 ± 1.1 at three standard errors.
    expect(Math.abs(measuredFormSd(rounds)! ** 2 - 4)).toBeLessThan(1.2);
    expect(measuredFormSd(rounds.slice(0, 7))).toBeNull();
    const steady = Array.from({ length: 20 }, () => ({ score: 88, expected: 86, holeVariance: 13 }));
    expect(measuredFormSd(steady)).toBe(0);
  });
});

describe('figures per eighteen holes', () => {
  it('scale nine holes and more, and leave shorter rounds out', () => {
    expect(perEighteen(20, 9)).toBe(40);
    expect(perEighteen(36, 18)).toBe(36);
    expect(perEighteen(7, 1)).toBeNull();
    expect(perEighteen(30, 8)).toBeNull();
    expect(perEighteen(null, 18)).toBeNull();
  });
});
