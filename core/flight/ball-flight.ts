/**
 * A ball's flight as a point mass under gravity, drag and the lift of its spin, in moving air. Assumes a steady wind with a
 * height profile and a ball within the Rules' limits of size and mass.
 */

import type { Air } from './air.ts';

/** Rules of Golf, Equipment Rules 3: mass at most 45.93 g, diameter at least 42.67 mm. */
export const BALL_MASS_KG = 0.04593;
export const BALL_RADIUS_M = 0.02135;
const AREA_M2 = Math.PI * BALL_RADIUS_M ** 2;
const GRAVITY_MPS2 = 9.80665;
/** Power law of the wind over open ground, its speed given at 10 m; common engineering practice for neutral air. */
const WIND_EXPONENT = 1 / 7;
const WIND_HEIGHT_M = 10;
/** Below this height the wind is that at it, metres: grass has its own. */
const WIND_FLOOR_M = 0.2;
/** Longest flight that is followed, seconds. */
const LONGEST_FLIGHT_S = 30;
export const STEP_S = 0.01;

export interface Launch {
  readonly speedMps: number;
  /** Upwards from the horizontal, radians. */
  readonly angle: number;
  /** Right of the aim, radians. */
  readonly direction: number;
  /** Radians per second. */
  readonly spin: number;
  /** Tilt of the spin axis, radians; positive curves the ball to the right. */
  readonly tilt: number;
}

/** Wind at 10 m in the aim's frame, m/s: `along` positive from behind, `right` positive towards the right. */
export interface Wind {
  readonly along: number;
  readonly right: number;
}

export const CALM: Wind = { along: 0, right: 0 };

/** One point of a flight; metres in the aim's frame, seconds. */
export interface FlightPoint {
  readonly time: number;
  readonly along: number;
  readonly right: number;
  readonly height: number;
}

export interface Flight {
  /** From the strike to the landing, one per step, the landing last. */
  readonly path: readonly FlightPoint[];
  readonly carry: number;
  /** Where it lands right of the aim, metres. */
  readonly drift: number;
  readonly apex: number;
  readonly timeS: number;
  readonly landingSpeedMps: number;
  /** Below the horizontal, radians. */
  readonly descent: number;
  readonly landingSpin: number;
  /** False where the ball never comes down through the target's height (it lies above the flight). */
  readonly landed: boolean;
}

/**
 * Drag and lift coefficients and spin decay of Smits & Smith 1994 (Science and Golf II, 340-347), measured for
 * 7e4 < Re < 2.1e5 and 0.08 < S < 0.2 with S = ω r / v; used beyond that range too, where they are an extrapolation. They
 * under-carry strong drivers by 2-10 %, so a player's flight is always fitted to the measured carry.
 */
export function dragCoefficient(spinRatio: number, reynolds: number): number {
  return 0.24 + 0.18 * spinRatio + 0.06 * Math.sin((Math.PI * (reynolds - 9e4)) / 2e5);
}

export function liftCoefficient(spinRatio: number): number {
  return 0.54 * spinRatio ** 0.4;
}

/** Position, velocity (along, left, up) and spin. */
type State = [number, number, number, number, number, number, number];

/**
 * Flies a ball until it comes down through `targetHeight` metres above its start (below: negative), by the classical
 * fourth-order Runge-Kutta method with a fixed step; halving the step changes carry by less than a millimetre (tested).
 */
export function flyBall(
  launch: Launch,
  air: Air,
  wind: Wind = CALM,
  targetHeight = 0,
  stepS = STEP_S,
): Flight {
  const level = Math.cos(launch.angle) * launch.speedMps;
  let state: State = [
    0,
    0,
    0,
    level * Math.cos(launch.direction),
    -level * Math.sin(launch.direction),
    Math.sin(launch.angle) * launch.speedMps,
    launch.spin,
  ];
  const path: FlightPoint[] = [{ time: 0, along: 0, right: 0, height: 0 }];
  let apex = 0;
  let time = 0;
  for (;;) {
    const next = step(state, stepS, launch.tilt, air, wind);
    const isDown = next[5] < 0 && next[2] <= Math.min(0, targetHeight);
    const isOnTarget = next[5] < 0 && next[2] <= targetHeight && state[2] > targetHeight;
    if (isDown || isOnTarget || time > LONGEST_FLIGHT_S) {
      const share = isOnTarget
        ? landingShare(state, next, targetHeight, stepS)
        : isDown
          ? landingShare(state, next, 0, stepS)
          : 1;
      const end = step(state, share * stepS, launch.tilt, air, wind);
      return finish(path, end, time + share * stepS, apex, isOnTarget);
    }
    state = next;
    time += stepS;
    apex = Math.max(apex, state[2]);
    path.push({ time, along: state[0], right: -state[1], height: state[2] });
  }
}

