/**
 * The flight of `ball-flight.ts` for tables: the same equations without allocation, and with the published coefficients
 * held at the ends of the range in which they were measured. High-spin shots leave that range; going on along the
 * formulas would give them more lift than any measurement shows (C_L at most 0.25 up to a spin ratio of 0.3 in Bearman &
 * Harvey 1976, at most 0.30 in Lyu et al. 2018), and a punch would fly farther into the wind than with it.
 */

import type { Air } from './air.ts';
import {
  BALL_MASS_KG,
  BALL_RADIUS_M,
  dragCoefficient,
  type Launch,
  liftCoefficient,
  type Wind,
} from './ball-flight.ts';

/**
 * Range of Smits & Smith 1994: spin ratios up to 0.2, Reynolds numbers from 7e4 to 2.1e5. Drag is let grow with spin up to a
 * ratio of 0.5, as its line agrees with Bearman & Harvey's 0.27 to 0.32 up to 0.3.
 */
export const MEASURED = {
  highestLiftRatio: 0.2,
  highestDragRatio: 0.5,
  lowestReynolds: 7e4,
  highestReynolds: 2.1e5,
} as const;
/** Step, seconds; halving it moves carries by less than a centimetre (tested). */
export const TABLE_STEP_S = 0.05;
const GRAVITY_MPS2 = 9.80665;
const AREA_M2 = Math.PI * BALL_RADIUS_M ** 2;
/** The wind's profile of `ball-flight.ts`: power law over open ground, its speed given at 10 m. */
const WIND_EXPONENT = 1 / 7;
const WIND_HEIGHT_M = 10;
const WIND_FLOOR_M = 0.2;
const MOST_STEPS = 800;

/** Flies one ball at a time; the last flight is in its fields. */
export class TableFlight {
  /** Points of the path, the landing last: metres along, right and up; `count` of them. */
  readonly along = new Float64Array(MOST_STEPS + 2);
  readonly right = new Float64Array(MOST_STEPS + 2);
  readonly height = new Float64Array(MOST_STEPS + 2);
  count = 0;
  carry = 0;
  drift = 0;
  apex = 0;
  timeS = 0;
  /** Below the horizontal, radians. */
  descent = 0;
  landingSpeedMps = 0;
  landingSpin = 0;
  private ax = 0;
  private ay = 0;
  private az = 0;
  private spinRate = 0;
  private x = 0;
  private y = 0;
  private z = 0;
  private vx = 0;
  private vy = 0;
  private vz = 0;
  private spin = 0;
  private tiltSine = 0;
  private tiltCosine = 1;

  constructor(private readonly stepS = TABLE_STEP_S) {}

  /** Until the ball comes down through `targetHeight` (zero or below), by the classical Runge-Kutta method. */
  fly(launch: Launch, air: Air, wind: Wind, targetHeight = 0): void {
    const level = Math.cos(launch.angle) * launch.speedMps;
    this.tiltSine = Math.sin(launch.tilt);
    this.tiltCosine = Math.cos(launch.tilt);
    this.x = 0;
    this.y = 0;
    this.z = 0;
    this.vx = level * Math.cos(launch.direction);
    this.vy = -level * Math.sin(launch.direction);
    this.vz = launch.speedMps * Math.sin(launch.angle);
    this.spin = launch.spin;
    this.along[0] = 0;
    this.right[0] = 0;
    this.height[0] = 0;
    this.apex = 0;
    this.timeS = 0;
    for (let k = 1; k <= MOST_STEPS; k++) {
      const { x, y, z, vx, vy, vz, spin } = this;
      this.step(this.stepS, air, wind);
      if (this.vz < 0 && this.z <= targetHeight) {
        const share = this.fall(z, vz, targetHeight);
        this.restore(x, y, z, vx, vy, vz, spin);
        this.step(share * this.stepS, air, wind);
        // What is left to the height is a millimetre or less: straight on.
        const rest = this.vz < 0 ? (targetHeight - this.z) / this.vz : 0;
        this.x += rest * this.vx;
        this.y += rest * this.vy;
        this.z = targetHeight;
        this.timeS += share * this.stepS;
        this.keep(k);
        break;
      }
      this.timeS += this.stepS;
      this.apex = Math.max(this.apex, this.z, peakBetween(z, vz, this.z, this.vz, this.stepS));
      this.keep(k);
    }
    this.carry = this.x;
    this.drift = -this.y;
    const ahead = Math.hypot(this.vx, this.vy);
    this.descent = Math.atan2(-this.vz, ahead);
    this.landingSpeedMps = Math.hypot(ahead, this.vz);
    this.landingSpin = this.spin;
  }

  private keep(k: number): void {
    this.along[k] = this.x;
    this.right[k] = -this.y;
    this.height[k] = this.z;
    this.count = k + 1;
  }

