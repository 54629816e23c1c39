/** The distance ladder and the landing pattern: numbers against counts of drawn shots, words for every case. */

import { describe, expect, it } from 'vitest';
import { distanceGaps, distanceLadder } from '../../core/player/gaps.ts';
import type { ShotSpread } from '../../core/player/model.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { landingPattern, patternWords, poorOdds } from '../../core/player/pattern.ts';
import { presetPlayer, STANDARD_BAG } from '../../core/player/presets.ts';
import { drawShots, minimalPlayer, record } from './sample-player.ts';
import { english } from '../../core/words/english/english.ts';

const { spreads } = presetPlayer({ handicap: 16, group: 'men' });
const full = (name: string): ShotSpread => spreads.find((s) => s.club.name === name && s.swing === 'full')!;

describe('distance gaps', () => {
  it('lie between neighbours by loft; a preset bag has none turned', () => {
    const gaps = distanceGaps(spreads);
    expect(gaps).toHaveLength(STANDARD_BAG.length - 2);
    expect(gaps.some(({ kind }) => kind === 'turned')).toBe(false);
    for (const gap of gaps) expect(gap.gapM).toBeCloseTo(gap.longer.carryM - gap.shorter.carryM, 12);
    expect(distanceLadder(spreads).map(({ club }) => club)[0]).toBe('Driver');
  });

  it('tell how often the longer club comes down shorter', () => {
    const gap = distanceGaps(spreads).find(({ longer }) => longer.club === '8-iron')!;
    const draw = (name: string, seed: string): number[] =>
      drawShots({ ...full(name), poorShare: 0 }, 20_000, seed).map(({ carryM }) => carryM);
    const [longer, shorter] = [draw('8-iron', 'a'), draw('9-iron', 'b')];
    const share = longer.filter((carry, i) => carry < shorter[i]!).length / longer.length;
    // Four binomial standard errors.
    expect(Math.abs(gap.overlap - share)).toBeLessThan(4 * Math.sqrt(0.25 / 20_000));
  });

  it('are wide without the clubs between, narrow for twins, turned for a club that flies shorter than its loft', () => {
    const kinds = (bag: readonly ShotSpread[]): string[] => distanceGaps(bag).map(({ kind }) => kind);
    expect(kinds([full('5-iron'), full('9-iron')])).toEqual(['wide']);
    expect(kinds([full('7-iron'), { ...full('8-iron'), carryMean: full('7-iron').carryMean - 2 }])).toEqual([
      'narrow',
    ]);
    expect(kinds([full('7-iron'), { ...full('8-iron'), carryMean: full('7-iron').carryMean + 2 }])).toEqual([
      'turned',
    ]);
  });

  it('carry their doubt where the player’s shots give one', () => {
    const law = { ...full('7-iron'), poorShare: 0.05 };
    const shots = [
      ...record('7-iron', drawShots(law, 60, 'gap')),
      ...record('Driver', drawShots(full('Driver'), 60, 'gap')),
    ];
    const player = parsePlayer({ ...minimalPlayer(), shots });
    if (!player.ok) throw new Error('refused');
    const [gap] = distanceGaps(player.value.spreads, player.value.posterior!().entries);
    expect(gap!.longer.club).toBe('Driver');
    expect(gap!.doubt!.low).toBeLessThan(gap!.gapM);
    expect(gap!.doubt!.high).toBeGreaterThan(gap!.gapM);
    expect(gap!.doubt!.high - gap!.doubt!.low).toBeLessThan(15);
  });
});

describe('landing pattern', () => {
  const law: ShotSpread = { ...full('Driver'), correlation: -0.4, directionMean: 0.03, poorShare: 0.1 };

  it('has ellipses that hold their share of solid strikes', () => {
    const solid = drawShots({ ...law, poorShare: 0 }, 20_000, 'ellipse');
    for (const { share, along, across, semiMajorM, semiMinorM, tilt } of landingPattern(law, []).ellipses) {
      const inside = solid.filter(({ carryM, direction }) => {
        const dx = carryM * Math.cos(direction) - along;
        const dy = carryM * Math.sin(direction) - across;
        const u = (dx * Math.cos(tilt) + dy * Math.sin(tilt)) / semiMajorM;
        const v = (dy * Math.cos(tilt) - dx * Math.sin(tilt)) / semiMinorM;
        return u * u + v * v <= 1;
      }).length;
      // An arc is not straight: the ellipse misses a point at this width, besides the chance error.
      expect(Math.abs(inside / solid.length - share)).toBeLessThan(0.015);
    }
  });

  it('marks tops and shanks as poor, and good ones not', () => {
    const shots = [
      { carryM: law.carryMean, direction: 0.03 },
      { carryM: 0.4 * law.carryMean, direction: 0 },
      { carryM: 0.6 * law.carryMean, direction: 0.9 },
      { carryM: 1.15 * law.carryMean, direction: -0.05 },
    ];
    expect(landingPattern(law, shots).dots.map(({ isPoor }) => isPoor)).toEqual([false, true, true, false]);
    expect(poorOdds(law, { carryM: 1, direction: 3 })).toBeGreaterThan(1e6);
  });

  it('is told in words: length, side, widths, lean, poor strikes and what stands behind it', () => {
    const words = patternWords(law, 40, 'metres', english);
    expect(words).toContain(`carry ${Math.round(law.carryMean)} metres`);
    expect(words).toMatch(/metres right of the aim/);
    expect(words).toContain('Longer ones tend to the left');
    expect(words).toContain('10 in a hundred strikes are poor');
    expect(words).toContain('40 measured shots stand behind this.');
    const straight = patternWords(
      { ...law, directionMean: 0, correlation: 0, poorShare: 0.001 },
      0,
      'yards',
      english,
    );
    expect(straight).toContain('on the line of aim');
    expect(straight).toContain('Hardly any strike is poor');
    expect(straight).toContain('No measured shots');
    expect(straight).not.toContain('tend to');
  });
});
