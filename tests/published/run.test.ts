/** The run after landing against what is published of it. */

import { describe, expect, it } from 'vitest';
import { airOf, STANDARD_WEATHER } from '../../core/flight/air.ts';
import { BALL_RADIUS_M, flyBall } from '../../core/flight/ball-flight.ts';
import { bounceOff, restitution, turfLean } from '../../core/ground-run/bounce.ts';
import { runAfterLanding, type Landing } from '../../core/ground-run/run.ts';
import { runGround } from '../../core/ground-run/surfaces.ts';
import { Lie } from '../../core/ground/lies.ts';

const DEGREE = Math.PI / 180;
const YARD_M = 0.9144;
const GREEN = { give: 1, bounce: 1, glide: 1 };

function landingOf(speedMps: number, angleDeg: number, spin: number): Landing {
  const flight = flyBall(
    { speedMps, angle: angleDeg * DEGREE, direction: 0, spin, tilt: 0 },
    airOf(STANDARD_WEATHER),
  );
  return { speedMps: flight.landingSpeedMps, descent: flight.descent, backspin: flight.landingSpin };
}

describe('bounce (Penner 2002, "The run of a golf ball", second-hand)', () => {
  it('has the published restitution: 0.510 - 0.0375 v + 0.000903 v², 0.120 from 20 m/s', () => {
    expect(restitution(0)).toBe(0.51);
    expect(restitution(10)).toBeCloseTo(0.2253, 4);
    expect(restitution(20)).toBeCloseTo(0.1212, 4);
    expect(restitution(25)).toBe(0.12);
  });

  it('has the published lean: 15.4 degrees for 18.6 m/s at 44.4 degrees, in proportion to both', () => {
    expect(turfLean(18.6, 44.4 * DEGREE) / DEGREE).toBeCloseTo(15.4, 9);
    expect(turfLean(9.3, 22.2 * DEGREE) / DEGREE).toBeCloseTo(15.4 / 4, 9);
  });

  it('rolls out of a steep impact with 5/7 u - 2/7 r ω in the leaning frame', () => {
    const speed = 18.6;
    const angle = 44.4 * DEGREE;
    const lean = 15.4 * DEGREE;
    const spin = 100;
    const after = bounceOff(
      { along: speed * Math.sin(angle), vertical: speed * Math.cos(angle), backspin: spin },
      GREEN,
    );
    const u = (5 / 7) * speed * Math.sin(angle - lean) - (2 / 7) * BALL_RADIUS_M * spin;
    const up = restitution(speed * Math.cos(angle - lean)) * speed * Math.cos(angle - lean);
    expect(after.along).toBeCloseTo(u * Math.cos(lean) - up * Math.sin(lean), 9);
    expect(after.vertical).toBeCloseTo(u * Math.sin(lean) + up * Math.cos(lean), 9);
    expect(after.backspin).toBeCloseTo(-u / BALL_RADIUS_M, 9);
  });

  it('slides where friction is too little: μ N (1 + e) off the speed, with μ = 0.40', () => {
    const after = bounceOff({ along: 20, vertical: 3, backspin: 0 }, { ...GREEN, give: 0 });
    expect(after.along).toBeCloseTo(20 - 0.4 * 3 * (1 + restitution(3)), 9);
    expect(after.backspin).toBeCloseTo((-2.5 * 0.4 * 3 * (1 + restitution(3))) / BALL_RADIUS_M, 9);
  });

  it('a 9-iron with 129 rev/s runs on, with 159 less, with 191 it ends up moving backwards (his figure 8; second-hand)', () => {
    // Speed and angle of his 9-iron are not known here: 44 m/s at 25 degrees, on the turf of his measurements.
    const run = (revolutions: number) =>
      runAfterLanding(landingOf(44, 25, revolutions * 2 * Math.PI), runGround(Lie.green, 'firm', 6));
    expect(run(129).totalM).toBeGreaterThan(1);
    expect(run(159).totalM).toBeLessThan(run(129).totalM);
    expect(run(191).totalM).toBeLessThan(run(159).totalM);
    expect(run(191).rollSpeedMps).toBeLessThan(0);
  });
});

describe('runs of course rating (USGA Course Rating System; roll from memory, low confidence)', () => {
  // Scratch players: 230 yd of carry and 20 of roll; bogey players: 180 and 20. Ordinary fairways.
  it.each([
    ['scratch', 66, 12, 2700],
    ['bogey', 56, 13, 2900],
  ])('a %s player’s drive rolls about 20 yd', (_, speed, angle, rpm) => {
    const run = runAfterLanding(
      landingOf(speed, angle, (rpm * 2 * Math.PI) / 60),
      runGround(Lie.fairway, 'medium', 9),
    );
    expect(Math.abs(run.totalM / YARD_M - 20)).toBeLessThan(6);
  });
});
