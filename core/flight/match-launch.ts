/**
 * The launch that carries as far as the player does. The published coefficients under-carry strong drivers by 2-10 %, so the
 * speed found is that of an equivalent launch, not what a radar would read.
 */

import type { Air } from './air.ts';
import { BALL_RADIUS_M, CALM, type Launch } from './ball-flight.ts';
import { TableFlight } from './table-flight.ts';
import type { LaunchShape, MeasuredLaunch } from './typical-launch.ts';

const SLOWEST_MPS = 0.5;
const FASTEST_MPS = 130;
/** Carry is matched to this share, and to a millimetre. */
const CARRY_TOLERANCE = 1e-5;

export interface MatchedLaunch {
  readonly launch: Launch;
  /** Height of the flight's top, metres. */
  readonly apex: number;
  /** Carry asked for, less that found, metres: zero but for carries beyond what any ball does. */
  readonly missM: number;
}

/**
 * Launch in `air`, without wind and on the level, whose carry is `carryM`. With a measured speed as well as angle and
 * spin the carry decides the speed all the same: carry is what is planned with. A measured apex decides the angle.
 */
export function matchLaunch(
  carryM: number,
  shape: LaunchShape,
  air: Air,
  measured: MeasuredLaunch = {},
): MatchedLaunch {
  if (!(carryM > 0)) throw new RangeError(`A carry is a length in metres: ${carryM}`);
  const at = (angle: number): MatchedLaunch => matchSpeed(carryM, angle, shape.spinRatio, measured, air);
  const { angle, apexM } = measured;
  if (angle !== undefined || apexM === undefined) return at(angle ?? shape.angle);
  // The higher the launch, the higher the top of a flight of that carry.
  let low = (1 * Math.PI) / 180;
  let high = (55 * Math.PI) / 180;
  let best = at(shape.angle);
  for (let k = 0; k < 20 && Math.abs(best.apex - apexM) > 0.02; k++) {
    if (best.apex > apexM) high = best.launch.angle;
    else low = best.launch.angle;
    best = at((low + high) / 2);
  }
  return best;
}

function matchSpeed(
  carryM: number,
  angle: number,
  spinRatio: number,
  measured: MeasuredLaunch,
  air: Air,
): MatchedLaunch {
  const launchAt = (speedMps: number): Launch => ({
    speedMps,
    angle,
    direction: 0,
    spin: spinOf(speedMps, spinRatio, measured),
    tilt: 0,
  });
  const flight = new TableFlight();
  const fly = (speedMps: number): number => {
    flight.fly(launchAt(speedMps), air, CALM);
    return flight.carry;
  };
  const tolerance = Math.max(0.001, CARRY_TOLERANCE * carryM);
  let low = SLOWEST_MPS;
  let high = FASTEST_MPS;
  // Without air the speed would be sqrt(c g / sin 2a); with it about a fifth more.
  let speed = Math.min(high, 1.1 * Math.sqrt((carryM * 9.80665) / Math.max(0.1, Math.sin(2 * angle))));
  let carry = fly(speed);
  for (let k = 0; k < 40 && Math.abs(carry - carryM) > tolerance && high - low > 1e-9; k++) {
    if (carry > carryM) high = speed;
    else low = speed;
    // Carry grows a little slower than the square of the speed; a guess outside the bracket is halved instead.
    const guess = speed * (carryM / carry) ** 0.65;
    speed = guess > low && guess < high ? guess : (low + high) / 2;
    carry = fly(speed);
  }
  return { launch: launchAt(speed), apex: flight.apex, missM: carryM - carry };
}

/** A measured spin belongs to the measured speed; at another speed the ratio is kept. */
function spinOf(speedMps: number, spinRatio: number, measured: MeasuredLaunch): number {
  if (measured.spin === undefined) return (spinRatio * speedMps) / BALL_RADIUS_M;
  return measured.speedMps === undefined ? measured.spin : (measured.spin * speedMps) / measured.speedMps;
}
