/** One figure over rounds as dots, with the line that fits them where enough rounds are there. */

import type { Trend } from '../../../core/round/trends.ts';

interface Props {
  readonly values: readonly number[];
  readonly trend: Trend;
  readonly label: string;
}

const WIDTH = 220;
const HEIGHT = 54;

export function TrendPicture({ values, trend, label }: Props) {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const span = high - low || 1;
  const xOf = (i: number): number => 8 + ((WIDTH - 16) * i) / Math.max(1, values.length - 1);
  const yOf = (value: number): number => HEIGHT - 8 - ((HEIGHT - 16) * (value - low)) / span;
  const middle = (values.length - 1) / 2;
  const at = (i: number): number => trend.mean + (trend.slope ?? 0) * (i - middle);
  return (
    <svg class="trend" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {trend.slope !== null && (
        <path
          class="mean"
          d={`M${xOf(0)} ${yOf(at(0))}L${xOf(values.length - 1)} ${yOf(at(values.length - 1))}`}
        />
      )}
      {values.map((value, i) => (
        <circle key={i} cx={xOf(i)} cy={yOf(value)} r="3" />
      ))}
    </svg>
  );
}
