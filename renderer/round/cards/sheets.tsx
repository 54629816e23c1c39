/** The sheets as they come out of the printer: units in their places, lines to cut and to fold along. */

import type { VNode } from 'preact';
import type { CardHole } from '../../../core/card/model.ts';
import type { CardNotes } from '../../../core/card/paragraphs.ts';
import { CardUnit } from './card-unit.tsx';
import { type OverviewWords, OverviewUnit } from './overview-unit.tsx';
import { type PaperLayout, placeUnits } from './paper.ts';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly cards: readonly CardHole[];
  /** Null: single cards without the one of the whole round. */
  readonly overview: OverviewWords | null;
  readonly notesOf: (hole: number) => CardNotes;
  readonly layout: PaperLayout;
  readonly hasGreens: boolean;
}

export function Sheets({ cards, overview, notesOf, layout, hasGreens }: Props) {
  const words = useWords();
  const units = unitsOf({ cards, overview, notesOf, layout, hasGreens });
  const { page, widthMm, heightMm, across, down, unitWidthMm, unitHeightMm, isBooklet } = layout;
  return (
    <div class="sheets" data-page={page}>
      {placeUnits(units.length, layout).map((side, number) => (
        <div class="sheet-frame" key={number} data-page={page}>
          <div
            class="sheet"
            data-page={page}
            style={{ width: `${widthMm}mm`, height: `${heightMm}mm` }}
            aria-label={words.cards.sheet({ number: number + 1 })}
            role="group"
          >
            {side.map((unit, k) => (
              <div
                key={k}
                class="sheet-place"
                style={{
                  left: `${(k % across) * unitWidthMm}mm`,
                  top: `${Math.floor(k / across) * unitHeightMm}mm`,
                  width: `${unitWidthMm}mm`,
                  height: `${unitHeightMm}mm`,
                }}
              >
                {unit === null ? null : units[unit]}
              </div>
            ))}
            <CutLines {...{ widthMm, heightMm, across, down, isBooklet }} />
          </div>
        </div>
      ))}
    </div>
  );
}

function unitsOf({ cards, overview, notesOf, layout, hasGreens }: Props): readonly VNode[] {
  const units: VNode[] = [];
  if (overview !== null)
    for (const part of layout.isSplit ? (['words', 'table'] as const) : (['whole'] as const))
      units.push(<OverviewUnit cards={cards} head={overview} {...{ layout, part }} />);
  for (const card of cards) {
    for (const part of layout.isSplit ? (['picture', 'words'] as const) : (['whole'] as const))
      units.push(<CardUnit {...{ card, layout, hasGreens, part }} notes={notesOf(card.hole)} />);
  }
  return units;
}

type CutProps = Pick<PaperLayout, 'widthMm' | 'heightMm' | 'across' | 'down' | 'isBooklet'>;

/** A booklet is cut across and folded upright: the fold is dotted. */
function CutLines({ widthMm, heightMm, across, down, isBooklet }: CutProps) {
  if (across * down === 1) return null;
  const middle = widthMm / across;
  return (
    <svg
      class="cut-lines"
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      aria-hidden="true"
    >
      <path
        d={`M${middle} 0V${heightMm}`}
        stroke="#9a9a9a"
        stroke-width="0.1"
        stroke-dasharray={isBooklet ? '0.2 1.6' : '0.7 1.05'}
      />
      <path
        d={`M0 ${heightMm / down}H${widthMm}`}
        stroke="#9a9a9a"
        stroke-width="0.1"
        stroke-dasharray="0.7 1.05"
      />
    </svg>
  );
}
