/** The errors of putts, drawn once and used for every place: four standard normal numbers a putt. */

import { inverseNormal } from '../random/normal.ts';
import { sobolPoints } from '../random/sobol.ts';

export interface PuttDraws {
  readonly count: number;
  readonly direction: Float64Array;
  readonly run: Float64Array;
  readonly readAlong: Float64Array;
  readonly readAcross: Float64Array;
}

/** Fixed words that shift the points off zero without losing their spread: leading bits of pi, e, the golden ratio, sqrt 2. */
const SHIFT = [0x243f6a88, 0xb7e15162, 0x9e3779b9, 0x6a09e667] as const;

/** `count`, best a power of two, evenly spread putts; always the same ones. */
export function puttDraws(count: number): PuttDraws {
  const points = sobolPoints(count, SHIFT.length);
  const normal = (k: number): Float64Array =>
    Float64Array.from(points[k]!, (word) => inverseNormal((((word ^ SHIFT[k]!) >>> 0) + 0.5) / 2 ** 32));
  return { count, direction: normal(0), run: normal(1), readAlong: normal(2), readAcross: normal(3) };
}
