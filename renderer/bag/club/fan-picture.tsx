/** The lean of every full swing as a fan from above, angles drawn three times as wide: the club on show stands out. */

import { leanWords } from '../../../core/player/gap-words.ts';
import type { SpreadLine } from '../work/bag-report.ts';
import { clubSwing } from '../words.ts';
import { useWords } from '../../state/use-words.ts';

const WIDTH = 360;
const HEIGHT = 300;
const BOTTOM = 12;
const DEGREE = Math.PI / 180;
/** Rays that are drawn, degrees. */
const RAYS = [-10, -5, 0, 5, 10];
/** True angles would leave the fan too thin to read. */
const WIDENED = 3;

export function FanPicture({
  line,
  all,
}: {
  readonly line: SpreadLine;
  readonly all: readonly SpreadLine[];
}) {
  const words = useWords();
  const full = all.filter(({ spread }) => spread.swing === 'full');
  const longest = Math.max(line.spread.carryMean, ...full.map(({ spread }) => spread.carryMean));
  const perM = (HEIGHT - BOTTOM - 26) / longest;
  const said = leanWords(line.spread, line.estimates.directionMean, words);
  const place = (radius: number, angle: number): readonly [number, number] => [
    WIDTH / 2 + radius * Math.sin(WIDENED * angle),
    HEIGHT - BOTTOM - radius * Math.cos(WIDENED * angle),
  ];
  const at = (radius: number, angle: number): string =>
    place(radius * perM, angle)
      .map((value) => value.toFixed(1))
      .join(' ');
  const arc = (radius: number, from: number, to: number): string =>
    `M${at(radius, from)}A${(radius * perM).toFixed(1)} ${(radius * perM).toFixed(1)} 0 0 1 ${at(radius, to)}`;
  const { spread, estimates } = line;
  const edge = (side: -1 | 1): number => spread.directionMean + side * spread.directionSd;
  return (
    <figure class="bag-picture">
      <figcaption>
        <strong>{words.player.fan.title}</strong>
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
        <g class="grid">
          {RAYS.map((degrees) => (
            <g key={degrees}>
              <path
                class={degrees === 0 ? words.player.fan.aim : undefined}
                d={`M${at(0, 0)}L${at(longest * 1.03, degrees * DEGREE)}`}
              />
              <text
                x={place(longest * perM + 14, degrees * DEGREE)[0]}
                y={place(longest * perM + 14, degrees * DEGREE)[1]}
                text-anchor="middle"
              >
                {degrees === 0 ? words.player.fan.aim : `${Math.abs(degrees)}° ${degrees < 0 ? 'L' : 'R'}`}
              </text>
            </g>
          ))}
        </g>
        {full
          .filter((other) => other.spread.club.name !== spread.club.name)
          .map((other) => (
            <path
              key={other.spread.club.name}
              class="fan-other"
              d={arc(
                other.spread.carryMean,
                other.spread.directionMean - other.spread.directionSd,
                other.spread.directionMean + other.spread.directionSd,
              )}
            />
          ))}
        <path
          class="fan-wedge"
          d={`M${at(0, 0)}L${at(spread.carryMean, edge(-1))}A${(spread.carryMean * perM).toFixed(1)} ${(spread.carryMean * perM).toFixed(1)} 0 0 1 ${at(spread.carryMean, edge(1))}Z`}
        />
        <path class="fan-lean" d={`M${at(0, 0)}L${at(spread.carryMean, spread.directionMean)}`} />
        <path
          class="fan-doubt"
          d={arc(spread.carryMean, estimates.directionMean.low, estimates.directionMean.high)}
        />
      </svg>
      <p class="picture-key">
        {words.player.fan.key({ club: clubSwing(spread.club.name, spread.swing, words) })}
      </p>
      <p class="picture-words">{said}</p>
    </figure>
  );
}
