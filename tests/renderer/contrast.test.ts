/** Contrast of text and marks in both themes, by the formula of WCAG 2.2 (W3C 2023), "relative luminance" and 1.4.3, 1.4.11. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import { paletteOf } from '../../renderer/map/palette.ts';
import { rampColour } from '../../renderer/map/strokes-ramp.ts';

type Rgb = readonly [number, number, number];

function rgb(colour: string): Rgb {
  const hex = /^#(..)(..)(..)$/.exec(colour);
  if (hex !== null) return [1, 2, 3].map((i) => parseInt(hex[i]!, 16)) as unknown as Rgb;
  const [r, g, b] = (colour.match(/\d+/g) ?? []).map(Number);
  return [r ?? 0, g ?? 0, b ?? 0];
}

function luminance(colour: string): number {
  const [r, g, b] = rgb(colour).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Rgb;
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function tones(theme: 'light' | 'dark'): Record<string, string> {
  const css = readFileSync(new URL('../../renderer/styles/tones.css', import.meta.url), 'utf8');
  const [light, dark] = css.split(':root[data-theme="dark"]');
  const part = (theme === 'light' ? light : dark) ?? '';
  return Object.fromEntries(
    [...part.matchAll(/--([\w-]+): (#\w{6});/g)].map(([, name, value]) => [name!, value!]),
  );
}

describe.each(['light', 'dark'] as const)('the %s theme', (theme) => {
  const tone = tones(theme);

  it.each([
    ['ink', 'panel'],
    ['ink', 'raised'],
    ['ink', 'sunken'],
    ['ink-soft', 'panel'],
    ['ink-soft', 'raised'],
    ['ink-soft', 'sunken'],
    ['ink-soft', 'accent-wash'],
    ['ink-soft', 'shot-a-wash'],
    ['ink-soft', 'shot-b-wash'],
    ['accent', 'panel'],
    ['accent', 'raised'],
    ['accent', 'accent-wash'],
    ['accent', 'shot-a-wash'],
    ['accent', 'sunken'],
    ['accent-ink', 'accent'],
    ['panel', 'shot-a'],
    ['panel', 'shot-b'],
    ['warn-ink', 'warn-wash'],
    ['warn-ink', 'panel'],
  ])('text in %s on %s reads (4.5 to 1)', (ink, ground) => {
    expect(contrast(tone[ink]!, tone[ground]!)).toBeGreaterThanOrEqual(4.5);
  });

  it.each([
    ['focus', 'panel'],
    ['focus', 'raised'],
    ['line-strong', 'raised'],
    ['line-strong', 'panel'],
  ])('%s can be told from %s (3 to 1)', (mark, ground) => {
    expect(contrast(tone[mark]!, tone[ground]!)).toBeGreaterThanOrEqual(3);
  });

  it('tells the parts of the odds apart by lightness', () => {
    expect(contrast(tone['odds-par']!, tone['odds-bogey']!)).toBeGreaterThanOrEqual(2);
    expect(contrast(tone['odds-bogey']!, tone['odds-double']!)).toBeGreaterThanOrEqual(2);
  });

  it('shows a shot on every ground by its casing and line (3 to 1 between the two)', () => {
    const palette = paletteOf(theme);
    expect(contrast(palette.shotA, palette.shotCase)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.shotB, palette.shotCase)).toBeGreaterThanOrEqual(3);
  });

  it('tells fairway, green and bunker from the rough by lightness', () => {
    const { ground } = paletteOf(theme);
    for (const lie of [Lie.fairway, Lie.green, Lie.bunker]) {
      expect(contrast(ground[lie], ground[Lie.rough])).toBeGreaterThanOrEqual(1.25);
    }
    expect(contrast(ground[Lie.woods], ground[Lie.rough])).toBeGreaterThanOrEqual(1.25);
  });
});

describe('the strokes ramp', () => {
  it('darkens all the way, so that it reads without colour vision', () => {
    const steps = Array.from({ length: 101 }, (_, i) => luminance(rampColour(i / 100)));
    for (let i = 1; i < steps.length; i++) expect(steps[i]!).toBeLessThan(steps[i - 1]!);
    expect(contrast(rampColour(0), rampColour(1))).toBeGreaterThan(10);
  });
});
