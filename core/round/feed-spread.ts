/**
 * Shots of a round that may join the measured ones: only with the player's consent for that round, and only those that say
 * something about the club: a full swing from a good lie, its start, aim and end known, not stopped by a tree. Each shot
 * that is left out is listed with the reason.
 */

import type { Words } from '../words/words.ts';
import type { LocalFrame } from '../course/local-frame.ts';
import { type Conditions, DEFAULT_CONDITIONS } from '../conditions/conditions.ts';
import { aimedShot } from '../flight/aimed-shot.ts';
import { type BagFlights, bagFlights } from '../flight/bag-flights.ts';
import { shotLaw } from '../flight/shot-law.ts';
import { Lie, LIE_NAMES, type LieCode } from '../ground/lies.ts';
import type { RecordedShot } from '../player/format.ts';
import type { PlayerModel } from '../player/model.ts';
import type { RecordedStroke, RoundDocument } from './format.ts';
import { strokeMark } from './fed-shots.ts';
import { dayOfRound } from './round-day.ts';

const YARD_M = 0.9144;

export interface LeftOut {
  readonly hole: number;
  /** From 1. */
  readonly shot: number;
  readonly reason: string;
}

export interface ShotsForSpread {
  readonly shots: readonly RecordedShot[];
  readonly leftOut: readonly LeftOut[];
  /** False: the player has not given this round's shots away, and `shots` is empty. */
  readonly consented: boolean;
}

const GOOD_LIES: ReadonlySet<string> = new Set(['tee', 'fairway']);

/**
 * `frameOf`: the flat frame of a hole. Carry is worked back from the total by the run that the flight model gives on the day of
 * the round. Where the round keeps its day, each shot goes with its weather, which the estimate takes off again.
 */
export function shotsForSpread(
  round: RoundDocument,
  player: PlayerModel,
  frameOf: (hole: number) => LocalFrame | null,
  words: Words,
): ShotsForSpread {
  if (round.feedsSpread !== true) return { shots: [], leftOut: [], consented: false };
  const day = dayOfRound(round);
  const bag = bagFlights(player.spreads, day ?? DEFAULT_CONDITIONS);
  const shots: RecordedShot[] = [];
  const leftOut: LeftOut[] = [];
  for (const { hole, shots: strokes = [] } of round.played) {
    const frame = frameOf(hole);
    strokes.forEach((stroke, i) => {
      const read = readStroke(stroke, player, bag, frame, i === 0, round, words);
      if (typeof read === 'string') leftOut.push({ hole, shot: i + 1, reason: read });
      else shots.push({ ...read, fromRound: strokeMark(round, hole, i + 1) });
    });
  }
  return { shots, leftOut, consented: true };
}

/** The shot as a player file holds it, or why it is left out. */
function readStroke(
  stroke: RecordedStroke,
  player: PlayerModel,
  bag: BagFlights,
  frame: LocalFrame | null,
  fromTee: boolean,
  round: RoundDocument,
  words: Words,
): RecordedShot | string {
  const { left } = words.round;
  const { playedAt } = round;
  const { club, from, aim, to, toLie } = stroke;
  if (club === 'Putter') return left.putts;
  const swing = stroke.swing ?? 'full';
  const fromLie = stroke.fromLie ?? (fromTee ? 'tee' : undefined);
  if (fromLie === undefined || !GOOD_LIES.has(fromLie)) return left.lie;
  if (swing === 'part' || swing === 'punch') return left.swing;
  if (stroke.hitTree === true) return left.tree;
  if (frame === null) return left.otherHole;
  if (from === undefined || to === undefined) return left.ends;
  if (aim === undefined) return left.aim;
  const spreadIndex = player.spreads.findIndex(
    (candidate) => candidate.club.name === club && candidate.swing === swing,
  );
  if (spreadIndex < 0) return left.noClub({ club });
  const [a, b, target] = [frame.toSpot(from), frame.toSpot(to), frame.toSpot(aim)];
  const totalM = Math.hypot(b.x - a.x, b.y - a.y);
  const bearing = Math.atan2(target.x - a.x, target.y - a.y);
  const turned = Math.atan2(b.x - a.x, b.y - a.y) - bearing;
  const direction = Math.atan2(Math.sin(turned), Math.cos(turned));
  if (totalM < 1 || Math.abs(direction) > Math.PI / 2) return left.backwards;
  const end = toLie === undefined ? Lie.fairway : (LIE_NAMES.indexOf(toLie) as LieCode);
  return {
    club,
    swing,
    carryM: round1(
      totalM /
        (1 + runShareTo(player, spreadIndex, bag, fromLie === 'tee' ? Lie.tee : Lie.fairway, end, bearing)),
    ),
    totalM: round1(totalM),
    directionDeg: Math.round((direction * 18000) / Math.PI) / 100,
    lie: fromLie,
    ...(playedAt === undefined ? {} : { at: playedAt }),
    ...weatherAt(dayOfRound(round), bearing),
  };
}