/** Share of the last step at which the height is reached: the height within a step is a parabola to good accuracy. */
function landingShare(before: State, after: State, targetHeight: number, stepS: number): number {
  let low = 0;
  let high = 1;
  for (let k = 0; k < 40; k++) {
    const t = (low + high) / 2;
    // Cubic Hermite would need the step; the quadratic through both heights and the first slope is enough at 10 ms.
    const height =
      before[2] + t * (after[2] - before[2]) + t * (1 - t) * ((before[5] - after[5]) / 2) * stepS;
    if (height > targetHeight) low = t;
    else high = t;
  }
  return (low + high) / 2;
}

function finish(path: FlightPoint[], end: State, time: number, apex: number, landed: boolean): Flight {
  path.push({ time, along: end[0], right: -end[1], height: end[2] });
  const level = Math.hypot(end[3], end[4]);
  return {
    path,
    carry: end[0],
    drift: -end[1],
    apex,
    timeS: time,
    landingSpeedMps: Math.hypot(level, end[5]),
    descent: Math.atan2(-end[5], level),
    landingSpin: end[6],
    landed,
  };
}

function step(state: State, h: number, tilt: number, air: Air, wind: Wind): State {
  const k1 = rate(state, tilt, air, wind);
  const k2 = rate(advance(state, k1, h / 2), tilt, air, wind);
  const k3 = rate(advance(state, k2, h / 2), tilt, air, wind);
  const k4 = rate(advance(state, k3, h), tilt, air, wind);
  return state.map((value, i) => value + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!)) as State;
}

function advance(state: State, slope: State, h: number): State {
  return state.map((value, i) => value + h * slope[i]!) as State;
}

/** Time derivative. Axes: x along the aim, y left, z up. Penner 2001 (Am. J. Phys. 69:563): F = ρ A C v² / 2. */
function rate(state: State, tilt: number, air: Air, wind: Wind): State {
  const [, , z, vx, vy, vz, spin] = state;
  const gust = (Math.max(z, WIND_FLOOR_M) / WIND_HEIGHT_M) ** WIND_EXPONENT;
  const ux = vx - wind.along * gust;
  const uy = vy + wind.right * gust;
  const speed = Math.hypot(ux, uy, vz);
  if (speed === 0) return [vx, vy, vz, 0, 0, -GRAVITY_MPS2, 0];
  const spinRatio = Math.abs(spin * BALL_RADIUS_M) / speed;
  const reynolds = (2 * BALL_RADIUS_M * speed) / air.viscosityM2S;
  const push = (air.densityKgM3 * AREA_M2 * speed) / (2 * BALL_MASS_KG);
  const drag = push * dragCoefficient(spinRatio, reynolds);
  const lift = push * (spin === 0 ? 0 : liftCoefficient(spinRatio));
  // Backspin turns about the axis to the right of the ball's level way; tilt lowers its right end.
  const level = Math.hypot(ux, uy) || 1;
  const ax = (Math.cos(tilt) * uy) / level;
  const ay = (-Math.cos(tilt) * ux) / level;
  const az = -Math.sin(tilt);
  // Lift acts along axis × velocity, of the velocity's own length.
  const lx = ay * vz - az * uy;
  const ly = az * ux - ax * vz;
  const lz = ax * uy - ay * ux;
  return [
    vx,
    vy,
    vz,
    -drag * ux + lift * lx,
    -drag * uy + lift * ly,
    -drag * vz + lift * lz - GRAVITY_MPS2,
    (-2e-5 * spin * speed) / BALL_RADIUS_M,
  ];
}
