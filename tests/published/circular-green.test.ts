/**
 * Share of balls that land inside a circular green under an isotropic spread, the aim off its middle: the squared
 * distance from the middle in standard units follows the noncentral chi-square law with two degrees of freedom and
 * noncentrality (offset / spread)².
 */

import { describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { simulateChoice } from '../../core/plan/simulate.ts';
import { flatGround, mustPrepare, stated, statedPlayer } from '../plan/synthetic.ts';
import { noncentralChiSquareCdf } from './chi-square.ts';

describe('noncentral chi-square law of these checks', () => {
  it('gives published values', () => {
    // Burkardt's TEST_VALUES, chi_square_noncentral_cdf_values (computed by Mathematica), x = 3: seen.
    for (const [df, noncentrality, value] of [
      [1, 0.5, 0.8399444269398261],
      [2, 0.5, 0.6959060300435139],
      [3, 0.5, 0.5350879697078847],
      [1, 1, 0.7647841496310313],
      [2, 1, 0.6206436532195436],
    ] as const) {
      expect(noncentralChiSquareCdf(3, df, noncentrality)).toBeCloseTo(value, 10);
    }
    // SciPy 1.17.1, scipy.stats.ncx2.cdf (the Boost library): x, noncentrality.
    for (const [x, noncentrality, value] of [
      [1, 0.25, 0.3572857697274562],
      [4, 1, 0.73098793996409],
      [9, 4, 0.7856379118373507],
      [2, 6, 0.0938631134164952],
      [16, 25, 0.13295020492207438],
    ] as const) {
      expect(noncentralChiSquareCdf(x, 2, noncentrality)).toBeCloseTo(value, 10);
    }
  });
});

describe('a circular green', () => {
  const carryM = 200;
  const spreadM = 6;
  const samples = 16_384;
  // Isotropic: as many metres along as across.
  const iron = stated({ club: 'Iron', carryM, carrySd: spreadM, directionSd: spreadM / carryM });

  /** A hole as long as the carry, its green of the given radius painted in cells of 25 cm. */
  function holeWith(greenRadiusM: number): PreparedHole {
    const spec = { lengthM: carryM, greenRadiusM };
    const hole = mustPrepare(spec, statedPlayer({ spreads: [iron] }));
    return { ...hole, ground: flatGround(spec, 0.25) };
  }

  it.each([
    { greenRadiusM: 6, offsets: [0, 5, 12] },
    { greenRadiusM: 12, offsets: [0, 8, 14] },
  ])(
    'of radius $greenRadiusM m holds the share that the law gives, wherever the aim',
    ({ greenRadiusM, offsets }) => {
      const hole = holeWith(greenRadiusM);
      const cells = hole.ground.lie.filter((lie) => lie === Lie.green).length;
      expect(Math.abs((cells * 0.0625) / (Math.PI * greenRadiusM ** 2) - 1)).toBeLessThan(0.01);
      for (const offset of offsets) {
        const expected = noncentralChiSquareCdf((greenRadiusM / spreadM) ** 2, 2, (offset / spreadM) ** 2);
        const tolerance =
          // Four binomial errors.
          4 * Math.sqrt((expected * (1 - expected)) / samples) +
          // The arc of equal carry bends back by 200 x 0.03² / 2 = 0.09 m on average: 0.015 of a standard unit, and no
          // share changes by more than 0.4 a unit.
          0.006;
        // Aside to either side, by turning the aim; short and long, by moving the ball.
        for (const side of [-1, 1]) {
          const turned = { spreadIndex: 0, bearing: side * Math.asin(offset / carryM), carryM };
          const back = carryM * (1 - Math.cos(turned.bearing));
          const aside = simulateChoice(hole, { x: 0, y: -carryM + back }, turned, { samples, rolls: false })!;
          expect(Math.abs(aside.endShare.green - expected)).toBeLessThan(tolerance);
          const straight = { spreadIndex: 0, bearing: 0, carryM };
          const along = simulateChoice(hole, { x: 0, y: -carryM + side * offset }, straight, {
            samples,
            rolls: false,
          })!;
          expect(Math.abs(along.endShare.green - expected)).toBeLessThan(tolerance);
        }
      }
    },
  );
});
