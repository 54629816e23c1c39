/**
 * Putts to hole out from anywhere around one hole position on a green with slopes. States are rings and bearings around
 * the hole; each is putted with the same draws, and a miss goes on from where it stops, so three-putts come out of
 * the errors and the slope and are not put in.
 */

import { hypotenuse } from './hypotenuse.ts';
import type { PuttingSkill } from '../player/model.ts';
import { HOLE_RADIUS_M } from '../putting/capture.ts';
import type { PuttOdds } from '../putting/putting.ts';
import { puttDraws, type PuttDraws } from './putt-draws.ts';
import { PuttRoller } from './roll-putt.ts';
import { rollDeceleration } from './stimpmeter.ts';
import { rollDraw, strokeFrom } from './stroke.ts';
import { strokeSkill, type StrokeSkill } from './stroke-skill.ts';
import type { GreenSurface } from './surface.ts';

export interface GreenProblem {
  /** Rise around the hole, which is at (0, 0); x to the east, y to the north, metres. */
  readonly surface: GreenSurface;
  readonly greenSpeedFt: number;
  readonly putting: PuttingSkill;
  /** Farthest putt asked for, metres. */
  readonly longestM: number;
  /** Bearings on each ring; 12 where absent. A level green needs but one. */
  readonly bearings?: number;
  /** Putts drawn per place, a power of two; 128 where absent. */
  readonly draws?: number;
}

/** Chances of holing out in one, two, and three or more putts; they sum to 1. */
export interface PuttChances {
  readonly one: number;
  readonly two: number;
  readonly threeOrMore: number;
}

export interface PuttField {
  readonly problem: GreenProblem;
  readonly skill: StrokeSkill;
  readonly decelerationMps2: number;
  /** Radii of the rings, the first 0. */
  readonly radii: Float64Array;
  readonly bearings: number;
  /** Per ring and bearing (`ring * bearings + bearing`): expected putts, and the chance of one, of two and of three. */
  readonly expected: Float64Array;
  readonly one: Float64Array;
  readonly two: Float64Array;
  readonly three: Float64Array;
}

const RING_GROWTH = 0.15;
const NARROWEST_RING_M = 0.1;
const DEFAULT_BEARINGS = 12;
const DEFAULT_DRAWS = 128;
const SETTLED = 1e-7;
/** No place costs more than this many putts: on a slope that holds no ball a player stops putting. Common practice, no source. */
const MOST_PUTTS = 10;

export function solvePutts(problem: GreenProblem): PuttField {
  const { surface, greenSpeedFt } = problem;
  const bearings = surface.isLevel ? 1 : (problem.bearings ?? DEFAULT_BEARINGS);
  const draws = puttDraws(problem.draws ?? DEFAULT_DRAWS);
  const skill = strokeSkill(problem.putting);
  const decelerationMps2 = rollDeceleration(greenSpeedFt);
  const radii = ringRadii(problem.longestM);
  const states = radii.length * bearings;
  const field: PuttField = {
    problem,
    skill,
    decelerationMps2,
    radii,
    bearings,
    expected: new Float64Array(states).fill(1),
    one: new Float64Array(states).fill(1),
    two: new Float64Array(states),
    three: new Float64Array(states),
  };
  const leaves = putFromEverywhere(field, draws);
  settle(field, leaves);
  return field;
}

function ringRadii(longestM: number): Float64Array {
  const radii = [0, HOLE_RADIUS_M];
  while (radii.at(-1)! < longestM)
    radii.push(radii.at(-1)! + Math.max(NARROWEST_RING_M, RING_GROWTH * radii.at(-1)!));
  return Float64Array.from(radii);
}

/** Where the misses of each state stop: four states with their shares per miss. */
interface Leaves {
  readonly start: Int32Array;
  readonly state: Int32Array;
  readonly share: Float32Array;
  readonly draws: number;
}

function putFromEverywhere(field: PuttField, draws: PuttDraws): Leaves {
  const { radii, bearings, skill, problem, decelerationMps2 } = field;
  const states = radii.length * bearings;
  const start = new Int32Array(states + 1);
  const state = new Int32Array(4 * states * draws.count);
  const share = new Float32Array(4 * states * draws.count);
  const roller = new PuttRoller(problem.surface, decelerationMps2);
  const corner: Corners = { state: new Int32Array(4), share: new Float64Array(4) };
  let used = 0;
  for (let ring = 0; ring < radii.length; ring++) {
    for (let b = 0; b < bearings; b++) {
      const s = ring * bearings + b;
      start[s] = used;
      // On the rim or nearer the ball is as good as holed.
      if (ring < 2) continue;
      const angle = (2 * Math.PI * b) / bearings;
      const stroke = strokeFrom(
        problem.surface,
        decelerationMps2,
        skill,
        radii[ring]! * Math.sin(angle),
        radii[ring]! * Math.cos(angle),
      );
      let holed = 0;
      for (let i = 0; i < draws.count; i++) {
        rollDraw(roller, stroke, skill, draws, i);
        if (roller.holed) {
          holed += 1;
          continue;
        }
        locate(field, roller.endX, roller.endY, corner);
        for (let k = 0; k < 4; k++) {
          if (corner.share[k] === 0) continue;
          state[used] = corner.state[k]!;
          share[used] = corner.share[k]! / draws.count;
          used += 1;
        }
      }
      field.one[s] = holed / draws.count;
    }
  }
  start[states] = used;
  return { start, state: state.slice(0, used), share: share.slice(0, used), draws: draws.count };
}

