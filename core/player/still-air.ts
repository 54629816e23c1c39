/**
 * What a shot measured in wind, cold, heat or at altitude would have been in still air at 15 °C at sea level, where the
 * laws of a bag are meant: the launch is found that flies as it did in the air of that day, and flown again in
 * the ordinary air. The same flight as the planner's tables (`flight/table-flight.ts`), so that what is taken off here
 * is what a plan for such a day puts on.
 */

import { airOfConditions, DEFAULT_CONDITIONS } from '../conditions/conditions.ts';
import type { Air } from '../flight/air.ts';
import { BALL_RADIUS_M, CALM, type Wind } from '../flight/ball-flight.ts';
import { matchLaunch } from '../flight/match-launch.ts';
import { TableFlight } from '../flight/table-flight.ts';
import { type LaunchShape, typicalLaunch } from '../flight/typical-launch.ts';
import { type Result, refuse, succeed } from '../result.ts';
import type { Club, Swing } from './model.ts';
import { told, type Told } from '../words/told.ts';

/** The air a shot was hit in; what is absent is as on an ordinary day: still, 15 °C, sea level. */
export interface ShotWeather {
  /** Mean wind at 10 m above the ground, metres per second. */
  readonly windMps?: number | undefined;
  /** Where it came from, seen along the line of aim, clockwise: 0 from ahead, 90 from the right, 180 from behind. */
  readonly windFromDeg?: number | undefined;
  readonly temperatureC?: number | undefined;
  readonly altitudeM?: number | undefined;
}

export interface PlacedShot {
  /** Straight distance from the ball to where it landed, metres. */
  readonly carryM: number;
  /** Radians, positive right of the aim. */
  readonly direction: number;
}

/**
 * What the flight model is trusted with. Air: `flight/air.ts` is good to 0.1 % from -20 to 45 °C; the standard
 * atmosphere is taken up to 5000 m. Wind: short of a gale (17 m/s, Beaufort 8); common practice, no source.
 */
export const WEATHER_RANGE = {
  mostWindMps: 15,
  lowestTemperatureC: -20,
  highestTemperatureC: 45,
  lowestAltitudeM: -430,
  highestAltitudeM: 5000,
} as const;

const SLOWEST_MPS = 0.5;
const FASTEST_MPS = 130;
/** Carry is matched to this share, or to a millimetre. */
const CARRY_TOLERANCE = 1e-4;
const DIRECTION_TOLERANCE = 1e-4;
/** A launch that is not found in so many flights is none. */
const MOST_FLIGHTS = 20;
/** Carry as a power of the speed: about 1.6 in still air, less against the wind. */
const USUAL_POWER = 1.6;
const LEAST_POWER = 0.4;
const MOST_POWER = 3;
/** Wind and air that take or give more than this of a club's usual carry are beyond the model. */
const LEAST_SHARE_LEFT = 0.65;
const MOST_SHARE_LEFT = 1.4;
/**
 * Against the wind a harder hit gains less than in still air, so that differences between shots are drawn apart again.
 * Where that would be by more than this, they are left as they are and only the usual change is taken off: part
 * of the differences is not speed, and would be blown up.
 */
const MOST_STRETCH = 1.35;
/** Step of speed by which the stretch is found. */
const SPEED_STEP = 1.03;

export function isOrdinary({ windMps = 0, temperatureC, altitudeM }: ShotWeather): boolean {
  return (
    windMps === 0 &&
    (temperatureC ?? DEFAULT_CONDITIONS.temperatureC) === DEFAULT_CONDITIONS.temperatureC &&
    (altitudeM ?? DEFAULT_CONDITIONS.altitudeM) === DEFAULT_CONDITIONS.altitudeM
  );
}

/** Why something cannot be taken off a shot. */
export interface AirDoubt {
  readonly kind: 'wind-side' | 'wind' | 'temperature' | 'altitude' | 'flight';
  /** As a sentence without its full stop. */
  readonly told: Told;
}

