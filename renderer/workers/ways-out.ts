/**
 * Ways out of trees from a spot, each played to the end, and how one shot passes the trees: its gap against the club's
 * spread, its height against the crowns. In steps, so that a worker can answer other questions between them.
 */

import type { LonLat } from '../../core/course/model.ts';
import { isOnRaster, isPenaltyArea, lieAt } from '../../core/ground/hole-ground.ts';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import { overLip } from '../../core/plan/bunker-lip.ts';
import type { Choice, Spot } from '../../core/plan/model.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import { evaluateChoice, planFromSpot } from '../../core/plan/options.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { lieOfSpot } from '../../core/plan/sample.ts';
import { aimAlong, shotTurn } from '../../core/plan/shot-turn.ts';
import { isForTrees } from '../../core/plan/tree-swings.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import type { ShotLaw } from '../../core/flight/shot-law.ts';
import type { Swing } from '../../core/player/model.ts';
import { type Clearance, clearanceOver, clearanceUnder } from '../../core/recovery/clearance.ts';
import { gapsFor, throughChance } from '../../core/recovery/gaps.ts';
import {
  type Passage,
  type RecoveryOption,
  recoveryOptions,
  type WayOut,
  wayOf,
} from '../../core/recovery/recovery-shots.ts';
import { type RecoveryShot, recoveryShot } from '../../core/recovery/shot-heights.ts';

/** Shots behind the strokes of one way: enough to rank them; the plan weighs the chosen one in full. */
const SAMPLES = 256;
/** Ways that are played to the end, and those told. */
const MOST_WEIGHED = 36;
const MOST_TOLD = 6;
/** Carries of the short way out with one club, metres. */
const SHORT_CARRIES_M = [15, 35];
/** Gaps are sought this far to either side of the shot on show. */
const SIDE = Math.PI / 2;
/** Heights that are as good as sure are not worth a line. */
const SURE = 0.995;

/** How one shot passes the trees. Bearings, of the lines along which balls fly, in radians clockwise from north. */
export interface TreePassage {
  readonly club: string;
  readonly swing: Swing;
  readonly bearing: number;
  readonly carryM: number;
  readonly passage: Passage;
  /** The opening that it is aimed through, and the others of this club nearby; null where it is aimed at no opening. */
  readonly gap: Opening | null;
  readonly otherGaps: readonly Opening[];
  /** Two of three solid strikes stay within so many degrees. */
  readonly spreadDeg: number;
  readonly throughChance: number;
  readonly over: Clearance | null;
  readonly under: Clearance | null;
}

export interface Opening {
  readonly from: number;
  readonly to: number;
  readonly widthDeg: number;
}

export interface WayOutOfTrees {
  readonly spreadIndex: number;
  readonly club: string;
  readonly swing: Swing;
  /** Of the aim: wind and stance carry the ball from it to the line of its gap. */
  readonly bearing: number;
  readonly carryM: number;
  /** On the line of the aim, as far as the club carries in still air. */
  readonly target: LonLat;
  readonly way: WayOut;
  readonly passage: Passage;
  readonly gapDeg: number;
  readonly spreadDeg: number;
  readonly throughChance: number;
  /** To hole out, from few samples. */
  readonly meanStrokes: number;
}

interface Swung {
  readonly spreadIndex: number;
  readonly carryM: number;
  readonly law: ShotLaw;
  readonly shot: RecoveryShot;
}

/** The club as it is played from this lie on this day; null where it is not. */
function swung(prepared: PreparedHole, lie: LieCode, spreadIndex: number, carryM: number): Swung | null {
  const spread = prepared.player.spreads[spreadIndex];
  const law = spread === undefined ? null : prepared.book.lawOf(spreadIndex, lie, carryM);
  if (spread === undefined || law === null) return null;
  const { carryMean, carrySd, directionMean, directionSd } = law;
  return {
    spreadIndex,
    carryM: carryMean,
    law,
    shot: recoveryShot(
      { ...spread, carryMean, carrySd, directionMean, directionSd },
      prepared.conditions,
      law.curveShare,
    ),
  };
}

