/** From the player's spread, the swing and the lie to the numbers that a shot is drawn with. */

import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import { runShare, shotLaw, type ShotLaw } from '../../core/flight/shot-law.ts';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import type { ShotSpread } from '../../core/player/model.ts';
import { derivePart, deriveSwing, partSpread } from '../../core/player/part-swing.ts';
import { EVEN_LIES, stated, statedPlayer } from '../plan/synthetic.ts';

const iron = stated({
  club: 'Iron',
  loftDeg: 32,
  carryM: 140,
  carrySd: 9,
  directionMean: 0.02,
  directionSd: 0.07,
  correlation: 0.6,
  poorShare: 0.1,
});
const part = derivePart(iron);
const punch = deriveSwing(iron, 'punch');
const hard = {
  playable: true,
  carryFactor: 0.8,
  carrySdFactor: 1.5,
  directionSdFactor: 1.25,
  poorShareAdded: 0.07,
};
const player = statedPlayer({
  spreads: [iron, part, punch],
  lies: {
    ...EVEN_LIES,
    bunker: hard,
    rough: { ...hard, poorShareAdded: 0.9 },
    woods: { ...hard, playable: false },
  },
});

const ordinary = bagFlights(player.spreads, DEFAULT_CONDITIONS);

function lawOf(spread: ShotSpread, lie: LieCode, carryM = 0, bag = ordinary): ShotLaw {
  const law = shotLaw(player, player.spreads.indexOf(spread), lie, carryM, bag);
  if (law === null) throw new Error('not playable');
  return law;
}

describe('law of a full swing', () => {
  it('from a good lie is the player’s own', () => {
    const law = lawOf(iron, Lie.fairway);
    expect(law).toMatchObject({
      carryMean: 140,
      carrySd: 9,
      directionMean: 0.02,
      directionSd: 0.07,
      correlation: 0.6,
      poorShare: 0.1,
    });
    // The own part of direction completes the correlated one to a variance of 1.
    expect(law.directionOwn ** 2 + law.correlation ** 2).toBeCloseTo(1, 14);
    expect(law.poorCarryMean).toBeCloseTo(140 * iron.poor.carryShareMean, 12);
    expect(law.poorCarrySd).toBeCloseTo(140 * iron.poor.carryShareSd, 12);
    expect(law.poorDirectionSd).toBe(iron.poor.directionSd);
  });

  it('takes over every effect of the lie', () => {
    const law = lawOf(iron, Lie.bunker);
    expect(law.carryMean).toBeCloseTo(140 * 0.8, 12);
    expect(law.carrySd).toBeCloseTo(9 * 0.8 * 1.5, 12);
    expect(law.directionSd).toBeCloseTo(0.07 * 1.25, 12);
    expect(law.poorShare).toBeCloseTo(0.17, 12);
    expect(law.poorCarryMean).toBeCloseTo(140 * 0.8 * iron.poor.carryShareMean, 12);
    expect(law.poorDirectionSd).toBeCloseTo(iron.poor.directionSd * 1.25, 12);
    // The bias is the player's, whatever the lie.
    expect(law.directionMean).toBe(0.02);
  });

  it('is none where the club stays in the bag, and never all poor strikes', () => {
    expect(shotLaw(player, 0, Lie.woods, 0, ordinary)).toBeNull();
    expect(lawOf(iron, Lie.rough).poorShare).toBe(0.6);
  });

  it('runs on farther from rough than from fairway', () => {
    expect(runShare(lawOf(iron, Lie.rough))).toBeGreaterThan(runShare(lawOf(iron, Lie.fairway)));
    expect(runShare(lawOf(iron, Lie.bunker))).toBe(runShare(lawOf(iron, Lie.fairway)));
  });

  it('adds no poor strikes in the fairway where preferred lies are allowed (Model Local Rule E-3)', () => {
    const muddy = statedPlayer({ spreads: [iron], lies: { ...EVEN_LIES, fairway: hard, rough: hard } });
    const rules = { strokeAndDistanceAlternative: false, preferredLies: true };
    const placed = bagFlights(muddy.spreads, { ...DEFAULT_CONDITIONS, rules });
    const poorShare = (lie: LieCode, bag: typeof placed): number => shotLaw(muddy, 0, lie, 0, bag)!.poorShare;
    expect(poorShare(Lie.fairway, ordinary)).toBeCloseTo(0.17, 12);
    expect(poorShare(Lie.fairway, placed)).toBeCloseTo(0.1, 12);
    expect(poorShare(Lie.rough, placed)).toBeCloseTo(0.17, 12);
  });

  it('does not heed the carry asked for', () => {
    expect(lawOf(iron, Lie.fairway, 60)).toEqual(lawOf(iron, Lie.fairway, 140));
  });
});

describe('law of a part swing', () => {
  it('carries what is asked for, up to its longest', () => {
    for (const carry of [5, 40, 100]) expect(lawOf(part, Lie.fairway, carry).carryMean).toBe(carry);
    expect(lawOf(part, Lie.fairway, 500).carryMean).toBe(part.carryMean);
  });

  it('makes up for what the lie takes off, but not for the wider spread', () => {
    const even = lawOf(part, Lie.fairway, 50);
    const sandy = lawOf(part, Lie.bunker, 50);
    expect(sandy.carryMean).toBe(50);
    expect(sandy.carrySd).toBeCloseTo(even.carrySd * 1.5, 12);
  });

  it('spreads as the part swing of the player does: fewer metres, a greater share, the shorter it is', () => {
    let last = lawOf(part, Lie.fairway, 120);
    for (const carry of [90, 60, 30, 15]) {
      const law = lawOf(part, Lie.fairway, carry);
      expect(law.carrySd).toBeCloseTo(partSpread(part, carry).carrySd, 12);
      expect(law.carrySd).toBeLessThan(last.carrySd);
      expect(law.carrySd / law.carryMean).toBeGreaterThan(last.carrySd / last.carryMean);
      expect(law.poorShare).toBeLessThan(last.poorShare);
      last = law;
    }
  });
});

describe('the run of a part swing', () => {
  it('is a smaller share the longer it carries, without jumps between the flights that are kept', () => {
    let last = runShare(lawOf(part, Lie.fairway, 8), Lie.green);
    for (let carry = 9; carry <= 110; carry++) {
      const share = runShare(lawOf(part, Lie.fairway, carry), Lie.green);
      expect(share).toBeLessThan(last + 1e-9);
      // At most one part in eight less for a metre more.
      expect(share).toBeGreaterThan(0.875 * last);
      last = share;
    }
  });
});

describe('law of a punch', () => {
  it('is shorter and lower and runs farther for its length', () => {
    const full = lawOf(iron, Lie.fairway);
    const low = lawOf(punch, Lie.fairway);
    expect(low.carryMean).toBeLessThan(0.7 * full.carryMean);
    expect(low.flight.windows[0]!.tanLaunch).toBeLessThan(0.6 * full.flight.windows[0]!.tanLaunch);
    expect(low.flight.windows[0]!.tanDescent).toBeLessThan(0.6 * full.flight.windows[0]!.tanDescent);
    expect(runShare(low)).toBeGreaterThan(2 * runShare(full));
  });
});
