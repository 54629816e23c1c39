/** The invented players: complete bags, shots that follow the stated laws, files that the generator draws again. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MOST_CLUBS_IN_PLAY, playerText } from '../../core/player/format.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import { inventPlayer, SAMPLE_PLAYER, SCRATCH_PLAYER } from './players.ts';

const DEGREE = Math.PI / 180;
const YARD_M = 0.9144;

describe.each([SAMPLE_PLAYER, SCRATCH_PLAYER])('$file', (invented) => {
  const text = readFileSync(new URL(`../../maps/${invented.file}`, import.meta.url), 'utf8');
  const document = inventPlayer(invented);
  const parsed = parsePlayerText(text);
  if (!parsed.ok) throw new Error(parsed.error.map((fault) => fault.message).join('\n'));
  const player = parsed.value;

  it('is what the stated laws and the seed draw, byte for byte', () => {
    expect(playerText(document) === text).toBe(true);
  });

  it('is marked as invented and read without a warning', () => {
    expect(player.invented).toBe(true);
    expect(text).toContain('Invented player, invented shots');
    expect(player.warnings).toEqual([]);
  });

  it('carries fourteen clubs (Rule 4.1b), each but the putter measured with 20 to 40 shots', () => {
    expect(document.bag).toHaveLength(MOST_CLUBS_IN_PLAY);
    for (const club of document.bag.filter((c) => c.kind !== 'putter')) {
      const count = document.shots!.filter((shot) => shot.club === club.name && shot.swing === 'full').length;
      expect(count, club.name).toBeGreaterThanOrEqual(20);
      expect(count, club.name).toBeLessThanOrEqual(40);
    }
  });

  it('gives back the stated laws within the error of so few shots', () => {
    for (const law of invented.laws) {
      const spread = player.spreads.find((s) => s.club.name === law.club && s.swing === law.swing)!;
      expect(spread.source.from).toBe('measured');
      const solid = law.shots - law.poorShots;
      const carrySd = law.carryM * law.carrySdShare;
      // three standard errors of a mean and of a standard deviation
      expect(Math.abs(spread.carryMean - law.carryM), law.club).toBeLessThan(
        (3 * carrySd) / Math.sqrt(solid),
      );
      expect(Math.abs(spread.carrySd - carrySd), law.club).toBeLessThan((3 * carrySd) / Math.sqrt(2 * solid));
      const bias = spread.directionMean / DEGREE - law.directionDeg;
      expect(Math.abs(bias), law.club).toBeLessThan((3 * law.directionSdDeg) / Math.sqrt(solid));
      const wide = spread.directionSd / DEGREE - law.directionSdDeg;
      expect(Math.abs(wide), law.club).toBeLessThan((3 * law.directionSdDeg) / Math.sqrt(2 * solid));
    }
  });

  it('hits shorter with each club of more loft', () => {
    const carries = invented.laws.filter((law) => law.swing === 'full').map((law) => law.carryM);
    expect(carries).toEqual([...carries].sort((a, b) => b - a));
  });
});

describe('the level of the players', () => {
  const meanTotal = (club: string, invented: typeof SAMPLE_PLAYER): number => {
    const law = invented.laws.find((l) => l.club === club)!;
    const totals = inventPlayer(invented)
      .shots!.filter((shot) => shot.club === club && shot.carryM > 0.8 * law.carryM)
      .map((shot) => shot.totalM!);
    return totals.reduce((a, b) => a + b, 0) / totals.length;
  };

  it('lets the scratch player drive 250 yd and reach 470 yd in two (USGA Course Rating System)', () => {
    const drive = meanTotal('Driver', SCRATCH_PLAYER) / YARD_M;
    const second = meanTotal('3-wood', SCRATCH_PLAYER) / YARD_M;
    expect(Math.abs(drive - 250)).toBeLessThan(5);
    expect(Math.abs(drive + second - 470)).toBeLessThan(10);
  });

  it('lets the sample player drive about 225 yd, slightly right', () => {
    // about 205 m; club golfers of handicap 13 to 20 average 204 yd over all drives (R&A/USGA Distance Insights)
    expect(Math.abs(meanTotal('Driver', SAMPLE_PLAYER) - 205)).toBeLessThan(4);
    expect(SAMPLE_PLAYER.laws[0]!.directionDeg).toBeGreaterThan(0);
  });
});
