/** Turns a course, a hole and a player into the ground, the tee and the hole position that planning works on. */

import { DEFAULT_CONDITIONS, type Conditions, type Season } from '../conditions/conditions.ts';
import { dayKey } from '../conditions/day-words.ts';
import { greenOf } from '../course/hole-features.ts';
import { polylineLengthM } from '../course/ellipsoid.ts';
import { makeLocalFrame, type LocalFrame } from '../course/local-frame.ts';
import type { Course, Hole, HolePosition, LonLat, TeeMarker } from '../course/model.ts';
import { isOnRaster, lieAt, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { bagFlights } from '../flight/bag-flights.ts';
import { dayPutts, type DayPuttsProblem } from '../green/day-putts.ts';
import { marksOnGreen } from '../green/painted-slopes.ts';
import { tooLarge } from '../ground/hole-window.ts';
import { rasteriseHole } from '../ground/rasterise.ts';
import type { PlayerModel } from '../player/model.ts';
import { withSand } from '../player/sand.ts';
import { makePuttingTable, type PuttingTable } from '../putting/putting.ts';
import type { PuttsAround } from '../putting/putts-around.ts';
import { makeStreamKey, type StreamKey } from '../random/streams.ts';
import { refuse, succeed, type Fault, type Result } from '../result.ts';
import { told, type Told, toldFault } from '../words/told.ts';
import { LawBook } from './choices.ts';
import type { Spot } from './model.ts';

/** Seed where the person gives none: window and commands agree. */
export const DEFAULT_SEED = 'holewright';

export interface HoleProblem {
  readonly course: Course;
  readonly holeNumber: number;
  readonly player: PlayerModel;
  /** A tee marker's name; the first drawn where absent. */
  readonly teeName?: string;
  /** A hole position's name or a point on the green; the first drawn where absent. */
  readonly holePosition?: string | LonLat;
  readonly seed: string;
  /** Of the day; `DEFAULT_CONDITIONS` where absent. */
  readonly conditions?: Conditions;
}

export interface PreparedHole {
  readonly hole: Hole;
  readonly frame: LocalFrame;
  readonly ground: HoleGround;
  readonly tee: Spot;
  /** From the tee along the hole's line to the hole position. */
  readonly playLine: readonly Spot[];
  readonly teeName: string;
  readonly pin: Spot;
  /** Null for a point that the person put there. */
  readonly positionName: string | null;
  /** Length of the hole line from the chosen tee, metres on the ellipsoid. */
  readonly lengthM: number;
  readonly player: PlayerModel;
  readonly conditions: Conditions;
  readonly putts: PuttsAround;
  readonly book: LawBook;
  readonly seed: string;
  readonly key: StreamKey;
  /** Is the point on the hole's raster? */
  readonly isOnMap: (spot: Spot) => boolean;
}

/** Refuses a hole that is not in the course, has no green, is too large, or a tee or hole position that it does not have. */
export function prepareHole(problem: HoleProblem): Result<PreparedHole, Fault> {
  const { course } = problem;
  const player = withSand(problem.player, course.sand);
  const hole = course.holes.find((candidate) => candidate.number === problem.holeNumber);
  if (hole === undefined) {
    const numbers = course.holes.map((candidate) => candidate.number).join(', ');
    return refuse(
      fault(
        'no-such-hole',
        told(({ features }) => features.whereOnlyHole, { hole: problem.holeNumber }),
        numbers === ''
          ? told(({ faults }) => faults.plan.noHoles)
          : told(({ faults }) => faults.plan.noSuchHole, { numbers }),
      ),
    );
  }
  const where = told(({ features }) => features.whereOnlyHole, { hole: hole.number });
  if (greenOf(course, hole) === undefined) {
    return refuse(
      fault(
        'hole-without-green',
        where,
        told(({ faults }) => faults.plan.noGreen),
      ),
    );
  }
  const large = tooLarge(hole);
  if (large !== null) return refuse(fault('hole-too-large', where, large));
  if (player.spreads.length === 0) {
    return refuse(
      fault(
        'no-clubs',
        told(({ faults }) => faults.plan.player, { name: player.name }),
        told(({ faults }) => faults.plan.noClubs),
      ),
    );
  }
  const tee = pickTee(hole, problem.teeName);
  if (!tee.ok) return tee;
  const position = pickPosition(hole, problem.holePosition);
  if (!position.ok) return position;

  const middle = hole.line[Math.floor(hole.line.length / 2)] ?? tee.value.at;
  const frame = makeLocalFrame(middle);
  const conditions = problem.conditions ?? DEFAULT_CONDITIONS;
  const ground = groundOf(course, hole, frame, conditions.season);
  const pin = frame.toSpot(position.value.at);
  if (lieAt(ground, pin.x, pin.y) !== Lie.green) {
    return refuse(
      fault(
        'position-off-green',
        where,
        told(({ faults }) => faults.plan.offGreen, { name: position.value.name }),
      ),
    );
  }
  return succeed({
    hole,
    frame,
    ground,
    tee: frame.toSpot(tee.value.at),
    playLine: [tee.value.at, ...hole.line.slice(1, -1), position.value.at].map((point) =>
      frame.toSpot(point),
    ),
    teeName: tee.value.name,
    pin,
    positionName: typeof problem.holePosition === 'object' ? null : position.value.name,
    lengthM: polylineLengthM([tee.value.at, ...hole.line.slice(1)]),
    player,
    conditions,
    putts: puttsOf(course, hole, frame, ground, pin, player, conditions),
    book: bookOf(player, conditions),
    seed: problem.seed,
    key: makeStreamKey(problem.seed, 'hole', hole.number),
    isOnMap: (spot) => isOnRaster(ground, spot.x, spot.y),
  });
}

/** A player's table is the same on every hole, and takes longer to make than the hole's ground. */
const puttingTables = new WeakMap<PlayerModel, PuttingTable>();

function puttingOf(player: PlayerModel): PuttingTable {
  const known = puttingTables.get(player);
  if (known !== undefined) return known;
  const table = makePuttingTable(player.putting);
  puttingTables.set(player, table);
  return table;
}

/** The last hole's ground of each course: another day or hole position seldom needs another. */
const lastGrounds = new WeakMap<
  Course,
  { readonly hole: Hole; readonly season: Season; readonly ground: HoleGround }
>();

function groundOf(course: Course, hole: Hole, frame: LocalFrame, season: Season): HoleGround {
  const last = lastGrounds.get(course);
  if (last !== undefined && last.hole === hole && last.season === season) return last.ground;
  const ground = rasteriseHole(course, hole, frame, 1, season);
  lastGrounds.set(course, { hole, season, ground });
  return ground;
}

/** The last few greens of each course: solving one takes longer than all the rest of a preparation. */
const lastPutts = new WeakMap<Course, Map<string, PuttsAround>>();
const KEPT_PUTTS = 40;

function puttsOf(
  course: Course,
  hole: Hole,
  frame: LocalFrame,
  ground: HoleGround,
  pin: Spot,
  player: PlayerModel,
  { greenSpeedFt }: Conditions,
): PuttsAround {
  const known = lastPutts.get(course) ?? new Map<string, PuttsAround>();
  lastPutts.set(course, known);
  const { directionSd, distanceSdShare } = player.putting;
  const key = [hole.number, pin.x, pin.y, greenSpeedFt, directionSd, distanceSdShare].join(' ');
  let putts = known.get(key);
  if (putts === undefined) {
    putts = dayPutts({ ...greenProblem(course, { hole, frame, ground, pin, player }), greenSpeedFt });
    const [oldest] = known.keys();
    if (known.size >= KEPT_PUTTS && oldest !== undefined) known.delete(oldest);
    known.set(key, putts);
  }
  return putts;
}

/** The green of a prepared hole, but for its speed. */
export function greenProblem(
  course: Course,
  { hole, frame, ground, pin, player }: Pick<PreparedHole, 'hole' | 'frame' | 'ground' | 'pin' | 'player'>,
): Omit<DayPuttsProblem, 'greenSpeedFt'> {
  let reachM = 0;
  for (let i = 0; i < ground.lie.length; i++) {
    if (ground.lie[i] !== Lie.green) continue;
    const x = ground.west + ((i % ground.columns) + 0.5) * ground.cellM;
    const y = ground.south + (Math.floor(i / ground.columns) + 0.5) * ground.cellM;
    reachM = Math.max(reachM, Math.hypot(x - pin.x, y - pin.y));
  }
  return {
    levels: course.levels.map((level) => ({ ...frame.toSpot(level.at), elevationM: level.elevationM })),
    marks: marksOnGreen(course, hole, frame),
    pin,
    putting: player.putting,
    table: puttingOf(player),
    reachM: reachM + 1,
  };
}

/** The last day's flights and laws of each player: they serve all holes. */
const dayBooks = new WeakMap<PlayerModel, LawBook>();

function bookOf(player: PlayerModel, conditions: Conditions): LawBook {
  const known = dayBooks.get(player);
  if (known !== undefined && dayKey(known.flights.conditions) === dayKey(conditions)) return known;
  const book = new LawBook(player, bagFlights(player.spreads, conditions));
  dayBooks.set(player, book);
  return book;
}

function pickTee(hole: Hole, name: string | undefined): Result<TeeMarker, Fault> {
  const tee = name === undefined ? hole.tees[0] : hole.tees.find((candidate) => candidate.name === name);
  if (tee !== undefined) return succeed(tee);
  const names = namesTold(hole.tees);
  return refuse(
    fault(
      'no-such-tee',
      told(({ features }) => features.whereOnlyHole, { hole: hole.number }),
      told(({ faults }) => faults.plan.noTee, { name: name ?? '', names }),
    ),
  );
}

function pickPosition(hole: Hole, wanted: string | LonLat | undefined): Result<HolePosition, Fault> {
  if (typeof wanted === 'object') return succeed({ name: 'chosen point', at: wanted });
  const position =
    wanted === undefined ? hole.positions[0] : hole.positions.find((candidate) => candidate.name === wanted);
  if (position !== undefined) return succeed(position);
  const names = namesTold(hole.positions);
  return refuse(
    fault(
      'no-such-position',
      told(({ features }) => features.whereOnlyHole, { hole: hole.number }),
      told(({ faults }) => faults.plan.noPosition, { name: wanted ?? '', names }),
    ),
  );
}

function namesTold(places: readonly { readonly name: string }[]): Told {
  const [first, ...others] = places.map(({ name }) => told(({ faults }) => faults.plan.called, { name }));
  if (first === undefined) return told(({ features }) => features.nothing);
  return others.reduce(
    (before, second) => told(({ features }) => features.joined, { first: before, second }),
    first,
  );
}

function fault(code: string, where: Told, message: Told): Fault {
  return toldFault({ severity: 'error', code, where, message });
}
