/** The height of a ball along its way. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apexOf, ballWindow, heightAlong, type BallWindow } from '../../core/flight/trajectory.ts';
import type { Swing } from '../../core/player/model.ts';

const DEGREE = Math.PI / 180;
const SWINGS: readonly Swing[] = ['full', 'three-quarter', 'half', 'part', 'punch'];

function windowOf(loftDeg: number, swing: Swing = 'full'): BallWindow {
  return ballWindow({ swing, club: { loftDeg } });
}

const anyWindow = fc
  .tuple(fc.double({ min: 7, max: 64, noNaN: true }), fc.constantFrom(...SWINGS))
  .map(([loft, swing]) => windowOf(loft, swing));
const anyCarry = fc.double({ min: 1, max: 300, noNaN: true });

describe('height along the way', () => {
  it('is 0 at both ends and above the ground between them', () => {
    fc.assert(
      fc.property(anyWindow, anyCarry, (window, carry) => {
        expect(heightAlong(window, carry, 0)).toBe(0);
        expect(Math.abs(heightAlong(window, carry, carry))).toBeLessThan(1e-9);
        for (let f = 0.02; f < 1; f += 0.02) expect(heightAlong(window, carry, f * carry)).toBeGreaterThan(0);
      }),
      { numRuns: 50, seed: 41 },
    );
  });

  it('has its apex where the slope is nothing, and nothing is higher', () => {
    fc.assert(
      fc.property(anyWindow, (window) => {
        const { at, height } = apexOf(window);
        expect(at).toBeGreaterThan(0);
        expect(at).toBeLessThan(1);
        expect(height).toBe(heightAlong(window, 1, at));
        const step = 1e-5;
        const slope = (heightAlong(window, 1, at + step) - heightAlong(window, 1, at - step)) / (2 * step);
        // The central difference of a cubic is off by step² times its leading coefficient, launch x skew.
        expect(Math.abs(slope)).toBeLessThan(1e-9);
        for (let f = 0; f <= 1; f += 0.01) expect(heightAlong(window, 1, f)).toBeLessThanOrEqual(height);
      }),
      { numRuns: 50, seed: 42 },
    );
  });

  it('has its apex in the middle where launch and descent are alike', () => {
    // Without skew the way is a parabola: height a quarter of carry x slope.
    expect(apexOf({ tanLaunch: 0.4, skew: 0 })).toEqual({ at: 0.5, height: 0.1 });
    expect(apexOf({ tanLaunch: 0.4, skew: 1e-7 }).at).toBeCloseTo(0.5, 6);
  });

  it('leaves and comes down at the angles of its window', () => {
    fc.assert(
      fc.property(anyWindow, anyCarry, (window, carry) => {
        const step = 1e-6 * carry;
        expect(heightAlong(window, carry, step) / step).toBeCloseTo(window.tanLaunch, 4);
        expect(heightAlong(window, carry, carry - step) / step).toBeCloseTo(window.tanDescent, 4);
      }),
      { numRuns: 50, seed: 43 },
    );
  });

  it('grows in proportion with the carry', () => {
    fc.assert(
      fc.property(anyWindow, anyCarry, fc.double({ min: 0, max: 1, noNaN: true }), (window, carry, f) => {
        expect(heightAlong(window, carry, f * carry)).toBeCloseTo(carry * heightAlong(window, 1, f), 8);
      }),
      { numRuns: 50, seed: 44 },
    );
  });
});

describe('a ball’s window', () => {
  it('has the launch and descent that a driver and a sand wedge are known for', () => {
    // Common practice, no source: 12° up and 37° down; 30° up and 53° down.
    const driver = windowOf(10.5);
    expect(Math.atan(driver.tanLaunch) / DEGREE).toBeCloseTo(12, 1);
    expect(Math.atan(driver.tanDescent) / DEGREE).toBeCloseTo(37, 1);
    const sandWedge = windowOf(56);
    expect(Math.atan(sandWedge.tanLaunch) / DEGREE).toBeCloseTo(30, 1);
    expect(Math.atan(sandWedge.tanDescent) / DEGREE).toBeCloseTo(53, 1);
  });

  it('flies lower with less loft, all along the way', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 7, max: 62, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.constantFrom(...SWINGS),
        (loft, more, swing) => {
          const low = windowOf(loft, swing);
          const high = windowOf(Math.min(64, loft + more), swing);
          expect(apexOf(low).height).toBeLessThan(apexOf(high).height);
          for (let f = 0.05; f < 1; f += 0.05) {
            expect(heightAlong(low, 150, f * 150)).toBeLessThan(heightAlong(high, 150, f * 150));
          }
        },
      ),
      { numRuns: 50, seed: 45 },
    );
  });

  it('of a punch is lower than that of any other swing of the club, which are alike', () => {
    for (const loft of [10.5, 20, 32, 44, 56]) {
      const full = windowOf(loft);
      expect(apexOf(windowOf(loft, 'punch')).height).toBeLessThan(0.6 * apexOf(full).height);
      for (const swing of ['three-quarter', 'half', 'part'] as const)
        expect(windowOf(loft, swing)).toEqual(full);
    }
  });
});
