/**
 * One putt rolling over a green: friction of the green's speed against the motion, and the pull of the slope. Integrated
 * by the embedded Runge-Kutta pair of Bogacki & Shampine 1989 (Appl. Math. Lett. 2:321), third order with its own error
 * estimate as step control. Limits: pure rolling from the start (a putt skids over its first tenth or so), no grain, no wind.
 */

import { hypotenuse } from './hypotenuse.ts';
import { captureSpeedMps } from './capture-speed.ts';
import { HOLE_RADIUS_M } from '../putting/capture.ts';
import { RollingBall } from './rolling-ball.ts';
import type { GreenSurface } from './surface.ts';

/** Error allowed in a step: metres, and metres per second. */
const TOLERANCE = 5e-4;
/** Below this speed the rest of the way is taken in one go: a millimetre or so. */
const CRAWL_MPS = 0.03;
/** No step may take more than this share of the time in which friction and slope could stop the ball. */
const STEP_SHARE = 0.5;
const LONGEST_STEP_S = 0.5;
const SHORTEST_STEP_S = 1e-4;
/** A ball that the slope never lets stop is followed this far from the hole, metres. */
export const FARTHEST_M = 60;

export class PuttRoller extends RollingBall {
  /** Where the ball came to rest, or where it was when it dropped, metres from the hole. */
  endX = 0;
  endY = 0;
  holed = false;
  /** The slope is too steep for this green's speed, or the putt far too long: followed as far as `FARTHEST_M`. */
  ranAway = false;
  timeS = 0;
  /** Nearest that it came to the middle of the hole, and its speed there. */
  nearestM = 0;
  speedAtNearestMps = 0;
  steps = 0;

  constructor(
    surface: GreenSurface,
    decelerationMps2: number,
    private readonly tolerance = TOLERANCE,
  ) {
    super(surface, decelerationMps2);
  }

  /** Rolls a ball from (x, y) at `speed` towards `bearing` (radians clockwise from north). */
  roll(x: number, y: number, speed: number, bearing: number): void {
    let vx = speed * Math.sin(bearing);
    let vy = speed * Math.cos(bearing);
    this.holed = false;
    this.ranAway = false;
    this.timeS = 0;
    this.steps = 0;
    this.nearestM = hypotenuse(x, y);
    this.speedAtNearestMps = speed;
    let h = LONGEST_STEP_S;
    let v = speed;
    this.accelerate(x, y, vx, vy);
    let ax = this.ax;
    let ay = this.ay;
    while (v > CRAWL_MPS) {
      h = Math.min(h, LONGEST_STEP_S, (STEP_SHARE * v) / hypotenuse(ax, ay));
      h = Math.max(h, SHORTEST_STEP_S);
      const bx2 = vx + (h / 2) * ax;
      const by2 = vy + (h / 2) * ay;
      this.accelerate(x + (h / 2) * vx, y + (h / 2) * vy, bx2, by2);
      const ax2 = this.ax;
      const ay2 = this.ay;
      const bx3 = vx + 0.75 * h * ax2;
      const by3 = vy + 0.75 * h * ay2;
      this.accelerate(x + 0.75 * h * bx2, y + 0.75 * h * by2, bx3, by3);
      const ax3 = this.ax;
      const ay3 = this.ay;
      const nx = x + (h / 9) * (2 * vx + 3 * bx2 + 4 * bx3);
      const ny = y + (h / 9) * (2 * vy + 3 * by2 + 4 * by3);
      const ux = vx + (h / 9) * (2 * ax + 3 * ax2 + 4 * ax3);
      const uy = vy + (h / 9) * (2 * ay + 3 * ay2 + 4 * ay3);
      this.accelerate(nx, ny, ux, uy);
      const ax4 = this.ax;
      const ay4 = this.ay;
      const error =
        (h / 72) *
        Math.max(
          Math.abs(-5 * vx + 6 * bx2 + 8 * bx3 - 9 * ux) + Math.abs(-5 * vy + 6 * by2 + 8 * by3 - 9 * uy),
          Math.abs(-5 * ax + 6 * ax2 + 8 * ax3 - 9 * ax4) + Math.abs(-5 * ay + 6 * ay2 + 8 * ay3 - 9 * ay4),
        );
      const change = error === 0 ? 2 : Math.min(2, Math.max(0.3, 0.9 * Math.cbrt(this.tolerance / error)));
      if (error > this.tolerance && h > SHORTEST_STEP_S) {
        h *= change;
        continue;
      }
      this.steps += 1;
      if (this.meetsHole(x, y, vx, vy, nx, ny, ux, uy, h)) return;
      x = nx;
      y = ny;
      vx = ux;
      vy = uy;
      ax = ax4;
      ay = ay4;
      v = hypotenuse(vx, vy);
      this.timeS += h;
      h *= change;
      if (x * x + y * y > FARTHEST_M * FARTHEST_M || this.steps > 4000) {
        this.ranAway = true;
        break;
      }
    }
    // The last crawl: what is left of the motion against friction and slope along it.
    const along = v > 0 ? -(ax * vx + ay * vy) / v : 0;
    if (!this.ranAway && along > 0) {
      x += (vx * v) / (2 * along);
      y += (vy * v) / (2 * along);
      this.timeS += v / along;
    }
    this.endX = x;
    this.endY = y;
    const left = hypotenuse(x, y);
    if (left < this.nearestM) {
      this.nearestM = left;
      this.speedAtNearestMps = 0;
    }
    if (left < HOLE_RADIUS_M && !this.ranAway) this.holed = true;
  }

