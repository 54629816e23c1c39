/** Patterns of one choice, and the balls and ellipses that are drawn. */

import { describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import { lieOfSpot, sampleShot, spreadEllipses } from '../../core/plan/sample.ts';
import { simulateChoice } from '../../core/plan/simulate.ts';
import { box, mustPrepare, stated, statedPlayer, wood } from './synthetic.ts';

const NO_POOR = { carryShareMean: 0.6, carryShareSd: 0.2, directionSd: 0.16 };
const player = statedPlayer({
  spreads: [
    stated({
      club: 'Iron',
      loftDeg: 30,
      carryM: 140,
      carrySd: 8,
      directionMean: 0.02,
      directionSd: 0.05,
      correlation: 0.4,
      poor: NO_POOR,
    }),
  ],
  lies: {
    woods: { playable: false, carryFactor: 1, carrySdFactor: 1, directionSdFactor: 1, poorShareAdded: 0 },
  },
});
const open = mustPrepare({ lengthM: 250 }, player);
const choice = { spreadIndex: 0, bearing: 0.3, carryM: 140 };
const samples = 8192;

describe('a simulated choice', () => {
  const still = simulateChoice(open, open.tee, choice, { samples, rolls: false })!;

  it('lands in the pattern of the player’s law, along and across the aim', () => {
    // Carry c and direction d: along c cos d, across c sin d; for small angles the mean of sin d is that of d.
    const { landingAlong, landingAcross } = still;
    const alongMean = 140 * (1 - (0.05 ** 2 + 0.02 ** 2) / 2);
    const acrossMean = 140 * 0.02 + 0.4 * 8 * 0.05;
    // Four standard errors of independent shots; evenly spread ones are better. 2 cm for third-order terms.
    expect(Math.abs(landingAlong.mean - alongMean)).toBeLessThan((4 * 8) / Math.sqrt(samples) + 0.02);
    expect(Math.abs(landingAcross.mean - acrossMean)).toBeLessThan((4 * 7) / Math.sqrt(samples) + 0.02);
    // The spread of a spread: sd / √(2 n); 1 % for what the angle adds.
    expect(Math.abs(landingAlong.sd / 8 - 1)).toBeLessThan(4 / Math.sqrt(2 * samples) + 0.01);
    expect(Math.abs(landingAcross.sd / 7 - 1)).toBeLessThan(4 / Math.sqrt(2 * samples) + 0.01);
  });

  it('rests where it lands without roll, and farther on with it', () => {
    expect(still.along).toEqual(still.landingAlong);
    expect(still.across).toEqual(still.landingAcross);
    const rolling = simulateChoice(open, open.tee, choice, { samples, rolls: true })!;
    expect(rolling.landingAlong).toEqual(still.landingAlong);
    expect(rolling.along.mean).toBeGreaterThan(still.along.mean + 0.5);
  });

  it('counts every ball once', () => {
    for (const count of [8192, 1500, 100, 7]) {
      const counted = simulateChoice(open, open.tee, choice, { samples: count, rolls: true })!;
      expect(counted.samples).toBe(count);
      expect(Object.values(counted.endShare).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    }
  });

  it('knows balls that trees stopped', () => {
    const woody = mustPrepare(
      { lengthM: 250, patches: [wood(-70, -220, 70, -200, { topM: 80, baseM: 0, densityPerM: 9 })] },
      player,
    );
    const stopped = simulateChoice(woody, woody.tee, choice, { samples: 512, rolls: true })!;
    expect(stopped.stoppedByTrees).toBe(1);
    // It drops a little back from where it struck: into the wood or just before it.
    expect(stopped.endShare.woods + stopped.endShare.rough).toBe(1);
    expect(still.stoppedByTrees).toBe(0);
  });

  it('is none where the club stays in the bag', () => {
    const woody = mustPrepare({ lengthM: 250, patches: [box('woods', -20, -120, 20, -80)] }, player);
    const spot = { x: 0, y: -100 };
    expect(simulateChoice(woody, spot, choice, { samples: 64, rolls: true })).toBeNull();
    expect(sampleShot(woody, spot, choice, 64)).toMatchObject({ count: 0 });
    expect(spreadEllipses(woody, spot, choice, [0.5])).toEqual([]);
  });

  it('is the same for the same seed', () => {
    expect(simulateChoice(open, open.tee, choice, { samples, rolls: false })).toEqual(still);
  });
});

describe('balls for drawing', () => {
  it('are as many as asked for, with a landing, an end and a lie each', () => {
    const sample = sampleShot(open, open.tee, choice, 200);
    expect(sample.count).toBe(200);
    expect([sample.landing.length, sample.end.length, sample.lie.length]).toEqual([400, 400, 200]);
    for (let i = 0; i < 200; i++) {
      const fly = Math.hypot(sample.landing[2 * i]! - open.tee.x, sample.landing[2 * i + 1]! - open.tee.y);
      const rest = Math.hypot(sample.end[2 * i]! - open.tee.x, sample.end[2 * i + 1]! - open.tee.y);
      expect(rest).toBeGreaterThanOrEqual(fly - 1e-3);
      expect(fly).toBeGreaterThan(90);
    }
  });

  it('have a centre that the ellipse has too, its long axis turned the way that carry and direction hang together', () => {
    const [half, most] = spreadEllipses(open, open.tee, choice, [0.5, 0.9]) as [
      ReturnType<typeof spreadEllipses>[number],
      ReturnType<typeof spreadEllipses>[number],
    ];
    expect(half.centre.x).toBeCloseTo(140 * Math.sin(0.32), 6);
    expect(half.centre.y).toBeCloseTo(-250 + 140 * Math.cos(0.32), 6);
    expect(most.centre).toEqual(half.centre);
    expect(most.semiMajorM / half.semiMajorM).toBeCloseTo(Math.sqrt(4.605 / 1.386), 3);
    // 8 m along, 7 m across, correlation 0.4: longer balls go right, so the long axis leans right of the line of play.
    expect(half.semiMajorM).toBeGreaterThan(half.semiMinorM);
    expect(half.majorBearing).toBeGreaterThan(0.32);
    expect(half.majorBearing).toBeLessThan(0.32 + Math.PI / 2);
  });
});

describe('the lie of a spot', () => {
  it('is the tee within half a metre of the marker, whatever is drawn there', () => {
    const bare = mustPrepare({ lengthM: 250, patches: [box('bunker', -6, -256, 6, -244)] }, player);
    expect(lieOfSpot(bare, { x: 0.3, y: -250.3 })).toBe(Lie.tee);
    expect(lieOfSpot(bare, { x: 2, y: -250 })).toBe(Lie.bunker);
  });
});
