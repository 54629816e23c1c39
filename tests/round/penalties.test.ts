/** Penalties and drops of a recorded hole: strokes by the Rules of Golf (The R&A and USGA, 2023), and where play goes on. */

import { describe, expect, it } from 'vitest';
import { shotsCsv } from '../../core/round/csv.ts';
import {
  PENALTY_KINDS,
  type PlayedHoleRecord,
  type RecordedStroke,
  roundText,
} from '../../core/round/format.ts';
import {
  joinedAfter,
  likelyPenalty,
  needsDrop,
  penaltiesOf,
  startAfter,
  sumOfHole,
  withPenalty,
  withShots,
} from '../../core/round/penalties.ts';
import { newRound, parseRoundText, withDate, withHole } from '../../core/round/record.ts';

const TEE: [number, number] = [1, 50];
const WATER: [number, number] = [1.001, 50.001];
const DROP: [number, number] = [1.0005, 50.001];
const TEE_SHOT: RecordedStroke = {
  ...{ club: '5-iron', from: TEE, fromLie: 'tee' as const, to: WATER, toLie: 'penaltyRed' as const },
};
const NEXT: RecordedStroke = { club: '8-iron', from: WATER, fromLie: 'penaltyRed', to: [1.002, 50.002] };

describe('a penalty', () => {
  it('costs one stroke of each kind (Rules 17.1d, 18.2b, 19.2)', () => {
    for (const kind of PENALTY_KINDS)
      expect(withPenalty(TEE_SHOT, kind)).toMatchObject({ penalty: 1, penaltyKind: kind });
    expect(withPenalty(withPenalty(TEE_SHOT, 'unplayable'), null)).toEqual(TEE_SHOT);
  });

  it('is likely where the ground says so, and nowhere else', () => {
    expect(likelyPenalty('outOfBounds')).toBe('strokeAndDistance');
    expect(likelyPenalty('penaltyYellow')).toBe('penaltyArea');
    expect(likelyPenalty('woods')).toBeNull();
  });

  it('of stroke and distance goes on from the spot of the stroke; else from the drop', () => {
    expect(startAfter(withPenalty(TEE_SHOT, 'strokeAndDistance'))).toEqual({ at: TEE, lie: 'tee' });
    const wet = withPenalty(TEE_SHOT, 'penaltyArea');
    expect(needsDrop(wet)).toBe(true);
    expect(startAfter(wet)).toBeNull();
    const dropped: RecordedStroke = { ...wet, drop: DROP, dropLie: 'rough' };
    expect(needsDrop(dropped)).toBe(false);
    expect(startAfter(dropped)).toEqual({ at: DROP, lie: 'rough' });
    expect(startAfter(TEE_SHOT)).toEqual({ at: WATER, lie: 'penaltyRed' });
  });

  it('moves the start of the next stroke, and that only', () => {
    const third: RecordedStroke = { club: 'Wedge', from: [9, 9] };
    const shots = joinedAfter([{ ...withPenalty(TEE_SHOT, 'penaltyArea'), drop: DROP }, NEXT, third], 0);
    expect(shots[1]!.from).toEqual(DROP);
    expect(shots[1]!.fromLie).toBeUndefined();
    expect(shots[2]).toBe(third);
    // Nobody knows from where, until the drop is given.
    expect(joinedAfter([withPenalty(TEE_SHOT, 'penaltyArea'), NEXT], 0)[1]!.from).toBeUndefined();
  });
});

describe('the strokes of a hole', () => {
  const bare: PlayedHoleRecord = { hole: 1, par: 4, score: 6, putts: 2, penalties: 0 };
  const shots = [withPenalty(TEE_SHOT, 'penaltyArea'), NEXT, { club: 'Wedge' }];

  it('add up: shots, putts and penalties make the score', () => {
    const hole = withShots(bare, shots);
    expect(hole.penalties).toBe(1);
    expect(sumOfHole(hole)).toEqual({ shots: 3, putts: 2, penalties: 1, total: 6, missing: 0 });
    expect(sumOfHole({ ...hole, score: 7 }).missing).toBe(1);
    expect(sumOfHole({ ...hole, score: 5 }).missing).toBe(-1);
  });

  it('keep what was typed of penalties that no shot has, and count none twice', () => {
    const typed = { ...bare, penalties: 1 };
    expect(withShots(typed, shots).penalties).toBe(1);
    expect(withShots({ ...bare, penalties: 2 }, shots).penalties).toBe(2);
    const back = withShots(withShots(bare, shots), []);
    expect(back).toEqual(bare);
    expect(penaltiesOf(back.shots)).toBe(0);
  });
});

describe('a round file with penalties', () => {
  const round = withHole(
    newRound({
      name: 'Links, 2026-04-11',
      playedAt: '2026-04-11',
      course: { name: 'L' },
      player: { name: 'p' },
    }),
    withShots({ hole: 1, par: 4, score: 5, putts: 2, penalties: 0 }, [
      { ...withPenalty(TEE_SHOT, 'penaltyArea'), drop: DROP, dropLie: 'rough' },
      NEXT,
    ]),
  );

  it('carries kind and drop through JSON and CSV', () => {
    const parsed = parseRoundText(roundText(round));
    expect(parsed.ok && parsed.value).toEqual({ round, warnings: [] });
    const [head, first] = shotsCsv(round).split('\r\n');
    const cell = (name: string): string | undefined => first!.split(',')[head!.split(',').indexOf(name)];
    expect(['penalty', 'penalty_kind', 'drop_lon', 'drop_lat', 'drop_lie'].map(cell)).toEqual([
      ...['1', 'penaltyArea', '1.0005', '50.001', 'rough'],
    ]);
  });

  it('says so where the penalties of the shots are more than the hole’s', () => {
    const odd = withHole(round, { ...round.played[0]!, penalties: 0 });
    const parsed = parseRoundText(roundText(odd));
    expect(parsed.ok && parsed.value.warnings.map(({ code }) => code)).toEqual(['penalties-do-not-add-up']);
  });

  it('takes another day, with the name that was made of it and the time that it keeps', () => {
    expect(withDate(round, '2026-04-09')).toMatchObject({
      playedAt: '2026-04-09',
      name: 'Links, 2026-04-09',
    });
    const own = { ...round, name: 'Club match', playedAt: '2026-04-11T08:40' };
    expect(withDate(own, '2026-04-09')).toMatchObject({ playedAt: '2026-04-09T08:40', name: 'Club match' });
  });
});
