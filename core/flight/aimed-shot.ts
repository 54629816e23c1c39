/**
 * What the day does to a shot of one law at one aim: the wind's angle decides carry, drift, heights and run. Limits: the
 * drift is taken along a straight line to where the ball lands; a poor strike, which flies low, meets half of the wind.
 */

import type { RunTable } from '../ground-run/run-table.ts';
import type { DayFlight } from './bag-flights.ts';
import {
  carryFactorAt,
  directionIndex,
  driftShareAt,
  gustAt,
  lineFactorAt,
  type RiseTable,
  windAngle,
} from './flight-table.ts';
import type { BallWindow } from './flight-window.ts';
import type { ShotLaw } from './shot-law.ts';

export interface AimedShot {
  /** Length of the line to where the ball lands on the day, as a share of the still carry of an ordinary day. */
  readonly carryFactor: number;
  /** Turn of the line to the landing by the mean wind, radians, positive to the right. */
  readonly turn: number;
  readonly isGusty: boolean;
  /** Change of the two by one standard deviation of the gusts. */
  readonly gustCarry: number;
  readonly gustTurn: number;
  readonly window: BallWindow;
  readonly rise: RiseTable;
  /** Which way its turns go: 1 to the right, -1 to the left; 0 without wind. */
  readonly riseSide: number;
  readonly run: RunTable;
  /** Carry on the day of the flight whose run this is, metres. */
  readonly runCarryM: number;
  readonly launchMps: number;
  readonly landingMps: number;
}

const stillShots = new WeakMap<DayFlight, AimedShot>();

/** `bearing` in radians clockwise from north. */
export function aimedShot(law: ShotLaw, bearing: number): AimedShot {
  const { flight, conditions } = law;
  if (flight.table.directions > 1) return meetWind(flight, windAngle(conditions, bearing));
  let still = stillShots.get(flight);
  if (still === undefined) {
    still = meetWind(flight, 0);
    stillShots.set(flight, still);
  }
  return still;
}

function meetWind(flight: DayFlight, angle: number): AimedShot {
  const { table } = flight;
  const along = carryFactorAt(table, angle);
  const aside = driftShareAt(table, angle);
  // The ball is flown along the straight line to where it lands.
  const carryFactor = lineFactorAt(table, angle);
  const gust = gustAt(table, angle, 1);
  const direction = directionIndex(table, angle);
  return {
    carryFactor,
    turn: Math.atan2(aside, along),
    isGusty: gust.carry !== 0 || gust.drift !== 0,
    // First order: what a gust adds along that line, and across it.
    gustCarry: (along * gust.carry + aside * gust.drift) / carryFactor,
    gustTurn: (along * gust.drift - aside * gust.carry) / (carryFactor * carryFactor),
    window: flight.windows[direction]!,
    rise: table.rises[direction]!,
    riseSide: table.directions === 1 ? 0 : angle > 0 ? -1 : 1,
    run: flight.runs[direction]!,
    runCarryM: table.carryM * carryFactor,
    launchMps: table.launch.speedMps,
    landingMps: table.landingSpeedMps[direction]!,
  };
}
