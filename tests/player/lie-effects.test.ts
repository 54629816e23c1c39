/** What lies allow and what they take: the rules of thumb that every table entry must keep. */

import { describe, expect, it } from 'vitest';
import { LIE_NAMES } from '../../core/ground/lies.ts';
import { lieEffect, lieEffectsFor } from '../../core/player/lie-effects.ts';
import type { Club, Swing } from '../../core/player/model.ts';
import { STANDARD_BAG } from '../../core/player/presets.ts';

function club(name: string): Club {
  const found = STANDARD_BAG.find((candidate) => candidate.name === name);
  if (found === undefined) throw new Error(`no ${name} in the standard bag`);
  return found;
}

const swings = STANDARD_BAG.flatMap((c) => c.swings.map((swing): readonly [Club, Swing] => [c, swing]));

describe('what is played from where', () => {
  it('plays the driver from the tee only', () => {
    for (const lie of LIE_NAMES) {
      expect(lieEffect(club('Driver'), 'full', lie).playable).toBe(lie === 'tee');
    }
  });

  it('plays nothing but the putter from a green, and nothing from a penalty area or out of bounds', () => {
    for (const [c, swing] of swings) {
      expect(lieEffect(c, swing, 'green').playable).toBe(c.kind === 'putter');
      for (const lie of ['penaltyYellow', 'penaltyRed', 'outOfBounds'] as const) {
        expect(lieEffect(c, swing, lie).playable).toBe(false);
      }
    }
  });

  it('leaves the woods in the bag in sand, long rough and trees', () => {
    for (const lie of ['bunker', 'longRough', 'woods'] as const) {
      for (const name of ['3-wood', '5-wood'])
        expect(lieEffect(club(name), 'full', lie).playable).toBe(false);
    }
    expect(lieEffect(club('3-wood'), 'full', 'rough').playable).toBe(true);
  });

  it('allows punches and mid-irons under trees, but no full long iron', () => {
    expect(lieEffect(club('5-iron'), 'punch', 'woods').playable).toBe(true);
    expect(lieEffect(club('4-hybrid'), 'punch', 'woods').playable).toBe(true);
    expect(lieEffect(club('7-iron'), 'full', 'woods').playable).toBe(true);
    expect(lieEffect(club('5-iron'), 'full', 'woods').playable).toBe(false);
  });

  it('always leaves something to play from every lie that can be played from', () => {
    for (const lie of ['tee', 'fairway', 'path', 'rough', 'longRough', 'bunker', 'woods', 'green'] as const) {
      expect(swings.some(([c, swing]) => lieEffect(c, swing, lie).playable)).toBe(true);
    }
  });
});

describe('what a lie takes', () => {
  it('never lengthens a shot, narrows it or takes poor strikes away', () => {
    for (const [c, swing] of swings) {
      for (const lie of LIE_NAMES) {
        const effect = lieEffect(c, swing, lie);
        if (!effect.playable) continue;
        expect(effect.carryFactor).toBeGreaterThan(0.5);
        expect(effect.carryFactor).toBeLessThanOrEqual(1);
        expect(effect.carrySdFactor).toBeGreaterThanOrEqual(1);
        expect(effect.directionSdFactor).toBeGreaterThanOrEqual(1);
        expect(effect.poorShareAdded).toBeGreaterThanOrEqual(0);
        expect(effect.poorShareAdded).toBeLessThan(0.4);
      }
    }
  });

  it('grows from tee over fairway and rough to long rough', () => {
    for (const name of ['5-iron', '7-iron', '9-iron', 'Sand wedge']) {
      const along = (['tee', 'fairway', 'rough', 'longRough'] as const).map((lie) =>
        lieEffect(club(name), 'full', lie),
      );
      for (let i = 1; i < along.length; i += 1) {
        expect(along[i]!.carryFactor).toBeLessThanOrEqual(along[i - 1]!.carryFactor);
        expect(along[i]!.carrySdFactor).toBeGreaterThanOrEqual(along[i - 1]!.carrySdFactor);
        expect(along[i]!.poorShareAdded).toBeGreaterThan(along[i - 1]!.poorShareAdded);
      }
    }
  });

  it('costs a wedge less than a long iron', () => {
    for (const lie of ['rough', 'longRough'] as const) {
      const wedge = lieEffect(club('Sand wedge'), 'full', lie);
      const iron = lieEffect(club('5-iron'), 'full', lie);
      expect(wedge.carryFactor).toBeGreaterThan(iron.carryFactor);
      expect(wedge.poorShareAdded).toBeLessThan(iron.poorShareAdded);
    }
  });

  it('treats a path as fairway (free relief, Rule 16.1)', () => {
    for (const [c, swing] of swings) {
      expect(lieEffect(c, swing, 'path')).toEqual(lieEffect(c, swing, 'fairway'));
    }
  });

  it('adds fewer poor strikes for a better player and changes nothing else', () => {
    const better = lieEffectsFor(0)(club('7-iron'), 'full', 'longRough');
    const weaker = lieEffectsFor(28)(club('7-iron'), 'full', 'longRough');
    expect(better.poorShareAdded).toBeLessThan(weaker.poorShareAdded);
    expect({ ...better, poorShareAdded: 0 }).toEqual({ ...weaker, poorShareAdded: 0 });
  });
});
