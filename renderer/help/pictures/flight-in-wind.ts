/** A mid-iron into the wind, in still air and with the wind, as the plan flies it. */

import { airOf, STANDARD_WEATHER } from '../../../core/flight/air.ts';
import type { Launch } from '../../../core/flight/ball-flight.ts';
import { TableFlight } from '../../../core/flight/table-flight.ts';
import type { PlotData } from './plot-data.ts';

/** 7097 rpm at 120 mph (Dewhurst 2015) and 16.3 degrees (from memory). */
const SEVEN_IRON: Launch = {
  speedMps: 120 * 0.44704,
  angle: (16.3 * Math.PI) / 180,
  direction: 0,
  spin: (7097 * 2 * Math.PI) / 60,
  tilt: 0,
};
const WINDS = [
  ['against10', -10],
  ['against5', -5],
  ['still', 0],
  ['behind5', 5],
  ['behind10', 10],
] as const;
const EVERY_STEPS = 2;

export function flightInWind(): PlotData<(typeof WINDS)[number][0]> {
  const air = airOf(STANDARD_WEATHER);
  return {
    x: { from: 0, to: 200, ticks: [0, 25, 50, 75, 100, 125, 150, 175, 200] },
    y: { from: 0, to: 45, ticks: [0, 10, 20, 30, 40] },
    lines: WINDS.map(([label, along]) => {
      const flight = new TableFlight();
      flight.fly(SEVEN_IRON, air, { along, right: 0 });
      const steps = Array.from({ length: flight.count }, (_, i) => i);
      return {
        label,
        points: steps
          .filter((i) => i % EVERY_STEPS === 0 || i === flight.count - 1)
          .map((i) => [flight.along[i]!, Math.max(0, flight.height[i]!)] as const),
      };
    }),
  };
}
