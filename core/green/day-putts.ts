/**
 * Putts on a day's greens. A green whose slopes or levels are in the file is putted over them; one without keeps the player's
 * record, which is what they hole on greens of ordinary slopes and speed, moved by what another speed changes there.
 */

import { HOLE_RADIUS_M } from '../putting/capture.ts';
import type { PuttingTable, PuttOdds } from '../putting/putting.ts';
import { levelPutts, type PuttsAround } from '../putting/putts-around.ts';
import { greenPutts, type GreenPuttsProblem } from './green-putts.ts';
import { type PuttField, solvePutts } from './putt-field.ts';
import { PuttRoller } from './roll-putt.ts';
import { rollDraw, strokeFrom } from './stroke.ts';
import { ORDINARY_GREEN } from './stroke-skill.ts';
import { planeGreen } from './surface.ts';

export interface DayPuttsProblem extends GreenPuttsProblem {
  /** The player's record as a table. */
  readonly table: PuttingTable;
}

/** Distance to which another speed is worked out, metres; beyond it the change of the last ring stands. */
const FARTHEST_M = 30;
/** Rings are found by distance in steps of this, metres: half of the narrowest. */
const RING_STEP_M = 0.05;

export function dayPutts(problem: DayPuttsProblem): PuttsAround {
  const field = greenPutts(problem);
  if (field !== null) return fieldPutts(field);
  const { greenSpeedFt, table } = problem;
  if (greenSpeedFt === ORDINARY_GREEN.greenSpeedFt) return levelPutts(table);
  return changedSpeed(
    table,
    ordinaryField(problem, greenSpeedFt),
    ordinaryField(problem, ORDINARY_GREEN.greenSpeedFt),
  );
}

function ordinaryField({ putting, bearings, draws }: DayPuttsProblem, greenSpeedFt: number): PuttField {
  return solvePutts({
    surface: planeGreen(ORDINARY_GREEN.slopeShare, 0),
    ...{ greenSpeedFt, putting, longestM: FARTHEST_M },
    ...(bearings === undefined ? {} : { bearings }),
    ...(draws === undefined ? {} : { draws }),
  });
}

/** The table plus the difference between two speeds on an ordinary green, averaged over the sides of the hole. */
function changedSpeed(table: PuttingTable, now: PuttField, then: PuttField): PuttsAround {
  const change = (values: (field: PuttField) => Float64Array): Float64Array =>
    Float64Array.from(
      now.radii,
      (_, ring) => ringMean(now, values(now), ring) - ringMean(then, values(then), ring),
    );
  const expected = change((field) => field.expected);
  const chances = [
    change((field) => field.one),
    change((field) => field.two),
    change((field) => field.three),
  ];
  return levelPutts({
    expectedPutts: (distanceM) =>
      Math.max(1, table.expectedPutts(distanceM) + readRings(now.radii, expected, distanceM)),
    scoreOdds: (distanceM) => {
      const before = table.scoreOdds(distanceM);
      let rest = 1;
      const [one, two, three] = chances.map((ring, k) => {
        const share = Math.min(rest, Math.max(0, before[k]! + readRings(now.radii, ring, distanceM)));
        rest -= share;
        return share;
      }) as [number, number, number];
      return [one, two, three, rest] as PuttOdds;
    },
  });
}

function ringMean(field: PuttField, values: Float64Array, ring: number): number {
  let sum = 0;
  for (let b = 0; b < field.bearings; b++) sum += values[ring * field.bearings + b]!;
  return sum / field.bearings;
}

function readRings(radii: Float64Array, values: Float64Array, distanceM: number): number {
  const last = radii.length - 1;
  let ring = 0;
  while (ring < last - 1 && radii[ring + 1]! < distanceM) ring += 1;
  const t = Math.min(1, (distanceM - radii[ring]!) / (radii[ring + 1]! - radii[ring]!));
  return (1 - t) * values[ring]! + t * values[ring + 1]!;
}

/** A field as the planner's inner loop reads it: rings looked up, nothing allocated for the expected putts. */
function fieldPutts(field: PuttField): PuttsAround {
  const { radii, bearings, expected } = field;
  const last = radii.length - 1;
  const farthest = radii[last]!;
  const ringAt = new Uint16Array(Math.ceil(farthest / RING_STEP_M) + 1);
  for (let step = 0, ring = 0; step < ringAt.length; step++) {
    while (ring < last - 1 && radii[ring + 1]! < step * RING_STEP_M) ring += 1;
    ringAt[step] = ring;
  }
  const perTurn = bearings / (2 * Math.PI);
  const read = (values: Float64Array, east: number, north: number): number => {
    const r = Math.min(farthest, Math.sqrt(east * east + north * north));
    let ring = ringAt[Math.floor(r / RING_STEP_M)]!;
    if (ring < last - 1 && radii[ring + 1]! < r) ring += 1;
    const u = (r - radii[ring]!) / (radii[ring + 1]! - radii[ring]!);
    const turn = Math.atan2(east, north) * perTurn;
    const floor = Math.floor(turn);
    const v = turn - floor;
    const near = floor < 0 ? floor + bearings : floor % bearings;
    const next = near + 1 === bearings ? 0 : near + 1;
    const inner = ring * bearings;
    const outer = inner + bearings;
    return (
      (1 - u) * ((1 - v) * values[inner + near]! + v * values[inner + next]!) +
      u * ((1 - v) * values[outer + near]! + v * values[outer + next]!)
    );
  };
  return {
    expectedAt: (east, north) => read(expected, east, north),
    oddsAt: (east, north) => {
      const one = read(field.one, east, north);
      const two = read(field.two, east, north);
      const three = read(field.three, east, north);
      return [one, two, three, Math.max(0, 1 - one - two - three)];
    },
    rollOnce: rollerOver(field),
  };
}

/** Single putts over the field's green, with the stroke and the misreads that its values are made with. */
function rollerOver({ problem, skill, decelerationMps2 }: PuttField): NonNullable<PuttsAround['rollOnce']> {
  const roller = new PuttRoller(problem.surface, decelerationMps2);
  return (east, north, { direction, run, readAlong, readAcross }) => {
    // On the rim or nearer the ball is as good as holed.
    if (Math.hypot(east, north) <= HOLE_RADIUS_M) return null;
    const stroke = strokeFrom(problem.surface, decelerationMps2, skill, east, north);
    rollDraw(
      roller,
      stroke,
      skill,
      {
        count: 1,
        direction: Float64Array.of(direction),
        run: Float64Array.of(run),
        readAlong: Float64Array.of(readAlong),
        readAcross: Float64Array.of(readAcross),
      },
      0,
    );
    return roller.holed ? null : { east: roller.endX, north: roller.endY };
  };
}
