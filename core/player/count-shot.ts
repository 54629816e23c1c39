/**
 * How one recorded shot counts for the law of its club: as measured, or as what the same strike would have done from a
 * good lie in still air on an ordinary day. Weather is taken off with the flight model, a lie with the effect that the
 * planner puts on (`lie-effects.ts`).
 */

import { speedText, temperatureText } from '../conditions/day-words.ts';
import { refuse } from '../result.ts';
import type { BagClub, RecordedShot } from './format.ts';
import { lieEffectsFor } from './lie-effects.ts';
import type { LieWidening, MeasuredShot } from './measured-shot.ts';
import type { LieEffect, Swing } from './model.ts';
import { dayOf } from './recency.ts';
import { type AirDoubt, isOrdinary, type PlacedShot, type StillAir, weatherDoubt } from './still-air.ts';
import { readLie } from './shot-lie.ts';
import { tell, told, type Told } from '../words/told.ts';
import { capital, type Words } from '../words/words.ts';

const DEGREE = Math.PI / 180;
/** No carry shorter than this can be told from a missed ball. */
const LEAST_CARRY_M = 1;
/** A handicap whose lie effects are taken where none is given. */
const USUAL_HANDICAP = 16;

export type LeftOut =
  | 'shot-of-unknown-club'
  | 'shot-of-unknown-swing'
  | 'shot-of-putter'
  | 'part-shot-unused'
  | 'shot-from-bad-lie'
  | 'shot-without-direction'
  | 'shot-impossible';

export interface CountedShot {
  readonly shot: MeasuredShot;
  /** Taken to a good lie in still air. */
  readonly isConverted: boolean;
  /** What of it could not be taken off: it counts as measured there. */
  readonly doubts: readonly CountDoubt[];
}

export type CountDoubt = AirDoubt | { readonly kind: 'lie'; readonly told: Told };

/** The shot as it was measured, before anything is taken off; or why it cannot count at all. */
export function readShot(club: BagClub | undefined, swing: Swing, shot: RecordedShot): PlacedShot | LeftOut {
  if (club === undefined) return 'shot-of-unknown-club';
  if (club.kind === 'putter') return 'shot-of-putter';
  if (swing === 'part' && !((shot.intendedM ?? 0) >= LEAST_CARRY_M)) return 'part-shot-unused';
  if (!club.swings.includes(swing)) return 'shot-of-unknown-swing';
  if (shot.carryM < LEAST_CARRY_M) return 'shot-impossible';
  if (shot.directionDeg !== undefined) return { carryM: shot.carryM, direction: shot.directionDeg * DEGREE };
  if (shot.offlineM === undefined) return 'shot-without-direction';
  const sine = shot.offlineM / shot.carryM;
  if (Math.abs(sine) > 1) return 'shot-impossible';
  return { carryM: shot.carryM, direction: Math.asin(sine) };
}

export class ShotCounter {
  private readonly lieEffect: ReturnType<typeof lieEffectsFor>;

  /** `air` may be kept from one counting to the next. */
  constructor(
    handicap: number | undefined,
    private readonly air: StillAir,
  ) {
    this.lieEffect = lieEffectsFor(handicap ?? USUAL_HANDICAP);
  }

  /** `placed` from `readShot`; `typicalCarryM`: what the club and swing usually carry in still air. */
  count(
    club: BagClub,
    swing: Swing,
    shot: RecordedShot,
    placed: PlacedShot,
    typicalCarryM: number,
  ): CountedShot | LeftOut {
    const doubts: CountDoubt[] = [];
    const effect = this.effectOf(club, swing, shot.lie, doubts);
    if (typeof effect === 'string') return effect;
    let { carryM, direction } = placed;
    let isConverted = effect !== null;
    if (!isOrdinary(shot)) {
      const beyond = weatherDoubt(shot);
      const still =
        beyond === null ? this.air.still(club, swing, typicalCarryM, placed, shot) : refuse(beyond);
      if (still.ok) {
        ({ carryM, direction } = still.value);
        isConverted = true;
      } else doubts.push(still.error);
    }
    const day = dayOf(shot.at);
    return {
      shot: {
        carryM: effect === null ? carryM : carryM / effect.carryFactor,
        direction,
        ...(day === undefined ? {} : { day }),
        ...(effect === null ? {} : { lie: wideningOf(effect) }),
      },
      isConverted,
      doubts,
    };
  }

