/** Up-and-downs and part swings: intervals against an independent library, and laws found again. */

import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { betaCdf, betaQuantile } from '../../core/player/beta-law.ts';
import type { RecordedShot } from '../../core/player/format.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { type PartLaw, partCarrySd } from '../../core/player/part-law.ts';
import { derivedPartLaw, derivePart, partSpread } from '../../core/player/part-swing.ts';
import { drawSpreads } from '../../core/player/posterior.ts';
import { drawNormal } from '../../core/player/posterior/random-laws.ts';
import { presetSpread, STANDARD_BAG } from '../../core/player/presets.ts';
import { fitPartSwings, type PartShot, upAndDownChances } from '../../core/player/short-game.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';
import { minimalPlayer } from './sample-player.ts';

/** The package ships no types. */
const library = jStat as unknown as {
  readonly beta: {
    cdf(x: number, a: number, b: number): number;
    inv(p: number, a: number, b: number): number;
  };
};

describe('beta law', () => {
  it.each([
    [0.5, 0.5],
    [3.5, 8.5],
    [40.5, 2.5],
    [0.5, 30.5],
  ] as const)('of %d and %d agrees with jstat', (a, b) => {
    for (const x of [0.01, 0.2, 0.5, 0.77, 0.99])
      expect(Math.abs(betaCdf(x, a, b) - library.beta.cdf(x, a, b))).toBeLessThan(1e-7);
    for (const p of [0.05, 0.5, 0.95])
      expect(Math.abs(betaQuantile(p, a, b) - library.beta.inv(p, a, b))).toBeLessThan(1e-5);
  });
});

describe('up and down', () => {
  it('has Jeffreys’ interval, beta quantiles of saved + 1/2 and failed + 1/2 (Brown, Cai & DasGupta 2001)', () => {
    const [chip] = upAndDownChances([
      { kind: 'chip', tries: 6, saved: 2 },
      { kind: 'chip', tries: 6, saved: 3 },
    ]);
    expect(chip).toMatchObject({ kind: 'chip', tries: 12, saved: 5 });
    expect(Math.abs(chip!.low - library.beta.inv(0.05, 5.5, 7.5))).toBeLessThan(1e-5);
    expect(Math.abs(chip!.high - library.beta.inv(0.95, 5.5, 7.5))).toBeLessThan(1e-5);
  });

  it('of none or all reaches the end of the scale; kinds without tries are left out', () => {
    const [none, all] = upAndDownChances([
      { kind: 'chip', tries: 4, saved: 0 },
      { kind: 'bunker', tries: 4, saved: 4 },
      { kind: 'pitch', tries: 0, saved: 0 },
    ]);
    expect(none).toMatchObject({ kind: 'chip', low: 0 });
    expect(all).toMatchObject({ kind: 'bunker', high: 1 });
    expect(upAndDownChances([])).toEqual([]);
  });
});

const wedge = STANDARD_BAG.find(({ name }) => name === 'Sand wedge')!;
const part = derivePart(presetSpread({ handicap: 16, group: 'men' }, wedge, 'full'));
const expected = {
  law: derivedPartLaw(part),
  directionSd: part.directionSd,
  poorShare: part.poorShare,
  poor: part.poor,
};

function swings(stream: RandomStream, law: PartLaw, count: number, poorShare = 0): PartShot[] {
  return Array.from({ length: count }, () => {
    const intendedM = 8 + 50 * stream.nextUniform();
    const direction = 0.05 * drawNormal(stream);
    if (stream.nextUniform() < poorShare) {
      const carryM = Math.max(1, intendedM * (0.85 + 0.4 * drawNormal(stream)));
      return { intendedM, carryM, direction: 2 * direction };
    }
    const carryM = intendedM * (1 + law.carryBiasShare) + partCarrySd(law, intendedM) * drawNormal(stream);
    return { intendedM, carryM: Math.max(0.5, carryM), direction };
  });
}

describe('part swings', () => {
  it('are expected to scatter as derived ones do', () => {
    for (const carryM of [12, 30, 50]) {
      const sd = partSpread(part, carryM).carrySd;
      expect(Math.abs(partCarrySd(expected.law, carryM) / sd - 1)).toBeLessThan(0.1);
    }
  });

  it('give their law back: spread at ten metres, growth, bias, and the intervals hold them', () => {
    const law: PartLaw = { carrySdAt10M: 1.6, growth: 0.6, carryBiasShare: 0.04 };
    const stream = new RandomStream();
    const sets = 60;
    const inside = { carrySdAt10M: 0, growth: 0, carryBiasShare: 0 };
    for (let set = 0; set < sets; set++) {
      stream.restart(makeStreamKey('part'), set);
      const found = fitPartSwings(swings(stream, law, 60, 0.06), expected);
      if (!found.ok) throw new Error(found.error);
      for (const name of ['carrySdAt10M', 'growth', 'carryBiasShare'] as const) {
        const { low, high } = found.value.estimates[name];
        if (law[name] >= low && law[name] <= high) inside[name]++;
      }
    }
    // The law lies within one standard deviation of what is expected; Laplace's intervals are a little short at times.
    for (const [name, count] of Object.entries(inside)) expect(count / sets, name).toBeGreaterThan(0.75);
  });

  it('too few are refused', () => {
    expect(fitPartSwings([], expected)).toMatchObject({ ok: false });
  });

  it('measured in a player file count: for the club, and for the other wedges that have none', () => {
    const stream = new RandomStream();
    stream.restart(makeStreamKey('file'), 0);
    const law: PartLaw = { carrySdAt10M: 0.8, growth: 0.7, carryBiasShare: 0 };
    const shots = swings(stream, law, 40).map(
      ({ intendedM, carryM, direction }): RecordedShot => ({
        club: 'Sand wedge',
        swing: 'part',
        intendedM,
        carryM,
        directionDeg: (direction * 180) / Math.PI,
      }),
    );
    const bag = [
      ...minimalPlayer().bag,
      { name: 'Lob wedge', kind: 'wedge', loftDeg: 60, swings: ['part'] },
    ] as const;
    const player = parsePlayer({ ...minimalPlayer(), bag, shots });
    if (!player.ok) throw new Error('refused');
    const found = player.value.spreads.filter(({ swing }) => swing === 'part');
    expect(found).toHaveLength(2);
    for (const spread of found) {
      expect(spread.source).toMatchObject({ from: 'measured', shots: 40 });
      const at30 = partSpread(spread, 30).carrySd;
      expect(Math.abs(at30 / partCarrySd(law, 30) - 1)).toBeLessThan(0.35);
      const at = player.value.spreads.indexOf(spread);
      const drawn = drawSpreads(player.value.posterior!().entries[at]!, makeStreamKey('draws'), 200);
      const mean = drawn.reduce((sum, one) => sum + partSpread(one, 30).carrySd / 200, 0);
      expect(Math.abs(mean / at30 - 1)).toBeLessThan(0.1);
    }
    expect(player.value.warnings.some(({ code }) => code === 'part-shot-unused')).toBe(false);
  });
});
