/** Shots of a round among a player's measured ones: there once at most, however often and wherever they are added. */

import { describe, expect, it } from 'vitest';
import type { RecordedShot } from '../../core/player/format.ts';
import {
  countAmong,
  shotsAsBefore,
  strokeMark,
  withoutShotsOfRound,
  withShotsOfRound,
} from '../../core/round/fed-shots.ts';
import { newRound } from '../../core/round/record.ts';

const RANGE: RecordedShot[] = [{ club: 'Driver', carryM: 200, directionDeg: 1, lie: 'range' }];
const shot = (mark: string, carryM: number): RecordedShot => ({
  ...{ club: '7-iron', swing: 'full', carryM, totalM: carryM + 5, directionDeg: 2, lie: 'tee' },
  fromRound: mark,
});
const GIVEN = [shot('r/1/1', 140), shot('r/4/1', 140), shot('r/4/2', 151)];

describe('shots of a round among the measured ones', () => {
  it('are there once, however often they are added', () => {
    const once = withShotsOfRound(RANGE, GIVEN);
    expect(once).toHaveLength(4);
    expect(withShotsOfRound(once, GIVEN)).toEqual(once);
    expect(countAmong(once, GIVEN)).toEqual({ held: 3, current: 3 });
  });

  it('that were corrected stand in place of what they were', () => {
    const once = withShotsOfRound(RANGE, GIVEN);
    const corrected = [shot('r/1/1', 133), ...GIVEN.slice(1)];
    expect(countAmong(once, corrected)).toEqual({ held: 3, current: 2 });
    const twice = withShotsOfRound(once, corrected);
    expect(twice).toHaveLength(4);
    expect(twice[1]!.carryM).toBe(133);
    // Taken back, the first adding is what is left.
    expect([...shotsAsBefore(twice, once, corrected)].sort(byMark)).toEqual([...once].sort(byMark));
  });

  it('do not ask to be added again because they changed the run that their carry is worked back by', () => {
    const once = withShotsOfRound(RANGE, GIVEN);
    const anew = GIVEN.map((one) => ({ ...one, carryM: one.carryM - 0.3 }));
    expect(countAmong(once, anew)).toEqual({ held: 3, current: 3 });
  });

  it('are gone once taken back, and can be added once again', () => {
    const once = withShotsOfRound(RANGE, GIVEN);
    const undone = shotsAsBefore(once, RANGE, GIVEN);
    expect(undone).toEqual(RANGE);
    expect(withShotsOfRound(undone, GIVEN)).toEqual(once);
    expect(withoutShotsOfRound(once, GIVEN)).toEqual(RANGE);
  });

  it('of an older adding, without a mark, are not doubled', () => {
    const unmarked = GIVEN.map((one) => {
      const old = { ...one };
      delete old.fromRound;
      return old;
    });
    expect(withShotsOfRound([...RANGE, ...unmarked], GIVEN)).toEqual([...RANGE, ...GIVEN]);
  });

  it('are told apart between rounds, also those without an id', () => {
    const played = [{ hole: 1, par: 3, score: 3, shots: [{ club: 'x', to: [1, 2] as [number, number] }] }];
    const base = { name: 'a', course: { name: 'c' }, player: { name: 'p' }, played };
    expect(strokeMark(newRound({ ...base, id: 'one' }), 1, 1)).not.toBe(
      strokeMark(newRound({ ...base, id: 'two' }), 1, 1),
    );
    const other = [{ ...played[0]!, shots: [{ club: 'x', to: [1, 3] as [number, number] }] }];
    expect(strokeMark(newRound(base), 1, 1)).not.toBe(strokeMark(newRound({ ...base, played: other }), 1, 1));
  });
});

function byMark(a: RecordedShot, b: RecordedShot): number {
  return (a.fromRound ?? '').localeCompare(b.fromRound ?? '');
}
