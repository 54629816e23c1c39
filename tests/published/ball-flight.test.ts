/** Flight against closed forms, published coefficients and standard-atmosphere tables. */

import { describe, expect, it } from 'vitest';
import { airOf, standardPressureHpa, STANDARD_WEATHER } from '../../core/flight/air.ts';
import {
  BALL_MASS_KG,
  BALL_RADIUS_M,
  CALM,
  dragCoefficient,
  flyBall,
  STEP_S,
  type Launch,
} from '../../core/flight/ball-flight.ts';

const RPM = (2 * Math.PI) / 60;
const DEGREE = Math.PI / 180;
const YARD_M = 0.9144;
const FOOT_M = 0.3048;
const MPH = 0.44704;
/** The air that the integrator vectors were made for. */
const VECTOR_AIR = { densityKgM3: 1.225, viscosityM2S: 1.46e-5 };
const launch = (speedMps: number, angleDeg: number, rpm: number): Launch => ({
  speedMps,
  angle: angleDeg * DEGREE,
  direction: 0,
  spin: rpm * RPM,
  tilt: 0,
});

describe('flight', () => {
  it('without air is the parabola of the closed form', () => {
    const flight = flyBall(launch(50, 30, 3000), { densityKgM3: 0, viscosityM2S: 1 });
    expect(flight.carry).toBeCloseTo((50 ** 2 * Math.sin(60 * DEGREE)) / 9.80665, 5);
    expect(flight.apex).toBeCloseTo((50 * Math.sin(30 * DEGREE)) ** 2 / (2 * 9.80665), 3);
    expect(flight.landingSpeedMps).toBeCloseTo(50, 6);
  });

  it('falling far it reaches the terminal speed of its drag', () => {
    // Straight down without spin: m g = ρ A C_D v² / 2.
    const flight = flyBall(
      { speedMps: 0.001, angle: 0, direction: 0, spin: 0, tilt: 0 },
      VECTOR_AIR,
      CALM,
      -800,
    );
    const v = flight.landingSpeedMps;
    const drag = dragCoefficient(0, (2 * BALL_RADIUS_M * v) / VECTOR_AIR.viscosityM2S);
    const weight = (VECTOR_AIR.densityKgM3 * Math.PI * BALL_RADIUS_M ** 2 * drag * v ** 2) / 2 / BALL_MASS_KG;
    expect(weight / 9.80665).toBeCloseTo(1, 3);
  });

  it('halving the step changes carry by less than a millimetre', () => {
    for (const shot of [launch(70, 11, 2700), launch(40, 30, 9000), launch(20, 40, 6000)]) {
      const whole = flyBall(shot, VECTOR_AIR, { along: -4, right: 2 });
      const half = flyBall(shot, VECTOR_AIR, { along: -4, right: 2 }, 0, STEP_S / 2);
      expect(Math.abs(whole.carry - half.carry)).toBeLessThan(0.001);
      expect(Math.abs(whole.drift - half.drift)).toBeLessThan(0.001);
    }
  });

  /*
   * Vectors derived with another program from the coefficients of Smits & Smith 1994 (Science and Golf II, 340-347); given
   * to 0.1 yd, 0.1 ft, 0.1 degrees and 0.1 s.
   */
  it.each([
    { shot: launch(70, 11, 2700), carryYd: 233.2, apexFt: 95.4, descentDeg: 38.8, timeS: 6.6 },
    { shot: launch(60, 13, 3000), carryYd: 202.5, apexFt: 81.8, descentDeg: 37.1, timeS: 6.1 },
  ])(
    'carries $carryYd yd with the published coefficients',
    ({ shot, carryYd, apexFt, descentDeg, timeS }) => {
      const flight = flyBall(shot, VECTOR_AIR);
      expect(Math.abs(flight.carry / YARD_M - carryYd)).toBeLessThan(0.15);
      expect(Math.abs(flight.apex / FOOT_M - apexFt)).toBeLessThan(0.15);
      expect(Math.abs(flight.descent / DEGREE - descentDeg)).toBeLessThan(0.15);
      expect(Math.abs(flight.timeS - timeS)).toBeLessThan(0.06);
    },
  );

  it('loses more against the wind than it gains before it, as the vectors do', () => {
    const calm = flyBall(launch(70, 11, 2700), VECTOR_AIR).carry;
    const against = flyBall(launch(70, 11, 2700), VECTOR_AIR, { along: -10 * MPH, right: 0 }).carry;
    const behind = flyBall(launch(70, 11, 2700), VECTOR_AIR, { along: 10 * MPH, right: 0 }).carry;
    // The vectors have the same wind at all heights: -20.3 and +16.8 yd. Ours is that at 10 m and grows by a tenth at 25 m.
    expect((against - calm) / YARD_M).toBeLessThan(-19);
    expect((against - calm) / YARD_M).toBeGreaterThan(-25);
    expect((behind - calm) / YARD_M).toBeGreaterThan(15.5);
    expect((behind - calm) / YARD_M).toBeLessThan(20);
  });

  it('curves to the side of its tilt and drifts with the wind, evenly to both', () => {
    const drift = (tilt: number, right: number): number =>
      flyBall({ ...launch(60, 13, 3000), tilt }, VECTOR_AIR, { along: 0, right }).drift;
    expect(drift(0.1, 0)).toBeGreaterThan(3);
    expect(drift(-0.1, 0)).toBeCloseTo(-drift(0.1, 0), 9);
    expect(drift(0, 4)).toBeGreaterThan(3);
    expect(drift(0, -4)).toBeCloseTo(-drift(0, 4), 9);
  });
});

