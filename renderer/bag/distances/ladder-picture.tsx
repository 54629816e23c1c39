/** The distance ladder: each full swing's carry with where half of its strikes and its average lie, gaps marked. */

import { gapWords, rungWords } from '../../../core/player/gap-words.ts';
import type { Gap, Rung } from '../../../core/player/gaps.ts';
import { inUnits, unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { niceStep } from '../picture-scale.ts';
import { useWords } from '../../state/use-words.ts';

const WIDTH = 760;
const ROW = 26;
const EDGE = { left: 128, right: 22, top: 24, bottom: 10 };

export function LadderPicture({
  rungs,
  gaps,
}: {
  readonly rungs: readonly Rung[];
  readonly gaps: readonly Gap[];
}) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const height = EDGE.top + EDGE.bottom + ROW * rungs.length;
  const farthest = Math.max(
    ...rungs.map(({ middleHalf, carryM, carrySdM }) => Math.max(middleHalf.high, carryM + 1.6 * carrySdM)),
  );
  const nearest = Math.min(...rungs.map(({ carryM, carrySdM }) => carryM - 1.6 * carrySdM));
  const from = Math.max(0, nearest - 8);
  const perM = (WIDTH - EDGE.left - EDGE.right) / (farthest - from);
  const x = (metres: number): number => EDGE.left + (metres - from) * perM;
  const y = (row: number): number => EDGE.top + ROW * (row + 0.5);
  const metres = units === 'yards' ? 0.9144 : 1;
  const step = niceStep(inUnits(farthest - from, units), 9);
  const first = Math.ceil(from / metres / step);
  const last = Math.floor(farthest / metres / step);
  const marks = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
  const rowOf = new Map(rungs.map((rung, row) => [rung.club, row]));
  const odd = gaps.filter(({ kind }) => kind !== 'even');
  const said = [
    ...rungs.map((rung) => rungWords(rung, units, words)),
    ...odd.map((gap) => gapWords(gap, units, words) ?? ''),
  ];
  return (
    <figure class="bag-picture ladder">
      <figcaption>
        <strong>{words.player.distances.carryOfEach({ units: words.spread.unit[units] })}</strong>
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={said.join(' ')}>
        <g class="grid">
          {marks.map((mark) => (
            <g key={mark}>
              <line x1={x(mark * metres)} x2={x(mark * metres)} y1={EDGE.top - 4} y2={height - EDGE.bottom} />
              <text x={x(mark * metres)} y={14} text-anchor="middle">
                {mark}
              </text>
            </g>
          ))}
        </g>
        {odd.map((gap) => {
          const [above, below] = [rowOf.get(gap.longer.club) ?? 0, rowOf.get(gap.shorter.club) ?? 0];
          const [low, high] = [gap.shorter.carryM, gap.longer.carryM].sort((a, b) => a - b) as [
            number,
            number,
          ];
          return (
            <rect
              key={`${gap.longer.club}/${gap.shorter.club}`}
              class={`gap-${gap.kind}`}
              x={x(low)}
              width={Math.max(2, (high - low) * perM)}
              y={y(Math.min(above, below))}
              height={Math.max(ROW, Math.abs(below - above) * ROW)}
            />
          );
        })}
        {rungs.map((rung, row) => (
          <g key={rung.club}>
            <text class="rung-name" x={EDGE.left - 10} y={y(row) + 4} text-anchor="end">
              {rung.club}
            </text>
            <line
              class="rung-most"
              x1={x(rung.carryM - 1.645 * rung.carrySdM)}
              x2={x(rung.carryM + 1.645 * rung.carrySdM)}
              y1={y(row)}
              y2={y(row)}
            />
            <rect
              class="rung-half"
              x={x(rung.middleHalf.low)}
              width={(rung.middleHalf.high - rung.middleHalf.low) * perM}
              y={y(row) - 6}
              height={12}
            />
            {rung.doubt !== undefined && (
              <line
                class="rung-doubt"
                x1={x(rung.doubt.low)}
                x2={x(rung.doubt.high)}
                y1={y(row)}
                y2={y(row)}
              />
            )}
            <line class="rung-mean" x1={x(rung.carryM)} x2={x(rung.carryM)} y1={y(row) - 8} y2={y(row) + 8} />
          </g>
        ))}
      </svg>
      <p class="picture-key">{words.player.distances.key({ unit: unitShort(units) })}</p>
    </figure>
  );
}
