/**
 * One club and swing on a day, integrated once: from then on a sampled shot costs look-ups. Carries are the player's, in
 * still air on an ordinary day, on the level; the table says what the day's air, wind and the height of the target make of them.
 * Lengths scale: a ball hit a little shorter flies the same curve, smaller (good to some per cent of height for carries
 * within a fifth of the table's own).
 */

import { airOfConditions, type Conditions, DEFAULT_CONDITIONS } from '../conditions/conditions.ts';
import type { Club, Swing } from '../player/model.ts';
import type { Launch, Wind } from './ball-flight.ts';
import { matchLaunch } from './match-launch.ts';
import { TableFlight } from './table-flight.ts';
import { type MeasuredLaunch, typicalLaunch } from './typical-launch.ts';

/** Shares of the carry at which heights are kept: 0, 1/64, … 1. */
export const HEIGHT_STEPS = 64;
/** Directions of the wind against the shot, evenly from a headwind (0) to a tailwind (180 degrees); the other side mirrors. */
export const WIND_STEPS = 8;
/** Heights of the target for which the carry is kept, as shares of the carry: from this far below … */
export const LOWEST_RISE_SHARE = -0.5;
/** … in so many steps up to the top of the flight. */
export const RISE_STEPS = 96;
/** Tilt of the spin axis by which the shape of a curving flight is found, radians. */
const CURVE_TILT = 0.1;

/** Where a flight comes down on ground above or below its start; an uphill shot into the wind loses little, a downhill one much. */
export interface RiseTable {
  /** Top of the flight as a share of the carry: no target above it is reached. Carries are along the line to the landing. */
  readonly topShare: number;
  /** Share of the carry at which a ball comes down to a target that many steps above `LOWEST_RISE_SHARE`, `RISE_STEPS` + 1. */
  readonly carryShare: Float64Array;
  /** Turn of the line to that landing from the level one, radians away from the wind's side: a longer fall drifts on. */
  readonly turn: Float64Array;
}

export interface FlightTable {
  /** The equivalent launch in still air on an ordinary day. */
  readonly launch: Launch;
  /** The player's carry there, metres. */
  readonly carryM: number;
  /** Directions kept: 1 in air without wind and gusts, else `WIND_STEPS` + 1. */
  readonly directions: number;
  /** By direction: carry on the day as a share of `carryM`, and drift away from the wind's side as a share of `carryM`. */
  readonly carryFactor: Float64Array;
  readonly driftShare: Float64Array;
  /** By direction: change of the two by one standard deviation of the gusts. */
  readonly gustCarry: Float64Array;
  readonly gustDrift: Float64Array;
  /** By direction, `HEIGHT_STEPS` + 1 each: height as a share of the day's carry, by share of that carry. */
  readonly heightShare: Float64Array;
  readonly rises: readonly RiseTable[];
  /** By share of carry (`HEIGHT_STEPS` + 1): sideways way of a draw or fade as a share of that at landing. */
  readonly curveShape: Float64Array;
  /** By direction, at landing on the level: descent and speed. */
  readonly descent: Float64Array;
  readonly landingSpeedMps: Float64Array;
  readonly landingSpin: number;
  readonly timeS: number;
}

/** The air in which the player's carries are meant: that of a day of which nothing is said. */
const ORDINARY_AIR = airOfConditions(DEFAULT_CONDITIONS);

/**
 * The table of `club` and `swing` with a carry of `carryM` metres in still air of 15 °C at sea level. Gusts are taken
 * along the wind's direction, also where its mean is nought; the wind's profile and its limits: see `ball-flight.ts`.
 */
