/** A bar of a round length under a picture, its length and the scale beside it. */

import type { CardUnits } from '../../../core/card/lengths.ts';
import { INK } from '../../../core/card/inks.ts';

interface Props {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly units: CardUnits;
  readonly print: number;
  /** Longest bar, millimetres. */
  readonly longest?: number;
}

/** Width by which the bar is found in a printed file. */
export const SCALE_BAR_MM = 0.293;

export function ScaleBar({ x, y, scale, units, print, longest = 22 }: Props) {
  const mmPerUnit = ((units === 'yards' ? 0.9144 : 1) * 1000) / scale;
  const count = [200, 100, 50, 20, 10, 5].find((length) => length * mmPerUnit < longest * print) ?? 5;
  const width = count * mmPerUnit;
  const size = 1.8 * print;
  return (
    <g data-bar={`${count} ${units}`}>
      <path d={`M${x} ${y}h${width}`} stroke={INK} stroke-width={SCALE_BAR_MM} />
      <path d={`M${x} ${y - 0.55}v1.1M${x + width} ${y - 0.55}v1.1`} stroke={INK} stroke-width="0.18" />
      <text x={x + width + 1} y={y + size * 0.35} font-size={size} fill={INK}>
        {count} {units === 'yards' ? 'yd' : 'm'}, 1:{scale}
      </text>
    </g>
  );
}
