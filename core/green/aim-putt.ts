/**
 * The stroke that a player means to make: speed and line that bring the ball over the middle of the hole at a chosen
 * pace. Found by rolling the ball backwards out of the hole until it is as far away as the ball lies.
 */

import { hypotenuse } from './hypotenuse.ts';
import { RollingBall } from './rolling-ball.ts';
import { type GreenSurface, SLOPE_PULL_MPS2 } from './surface.ts';

export interface IntendedPutt {
  readonly speedMps: number;
  /** Radians clockwise from north. */
  readonly bearing: number;
  /** Speed over the middle of the hole, were it covered. */
  readonly arrivalMps: number;
  /** Direction of travel there. */
  readonly arrivalBearing: number;
}

/** Slowest pace over the hole that a player aims for, as a share of what the run on the level would give. */
const SLOWEST_PACE_SHARE = 0.15;
const MOST_TURNS = 40;
/** Slope at the hole from which the heading is kept on its side of the fall line, as a share of what friction can hold. */
const STEEP_SHARE = 0.4;
/** How far beyond the straight line a heading may lie there, radians: greens are not quite planes. */
const SPARE_TURN = 0.1;
/** Where the backward roll may end beside the ball, metres. */
const CLOSE_ENOUGH_M = 5e-4;
const STEP_SHARE = 0.08;
const LONGEST_STEP_S = 0.12;

/**
 * The putt from (x, y) to the hole at (0, 0). `pastM`: how far beyond the hole the ball is meant to run if it misses, on the
 * slope that it arrives on. Downhill on a fast green a ball that arrives that slowly may not exist: then the pace is
 * raised until it does.
 */
export function aimPutt(
  surface: GreenSurface,
  decelerationMps2: number,
  x: number,
  y: number,
  pastM: number,
): IntendedPutt {
  const distance = hypotenuse(x, y);
  const straight = Math.atan2(-x, -y);
  if (distance < 1e-6) return { speedMps: 0, bearing: 0, arrivalMps: 0, arrivalBearing: 0 };
  if (surface.isLevel) {
    const arrivalMps = Math.sqrt(2 * decelerationMps2 * pastM);
    const speedMps = Math.sqrt(arrivalMps ** 2 + 2 * decelerationMps2 * distance);
    return { speedMps, bearing: straight, arrivalMps, arrivalBearing: straight };
  }
  const back = new BackwardRoll(surface, decelerationMps2);
  let heading = straight;
  let pace = 0;
  let best: IntendedPutt | null = null;
  let bestMiss = Infinity;
  const [leftmost, rightmost] = headingLimits(surface, decelerationMps2, straight);
  let low = leftmost;
  let high = rightmost;
  let lastHeading = NaN;
  let lastMiss = NaN;
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const rise = surface.riseEast(0, 0) * Math.sin(heading) + surface.riseNorth(0, 0) * Math.cos(heading);
    const slowing = Math.max(
      SLOWEST_PACE_SHARE * decelerationMps2,
      decelerationMps2 + SLOPE_PULL_MPS2 * rise,
    );
    const arrivalMps = Math.max(pace, Math.sqrt(2 * slowing * pastM));
    if (!back.roll(distance, arrivalMps, heading)) {
      pace = 1.25 * arrivalMps + 0.1;
      low = leftmost;
      high = rightmost;
      lastHeading = NaN;
      continue;
    }
    const miss = wrap(Math.atan2(-back.x, -back.y) - straight);
    if (Math.abs(miss) < bestMiss) {
      bestMiss = Math.abs(miss);
      best = { speedMps: back.speed, bearing: back.bearing, arrivalMps, arrivalBearing: heading };
    }
    if (Math.abs(miss) * distance < CLOSE_ENOUGH_M) break;
    // A heading turned to the right moves the backward path's end the same way round, so misses bracket the answer.
    if (miss > 0) high = Math.min(high, heading);
    else low = Math.max(low, heading);
    const slope = (miss - lastMiss) / (heading - lastHeading);
    const step = Number.isFinite(slope) && slope > 0.2 ? miss / slope : miss;
    let next = heading - Math.max(-0.6, Math.min(0.6, step));
    if (!(next > low && next < high)) next = (low + high) / 2;
    lastHeading = heading;
    lastMiss = miss;
    heading = next;
  }
  return (
    best ?? {
      speedMps: Math.sqrt(2 * decelerationMps2 * (distance + pastM)),
      bearing: straight,
      arrivalMps: 0,
      arrivalBearing: straight,
    }
  );
}

