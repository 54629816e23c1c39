/** An aim in words that a player on the tee can follow with the eyes: an edge of something, or so far beside it. */

import type { Words } from '../words/words.ts';
import type { Course } from '../course/model.ts';
import { lieAt } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import type { Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { distanceOf, pointAlong } from './frame.ts';
import { type Landmark, landmarksFrom } from './landmarks.ts';
import { type CardUnits, lengthNumber, lengthWords } from './lengths.ts';

const DEGREE = Math.PI / 180;
/** An edge this near the aim is the aim: a thumb at arm's length covers two degrees. */
const ON_IT = 0.9 * DEGREE;
/** Beyond this a landmark is no help. */
const BESIDE_IT = 4.5 * DEGREE;
/** A shot that comes down this near the hole is told from the flag, metres. */
const AT_THE_FLAG_M = 25;

/** Edges and middles ranked: what is easiest to find with the eyes has the least handicap, in radians. */
const HANDICAP: Readonly<Record<Landmark['kind'], number>> = {
  flag: 0,
  bunker: 0.1 * DEGREE,
  tree: 0.2 * DEGREE,
  green: 0.3 * DEGREE,
  woods: 0.4 * DEGREE,
  water: 0.5 * DEGREE,
};

interface Point {
  readonly words: string;
  readonly turn: number;
  readonly landmark: Landmark;
}

/** `left edge of the far bunker, left third of the fairway`. */
export function aimWords(
  course: Course,
  prepared: PreparedHole,
  from: Spot,
  bearing: number,
  carryM: number,
  units: CardUnits,
  words: Words,
): string {
  const target = pointAlong(from, bearing, carryM);
  const landing = landingWords(prepared, from, bearing, target, words);
  const landmarks = landmarksFrom(course, prepared, from, bearing, units, words);
  const flag = landmarks.filter(({ kind }) => kind === 'flag');
  const isApproach = flag.length > 0 && distanceOf(target, prepared.pin) < AT_THE_FLAG_M;
  const points = (isApproach ? flag : landmarks).flatMap((landmark) => pointsOf(landmark, words));
  const sighted = sightWords(points, units, words);
  if (sighted === null) return landing ?? besideLineWords(prepared, from, target, units, words);
  return landing === null ? sighted : `${sighted}, ${landing}`;
}

/** What of a landmark can be aimed at. */
function pointsOf(landmark: Landmark, { cards }: Words): readonly Point[] {
  const { sight } = cards;
  const { words, left, right, middle, kind } = landmark;
  if (kind === 'flag') return [{ words, turn: middle, landmark }];
  const point = (name: string, turn: number): Point => ({ words: name, turn, landmark });
  if (right - left < 2 * ON_IT) return [point(words, middle)];
  const edges = [
    point(sight.leftEdge({ name: words }), left),
    point(sight.rightEdge({ name: words }), right),
  ];
  // The middle of trees or water is no place that the eye finds.
  return kind === 'bunker' || kind === 'green'
    ? [...edges, point(sight.middle({ name: words }), middle)]
    : edges;
}

function sightWords(points: readonly Point[], units: CardUnits, { cards }: Words): string | null {
  let best: Point | null = null;
  let least = Infinity;
  for (const point of points) {
    const rank = Math.abs(point.turn) + HANDICAP[point.landmark.kind];
    if (rank < least) [least, best] = [rank, point];
  }
  if (best === null || Math.abs(best.turn) > BESIDE_IT) return null;
  if (Math.abs(best.turn) <= ON_IT) return best.words;
  const aside = Math.tan(Math.abs(best.turn)) * best.landmark.distanceM;
  const count = lengthNumber(aside, units);
  if (count === 0) return best.words;
  const told = { length: lengthWords(aside, units), point: best.words };
  return best.turn > 0 ? cards.sight.leftOf(told) : cards.sight.rightOf(told);
}

const ACROSS_STEP_M = 1;
const ACROSS_REACH_M = 70;

/** Where on the fairway or green the aim comes down; null elsewhere. */
function landingWords(
  prepared: PreparedHole,
  from: Spot,
  bearing: number,
  target: Spot,
  { cards }: Words,
): string | null {
  const { ground } = prepared;
  const lie = lieAt(ground, target.x, target.y);
  if (lie !== Lie.fairway && lie !== Lie.green) return null;
  const edge = (sign: 1 | -1): number => {
    for (let aside = ACROSS_STEP_M; aside < ACROSS_REACH_M; aside += ACROSS_STEP_M) {
      const at = pointAlong(target, bearing + (sign * Math.PI) / 2, aside);
      if (lieAt(ground, at.x, at.y) !== lie) return aside;
    }
    return ACROSS_REACH_M;
  };
  const left = edge(-1);
  const share = left / (left + edge(1));
  if (distanceOf(from, target) < 1) return null;
  const { sight } = cards;
  const isGreen = lie === Lie.green;
  if (share < 1 / 3) return isGreen ? sight.leftThirdGreen : sight.leftThirdFairway;
  if (share > 2 / 3) return isGreen ? sight.rightThirdGreen : sight.rightThirdFairway;
  return isGreen ? sight.middleGreen : sight.middleFairway;
}

/** Where nothing else helps: beside the straight line to the flag. */
function besideLineWords(
  prepared: PreparedHole,
  from: Spot,
  target: Spot,
  units: CardUnits,
  { cards }: Words,
): string {
  const { pin } = prepared;
  const length = distanceOf(from, pin) || 1;
  const aside = ((target.x - from.x) * (pin.y - from.y) - (target.y - from.y) * (pin.x - from.x)) / length;
  const count = lengthNumber(Math.abs(aside), units);
  if (count === 0) return cards.sight.straight;
  const told = { length: lengthWords(Math.abs(aside), units) };
  return aside > 0 ? cards.sight.rightOfLine(told) : cards.sight.leftOfLine(told);
}
