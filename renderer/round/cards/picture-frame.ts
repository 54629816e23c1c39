/** Where a drawing in metres lies in a box of paper, at one of a few round scales. */

import type { DrawnBox, HoleDrawing } from '../../../core/card/model.ts';
import type { Spot } from '../../../core/plan/model.ts';

/** Scales a picture may have: 1 to these. */
export const HOLE_SCALES: readonly number[] = [
  ...[500, 750, 1000, 1250, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 6000, 7500, 10_000],
];
export const GREEN_SCALES: readonly number[] = [500, 600, 750, 1000, 1250, 1500, 2000];

export interface PictureFrame {
  /** 3000 for 1:3000. */
  readonly scale: number;
  readonly mmPerM: number;
  /** Metres of the drawing to millimetres right of and below the box's top left corner. */
  readonly place: (spot: Spot) => readonly [number, number];
}

/** Ground beside the line of play, aim and pattern that must be seen, metres; more is shown where there is room. */
const LEAST_ASIDE_M = 7;

/** The largest scale at which the hole fits; null where none does. `headMm`: kept free for the flag. */
export function holeFrame(
  drawing: HoleDrawing,
  widthMm: number,
  heightMm: number,
  headMm: number,
): PictureFrame | null {
  const { left, right } = reachOf(drawing);
  const need = { ...drawing.box, left: left - LEAST_ASIDE_M, right: right + LEAST_ASIDE_M };
  return frameIn(need, widthMm, heightMm, headMm, HOLE_SCALES);
}

export function greenFrame(box: DrawnBox, widthMm: number, heightMm: number): PictureFrame | null {
  return frameIn(box, widthMm, heightMm, 0, GREEN_SCALES);
}

function frameIn(
  { left, right, bottom, top }: DrawnBox,
  widthMm: number,
  heightMm: number,
  headMm: number,
  scales: readonly number[],
): PictureFrame | null {
  const scale = scales.find(
    (one) => ((top - bottom) * 1000) / one <= heightMm - headMm && ((right - left) * 1000) / one <= widthMm,
  );
  if (scale === undefined) return null;
  const mmPerM = 1000 / scale;
  const middle = (left + right) / 2;
  const spare = heightMm - headMm - (top - bottom) * mmPerM;
  const foot = heightMm - spare / 2;
  return {
    scale,
    mmPerM,
    place: ({ x, y }) => [
      rounded(widthMm / 2 + (x - middle) * mmPerM),
      rounded(foot - (y - bottom) * mmPerM),
    ],
  };
}

/** How far the line of play, the aim and the pattern reach to the left and to the right. */
function reachOf({ line, aim, ellipses }: HoleDrawing): { readonly left: number; readonly right: number } {
  const all = [...line, ...(aim === null ? [] : [aim]), ...ellipses.flatMap(({ outline }) => outline)];
  const xs = all.map(({ x }) => x);
  return { left: Math.min(...xs), right: Math.max(...xs) };
}

/** A hundredth of a millimetre is finer than any printer. */
function rounded(mm: number): number {
  return Math.round(mm * 100) / 100;
}
