/** Which clubs and aims are tried from a spot. */

import { runShare } from '../../core/flight/shot-law.ts';
import { describe, expect, it } from 'vitest';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import { lieAt } from '../../core/ground/hole-ground.ts';
import {
  aimSpot,
  neighbouringChoices,
  OPEN_FAN,
  sensibleChoices,
  TREES_FAN,
} from '../../core/plan/choices.ts';
import type { Choice } from '../../core/plan/model.ts';
import { deriveSwing } from '../../core/player/part-swing.ts';
import { box, flatGround, fourClubs, ROUGH_LIES, statedPlayer, ordinaryBook } from './synthetic.ts';

const clubs = fourClubs();
const iron = clubs.find((spread) => spread.club.name === 'Iron')!;
const player = statedPlayer({
  spreads: [...clubs, deriveSwing(iron, 'punch'), deriveSwing(iron, 'curved-left')],
  lies: {
    ...ROUGH_LIES,
    longRough: {
      playable: true,
      carryFactor: 0.7,
      carrySdFactor: 2,
      directionSdFactor: 2,
      poorShareAdded: 0.1,
    },
    bunker: { playable: false, carryFactor: 1, carrySdFactor: 1, directionSdFactor: 1, poorShareAdded: 0 },
  },
});
const book = ordinaryBook(player);
const pin = { x: 0, y: 0 };
const open = flatGround({ lengthM: 250 });

function choicesFrom(y: number, lie: LieCode, ground = open, fan = OPEN_FAN): Choice[] {
  return sensibleChoices(book, ground, { x: 0, y }, lie, pin, fan);
}

function named(choices: readonly Choice[]): Set<string> {
  return new Set(
    choices.map((choice) => {
      const spread = player.spreads[choice.spreadIndex]!;
      return `${spread.club.name} ${spread.swing}`;
    }),
  );
}

describe('sensible choices', () => {
  it('are every club that does not fly far past the hole', () => {
    expect(named(choicesFrom(-250, Lie.fairway))).toEqual(new Set(['Wood full', 'Iron full', 'Wedge full']));
    // 125 m: the iron's 140 is within 12 % and 12 m of it, the wood's 190 is not.
    expect(named(choicesFrom(-125, Lie.fairway))).toEqual(new Set(['Iron full', 'Wedge full']));
    expect(named(choicesFrom(-40, Lie.fairway))).toEqual(new Set(['Wedge part']));
  });

  it('leave punches for rough and trees, and clubs in the bag that the lie forbids', () => {
    expect(named(choicesFrom(-250, Lie.rough))).toContain('Iron punch');
    expect(named(choicesFrom(-250, Lie.woods))).toContain('Iron punch');
    expect(named(choicesFrom(-250, Lie.fairway))).not.toContain('Iron punch');
  });

  it('bend a shot in woods, and round a tree that stands in the way', () => {
    const canopy = { topM: 12, baseM: 2, densityPerM: 0.12 };
    const treeAt = (x: number, y: number) =>
      flatGround({ lengthM: 250, trees: [{ x, y, radiusM: 4, canopy }] });
    const bent = 'Iron curved-left';
    expect(named(choicesFrom(-250, Lie.woods))).toContain(bent);
    expect(named(choicesFrom(-250, Lie.rough))).not.toContain(bent);
    expect(named(choicesFrom(-250, Lie.fairway, treeAt(0, -210)))).toContain(bent);
    expect(named(choicesFrom(-250, Lie.fairway, treeAt(45, -210)))).not.toContain(bent);
    expect(named(choicesFrom(-250, Lie.fairway, treeAt(0, -100)))).not.toContain(bent);
    expect(choicesFrom(-250, Lie.bunker)).toEqual([]);
  });

  it('fan out evenly to both sides of the hole, all round in trees', () => {
    const wedge = choicesFrom(-250, Lie.fairway).filter((choice) => choice.carryM === 90);
    expect(wedge).toHaveLength(19);
    const degrees = wedge.map((choice) => Math.round((choice.bearing * 180) / Math.PI));
    expect([Math.min(...degrees), Math.max(...degrees)]).toEqual([-54, 54]);
    expect(degrees).toContain(0);
    // The wood's farthest aims would leave the map.
    const wood = choicesFrom(-250, Lie.fairway).filter((choice) => choice.carryM === 190);
    expect(wood.every((choice) => Math.abs(190 * Math.sin(choice.bearing)) < 81)).toBe(true);
    const allRound = choicesFrom(-125, Lie.woods, open, TREES_FAN).filter((choice) => choice.carryM > 100);
    expect(Math.max(...allRound.map((choice) => Math.cos(choice.bearing)))).toBeCloseTo(1, 9);
    expect(Math.min(...allRound.map((choice) => Math.cos(choice.bearing)))).toBeCloseTo(-1, 9);
  });

  it('do not aim into water, trees or out of bounds while another aim is to be had', () => {
    const ground = flatGround({
      lengthM: 250,
      patches: [
        box('penalty-red', 5, -120, 60, -40),
        box('woods', -60, -120, -30, -40),
        box('boundary', -55, -330, 55, 60),
      ],
    });
    const choices = choicesFrom(-250, Lie.fairway, ground);
    expect(choices.length).toBeGreaterThan(5);
    for (const choice of choices) {
      const at = aimSpot({ x: 0, y: -250 }, choice);
      expect([Lie.rough, Lie.green, Lie.fairway, Lie.tee]).toContain(lieAt(ground, at.x, at.y));
    }
    // Water everywhere that the clubs reach: then every aim counts again.
    const wet = flatGround({ lengthM: 250, patches: [box('penalty-red', -200, -249, 200, -20)] });
    expect(named(choicesFrom(-250, Lie.fairway, wet))).toContain('Wood full');
  });

  it('carry what the lie lets the club carry', () => {
    const fromRough = choicesFrom(-250, Lie.longRough).find((choice) => choice.spreadIndex === 0)!;
    expect(fromRough.carryM).toBeCloseTo(0.7 * 190, 9);
  });

  it('hit part swings that stop around the hole, no shorter than 1 m and no longer than the swing', () => {
    for (const y of [-80, -40, -10, -3]) {
      const parts = choicesFrom(y, Lie.fairway).filter(
        (choice) => player.spreads[choice.spreadIndex]!.swing === 'part',
      );
      expect(parts.length).toBeGreaterThan(2);
      for (const { carryM } of parts) {
        expect(carryM).toBeGreaterThanOrEqual(1);
        expect(carryM).toBeLessThanOrEqual(0.95 * 90);
        const index = player.spreads.findIndex((spread) => spread.swing === 'part');
        const share = runShare(book.lawOf(index, Lie.fairway, carryM)!, Lie.green);
        expect(Math.abs(carryM * (1 + share) + y)).toBeLessThan(4 + 0.15 * -y);
      }
    }
  });

  it('in trees include short ways out to all sides', () => {
    const ways = choicesFrom(-250, Lie.woods, open, TREES_FAN).filter((choice) => choice.carryM < 40);
    expect(new Set(ways.map((choice) => choice.carryM))).toEqual(new Set([15, 35]));
    expect(ways.some((choice) => Math.cos(choice.bearing) < -0.99)).toBe(true);
  });
});

