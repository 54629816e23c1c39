/** The door for player files: what it makes of them, what it refuses and in which words. */

import { describe, expect, it } from 'vitest';
import { migratePlayer, type PlayerDocument, playerText } from '../../core/player/format.ts';
import type { PlayerModel, ShotSpread } from '../../core/player/model.ts';
import {
  parsePlayer,
  parsePlayerDocument,
  parsePlayerDocumentText,
  parsePlayerText,
} from '../../core/player/parse.ts';
import { estimatesOf } from '../../core/player/posterior.ts';
import { presetPlayer, STANDARD_BAG } from '../../core/player/presets.ts';
import type { Fault } from '../../core/result.ts';
import { drawShots, minimalPlayer, record } from './sample-player.ts';

const iron = {
  carryMean: 125,
  carrySd: 10,
  directionMean: 0.03,
  directionSd: 0.07,
  correlation: 0,
  poorShare: 0.08,
  poor: { carryShareMean: 0.6, carryShareSd: 0.15, directionSd: 0.14 },
};

function read(json: unknown): PlayerModel {
  const result = parsePlayer(json);
  if (!result.ok) throw new Error(result.error.map((f) => `${f.where}: ${f.message}`).join('\n'));
  return result.value;
}

function refusal(json: unknown): readonly Fault[] {
  const result = parsePlayer(json);
  if (result.ok) throw new Error('it was not refused');
  return result.error;
}

function spread(player: PlayerModel, name: string, swing = 'full'): ShotSpread {
  const found = player.spreads.find((s) => s.club.name === name && s.swing === swing);
  if (found === undefined) throw new Error(`no ${name} ${swing}`);
  return found;
}

const warningsOf = (player: PlayerModel, code: string): readonly Fault[] =>
  player.warnings.filter((w) => w.code === code);

function withoutHandicap(): Omit<PlayerDocument, 'handicap'> {
  const document: Partial<PlayerDocument> = minimalPlayer();
  delete document.handicap;
  return document;
}

