/** The flight table against the flights it stands for, and what must hold of any of them. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airOfConditions, DEFAULT_CONDITIONS, type Conditions } from '../../core/conditions/conditions.ts';
import { flyBall } from '../../core/flight/ball-flight.ts';
import {
  carryFactorAt,
  carryToRise,
  curveAt,
  directionIndex,
  driftShareAt,
  flightOf,
  gustAt,
  heightAt,
  landingAt,
  playsLike,
  turnToRise,
  WIND_STEPS,
  windAngle,
} from '../../core/flight/flight-table.ts';
import { ballWindow } from '../../core/flight/flight-window.ts';
import { matchLaunch } from '../../core/flight/match-launch.ts';
import { TABLE_STEP_S, TableFlight } from '../../core/flight/table-flight.ts';
import { typicalLaunch } from '../../core/flight/typical-launch.ts';
import { presetSpread, STANDARD_BAG } from '../../core/player/presets.ts';

const AIR = airOfConditions({ ...DEFAULT_CONDITIONS, humidity: 0 });
const windy = (speedMps: number, gustSdMps = 0): Conditions => ({
  ...DEFAULT_CONDITIONS,
  wind: { speedMps, fromDeg: 0, gustSdMps },
});
const CLUBS = STANDARD_BAG.filter((club) => club.kind !== 'putter');
const FULL = CLUBS.map((club) => ({
  club,
  carryM: presetSpread({ handicap: 10, group: 'men' }, club, 'full').carryMean,
}));
const driver = FULL[0]!;
const iron = FULL[6]!;
const wedge = FULL.at(-2)!;

describe('the matched launch', () => {
  it('carries what it is asked to, for any loft and carry', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 64, noNaN: true }),
        fc.double({ min: 3, max: 260, noNaN: true }),
        (loftDeg, carryM) => {
          const shape = typicalLaunch({ loftDeg }, 'full', carryM);
          const { launch, missM } = matchLaunch(carryM, shape, AIR);
          const flight = new TableFlight();
          flight.fly(launch, AIR, { along: 0, right: 0 });
          // Very lofted clubs cannot carry 260 m at all; then it says by how much.
          expect(flight.carry + missM).toBeCloseTo(carryM, 6);
          if (launch.speedMps < 100) expect(Math.abs(missM)).toBeLessThan(0.01);
        },
      ),
      { numRuns: 60, seed: 8 },
    );
  });

  it('takes a measured angle, a measured spin at its speed, or the height of the top', () => {
    const shape = typicalLaunch(iron.club, 'full', iron.carryM);
    const angled = matchLaunch(iron.carryM, shape, AIR, { angle: 0.4 });
    expect(angled.launch.angle).toBe(0.4);
    const spun = matchLaunch(iron.carryM, shape, AIR, { spin: 500, speedMps: 45 });
    expect(spun.launch.spin / spun.launch.speedMps).toBeCloseTo(500 / 45, 9);
    for (const apexM of [12, 20, 28]) {
      const topped = matchLaunch(iron.carryM, shape, AIR, { apexM });
      expect(Math.abs(topped.apex - apexM)).toBeLessThan(0.05);
      expect(Math.abs(topped.missM)).toBeLessThan(0.01);
    }
  });
});

describe('the integration behind the table', () => {
  it('moves by less than a centimetre when its step is halved, in wind and for high spin', () => {
    const whole = new TableFlight();
    const half = new TableFlight(TABLE_STEP_S / 2);
    for (const { club, carryM } of FULL) {
      const { launch } = matchLaunch(carryM, typicalLaunch(club, 'full', carryM), AIR);
      for (const along of [-9, -4, 0, 6]) {
        whole.fly(launch, AIR, { along, right: 3 });
        half.fly(launch, AIR, { along, right: 3 });
        expect(Math.abs(whole.carry - half.carry)).toBeLessThan(0.01);
        expect(Math.abs(whole.drift - half.drift)).toBeLessThan(0.01);
        expect(Math.abs(whole.apex - half.apex)).toBeLessThan(0.01);
        expect(Math.abs(whole.descent - half.descent)).toBeLessThan(1e-3);
      }
    }
  });

  it('is the general integrator where the coefficients are in their measured range', () => {
    const fast = new TableFlight();
    const launch = { speedMps: 72, angle: 0.19, direction: 0.02, spin: 240, tilt: 0.05 };
    for (const wind of [
      { along: 0, right: 0 },
      { along: -3, right: 4 },
    ]) {
      fast.fly(launch, AIR, wind);
      const slow = flyBall(launch, AIR, wind);
      // At its slowest the ball leaves the range for a moment.
      expect(Math.abs(fast.carry - slow.carry)).toBeLessThan(0.5);
      expect(Math.abs(fast.drift - slow.drift)).toBeLessThan(0.2);
      expect(Math.abs(fast.apex - slow.apex)).toBeLessThan(0.2);
    }
  });

  it('without air is the parabola of the closed form', () => {
    const flight = new TableFlight();
    const launch = { speedMps: 40, angle: 0.6, direction: 0, spin: 300, tilt: 0 };
    flight.fly(launch, { densityKgM3: 0, viscosityM2S: 1 }, { along: 5, right: 5 });
    expect(flight.carry).toBeCloseTo((40 ** 2 * Math.sin(1.2)) / 9.80665, 6);
    expect(flight.apex).toBeCloseTo((40 * Math.sin(0.6)) ** 2 / (2 * 9.80665), 6);
    expect(flight.landingSpeedMps).toBeCloseTo(40, 6);
    expect(flight.descent).toBeCloseTo(0.6, 6);
  });
});

describe('the flight table', () => {
  it('on an ordinary day without wind gives the player’s own carry back, straight', () => {
    for (const { club, carryM } of FULL) {
      const table = flightOf(club, 'full', carryM);
      expect(carryFactorAt(table, 1)).toBeCloseTo(1, 4);
      expect(driftShareAt(table, 1)).toBeCloseTo(0, 9);
    }
  });

  it('reads out the flights it was made of: carry, drift, height, landing', () => {
    const table = flightOf(driver.club, 'full', driver.carryM, windy(6));
    const flight = new TableFlight();
    for (const step of [0, 2, 4, 7, 8]) {
      const from = (Math.PI * step) / 8;
      flight.fly(table.launch, airOfConditions(DEFAULT_CONDITIONS), {
        along: -6 * Math.cos(from),
        right: -6 * Math.sin(from),
      });
      // The launch is matched to a hundredth of a per cent.
      expect(carryFactorAt(table, from) * driver.carryM).toBeCloseTo(flight.carry, 1);
      expect(driftShareAt(table, from) * driver.carryM).toBeCloseTo(flight.drift, 1);
      expect(landingAt(table, -from).descent).toBeCloseTo(flight.descent, 9);
      for (let k = 10; k < flight.count - 2; k += 11)
        expect(
          Math.abs(heightAt(table, flight.carry, flight.along[k]!, from) - flight.height[k]!),
        ).toBeLessThan(0.06);
    }
    // Between the directions kept: within a third of a metre of the flight itself.
    const from = 1.4;
    flight.fly(table.launch, airOfConditions(DEFAULT_CONDITIONS), {
      along: -6 * Math.cos(from),
      right: -6 * Math.sin(from),
    });
    expect(Math.abs(carryFactorAt(table, from) * driver.carryM - flight.carry)).toBeLessThan(0.35);
  });

  it('carries less the more wind is against, and more with it behind, for every full swing', () => {
    for (const { club, carryM } of FULL) {
      let last = Infinity;
      for (const speed of [0, 2, 4, 6, 8, 10]) {
        const table = flightOf(club, 'full', carryM, windy(speed));
        const against = carryFactorAt(table, 0);
        expect(against).toBeLessThan(last);
        last = against;
        if (speed > 0) expect(carryFactorAt(table, Math.PI)).toBeGreaterThan(against);
      }
    }
  });

  it('drifts away from the wind, more in more of it, evenly to both sides', () => {
    const [light, strong] = [3, 8].map((speed) => flightOf(iron.club, 'full', iron.carryM, windy(speed)));
    const side = Math.PI / 2;
    expect(driftShareAt(light!, side)).toBeLessThan(0);
    expect(driftShareAt(strong!, side)).toBeLessThan(driftShareAt(light!, side));
    expect(driftShareAt(strong!, -side)).toBeCloseTo(-driftShareAt(strong!, side), 12);
    expect(windAngle({ ...windy(5), wind: { speedMps: 5, fromDeg: 90, gustSdMps: 0 } }, 0)).toBeCloseTo(
      side,
      12,
    );
  });

  it('gusts shorten a shot into the wind and push a crosswind shot farther', () => {
    const table = flightOf(iron.club, 'full', iron.carryM, windy(5, 2));
    expect(gustAt(table, 0, 1).carry).toBeLessThan(0);
    expect(gustAt(table, Math.PI / 2, 1).drift).toBeLessThan(0);
    expect(gustAt(table, -Math.PI / 2, -1).drift).toBeLessThan(0);
  });

  it('gusts on a day without mean wind act along and across', () => {
    const day = { ...DEFAULT_CONDITIONS, wind: { speedMps: 0, fromDeg: 0, gustSdMps: 3 } };
    const table = flightOf(iron.club, 'full', iron.carryM, day);
    expect(carryFactorAt(table, 0)).toBeCloseTo(1, 9);
    expect(gustAt(table, 0, 1).carry).toBeLessThan(-0.01);
    expect(Math.abs(gustAt(table, Math.PI / 2, 1).drift)).toBeGreaterThan(0.01);
    expect(Math.abs(gustAt(table, Math.PI / 2, 1).carry)).toBeLessThan(0.005);
  });

  it('goes farther in thin, warm air than in thick, cold air', () => {
    const factor = (change: Partial<Conditions>): number =>
      carryFactorAt(flightOf(driver.club, 'full', driver.carryM, { ...DEFAULT_CONDITIONS, ...change }), 0);
    expect(factor({ altitudeM: 1600 })).toBeGreaterThan(factor({}));
    expect(factor({ temperatureC: 30 })).toBeGreaterThan(factor({ temperatureC: 5 }));
    expect(factor({ pressureHpa: 980 })).toBeGreaterThan(factor({ pressureHpa: 1030 }));
  });

  it('a target above plays longer, one below shorter, and the table agrees with a flight to that height', () => {
    for (const { club, carryM } of [driver, iron, wedge]) {
      const table = flightOf(club, 'full', carryM);
      let last = -Infinity;
      for (const rise of [-20, -10, -3, 0, 3, 8]) {
        const still = playsLike(table, 0.9 * carryM, rise);
        expect(still).toBeGreaterThan(last);
        last = still;
      }
      expect(playsLike(table, 0.9 * carryM, 0)).toBeCloseTo(0.9 * carryM, 0);
      const down = new TableFlight();
      down.fly(table.launch, airOfConditions(DEFAULT_CONDITIONS), { along: 0, right: 0 }, -15);
      expect(
        Math.abs(carryToRise(table.rises[0]!, carryM * carryFactorAt(table, 0), -15) - down.carry),
      ).toBeLessThan(0.1);
      // Above its top no target is reached.
      expect(carryToRise(table.rises[0]!, carryM, 1000)).toBeLessThan(carryM);
    }
  });

  it('in wind too, comes down on lower ground where the integrated flight does', () => {
    const day = { ...DEFAULT_CONDITIONS, wind: { speedMps: 12, fromDeg: 0, gustSdMps: 0 } };
    const table = flightOf(iron.club, 'full', iron.carryM, day);
    const down = new TableFlight();
    for (let d = 0; d < table.directions; d++) {
      const from = (Math.PI * d) / WIND_STEPS;
      const wind = { along: -12 * Math.cos(from), right: -12 * Math.sin(from) };
      down.fly(table.launch, airOfConditions(day), wind, -10);
      const level = iron.carryM * Math.hypot(table.carryFactor[d]!, table.driftShare[d]!);
      // The heights kept are a hundredth of the flight apart, read between by straight lines.
      const line = Math.hypot(down.carry, down.drift);
      expect(Math.abs(carryToRise(table.rises[d]!, level, -10) - line)).toBeLessThan(0.1);
      // What pushes away from its side counts as positive.
      const turn =
        Math.atan2(-down.drift, down.carry) - Math.atan2(table.driftShare[d]!, table.carryFactor[d]!);
      expect(Math.abs(turnToRise(table.rises[d]!, level, -10) - turn) * line).toBeLessThan(0.1);
    }
    // Between the directions kept the nearest stands in: checked in the middle between two, in metres of the landing.
    const aim = (Math.PI * 4.5) / WIND_STEPS;
    down.fly(
      table.launch,
      airOfConditions(day),
      { along: -12 * Math.cos(aim), right: -12 * Math.sin(aim) },
      -10,
    );
    const level = iron.carryM * Math.hypot(carryFactorAt(table, aim), driftShareAt(table, aim));
    const rises = table.rises[directionIndex(table, aim)]!;
    const line = carryToRise(rises, level, -10);
    // From the right the wind turns it to the left.
    const bearing =
      Math.atan2(driftShareAt(table, aim), carryFactorAt(table, aim)) - turnToRise(rises, level, -10);
    const gap = Math.hypot(line * Math.cos(bearing) - down.carry, line * Math.sin(bearing) - down.drift);
    expect(gap).toBeLessThan(1);
    // A ball that comes down steeply into the wind gains less from a drop than one with the wind.
    const gained = (d: number): number => {
      const level = iron.carryM * table.carryFactor[d]!;
      return carryToRise(table.rises[d]!, level, -10) - level;
    };
    expect(gained(0)).toBeLessThan(0.5 * gained(WIND_STEPS));
  });

  it('a curving ball leaves the line late: less than its share at half way', () => {
    const table = flightOf(driver.club, 'full', driver.carryM);
    expect(curveAt(table, 200, 200, 20)).toBeCloseTo(20, 9);
    expect(curveAt(table, 200, 100, 20)).toBeGreaterThan(2);
    expect(curveAt(table, 200, 100, 20)).toBeLessThan(8);
    expect(curveAt(table, 200, 0, 20)).toBe(0);
  });

  it('its cubic stays within a metre of the integrated heights', () => {
    for (const { club, carryM } of FULL) {
      const window = ballWindow(flightOf(club, 'full', carryM));
      expect(window.worstShare * carryM).toBeLessThan(1);
      expect(window.tanDescent).toBeGreaterThan(0.4);
    }
  });

  it('a punch flies lower and comes down flatter than the full swing', () => {
    const full = flightOf(iron.club, 'full', iron.carryM);
    const punch = flightOf(iron.club, 'punch', 0.6 * iron.carryM);
    expect(punch.rises[0]!.topShare * 0.6 * iron.carryM).toBeLessThan(
      0.35 * full.rises[0]!.topShare * iron.carryM,
    );
    expect(landingAt(punch, 0).descent).toBeLessThan(0.6 * landingAt(full, 0).descent);
  });
});
