/** The day that a round keeps: read from new and old files, and taken off again from shots that join the measured ones. */

import { describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import { aimedShot } from '../../core/flight/aimed-shot.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import { shotLaw } from '../../core/flight/shot-law.ts';
import { Lie } from '../../core/ground/lies.ts';
import { ShotCounter } from '../../core/player/count-shot.ts';
import type { RecordedShot } from '../../core/player/format.ts';
import { StillAir } from '../../core/player/still-air.ts';
import { shotsForSpread } from '../../core/round/feed-spread.ts';
import { type RecordedStroke, type RoundDocument, roundText } from '../../core/round/format.ts';
import { newRound, parseRoundText } from '../../core/round/record.ts';
import { dayOfRound } from '../../core/round/round-day.ts';
import { fourClubs, statedPlayer } from '../plan/synthetic.ts';
import { english } from '../../core/words/english/english.ts';

const WINDY: Conditions = {
  ...DEFAULT_CONDITIONS,
  wind: { speedMps: 6, fromDeg: 0, gustSdMps: 0 },
  temperatureC: 8,
};
const PLAYER = statedPlayer({ spreads: fourClubs() });
const IRON = PLAYER.spreads.findIndex(({ club }) => club.name === 'Iron');
const FRAME = makeLocalFrame([4, 52]);

function round(more: Partial<RoundDocument> = {}): RoundDocument {
  return newRound({ name: 'x', course: { name: 'c' }, player: { name: 'p' }, feedsSpread: true, ...more });
}

describe('the day of a round', () => {
  it('comes back from its file', () => {
    const read = parseRoundText(roundText(round({ day: WINDY })));
    expect(read.ok && dayOfRound(read.value.round)).toEqual(WINDY);
  });

  it('is made of the weather that older files note, and is not known where they note none', () => {
    expect(dayOfRound(round())).toBeNull();
    expect(dayOfRound(round({ conditions: { notes: 'fine' } }))).toBeNull();
    expect(
      dayOfRound(round({ conditions: { windMps: 4, windFromDeg: 90, greenSpeedFt: 3, firmness: 'firm' } })),
    ).toEqual({
      ...DEFAULT_CONDITIONS,
      wind: { speedMps: 4, fromDeg: 90, gustSdMps: 0 },
      ...{ greenSpeedFt: 5, firmness: 'firm' },
    });
    expect(dayOfRound(round({ conditions: { windMps: 4 } }))?.wind.speedMps).toBe(0);
  });

  it('that is none is refused by name', () => {
    const spoilt = { ...round(), day: { ...WINDY, temperatureC: 'warm' } };
    const read = parseRoundText(JSON.stringify(spoilt));
    expect(!read.ok && read.error[0]?.where).toBe('day.temperatureC');
  });
});

describe('shots that are fed in from a windy round', () => {
  const bearings = [0, Math.PI / 2, Math.PI, 4.1];
  const law = shotLaw(PLAYER, IRON, Lie.tee, 140, bagFlights(PLAYER.spreads, WINDY))!;
  const carryAt = (bearing: number): number => 140 * aimedShot(law, bearing).carryFactor;

  /** Irons from the tee, struck as their law's middle, that end where flight and run of the day take them. */
  const strokes = bearings.map((bearing): RecordedStroke => {
    const { turn, run, runCarryM } = aimedShot(law, bearing);
    const total = carryAt(bearing) * (1 + (law.runFactor * run.totalM[Lie.fairway]!) / runCarryM);
    const place = (metres: number, at: number): [number, number] => {
      const [lon, lat] = FRAME.toLonLat({ x: metres * Math.sin(at), y: metres * Math.cos(at) });
      return [lon, lat];
    };
    return {
      ...{ club: 'Iron', from: place(0, 0), aim: place(140, bearing), to: place(total, bearing + turn) },
      ...{ fromLie: 'tee', toLie: 'fairway' },
    };
  });
  const played = [{ hole: 1, par: 4, score: 4, shots: [...strokes] }];
  const given = shotsForSpread(round({ day: WINDY, played }), PLAYER, () => FRAME, english);

  const counter = new ShotCounter(16, new StillAir());
  const stillOf = (shot: RecordedShot) => {
    const { club } = PLAYER.spreads[IRON]!;
    const placed = { carryM: shot.carryM, direction: (shot.directionDeg! * Math.PI) / 180 };
    const counted = counter.count({ ...club, swings: [...club.swings] }, 'full', shot, placed, 140);
    if (typeof counted === 'string') throw new Error(counted);
    expect(counted.doubts).toEqual([]);
    return counted.shot;
  };

  it('say the wind as it was felt along their aim', () => {
    expect(given.leftOut).toEqual([]);
    expect(given.shots.slice(0, 3)).toMatchObject([
      { windMps: 6, windFromDeg: 0, temperatureC: 8 },
      { windFromDeg: 270 },
      { windFromDeg: 180 },
    ]);
  });

  it.each([0, 1, 2, 3])('keep their flown carry, and count as the strike in still air (%i)', (i) => {
    const shot = given.shots[i]!;
    expect(shot.carryM).toBeCloseTo(carryAt(bearings[i]!), 0);
    const { carryM, direction } = stillOf(shot);
    // Flights are kept in steps of direction, and what is taken off is found for a strike, not for a table.
    expect(Math.abs(carryM - 140)).toBeLessThan(1.5);
    expect(Math.abs(direction)).toBeLessThan(0.01);
  });

  it('say nothing of an ordinary day, nor where no day is known', () => {
    const shots = [{ club: 'Iron', from: [4, 52], aim: [4, 52.01], to: [4, 52.0012] }];
    for (const day of [undefined, DEFAULT_CONDITIONS]) {
      const played = [{ hole: 1, par: 4, score: 4, shots }] as unknown as RoundDocument['played'];
      const given = shotsForSpread(
        round({ played, ...(day === undefined ? {} : { day }) }),
        PLAYER,
        () => FRAME,
        english,
      );
      expect(Object.keys(given.shots[0]!).sort()).toEqual(
        ['carryM', 'club', 'directionDeg', 'fromRound', 'lie', 'swing', 'totalM'].sort(),
      );
    }
  });
});
