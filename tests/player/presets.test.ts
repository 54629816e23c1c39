/** Preset players: in order along the bag and along the levels. */

import { describe, expect, it } from 'vitest';
import type { ShotSpread } from '../../core/player/model.ts';
import { partSpread } from '../../core/player/part-swing.ts';
import {
  mirrorSpread,
  type PlayerGroup,
  presetPlayer,
  presetSpread,
  STANDARD_BAG,
} from '../../core/player/presets.ts';

const handicaps = [-5, 0, 5, 10, 16, 20, 28, 36];
const groups: readonly PlayerGroup[] = ['men', 'women', 'senior-men', 'senior-women', 'juniors'];

function find(spreads: readonly ShotSpread[], name: string, swing = 'full'): ShotSpread {
  const found = spreads.find((s) => s.club.name === name && s.swing === swing);
  if (found === undefined) throw new Error(`no ${name} ${swing}`);
  return found;
}

describe('standard bag', () => {
  it('holds fourteen clubs of different names (Rule 4.1b)', () => {
    expect(STANDARD_BAG).toHaveLength(14);
    expect(new Set(STANDARD_BAG.map((c) => c.name)).size).toBe(14);
  });
});

describe('preset players', () => {
  it('keep their shots longest first and leave the putter out', () => {
    const { spreads } = presetPlayer({ handicap: 12, group: 'men' });
    expect(spreads.some((s) => s.club.kind === 'putter')).toBe(false);
    for (let i = 1; i < spreads.length; i += 1) {
      expect(spreads[i]!.carryMean).toBeLessThanOrEqual(spreads[i - 1]!.carryMean);
    }
  });

  it('carry less with every shorter club, for every level and group', () => {
    for (const group of groups) {
      for (const handicap of handicaps) {
        const { spreads } = presetPlayer({ handicap, group });
        const carries = STANDARD_BAG.filter((c) => c.kind !== 'putter').map(
          (c) => find(spreads, c.name).carryMean,
        );
        for (let i = 1; i < carries.length; i += 1) expect(carries[i]!).toBeLessThan(carries[i - 1]!);
      }
    }
  });

  it('get shorter, wider and less sure with the handicap', () => {
    for (const group of groups) {
      for (let i = 1; i < handicaps.length; i += 1) {
        const better = presetPlayer({ handicap: handicaps[i - 1]!, group });
        const weaker = presetPlayer({ handicap: handicaps[i]!, group });
        for (const name of ['Driver', '3-wood', '7-iron', 'Sand wedge']) {
          const [b, w] = [find(better.spreads, name), find(weaker.spreads, name)];
          expect(w.carryMean).toBeLessThan(b.carryMean);
          expect(w.carrySd / w.carryMean).toBeGreaterThan(b.carrySd / b.carryMean);
          expect(w.directionSd).toBeGreaterThan(b.directionSd);
          expect(w.poorShare).toBeGreaterThan(b.poorShare);
        }
        expect(weaker.putting.directionSd).toBeGreaterThan(better.putting.directionSd);
        expect(weaker.putting.distanceSdShare).toBeGreaterThan(better.putting.distanceSdShare);
      }
    }
  });

  it('keep the direction spread of all shots, poor ones included, at the published figure', () => {
    // Broadie 2014: drives of tour players 3.4 degrees; 90-shooters 6.5 (from memory, low confidence).
    for (const [handicap, degrees] of [
      [-5, 3.4],
      [16, 6.5],
    ] as const) {
      const drive = find(presetPlayer({ handicap, group: 'men' }).spreads, 'Driver');
      const all = Math.sqrt(
        (1 - drive.poorShare) * drive.directionSd ** 2 + drive.poorShare * drive.poor.directionSd ** 2,
      );
      expect((all * 180) / Math.PI).toBeCloseTo(degrees, 9);
    }
  });

  it('serve any loft, between its neighbours', () => {
    const level = { handicap: 10, group: 'men' } as const;
    const wedge = (loftDeg: number): ShotSpread =>
      presetSpread(level, { name: `${loftDeg}°`, kind: 'wedge', loftDeg, swings: ['full'] }, 'full');
    expect(wedge(52).carryMean).toBeLessThan(wedge(50).carryMean);
    expect(wedge(52).carryMean).toBeGreaterThan(wedge(56).carryMean);
  });

  it('are shorter for seniors and juniors of the same handicap, and no wilder', () => {
    for (const [group, like] of [
      ['senior-men', 'men'],
      ['senior-women', 'women'],
      ['juniors', 'men'],
    ] as const) {
      const [own, other] = [group, like].map((name) => presetPlayer({ handicap: 12, group: name }));
      for (const [i, spread] of own!.spreads.entries()) {
        expect(spread.carryMean).toBeLessThan(other!.spreads[i]!.carryMean);
        expect(spread.directionSd).toBe(other!.spreads[i]!.directionSd);
      }
    }
    expect(presetPlayer({ handicap: 3, group: 'senior-men' }).spreads[0]!.source).toEqual({
      from: 'preset',
      level: 'handicap 3, senior men',
    });
  });

  it('drift to the outside with the long clubs, the left-handed the other way', () => {
    const right = presetPlayer({ handicap: 24, group: 'men', hand: 'right' }).spreads;
    const left = presetPlayer({ handicap: 24, group: 'men', hand: 'left' }).spreads;
    expect(find(right, 'Driver').directionMean).toBeGreaterThan(0.005);
    expect(find(right, 'Sand wedge').directionMean).toBe(0);
    right.forEach((spread, i) => {
      expect(left[i]!.directionMean + spread.directionMean).toBe(0);
      expect(left[i]!.carryMean).toBe(spread.carryMean);
    });
    expect(mirrorSpread(find(right, 'Driver')).directionMean).toBe(find(left, 'Driver').directionMean);
    expect(mirrorSpread({ ...find(right, 'Driver'), correlation: 0.3 }).correlation).toBe(-0.3);
    expect(find(presetPlayer({ handicap: 0, group: 'men' }).spreads, 'Driver').directionMean).toBe(0);
  });

  it('say which level they stand for', () => {
    const { spreads } = presetPlayer({ handicap: -2, group: 'women' });
    expect(spreads[0]!.source).toEqual({ from: 'preset', level: 'handicap +2, women' });
    expect(spreads.every((s) => s.source.from === 'preset')).toBe(true);
  });
});

describe('part swings', () => {
  const part = find(presetPlayer({ handicap: 16, group: 'men' }).spreads, 'Sand wedge', 'part');

  it('are surer in metres and less sure in share, the shorter they are', () => {
    for (let carry = 3; carry < part.carryMean; carry += 1) {
      const [short, long] = [partSpread(part, carry), partSpread(part, carry + 1)];
      expect(short.carrySd).toBeLessThanOrEqual(long.carrySd);
      expect(short.carrySd / short.carryMean).toBeGreaterThanOrEqual(long.carrySd / long.carryMean);
      expect(short.poorShare).toBeLessThanOrEqual(long.poorShare);
    }
  });

  it('are the entry itself at its longest, and are cut to it beyond', () => {
    expect(partSpread(part, part.carryMean)).toEqual(part);
    expect(partSpread(part, 10 * part.carryMean)).toEqual(part);
  });

  it('never get surer than the shortest chip', () => {
    expect(partSpread(part, 0.1).carrySd).toBeGreaterThan(0.2);
    expect(partSpread(part, -3).carryMean).toBe(1);
  });
});
