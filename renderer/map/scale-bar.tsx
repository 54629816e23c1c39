/** A bar of a round length in the chosen units. */

import { useApp } from '../state/use-app.ts';
import { useWords } from '../state/use-words.ts';
import { unitShort, type Units } from '../state/measures.ts';

const LONGEST_PX = 130;
const ROUND = [5, 10, 20, 50, 100, 200, 500, 1000, 2000];

export function ScaleBar({ metresPerPixel }: { readonly metresPerPixel: number }) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const { length, pixels } = roundLength(metresPerPixel, units);
  return (
    <svg
      class="scale-bar"
      viewBox={`-2 0 ${pixels + 4} 22`}
      width={pixels + 4}
      height="22"
      role="img"
      aria-label={words.map.scale({ length: `${length} ${unitShort(units)}` })}
    >
      <path d={`M0 13v6h${pixels}v-6`} class="scale-line" />
      <text x={pixels / 2} y="10" class="key-text">
        {length} {unitShort(units)}
      </text>
    </svg>
  );
}

/** The longest round length that fits. */
export function roundLength(
  metresPerPixel: number,
  units: Units,
): { readonly length: number; readonly pixels: number } {
  const metres = units === 'yards' ? 0.9144 : 1;
  const fitting = ROUND.filter((length) => (length * metres) / metresPerPixel <= LONGEST_PX);
  const length = fitting.at(-1) ?? ROUND[0]!;
  return { length, pixels: (length * metres) / metresPerPixel };
}
