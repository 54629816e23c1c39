/**
 * Reference players of the USGA Course Rating System: a male scratch player drives 250 yd and reaches 470 yd in two shots, a
 * male bogey player 200 and 370; women 210 and 400, 150 and 280. Totals of solid shots on level ground, roll included.
 */

import { describe, expect, it } from 'vitest';
import { simulateChoice } from '../../core/plan/simulate.ts';
import { prepareFlatHole, presetModel } from './flat-hole.ts';

const YARD_M = 0.9144;
const PLAYERS = [
  { name: 'scratch man', handicap: 0, group: 'men', drive: 250, inTwo: 470 },
  { name: 'bogey man', handicap: 20, group: 'men', drive: 200, inTwo: 370 },
  { name: 'scratch woman', handicap: 0, group: 'women', drive: 210, inTwo: 400 },
  { name: 'bogey woman', handicap: 24, group: 'women', drive: 150, inTwo: 280 },
] as const;

/** The standard gives lengths in tens of yards: each shot's may be off by half of that. */
const TOLERANCE_YD = 5;
const SAMPLES = 8192;

describe.each(PLAYERS)('$name', ({ handicap, group, drive, inTwo }) => {
  const player = presetModel({ handicap, group }, { poor: false });
  const { prepared, spotAt } = prepareFlatHole(
    { lengthM: 520, fairwayHalfWidthM: 300, greenRadiusM: 14 },
    player,
  );
  const totalYd = (spreadIndex: number, fromM: number): number => {
    const choice = { spreadIndex, bearing: 0, carryM: player.spreads[spreadIndex]!.carryMean };
    return (
      simulateChoice(prepared, spotAt(fromM), choice, { samples: SAMPLES, rolls: true })!.along.mean / YARD_M
    );
  };
  const driver = player.spreads.findIndex((spread) => spread.club.kind === 'driver');
  const longest = player.spreads.findIndex(
    (spread) => spread.club.kind === 'wood' && spread.swing === 'full',
  );
  const driveYd = totalYd(driver, 520);

  it(`drives ${drive} yd`, () => {
    expect(Math.abs(driveYd - drive)).toBeLessThan(TOLERANCE_YD);
  });

  it(`reaches ${inTwo} yd in two`, () => {
    const secondYd = totalYd(longest, 520 - driveYd * YARD_M);
    expect(Math.abs(driveYd + secondYd - inTwo)).toBeLessThan(2 * TOLERANCE_YD);
  });
});
