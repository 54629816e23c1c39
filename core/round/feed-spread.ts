/**
 * Shots of a round that may join the measured ones: only with the player's consent for that round, and only those that say
 * something about the club: a full swing from a good lie, its start, aim and end known, not stopped by a tree. Each shot
 * that is left out is listed with the reason.
 */

import type { LocalFrame } from '../course/local-frame.ts';
import { DEFAULT_CONDITIONS } from '../conditions/conditions.ts';
import { type BagFlights, bagFlights } from '../flight/bag-flights.ts';
import { runShare, shotLaw } from '../flight/shot-law.ts';
import { Lie, LIE_NAMES, type LieCode } from '../ground/lies.ts';
import type { RecordedShot } from '../player/format.ts';
import type { PlayerModel } from '../player/model.ts';
import type { RecordedStroke, RoundDocument } from './format.ts';

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

/** `frameOf`: the flat frame of a hole. Carry is worked back from the total by the run that the flight model gives. */
export function shotsForSpread(
  round: RoundDocument,
  player: PlayerModel,
  frameOf: (hole: number) => LocalFrame | null,
): ShotsForSpread {
  if (round.feedsSpread !== true) return { shots: [], leftOut: [], consented: false };
  const bag = bagFlights(player.spreads, {
    ...DEFAULT_CONDITIONS,
    firmness: round.conditions?.firmness ?? DEFAULT_CONDITIONS.firmness,
  });
  const shots: RecordedShot[] = [];
  const leftOut: LeftOut[] = [];
  for (const { hole, shots: strokes = [] } of round.played) {
    const frame = frameOf(hole);
    strokes.forEach((stroke, i) => {
      const read = readStroke(stroke, player, bag, frame, i === 0, round);
      if (typeof read === 'string') leftOut.push({ hole, shot: i + 1, reason: read });
      else shots.push(read);
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
  { playedAt }: RoundDocument,
): RecordedShot | string {
  const { club, from, aim, to, toLie } = stroke;
  if (club === 'Putter') return 'putts are kept apart';
  const swing = stroke.swing ?? 'full';
  const fromLie = stroke.fromLie ?? (fromTee ? 'tee' : undefined);
  if (fromLie === undefined || !GOOD_LIES.has(fromLie)) return 'not from a tee or fairway';
  if (swing === 'part' || swing === 'punch') return 'not a swing at the club’s own distance';
  if (stroke.hitTree === true) return 'stopped by a tree';
  if (frame === null) return 'its hole is not in the course that is open';
  if (from === undefined || to === undefined) return 'start or end not entered';
  if (aim === undefined) return 'aim not entered';
  const spreadIndex = player.spreads.findIndex(
    (candidate) => candidate.club.name === club && candidate.swing === swing,
  );
  if (spreadIndex < 0) return `the bag has no ${club} with that swing`;
  const [a, b, target] = [frame.toSpot(from), frame.toSpot(to), frame.toSpot(aim)];
  const totalM = Math.hypot(b.x - a.x, b.y - a.y);
  const bearing = Math.atan2(target.x - a.x, target.y - a.y);
  const turned = Math.atan2(b.x - a.x, b.y - a.y) - bearing;
  const direction = Math.atan2(Math.sin(turned), Math.cos(turned));
  if (totalM < 1 || Math.abs(direction) > Math.PI / 2) return 'it did not go forward';
  const end = toLie === undefined ? Lie.fairway : (LIE_NAMES.indexOf(toLie) as LieCode);
  return {
    club,
    swing,
    carryM: round1(
      totalM / (1 + runShareTo(player, spreadIndex, bag, fromLie === 'tee' ? Lie.tee : Lie.fairway, end)),
    ),
    totalM: round1(totalM),
    directionDeg: Math.round((direction * 18000) / Math.PI) / 100,
    lie: fromLie,
    ...(playedAt === undefined ? {} : { at: playedAt }),
  };
}

/** Mean run as a share of carry, for a ball that comes down and ends in `end`. */
function runShareTo(
  player: PlayerModel,
  spreadIndex: number,
  bag: BagFlights,
  from: LieCode,
  end: LieCode,
): number {
  const law = shotLaw(player, spreadIndex, from, player.spreads[spreadIndex]!.carryMean, bag);
  return law === null ? 0 : runShare(law, end);
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
): readonly SpreadChange[] {
  const unit = units === 'yards' ? 'yd' : 'm';
  const length = (metres: number): number => (units === 'yards' ? metres / YARD_M : metres);
  return after.spreads.flatMap((now) => {
    const { club, swing } = now;
    const was = before.spreads.find((spread) => spread.club.name === club.name && spread.swing === swing);
    const shotsNow = now.source.from === 'measured' ? now.source.shots : 0;
    const shotsWas = was?.source.from === 'measured' ? was.source.shots : 0;
    if (was === undefined || shotsNow === shotsWas) return [];
    const parts = [
      changed('carry', length(was.carryMean), length(now.carryMean), unit),
      changed('carry spread', length(was.carrySd), length(now.carrySd), unit),
      changed('direction', degrees(was.directionMean), degrees(now.directionMean), '°'),
      changed('direction spread', degrees(was.directionSd), degrees(now.directionSd), '°'),
    ];
    const words = `${club.name} ${swing}: ${shotsNow - shotsWas} more ${shotsNow - shotsWas === 1 ? 'shot' : 'shots'} (${shotsNow} in all); ${parts.join(', ')}.`;
    return [{ club: club.name, swing, words }];
  });
}

function changed(name: string, from: number, to: number, unit: string): string {
  return `${name} ${from.toFixed(1)} → ${to.toFixed(1)}${unit === '°' ? '' : ' '}${unit}`;
}

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
