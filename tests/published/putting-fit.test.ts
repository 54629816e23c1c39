/** The putting fit on published putts: it must find the published errors. */

import { describe, expect, it } from 'vitest';
import { fitDirection, fitPutting, type HoledCount } from '../../core/putting/fit.ts';
import { inEnglish, type Told } from '../../core/words/told.ts';

const FOOT_M = 0.3048;

/** Feet, tries, made: professional putts (Berry 1996, as printed in Gelman & Nolan 2002). */
const BERRY_1996 = `2 1443 1346; 3 694 577; 4 455 337; 5 353 208; 6 272 149; 7 256 136; 8 240 111; 9 217 69;
  10 200 67; 11 237 75; 12 202 52; 13 192 46; 14 174 54; 15 167 28; 16 201 27; 17 195 31; 18 191 33; 19 147 20;
  20 152 24`;

/** Mean feet, tries, made: tour putts (Broadie 2018, as printed in Gelman 2019). */
const BROADIE_2018 = `0.28 45198 45183; 0.97 183020 182899; 1.93 169503 168594; 2.92 113094 108953;
  3.93 73855 64740; 4.94 53659 41106; 5.94 42991 28205; 6.95 37050 21334; 7.95 33275 16615; 8.95 30836 13503;
  9.95 28637 11060; 10.95 26239 9032; 11.95 24636 7687; 12.95 22876 6432; 14.43 41267 9813; 16.43 35712 7196;
  18.44 31573 5290; 20.44 28280 4086; 21.95 13238 1642; 24.39 46570 4767; 28.40 38422 2980; 32.39 31641 1996;
  36.39 25604 1327; 40.37 20366 834; 44.38 15977 559; 48.37 11770 311; 52.36 8708 231; 57.25 8878 204;
  63.23 5492 103; 69.18 3087 35; 75.19 1742 24`;

function rows(table: string): HoledCount[] {
  return table.split(';').map((row) => {
    const [feet, tries, made] = row.trim().split(/\s+/).map(Number);
    return { distanceM: feet! * FOOT_M, tries: tries!, made: made! };
  });
}

function value<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Told },
): T {
  if (!result.ok) throw new Error(inEnglish(result.error));
  return result.value;
}

describe('direction error of professionals (Gelman & Nolan 2002)', () => {
  const found = value(fitDirection(rows(BERRY_1996)));

  it('is about 1.5 degrees, 0.026646 rad at the highest likelihood', () => {
    expect(Math.abs(found.directionSd - 0.026646)).toBeLessThan(2e-5);
    expect((found.directionSd * 180) / Math.PI).toBeCloseTo(1.5, 1);
  });

  it('has an interval as wide as the information says', () => {
    // The observed information from second differences of the likelihood, apart from the code under test.
    const { low, high } = found.interval;
    const logLikelihood = (sd: number): number =>
      rows(BERRY_1996).reduce((sum, { distanceM, tries, made }) => {
        const angle = Math.asin(((4.25 - 1.68) * 0.0254) / 2 / distanceM);
        const p = 2 * phi(angle / sd) - 1;
        return sum + made * Math.log(p) + (tries - made) * Math.log(1 - p);
      }, 0);
    const h = 1e-5;
    const at = found.directionSd;
    const curvature = (logLikelihood(at + h) - 2 * logLikelihood(at) + logLikelihood(at - h)) / (h * h);
    const standardError = 1 / Math.sqrt(-curvature);
    expect((high - low) / 2 / (1.6449 * standardError)).toBeCloseTo(1, 1);
  });
});

/** Normal distribution function by Simpson's rule. */
function phi(x: number): number {
  const n = 400;
  let sum = 0;
  for (let i = 0; i <= n; i++) {
    const t = (x * i) / n;
    sum += Math.exp((-t * t) / 2) * (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2);
  }
  return 0.5 + ((x / n / 3) * sum) / Math.sqrt(2 * Math.PI);
}

describe('direction and run of tour players (Gelman 2019, on Broadie 2018)', () => {
  const found = value(
    fitPutting({ holed: rows(BROADIE_2018).filter(({ distanceM }) => distanceM < 60) }, { fitMisfit: true }),
  );

  it('are 0.0178 rad and 0.080 of the run, with the model’s own error fitted as Gelman does', () => {
    expect(Math.abs(found.skill.directionSd - 0.0178)).toBeLessThan(0.0003);
    expect(Math.abs(found.skill.distanceSdShare - 0.08)).toBeLessThan(0.002);
    // The misfit of the model is well below a percentage point.
    expect(found.misfitSd).toBeGreaterThan(0.001);
    expect(found.misfitSd).toBeLessThan(0.006);
    expect(found.isSettled).toEqual({ directionSd: true, distanceSdShare: true });
  });

  it('lie in their intervals', () => {
    const { directionSd, distanceSdShare } = found.intervals;
    expect(directionSd.low).toBeLessThan(0.0178);
    expect(directionSd.high).toBeGreaterThan(0.0178);
    expect(distanceSdShare.low).toBeLessThan(0.08);
    expect(distanceSdShare.high).toBeGreaterThan(0.079);
  });
});
