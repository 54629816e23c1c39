/**
 * Share of solid strikes inside the drawn ellipses against the chi-square law with two degrees of freedom, which the
 * squared radius of a bivariate normal in standard units follows.
 * Quantiles: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4 (two degrees: 4.605 at 90 %, 9.210 at
 * 99 %); 1.386 at 50 % is 2 ln 2.
 */

import { describe, expect, it } from 'vitest';
import type { SpreadEllipse } from '../../core/plan/model.ts';
import { sampleShot, spreadEllipses } from '../../core/plan/sample.ts';
import { mustPrepare, stated, statedPlayer, type StatedSpread } from '../plan/synthetic.ts';
import { chiSquareQuantile } from './chi-square.ts';

const QUANTILES = [
  { share: 0.5, chiSquare: 1.386 },
  { share: 0.9, chiSquare: 4.605 },
  { share: 0.99, chiSquare: 9.21 },
] as const;

const COUNT = 16_384;

/**
 * Narrow beside their length: a landing's distance aside is carry times angle, whose law is normal only while both
 * shares of error are small. At 4 % of carry and 0.03 rad what is left is of second order, 0.002 of a share.
 */
const NARROW_SHARE = 0.002;

const spreads: readonly (Partial<StatedSpread> & { readonly name: string })[] = [
  { name: 'long across', carrySd: 2, directionSd: 0.03 },
  { name: 'long along', carrySd: 6, directionSd: 0.01 },
  { name: 'round', carrySd: 4, directionSd: 4 / 150 },
  { name: 'leaning right', carrySd: 5, directionSd: 0.03, correlation: 0.7 },
  {
    name: 'leaning left, with a bias',
    carrySd: 4,
    directionSd: 0.03,
    correlation: -0.5,
    directionMean: 0.03,
  },
];

function inside(ellipse: SpreadEllipse, x: number, y: number): boolean {
  const dx = x - ellipse.centre.x;
  const dy = y - ellipse.centre.y;
  const major = dx * Math.sin(ellipse.majorBearing) + dy * Math.cos(ellipse.majorBearing);
  const minor = dx * Math.cos(ellipse.majorBearing) - dy * Math.sin(ellipse.majorBearing);
  return (major / ellipse.semiMajorM) ** 2 + (minor / ellipse.semiMinorM) ** 2 <= 1;
}

describe('ellipse of a share of solid strikes', () => {
  it.each(spreads)('holds that share of the balls: $name', (spread) => {
    const iron = stated({ club: 'Iron', carryM: 150, carrySd: 4, directionSd: 0.03, ...spread });
    const hole = mustPrepare({ lengthM: 250 }, statedPlayer({ spreads: [iron] }));
    for (const bearing of [0, 0.25, -0.4]) {
      const choice = { spreadIndex: 0, bearing, carryM: 150 };
      const { landing } = sampleShot(hole, hole.tee, choice, COUNT);
      const ellipses = spreadEllipses(
        hole,
        hole.tee,
        choice,
        QUANTILES.map((quantile) => quantile.share),
      );
      QUANTILES.forEach(({ share }, k) => {
        let count = 0;
        for (let i = 0; i < COUNT; i++)
          if (inside(ellipses[k]!, landing[2 * i]!, landing[2 * i + 1]!)) count++;
        // Four binomial errors, though evenly spread draws scatter less.
        const error = Math.sqrt((share * (1 - share)) / COUNT);
        expect(Math.abs(count / COUNT - share)).toBeLessThan(4 * error + NARROW_SHARE);
      });
    }
  });

  it('has the radius that the table gives, and the area that goes with it', () => {
    const iron = stated({ club: 'Iron', carryM: 150, carrySd: 5, directionSd: 0.03, correlation: 0.7 });
    const hole = mustPrepare({ lengthM: 250 }, statedPlayer({ spreads: [iron] }));
    for (const { share, chiSquare } of QUANTILES) {
      const choice = { spreadIndex: 0, bearing: 0, carryM: 150 };
      const [ellipse] = spreadEllipses(hole, hole.tee, choice, [share]);
      // Product of the semi-axes: quantile times the square root of the covariance's determinant.
      const product = chiSquare * 5 * (150 * 0.03) * Math.sqrt(1 - 0.7 ** 2);
      expect(Math.abs((ellipse!.semiMajorM * ellipse!.semiMinorM) / product - 1)).toBeLessThan(5e-4);
      expect(-2 * Math.log(1 - share)).toBeCloseTo(chiSquareQuantile(share, 2), 6);
    }
  });

  it('holds nearly that share at an amateur’s driver as well: 8 % of carry, 0.1 rad', () => {
    const driver = stated({ club: 'Driver', carryM: 150, carrySd: 12, directionSd: 0.1 });
    const hole = mustPrepare({ lengthM: 250 }, statedPlayer({ spreads: [driver] }));
    const choice = { spreadIndex: 0, bearing: 0, carryM: 150 };
    const { landing } = sampleShot(hole, hole.tee, choice, COUNT);
    const ellipses = spreadEllipses(hole, hole.tee, choice, [0.5, 0.9]);
    [0.5, 0.9].forEach((share, k) => {
      let count = 0;
      for (let i = 0; i < COUNT; i++) if (inside(ellipses[k]!, landing[2 * i]!, landing[2 * i + 1]!)) count++;
      // The arc bends away from the straight ellipse by 150 x 0.1² / 2 = 0.75 m at one standard deviation.
      expect(Math.abs(count / COUNT - share)).toBeLessThan(0.025);
    });
  });
});