/** Full, low and curved swings, and one club for short ways out: the first that is used for part swings, as the plan has it. */
function shotsToTry(prepared: PreparedHole, lie: LieCode): (() => Swung | null)[] {
  const { spreads } = prepared.player;
  const short = spreads.findIndex(
    ({ swing, carryMean }, i) => swing === 'part' && prepared.book.lawOf(i, lie, carryMean) !== null,
  );
  const shorts = SHORT_CARRIES_M.filter((carryM) => carryM <= (spreads[short]?.carryMean ?? 0));
  return [
    ...spreads.flatMap(({ swing, carryMean }, i) =>
      swing === 'full' || isForTrees(swing) ? [() => swung(prepared, lie, i, carryMean)] : [],
    ),
    ...shorts.map((carryM) => () => swung(prepared, lie, short, carryM)),
  ];
}

interface Candidate extends Swung {
  /** `bearing` is that of the line of flight. */
  readonly option: RecoveryOption;
  readonly aim: number;
}

/** Best first; yields the share done. Empty where no club is played from there. */
export function* waysOut(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  strokesTaken: number,
): Generator<number, readonly WayOutOfTrees[], void> {
  const { ground, pin } = prepared;
  const lie = lieOfSpot(prepared, spot);
  const toHole = Math.atan2(pin.x - spot.x, pin.y - spot.y);
  const found: Candidate[] = [];
  const tries = shotsToTry(prepared, lie);
  for (const [i, make] of tries.entries()) {
    yield (0.5 * i) / tries.length;
    const one = make();
    if (one === null) continue;
    for (const option of recoveryOptions(ground, spot.x, spot.y, toHole, [one.shot]))
      found.push({ ...one, option, aim: aimOf(prepared, spot, one.law, option.bearing) });
  }
  const ways: WayOutOfTrees[] = [];
  // a ball in a bunker under trees has its lip to clear first
  const clears = overLip(prepared.book, ground, spot, lie);
  const clear = found.filter(({ spreadIndex, carryM, aim }) => clears({ spreadIndex, carryM, bearing: aim }));
  const weighed = likeliest(prepared, spot, toHole, clear.length > 0 ? clear : found);
  for (const [i, { spreadIndex, carryM, shot, option, aim }] of weighed.entries()) {
    yield 0.5 + (0.5 * i) / weighed.length;
    const { way, passage, gapDeg, spreadDeg, throughChance: through } = option;
    const choice: Choice = { spreadIndex, bearing: aim, carryM };
    const weight = evaluateChoice(prepared, field, spot, choice, { strokesTaken, samples: SAMPLES });
    if (weight === null) continue;
    const target = prepared.frame.toLonLat(landing(spot, aim, carryM));
    ways.push({
      ...{ spreadIndex, club: shot.club, swing: shot.swing, bearing: aim, carryM, target },
      ...{ way, passage, gapDeg, spreadDeg, throughChance: through, meanStrokes: weight.meanStrokes },
    });
  }
  // What the plan would play is compared too, whether it goes through a gap or not.
  for (const option of planFromSpot(prepared, field, spot, { strokesTaken, samples: SAMPLES }).options) {
    if (option.kind !== 'shot') continue;
    const choice = choiceOf(prepared, option);
    const passed = treePassage(prepared, spot, choice);
    if (passed === null) continue;
    const { spreadIndex, bearing, carryM } = choice;
    const { club, swing, passage, gap, spreadDeg, throughChance: through } = passed;
    const target = prepared.frame.toLonLat(landing(spot, bearing, carryM));
    ways.push({
      ...{ spreadIndex, club, swing, bearing, carryM, target, way: wayOf(bearing - toHole), passage },
      ...{ gapDeg: gap?.widthDeg ?? 0, spreadDeg, throughChance: through, meanStrokes: option.meanStrokes },
    });
  }
  return worthTelling(ways);
}

/** The aim for the line on which a flight starts, a bias of the player's allowed for; a curved one lands beside that line. */
function aimOf({ ground }: PreparedHole, { x, y }: Spot, law: ShotLaw, line: number): number {
  return aimAlong(ground, x, y, law, line + Math.atan(law.curveShare) - law.directionMean);
}

function landing({ x, y }: Spot, bearing: number, carryM: number): Spot {
  return { x: x + carryM * Math.sin(bearing), y: y + carryM * Math.cos(bearing) };
}