describe('neighbours of a choice', () => {
  it('aim a step to either side; part swings also carry a little more and less', () => {
    const full = { spreadIndex: 0, bearing: 0.2, carryM: 190 };
    expect(neighbouringChoices(player, full, 0.1).map((choice) => choice.bearing)).toEqual([
      0.1,
      expect.closeTo(0.3),
    ]);
    const index = player.spreads.findIndex((spread) => spread.swing === 'part');
    const part = neighbouringChoices(player, { spreadIndex: index, bearing: 0, carryM: 50 }, 0.1);
    expect(part.map((choice) => choice.carryM)).toEqual([50, 50, expect.closeTo(46.5), expect.closeTo(53.5)]);
    const longest = neighbouringChoices(player, { spreadIndex: index, bearing: 0, carryM: 85 }, 0.1);
    expect(Math.max(...longest.map((choice) => choice.carryM))).toBeLessThanOrEqual(85.5);
  });
});

describe('the point aimed at', () => {
  it('lies at the carry along the bearing, clockwise from north', () => {
    const at = aimSpot({ x: 3, y: -7 }, { spreadIndex: 0, bearing: Math.PI / 2, carryM: 100 });
    expect(at.x).toBeCloseTo(103, 9);
    expect(at.y).toBeCloseTo(-7, 9);
  });
});

describe('the book of laws', () => {
  it('keeps one law per spread, lie and metre of carry, a quarter of a metre for chips', () => {
    const index = player.spreads.findIndex((spread) => spread.swing === 'part');
    expect(book.lawOf(index, Lie.rough, 30.2)).toBe(book.lawOf(index, Lie.rough, 29.8));
    expect(book.lawOf(index, Lie.rough, 30)!.carryMean).toBe(30);
    expect(book.lawOf(index, Lie.rough, 31)!.carryMean).toBe(31);
    expect(book.lawOf(index, Lie.rough, 30)).not.toEqual(book.lawOf(index, Lie.fairway, 30));
    expect(book.lawOf(0, Lie.fairway, 10)).toBe(book.lawOf(0, Lie.fairway, 300));
    expect(book.lawOf(0, Lie.bunker, 190)).toBeNull();
    // A wish below the shortest part swing is raised to it.
    expect(book.lawOf(index, Lie.rough, 0.4)!.carryMean).toBe(1);
    expect(book.lawOf(index, Lie.rough, 5.3)!.carryMean).toBe(5.25);
  });
});