  /** Looks for the hole within one step, on the cubic through both ends; true where the ball drops. */
  private meetsHole(
    x: number,
    y: number,
    vx: number,
    vy: number,
    nx: number,
    ny: number,
    ux: number,
    uy: number,
    h: number,
  ): boolean {
    const cx = nx - x;
    const cy = ny - y;
    const square = cx * cx + cy * cy;
    let t = square === 0 ? 1 : Math.min(1, Math.max(0, -(x * cx + y * cy) / square));
    const chord = hypotenuse(x + t * cx, y + t * cy);
    // The path strays from its chord by less than an eighth of what it bends.
    const sag = (h * hypotenuse(ux - vx, uy - vy)) / 8;
    if (chord - sag > Math.min(this.nearestM, 4 * HOLE_RADIUS_M)) {
      if (chord < this.nearestM) this.nearestM = chord;
      return false;
    }
    let px = 0;
    let py = 0;
    let sx = 0;
    let sy = 0;
    for (let k = 0; k < 4; k++) {
      const a = t * t * (3 - 2 * t);
      const b = h * t * (1 - t) * (1 - t);
      const c = h * t * t * (t - 1);
      px = x + a * cx + b * vx + c * ux;
      py = y + a * cy + b * vy + c * uy;
      const da = (6 * t * (1 - t)) / h;
      const db = (1 - t) * (1 - 3 * t);
      const dc = t * (3 * t - 2);
      sx = da * cx + db * vx + dc * ux;
      sy = da * cy + db * vy + dc * uy;
      const speedSquare = sx * sx + sy * sy;
      if (speedSquare === 0) break;
      t = Math.min(1, Math.max(0, t - (px * sx + py * sy) / (speedSquare * h)));
    }
    // Still coming nearer at the step's end: the next step decides.
    if (t >= 1) return false;
    const offset = hypotenuse(px, py);
    if (offset >= this.nearestM) return false;
    this.nearestM = offset;
    this.speedAtNearestMps = hypotenuse(sx, sy);
    if (this.speedAtNearestMps >= captureSpeedMps(offset)) return false;
    this.holed = true;
    this.endX = px;
    this.endY = py;
    this.timeS += t * h;
    return true;
  }
}
