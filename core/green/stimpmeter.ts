/**
 * How fast a green is. The Stimpmeter lets a ball go at a fixed speed and its reading is how far the ball rolls on level
 * turf, in feet (USGA, Stimpmeter Instruction Booklet), so the reading fixes the deceleration of a rolling ball.
 */

const FOOT_M = 0.3048;
const INCH_M = 0.0254;

/** Speed at which the ball leaves the bar: 6.00 ft/s, 1.83 m/s (USGA booklet). */
export const RELEASE_SPEED_MPS = 6 * FOOT_M;
/** The bar: notch 30 in from the end that rests on the turf, ball let go at about 20 degrees, V-groove of 145 degrees. */
export const STIMPMETER = { runM: 30 * INCH_M, angleDeg: 20, grooveDeg: 145 } as const;

/** Readings that are seen on greens in play, feet; below and above them the model is an extrapolation. */
export const GREEN_SPEED_RANGE_FT = { lowest: 5, highest: 15 } as const;

/** Deceleration of a ball that rolls on level turf, m/s²: v² / (2 S). Taken as the same at all speeds. */
export function rollDeceleration(greenSpeedFt: number): number {
  if (!(greenSpeedFt > 0)) throw new RangeError(`A Stimpmeter reading is a length in feet: ${greenSpeedFt}`);
  return RELEASE_SPEED_MPS ** 2 / (2 * greenSpeedFt * FOOT_M);
}

/**
 * Speed of a ball that rolls without sliding down the bar and loses nothing: v² = 2 g h / (1 + 2/5 (r / ρ)²), with ρ the
 * distance of its centre from the line through both points of contact. An upper bound of the release speed: the ball is
 * slowed where the bar meets the turf.
 */
export function losslessReleaseSpeedMps(): number {
  const height = STIMPMETER.runM * Math.sin((STIMPMETER.angleDeg * Math.PI) / 180);
  const lever = Math.sin((STIMPMETER.grooveDeg / 2) * (Math.PI / 180));
  return Math.sqrt((2 * 9.80665 * height) / (1 + 0.4 / lever ** 2));
}