  private restore(x: number, y: number, z: number, vx: number, vy: number, vz: number, spin: number): void {
    this.x = x;
    this.y = y;
    this.z = z;
    this.vx = vx;
    this.vy = vy;
    this.vz = vz;
    this.spin = spin;
  }

  /** Share of the last step at which the height is reached, on the cubic through both ends. */
  private fall(z: number, vz: number, targetHeight: number): number {
    const h = this.stepS;
    let low = 0;
    let high = 1;
    for (let k = 0; k < 40; k++) {
      const t = (low + high) / 2;
      const height =
        z +
        t * t * (3 - 2 * t) * (this.z - z) +
        h * t * (1 - t) * (1 - t) * vz +
        h * t * t * (t - 1) * this.vz;
      if (height > targetHeight) low = t;
      else high = t;
    }
    return (low + high) / 2;
  }

  private step(h: number, air: Air, wind: Wind): void {
    const { x, y, z, vx, vy, vz, spin } = this;
    this.rate(z, vx, vy, vz, spin, air, wind);
    const { ax: a1, ay: b1, az: c1, spinRate: s1 } = this;
    const vx2 = vx + (h / 2) * a1;
    const vy2 = vy + (h / 2) * b1;
    const vz2 = vz + (h / 2) * c1;
    this.rate(z + (h / 2) * vz, vx2, vy2, vz2, spin + (h / 2) * s1, air, wind);
    const { ax: a2, ay: b2, az: c2, spinRate: s2 } = this;
    const vx3 = vx + (h / 2) * a2;
    const vy3 = vy + (h / 2) * b2;
    const vz3 = vz + (h / 2) * c2;
    this.rate(z + (h / 2) * vz2, vx3, vy3, vz3, spin + (h / 2) * s2, air, wind);
    const { ax: a3, ay: b3, az: c3, spinRate: s3 } = this;
    const vx4 = vx + h * a3;
    const vy4 = vy + h * b3;
    const vz4 = vz + h * c3;
    this.rate(z + h * vz3, vx4, vy4, vz4, spin + h * s3, air, wind);
    this.x = x + (h / 6) * (vx + 2 * vx2 + 2 * vx3 + vx4);
    this.y = y + (h / 6) * (vy + 2 * vy2 + 2 * vy3 + vy4);
    this.z = z + (h / 6) * (vz + 2 * vz2 + 2 * vz3 + vz4);
    this.vx = vx + (h / 6) * (a1 + 2 * a2 + 2 * a3 + this.ax);
    this.vy = vy + (h / 6) * (b1 + 2 * b2 + 2 * b3 + this.ay);
    this.vz = vz + (h / 6) * (c1 + 2 * c2 + 2 * c3 + this.az);
    this.spin = spin + (h / 6) * (s1 + 2 * s2 + 2 * s3 + this.spinRate);
  }

  /** Axes: x along the aim, y left, z up. Forces as in `ball-flight.ts` (Penner 2001: F = ρ A C v² / 2). */
  private rate(z: number, vx: number, vy: number, vz: number, spin: number, air: Air, wind: Wind): void {
    let ux = vx;
    let uy = vy;
    if (wind.along !== 0 || wind.right !== 0) {
      const profile = (Math.max(z, WIND_FLOOR_M) / WIND_HEIGHT_M) ** WIND_EXPONENT;
      ux -= wind.along * profile;
      uy += wind.right * profile;
    }
    const speed = Math.sqrt(ux * ux + uy * uy + vz * vz) || 1e-12;
    const spinRatio = Math.min(MEASURED.highestDragRatio, Math.abs(spin * BALL_RADIUS_M) / speed);
    const reynolds = Math.min(
      MEASURED.highestReynolds,
      Math.max(MEASURED.lowestReynolds, (2 * BALL_RADIUS_M * speed) / air.viscosityM2S),
    );
    const push = (air.densityKgM3 * AREA_M2 * speed) / (2 * BALL_MASS_KG);
    const drag = push * dragCoefficient(spinRatio, reynolds);
    const lift = spin === 0 ? 0 : push * liftCoefficient(Math.min(MEASURED.highestLiftRatio, spinRatio));
    const level = Math.sqrt(ux * ux + uy * uy) || 1;
    const nx = (this.tiltCosine * uy) / level;
    const ny = (-this.tiltCosine * ux) / level;
    const nz = -this.tiltSine;
    this.ax = -drag * ux + lift * (ny * vz - nz * uy);
    this.ay = -drag * uy + lift * (nz * ux - nx * vz);
    this.az = -drag * vz + lift * (nx * uy - ny * ux) - GRAVITY_MPS2;
    this.spinRate = (-2e-5 * spin * speed) / BALL_RADIUS_M;
  }
}

/** Highest point within a step that the ball rises into and falls out of: a parabola's. */
function peakBetween(z: number, vz: number, nextZ: number, nextVz: number, h: number): number {
  return vz > 0 && nextVz < 0 ? z + (vz * vz * h) / (2 * (vz - nextVz)) : nextZ;
}
