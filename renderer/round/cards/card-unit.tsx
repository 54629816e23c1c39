/** One hole on one card: head, picture, words, boxes to fill in. */

import { placeName } from '../../../core/course/assumed-places.ts';
import { LARGEST_GREEN_SCALE, mayCarryGreenPicture } from '../../../core/card/green-limits.ts';
import { lengthWords } from '../../../core/card/lengths.ts';
import type { CardHole } from '../../../core/card/model.ts';
import { type CardNotes, cardParagraphs, type Paragraph } from '../../../core/card/paragraphs.ts';
import { FittedWords } from './fitted-words.tsx';
import { GreenPicture } from './green-picture.tsx';
import { HolePicture } from './hole-picture.tsx';
import type { PaperLayout } from './paper.ts';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export type CardPart = 'whole' | 'picture' | 'words';

interface Props {
  readonly card: CardHole;
  readonly notes: CardNotes;
  readonly layout: PaperLayout;
  readonly hasGreens: boolean;
  readonly part: CardPart;
}

const MARGIN_MM = 4.5;
const GREEN_SHARE = 0.33;

export function CardUnit({ card, notes, layout, hasGreens, part }: Props) {
  const words = useWords();
  const { print, hasFills, unitWidthMm, unitHeightMm } = layout;
  const root = Math.sqrt(print);
  const margin = MARGIN_MM * root;
  const width = unitWidthMm - 2 * margin;
  const head = 8.2 * print;
  const boxes = part === 'picture' ? 0 : 9.5 * root;
  const body = unitHeightMm - 2 * margin - head - boxes - (part === 'picture' ? 0 : 1.5);
  const gap = 2.2 * print;
  const pictureWidth = part === 'whole' ? width * 0.47 : width;
  const wordsWidth = part === 'whole' ? width - pictureWidth - gap : width;
  const mayShow = hasGreens && mayDrawGreen(card, layout);
  const hasGreen = part !== 'words' && mayShow;
  const greenBox = part === 'picture' ? body * 0.27 : Math.min(body * GREEN_SHARE, 33 * print);
  const noteHeight = 3.7 * print;
  const green = hasGreen && card.greenDrawing !== null && (
    <div class="card-green" style={{ height: `${greenBox}mm` }}>
      <GreenPicture
        hole={card.hole}
        drawing={card.greenDrawing}
        widthMm={part === 'picture' ? pictureWidth : wordsWidth}
        heightMm={greenBox - noteHeight}
        {...{ units: card.units, hasFills, print }}
      />
      <p class="card-note" style={{ fontSize: `${4.6 * print}pt`, height: `${noteHeight}mm` }}>
        {words.cards.playFromBelow({ limit: words.cards.greenLimit })}
      </p>
    </div>
  );
  return (
    <article
      class="card-unit"
      aria-label={words.cards.cardOf({ hole: card.hole })}
      style={{ width: `${unitWidthMm}mm`, height: `${unitHeightMm}mm`, padding: `${margin}mm` }}
    >
      <CardHead card={card} heightMm={head} print={print} />
      <div class="card-body" style={{ height: `${body}mm` }}>
        {part !== 'words' && (
          <div style={{ width: `${pictureWidth}mm` }}>
            <HolePicture
              hole={card.hole}
              drawing={card.drawing}
              widthMm={pictureWidth}
              heightMm={part === 'picture' && hasGreen ? body - greenBox - 1.5 : body}
              {...{ units: card.units, hasFills, print }}
              hasGreens={mayShow}
            />
            {part === 'picture' && green}
          </div>
        )}
        {part !== 'picture' && (
          <div class="card-words" style={{ width: `${wordsWidth}mm` }}>
            <FittedWords
              paragraphs={paragraphsOf(card, notes, hasGreens, layout, words)}
              largestPt={(layout.print > 1 ? 8.6 : 7.3) * print}
              smallestPt={(layout.print > 1 ? 6 : 5.4) * print}
            />
            {part === 'whole' && green}
          </div>
        )}
      </div>
      {part !== 'picture' && (
        <div class="card-boxes" style={{ height: `${boxes}mm`, fontSize: `${5.4 * print}pt` }}>
          {card.boxes.map((label) => (
            <span key={label}>{label}</span>
          ))}
        </div>
      )}
    </article>
  );
}

function paragraphsOf(
  card: CardHole,
  notes: CardNotes,
  hasGreens: boolean,
  layout: PaperLayout,
  words: Words,
): readonly Paragraph[] {
  const all = cardParagraphs(card, notes, words);
  const isForbidden = hasGreens && card.greenDrawing !== null && !mayDrawGreen(card, layout);
  return isForbidden ? [...all, { label: words.cards.labels.green, text: words.cards.greenNotDrawn }] : all;
}

/** Drawn at 1:480 or smaller whatever the room; the page that is carried must be small enough too. */
export function mayDrawGreen(card: CardHole, { unitWidthMm, unitHeightMm }: PaperLayout): boolean {
  return (
    card.greenDrawing !== null &&
    mayCarryGreenPicture({
      scale: LARGEST_GREEN_SCALE,
      pageWidthMm: unitWidthMm,
      pageHeightMm: unitHeightMm,
    })
  );
}

interface HeadProps {
  readonly card: CardHole;
  readonly heightMm: number;
  readonly print: number;
}

function CardHead({ card, heightMm, print }: HeadProps) {
  const words = useWords();
  const { budget, expected, strokeIndex, holePosition, name } = card;
  return (
    <header class="card-head" style={{ height: `${heightMm}mm` }}>
      <strong class="card-number" style={{ fontSize: `${21 * print}pt` }}>
        {card.hole}
      </strong>
      <div class="card-facts">
        <p style={{ fontSize: `${8 * print}pt` }}>
          <strong>
            {words.cards.par({ par: card.par })}
            {strokeIndex === null ? '' : ` · ${words.cards.index({ index: strokeIndex })}`} ·{' '}
            {lengthWords(card.lengthM, card.units)}
          </strong>
        </p>
        <p style={{ fontSize: `${6.4 * print}pt` }}>
          {name === null ? '' : `${name} · `}
          {words.cards.tee({ tee: placeName(card.tee, words) })}
          {holePosition === null
            ? ''
            : ` · ${words.cards.holeAt({ position: placeName(holePosition, words) })}`}
        </p>
      </div>
      <div class="card-budget" style={{ fontSize: `${8.4 * print}pt` }}>
        <strong>
          {budget === null
            ? words.cards.expected({ strokes: words.figures.fixed(expected, 1) })
            : words.cards.playFor({ strokes: budget.strokes })}
        </strong>
        {budget !== null && (
          <p style={{ fontSize: `${5.6 * print}pt` }}>
            {words.cards.onAverage({ strokes: words.figures.fixed(expected, 1) })}
          </p>
        )}
      </div>
    </header>
  );
}
