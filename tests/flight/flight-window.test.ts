/** The height of a ball along its way, as the planner reads it. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import { apexOf, type BallWindow, descentShare, heightAlong } from '../../core/flight/flight-window.ts';
import { presetPlayer } from '../../core/player/presets.ts';

/** Those of all clubs and swings of two players, with wind from all sides. */
const windows: readonly BallWindow[] = [2, 26].flatMap((handicap) =>
  bagFlights(presetPlayer({ handicap, group: 'men' }).spreads, {
    ...DEFAULT_CONDITIONS,
    wind: { speedMps: 6, fromDeg: 0, gustSdMps: 0 },
  }).flights.flatMap((sizes) => sizes.flatMap((flight) => flight.windows)),
);
const anyWindow = fc.constantFrom(...windows);
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

  it('leaves and comes down at the angles of its cubic', () => {
    fc.assert(
      fc.property(anyWindow, anyCarry, (window, carry) => {
        const step = 1e-6 * carry;
        expect(heightAlong(window, carry, step) / step).toBeCloseTo(window.tanLaunch, 4);
        // The cubic's own end; the integrated descent is told apart from it.
        expect(heightAlong(window, carry, carry - step) / step).toBeCloseTo(
          window.tanLaunch * (1 + window.skew),
          4,
        );
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

describe('the way down', () => {
  it('is where the height is passed again, or a little before', () => {
    fc.assert(
      fc.property(anyWindow, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (window, share) => {
        const height = share * window.apexHeight;
        const f = descentShare(window, height);
        const there = heightAlong({ tanLaunch: 1, skew: window.skew }, 1, f);
        // The table's next step up: never below the height asked for, and within a step of 1/64 of the apex.
        expect(there).toBeGreaterThan(height - 1e-9);
        expect(there).toBeLessThan(height + window.apexHeight / 64 + 1e-9);
      }),
      { numRuns: 100, seed: 46 },
    );
  });
});
