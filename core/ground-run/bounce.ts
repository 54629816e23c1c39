/**
 * One impact of a ball on turf. Source: A. R. Penner 2002, "The run of a golf ball", Can. J. Phys. 80:931 (equations 2 to
 * 8, read second-hand), with rebounds measured on greens by Haake 1989. The turf gives way, as if the impact were with
 * a firm surface that leans towards the ball. Range of the measurements: impacts of about 5 to 30 m/s on greens; other
 * surfaces here scale them, see `surfaces.ts`.
 */

import { BALL_RADIUS_M } from '../flight/ball-flight.ts';

/** Friction of ball on turf while it slides (Penner 2002). */
const FRICTION = 0.4;
/** Lean of the turf: this many degrees for an impact of 18.6 m/s at 44.4 degrees from the upright (Penner 2002, eq. 8). */
const LEAN_DEG = 15.4;
const LEAN_SPEED_MPS = 18.6;
const LEAN_ANGLE_DEG = 44.4;
const DEGREE = Math.PI / 180;

/** How a surface differs from the greens of the measurements; all 1 there. */
export interface Turf {
  /** Times the lean: larger is softer. */
  readonly give: number;
  /** Times the restitution. */
  readonly bounce: number;
  /** Share of the speed along the ground that grass leaves. */
  readonly glide: number;
}

export interface Motion {
  /** Along the way, m/s. */
  readonly along: number;
  /** Down before an impact, up after it, m/s; never negative. */
  readonly vertical: number;
  /** Backspin, radians per second; negative is topspin. */
  readonly backspin: number;
}

/** Share of the normal speed that comes back, by normal speed in m/s (Penner 2002, eq. 5). */
export function restitution(normalMps: number): number {
  return normalMps > 20 ? 0.12 : 0.51 - 0.0375 * normalMps + 0.000903 * normalMps * normalMps;
}

/** How far the turf seems to lean, radians. `angle` of the impact from the upright, radians. */
export function turfLean(speedMps: number, angle: number): number {
  return LEAN_DEG * DEGREE * (speedMps / LEAN_SPEED_MPS) * (angle / (LEAN_ANGLE_DEG * DEGREE));
}

/** The motion after an impact on a surface that rises by `rise` metres per metre along the way. */
export function bounceOff(before: Motion, turf: Turf, rise = 0): Motion {
  if (before.along < 0) {
    const mirrored = bounceOff(
      { along: -before.along, vertical: before.vertical, backspin: -before.backspin },
      turf,
      -rise,
    );
    return { along: -mirrored.along, vertical: mirrored.vertical, backspin: -mirrored.backspin };
  }
  const slope = Math.atan(rise);
  // Seen from the slope: an uphill one meets the ball more squarely.
  const speed = Math.hypot(before.along, before.vertical);
  const angle = Math.max(0, Math.atan2(before.along, before.vertical) - slope);
  const lean = turf.give * turfLean(speed, angle);
  const tangential = speed * Math.sin(angle - lean);
  const normal = speed * Math.cos(angle - lean);
  const e = Math.min(1, turf.bounce * restitution(normal));
  const slip = tangential + BALL_RADIUS_M * before.backspin;
  const grip = FRICTION * normal * (1 + e);
  const stillSlides = Math.abs((2 / 7) * slip) > grip;
  // Sliding: the friction works for the whole impact. Else the ball leaves rolling: 5/7 u - 2/7 r ω.
  const left =
    turf.glide *
    (stillSlides
      ? tangential - Math.sign(slip) * grip
      : (5 / 7) * tangential - (2 / 7) * BALL_RADIUS_M * before.backspin);
  const backspin = stillSlides
    ? before.backspin - (Math.sign(slip) * 2.5 * grip) / BALL_RADIUS_M
    : -left / BALL_RADIUS_M;
  const turn = lean + slope;
  const up = e * normal;
  return {
    along: left * Math.cos(turn) - up * Math.sin(turn),
    vertical: Math.max(0, left * Math.sin(turn) + up * Math.cos(turn)),
    backspin,
  };
}