/** Mean run as a share of the day's carry, for a ball at `bearing` that comes down and ends in `end`. */
function runShareTo(
  player: PlayerModel,
  spreadIndex: number,
  bag: BagFlights,
  from: LieCode,
  end: LieCode,
  bearing: number,
): number {
  const law = shotLaw(player, spreadIndex, from, player.spreads[spreadIndex]!.carryMean, bag);
  if (law === null) return 0;
  const { run, runCarryM } = aimedShot(law, bearing);
  return Math.max(-0.5, (law.runFactor * run.totalM[end]!) / runCarryM);
}

/** The day as a shot says its weather, where the wind comes from as seen along its aim; nothing of an ordinary day. */
function weatherAt(
  day: Conditions | null,
  bearing: number,
): Pick<RecordedShot, 'windMps' | 'windFromDeg' | 'temperatureC' | 'altitudeM'> {
  if (day === null) return {};
  const { wind, temperatureC, altitudeM } = day;
  const from = Math.round(wind.fromDeg - (bearing * 180) / Math.PI);
  return {
    ...(wind.speedMps === 0 ? {} : { windMps: wind.speedMps, windFromDeg: ((from % 360) + 360) % 360 }),
    ...(temperatureC === DEFAULT_CONDITIONS.temperatureC ? {} : { temperatureC }),
    ...(altitudeM === DEFAULT_CONDITIONS.altitudeM ? {} : { altitudeM }),
  };
}

function round1(value: number): number {
  return Math.round(value * 10) / 10;
}

export interface SpreadChange {
  readonly club: string;
  readonly swing: string;
  readonly words: string;
}

/** How the laws of the bag changed between two readings of the player: what the next plan rests on. */
export function spreadChanges(
  before: PlayerModel,
  after: PlayerModel,
  units: 'yards' | 'metres',
  words: Words,
): readonly SpreadChange[] {
  const told = words.round.laws;
  const unit = units === 'yards' ? 'yd' : 'm';
  const length = (metres: number): number => (units === 'yards' ? metres / YARD_M : metres);
  return after.spreads.flatMap((now) => {
    const { club, swing } = now;
    const was = before.spreads.find((spread) => spread.club.name === club.name && spread.swing === swing);
    const shotsNow = now.source.from === 'measured' ? now.source.shots : 0;
    const shotsWas = was?.source.from === 'measured' ? was.source.shots : 0;
    if (was === undefined || shotsNow === shotsWas) return [];
    const parts = [
      changed(told.carry, length(was.carryMean), length(now.carryMean), unit, words),
      changed(told.carrySpread, length(was.carrySd), length(now.carrySd), unit, words),
      changed(told.direction, degrees(was.directionMean), degrees(now.directionMean), '°', words),
      changed(told.directionSpread, degrees(was.directionSd), degrees(now.directionSd), '°', words),
    ];
    const line = told.line({
      ...{ club: club.name, swing: words.golf.shortSwings[swing] },
      ...{ more: shotsNow - shotsWas, all: shotsNow, parts: parts.join(', ') },
    });
    return [{ club: club.name, swing, words: line }];
  });
}

function changed(name: string, from: number, to: number, unit: string, { figures }: Words): string {
  return `${name} ${figures.fixed(from, 1)} → ${figures.fixed(to, 1)}${unit === '°' ? '' : ' '}${unit}`;
}

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
