/** Shots from other lies, wind and temperature: what they count as, what is said of it, and what the estimates make of them. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { carryFactorAt, driftShareAt, flightOf } from '../../core/flight/flight-table.ts';
import { type CountedShot, countedWords } from '../../core/player/count-shot.ts';
import type { PlayerDocument, RecordedShot } from '../../core/player/format.ts';
import { groupKey, groupShots } from '../../core/player/group-shots.ts';
import { lieEffectsFor } from '../../core/player/lie-effects.ts';
import type { MeasuredShot } from '../../core/player/measured-shot.ts';
import type { ShotSpread } from '../../core/player/model.ts';
import { parsePlayer, parsePlayerDocumentText } from '../../core/player/parse.ts';
import { estimateBag, estimatesOf, numbersOf, SPREAD_NUMBERS } from '../../core/player/posterior.ts';
import { presetSpread, STANDARD_BAG } from '../../core/player/presets.ts';
import { readLie } from '../../core/player/shot-lie.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';
import { lawFromPrior, shotsOf } from './prior-draws.ts';
import { drawShots, minimalPlayer } from './sample-player.ts';
import { english } from '../../core/words/english/english.ts';

const club = STANDARD_BAG.find(({ loftDeg }) => loftDeg === 32)!;
const usual = presetSpread({ handicap: 16, group: 'men' }, club, 'full');
const bag = minimalPlayer().bag;

function recorded(shot: MeasuredShot, more: Partial<RecordedShot> = {}): RecordedShot {
  return {
    club: '7-iron',
    carryM: shot.carryM,
    directionDeg: (shot.direction * 180) / Math.PI,
    ...more,
  };
}

function counted(shots: readonly RecordedShot[], at = 0): CountedShot {
  const found = groupShots(bag, shots).counted.get(at);
  if (found === undefined || 'leftOut' in found) throw new Error('not counted');
  return found;
}

describe('a bag measured in wind', () => {
  it('has the law that it has in still air', () => {
    const law: ShotSpread = { ...usual, poorShare: 0 };
    const still = drawShots(law, 120, 'windy day');
    const wind = { speedMps: 6, fromDeg: 30, gustSdMps: 0 };
    const table = flightOf(club, 'full', law.carryMean, { ...DEFAULT_CONDITIONS, temperatureC: 6, wind });
    const shots = still.map(({ carryM, direction }) => {
      const angle = (wind.fromDeg * Math.PI) / 180 - direction;
      const along = carryM * carryFactorAt(table, angle);
      const right = carryM * driftShareAt(table, angle);
      return recorded(
        { carryM: Math.hypot(along, right), direction: direction + Math.atan2(right, along) },
        { windMps: 6, windFromDeg: 30, temperatureC: 6 },
      );
    });
    const estimate = (list: readonly MeasuredShot[]): ShotSpread['carryMean'][] => {
      const { entries } = estimateBag([{ club, swing: 'full', expected: usual, shots: list }], {
        draws: 400,
      });
      const { carryMean, directionMean, carrySd, directionSd } = estimatesOf(entries[0]!);
      return [carryMean.mean, directionMean.mean, carrySd.mean, directionSd.mean];
    };
    const before = estimate(still);
    const found = estimate(groupShots(bag, shots).groups.get(groupKey('7-iron', 'full'))!);
    const asMeasured = estimate(
      shots.map(({ carryM, directionDeg }) => ({ carryM, direction: (directionDeg! * Math.PI) / 180 })),
    );
    // Within the tables' error: one per cent of carry and a quarter of a degree. As measured the club would
    // be a tenth shorter and two degrees farther left.
    expect(Math.abs(found[0]! / before[0]! - 1)).toBeLessThan(0.01);
    expect(Math.abs(found[1]! - before[1]!)).toBeLessThan(0.005);
    expect(asMeasured[0]! / before[0]!).toBeLessThan(0.93);
    expect(asMeasured[1]! - before[1]!).toBeLessThan(-0.03);
    // The widths within what letting lengths scale leaves open.
    expect(Math.abs(found[2]! / before[2]! - 1)).toBeLessThan(0.35);
    expect(Math.abs(found[3]! / before[3]! - 1)).toBeLessThan(0.1);
  });

  it('does not hang on the order of its shots', () => {
    const shots = Array.from({ length: 9 }, (_, i) =>
      recorded({ carryM: 100 + 3 * i, direction: 0.01 * i }, { windMps: i, windFromDeg: 40 * i }),
    );
    const forth = groupShots(bag, shots).groups.get(groupKey('7-iron', 'full'))!;
    const back = groupShots(bag, [...shots].reverse()).groups.get(groupKey('7-iron', 'full'))!;
    expect([...back].reverse()).toEqual(forth);
  });
});

describe('shots from bad lies', () => {
  const effects = lieEffectsFor(16);

  it('count as what they carry from a good one, and how the lie scatters goes along', () => {
    const { shot } = counted([recorded({ carryM: 100, direction: 0.02 }, { lie: 'Rough' })]);
    const rough = effects(club, 'full', 'rough');
    expect(shot.carryM).toBeCloseTo(100 / rough.carryFactor, 6);
    expect(shot.lie).toEqual({
      carryWidth: rough.carrySdFactor,
      directionWidth: rough.directionSdFactor,
      poorAdded: rough.poorShareAdded,
    });
  });

  it.each([
    ['Light rough', 'rough'],
    ['deep-rough', 'longRough'],
    ['Greenside bunker', 'bunker'],
    ['Fairway', 'good'],
    ['', 'good'],
    [undefined, 'good'],
    ['Under trees', 'woods'],
    ['on the moon', null],
  ] as const)('are known by their words: %s', (words, lie) => {
    expect(readLie(words)).toBe(lie);
  });

  it('of half the shots in sand leave the intervals honest: nine laws in ten, whatever of them is measured from sand', () => {
    const sand = effects(club, 'full', 'bunker');
    const lie = {
      carryWidth: sand.carrySdFactor,
      directionWidth: sand.directionSdFactor,
      poorAdded: sand.poorShareAdded,
    };
    const sets = 120;
    const inside = new Map<string, number>();
    const stream = new RandomStream();
    for (let set = 0; set < sets; set++) {
      stream.restart(makeStreamKey('shots from sand'), set);
      const expected = { ...usual, poorShare: [0.02, 0.1][set % 2]! };
      const truth = lawFromPrior(stream, expected);
      // The lie's own poor strikes come on top of the player's, as the planner plays them from sand.
      const fromSand: ShotSpread = {
        ...truth,
        carrySd: truth.carrySd * lie.carryWidth,
        directionSd: truth.directionSd * lie.directionWidth,
        poorShare: truth.poorShare + (1 - truth.poorShare) * lie.poorAdded,
        poor: { ...truth.poor, directionSd: truth.poor.directionSd * lie.directionWidth },
      };
      const shots = [
        ...shotsOf(stream, truth, 15),
        ...shotsOf(stream, fromSand, 25).map((shot) => ({ ...shot, lie })),
      ];
      const { entries } = estimateBag([{ club, swing: 'full', expected, shots }], { draws: 300 });
      const found = estimatesOf(entries[0]!);
      numbersOf(truth).forEach((value, i) => {
        const name = SPREAD_NUMBERS[i]!;
        const { low, high } = found[name];
        if (value >= low && value <= high) inside.set(name, (inside.get(name) ?? 0) + 1 / sets);
      });
    }
    // Binomial: one standard error is 2.7 points; nine numbers are looked at.
    for (const [name, share] of inside)
      expect(Math.abs(share - 0.9), `${name}: ${share.toFixed(3)}`).toBeLessThan(
        3.2 * Math.sqrt((0.9 * 0.1) / sets),
      );
  });

  it('taken for good ones would make the player worse than they are', () => {
    const sand = effects(club, 'full', 'bunker');
    const wide = drawShots(
      {
        ...usual,
        carryMean: usual.carryMean * sand.carryFactor,
        carrySd: usual.carrySd * sand.carryFactor * sand.carrySdFactor,
        directionSd: usual.directionSd * sand.directionSdFactor,
        poorShare: 0,
      },
      200,
      'all from sand',
    );
    const sdOf = (more: Partial<RecordedShot>): number => {
      const shots = groupShots(
        bag,
        wide.map((shot) => recorded(shot, more)),
      ).groups.get(groupKey('7-iron', 'full'))!;
      const { entries } = estimateBag([{ club, swing: 'full', expected: usual, shots }], { draws: 200 });
      return estimatesOf(entries[0]!).carrySd.mean;
    };
    expect(sdOf({ lie: 'bunker' }) / usual.carrySd).toBeGreaterThan(0.85);
    expect(sdOf({ lie: 'bunker' }) / usual.carrySd).toBeLessThan(1.15);
    expect(sdOf({}) / usual.carrySd).toBeGreaterThan(1.6);
  });
});

describe('what is said of a shot', () => {
  const shot = recorded({ carryM: 100, direction: 0.02 });

  it.each([
    [
      { windMps: 5, windFromDeg: 0 },
      /^1\d\d m, \d m right in still air at 15 °C at sea level; it was hit in 5 m\/s of wind from ahead\.$/,
    ],
    [
      { lie: 'rough', temperatureC: 3 },
      /m right from a good lie in still air at 15 °C at sea level; it was hit from rough, at 3 °C\.$/,
    ],
    [
      { windMps: 22, windFromDeg: 90 },
      /^As measured\. A wind of 22 m\/s is beyond the flight model, which goes up to 15\.$/,
    ],
    [{ windMps: 4 }, /^As measured\. There was wind, but it is not said from which side it came\.$/],
    [{ temperatureC: 50 }, /^As measured\. 50 °C is beyond the flight model/],
    [{ altitudeM: 6000 }, /^As measured\. 6000 m above the sea is beyond/],
    [{ lie: 'lava' }, /^As measured\. The lie “lava” is not known; it is taken as a good one\.$/],
    [
      { lie: 'rough', windMps: 30, windFromDeg: 3 },
      /^\d+ m, \d m right from a good lie; it was hit from rough, in 30 m\/s of wind from ahead\. A wind of 30 m\/s is beyond/,
    ],
  ] as const)('%j', (more, words) => {
    const one = { ...shot, ...more };
    expect(countedWords(counted([one]), one, 'metres', english)).toMatch(words);
  });

  it('that counts as it is, is nothing', () => {
    expect(
      groupShots(bag, [shot, { ...shot, lie: 'range', temperatureC: 15, windMps: 0 }]).counted.size,
    ).toBe(0);
  });

  it('is a warning of the player where the model does not reach, one for all shots of a kind', () => {
    const shots = [21, 22, 23].map((windMps) => ({ ...shot, windMps, windFromDeg: 0 }));
    const player = parsePlayer({ ...minimalPlayer(), shots });
    const warnings = player.ok ? player.value.warnings.filter(({ code }) => code === 'shot-as-measured') : [];
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ where: 'shots[0] and 2 more' });
    expect(warnings[0]!.message).toMatch(
      /^3 shots with the 7-iron counted as measured: a wind of 21 m\/s .*\.$/,
    );
  });
});

describe('a file of before', () => {
  it('opens as it did: lie as free text, no weather', () => {
    const text = readFileSync(new URL('../../maps/demo-player.json', import.meta.url), 'utf8');
    const read = parsePlayerDocumentText(text);
    expect(read.ok && read.value.player.warnings).toEqual([]);
    const document: PlayerDocument = {
      ...minimalPlayer(),
      shots: [{ ...shotOfBefore, lie: 'whatever it was' }],
    };
    const before = parsePlayer(document);
    expect(before.ok && before.value.warnings.map(({ code }) => code)).toContain('shot-as-measured');
  });
});

const shotOfBefore: RecordedShot = { club: '7-iron', carryM: 120, offlineM: 2 };
