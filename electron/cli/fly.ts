/** `npm run --silent fly`: one ball's flight from its launch, in given air and wind. */

import { airOf, standardPressureHpa } from '../../core/flight/air.ts';
import { flyBall } from '../../core/flight/ball-flight.ts';
import { optionalText, readArguments, stopForUsage } from './command.ts';

const USAGE = `usage: npm run --silent fly -- --speed-mps V --launch-deg A --spin-rpm S
       [--direction-deg D] [--tilt-deg T] [--wind-mps W --wind-from-deg D] [--temperature-c T] [--pressure-hpa P]
       [--humidity-percent H] [--altitude-m H] [--target-above-m Z] [--json]
The wind's direction is where it comes from, clockwise from the aim: 0 is against the ball, 180 from behind, 90 from the right.`;

const DEGREE = Math.PI / 180;
const RPM = (2 * Math.PI) / 60;

const NUMBERS = {
  'speed-mps': { lowest: 1, highest: 110, fallback: undefined },
  'launch-deg': { lowest: 0.1, highest: 80, fallback: undefined },
  'spin-rpm': { lowest: 0, highest: 15000, fallback: undefined },
  'direction-deg': { lowest: -90, highest: 90, fallback: 0 },
  'tilt-deg': { lowest: -80, highest: 80, fallback: 0 },
  'wind-mps': { lowest: 0, highest: 40, fallback: 0 },
  'wind-from-deg': { lowest: -360, highest: 360, fallback: 0 },
  'temperature-c': { lowest: -30, highest: 55, fallback: 15 },
  'pressure-hpa': { lowest: 500, highest: 1100, fallback: NaN },
  'humidity-percent': { lowest: 0, highest: 100, fallback: 0 },
  'altitude-m': { lowest: -430, highest: 5000, fallback: 0 },
  'target-above-m': { lowest: -300, highest: 300, fallback: 0 },
} as const;

type Name = keyof typeof NUMBERS;

export function fly(args: readonly string[]): void {
  const text = { type: 'string' } as const;
  const options = Object.fromEntries(Object.keys(NUMBERS).map((name) => [name, text]));
  const values = readArguments(args, { ...options, json: { type: 'boolean' } }, USAGE);
  const number = (name: Name): number => {
    const { lowest, highest, fallback } = NUMBERS[name];
    const given = optionalText(values, name);
    if (given === undefined) {
      if (fallback === undefined) throw stopForUsage(`--${name} is missing.`, USAGE);
      return fallback;
    }
    const value = given.trim() === '' ? NaN : Number(given);
    if (!(value >= lowest && value <= highest)) {
      throw stopForUsage(`--${name} takes a number from ${lowest} to ${highest}, not “${given}”.`, USAGE);
    }
    return value;
  };
  const altitudeM = number('altitude-m');
  const givenPressure = number('pressure-hpa');
  const pressureHpa = Number.isNaN(givenPressure) ? standardPressureHpa(altitudeM) : givenPressure;
  const air = airOf({
    temperatureC: number('temperature-c'),
    pressureHpa,
    altitudeM,
    humidity: number('humidity-percent') / 100,
  });
  const windMps = number('wind-mps');
  const windFrom = number('wind-from-deg') * DEGREE;
  const flight = flyBall(
    {
      speedMps: number('speed-mps'),
      angle: number('launch-deg') * DEGREE,
      direction: number('direction-deg') * DEGREE,
      spin: number('spin-rpm') * RPM,
      tilt: number('tilt-deg') * DEGREE,
    },
    air,
    { along: -windMps * Math.cos(windFrom), right: -windMps * Math.sin(windFrom) },
    number('target-above-m'),
  );
  const result = {
    carryM: flight.carry,
    driftM: flight.drift,
    apexM: flight.apex,
    descentDeg: flight.descent / DEGREE,
    timeS: flight.timeS,
    landingSpeedMps: flight.landingSpeedMps,
    landingSpinRpm: flight.landingSpin / RPM,
    airDensityKgM3: air.densityKgM3,
    landed: flight.landed,
  };
  if (values.json === true) {
    process.stdout.write(`${JSON.stringify(result, null, 1)}\n`);
    return;
  }
  const side = flight.drift < 0 ? 'left' : 'right';
  const lines = [
    `carry ${flight.carry.toFixed(1)} m (${(flight.carry / 0.9144).toFixed(1)} yd), ${Math.abs(flight.drift).toFixed(1)} m ${side}`,
    `apex ${flight.apex.toFixed(1)} m, comes down at ${result.descentDeg.toFixed(1)}° with ${flight.landingSpeedMps.toFixed(1)} m/s after ${flight.timeS.toFixed(1)} s`,
    `air ${air.densityKgM3.toFixed(4)} kg/m³`,
  ];
  if (!flight.landed) lines.push('It never comes down at that height: the target is above its flight.');
  process.stdout.write(`${lines.join('\n')}\n`);
}
