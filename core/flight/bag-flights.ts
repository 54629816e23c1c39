/**
 * The flights of a whole bag on a day: one table per club and swing, several for part swings, whose carry is free. Made
 * once when player or conditions change; a planner then reads them by spread and carry.
 */

import type { Conditions } from '../conditions/conditions.ts';
import { type RunTable, runTable } from '../ground-run/run-table.ts';
import { Lie } from '../ground/lies.ts';
import type { ShotSpread } from '../player/model.ts';
import { type FlightTable, flightOf, landingAt, WIND_STEPS } from './flight-table.ts';
import { curveShareOf } from './curve-share.ts';
import type { MeasuredLaunch } from './typical-launch.ts';
import { type BallWindow, ballWindow } from './flight-window.ts';

export interface DayFlight {
  readonly table: FlightTable;
  /** By direction kept in the table: heights as a cubic, and the runs after landing by lie. */
  readonly windows: readonly BallWindow[];
  readonly runs: readonly RunTable[];
}

/** One per spread, in the order of the spreads; each with its carries from the shortest to the longest. */
export interface BagFlights {
  readonly conditions: Conditions;
  readonly flights: readonly (readonly DayFlight[])[];
}

/** Carries of a part swing as shares of its longest; between two of them a flight differs little but in size. */
const PART_SHARES = [0.08, 0.12, 0.18, 0.26, 0.38, 0.55, 0.76, 1];

export function bagFlights(spreads: readonly ShotSpread[], conditions: Conditions): BagFlights {
  return {
    conditions,
    flights: spreads.map((spread) =>
      (spread.swing === 'part' ? PART_SHARES : [1]).map((share) => dayFlight(spread, share, conditions)),
    ),
  };
}

function dayFlight(spread: ShotSpread, share: number, conditions: Conditions): DayFlight {
  const table = flightOf(spread.club, spread.swing, share * spread.carryMean, conditions, measuredOf(spread));
  const angles = Array.from({ length: table.directions }, (_, d) => (Math.PI * d) / WIND_STEPS);
  return {
    table,
    windows: angles.map((angle) => ballWindow(table, angle)),
    runs: angles.map((angle) => {
      const { speedMps, descent, backspin } = landingAt(table, angle);
      return runTable({ speedMps, descent, backspin }, conditions);
    }),
  };
}

/** What was measured of full swings, bent ones among them; other swings leave lower and with less spin, and go by loft. */
function measuredOf({ club, swing }: ShotSpread): MeasuredLaunch {
  const { launch } = club;
  if (launch === undefined || (swing !== 'full' && curveShareOf(swing) === 0)) return {};
  const { angleDeg, spinRpm, ballSpeedMps, apexM } = launch;
  return {
    ...(angleDeg === undefined ? {} : { angle: (angleDeg * Math.PI) / 180 }),
    ...(spinRpm === undefined ? {} : { spin: (spinRpm * Math.PI) / 30 }),
    ...(ballSpeedMps === undefined ? {} : { speedMps: ballSpeedMps }),
    ...(apexM === undefined ? {} : { apexM }),
  };
}

/** The flight of a spread whose own carry is nearest to `carryM` by ratio. */
export function flightFor(bag: BagFlights, spreadIndex: number, carryM: number): DayFlight {
  const flights = bag.flights[spreadIndex]!;
  let best = flights[0]!;
  for (const flight of flights) {
    const off = Math.abs(Math.log(flight.table.carryM / carryM));
    if (off < Math.abs(Math.log(best.table.carryM / carryM))) best = flight;
  }
  return best;
}

/** Mean run on a level green in still air as a share of carry, even between the carries of a part swing. */
export function runShareFor(bag: BagFlights, spreadIndex: number, carryM: number): number {
  const flights = bag.flights[spreadIndex]!;
  const shareOf = ({ table, runs }: DayFlight): number => runs[0]!.totalM[Lie.green]! / table.carryM;
  let k = 0;
  while (k < flights.length - 2 && flights[k + 1]!.table.carryM < carryM) k += 1;
  const below = flights[k]!;
  const above = flights[k + 1] ?? below;
  if (below === above || carryM <= below.table.carryM) return shareOf(below);
  const t = Math.min(
    1,
    Math.log(carryM / below.table.carryM) / Math.log(above.table.carryM / below.table.carryM),
  );
  return (1 - t) * shareOf(below) + t * shareOf(above);
}