describe('a player file', () => {
  it('hands a measured launch on to what is flown with the club, and refuses one that no club makes', () => {
    const file = minimalPlayer();
    const launch = { angleDeg: 18.5, spinRpm: 6200 };
    const withLaunch = (of: object) => ({
      ...file,
      bag: file.bag.map((club) => (club.name === '7-iron' ? { ...club, launch: of } : club)),
    });
    expect(spread(read(withLaunch(launch)), '7-iron').club.launch).toEqual(launch);
    expect(spread(read(file), '7-iron').club.launch).toBeUndefined();
    expect(refusal(withLaunch({ angleDeg: 300 }))[0]!.where).toContain('launch');
  });

  it('gives a law to every club and swing but the putter, longest first', () => {
    const player = read(minimalPlayer());
    expect(player.spreads.map((s) => `${s.club.name} ${s.swing}`)).toEqual([
      'Driver full',
      '7-iron full',
      '7-iron punch',
      'Sand wedge full',
      'Sand wedge part',
    ]);
    expect(player.name).toBe('Invented Player');
    expect(player.invented).toBe(true);
    expect(player.handicap).toBe(17);
    expect(player.units).toBe('yards');
    expect(player.putting.directionSd).toBeCloseTo((1.6 * Math.PI) / 180, 12);
    expect(player.puttingSource).toEqual({ from: 'stated' });
  });

  it('fills in what is left out', () => {
    const { holewright, name, bag } = minimalPlayer();
    const player = read({ holewright, name, bag, handicap: 10 });
    expect(player).toMatchObject({ hand: 'right', units: 'yards', marginStrokes: 0.05, invented: false });
    expect(player.putting).toEqual(presetPlayer({ handicap: 10, group: 'men' }).putting);
    expect(player.puttingSource).toMatchObject({ from: 'preset' });
  });

  it('uses measured shots where there are at least five', () => {
    const shots = record('7-iron', drawShots(iron, 60, 'measured'));
    const found = spread(read({ ...minimalPlayer(), shots }), '7-iron');
    expect(found.source).toMatchObject({ from: 'measured', shots: 60 });
    // Within four standard errors of what the shots were drawn with.
    expect(Math.abs(found.carryMean - 125)).toBeLessThan((4 * 10) / Math.sqrt(55));
    expect(Math.abs(found.directionMean - 0.03)).toBeLessThan((4 * 0.07) / Math.sqrt(55));
  });

  it('takes the direction in degrees as well as the distance off line', () => {
    const shots = drawShots(iron, 20, 'degrees');
    const inDegrees = shots.map(({ carryM, direction }) => ({
      club: '7-iron',
      carryM,
      directionDeg: (direction * 180) / Math.PI,
    }));
    const a = spread(read({ ...minimalPlayer(), shots: inDegrees }), '7-iron');
    const b = spread(read({ ...minimalPlayer(), shots: record('7-iron', shots) }), '7-iron');
    expect(a.directionMean).toBeCloseTo(b.directionMean, 12);
    expect(a.directionSd).toBeCloseTo(b.directionSd, 12);
  });

  it('says when a club has few shots, and lets it lean on the preset', () => {
    const shots = record('7-iron', drawShots(iron, 2, 'two'));
    const player = read({ ...minimalPlayer(), shots });
    const [warning] = warningsOf(player, 'few-shots').filter((w) => w.where.includes('7-iron'));
    expect(warning).toMatchObject({ severity: 'warning', where: 'bag[1] (7-iron)' });
    expect(warning!.message).toBe(
      '7-iron has 2 measured shots; with fewer than 5 it leans mostly on the preset for handicap 17 and on the other clubs.',
    );
    const found = spread(player, '7-iron');
    expect(found.source).toEqual({ from: 'measured', shots: 2, poorShots: 0 });
    const preset = presetPlayer({ handicap: 17, group: 'men' }, [STANDARD_BAG[6]!]).spreads[0]!;
    const measured = (shots[0]!.carryM + shots[1]!.carryM) / 2;
    // Between the two, since both count.
    expect(found.carryMean).toBeGreaterThan(Math.min(preset.carryMean, measured));
    expect(found.carryMean).toBeLessThan(Math.max(preset.carryMean, measured));
    expect(warningsOf(player, 'few-shots').find((w) => w.where.includes('Driver'))!.message).toMatch(
      /^Driver has no measured shots; the preset for handicap 17 is used until it has some\./,
    );
  });

  it('sets unmeasured clubs in line with the measured ones', () => {
    const long = { ...iron, carryMean: 150 };
    const player = read({
      ...minimalPlayer(),
      shots: record('7-iron', drawShots(long, 40, 'long hitter')),
    });
    const plain = read(minimalPlayer());
    const factor = spread(player, '7-iron').carryMean / spread(plain, '7-iron').carryMean;
    expect(factor).toBeGreaterThan(1.2);
    const driver = spread(player, 'Driver').carryMean / spread(plain, 'Driver').carryMean;
    // Far from the 7-iron in the bag: most of the difference is the player's, some of it the club's.
    expect(driver).toBeGreaterThan(1 + 0.6 * (factor - 1));
    expect(driver).toBeLessThan(factor);
    expect(warningsOf(player, 'few-shots')[0]!.message).toContain(
      `${Math.round(driver * 100)} % of the preset`,
    );
  });

  it('takes what the player states where nothing is measured, and the preset for the rest', () => {
    const document = minimalPlayer();
    const bag = document.bag.map((club) =>
      club.name === 'Driver' ? { ...club, stated: { carryM: 190, directionDeg: -2, poorShare: 0.1 } } : club,
    );
    const found = spread(read({ ...document, bag }), 'Driver');
    const preset = spread(read(document), 'Driver');
    expect(found.source).toEqual({ from: 'stated' });
    expect(found.carryMean).toBe(190);
    expect(found.directionMean).toBeCloseTo((-2 * Math.PI) / 180, 12);
    expect(found.poorShare).toBe(0.1);
    expect(found.carrySd / 190).toBeCloseTo(preset.carrySd / preset.carryMean, 9);
    expect(warningsOf(read({ ...document, bag }), 'few-shots').some((w) => w.where.includes('Driver'))).toBe(
      false,
    );
  });

  it('derives a punch from the measured full swing and says so', () => {
    const shots = record('7-iron', drawShots(iron, 40, 'punch'));
    const player = read({ ...minimalPlayer(), shots });
    const [full, punch] = [spread(player, '7-iron'), spread(player, '7-iron', 'punch')];
    expect(punch.source).toEqual({ from: 'derived', fromSwing: 'full', fromClub: '7-iron' });
    expect(punch.carryMean / full.carryMean).toBeCloseTo(0.6, 2);
  });

  it('counts recent shots more where the player wants it, from the newest shot or the day that is given', () => {
    const dated = (seed: string, at: string, carryMean: number): object[] =>
      record('7-iron', drawShots({ ...iron, carryMean }, 30, seed)).map((shot) => ({ ...shot, at }));
    const shots = [...dated('old', '2025-01-10', 105), ...dated('new', '2026-06-10', 135)];
    const carry = (halfLifeDays: number | undefined, today?: string): number => {
      const settings = halfLifeDays === undefined ? {} : { halfLifeDays };
      const result = parsePlayer(
        { ...minimalPlayer(), shots, settings },
        today === undefined ? {} : { today },
      );
      if (!result.ok) throw new Error('refused');
      return spread(result.value, '7-iron').carryMean;
    };
    expect(Math.abs(carry(undefined) - 120)).toBeLessThan(5);
    expect(carry(90)).toBeGreaterThan(126);
    expect(carry(90, '2026-06-10')).toBe(carry(90));
    // Ten years on both are old: what is left leans on the preset.
    expect(carry(90, '2036-06-10')).toBeLessThan(carry(90) - 3);
  });

  it('hands over its doubt, one entry per spread', () => {
    const shots = record('7-iron', drawShots(iron, 30, 'doubt'));
    const player = read({ ...minimalPlayer(), shots });
    const { entries, drawCount } = player.posterior!();
    expect(drawCount).toBe(1000);
    expect(entries.map((entry) => `${entry.club.name} ${entry.swing}`)).toEqual(
      player.spreads.map((s) => `${s.club.name} ${s.swing}`),
    );
    for (const [i, entry] of entries.entries()) {
      const { mean, low, high } = estimatesOf(entry).carryMean;
      expect(mean / player.spreads[i]!.carryMean).toBeCloseTo(1, 1);
      expect(low).toBeLessThan(mean);
      expect(high).toBeGreaterThan(mean);
    }
  });

  it('leaves a reading out that is too long for its club, and says so', () => {
    const shots = [
      ...record('7-iron', drawShots(iron, 30, 'too long')),
      { club: '7-iron', carryM: 320, offlineM: 0 },
    ];
    const player = read({ ...minimalPlayer(), shots });
    expect(warningsOf(player, 'shot-too-long')[0]!.message).toContain('1 reading is left out');
    expect(spread(player, '7-iron').source).toMatchObject({ shots: 30 });
  });

  it('guesses a level from the carries where the handicap is missing, and says so', () => {
    const document = withoutHandicap();
    const level = { handicap: 5, group: 'men' } as const;
    const preset = presetPlayer(level).spreads.find((s) => s.club.name === '7-iron')!;
    const shots = record('7-iron', drawShots({ ...iron, ...preset }, 200, 'level'));
    const player = read({ ...document, shots });
    const [warning] = warningsOf(player, 'handicap-missing');
    const guessed = Number(/handicap (-?[\d.]+)/.exec(warning!.message)![1]);
    expect(Math.abs(guessed - 5)).toBeLessThan(2);
  });

  it('is refused where neither handicap nor measured club tells the level', () => {
    const document = withoutHandicap();
    expect(refusal(document)[0]).toMatchObject({ code: 'level-unknown', severity: 'error' });
  });
});

