/** Out of sand: what clears the lip is on offer, what does not is told, and a pit leaves a way out. */

import { describe, expect, it } from 'vitest';
import { aimedShot } from '../../core/flight/aimed-shot.ts';
import { heightAlong } from '../../core/flight/flight-window.ts';
import { bunkerAt, lipAhead } from '../../core/ground/bunker-lips.ts';
import { Lie } from '../../core/ground/lies.ts';
import { clearsLip, lipBlocks, overLip } from '../../core/plan/bunker-lip.ts';
import { OPEN_FAN, sensibleChoices } from '../../core/plan/choices.ts';
import {
  box,
  flatCourse,
  flatGround,
  fourClubs,
  mustPrepare,
  ordinaryBook,
  type Patch,
  statedPlayer,
} from './synthetic.ts';

const player = statedPlayer({ spreads: fourClubs() });
const book = ordinaryBook(player);
const PIN = { x: 0, y: 0 };
/** A bunker 20 m long on the way to the hole, its far edge 140 m from it. */
const bunker = (lipM?: number): Patch => ({
  ...box('bunker', -10, -160, 10, -140),
  ...(lipM === undefined ? {} : { lipM }),
});
const groundWith = (lipM?: number) => flatGround({ lengthM: 300, patches: [bunker(lipM)] });
const clubsFrom = (lipM: number, y: number): readonly string[] => {
  const choices = sensibleChoices(book, groundWith(lipM), { x: 0.5, y }, Lie.bunker, PIN, OPEN_FAN);
  return [...new Set(choices.map(({ spreadIndex }) => player.spreads[spreadIndex]!.club.name))];
};

describe('the edge of a bunker', () => {
  const lips = groundWith(1.2).lips!;

  it('is as far off as the sand goes on that bearing', () => {
    const lip = bunkerAt(lips, 0, -150)!;
    for (const [degrees, metres] of [
      [0, 10],
      [90, 10],
      [180, 10],
      [45, 10 * Math.SQRT2],
    ] as const) {
      const ahead = lipAhead(lip, 0, -150, (degrees * Math.PI) / 180)!;
      expect(ahead.heightM).toBe(1.2);
      // outlines are kept in degrees with nine decimals, a tenth of a millimetre
      expect(ahead.atM).toBeCloseTo(metres, 2);
    }
    expect(lipAhead(lip, 6, -142, 0)!.atM).toBeCloseTo(2, 2);
  });

  it('is the far one from a place that only the raster takes for sand, and none beside or away from it', () => {
    const lip = bunkerAt(lips, 0, -160.4)!;
    expect(lipAhead(lip, 0, -160.4, 0)!.atM).toBeCloseTo(20.4, 2);
    expect(lipAhead(lip, 0, -160.4, Math.PI)).toBeNull();
    expect(bunkerAt(lips, 0, -100)).toBeUndefined();
  });

  it('stands 0.3 m high where the file does not say (common practice, no source)', () => {
    expect(groundWith().lips![0]!.heightM).toBe(0.3);
  });
});

describe('a flight out of sand', () => {
  const iron = player.spreads.findIndex(({ club, swing }) => club.name === 'Iron' && swing === 'full');
  const law = book.lawOf(iron, Lie.bunker, player.spreads[iron]!.carryMean)!;

  it('clears a lip exactly where its height, less 12 %, is above it by a ball', () => {
    const { window, carryFactor } = aimedShot(law, 0);
    for (const atM of [2, 5, 9]) {
      const height = 0.88 * heightAlong(window, law.carryMean * carryFactor, atM) - 0.02134;
      expect(clearsLip(law, 0, law.carryMean, { heightM: height - 0.001, atM })).toBe(true);
      expect(clearsLip(law, 0, law.carryMean, { heightM: height + 0.001, atM })).toBe(false);
    }
  });

  it('is on offer with an iron from the back of the sand, and with a wedge alone close to the lip', () => {
    expect(clubsFrom(1.2, -158)).toContain('Iron');
    expect(clubsFrom(1.2, -141.5)).not.toContain('Iron');
    expect(clubsFrom(1.2, -141.5)).toContain('Wedge');
    expect(clubsFrom(0, -141.5)).toContain('Iron');
  });

  it('is told with the lip and the distance where it does not', () => {
    const blocks = lipBlocks(book, groundWith(1.2), { x: 0.5, y: -141.5 }, Lie.bunker, PIN);
    expect(blocks.map(({ club }) => club)).toContain('Iron');
    expect(blocks[0]!.lipM).toBe(1.2);
    expect(blocks[0]!.atM).toBeCloseTo(1.5, 2);
    expect(lipBlocks(book, groundWith(1.2), { x: 0.5, y: -158 }, Lie.bunker, PIN)).toEqual([]);
    expect(lipBlocks(book, groundWith(1.2), { x: 0.5, y: -100 }, Lie.rough, PIN)).toEqual([]);
    // a club that would fly far past the hole is not missed
    const near = { x: 0.5, y: -100 };
    expect(lipBlocks(book, groundWith(1.2), { x: 0.5, y: -141.5 }, Lie.bunker, near)).toEqual([]);
  });
});

describe('a pit', () => {
  // 3 m high, 1 m ahead: only back and to the sides, from where the sand goes on
  const ground = groundWith(3);
  const spot = { x: 0.5, y: -141 };
  const choices = sensibleChoices(book, ground, spot, Lie.bunker, PIN, OPEN_FAN);

  it('leaves splashes to the side or back', () => {
    expect(choices.length).toBeGreaterThan(0);
    expect(choices.every(overLip(book, ground, spot, Lie.bunker))).toBe(true);
    expect(choices.every(({ bearing }) => Math.cos(bearing) < 0.9)).toBe(true);
  });

  it('from which nothing gets out still has its choices', () => {
    const walled = flatGround({
      lengthM: 300,
      patches: [{ ...box('bunker', -0.6, -142, 1.6, -140), lipM: 10 }],
    });
    expect(sensibleChoices(book, walled, spot, Lie.bunker, PIN, OPEN_FAN).length).toBeGreaterThan(0);
  });

  it('is known to the hole that is planned', () => {
    const prepared = mustPrepare({ lengthM: 300, patches: [bunker(2)] }, player);
    expect(prepared.ground.lips!.map(({ heightM }) => heightM)).toEqual([2]);
    expect(flatCourse({ lengthM: 300, patches: [bunker(2)] }).areas.at(-1)!.lipM).toBe(2);
  });
});