describe('air', () => {
  /** Dry air at one atmosphere, kg/m³ by temperature in °F (standard tables, derived with R = 287.05). */
  it.each([
    [40, 1.2716],
    [59, 1.225],
    [90, 1.1559],
  ])('at %f °F weighs %f kg/m³', (fahrenheit, density) => {
    const air = airOf({
      temperatureC: ((fahrenheit - 32) * 5) / 9,
      pressureHpa: 1013.25,
      altitudeM: 0,
      humidity: 0,
    });
    expect(Math.abs(air.densityKgM3 - density)).toBeLessThan(0.0002);
  });

  /** Density ratio of the standard atmosphere by altitude in feet (ISO 2533:1975); its temperature falls by 6.5 K a km. */
  it.each([
    [1000, 0.971],
    [5280, 0.854],
  ])('at %f ft has %f of its density', (feet, ratio) => {
    const altitudeM = feet * FOOT_M;
    const air = airOf({ temperatureC: 15 - 0.0065 * altitudeM, altitudeM, humidity: 0 });
    expect(Math.abs(air.densityKgM3 / airOf(STANDARD_WEATHER).densityKgM3 - ratio)).toBeLessThan(0.0006);
  });

  it('is lighter when moist, and standard pressure falls with height', () => {
    const dry = airOf({ temperatureC: 30, altitudeM: 0, humidity: 0 }).densityKgM3;
    const moist = airOf({ temperatureC: 30, altitudeM: 0, humidity: 1 }).densityKgM3;
    // Saturated at 30 °C: 1.146 against 1.164 kg/m³ (standard tables, from memory).
    expect(dry).toBeCloseTo(1.164, 3);
    expect(Math.abs(moist - 1.146)).toBeLessThan(0.001);
    expect(standardPressureHpa(1000)).toBeCloseTo(898.7, 0);
  });

  it('the standard atmosphere has the kinematic viscosity of its table', () => {
    // ISO 2533:1975: 1.4607e-5 m²/s at sea level.
    expect(airOf(STANDARD_WEATHER).viscosityM2S / 1.4607e-5).toBeCloseTo(1, 3);
  });
});