describe('shots that are left out', () => {
  it.each([
    ['shot-of-unknown-club', { club: '7 iron', carryM: 120, offlineM: 0 }],
    ['shot-of-unknown-swing', { club: 'Driver', swing: 'punch', carryM: 120, offlineM: 0 }],
    ['shot-of-putter', { club: 'Putter', carryM: 12, offlineM: 0 }],
    ['part-shot-unused', { club: 'Sand wedge', swing: 'part', carryM: 40, offlineM: 1 }],
    ['shot-from-bad-lie', { club: '7-iron', carryM: 90, offlineM: 4, lie: 'penaltyRed' }],
    ['shot-from-bad-lie', { club: 'Driver', carryM: 90, offlineM: 4, lie: 'bunker' }],
    [
      'shot-from-bad-lie',
      { club: 'Sand wedge', swing: 'part', carryM: 30, intendedM: 30, offlineM: 4, lie: 'Sand' },
    ],
    ['shot-without-direction', { club: '7-iron', carryM: 120 }],
    ['shot-impossible', { club: '7-iron', carryM: 20, offlineM: 25 }],
    ['shot-impossible', { club: '7-iron', carryM: 0.2, offlineM: 0 }],
  ])('are named: %s', (code, shot) => {
    const player = read({ ...minimalPlayer(), shots: [shot, shot] });
    const [warning] = warningsOf(player, code);
    expect(warning).toMatchObject({ severity: 'warning', where: 'shots[0] and 1 more' });
    expect(warning!.message).toMatch(/^2 shots left out: .+\.$/);
  });
});

