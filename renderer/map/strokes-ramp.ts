/**
 * Colours of the strokes-to-hole-out surface: one hue path from pale yellow (few strokes) to deep violet (many),
 * lightness falling all the way, so that it reads the same without colour vision.
 */

import { interpolateLab, piecewise } from 'd3-interpolate';
import { scaleLinear } from 'd3-scale';
import { remember } from '../state/remember.ts';

const STOPS = ['#fdf3bf', '#d9dd85', '#93c47f', '#4ba38b', '#2f7f94', '#34568c', '#39306f', '#2a1245'];

export interface StrokesScale {
  readonly low: number;
  readonly high: number;
  readonly colour: (strokes: number) => string;
  /** Whole or half strokes for the key. */
  readonly ticks: readonly number[];
}

const ramp: (share: number) => string = piecewise(interpolateLab, STOPS);

/** The colour at a share from 0 (few strokes) to 1 (many). */
export function rampColour(share: number): string {
  return ramp(Math.min(1, Math.max(0, share)));
}

/** A scale over the values' bulk: the few most extreme cells do not stretch it. */
export const strokesScale = remember((values: Float32Array): StrokesScale => {
  const known = Float32Array.from(values.filter((value) => !Number.isNaN(value))).sort();
  const at = (share: number): number =>
    known[Math.min(known.length - 1, Math.floor(share * known.length))] ?? 0;
  const low = at(0.002);
  const high = Math.max(low + 0.1, at(0.985));
  return {
    low,
    high,
    colour: (strokes) => rampColour((strokes - low) / (high - low)),
    ticks: scaleLinear().domain([low, high]).ticks(5),
  };
});
