/** Draws plot data as SVG: lines told apart by dashes as well as by colour, with a key below. */

import { scaleLinear } from 'd3-scale';
import type { Figures } from '../../../core/words/figures.ts';
import type { PlotData, Point } from './plot-data.ts';

export interface PlotWords {
  readonly alt: string;
  readonly caption: string;
  readonly x: string;
  readonly y: string;
  readonly labels: Readonly<Record<string, string>>;
}

interface Props {
  readonly data: PlotData;
  readonly words: PlotWords;
  readonly figures: Figures;
}

const WIDTH = 520;
const HEIGHT = 290;
const LEFT = 52;
const RIGHT = 14;
const TOP = 12;
const BOTTOM = 48;
const DASHES = ['', '8 4', '2 4', '10 4 2 4', '5 2'];

export function Plot({ data, words, figures }: Props) {
  const plotWidth = WIDTH - LEFT - RIGHT;
  const perUnit = plotWidth / (data.x.to - data.x.from);
  const plotHeight = data.toScale ? perUnit * (data.y.to - data.y.from) : HEIGHT - TOP - BOTTOM;
  const bottom = TOP + plotHeight;
  const height = bottom + BOTTOM;
  const x = scaleLinear([data.x.from, data.x.to], [LEFT, WIDTH - RIGHT]);
  const y = scaleLinear([data.y.from, data.y.to], [bottom, TOP]);
  const pathOf = (points: readonly Point[]): string =>
    points.map(([px, py], i) => `${i === 0 ? 'M' : 'L'}${x(px).toFixed(1)} ${y(py).toFixed(1)}`).join('');
  const isAlone = data.lines.length === 1 && data.dots === undefined;
  return (
    <figure class="help-figure">
      <svg viewBox={`0 0 ${WIDTH} ${height.toFixed(0)}`} role="img" aria-label={words.alt}>
        {data.y.ticks.map((tick) => (
          <g key={tick}>
            <path d={`M${LEFT} ${y(tick).toFixed(1)}H${WIDTH - RIGHT}`} class="figure-grid" />
            <text x={LEFT - 6} y={y(tick) + 4} text-anchor="end">
              {figures.short(tick, 2)}
            </text>
          </g>
        ))}
        {data.x.ticks.map((tick) => (
          <g key={tick}>
            <path d={`M${x(tick).toFixed(1)} ${bottom}v4`} class="figure-axis" />
            <text x={x(tick)} y={bottom + 19} text-anchor="middle">
              {figures.short(tick, 2)}
            </text>
          </g>
        ))}
        <path d={`M${LEFT} ${TOP}V${bottom}H${WIDTH - RIGHT}`} class="figure-axis" />
        <text x={(LEFT + WIDTH - RIGHT) / 2} y={bottom + 40} text-anchor="middle" class="figure-title">
          {words.x}
        </text>
        <text
          transform={`translate(13 ${(TOP + bottom) / 2}) rotate(-90)`}
          text-anchor="middle"
          class="figure-title"
        >
          {words.y}
        </text>
        {data.lines.map(({ label, points }, i) => (
          <path
            key={label}
            d={pathOf(points)}
            class={`figure-line figure-line-${i}`}
            stroke-dasharray={DASHES[i % DASHES.length]}
          />
        ))}
        {data.dots?.points.map(([px, py]) => (
          <circle key={px} cx={x(px)} cy={y(py)} r="3.4" class="figure-dot" />
        ))}
      </svg>
      {!isAlone && (
        <ul class="figure-key">
          {data.lines.map(({ label }, i) => (
            <li key={label}>
              <svg viewBox="0 0 34 10" width="34" height="10" aria-hidden="true">
                <path
                  d="M1 5H33"
                  class={`figure-line figure-line-${i}`}
                  stroke-dasharray={DASHES[i % DASHES.length]}
                />
              </svg>
              {words.labels[label]}
            </li>
          ))}
          {data.dots !== undefined && (
            <li>
              <svg viewBox="0 0 34 10" width="34" height="10" aria-hidden="true">
                <circle cx="17" cy="5" r="3.4" class="figure-dot" />
              </svg>
              {words.labels[data.dots.label]}
            </li>
          )}
        </ul>
      )}
      <figcaption>{words.caption}</figcaption>
    </figure>
  );
}
