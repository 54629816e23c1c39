/**
 * Cards as a PDF file in plain Node, without a browser. pdfkit (MIT) writes it: kept up, vectors and the standard fonts, so
 * that text can be extracted and nothing is embedded but what is drawn.
 */

import PDFDocument from 'pdfkit';
import type { CardHole } from '../../core/card/model.ts';
import type { PreparationSheet } from '../../core/card/preparation.ts';
import type { Page } from './card-drawing.ts';
import { drawOverview, type Overview } from './card-overview.ts';
import { type CardExtras, drawCard } from './card-page.ts';
import { type Box, POINT_PER_MM, printable, type Sheet } from './card-paper.ts';
import { drawPreparation } from './card-preparation.ts';

export interface CardBooklet {
  readonly cards: readonly CardHole[];
  readonly overview: Overview;
  readonly preparation: PreparationSheet | null;
  readonly extrasOf: (card: CardHole) => CardExtras;
  /** Goes into the file's own dates. */
  readonly madeAt: Date;
}

/** The bytes of the file. Same booklet, same bytes. */
export function cardPdf(booklet: CardBooklet, sheet: Sheet, compress = true): Promise<Uint8Array> {
  const { cards, overview, preparation, madeAt } = booklet;
  const size: [number, number] = [sheet.widthMm * POINT_PER_MM, sheet.heightMm * POINT_PER_MM];
  const page: Page = new PDFDocument({
    ...{
      autoFirstPage: false,
      size,
      margin: 0,
      compress,
      lang: sheet.words.language,
      displayTitle: true,
      pdfVersion: '1.7',
    },
    info: {
      Title: printable(sheet.words.cards.pdfTitle(overview)),
      Author: printable(overview.player),
      Creator: 'Holewright',
      CreationDate: madeAt,
      ModDate: madeAt,
    },
  });
  const chunks: Uint8Array[] = [];
  const done = new Promise<Uint8Array>((resolve, reject) => {
    page.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    page.on('end', () => resolve(Buffer.concat(chunks)));
    page.on('error', reject);
  });
  const units = new UnitPlacer(page, sheet);
  for (const part of sheet.isSplit ? (['words', 'table'] as const) : (['whole'] as const))
    drawOverview(page, cards, overview, units.next(), sheet, part);
  for (const card of cards) {
    const extras = booklet.extrasOf(card);
    for (const part of sheet.isSplit ? (['picture', 'words'] as const) : (['whole'] as const))
      drawCard(page, card, units.next(), sheet, extras, part);
  }
  if (preparation !== null) {
    const addPage = (): void => void page.addPage();
    addPage();
    drawPreparation(page, preparation, sheet.words.prepare.title(overview), sheet, addPage);
  }
  page.end();
  return done;
}

/** Hands out the units of sheet after sheet, with lines to cut along. */
class UnitPlacer {
  private used: number;

  constructor(
    private readonly page: Page,
    private readonly sheet: Sheet,
  ) {
    this.used = sheet.across * sheet.down;
  }

  next(): Box {
    const { across, down, unitWidthMm, unitHeightMm } = this.sheet;
    if (this.used === across * down) {
      this.page.addPage();
      this.used = 0;
      this.cutLines();
    }
    const unit = this.used++;
    return {
      x: (unit % across) * unitWidthMm * POINT_PER_MM,
      y: Math.floor(unit / across) * unitHeightMm * POINT_PER_MM,
      width: unitWidthMm * POINT_PER_MM,
      height: unitHeightMm * POINT_PER_MM,
    };
  }

  private cutLines(): void {
    const { across, down, unitWidthMm, unitHeightMm, widthMm, heightMm } = this.sheet;
    for (let column = 1; column < across; column++) {
      const x = column * unitWidthMm * POINT_PER_MM;
      this.page.moveTo(x, 0).lineTo(x, heightMm * POINT_PER_MM);
    }
    for (let row = 1; row < down; row++) {
      const y = row * unitHeightMm * POINT_PER_MM;
      this.page.moveTo(0, y).lineTo(widthMm * POINT_PER_MM, y);
    }
    if (across * down > 1) this.page.lineWidth(0.3).dash(2, { space: 3 }).stroke('#9a9a9a').undash();
  }
}
