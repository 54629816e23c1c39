/** Changes of a player file: the bag, the shots, the clubs that go out; each leaves a file that still reads. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addClub, changeClub, removeClub } from '../../core/player/edits/clubs.ts';
import { newPlayer } from '../../core/player/edits/new-player.ts';
import { addShots, removeShots, replaceShot } from '../../core/player/edits/shots.ts';
import { MOST_SHOTS, type PlayerDocument, playerText } from '../../core/player/format.ts';
import { parsePlayer, parsePlayerDocumentText } from '../../core/player/parse.ts';
import { minimalPlayer } from './sample-player.ts';
import { inEnglish, type Told } from '../../core/words/told.ts';

function good<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Told },
): T {
  if (!result.ok) throw new Error(inEnglish(result.error));
  return result.value;
}

function modelOf(document: PlayerDocument) {
  const read = parsePlayer(JSON.parse(JSON.stringify(document)));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

describe('clubs of a bag', () => {
  it('puts a new club where its loft belongs, the putter last', () => {
    const club = { name: '5-iron', kind: 'iron', loftDeg: 25, swings: ['full'] } as const;
    const document = good(addClub(minimalPlayer(), { ...club, swings: ['full'] }));
    expect(document.bag.map(({ name }) => name)).toEqual([
      'Driver',
      '5-iron',
      '7-iron',
      'Sand wedge',
      'Putter',
    ]);
    expect(addClub(document, { ...club, swings: ['full'] })).toMatchObject({ ok: false });
  });

  it('renames a club with its shots and with what tables call it', () => {
    const before: PlayerDocument = {
      ...minimalPlayer(),
      shots: [
        { club: '7-iron', carryM: 130, offlineM: 2 },
        { club: 'Driver', carryM: 190, offlineM: 2 },
      ],
      settings: {
        sources: [
          {
            name: 'box',
            headers: ['a'],
            mapping: {
              delimiter: ',',
              decimal: '.',
              skipRows: 1,
              columns: [{ index: 0, header: 'a', field: 'carry' }],
              clubNames: { '7I': '7-iron' },
            },
          },
        ],
      },
    };
    const after = good(changeClub(before, '7-iron', { name: 'Old seven' }));
    expect(after.shots?.map(({ club }) => club)).toEqual(['Old seven', 'Driver']);
    expect(after.settings?.sources?.[0]?.mapping.clubNames).toEqual({ '7I': 'Old seven' });
    expect(after.bag[1]?.name).toBe('Old seven');
  });

  it('refuses a taken name, a name of spaces, no swing, and the last club', () => {
    const player = minimalPlayer();
    for (const change of [{ name: 'Driver' }, { name: '  ' }, { name: 'x'.repeat(61) }, { swings: [] }])
      expect(changeClub(player, '7-iron', change)).toMatchObject({ ok: false });
    const two = good(removeClub(good(removeClub(player, 'Driver')), '7-iron'));
    expect(removeClub(two, 'Sand wedge')).toMatchObject({ ok: false });
  });

  it('keeps members that the program does not know, and takes away what is cleared', () => {
    const player = minimalPlayer();
    const odd = { ...player, bag: player.bag.map((club) => ({ ...club, colour: 'red', lengthM: 1 })) };
    const after = good(changeClub(odd, 'Driver', { lengthM: undefined, loftDeg: 9 }));
    expect(after.bag[0]).toEqual({ ...odd.bag[0], loftDeg: 9, lengthM: undefined });
    expect(Object.hasOwn(after.bag[0]!, 'lengthM')).toBe(false);
  });
});

describe('clubs that go out', () => {
  it('plans only with these, while those at home still tell of their neighbours', () => {
    const document = good(changeClub(minimalPlayer(), '7-iron', { inRound: false }));
    expect(modelOf(document).spreads.map(({ club }) => club.name)).not.toContain('7-iron');
    const whole = parsePlayer(document, { wholeBag: true });
    expect(whole.ok && whole.value.spreads.map(({ club }) => club.name)).toContain('7-iron');
    const posterior = modelOf(document).posterior?.();
    expect(posterior?.entries.map(({ club }) => club.name)).toEqual(
      modelOf(document).spreads.map(({ club }) => club.name),
    );
  });

  it('counts fourteen by those that go out (Rules of Golf 2023, Rule 4.1b)', () => {
    let document = minimalPlayer();
    for (let i = 0; i < 11; i++)
      document = good(
        addClub(document, { name: `Iron ${i}`, kind: 'iron', loftDeg: 20 + i, swings: ['full'] }),
      );
    expect(document.bag).toHaveLength(15);
    expect(modelOf(document).warnings.map(({ code }) => code)).toContain('over-fourteen-clubs');
    const fewer = good(changeClub(document, 'Iron 3', { inRound: false }));
    expect(modelOf(fewer).warnings.map(({ code }) => code)).not.toContain('over-fourteen-clubs');
  });

  it('refuses a round with nothing but a putter', () => {
    let document = minimalPlayer();
    for (const { name } of document.bag.slice(0, 3))
      document = good(changeClub(document, name, { inRound: false }));
    const read = parsePlayer(document);
    expect(!read.ok && read.error[0]?.code).toBe('no-clubs');
  });

  it('leaves a club in the bag from the lies that the player names, and only from these', () => {
    const plain = modelOf(minimalPlayer());
    const choosy = modelOf(good(changeClub(minimalPlayer(), '7-iron', { notFrom: ['rough'] })));
    const iron = plain.spreads.find(({ club }) => club.name === '7-iron')!.club;
    const wedge = plain.spreads.find(({ club }) => club.name === 'Sand wedge')!.club;
    expect(plain.lieEffect(iron, 'full', 'rough').playable).toBe(true);
    expect(choosy.lieEffect(iron, 'full', 'rough').playable).toBe(false);
    expect(choosy.lieEffect(iron, 'full', 'fairway')).toEqual(plain.lieEffect(iron, 'full', 'fairway'));
    expect(choosy.lieEffect(wedge, 'full', 'rough')).toEqual(plain.lieEffect(wedge, 'full', 'rough'));
  });
});

describe('shots of a player', () => {
  const shot = { club: 'Driver', carryM: 180, offlineM: 3 };

  it('adds, replaces and takes out; the rest stays as it is', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 30 }),
        fc.nat(),
        (carries, n) => {
          const shots = carries.map((carryM) => ({ ...shot, carryM }));
          const document = good(addShots(minimalPlayer(), shots));
          const at = n % shots.length;
          const changed = replaceShot(document, at, { ...shot, carryM: 999 });
          expect(changed.shots?.map((one, i) => (i === at ? 999 : one.carryM))).toEqual(
            carries.map((carry, i) => (i === at ? 999 : carry)),
          );
          expect(removeShots(document, new Set([at])).shots).toEqual(shots.filter((_, i) => i !== at));
        },
      ),
      { numRuns: 50 },
    );
  });

  it('refuses more than a file holds and says how many there is room for', () => {
    const full = { ...minimalPlayer(), shots: Array.from({ length: MOST_SHOTS - 2 }, () => shot) };
    expect(addShots(full, [shot, shot])).toMatchObject({ ok: true });
    const refused = addShots(full, [shot, shot, shot]);
    expect(!refused.ok && inEnglish(refused.error)).toContain('room for 2');
  });
});

describe('a new player', () => {
  it.each(['men', 'women', 'senior-men', 'senior-women', 'juniors'] as const)(
    'of %s reads, plans and has no shots',
    (group) => {
      const document = newPlayer({ name: 'New', handicap: 21, group, hand: 'left', units: 'metres' });
      const read = parsePlayerDocumentText(playerText(document));
      if (!read.ok) throw new Error(JSON.stringify(read.error));
      expect(read.value.document).toEqual(document);
      const { spreads, hand, units } = read.value.player;
      expect({ hand, units }).toEqual({ hand: 'left', units: 'metres' });
      expect(spreads.every(({ source }) => source.from === 'preset')).toBe(true);
    },
  );
});