  /** Null for a good lie and for one that is not known, about which there is then a doubt. */
  private effectOf(
    club: BagClub,
    swing: Swing,
    written: string | undefined,
    doubts: CountDoubt[],
  ): LieEffect | LeftOut | null {
    const lie = readLie(written);
    if (lie === null) {
      doubts.push({
        kind: 'lie',
        told: told(({ spread }) => spread.doubts.lie, { lie: written ?? '' }),
      });
      return null;
    }
    if (lie === 'good') return null;
    // How a part swing scatters from a bad lie is not known well enough to take it off again.
    if (lie === 'penalty' || swing === 'part') return 'shot-from-bad-lie';
    const { name, kind, loftDeg, swings } = club;
    const effect = this.lieEffect({ name, kind, loftDeg, swings }, swing, lie);
    return effect.playable ? effect : 'shot-from-bad-lie';
  }
}

function wideningOf({ carrySdFactor, directionSdFactor, poorShareAdded }: LieEffect): LieWidening {
  return { carryWidth: carrySdFactor, directionWidth: directionSdFactor, poorAdded: poorShareAdded };
}

const YARD_M = 0.9144;

/** What a shot counts as, in a sentence: `140 yd, 3 yd left: from a good lie in still air at 15 °C at sea level`. */
export function countedWords(
  { shot, isConverted, doubts }: CountedShot,
  from: RecordedShot,
  units: 'yards' | 'metres',
  words: Words,
): string {
  const { counted } = words.spread;
  const { aside } = words.golf;
  const [unit, word] = units === 'yards' ? [YARD_M, 'yd'] : [1, 'm'];
  const sideways = Math.round((shot.carryM * Math.sin(shot.direction)) / unit);
  const length = `${Math.abs(sideways)} ${word}`;
  const flagged = doubts.map((doubt) => `${capital(tell(doubt.told, words))}.`);
  if (!isConverted) return [counted.asMeasured, ...flagged].join(' ');
  const lie = readLie(from.lie) ?? 'good';
  const isAir = !isOrdinary(from);
  const was = [...(lie === 'good' ? [] : [counted.from[lie]]), ...(isAir ? airWas(from, units, words) : [])];
  const becomes = [
    ...(lie === 'good' ? [] : [counted.goodLie]),
    ...(isAir && !doubts.some(({ kind }) => kind !== 'lie') ? [counted.stillAir] : []),
  ];
  return [
    counted.becomes({
      length: `${Math.round(shot.carryM / unit)} ${word}`,
      side: sideways === 0 ? aside.straight : sideways > 0 ? aside.right({ length }) : aside.left({ length }),
      where: becomes.join(' '),
      was: was.join(', '),
    }),
    ...flagged,
  ].join(' ');
}

function airWas(
  { windMps = 0, windFromDeg, temperatureC, altitudeM }: RecordedShot,
  units: 'yards' | 'metres',
  words: Words,
): readonly string[] {
  const { counted } = words.spread;
  return [
    ...(windMps > 0
      ? [
          counted.wind({
            wind: speedText(windMps, units, words),
            side: windFromDeg === undefined ? '' : ` ${windSide(windFromDeg, words)}`,
          }),
        ]
      : []),
    ...(temperatureC === undefined
      ? []
      : [counted.temperature({ temperature: temperatureText(temperatureC, units) })]),
    ...(altitudeM === undefined ? [] : [counted.altitude({ metres: String(Math.round(altitudeM)) })]),
  ];
}

/** The side a wind came from, to an eighth of the circle: `from ahead on the right`. */
export function windSide(windFromDeg: number, { spread }: Words): string {
  const eighth = ((Math.round(windFromDeg / 45) % 8) + 8) % 8;
  return spread.windSides[String(eighth) as keyof typeof spread.windSides];
}