export function flightOf(
  club: Pick<Club, 'loftDeg'>,
  swing: Swing,
  carryM: number,
  conditions: Conditions = DEFAULT_CONDITIONS,
  measured: MeasuredLaunch = {},
): FlightTable {
  const { launch } = matchLaunch(carryM, typicalLaunch(club, swing, carryM), ORDINARY_AIR, measured);
  const air = airOfConditions(conditions);
  const { speedMps, gustSdMps } = conditions.wind;
  const flight = new TableFlight();
  const fly = (wind: Wind, target = 0, tilt = 0): void => flight.fly({ ...launch, tilt }, air, wind, target);
  // The launch carries what it should to a hundredth of a per cent: shares are of what it does carry, so that an ordinary day's is 1.
  flight.fly(launch, ORDINARY_AIR, { along: 0, right: 0 });
  const ordinaryM = flight.carry;
  const directions = speedMps === 0 && gustSdMps === 0 ? 1 : WIND_STEPS + 1;
  const rises: RiseTable[] = [];
  const zeros = (): Float64Array => new Float64Array(directions);
  const table = {
    carryFactor: zeros(),
    driftShare: zeros(),
    gustCarry: zeros(),
    gustDrift: zeros(),
    descent: zeros(),
    landingSpeedMps: zeros(),
    heightShare: new Float64Array(directions * (HEIGHT_STEPS + 1)),
  };
  for (let d = 0; d < directions; d++) {
    const from = (Math.PI * d) / WIND_STEPS;
    // Measured from the right; what it pushes goes left.
    const wind = (speed: number): Wind => ({
      along: -speed * Math.cos(from),
      right: -speed * Math.sin(from),
    });
    fly(wind(speedMps));
    const { carry, drift } = flight;
    table.carryFactor[d] = carry / ordinaryM;
    table.driftShare[d] = -drift / ordinaryM;
    table.descent[d] = flight.descent;
    table.landingSpeedMps[d] = flight.landingSpeedMps;
    heightsOf(flight, table.heightShare.subarray(d * (HEIGHT_STEPS + 1), (d + 1) * (HEIGHT_STEPS + 1)));
    if (gustSdMps > 0) {
      fly(wind(speedMps + gustSdMps));
      table.gustCarry[d] = (flight.carry - carry) / ordinaryM;
      table.gustDrift[d] = (drift - flight.drift) / ordinaryM;
    }
    fly(wind(speedMps), LOWEST_RISE_SHARE * Math.hypot(carry, drift));
    rises.push(riseTableOf(flight, carry, -drift));
  }
  const still = { along: 0, right: 0 };
  fly(still);
  const { landingSpin, timeS } = flight;
  fly(still, 0, CURVE_TILT);
  return {
    ...table,
    launch,
    carryM,
    directions,
    rises,
    curveShape: curveOf(flight),
    landingSpin,
    timeS,
  };
}

function heightsOf(flight: TableFlight, out: Float64Array): void {
  const { along, height, count, carry } = flight;
  let k = 0;
  for (let step = 1; step < HEIGHT_STEPS; step++) {
    const at = (carry * step) / HEIGHT_STEPS;
    while (k < count - 2 && along[k + 1]! < at) k += 1;
    out[step] = between(along, height, k, at) / carry;
  }
}

/** Where the falling part of a flight that goes on below its start passes each height; `right`: of its level landing, metres. */
function riseTableOf(deep: TableFlight, carry: number, right: number): RiseTable {
  const { along, height, count, apex } = deep;
  const carryShare = new Float64Array(RISE_STEPS + 1);
  const turn = new Float64Array(RISE_STEPS + 1);
  const level = Math.hypot(carry, right);
  const lowest = LOWEST_RISE_SHARE * level;
  let k = count - 2;
  for (let step = 0; step <= RISE_STEPS; step++) {
    const at = lowest + ((apex - lowest) * step) / RISE_STEPS;
    while (k > 0 && height[k]! < at && height[k - 1]! > height[k]!) k -= 1;
    const ahead = between(height, along, k, at);
    // Drift is counted away from the wind, as in `driftShare`.
    const aside = -between(height, deep.right, k, at);
    carryShare[step] = Math.hypot(ahead, aside) / level;
    turn[step] = Math.atan2(aside, ahead) - Math.atan2(right, carry);
  }
  return { topShare: apex / level, carryShare, turn };
}

function curveOf(flight: TableFlight): Float64Array {
  const { along, right, count, carry, drift } = flight;
  const out = new Float64Array(HEIGHT_STEPS + 1);
  let k = 0;
  for (let step = 1; step <= HEIGHT_STEPS; step++) {
    const at = (carry * step) / HEIGHT_STEPS;
    while (k < count - 2 && along[k + 1]! < at) k += 1;
    out[step] = between(along, right, k, at) / drift;
  }
  return out;
}

/** Value between entries `k` and `k + 1` where the first array is `at`, inside the pair's own range. */
function between(from: Float64Array, to: Float64Array, k: number, at: number): number {
  const span = from[k + 1]! - from[k]!;
  const t = span === 0 ? 0 : Math.min(1, Math.max(0, (at - from[k]!) / span));
  return to[k]! + t * (to[k + 1]! - to[k]!);
}

/** Direction of the day's wind seen by a shot at `bearing`, radians in (-π, π]: 0 from ahead, positive from the right. */
export function windAngle(conditions: Conditions, bearing: number): number {
  const angle = (conditions.wind.fromDeg * Math.PI) / 180 - bearing;
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}

/** Share of the still carry that is left with the wind at `angle`, see `windAngle`. */
export function carryFactorAt(table: FlightTable, angle: number): number {
  return readDirection(table.carryFactor, Math.abs(angle));
}

/** Drift to the right as a share of the still carry. */
export function driftShareAt(table: FlightTable, angle: number): number {
  // A wind from the right pushes to the left.
  const away = readDirection(table.driftShare, Math.abs(angle));
  return angle > 0 ? -away : away;
}

/** Length of the straight line to the landing as a share of the still carry. */
export function lineFactorAt(table: FlightTable, angle: number): number {
  const along = carryFactorAt(table, angle);
  const aside = driftShareAt(table, angle);
  return Math.sqrt(along * along + aside * aside);
}

