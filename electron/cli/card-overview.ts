/** The card of the whole round: what to play and for on each hole, with room for the scores. */

import { lengthNumber } from '../../core/card/lengths.ts';
import type { CardHole } from '../../core/card/model.ts';
import { INK, KEY } from '../../core/card/inks.ts';
import { drawSample, type Page } from './card-drawing.ts';
import { oneLine } from './card-page.ts';
import { type Box, inset, POINT_PER_MM, printable, type Sheet } from './card-paper.ts';

export interface Overview {
  readonly course: string;
  readonly player: string;
  readonly tee: string;
  /** Such as `89 or fewer: 76 of 100 rounds; 86.7 expected, 8 of 10 from 82 to 92`. */
  readonly lines: readonly string[];
}

/** Draws the overview into its unit; where picture and words of a card are apart, so are words and table: `part` says which. */
export function drawOverview(
  page: Page,
  cards: readonly CardHole[],
  overview: Overview,
  unit: Box,
  sheet: Sheet,
  part: 'whole' | 'words' | 'table',
): void {
  const { print } = sheet;
  const box = inset(unit, 4.5 * POINT_PER_MM * Math.sqrt(print));
  const size = 6.6 * print;
  const keyRows = Math.ceil(KEY.length / keyColumns(sheet));
  const keyHeight = part === 'table' ? 0 : keyRows * (size + 2.5);
  const bottom = box.y + box.height - keyHeight - 4;
  let { y } = box;
  if (part !== 'table') {
    oneLine(page, overview.course, box.x, y, box.width, 10 * print, 'Helvetica-Bold');
    y += 13 * print;
    oneLine(page, sheet.words.cards.overview.head(overview), box.x, y, box.width, size, 'Helvetica');
    y += size * 1.4;
    page.font('Helvetica').fontSize(size).fillColor(INK);
    for (const line of overview.lines) {
      page.text(printable(line), box.x, y, { width: box.width });
      y += page.heightOfString(printable(line), { width: box.width }) + print;
    }
    y += 3;
    drawKey(page, { ...box, y: bottom + 4, height: keyHeight }, sheet, size * 0.85);
  }
  if (part !== 'words') drawTable(page, cards, { ...box, y, height: bottom - y }, sheet);
}

const COLUMNS = [
  ...([
    ['hole', 0.09],
    ['par', 0.08],
    ['index', 0.08],
    ['length', 0.1],
    ['play', 0.25],
  ] as const),
  ...([
    ['for', 0.08],
    ['score', 0.11],
    ['putts', 0.1],
    ['club', 0.11],
  ] as const),
];

function drawTable(page: Page, cards: readonly CardHole[], box: Box, { print, words }: Sheet): void {
  const told = words.cards.overview;
  const rows = cards.length + 2;
  const row = Math.min(box.height / rows, 15 * print);
  const size = Math.min(row * 0.62, 7 * print);
  const units = cards[0]?.units ?? 'yards';
  const titles = COLUMNS.map(([title]) =>
    title === 'length' ? (units === 'yards' ? 'yd' : 'm') : told[title],
  );
  const cells = cards.map((card) => [
    ...[`${card.hole}`, `${card.par}`, card.strokeIndex === null ? '' : `${card.strokeIndex}`],
    ...[
      `${lengthNumber(card.lengthM, card.units)}`,
      card.club,
      card.budget === null ? words.figures.fixed(card.expected, 1) : `${card.budget.strokes}`,
    ],
  ]);
  const sum = (of: (card: CardHole) => number): number => cards.reduce((total, card) => total + of(card), 0);
  const budgets = cards.every(({ budget }) => budget !== null);
  const total = [
    ...[
      told.sum,
      `${sum(({ par }) => par)}`,
      '',
      `${lengthNumber(
        sum(({ lengthM }) => lengthM),
        units,
      )}`,
      '',
    ],
    budgets
      ? `${sum(({ budget }) => budget!.strokes)}`
      : words.figures.fixed(
          sum(({ expected }) => expected),
          1,
        ),
  ];
  [titles, ...cells, total].forEach((texts, r) => {
    let x = box.x;
    const y = box.y + r * row;
    COLUMNS.forEach(([, share], c) => {
      const width = box.width * share;
      page.rect(x, y, width, row).lineWidth(0.35).stroke('#6b6b6b');
      const text = texts[c];
      if (text !== undefined && text !== '') {
        const font = r === 0 || r === rows - 1 || c === 0 || c === 5 ? 'Helvetica-Bold' : 'Helvetica';
        oneLine(
          page,
          text,
          x + 2,
          y + (row - size) / 2 + size * 0.06,
          width - 3,
          r === 0 ? size * 0.85 : size,
          font,
        );
      }
      x += width;
    });
  });
}

/** Four kinds of ground beside each other; large print on a pocket page has room for two. */
function keyColumns({ isSplit }: Sheet): number {
  return isSplit ? 2 : 4;
}

function drawKey(page: Page, box: Box, sheet: Sheet, size: number): void {
  const columns = keyColumns(sheet);
  const width = box.width / columns;
  const height = box.height / Math.ceil(KEY.length / columns);
  KEY.forEach((kind, i) => {
    const x = box.x + (i % columns) * width;
    const y = box.y + Math.floor(i / columns) * height;
    drawSample(page, kind, { x, y, width: size * 1.5, height: size }, sheet.hasFills);
    oneLine(
      page,
      sheet.words.cards.key[kind],
      x + size * 1.9,
      y + size * 0.08,
      width - size * 2.1,
      size,
      'Helvetica',
    );
  });
}
