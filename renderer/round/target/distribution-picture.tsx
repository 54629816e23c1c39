/** Chances of each score as bars: those that meet the target stand out, a bracket holds eight rounds of ten. */

import type { Outlook } from '../state/planned-holes.ts';
import { useWords } from '../../state/use-words.ts';

const WIDTH = 620;
const HEIGHT = 190;
const FOOT = 40;
const HEAD = 14;
/** Scores rarer than this are left out. */
const LEAST = 0.002;

export function DistributionPicture({ outlook, par }: { readonly outlook: Outlook; readonly par: number }) {
  const words = useWords();
  const { distribution, range, expected } = outlook.odds;
  const bars = distribution.chances
    .map((chance, i) => ({ score: distribution.lowest + i, chance }))
    .filter(({ chance }) => chance >= LEAST);
  const first = bars[0]?.score ?? 0;
  const last = bars.at(-1)?.score ?? 0;
  const step = WIDTH / Math.max(1, bars.length);
  const most = Math.max(...bars.map(({ chance }) => chance));
  const tall = HEIGHT - FOOT - HEAD;
  const xOf = (score: number): number => (score - first + 0.5) * step;
  const foot = HEIGHT - FOOT;
  const every = bars.length > 26 ? 5 : bars.length > 14 ? 2 : 1;
  const told = words.round.odds.picture({
    ...{ first, last, expected: words.figures.fixed(expected, 1) },
    ...{ share: Math.round(100 * range.share), low: range.low, high: range.high },
  });
  return (
    <svg class="distribution" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={told}>
      {bars.map(({ score, chance }) => (
        <rect
          key={score}
          class={score <= outlook.target ? 'bar met' : 'bar'}
          x={(score - first) * step + 1}
          width={Math.max(1, step - 2)}
          y={foot - (tall * chance) / most}
          height={(tall * chance) / most}
        >
          <title>{`${score}: ${words.figures.fixed(100 * chance, 1)} %`}</title>
        </rect>
      ))}
      <path class="axis" d={`M0 ${foot}H${WIDTH}`} />
      {bars
        .filter(({ score }) => score % every === 0)
        .map(({ score }) => (
          <text key={score} class="tick" x={xOf(score)} y={foot + 14} text-anchor="middle">
            {score}
          </text>
        ))}
      {range.low >= first && range.high <= last && (
        <g>
          <path class="bracket" d={`M${xOf(range.low)} ${foot + 20}v5H${xOf(range.high)}v-5`} />
          <text class="tick" x={(xOf(range.low) + xOf(range.high)) / 2} y={foot + 37} text-anchor="middle">
            {words.round.odds.ofRounds({ share: Math.round(100 * range.share) })}
          </text>
        </g>
      )}
      <path class="mean" d={`M${xOf(expected)} ${HEAD - 2}V${foot}`} />
      <text class="tick" x={xOf(expected)} y={HEAD - 4} text-anchor="middle">
        {words.round.odds.meanMark}
      </text>
      {par >= first && par <= last && (
        <text
          class="tick"
          x={xOf(par)}
          y={foot - 4 - (tall * (bars[par - first]?.chance ?? 0)) / most}
          text-anchor="middle"
        >
          {words.round.odds.parMark}
        </text>
      )}
    </svg>
  );
}