/** What of the weather is beyond the model; null where it is within. */
export function weatherDoubt(weather: ShotWeather): AirDoubt | null {
  const { windMps = 0, windFromDeg, temperatureC, altitudeM } = weather;
  const range = WEATHER_RANGE;
  const [coldest, hottest] = [range.lowestTemperatureC, range.highestTemperatureC];
  if (windMps > 0 && windFromDeg === undefined)
    return { kind: 'wind-side', told: told(({ spread }) => spread.doubts['wind-side']) };
  if (windMps > range.mostWindMps)
    return {
      kind: 'wind',
      told: told(({ spread }) => spread.doubts.wind, { wind: round(windMps), most: range.mostWindMps }),
    };
  if (temperatureC !== undefined && (temperatureC < coldest || temperatureC > hottest))
    return {
      kind: 'temperature',
      told: told(({ spread }) => spread.doubts.temperature, {
        temperature: round(temperatureC),
        coldest,
        hottest,
      }),
    };
  if (altitudeM !== undefined && (altitudeM < range.lowestAltitudeM || altitudeM > range.highestAltitudeM))
    return {
      kind: 'altitude',
      told: told(({ spread }) => spread.doubts.altitude, {
        altitude: round(altitudeM),
        most: range.highestAltitudeM,
      }),
    };
  return null;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** The launch is told from carries so far apart, as a share: finer steps would only make kept answers useless. */
const TYPICAL_STEP = 0.02;
const MOST_KEPT = 50_000;

/** What the weather does to a club's usual shot. */
interface UsualChange {
  /** Carry in still air per carry on the day. */
  readonly ratio: number;
  /** What is added to the direction on the day. */
  readonly turn: number;
  /** By how much differences from the usual shot would be drawn apart. */
  readonly stretch: number;
}

/**
 * Takes one shot after another to still air. A shot takes a millisecond or less; answers are kept, so that a bag that
 * is changed in one place is not worked out anew in all.
 */
export class StillAir {
  private readonly flight = new TableFlight();
  private readonly ordinary = airOfConditions(DEFAULT_CONDITIONS);
  private readonly kept = new Map<string, PlacedShot | null>();
  private readonly changes = new Map<string, UsualChange>();

  /**
   * `typicalCarryM`: what the club and swing usually carry in still air, by which the launch is told. Weather within
   * `weatherDoubt` is assumed. Refuses weather that changes the club's usual shot too much to be taken off; a single
   * shot whose launch is not found is changed as the usual one is.
   */
  still(
    club: Pick<Club, 'loftDeg'>,
    swing: Swing,
    typicalCarryM: number,
    measured: PlacedShot,
    weather: ShotWeather,
  ): Result<PlacedShot, AirDoubt> {
    if (isOrdinary(weather)) return succeed(measured);
    const change = this.changeOf(club, swing, typicalCarryM, weather);
    if (1 / change.ratio < LEAST_SHARE_LEFT || 1 / change.ratio > MOST_SHARE_LEFT)
      return refuse({
        kind: 'flight',
        told: told(({ spread }) => spread.doubts.flight),
      });
    const shape = typicalLaunch(club, swing, inSteps(typicalCarryM));
    const found = change.stretch > MOST_STRETCH ? null : this.find(shape, measured, weather);
    if (found !== null) return succeed(found);
    // The wind as this shot met it, to a degree.
    const turned = Math.round(
      (weather.windFromDeg ?? 0) - ((measured.direction + change.turn) * 180) / Math.PI,
    );
    const own = this.changeOf(club, swing, typicalCarryM, { ...weather, windFromDeg: turned });
    return succeed({ carryM: measured.carryM * own.ratio, direction: measured.direction + own.turn });
  }

  /**
   * What the usual carry in still air is, given carries as measured and the weather of each: the median of what they
   * come to, for which the usual change is taken off twice. Carries with a null weather count as they are.
   */
  typicalStill(
    club: Pick<Club, 'loftDeg'>,
    swing: Swing,
    carries: readonly { readonly carryM: number; readonly weather: ShotWeather | null }[],
  ): number {
    let typical = medianOf(carries.map(({ carryM }) => carryM));
    if (carries.every(({ weather }) => weather === null)) return typical;
    for (let k = 0; k < 2; k++) {
      const at = typical;
      typical = medianOf(
        carries.map(({ carryM, weather }) =>
          weather === null ? carryM : carryM * this.changeOf(club, swing, at, weather).ratio,
        ),
      );
    }
    return typical;
  }

  private changeOf(
    club: Pick<Club, 'loftDeg'>,
    swing: Swing,
    typicalCarryM: number,
    weather: ShotWeather,
  ): UsualChange {
    const typical = inSteps(typicalCarryM);
    const shape = typicalLaunch(club, swing, typical);
    const key = keyOf(shape, { carryM: typical, direction: 0 }, weather);
    const known = this.changes.get(key);
    if (known !== undefined) return known;
    const { speedMps } = matchLaunch(typical, shape, this.ordinary).launch;
    const { air, wind } = surroundings(weather);
    this.fly(shape, speedMps, 0, air, wind);
    const { carry, drift } = this.flight;
    const onTheDay = Math.hypot(carry, drift);
    this.fly(shape, SPEED_STEP * speedMps, 0, air, wind);
    const gainOnTheDay = Math.log(Math.hypot(this.flight.carry, this.flight.drift) / onTheDay);
    this.fly(shape, SPEED_STEP * speedMps, 0, this.ordinary, CALM);
    const change = {
      ratio: typical / onTheDay,
      turn: -Math.atan2(drift, carry),
      stretch: Math.log(this.flight.carry / typical) / Math.max(1e-9, gainOnTheDay),
    };
    if (this.changes.size >= MOST_KEPT) this.changes.clear();
    this.changes.set(key, change);
    return change;
  }

  /** The shot in still air; null where no launch is found that lands so. */
  private find(shape: LaunchShape, measured: PlacedShot, weather: ShotWeather): PlacedShot | null {
    const key = keyOf(shape, measured, weather);
    const known = this.kept.get(key);
    if (known !== undefined) return known;
    const launch = this.launchOf(shape, measured, weather);
    let landed: PlacedShot | null = null;
    if (launch !== null) {
      this.fly(shape, launch.speedMps, 0, this.ordinary, CALM);
      landed = { carryM: this.flight.carry, direction: launch.direction };
    }
    if (this.kept.size >= MOST_KEPT) this.kept.clear();
    this.kept.set(key, landed);
    return landed;
  }

  /** Speed and direction that land where the shot did; null where none does. */
  private launchOf(
    shape: LaunchShape,
    measured: PlacedShot,
    weather: ShotWeather,
  ): { readonly speedMps: number; readonly direction: number } | null {
    const { air, wind } = surroundings(weather);
    const tolerance = Math.max(0.001, CARRY_TOLERANCE * measured.carryM);
    let { direction } = measured;
    const level = Math.max(0.1, Math.sin(2 * shape.angle));
    let speedMps = Math.min(FASTEST_MPS, 1.1 * Math.sqrt((measured.carryM * 9.80665) / level));
    let power = USUAL_POWER;
    let before: { readonly speedMps: number; readonly reached: number } | null = null;
    for (let k = 0; k < MOST_FLIGHTS; k++) {
      this.fly(shape, speedMps, direction, air, wind);
      const { carry, drift } = this.flight;
      const reached = Math.hypot(carry, drift);
      const turn = measured.direction - Math.atan2(drift, carry);
      if (Math.abs(reached - measured.carryM) < tolerance && Math.abs(turn) < DIRECTION_TOLERANCE)
        return { speedMps, direction };
      // How carry hangs on speed in this wind, two flights tell.
      if (before !== null && Math.abs(speedMps / before.speedMps - 1) > 1e-4) {
        const seen = Math.log(reached / before.reached) / Math.log(speedMps / before.speedMps);
        if (seen > 0) power = Math.min(MOST_POWER, Math.max(LEAST_POWER, seen));
      }
      before = { speedMps, reached };
      direction += turn;
      speedMps *= (measured.carryM / reached) ** (1 / power);
      if (!(speedMps > SLOWEST_MPS && speedMps < FASTEST_MPS)) return null;
    }
    return null;
  }

  private fly(
    { angle, spinRatio }: LaunchShape,
    speedMps: number,
    direction: number,
    air: Air,
    wind: Wind,
  ): void {
    const spin = (spinRatio * speedMps) / BALL_RADIUS_M;
    this.flight.fly({ speedMps, angle, direction, spin, tilt: 0 }, air, wind);
  }
}

function inSteps(carryM: number): number {
  return Math.exp(TYPICAL_STEP * Math.round(Math.log(carryM) / TYPICAL_STEP));
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}

function keyOf(
  { angle, spinRatio }: LaunchShape,
  { carryM, direction }: PlacedShot,
  { windMps, windFromDeg, temperatureC, altitudeM }: ShotWeather,
): string {
  return [angle, spinRatio, carryM, direction, windMps, windFromDeg, temperatureC, altitudeM].join();
}

function surroundings(weather: ShotWeather): { readonly air: Air; readonly wind: Wind } {
  const { windMps = 0, windFromDeg = 0, temperatureC, altitudeM } = weather;
  const from = (windFromDeg * Math.PI) / 180;
  return {
    wind: { along: -windMps * Math.cos(from), right: -windMps * Math.sin(from) },
    air: airOfConditions({
      ...DEFAULT_CONDITIONS,
      ...(temperatureC === undefined ? {} : { temperatureC }),
      ...(altitudeM === undefined ? {} : { altitudeM }),
    }),
  };
}
