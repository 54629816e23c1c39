/** The estimator of a bag: what moves it and what must not. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasuredShot } from '../../core/player/measured-shot.ts';
import type { Club, ShotSpread } from '../../core/player/model.ts';
import {
  drawSpreads,
  estimateBag,
  estimatesOf,
  meanSpread,
  SPREAD_WIDTH,
  type SpreadEvidence,
  type SpreadPosterior,
} from '../../core/player/posterior.ts';
import { presetSpread, STANDARD_BAG } from '../../core/player/presets.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import { drawShots, type ShotLawOfTest } from './sample-player.ts';

const level = { handicap: 16, group: 'men' } as const;
const clubOf = (name: string): Club => STANDARD_BAG.find((candidate) => candidate.name === name)!;

function evidence(
  name: string,
  shots: readonly MeasuredShot[] = [],
  swing: 'full' | 'punch' = 'full',
): SpreadEvidence {
  const club = clubOf(name);
  return { club, swing, expected: presetSpread(level, club, swing), shots };
}

function law(name: string, change: Partial<ShotLawOfTest> = {}, longer = 1): ShotLawOfTest {
  const spread = presetSpread(level, clubOf(name), 'full');
  return { ...spread, carryMean: spread.carryMean * longer, poorShare: 0.08, ...change };
}

const mean = (posterior: SpreadPosterior): ShotSpread => meanSpread(posterior, { from: 'stated' });
const one = (shots: readonly MeasuredShot[]): SpreadPosterior =>
  estimateBag([evidence('7-iron', shots)]).entries[0]!;

describe('the law of a club', () => {
  it('does not depend on the order of the shots, to the last bit', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            carryM: fc.double({ min: 1, max: 300, noNaN: true }),
            direction: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
          }),
          { minLength: 1, maxLength: 30 },
        ),
        fc.infiniteStream(fc.nat()),
        (shots, keys) => {
          const shuffled = shots
            .map((shot) => ({ shot, key: keys.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ shot }) => shot);
          const settings = { draws: 30 };
          expect(estimateBag([evidence('7-iron', shuffled)], settings)).toEqual(
            estimateBag([evidence('7-iron', shots)], settings),
          );
        },
      ),
      { numRuns: 25 },
    );
  });

  it('gives usable numbers for whatever is measured', () => {
    const anyShot = fc.record({
      carryM: fc.oneof(fc.double({ min: 1, max: 400, noNaN: true }), fc.constantFrom(1, 0.5, 100, 999)),
      direction: fc.oneof(fc.double({ min: -1.57, max: 1.57, noNaN: true }), fc.constantFrom(0, 1.5)),
      weight: fc.constantFrom(1, 0.5, 1e-6),
    });
    fc.assert(
      fc.property(fc.array(anyShot, { maxLength: 12 }), fc.array(anyShot, { maxLength: 3 }), (a, b) => {
        const { entries } = estimateBag([evidence('Driver', a), evidence('7-iron', b)], { draws: 40 });
        for (const posterior of entries) {
          for (const spread of drawSpreads(posterior, makeStreamKey('usable'), 40)) {
            expect(spread.carryMean).toBeGreaterThan(0);
            expect(spread.carrySd).toBeGreaterThan(0);
            expect(spread.directionSd).toBeGreaterThan(0);
            expect(Number.isFinite(spread.carryMean + spread.carrySd + spread.directionSd)).toBe(true);
            expect(Math.abs(spread.correlation)).toBeLessThan(1);
            expect(spread.poorShare).toBeGreaterThan(0);
            expect(spread.poorShare).toBeLessThan(1);
            expect(spread.poor.carryShareSd * spread.poor.directionSd).toBeGreaterThan(0);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('refuses readings that are no shots', () => {
    for (const carryM of [0, -5, NaN, Infinity]) {
      expect(() => estimateBag([evidence('7-iron', [{ carryM, direction: 0 }])])).toThrow(RangeError);
    }
  });

  it('hardly moves when one wild shank is added', () => {
    for (let i = 0; i < 5; i++) {
      const shots = drawShots(law('7-iron', { poorShare: 0 }), 30, `shank ${i}`);
      const [before, after] = [mean(one(shots)), mean(one([...shots, { carryM: 35, direction: 0.7 }]))];
      // The plain mean and spread would move by 0.25 and 0.7 of a standard deviation.
      expect(Math.abs(after.carryMean - before.carryMean)).toBeLessThan(0.06 * before.carrySd);
      expect(Math.abs(after.carrySd / before.carrySd - 1)).toBeLessThan(0.08);
      expect(Math.abs(after.directionSd / before.directionSd - 1)).toBeLessThan(0.08);
      expect(after.poorShare).toBeGreaterThan(before.poorShare);
    }
  });

  it('leaves a reading out that no ball of this club can fly', () => {
    const shots = drawShots(law('7-iron', { poorShare: 0 }), 30, 'too long');
    const found = one([...shots, { carryM: 260, direction: 0 }]);
    expect(found.strays).toBe(1);
    expect(found.shots).toBe(30);
    expect(found.draws).toEqual(one(shots).draws);
  });

  it('finds what the shots were drawn from as they grow many', () => {
    const truth = law('7-iron', { directionMean: 0.04, correlation: -0.4, poorShare: 0.15 }, 1.1);
    const found = estimatesOf(one(drawShots(truth, 1500, 'many')));
    for (const name of [
      'carryMean',
      'carrySd',
      'directionMean',
      'directionSd',
      'correlation',
      'poorShare',
    ] as const) {
      const { low, high } = found[name];
      const half = (high - low) / 2;
      expect(truth[name], name).toBeGreaterThan(low - half);
      expect(truth[name], name).toBeLessThan(high + half);
      expect(half / Math.abs(truth[name]), name).toBeLessThan(0.15);
    }
  });

  it('counts a shot of little weight as little', () => {
    const fresh = drawShots(law('7-iron', { poorShare: 0 }), 40, 'fresh');
    const old = drawShots(law('7-iron', { poorShare: 0 }, 0.85), 40, 'old');
    const weigh = (weight: number): ShotSpread =>
      mean(one([...fresh, ...old.map((shot) => ({ ...shot, weight }))]));
    const without = mean(one(fresh)).carryMean;
    expect(Math.abs(weigh(1e-6).carryMean - without)).toBeLessThan(0.02 * without);
    expect(weigh(1).carryMean).toBeLessThan(0.96 * without);
    expect(weigh(0.2).carryMean).toBeGreaterThan(weigh(1).carryMean);
    const posterior = one([...fresh, ...old.map((shot) => ({ ...shot, weight: 0.2 }))]);
    expect(posterior.effectiveShots).toBeCloseTo(48, 9);
  });
});

describe('few shots', () => {
  const longHitter = (count: number): ShotSpread =>
    mean(one(drawShots(law('7-iron', { poorShare: 0 }, 1.2), count, 'long hitter')));
  const expected = presetSpread(level, clubOf('7-iron'), 'full').carryMean;

  it('move the law from what is expected towards what is measured, the more the more there are', () => {
    const [two, forty] = [longHitter(2), longHitter(40)];
    expect(two.carryMean).toBeGreaterThan(1.03 * expected);
    expect(forty.carryMean).toBeGreaterThan(two.carryMean - 0.02 * expected);
    expect(Math.abs(forty.carryMean / expected - 1.2)).toBeLessThan(0.05);
  });

  it('leave the interval wide, and each further shot narrows it', () => {
    const width = (count: number): number => {
      // Over several samples, since one may happen to lie close together.
      const found = [1, 2, 3, 4].map(
        (seed) => estimatesOf(one(drawShots(law('7-iron'), count, `narrow ${seed}`))).carryMean,
      );
      return found.reduce((sum, { low, high }) => sum + high - low, 0);
    };
    const widths = [0, 4, 20, 100].map(width);
    for (let i = 1; i < widths.length; i++) expect(widths[i]!).toBeLessThan(widths[i - 1]!);
  });

  it('take a lone top for what it is', () => {
    const found = one([{ carryM: 30, direction: 0.05 }]);
    expect(found.poorShots).toBe(1);
    expect(mean(found).carryMean).toBeGreaterThan(0.93 * expected);
  });
});

describe('a bag', () => {
  const shots = drawShots(law('7-iron', { directionMean: 0.05 }, 1.2), 60, 'neighbours');
  const { entries } = estimateBag([
    evidence('Driver'),
    evidence('6-iron'),
    evidence('7-iron', shots),
    evidence('7-iron', [], 'punch'),
    evidence('Lob wedge'),
  ]);
  const share = (i: number): number =>
    mean(entries[i]!).carryMean / presetSpread(level, entries[i]!.club, entries[i]!.swing).carryMean;

  it('carries a club without shots along with its neighbours, the nearer the more', () => {
    const [driver, six, seven, punch, wedge] = [0, 1, 2, 3, 4].map(share);
    expect(seven).toBeGreaterThan(1.15);
    expect(six).toBeGreaterThan(1.12);
    expect(six).toBeLessThan(seven!);
    for (const far of [driver!, wedge!]) {
      expect(far).toBeGreaterThan(1.05);
      expect(far).toBeLessThan(six!);
    }
    expect(Math.abs(punch! / seven! - 1)).toBeLessThan(0.02);
  });

  it('lends its curve to the clubs without shots too', () => {
    expect(mean(entries[1]!).directionMean).toBeGreaterThan(0.015);
    expect(mean(entries[1]!).directionMean).toBeLessThan(mean(entries[2]!).directionMean);
  });

  it('knows less of a club without shots than of one with', () => {
    const width = (i: number): number => {
      const { mean: middle, low, high } = estimatesOf(entries[i]!).carryMean;
      return (high - low) / middle;
    };
    expect(width(1)).toBeGreaterThan(2 * width(2));
    expect(width(4)).toBeGreaterThan(width(1));
  });

  it('believes a stated carry more than the preset, and less than shots', () => {
    const stated = { ...evidence('7-iron'), statedCarryM: 150 };
    const expected = stated.expected.carryMean;
    const alone = mean(estimateBag([stated]).entries[0]!).carryMean;
    expect(alone).toBeGreaterThan(expected + 0.7 * (150 - expected));
    expect(alone).toBeLessThan(150);
    const measured = { ...stated, shots: drawShots(law('7-iron', { poorShare: 0 }), 40, 'stated') };
    expect(Math.abs(mean(estimateBag([measured]).entries[0]!).carryMean / expected - 1)).toBeLessThan(0.05);
  });

  it('is planned with even where nothing is known: the draws are the prior’s', () => {
    const bag = estimateBag([evidence('Driver'), evidence('7-iron')]);
    const found = estimatesOf(bag.entries[1]!);
    const preset = presetSpread(level, clubOf('7-iron'), 'full');
    expect(found.carryMean.low).toBeLessThan(0.9 * preset.carryMean);
    expect(found.carryMean.high).toBeGreaterThan(1.1 * preset.carryMean);
    expect(Math.abs(found.carryMean.mean / preset.carryMean - 1)).toBeLessThan(0.02);
    expect(Math.abs(found.carrySd.mean / preset.carrySd - 1)).toBeLessThan(0.06);
    expect(Math.abs(found.directionSd.mean / preset.directionSd - 1)).toBeLessThan(0.06);
  });

  it('of forty clubs and twenty thousand shots is still worked through', () => {
    const clubs = Array.from({ length: 40 }, (_, i): SpreadEvidence => {
      const club: Club = { name: `${i}`, kind: 'iron', loftDeg: 15 + i, swings: ['full'] };
      const preset = presetSpread(level, club, 'full');
      return { club, swing: 'full', expected: preset, shots: drawShots(preset, 500, `${i}`) };
    });
    const bag = estimateBag(clubs, { draws: 20 });
    for (const [i, posterior] of bag.entries.entries()) {
      expect(Math.abs(mean(posterior).carryMean / clubs[i]!.expected.carryMean - 1)).toBeLessThan(0.03);
    }
  });
});

describe('draws of whole laws', () => {
  const bag = estimateBag([
    evidence('Driver', drawShots(law('Driver'), 12, 'drawn')),
    evidence('7-iron', drawShots(law('7-iron'), 12, 'drawn')),
  ]);

  it('are the same for the same key, and belong together across the bag', () => {
    const key = makeStreamKey('a');
    const drivers = drawSpreads(bag.entries[0]!, key, 200);
    const irons = drawSpreads(bag.entries[1]!, key, 200);
    expect(drawSpreads(bag.entries[0]!, key, 200)).toEqual(drivers);
    expect(drawSpreads(bag.entries[0]!, makeStreamKey('b'), 200)).not.toEqual(drivers);
    // The poor strikes' law is one for the whole bag: the same row must be picked from both clubs.
    expect(drivers.map((d) => d.poor.carryShareMean)).toEqual(irons.map((d) => d.poor.carryShareMean));
  });

  it('never repeat a row while there are others, and go on when there are none', () => {
    const count = bag.entries[0]!.draws.length / SPREAD_WIDTH;
    const all = drawSpreads(bag.entries[0]!, makeStreamKey('all'), count + 10).map((d) => d.carryMean);
    expect(new Set(all.slice(0, count)).size).toBe(count);
    expect(all).toHaveLength(count + 10);
  });
});
