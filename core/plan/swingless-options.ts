/** Options that need no full shot model: a putt from the green, and relief under penalty. */

import { isPenaltyArea } from '../ground/hole-ground.ts';
import { Lie, LIE_NAMES, type LieCode, type LieName } from '../ground/lies.ts';
import type { Option, ReliefKind, Spot, Trouble } from './model.ts';
import { parOddsOf } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import {
  edgeCrossing,
  improveByBackOnLine,
  improveByLateral,
  noRelief,
  PenaltyRelief,
  unplayableRelief,
  type ReliefSpot,
} from './relief.ts';
import { SCORE_COLUMNS, type StrokesField } from './strokes-field.ts';

const NO_TROUBLE: Trouble = {
  outOfBounds: 0,
  penaltyYellow: 0,
  penaltyRed: 0,
  bunker: 0,
  trees: 0,
  longRough: 0,
};

/** The putt at the hole. Its mean is exact under the putting model, so its standard error is 0. */
export function puttOption(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  strokesTaken: number,
): Option {
  const { pin, frame, hole, putts } = prepared;
  const distance = Math.hypot(pin.x - spot.x, pin.y - spot.y);
  const odds = new Float64Array(SCORE_COLUMNS);
  field.addOdds(spot.x, spot.y, Lie.green, 1, 0, odds);
  const leaveM = Math.max(0, distance * prepared.player.putting.distanceSdShare);
  return {
    ...plainOption('green', odds, strokesTaken, hole.par),
    id: 'putt',
    kind: 'shot',
    club: 'Putter',
    clubKind: 'putter',
    swing: 'full',
    aim: { bearing: Math.atan2(pin.x - spot.x, pin.y - spot.y), spot: pin, lonLat: frame.toLonLat(pin) },
    carryM: distance,
    meanStrokes: putts.expectedAt(spot.x - pin.x, spot.y - pin.y),
    leave: { p10M: 0, medianM: 0.6745 * leaveM, p90M: 1.645 * leaveM },
  };
}

/**
 * Relief that the lie allows: unplayable anywhere but on the tee and the green, out of a penalty area, or for a ball out of
 * bounds. A second stroke is taken to follow one from the tee; playing a later one again is the player's to weigh.
 */
export function reliefOptions(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  lie: LieCode,
  strokesTaken: number,
): Option[] {
  const options: Option[] = [];
  const { tee } = prepared;
  const add = (kind: ReliefKind, drop: ReliefSpot): void => {
    if (Number.isFinite(drop.total))
      options.push(reliefOption(prepared, field, spot, kind, drop, strokesTaken));
  };
  const replay: ReliefSpot = {
    ...{ x: tee.x, y: tee.y, lie: Lie.tee, penalty: 1 },
    total: 1 + field.valueAt(tee.x, tee.y, Lie.tee),
  };
  // After more strokes than one the last was not played from the tee, and from where is not known.
  const fromTee = strokesTaken <= 1;
  if (lie === Lie.outOfBounds) {
    if (fromTee) add('out-replay', replay);
    if (prepared.conditions.rules.strokeAndDistanceAlternative)
      add('out-fairway', new PenaltyRelief(field).forLostBall(tee.x, tee.y, spot.x, spot.y));
  } else if (isPenaltyArea(lie)) {
    // The straight way from the tee gives the reference point (17.1d).
    const crossing = edgeCrossing(field.ground, tee.x, tee.y, spot.x, spot.y);
    const line = noRelief();
    improveByBackOnLine(field, crossing, 1, line);
    add('penalty-back-on-line', line);
    if (lie === Lie.penaltyRed) {
      const lateral = noRelief();
      improveByLateral(field, crossing, 1, lateral);
      add('penalty-lateral', lateral);
    }
    if (fromTee) add('penalty-replay', replay);
  } else if (lie !== Lie.tee) {
    add('unplayable-lateral', unplayableRelief(field, spot, lie, 'lateral'));
    add('unplayable-back-on-line', unplayableRelief(field, spot, lie, 'line'));
    if (lie === Lie.bunker) add('unplayable-outside-bunker', unplayableRelief(field, spot, lie, 'outside'));
    if (fromTee) add('unplayable-replay', replay);
  }
  return options;
}

function reliefOption(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  relief: ReliefKind,
  drop: ReliefSpot,
  strokesTaken: number,
): Option {
  const odds = new Float64Array(SCORE_COLUMNS);
  field.addOdds(drop.x, drop.y, drop.lie, 1, drop.penalty, odds);
  const at = { x: drop.x, y: drop.y };
  const leaveM = Math.hypot(drop.x - prepared.pin.x, drop.y - prepared.pin.y);
  return {
    ...plainOption(LIE_NAMES[drop.lie]!, odds, strokesTaken, prepared.hole.par),
    id: relief,
    kind: 'relief',
    relief,
    penaltyStrokes: drop.penalty,
    club: 'Drop',
    clubKind: 'putter',
    swing: 'full',
    aim: { bearing: Math.atan2(at.x - spot.x, at.y - spot.y), spot: at, lonLat: prepared.frame.toLonLat(at) },
    carryM: Math.hypot(at.x - spot.x, at.y - spot.y),
    meanStrokes: drop.total,
    leave: { p10M: leaveM, medianM: leaveM, p90M: leaveM },
  };
}

type PlainParts = Pick<
  Option,
  | 'standardError'
  | 'lossToBest'
  | 'lossStandardError'
  | 'tooCloseToCall'
  | 'scoreOdds'
  | 'parOdds'
  | 'trouble'
  | 'endShare'
  | 'spreadSource'
>;

function plainOption(end: LieName, odds: Float64Array, strokesTaken: number, par: number): PlainParts {
  return {
    standardError: 0,
    lossToBest: 0,
    lossStandardError: 0,
    tooCloseToCall: false,
    scoreOdds: [0, ...odds],
    parOdds: parOddsOf(odds, strokesTaken, par),
    trouble: NO_TROUBLE,
    endShare: Object.fromEntries(LIE_NAMES.map((name) => [name, name === end ? 1 : 0])) as Record<
      LieName,
      number
    >,
    spreadSource: null,
  };
}
