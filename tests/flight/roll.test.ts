/** Bounce and roll: what the descent and each ground leave of the run. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptAfterBounce, ROLL_SD_SHARE, runCost, runShare } from '../../core/flight/roll.ts';
import { ballWindow } from '../../core/flight/trajectory.ts';
import { Lie, LIE_NAMES } from '../../core/ground/lies.ts';

const DEGREE = Math.PI / 180;

describe('run on level fairway', () => {
  it('is a tenth of a driver’s carry, a twenty-fifth of a mid-iron’s, a hundredth of a wedge’s', () => {
    // Common practice, no source; to within one in a hundred of carry.
    expect(Math.abs(runShare(Math.tan(37 * DEGREE)) - 0.1)).toBeLessThan(0.01);
    expect(Math.abs(runShare(Math.tan(46 * DEGREE)) - 0.04)).toBeLessThan(0.01);
    expect(Math.abs(runShare(Math.tan(53 * DEGREE)) - 0.01)).toBeLessThan(0.01);
  });

  it('is longer the less loft a club has, and longer for a punch', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 7, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (loftDeg, more) => {
          const low = runShare(ballWindow({ swing: 'full', club: { loftDeg } }).tanDescent);
          const high = runShare(ballWindow({ swing: 'full', club: { loftDeg: loftDeg + more } }).tanDescent);
          const punched = runShare(ballWindow({ swing: 'punch', club: { loftDeg } }).tanDescent);
          // Below about 55° of loft; beyond it the floor of a hundredth holds.
          if (loftDeg < 50) expect(low).toBeGreaterThan(high);
          else expect(low).toBeGreaterThanOrEqual(high);
          expect(punched).toBeGreaterThan(low);
        },
      ),
      { numRuns: 60, seed: 51 },
    );
  });

  it('never runs backwards, even from straight above', () => {
    for (const tan of [2, 5, 1000]) expect(runShare(tan)).toBe(0.01);
  });

  it('scatters by about a third of itself', () => {
    expect(ROLL_SD_SHARE).toBeGreaterThan(0.2);
    expect(ROLL_SD_SHARE).toBeLessThan(0.5);
  });
});

describe('the ground’s share', () => {
  it('is whole on fairway, which is the measure', () => {
    expect(keptAfterBounce(Lie.fairway)).toBe(1);
    expect(runCost(Lie.fairway)).toBe(1);
  });

  it('is smaller the longer the grass', () => {
    const grass = [Lie.fairway, Lie.rough, Lie.longRough];
    for (let i = 1; i < grass.length; i++) {
      expect(keptAfterBounce(grass[i]!)).toBeLessThan(keptAfterBounce(grass[i - 1]!));
      expect(runCost(grass[i]!)).toBeGreaterThan(runCost(grass[i - 1]!));
    }
    expect(runCost(Lie.path)).toBeLessThan(1);
    expect(keptAfterBounce(Lie.path)).toBeGreaterThan(1);
  });

  it('is nothing in sand, water and out of bounds', () => {
    for (const lie of [Lie.bunker, Lie.penaltyYellow, Lie.penaltyRed, Lie.outOfBounds]) {
      expect(keptAfterBounce(lie)).toBe(0);
      expect(runCost(lie)).toBe(Infinity);
    }
  });

  it('is known for every lie', () => {
    LIE_NAMES.forEach((name, code) => {
      expect([name, keptAfterBounce(code) >= 0]).toEqual([name, true]);
      expect([name, runCost(code) > 0]).toEqual([name, true]);
    });
  });
});
