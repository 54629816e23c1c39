/** The rolling ball against closed forms and against itself with smaller steps. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aimPutt } from '../../core/green/aim-putt.ts';
import { captureHalfWidthM, captureSpeedMps } from '../../core/green/capture-speed.ts';
import { PuttRoller } from '../../core/green/roll-putt.ts';
import { rollDeceleration } from '../../core/green/stimpmeter.ts';
import { LEVEL_GREEN, planeGreen, SLOPE_PULL_MPS2 } from '../../core/green/surface.ts';

const FAR = 40;

describe('a rolling ball', () => {
  it('on the level goes straight for v² / 2a', () => {
    const a = rollDeceleration(9);
    const roller = new PuttRoller(LEVEL_GREEN, a);
    for (const speed of [0.3, 1, 2.5, 4]) {
      roller.roll(0, -FAR, speed, 0.4);
      const run = Math.hypot(roller.endX, roller.endY + FAR);
      expect(run).toBeCloseTo(speed ** 2 / (2 * a), 4);
      expect(Math.atan2(roller.endX, roller.endY + FAR)).toBeCloseTo(0.4, 8);
      expect(roller.timeS).toBeCloseTo(speed / a, 3);
    }
  });

  it('is pulled down a slope by 5/7 of what slides down it (solid sphere, I = 2/5 m r²)', () => {
    expect(SLOPE_PULL_MPS2).toBeCloseTo(9.80665 / (1 + 2 / 5), 9);
  });

  it('straight up and down a plane goes for v² / 2(a ± 5/7 g sin)', () => {
    const a = rollDeceleration(10);
    const slope = 0.03;
    const angle = Math.atan(slope);
    const roller = new PuttRoller(planeGreen(slope, Math.PI), a);
    for (const [bearing, sign] of [
      [0, 1],
      [Math.PI, -1],
    ] as const) {
      roller.roll(FAR / 2, 0, 1.5, bearing);
      // Along the slope, then seen from above; the speed given is that seen from above too.
      const slowing = a * Math.cos(angle) + sign * SLOPE_PULL_MPS2 * Math.sin(angle);
      const along = (1.5 / Math.cos(angle)) ** 2 / (2 * slowing);
      expect(Math.abs(roller.endY)).toBeGreaterThan(1);
      // The level projection of friction differs from the exact one by the cosine: a thousandth here.
      expect(Math.abs(roller.endY) / (along * Math.cos(angle)) - 1).toBeLessThan(2e-3);
    }
  });

  it('across a slope as steep as its friction keeps v (1 + cos of the angle to the fall line)', () => {
    // Classical problem of a body on a rough incline with tan = μ: v (1 + cos ψ) stays the same, so a ball sent level
    // across ends running down the fall line at half its speed.
    const pull = 0.05 * SLOPE_PULL_MPS2;
    const slope = 0.05;
    const roller = new PuttRoller(planeGreen(slope, 0), pull / Math.sqrt(1 + slope * slope), 1e-7);
    roller.roll(-FAR, -10, 2, Math.PI / 2);
    expect(roller.ranAway).toBe(true);
    // Read from a run cut off by the distance limit: the speed after 50 m of way.
    const far = new PuttRoller(planeGreen(slope, 0), pull / Math.sqrt(1 + slope * slope), 1e-7);
    far.roll(0, 0.2, 2, Math.PI / 2);
    expect(far.ranAway).toBe(true);
    // Sideways way of the same problem: x = v² (4/3) / (2 pull) in the limit (integral of v sin ψ dt, from v (1 + cos ψ) = v0).
    expect(far.endX).toBeCloseTo(((4 / 3) * 2 ** 2) / (2 * pull), 0);
  });

  it('ends within a millimetre or two of where steps a thousand times more careful end', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        fc.double({ min: 0, max: 0.035, noNaN: true }),
        fc.double({ min: 7, max: 12, noNaN: true }),
        (speed, bearing, slope, greenSpeed) => {
          const surface = planeGreen(slope, 1);
          const a = rollDeceleration(greenSpeed);
          const coarse = new PuttRoller(surface, a);
          const fine = new PuttRoller(surface, a, 1e-7);
          coarse.roll(FAR / 2, 0, speed, bearing);
          fine.roll(FAR / 2, 0, speed, bearing);
          if (fine.ranAway || fine.holed || coarse.holed) return;
          expect(Math.hypot(coarse.endX - fine.endX, coarse.endY - fine.endY)).toBeLessThan(0.003);
        },
      ),
      { numRuns: 200, seed: 4 },
    );
  });

  it('drops when slow over the middle, not when too fast or too far off', () => {
    const a = rollDeceleration(10);
    const roller = new PuttRoller(LEVEL_GREEN, a);
    const send = (arrival: number, offset: number): boolean => {
      roller.roll(offset, -3, Math.sqrt(arrival ** 2 + 6 * a), 0);
      return roller.holed;
    };
    for (const offset of [0, 0.02, 0.035, 0.05]) {
      expect(send(captureSpeedMps(offset) - 0.01, offset)).toBe(true);
      expect(send(captureSpeedMps(offset) + 0.01, offset)).toBe(false);
    }
    expect(send(0.05, 0.056)).toBe(false);
    expect(captureHalfWidthM(captureSpeedMps(0.03))).toBeCloseTo(0.03, 12);
  });

  it('stops in the hole when it runs out of speed over it', () => {
    const a = rollDeceleration(10);
    const roller = new PuttRoller(LEVEL_GREEN, a);
    roller.roll(0, -3, Math.sqrt(2 * a * 2.97), 0);
    expect(roller.holed).toBe(true);
    roller.roll(0, -3, Math.sqrt(2 * a * 2.9), 0);
    expect(roller.holed).toBe(false);
    expect(roller.endY).toBeCloseTo(-0.1, 3);
  });
});

describe('the intended putt', () => {
  it('passes over the middle of the hole, for any slope that holds a ball', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        fc.double({ min: 0, max: 0.03, noNaN: true }),
        fc.double({ min: 7, max: 12, noNaN: true }),
        (distance, from, slope, greenSpeed) => {
          const surface = planeGreen(slope, 0);
          const a = rollDeceleration(greenSpeed);
          const [x, y] = [distance * Math.sin(from), distance * Math.cos(from)];
          const putt = aimPutt(surface, a, x, y, 0.3);
          const roller = new PuttRoller(surface, a, 1e-6);
          roller.roll(x, y, putt.speedMps, putt.bearing);
          expect(roller.nearestM).toBeLessThan(0.012);
          expect(roller.holed).toBe(true);
        },
      ),
      { numRuns: 200, seed: 11 },
    );
  });

  it('is found on slopes so steep that nearly all balls come down the fall line', () => {
    const a = rollDeceleration(10);
    const surface = planeGreen(0.06, 0);
    const roller = new PuttRoller(surface, a, 1e-6);
    for (let k = 0; k < 32; k++) {
      const from = (k * Math.PI) / 16;
      for (const distance of [1, 4, 10]) {
        const [x, y] = [distance * Math.sin(from), distance * Math.cos(from)];
        const putt = aimPutt(surface, a, x, y, 0.3);
        roller.roll(x, y, putt.speedMps, putt.bearing);
        expect(roller.holed).toBe(true);
      }
    }
  });

  it('is faster uphill and slower downhill, and aims above the hole on a side slope', () => {
    const a = rollDeceleration(10);
    const surface = planeGreen(0.02, 0);
    const level = aimPutt(LEVEL_GREEN, a, 0, -4, 0.3);
    expect(aimPutt(surface, a, 0, -4, 0.3).speedMps).toBeLessThan(level.speedMps);
    expect(aimPutt(surface, a, 0, 4, 0.3).speedMps).toBeGreaterThan(level.speedMps);
    // Ball west of the hole, green falling to the north, which is left: aim right.
    expect(aimPutt(surface, a, -4, 0, 0.3).bearing).toBeGreaterThan(Math.PI / 2 + 0.02);
    // A faster green takes more break.
    const slow = aimPutt(surface, rollDeceleration(8), -4, 0, 0.3).bearing;
    const fast = aimPutt(surface, rollDeceleration(12), -4, 0, 0.3).bearing;
    expect(fast).toBeGreaterThan(slow);
  });
});