describe('files that are refused', () => {
  it('names both versions of a newer format', () => {
    const [fault] = refusal({ ...minimalPlayer(), holewright: { format: 'player', formatVersion: 7 } });
    expect(fault).toMatchObject({ code: 'newer-format', where: 'holewright.formatVersion' });
    expect(fault!.message).toContain('version 7');
    expect(fault!.message).toContain('version 1');
  });

  it('tells another kind of file, or no file of ours, from a damaged one', () => {
    for (const json of [null, 3, 'text', [], {}, { holewright: { format: 'round', formatVersion: 1 } }]) {
      expect(refusal(json)[0]).toMatchObject({ code: 'not-a-player' });
    }
  });

  it('names the field, what it is and what it should be', () => {
    const document = minimalPlayer();
    const faults = refusal({
      ...document,
      bag: [{ ...document.bag[0], loftDeg: 'steep' }, ...document.bag.slice(1)],
      shots: [{ club: 'Driver', carryM: -1 }],
    });
    expect(faults.map((f) => f.where)).toEqual(['bag[0].loftDeg', 'shots[0].carryM']);
    expect(faults[0]!.message).toContain('"steep"');
  });

  it('does not take a number that is not finite', () => {
    expect(parsePlayerText(playerText(minimalPlayer()).replace('10.5', '1e999')).ok).toBe(false);
  });

  it('counts faults beyond the first forty instead of listing them', () => {
    const shots = Array.from({ length: 90 }, () => ({ club: 'Driver', carryM: 'far' }));
    const faults = refusal({ ...minimalPlayer(), shots });
    expect(faults).toHaveLength(41);
    expect(faults[40]!.message).toContain('50 more');
  });

  it('refuses two clubs of one name and a bag without clubs', () => {
    const document = minimalPlayer();
    expect(refusal({ ...document, bag: [document.bag[0], document.bag[0]] })[0]).toMatchObject({
      code: 'club-twice',
      where: 'bag[1]',
    });
    expect(refusal({ ...document, bag: [document.bag[3]] })[0]).toMatchObject({ code: 'no-clubs' });
  });

  it('refuses too many clubs, too many shots and too long a text', () => {
    const document = minimalPlayer();
    const club = document.bag[0]!;
    const bag = Array.from({ length: 41 }, (_, i) => ({ ...club, name: `club ${i}` }));
    expect(refusal({ ...document, bag })[0]).toMatchObject({ code: 'too-many-clubs' });
    const shots = Array.from({ length: 20_001 }, () => ({ club: 'Driver', carryM: 200, offlineM: 0 }));
    expect(refusal({ ...document, shots })[0]).toMatchObject({ code: 'too-many-shots' });
    const text = parsePlayerText(' '.repeat(8_000_001));
    expect(text).toMatchObject({ ok: false, error: [{ code: 'file-too-large' }] });
  });

  it('gives line and column of a syntax error', () => {
    const result = parsePlayerText('{\n  "name": \n}');
    expect(result).toMatchObject({ ok: false, error: [{ code: 'not-json', where: 'line 3, column 1' }] });
  });
});