/** First those that come down on good ground, then other gaps, then what is left; of each the likeliest and most forward. */
function likeliest(
  prepared: PreparedHole,
  spot: Spot,
  toHole: number,
  found: readonly Candidate[],
): readonly Candidate[] {
  const { ground } = prepared;
  const isOut = ({ shot, law, option: { bearing } }: Candidate): boolean => {
    const { x, y } = landing(spot, bearing + Math.atan(law.curveShare), shot.carryM(bearing));
    const lie = lieAt(ground, x, y);
    return isOnRaster(ground, x, y) && lie !== Lie.woods && lie !== Lie.outOfBounds && !isPenaltyArea(lie);
  };
  const score = ({ option, carryM }: Candidate): number =>
    option.throughChance * (1 + 0.004 * carryM * Math.cos(option.bearing - toHole));
  const open = found.filter(({ option }) => option.gapDeg > 0);
  const inTurn = [open.filter(isOut), open, found].flatMap((group) =>
    [...group].sort((a, b) => score(b) - score(a)),
  );
  return [...new Set(inTurn)].slice(0, MOST_WEIGHED);
}

/** The cheapest, but of each kind of way first one: what is no option for one player is one for another. */
function worthTelling(ways: readonly WayOutOfTrees[]): readonly WayOutOfTrees[] {
  const sorted = [...ways].sort((a, b) => a.meanStrokes - b.meanStrokes);
  const kindOf = ({ way, passage }: WayOutOfTrees): string => `${way} ${passage}`;
  const sameShot = (a: WayOutOfTrees, b: WayOutOfTrees): boolean =>
    a.spreadIndex === b.spreadIndex && kindOf(a) === kindOf(b);
  const distinct = sorted.filter((one, i) => sorted.findIndex((other) => sameShot(one, other)) === i);
  const firsts = distinct.filter(
    (one, i) => distinct.findIndex((other) => kindOf(other) === kindOf(one)) === i,
  );
  const told = [...firsts, ...distinct.filter((one) => !firsts.includes(one))].slice(0, MOST_TOLD);
  return told.sort((a, b) => a.meanStrokes - b.meanStrokes);
}

/** How the shot of `choice` passes the trees; null where that club is not played from there. */
export function treePassage(prepared: PreparedHole, spot: Spot, choice: Choice): TreePassage | null {
  const { ground } = prepared;
  const { x, y } = spot;
  const one = swung(prepared, lieOfSpot(prepared, spot), choice.spreadIndex, choice.carryM);
  if (one === null) return null;
  const { shot, law } = one;
  const landing = choice.bearing + law.directionMean + shotTurn(ground, x, y, law, choice.bearing);
  const bearing = landing - Math.atan(law.curveShare);
  const gaps = gapsFor(ground, x, y, bearing, SIDE, shot);
  const gap = gaps.find(({ from, to }) => from <= bearing && bearing <= to) ?? null;
  const over = clearanceOver(ground, x, y, bearing, shot);
  const under = clearanceUnder(ground, x, y, bearing, shot);
  return {
    ...{ club: shot.club, swing: shot.swing, bearing, carryM: shot.carryM(bearing) },
    passage: passageOf(over, under),
    gap,
    otherGaps: gaps.filter((other) => other !== gap),
    spreadDeg: (2 * shot.directionSd * 180) / Math.PI,
    throughChance: throughChance(ground, x, y, bearing, shot),
    ...worthALine(over, under),
  };
}

/** What is as good as sure is left out; so are the tops for a ball that stays far below them, if branches are in its way. */
function worthALine(over: Clearance | null, under: Clearance | null): Pick<TreePassage, 'over' | 'under'> {
  const unsure = (clearance: Clearance | null): Clearance | null =>
    clearance === null || clearance.chance > SURE ? null : clearance;
  const isLow = under !== null && over !== null && over.hasM < 0.5 * over.needsM;
  return { over: isLow ? null : unsure(over), under: unsure(under) };
}

/** By the mean height where it is least sure: `chance` is a half or more where the mean is clear. */
function passageOf(over: Clearance | null, under: Clearance | null): Passage {
  if (over === null && under === null) return 'open';
  const isClear = (clearance: Clearance | null): boolean => clearance === null || clearance.chance >= 0.5;
  if (!isClear(over) || !isClear(under)) return 'through';
  return over === null ? 'under' : 'over';
}
