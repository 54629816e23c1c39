/**
 * Share of balls beyond a straight boundary parallel to the aim against the normal distribution function (jstat).
 * A ball that carries c at an angle a to the aim lands c sin a aside.
 */

import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { simulateChoice } from '../../core/plan/simulate.ts';
import { box, mustPrepare, stated, statedPlayer, type StatedSpread } from '../plan/synthetic.ts';

const samples = 16_384;
const carryM = 180;

function cdf(z: number): number {
  return jStat.normal.cdf(z, 0, 1);
}

/** Share out of bounds beyond `aside` metres right (or, negative, left) of the aim, played north from the tee. */
function simulated(spread: Partial<StatedSpread>, aside: number): number {
  const club = stated({ club: 'Club', carryM, carrySd: 0, directionSd: 0.06, ...spread });
  const out =
    aside > 0 ? box('out-of-bounds', aside, -400, 300, 200) : box('out-of-bounds', -300, -400, aside, 200);
  const hole = mustPrepare({ lengthM: 250, patches: [out] }, statedPlayer({ spreads: [club] }));
  const choice = { spreadIndex: 0, bearing: 0, carryM };
  return simulateChoice(hole, hole.tee, choice, { samples, rolls: false })!.endShare.outOfBounds;
}

function fourErrors(share: number): number {
  return 4 * Math.sqrt((share * (1 - share)) / samples);
}

describe('a straight boundary', () => {
  it.each([2, 6, 11, 18, 25, -6, -18])('%d m aside takes the tail of the normal law', (aside) => {
    // Every ball carries alike, so the share is exactly that of angles beyond asin(aside / carry).
    const expected = cdf(-Math.asin(Math.abs(aside) / carryM) / 0.06);
    expect(Math.abs(simulated({}, aside) - expected)).toBeLessThan(fourErrors(expected));
  });

  it('is nearer for a player with a bias towards it, farther for one away from it', () => {
    for (const directionMean of [0.04, -0.04]) {
      const expected = cdf(-(Math.asin(12 / carryM) - directionMean) / 0.06);
      expect(Math.abs(simulated({ directionMean }, 12) - expected)).toBeLessThan(fourErrors(expected));
    }
  });

  it.each([0, 0.6, -0.6])('takes the mean of that over carries, correlation %d', (correlation) => {
    const carrySd = 15;
    const own = 0.06 * Math.sqrt(1 - correlation ** 2);
    // Trapezium rule over carry's standard normal from -6 to 6: its error is far below the binomial one.
    let expected = 0;
    const step = 0.01;
    for (let z = -6; z <= 6; z += step) {
      const beyond = cdf(-(Math.asin(12 / (carryM + carrySd * z)) - 0.06 * correlation * z) / own);
      expected += step * jStat.normal.pdf(z, 0, 1) * beyond;
    }
    expect(Math.abs(simulated({ carrySd, correlation }, 12) - expected)).toBeLessThan(fourErrors(expected));
  });

  it('takes more from a wider spread', () => {
    const shares = [0.03, 0.06, 0.09].map((directionSd) => simulated({ directionSd }, 14));
    expect(shares[0]!).toBeLessThan(shares[1]!);
    expect(shares[1]!).toBeLessThan(shares[2]!);
  });

  it('takes the poor strikes’ tail for their share of shots', () => {
    const poor = { carryShareMean: 1, carryShareSd: 0, directionSd: 0.2 };
    const angle = Math.asin(14 / carryM);
    const expected = 0.75 * cdf(-angle / 0.06) + 0.25 * cdf(-angle / 0.2);
    expect(Math.abs(simulated({ poorShare: 0.25, poor }, 14) - expected)).toBeLessThan(fourErrors(expected));
  });
});