/** Carry and drift shares for a gust of `z` standard deviations. */
export function gustAt(
  table: FlightTable,
  angle: number,
  z: number,
): { readonly carry: number; readonly drift: number } {
  const away = z * readDirection(table.gustDrift, Math.abs(angle));
  return {
    carry: z * readDirection(table.gustCarry, Math.abs(angle)),
    drift: angle > 0 ? -away : away,
  };
}

/** Descent (radians) and speed (m/s) at landing on the level. */
export function landingAt(
  table: FlightTable,
  angle: number,
): { readonly descent: number; readonly speedMps: number; readonly backspin: number } {
  return {
    descent: readDirection(table.descent, Math.abs(angle)),
    speedMps: readDirection(table.landingSpeedMps, Math.abs(angle)),
    backspin: table.landingSpin,
  };
}

/** Index of the direction kept that is nearest to the wind at `angle` (see `windAngle`). */
export function directionIndex(table: Pick<FlightTable, 'directions'>, angle: number): number {
  return Math.min(table.directions - 1, Math.round((Math.abs(angle) * WIND_STEPS) / Math.PI));
}

/** Height above the start at `alongM` of a flight that carries `carryM` on the day, metres; beyond the carry it goes on down. */
export function heightAt(table: FlightTable, carryM: number, alongM: number, angle = 0): number {
  const share = alongM / carryM;
  if (share <= 0) return 0;
  if (share >= 1) return (carryM - alongM) * Math.tan(readDirection(table.descent, Math.abs(angle)));
  const last = table.directions - 1;
  const position = last === 0 ? 0 : Math.min(last, (Math.abs(angle) * WIND_STEPS) / Math.PI);
  const d = Math.min(Math.max(0, last - 1), Math.floor(position));
  const near = readHeight(table.heightShare, d * (HEIGHT_STEPS + 1), share);
  if (last === 0) return carryM * near;
  const next = readHeight(table.heightShare, (d + 1) * (HEIGHT_STEPS + 1), share);
  return carryM * (near + (position - d) * (next - near));
}

/**
 * Carry to ground `riseM` above the start of a flight that carries `carryM` on the level, metres. Above the flight's top:
 * the distance of the top, where the ball meets the slope or nothing.
 */
export function carryToRise(rise: RiseTable, carryM: number, riseM: number): number {
  return carryM * readRise(rise, rise.carryShare, riseM / carryM);
}

/** Turn of the line to that landing, radians, positive away from the wind's side. */
export function turnToRise(rise: RiseTable, carryM: number, riseM: number): number {
  return readRise(rise, rise.turn, riseM / carryM);
}

function readRise({ topShare }: RiseTable, values: Float64Array, riseShare: number): number {
  const steps = (riseShare - LOWEST_RISE_SHARE) / (topShare - LOWEST_RISE_SHARE);
  const position = Math.min(RISE_STEPS, Math.max(0, steps * RISE_STEPS));
  const k = Math.min(RISE_STEPS - 1, Math.floor(position));
  return values[k]! + (position - k) * (values[k + 1]! - values[k]!);
}

/** Sideways place of a curving flight at `alongM`, metres, that is `curveM` to the side when it lands. */
export function curveAt(table: FlightTable, carryM: number, alongM: number, curveM: number): number {
  const position = Math.min(HEIGHT_STEPS, Math.max(0, (alongM / carryM) * HEIGHT_STEPS));
  const k = Math.min(HEIGHT_STEPS - 1, Math.floor(position));
  const { curveShape } = table;
  return curveM * (curveShape[k]! + (position - k) * (curveShape[k + 1]! - curveShape[k]!));
}

/** The still, level carry that a target `distanceM` away and `riseM` above asks for on the day, metres. */
export function playsLike(table: FlightTable, distanceM: number, riseM: number, angle = 0): number {
  const factor = lineFactorAt(table, angle);
  const rises = table.rises[directionIndex(table, angle)]!;
  let still = distanceM / factor;
  for (let k = 0; k < 12; k++) {
    const reached = carryToRise(rises, still * factor, riseM);
    const next = still * (distanceM / reached);
    if (Math.abs(next - still) < 1e-6 * distanceM) return next;
    still = next;
  }
  return still;
}

function readDirection(values: Float64Array, angle: number): number {
  const last = values.length - 1;
  if (last === 0) return values[0]!;
  const position = Math.min(last, (angle * WIND_STEPS) / Math.PI);
  const d = Math.min(last - 1, Math.floor(position));
  return values[d]! + (position - d) * (values[d + 1]! - values[d]!);
}

function readHeight(values: Float64Array, start: number, share: number): number {
  const position = share * HEIGHT_STEPS;
  const k = Math.min(HEIGHT_STEPS - 1, Math.floor(position));
  const a = values[start + k]!;
  return a + (position - k) * (values[start + k + 1]! - a);
}
