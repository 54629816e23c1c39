/** The card of the whole round: what to play and for on each hole, with room for the scores. */

import { placeName } from '../../../core/course/assumed-places.ts';
import { lengthNumber } from '../../../core/card/lengths.ts';
import type { CardHole } from '../../../core/card/model.ts';
import { PaintedArea } from './ground-areas.tsx';
import type { PaperLayout } from './paper.ts';
import { KEY } from '../../../core/card/inks.ts';
import { unbroken } from '../../../core/card/unbroken.ts';
import { useWords } from '../../state/use-words.ts';

export interface OverviewWords {
  readonly course: string;
  readonly player: string;
  readonly tee: string;
  readonly lines: readonly string[];
}

interface Props {
  readonly cards: readonly CardHole[];
  readonly head: OverviewWords;
  readonly layout: PaperLayout;
  /** Where picture and words of a card are apart, so are words and table. */
  readonly part: 'whole' | 'words' | 'table';
}

export function OverviewUnit({ cards, head, layout, part }: Props) {
  const words = useWords();
  const { unitWidthMm, unitHeightMm, print } = layout;
  const margin = 4.5 * Math.sqrt(print);
  const units = cards[0]?.units ?? 'yards';
  const sum = (of: (card: CardHole) => number): number => cards.reduce((total, card) => total + of(card), 0);
  const hasBudgets = cards.every(({ budget }) => budget !== null);
  // Head, lines and key take what they need, the table the rest.
  const others = part === 'table' ? 4 : (26 + 2.4 * head.lines.length) * print;
  const room = unitHeightMm - 2 * margin - others;
  const row = Math.min(room / (cards.length + 2), 5.3 * print);
  return (
    <article
      class="card-unit overview-unit"
      aria-label={part === 'table' ? words.cards.overview.table : words.cards.overview.card}
      style={{
        width: `${unitWidthMm}mm`,
        height: `${unitHeightMm}mm`,
        padding: `${margin}mm`,
        fontSize: `${6.6 * print}pt`,
      }}
    >
      {part !== 'table' && (
        <>
          <h2 style={{ fontSize: `${10 * print}pt` }}>{head.course}</h2>
          <p>{words.cards.overview.head({ player: head.player, tee: placeName(head.tee, words) })}</p>
          {head.lines.map((line) => (
            <p key={line}>{unbroken(line)}</p>
          ))}
        </>
      )}
      {part !== 'words' && (
        <table style={{ fontSize: `${Math.min(row * 1.7, 7 * print)}pt` }}>
          <thead>
            <tr style={{ height: `${row}mm` }}>
              <th>{words.cards.overview.hole}</th>
              <th>{words.cards.overview.par}</th>
              <th>{words.cards.overview.index}</th>
              <th>{units === 'yards' ? 'yd' : 'm'}</th>
              <th class="wide">{words.cards.overview.play}</th>
              <th>{words.cards.overview.for}</th>
              <th class="blank">{words.cards.boxes.score}</th>
              <th class="blank">{words.cards.boxes.putts}</th>
              <th class="blank">{words.cards.overview.club}</th>
            </tr>
          </thead>
          <tbody>
            {cards.map((card) => (
              <tr key={card.hole} style={{ height: `${row}mm` }}>
                <th>{card.hole}</th>
                <td>{card.par}</td>
                <td>{card.strokeIndex ?? ''}</td>
                <td>{lengthNumber(card.lengthM, units)}</td>
                <td class="wide">{card.club}</td>
                <th>{card.budget === null ? words.figures.fixed(card.expected, 1) : card.budget.strokes}</th>
                <td />
                <td />
                <td />
              </tr>
            ))}
            <tr style={{ height: `${row}mm` }}>
              <th>{words.cards.overview.sum}</th>
              <td>{sum(({ par }) => par)}</td>
              <td />
              <td>
                {lengthNumber(
                  sum(({ lengthM }) => lengthM),
                  units,
                )}
              </td>
              <td />
              <th>
                {hasBudgets
                  ? sum(({ budget }) => budget?.strokes ?? 0)
                  : words.figures.fixed(
                      sum(({ expected }) => expected),
                      1,
                    )}
              </th>
              <td />
              <td />
              <td />
            </tr>
          </tbody>
        </table>
      )}
      {part !== 'table' && (
        <ul class="paper-key" data-columns={layout.isSplit ? 2 : 4}>
          {KEY.map((kind) => (
            <li key={kind}>
              <svg width="4mm" height="2.6mm" viewBox="0 0 4 2.6" aria-hidden="true">
                <PaintedArea
                  kind={kind}
                  outlines={[
                    [
                      [0.2, 0.2],
                      [3.8, 0.2],
                      [3.8, 2.4],
                      [0.2, 2.4],
                      [0.2, 0.2],
                    ],
                  ]}
                  widthMm={4}
                  heightMm={2.6}
                  hasFills={layout.hasFills}
                  print={1}
                  clipId={`key-${kind}`}
                />
              </svg>{' '}
              {words.cards.key[kind]}
            </li>
          ))}
        </ul>
      )}
    </article>
  );
}