describe('bag of more than fourteen', () => {
  it('is planned with, and the rule is named', () => {
    const document: PlayerDocument = {
      ...minimalPlayer(),
      bag: [
        ...STANDARD_BAG.map((c) => ({ ...c, swings: [...c.swings] })),
        { name: '7-wood', kind: 'wood', loftDeg: 21, swings: ['full'] },
      ],
    };
    const [warning] = warningsOf(read(document), 'over-fourteen-clubs');
    expect(warning!.message).toContain('15');
    expect(warning!.message).toContain('Rule 4.1b');
  });
});

describe('round trip', () => {
  it('keeps every member, known or not', () => {
    const document = {
      ...minimalPlayer(),
      colour: 'blue',
      holewright: { format: 'player', formatVersion: 1, writtenBy: 'a newer hand' },
      shots: [{ club: '7-iron', carryM: 120, offlineM: 2, wind: 'light' }],
    };
    const text = JSON.stringify(document);
    const result = parsePlayerDocumentText(text);
    if (!result.ok) throw new Error('refused');
    expect(JSON.parse(playerText(result.value.document))).toEqual(document);
    const again = parsePlayerDocumentText(playerText(result.value.document));
    expect(again.ok && playerText(again.value.document)).toBe(playerText(result.value.document));
  });

  it('gives the same player from text, value and document', () => {
    const document = minimalPlayer();
    // Functions have no equal but themselves; everything else of a player is plain data.
    const fromValue = JSON.parse(JSON.stringify(read(document))) as object;
    const fromText = parsePlayerText(playerText(document));
    const fromDocument = parsePlayerDocument(document);
    if (!fromText.ok || !fromDocument.ok) throw new Error('refused');
    expect(fromText.value).toMatchObject(fromValue);
    expect(fromDocument.value.player).toMatchObject(fromValue);
    expect(fromDocument.value.document).toBe(document);
  });
});

describe('migration', () => {
  it('walks the chain from the file’s version to the current one', () => {
    const steps = [
      (d: Readonly<Record<string, unknown>>) => ({ ...d, second: true }),
      (d: Readonly<Record<string, unknown>>) => ({ ...d, third: true }),
    ];
    expect(migratePlayer({ a: 1 }, 1, steps)).toEqual({
      ok: true,
      value: { a: 1, second: true, third: true },
    });
    expect(migratePlayer({ a: 1 }, 2, steps)).toEqual({ ok: true, value: { a: 1, third: true } });
    expect(migratePlayer({ a: 1 }, 3, steps)).toEqual({ ok: true, value: { a: 1 } });
    expect(migratePlayer({ a: 1 }, 4, steps)).toMatchObject({ ok: false, error: { code: 'newer-format' } });
  });
});