/**
 * Headings between which the answer is looked for. On a steep slope nearly all paths come down the fall line, so that a
 * hair's breadth of heading sweeps half the green, and one past the fall line comes from the other side of it: there the
 * heading lies between the straight line and the fall line.
 */
function headingLimits(
  surface: GreenSurface,
  decelerationMps2: number,
  straight: number,
): readonly [number, number] {
  const east = surface.riseEast(0, 0);
  const north = surface.riseNorth(0, 0);
  if (SLOPE_PULL_MPS2 * hypotenuse(east, north) < STEEP_SHARE * decelerationMps2)
    return [-Infinity, Infinity];
  const toFall = wrap(Math.atan2(-east, -north) - straight);
  return toFall > 0 ? [straight - SPARE_TURN, straight + toFall] : [straight + toFall, straight + SPARE_TURN];
}

/** The same motion with time turned round: friction speeds the ball up on its way back. Classical Runge-Kutta. */
class BackwardRoll extends RollingBall {
  x = 0;
  y = 0;
  speed = 0;
  /** Direction of the forward motion, radians clockwise from north. */
  bearing = 0;

  /** From the hole back to `distance`; false where no ball could have come from there at that pace. */
  roll(distance: number, arrivalMps: number, heading: number): boolean {
    let x = 0;
    let y = 0;
    let vx = arrivalMps * Math.sin(heading);
    let vy = arrivalMps * Math.cos(heading);
    for (let k = 0; k < 2000; k++) {
      this.accelerate(x, y, vx, vy);
      const ax = this.ax;
      const ay = this.ay;
      const v = hypotenuse(vx, vy);
      if (v < 0.02) return false;
      const h = Math.min(LONGEST_STEP_S, (STEP_SHARE * Math.max(v, 0.1) * 4) / hypotenuse(ax, ay));
      const left = x * x + y * y;
      if (!this.step(x, y, vx, vy, h)) return false;
      const reached = this.x * this.x + this.y * this.y;
      if (reached >= distance * distance) {
        // The share of the step at which the ring is crossed, by halving on the step itself.
        let low = 0;
        let high = 1;
        for (let cut = 0; cut < 12; cut++) {
          const share =
            cut < 1
              ? (distance - Math.sqrt(left)) / (Math.sqrt(reached) - Math.sqrt(left))
              : (low + high) / 2;
          this.step(x, y, vx, vy, share * h);
          const gap = hypotenuse(this.x, this.y) - distance;
          if (Math.abs(gap) < 2e-4) break;
          if (gap > 0) high = share;
          else low = share;
        }
        return true;
      }
      x = this.x;
      y = this.y;
      vx = this.speed * Math.sin(this.bearing);
      vy = this.speed * Math.cos(this.bearing);
    }
    return false;
  }

  private step(x: number, y: number, vx: number, vy: number, h: number): boolean {
    this.accelerate(x, y, vx, vy);
    const ax1 = this.ax;
    const ay1 = this.ay;
    const vx2 = vx - (h / 2) * ax1;
    const vy2 = vy - (h / 2) * ay1;
    this.accelerate(x - (h / 2) * vx, y - (h / 2) * vy, vx2, vy2);
    const ax2 = this.ax;
    const ay2 = this.ay;
    const vx3 = vx - (h / 2) * ax2;
    const vy3 = vy - (h / 2) * ay2;
    this.accelerate(x - (h / 2) * vx2, y - (h / 2) * vy2, vx3, vy3);
    const ax3 = this.ax;
    const ay3 = this.ay;
    const vx4 = vx - h * ax3;
    const vy4 = vy - h * ay3;
    this.accelerate(x - h * vx3, y - h * vy3, vx4, vy4);
    const ux = vx - (h / 6) * (ax1 + 2 * ax2 + 2 * ax3 + this.ax);
    const uy = vy - (h / 6) * (ay1 + 2 * ay2 + 2 * ay3 + this.ay);
    this.x = x - (h / 6) * (vx + 2 * vx2 + 2 * vx3 + vx4);
    this.y = y - (h / 6) * (vy + 2 * vy2 + 2 * vy3 + vy4);
    this.speed = hypotenuse(ux, uy);
    this.bearing = Math.atan2(ux, uy);
    return ux * vx + uy * vy > 0;
  }
}

function wrap(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
