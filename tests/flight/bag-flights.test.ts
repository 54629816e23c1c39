/** The flights of a bag: one per spread, part swings in several sizes, windows and runs by wind direction. */

import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { bagFlights, flightFor } from '../../core/flight/bag-flights.ts';
import { carryFactorAt, directionIndex } from '../../core/flight/flight-table.ts';
import { Lie } from '../../core/ground/lies.ts';
import type { ClubLaunch } from '../../core/player/model.ts';
import { presetPlayer } from '../../core/player/presets.ts';

const { spreads } = presetPlayer({ handicap: 14, group: 'men' });
const conditions = { ...DEFAULT_CONDITIONS, wind: { speedMps: 6, fromDeg: 0, gustSdMps: 0 } };
const bag = bagFlights(spreads, conditions);

describe('the flights of a bag', () => {
  it('are one per spread, each with its carry', () => {
    expect(bag.flights).toHaveLength(spreads.length);
    spreads.forEach((spread, i) => {
      expect(flightFor(bag, i, spread.carryMean).table.carryM).toBeCloseTo(spread.carryMean, 9);
    });
  });

  it('of a part swing come in the size nearest to the carry asked for', () => {
    const i = spreads.findIndex((spread) => spread.swing === 'part');
    const longest = spreads[i]!.carryMean;
    expect(flightFor(bag, i, 0.3 * longest).table.carryM).toBeCloseTo(0.26 * longest, 9);
    expect(flightFor(bag, i, 0.02 * longest).table.carryM).toBeCloseTo(0.08 * longest, 9);
  });

  it('leave as they were measured, and carry as far as the player does', () => {
    const i = spreads.findIndex(({ club, swing }) => club.name === '7-iron' && swing === 'full');
    const punch = spreads.findIndex(({ club, swing }) => club.name === '7-iron' && swing === 'punch');
    const with7 = (launch: ClubLaunch) =>
      bagFlights(
        spreads.map((spread) =>
          spread.club.name === '7-iron' ? { ...spread, club: { ...spread.club, launch } } : spread,
        ),
        DEFAULT_CONDITIONS,
      ).flights;
    const plain = with7({});
    const given = with7({ angleDeg: 22, spinRpm: 5500 });
    const { launch } = given[i]![0]!.table;
    expect((launch.angle * 180) / Math.PI).toBeCloseTo(22, 6);
    expect((launch.spin * 30) / Math.PI).toBeCloseTo(5500, 3);
    expect(given[i]![0]!.table.carryM).toBe(plain[i]![0]!.table.carryM);
    expect(carryFactorAt(given[i]![0]!.table, 0)).toBeCloseTo(1, 3);
    // A punch leaves lower whatever the full swing does.
    expect(given[punch]![0]!.table.launch).toEqual(plain[punch]![0]!.table.launch);
    // A measured top decides the angle where none was measured.
    const high = with7({ apexM: 30 })[i]![0]!.table;
    expect(high.rises[0]!.topShare * high.carryM).toBeCloseTo(30, 1);
  });

  it('come down steeper and run less into the wind than before it', () => {
    const driver = flightFor(bag, 0, spreads[0]!.carryMean);
    const [ahead, behind] = [directionIndex(driver.table, 0.05), directionIndex(driver.table, -Math.PI)];
    expect(driver.windows[ahead]!.tanDescent).toBeGreaterThan(driver.windows[behind]!.tanDescent);
    expect(driver.runs[ahead]!.totalM[Lie.fairway]!).toBeLessThan(driver.runs[behind]!.totalM[Lie.fairway]!);
    expect(carryFactorAt(driver.table, 0)).toBeLessThan(carryFactorAt(driver.table, Math.PI));
  });

  it('run less the more loft they have', () => {
    const still = bagFlights(spreads, DEFAULT_CONDITIONS);
    const run = (club: string): number => {
      const i = spreads.findIndex((spread) => spread.club.name === club && spread.swing === 'full');
      return flightFor(still, i, spreads[i]!.carryMean).runs[0]!.totalM[Lie.fairway]!;
    };
    expect(run('Driver')).toBeGreaterThan(run('7-iron'));
    expect(run('7-iron')).toBeGreaterThan(run('Sand wedge'));
  });
});
