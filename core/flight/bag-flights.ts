/**
 * The flights of a whole bag on a day: one table per club and swing, several for part swings, whose carry is free. Made
 * once when player or conditions change; a planner then reads them by spread and carry.
 */

import type { Conditions } from '../conditions/conditions.ts';
import { type RunTable, runTable } from '../ground-run/run-table.ts';
import type { ShotSpread } from '../player/model.ts';
import { type FlightTable, flightOf, landingAt, WIND_STEPS } from './flight-table.ts';
import { type CubicWindow, cubicWindow } from './flight-window.ts';

export interface DayFlight {
  readonly table: FlightTable;
  /** By direction kept in the table: heights as a cubic, and the runs after landing by lie. */
  readonly windows: readonly CubicWindow[];
  readonly runs: readonly RunTable[];
}

/** One per spread, in the order of the spreads; each with its carries from the shortest to the longest. */
export interface BagFlights {
  readonly flights: readonly (readonly DayFlight[])[];
}

/** Carries of a part swing as shares of its longest; between two of them a flight differs little but in size. */
const PART_SHARES = [0.1, 0.2, 0.35, 0.6, 1];

export function bagFlights(spreads: readonly ShotSpread[], conditions: Conditions): BagFlights {
  return {
    flights: spreads.map((spread) =>
      (spread.swing === 'part' ? PART_SHARES : [1]).map((share) => dayFlight(spread, share, conditions)),
    ),
  };
}

function dayFlight(spread: ShotSpread, share: number, conditions: Conditions): DayFlight {
  const table = flightOf(spread.club, spread.swing, share * spread.carryMean, conditions);
  const angles = Array.from({ length: table.directions }, (_, d) => (Math.PI * d) / WIND_STEPS);
  return {
    table,
    windows: angles.map((angle) => cubicWindow(table, angle)),
    runs: angles.map((angle) => {
      const { speedMps, descent, backspin } = landingAt(table, angle);
      return runTable({ speedMps, descent, backspin }, conditions);
    }),
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

/** Index of the direction kept that is nearest to the wind at `angle` (see `windAngle`). */
export function directionIndex(flight: DayFlight, angle: number): number {
  return Math.min(flight.table.directions - 1, Math.round((Math.abs(angle) * WIND_STEPS) / Math.PI));
}