/** E = 1 + sum over misses of E where they stop, swept from the hole outwards until nothing changes. */
function settle(field: PuttField, leaves: Leaves): void {
  const { expected, one, two, three } = field;
  const { start, state, share } = leaves;
  for (let sweep = 0; sweep < 500; sweep++) {
    let largest = 0;
    for (let s = 0; s < expected.length; s++) {
      let value = 1;
      for (let k = start[s]!; k < start[s + 1]!; k++) value += share[k]! * expected[state[k]!]!;
      value = Math.min(MOST_PUTTS, value);
      largest = Math.max(largest, Math.abs(value - expected[s]!));
      expected[s] = value;
    }
    if (largest < SETTLED) break;
  }
  for (const [next, chance] of [
    [one, two],
    [two, three],
  ] as const) {
    for (let s = 0; s < chance.length; s++) {
      let value = 0;
      for (let k = start[s]!; k < start[s + 1]!; k++) value += share[k]! * next[state[k]!]!;
      chance[s] = value;
    }
  }
}

interface Corners {
  readonly state: Int32Array;
  readonly share: Float64Array;
}

/** The four states around a point and their bilinear shares; beyond the last ring, that ring. */
function locate(field: PuttField, x: number, y: number, out: Corners): void {
  const { radii, bearings } = field;
  const last = radii.length - 1;
  const r = Math.min(radii[last]!, hypotenuse(x, y));
  let ring = 0;
  while (ring < last - 1 && radii[ring + 1]! < r) ring += 1;
  const u = (r - radii[ring]!) / (radii[ring + 1]! - radii[ring]!);
  const turn = (Math.atan2(x, y) / (2 * Math.PI)) * bearings;
  const floor = Math.floor(turn);
  const v = turn - floor;
  const near = ((floor % bearings) + bearings) % bearings;
  const next = (near + 1) % bearings;
  out.state[0] = ring * bearings + near;
  out.state[1] = ring * bearings + next;
  out.state[2] = (ring + 1) * bearings + near;
  out.state[3] = (ring + 1) * bearings + next;
  out.share[0] = (1 - u) * (1 - v);
  out.share[1] = (1 - u) * v;
  out.share[2] = u * (1 - v);
  out.share[3] = u * v;
}

function read(field: PuttField, values: Float64Array, x: number, y: number): number {
  const corner: Corners = { state: new Int32Array(4), share: new Float64Array(4) };
  locate(field, x, y, corner);
  let sum = 0;
  for (let k = 0; k < 4; k++) sum += corner.share[k]! * values[corner.state[k]!]!;
  return sum;
}

/** Expected putts from (x, y) metres east and north of the hole, linear between rings and bearings. */
export function expectedPuttsAt(field: PuttField, x: number, y: number): number {
  return read(field, field.expected, x, y);
}

export function puttChancesAt(field: PuttField, x: number, y: number): PuttChances {
  const one = read(field, field.one, x, y);
  const two = read(field, field.two, x, y);
  return { one, two, threeOrMore: Math.max(0, 1 - one - two) };
}

/** The same in the form of the level table: chances of one, two, three, and four or more putts. */
export function puttOddsAt(field: PuttField, x: number, y: number): PuttOdds {
  const one = read(field, field.one, x, y);
  const two = read(field, field.two, x, y);
  const three = read(field, field.three, x, y);
  return [one, two, three, Math.max(0, 1 - one - two - three)];
}

/** The bearing from the hole (radians clockwise from north) from which `distanceM` costs fewest putts. */
export function easiestSide(
  field: PuttField,
  distanceM: number,
): { readonly bearing: number; readonly expected: number; readonly dearest: number } {
  let best = { bearing: 0, expected: Infinity };
  let dearest = 0;
  for (let b = 0; b < field.bearings; b++) {
    const bearing = (2 * Math.PI * b) / field.bearings;
    const expected = expectedPuttsAt(field, distanceM * Math.sin(bearing), distanceM * Math.cos(bearing));
    if (expected < best.expected) best = { bearing, expected };
    dearest = Math.max(dearest, expected);
  }
  return { ...best, dearest };
}
