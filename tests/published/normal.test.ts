/** The normal law against general statistics libraries and published percentage points. */

import fc from 'fast-check';
import { jStat } from 'jstat';
import { cumulativeStdNormalProbability } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { erfc, inverseNormal, normalCdf } from '../../core/random/normal.ts';

describe('normal distribution function', () => {
  it('agrees with jstat', () => {
    // jstat's erf is good to about 1e-15 absolute in the middle; 1e-13 leaves room for its tails.
    for (let x = -6; x <= 6; x += 0.05) {
      expect(Math.abs(normalCdf(x) - jStat.normal.cdf(x, 0, 1))).toBeLessThan(1e-13);
    }
  });

  it('agrees with simple-statistics to its table of four decimals', () => {
    // simple-statistics looks z up in a table with steps of 0.01 and rounds: compare on the table's nodes.
    for (let step = -300; step <= 300; step += 7) {
      const z = step / 100;
      expect(Math.abs(normalCdf(z) - cumulativeStdNormalProbability(z))).toBeLessThan(6e-5);
    }
  });

  it('gives the tabulated values of Abramowitz & Stegun 1964, table 26.1', () => {
    // P(x) at 1, 2, 3 (from memory; the same digits come out of any arbitrary-precision library).
    expect(normalCdf(1)).toBeCloseTo(0.841344746068543, 14);
    expect(normalCdf(2)).toBeCloseTo(0.977249868051821, 14);
    expect(normalCdf(3)).toBeCloseTo(0.99865010196837, 14);
  });

  it('keeps its relative accuracy far in the tail', () => {
    // Q(10) = 7.61985302416052607e-24 (arbitrary-precision evaluation of erfc(10/sqrt 2)/2, 50 digits).
    expect(normalCdf(-10) / 7.61985302416052607e-24).toBeCloseTo(1, 12);
    expect(normalCdf(-40)).toBe(0);
    expect(normalCdf(40)).toBe(1);
  });

  it('is symmetric and never falls', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (x, step) => {
          expect(normalCdf(x) + normalCdf(-x)).toBeCloseTo(1, 14);
          expect(erfc(x) + erfc(-x)).toBeCloseTo(2, 14);
          // Rounding of the last bits may differ across the joins of the three ranges.
          expect(normalCdf(x + Math.abs(step))).toBeGreaterThanOrEqual(normalCdf(x) * (1 - 1e-13));
        },
      ),
    );
  });
});

describe('inverse of the normal distribution function', () => {
  it('gives the test values printed with AS 241 (Wichura 1988)', () => {
    // Wichura's own checks (from memory): 0.25, 0.001 and 1e-20, one for each of the three ranges.
    expect(inverseNormal(0.25)).toBeCloseTo(-0.6744897501960817, 15);
    expect(inverseNormal(0.001)).toBeCloseTo(-3.090232306167814, 14);
    expect(inverseNormal(1e-20)).toBeCloseTo(-9.262340089798408, 14);
  });

  it('gives the percentage points that every table prints', () => {
    // Two-sided 90, 95 and 99 % (any table of the normal law).
    expect(inverseNormal(0.95)).toBeCloseTo(1.6448536269514722, 14);
    expect(inverseNormal(0.975)).toBeCloseTo(1.959963984540054, 14);
    expect(inverseNormal(0.995)).toBeCloseTo(2.5758293035489004, 14);
  });

  it('agrees with jstat', () => {
    // jstat inverts erfc by Newton steps: about ten digits are to be trusted.
    for (let p = 0.0005; p < 1; p += 0.0131) {
      expect(Math.abs(inverseNormal(p) - jStat.normal.inv(p, 0, 1))).toBeLessThan(1e-9);
    }
  });

  it('undoes the distribution function', () => {
    fc.assert(
      fc.property(fc.double({ min: -36, max: 5, noNaN: true }), (x) => {
        // Above the middle p sits next to 1 and a spacing of 1e-16 in p is 1e-16/density in x.
        const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
        const tolerance = 1e-12 * Math.max(1, Math.abs(x)) + (x > 0 ? 4e-16 / density : 0);
        expect(Math.abs(inverseNormal(normalCdf(x)) - x)).toBeLessThan(tolerance);
      }),
    );
  });

  it('answers the ends with infinities and nonsense with NaN', () => {
    expect(inverseNormal(0)).toBe(-Infinity);
    expect(inverseNormal(1)).toBe(Infinity);
    expect(inverseNormal(0.5)).toBe(0);
    for (const p of [-0.1, 1.1, NaN]) expect(inverseNormal(p)).toBeNaN();
  });
});
