/** Everything the sampler needs about one club, swing, lie and chosen carry on a day, as plain numbers. */

import type { Conditions } from '../conditions/conditions.ts';
import { Lie, LIE_NAMES, type LieCode } from '../ground/lies.ts';
import type { LieEffect, PlayerModel, ShotSpread, Swing } from '../player/model.ts';
import { partSpread } from '../player/part-swing.ts';
import { curveShareOf } from './curve-share.ts';
import { type BagFlights, type DayFlight, flightFor, runShareFor } from './bag-flights.ts';

/** Metres and radians; shares in [0, 1]. Carries are those of still air on an ordinary day, see `AimedShot`. */
export interface ShotLaw {
  readonly carryMean: number;
  readonly carrySd: number;
  readonly directionMean: number;
  readonly directionSd: number;
  readonly correlation: number;
  /** sqrt(1 - correlation²). */
  readonly directionOwn: number;
  readonly poorShare: number;
  readonly poorCarryMean: number;
  readonly poorCarrySd: number;
  readonly poorDirectionSd: number;
  readonly flight: DayFlight;
  readonly conditions: Conditions;
  /** Run, against that of the flight by the ratio of their carries. */
  readonly runFactor: number;
  /** Standard deviation of the run as a share of its mean, besides what carry brings. */
  readonly runSdShare: number;
  /** Of the club, radians: a sloping stance turns the face of a lofted one. */
  readonly loft: number;
  /** How far to the right of its starting line the ball lands on purpose, as a share of its carry; 0 for a straight shot. */
  readonly curveShare: number;
}

/** Common practice, no source. A part swing's spread is recorded by where balls end, so most of its run's is in it. */
const RUN_SD_SHARE = 0.35;
const PART_RUN_SD_SHARE = 0.1;

/** A ball from rough stops later; one splashed out of sand comes high and soft. Common practice, no source. */
function runFactor(lie: LieCode, swing: Swing): number {
  if (lie === Lie.bunker && swing === 'part') return 0.35;
  return lie === Lie.rough || lie === Lie.longRough || lie === Lie.woods ? 1.3 : 1;
}

/** The run of a part swing changes with its length more smoothly than from one kept flight to the next. */
function sizeFactor(bag: BagFlights, spreadIndex: number, carryM: number, flight: DayFlight): number {
  const kept = runShareFor(bag, spreadIndex, flight.table.carryM);
  return kept > 0 ? Math.max(0, runShareFor(bag, spreadIndex, carryM)) / kept : 1;
}

/** Mean run on a level ground of `lie` as a share of carry, in still air. */
export function runShare(law: ShotLaw, lie: LieCode = Lie.fairway): number {
  const { table, runs } = law.flight;
  return (law.runFactor * runs[0]!.totalM[lie]!) / table.carryM;
}

/**
 * The law of the spread `spreadIndex` from `lie`, or null where that club is not played from there. `carryM` is the carry
 * asked for and counts for part swings only. `spread` may differ a little from the one that the flights are made for.
 */
export function shotLaw(
  player: PlayerModel,
  spreadIndex: number,
  lie: LieCode,
  carryM: number,
  bag: BagFlights,
): ShotLaw | null {
  const spread = player.spreads[spreadIndex]!;
  const effect = effectOf(player, spread, lie, bag);
  if (!effect.playable) return null;
  const base = spread.swing === 'part' ? partSpread(spread, carryM) : spread;
  // The player allows for what the lie takes off a part swing; a full swing has nothing to add.
  const carryFactor = spread.swing === 'part' ? 1 : effect.carryFactor;
  const carryMean = base.carryMean * carryFactor;
  const poorShare = Math.min(0.6, base.poorShare + effect.poorShareAdded);
  const flight = flightFor(bag, spreadIndex, base.carryMean);
  return {
    carryMean,
    carrySd: base.carrySd * carryFactor * effect.carrySdFactor,
    directionMean: base.directionMean,
    directionSd: base.directionSd * effect.directionSdFactor,
    correlation: base.correlation,
    directionOwn: Math.sqrt(1 - base.correlation ** 2),
    poorShare,
    poorCarryMean: carryMean * base.poor.carryShareMean,
    poorCarrySd: carryMean * base.poor.carryShareSd,
    poorDirectionSd: base.poor.directionSd * effect.directionSdFactor,
    flight,
    conditions: bag.conditions,
    runFactor: runFactor(lie, spread.swing) * sizeFactor(bag, spreadIndex, base.carryMean, flight),
    runSdShare: spread.swing === 'part' ? PART_RUN_SD_SHARE : RUN_SD_SHARE,
    loft: (spread.club.loftDeg * Math.PI) / 180,
    curveShare: curveShareOf(spread.swing),
  };
}

/** Preferred lies (Model Local Rule E-3): a ball in the fairway is placed, so it lies as on a tee peg's ground. */
function effectOf(player: PlayerModel, spread: ShotSpread, lie: LieCode, bag: BagFlights): LieEffect {
  const effect = player.lieEffect(spread.club, spread.swing, LIE_NAMES[lie]!);
  return lie === Lie.fairway && bag.conditions.rules.preferredLies
    ? { ...effect, poorShareAdded: 0 }
    : effect;
}
