/** What wind and air take off a shot, against published figures and another way to fly the ball. */

import { describe, expect, it } from 'vitest';
import { airOf, STANDARD_WEATHER } from '../../core/flight/air.ts';
import { flyBall } from '../../core/flight/ball-flight.ts';
import { StillAir, type PlacedShot, type ShotWeather } from '../../core/player/still-air.ts';
import { inEnglish } from '../../core/words/told.ts';

const YARD_M = 0.9144;
const MPH = 0.44704;
const DEGREE = Math.PI / 180;
const driver = { loftDeg: 10.5 };

function still(measured: PlacedShot, weather: ShotWeather): PlacedShot {
  const found = new StillAir().still(driver, 'full', 213, measured, weather);
  if (!found.ok) throw new Error(inEnglish(found.error.told));
  return found.value;
}

describe('a drive in 10 mph of wind', () => {
  // 70 m/s, 11 degrees, 2700 rpm, coefficients of Smits & Smith 1994: 233.2 yd in still air, 20.3 yd less against and
  // 16.8 yd more before 10 mph of wind (vectors worked out apart from this program). The vectors have the same wind at all
  // heights; ours is that at 10 m and grows upwards, so up to a quarter more is taken off.
  it.each([
    ['against', 0, 233.2 - 20.3],
    ['behind', 180, 233.2 + 16.8],
  ])('%s it counts as what it carries in still air', (_, windFromDeg, measuredYd) => {
    const found = still({ carryM: measuredYd * YARD_M, direction: 0 }, { windMps: 10 * MPH, windFromDeg });
    const takenOff = found.carryM / YARD_M - measuredYd;
    const published = 233.2 - measuredYd;
    expect(takenOff / published).toBeGreaterThan(0.95);
    expect(takenOff / published).toBeLessThan(1.25);
  });
});

describe('a drive flown by the other integrator (fixed steps of 10 ms, coefficients not held at the ends)', () => {
  const launch = { speedMps: 64, angle: 12 * DEGREE, direction: 0, spin: 283, tilt: 0 };
  const ordinary = airOf({ ...STANDARD_WEATHER, humidity: 0.5 });
  const calm = flyBall(launch, ordinary);

  it.each([
    [{ windMps: 6, windFromDeg: 0 }, ordinary],
    [{ windMps: 6, windFromDeg: 90 }, ordinary],
    [{ windMps: 5, windFromDeg: 215 }, ordinary],
    // Dry air of 1 atm: 1.2716 kg/m³ at 40 °F, 1.1559 at 90 °F, against 1.2250 at 59 °F (standard atmosphere).
    [{ temperatureC: 4.444 }, airOf({ temperatureC: 4.444, altitudeM: 0, humidity: 0.5 })],
    [{ temperatureC: 32.222 }, airOf({ temperatureC: 32.222, altitudeM: 0, humidity: 0.5 })],
    // A mile up the air is 0.854 as dense, at the standard atmosphere's temperature there.
    [
      { altitudeM: 1609.344, temperatureC: 4.539 },
      airOf({ temperatureC: 4.539, altitudeM: 1609.344, humidity: 0.5 }),
    ],
  ])('%j comes back to its still carry', (weather, air) => {
    const { windMps = 0, windFromDeg = 0 } = weather as ShotWeather;
    const from = windFromDeg * DEGREE;
    const flown = flyBall(launch, air, {
      along: -windMps * Math.cos(from),
      right: -windMps * Math.sin(from),
    });
    const measured = {
      carryM: Math.hypot(flown.carry, flown.drift),
      direction: Math.atan2(flown.drift, flown.carry),
    };
    const found = still(measured, weather);
    const effect = Math.abs(measured.carryM - calm.carry);
    // The club's usual launch is not quite this one, and the other integrator lets the lift grow beyond what was measured,
    // most so against the wind: a fifth of what is taken off, and half a per cent of the carry.
    expect(Math.abs(found.carryM - calm.carry)).toBeLessThan(0.2 * effect + 0.005 * calm.carry);
    expect(Math.abs(found.direction)).toBeLessThan(0.1 * Math.abs(measured.direction) + 0.002);
  });
});

describe('air', () => {
  it('of 40 and 90 °F takes and gives a drive a few yards (common practice, no source: one to three and a half for 10 °F)', () => {
    const at = (temperatureC: number): number =>
      still({ carryM: 213, direction: 0 }, { temperatureC }).carryM / YARD_M - 213 / YARD_M;
    expect(at(4.444)).toBeGreaterThan(1.9);
    expect(at(4.444)).toBeLessThan(7);
    expect(at(32.222)).toBeLessThan(-3.1);
    expect(at(32.222)).toBeGreaterThan(-10.9);
  });
});
