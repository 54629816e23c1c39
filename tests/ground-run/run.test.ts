/** Bounce and roll: energy, monotony, slopes, and the table against the runs it is made of. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { BALL_MASS_KG, BALL_RADIUS_M } from '../../core/flight/ball-flight.ts';
import { bounceOff, type Motion } from '../../core/ground-run/bounce.ts';
import { LEVEL, LONGEST_ROLL_M, rollOut, runAfterLanding, type Landing } from '../../core/ground-run/run.ts';
import { LEVEL_ROW, RUN_LIES, RUN_SLOPES, runTable } from '../../core/ground-run/run-table.ts';
import { sideSlopeTurn, slopeLoft } from '../../core/ground-run/slope-lie.ts';
import { plugShare, runGround } from '../../core/ground-run/surfaces.ts';
import { PuttRoller } from '../../core/green/roll-putt.ts';
import { planeGreen } from '../../core/green/surface.ts';
import { Lie } from '../../core/ground/lies.ts';

const DEGREE = Math.PI / 180;
const DRIVE: Landing = { speedMps: 27, descent: 38 * DEGREE, backspin: 230 };
const WEDGE: Landing = { speedMps: 22, descent: 48 * DEGREE, backspin: 800 };
const fairway = runGround(Lie.fairway, 'medium', 9);

function energy(motion: Motion): number {
  const inertia = 0.4 * BALL_MASS_KG * BALL_RADIUS_M ** 2;
  return (BALL_MASS_KG * (motion.along ** 2 + motion.vertical ** 2) + inertia * motion.backspin ** 2) / 2;
}

describe('a bounce', () => {
  it('never gains energy', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        fc.double({ min: -500, max: 1200, noNaN: true }),
        fc.constantFrom(Lie.fairway, Lie.rough, Lie.green, Lie.longRough, Lie.woods),
        fc.constantFrom('firm' as const, 'medium' as const, 'soft' as const),
        (along, vertical, backspin, lie, firmness) => {
          const before = { along, vertical, backspin };
          const after = bounceOff(before, runGround(lie, firmness, 9).turf);
          expect(energy(after)).toBeLessThanOrEqual(energy(before) * (1 + 1e-9));
          expect(after.vertical).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 500, seed: 2 },
    );
  });

  it('on a slope is the bounce on the level, turned with the slope', () => {
    for (const rise of [-0.15, 0.08, 0.2]) {
      const slope = Math.atan(rise);
      const speed = 22;
      const angle = 0.8;
      // The impact seen from the slope: its angle from the slope's own upright.
      const level = bounceOff(
        { along: speed * Math.sin(angle - slope), vertical: speed * Math.cos(angle - slope), backspin: 250 },
        fairway.turf,
      );
      const there = bounceOff(
        { along: speed * Math.sin(angle), vertical: speed * Math.cos(angle), backspin: 250 },
        fairway.turf,
        rise,
      );
      expect(there.along).toBeCloseTo(level.along * Math.cos(slope) - level.vertical * Math.sin(slope), 9);
      expect(there.vertical).toBeCloseTo(
        Math.max(0, level.along * Math.sin(slope) + level.vertical * Math.cos(slope)),
        9,
      );
    }
  });

  it('is the same mirrored', () => {
    const turf = fairway.turf;
    const there = bounceOff({ along: 12, vertical: 9, backspin: 300 }, turf);
    const back = bounceOff({ along: -12, vertical: 9, backspin: -300 }, turf);
    expect(back.along).toBeCloseTo(-there.along, 12);
    expect(back.backspin).toBeCloseTo(-there.backspin, 12);
  });
});

describe('a run', () => {
  it('is longer on firmer ground and shorter in rough', () => {
    for (const landing of [DRIVE, { ...WEDGE, backspin: 400 }]) {
      const total = (lie: number, firmness: 'firm' | 'medium' | 'soft'): number =>
        runAfterLanding(landing, runGround(lie, firmness, 9)).totalM;
      expect(total(Lie.fairway, 'firm')).toBeGreaterThan(total(Lie.fairway, 'medium'));
      expect(total(Lie.fairway, 'medium')).toBeGreaterThan(total(Lie.fairway, 'soft'));
      expect(total(Lie.fairway, 'medium')).toBeGreaterThan(total(Lie.rough, 'medium'));
      expect(total(Lie.rough, 'medium')).toBeGreaterThan(total(Lie.longRough, 'medium'));
      expect(total(Lie.path, 'medium')).toBeGreaterThan(total(Lie.fairway, 'medium'));
      expect(total(Lie.bunker, 'medium')).toBe(0);
    }
  });

  it('is shorter with more backspin, steeper descent, and on a slower green', () => {
    const on = (landing: Landing, greenSpeedFt = 9): number =>
      runAfterLanding(landing, runGround(Lie.green, 'medium', greenSpeedFt)).totalM;
    let last = Infinity;
    for (const backspin of [0, 200, 400, 600, 800, 1000]) {
      const run = on({ ...DRIVE, backspin });
      expect(run).toBeLessThanOrEqual(last);
      last = run;
    }
    expect(on({ ...DRIVE, descent: 45 * DEGREE })).toBeLessThan(on(DRIVE));
    expect(on(DRIVE, 8)).toBeLessThan(on(DRIVE, 12));
  });

  it('goes on down a slope, stops sooner up it, and falls off to the low side', () => {
    const on = (along: number, right = 0) => runAfterLanding(DRIVE, fairway, { along, right });
    expect(on(-0.06).totalM).toBeGreaterThan(on(0).totalM);
    expect(on(0.06).totalM).toBeLessThan(on(0).totalM);
    expect(on(0, 0.05).sideM).toBeLessThan(-0.2);
    expect(on(0, -0.05).sideM).toBeCloseTo(-on(0, 0.05).sideM, 9);
    expect(on(0).sideM).toBeCloseTo(0, 12);
  });

  it('meets rising ground sooner: its first bounce is low over it', () => {
    const slope = { along: 0.08, right: 0 };
    const first = bounceOff(
      {
        along: DRIVE.speedMps * Math.cos(DRIVE.descent),
        vertical: DRIVE.speedMps * Math.sin(DRIVE.descent),
        backspin: DRIVE.backspin,
      },
      fairway.turf,
      slope.along,
    );
    // Height over the slope's line: the climb relative to it, squared, over 2 g.
    const climb = first.vertical - slope.along * first.along;
    expect(runAfterLanding(DRIVE, fairway, slope).firstBounceHeightM).toBeCloseTo(climb ** 2 / 19.6133, 9);
  });

  it('rolls to the side as a ball followed step by step does', () => {
    const slope = { along: 0.01, right: 0.02 };
    const roll = rollOut(2, 1.2, slope);
    // The ball goes north, its right is east.
    const roller = new PuttRoller(
      planeGreen(Math.hypot(0.01, 0.02), Math.atan2(-slope.right, -slope.along)),
      1.2,
      1e-7,
    );
    roller.roll(20, 0, 2, 0);
    // The side speed is small, so its square is left out: within a centimetre on a metre and a half.
    expect(Math.abs(roll.along - roller.endY)).toBeLessThan(0.01);
    expect(Math.abs(roll.right - (roller.endX - 20))).toBeLessThan(0.01);
  });

  it('says when the ground is too steep for the ball to stop', () => {
    const steep = rollOut(1, 0.5, { along: -0.2, right: 0 });
    expect(steep.ranAway).toBe(true);
    expect(steep.along).toBe(LONGEST_ROLL_M);
  });
});

describe('the run table', () => {
  it('holds for each lie the run on it: bounces, then the roll by its cost', () => {
    const table = runTable(DRIVE, DEFAULT_CONDITIONS);
    for (const lie of [Lie.fairway, Lie.rough, Lie.green]) {
      const run = runAfterLanding(
        DRIVE,
        runGround(lie, DEFAULT_CONDITIONS.firmness, DEFAULT_CONDITIONS.greenSpeedFt),
        LEVEL,
      );
      const there = LEVEL_ROW * RUN_LIES + lie;
      expect(table.bounceM[there]! + table.rollSquare[there]! / table.costPerM[lie]!).toBeCloseTo(
        run.totalM,
        9,
      );
      expect(table.totalM[lie]).toBe(run.totalM);
    }
    RUN_SLOPES.forEach((along, row) => {
      const run = runAfterLanding(DRIVE, runGround(Lie.fairway, 'medium', 10), { along, right: 0 });
      expect(table.bounceM[row * RUN_LIES + Lie.fairway]).toBeCloseTo(run.bounceM, 9);
    });
    expect(table.sideM[Lie.fairway]!).toBeLessThan(0);
    expect(table.costPerM[Lie.bunker]).toBe(Infinity);
    expect(table.totalM[Lie.penaltyRed]).toBe(0);
  });

  it('plugs more in soft sand and from higher up, never a chip', () => {
    expect(plugShare(8, 'soft')).toBe(0);
    expect(plugShare(20, 'soft')).toBeGreaterThan(plugShare(20, 'medium'));
    expect(plugShare(20, 'medium')).toBeGreaterThan(plugShare(15, 'medium'));
  });
});

describe('a sloping lie', () => {
  it('sends the ball away from the high side, more with more loft', () => {
    // Ground that rises to the right of the aim: ball above the feet of a right-hander, who then pulls it to the left.
    expect(sideSlopeTurn(46 * DEGREE, 0.1)).toBeLessThan(-0.05);
    expect(sideSlopeTurn(46 * DEGREE, -0.1)).toBeCloseTo(-sideSlopeTurn(46 * DEGREE, 0.1), 12);
    expect(Math.abs(sideSlopeTurn(10 * DEGREE, 0.1))).toBeLessThan(Math.abs(sideSlopeTurn(46 * DEGREE, 0.1)));
    expect(slopeLoft(0.5, 0.1)).toBeCloseTo(0.5 + Math.atan(0.1), 12);
  });
});
