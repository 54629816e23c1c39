/** One hole on one card: head, picture, words, boxes to fill in. */

import type { Words } from '../../core/words/words.ts';
import { INK } from '../../core/card/inks.ts';
import { LARGEST_GREEN_SCALE, mayCarryGreenPicture } from '../../core/card/green-limits.ts';
import { lengthWords } from '../../core/card/lengths.ts';
import type { CardHole } from '../../core/card/model.ts';
import { cardParagraphs, type Paragraph } from '../../core/card/paragraphs.ts';
import { drawGreen, drawHole, drawScaleBar, type DrawWishes, type Page } from './card-drawing.ts';
import { type Box, inset, POINT_PER_MM, printable, type Sheet } from './card-paper.ts';

const MARGIN_MM = 4.5;

export interface CardExtras {
  readonly hasGreens: boolean;
  /** Short lines such as when to eat; printed at the foot of the words. */
  readonly reminder: string | null;
  /** How the wind of the day is felt here; null without a wind. */
  readonly wind: string | null;
}

/** Draws the card into its unit; a split card takes two units, `part` says which. */
export function drawCard(
  page: Page,
  card: CardHole,
  unit: Box,
  sheet: Sheet,
  extras: CardExtras,
  part: 'whole' | 'picture' | 'words',
): void {
  const { print } = sheet;
  const inner = inset(unit, MARGIN_MM * POINT_PER_MM * Math.sqrt(print));
  const headHeight = drawHead(page, card, inner, sheet);
  const boxesHeight = part === 'picture' ? 0 : 27 * Math.sqrt(print);
  const body: Box = {
    x: inner.x,
    y: inner.y + headHeight,
    width: inner.width,
    height: inner.height - headHeight - boxesHeight - (part === 'picture' ? 0 : 4),
  };
  const gap = 6 * print;
  const pictureWidth = part === 'whole' ? body.width * 0.47 : body.width;
  const wishes: DrawWishes = {
    ...{ hasFills: sheet.hasFills, units: card.units, print },
    hasGreens: mayDrawGreen(card, sheet, extras),
  };
  // A split card keeps its words page for words: the green goes under the picture.
  const greenHeight = part === 'picture' ? body.height * 0.27 : Math.min(body.height * 0.33, 92 * print);
  const hasGreen = part !== 'words' && wishes.hasGreens;
  if (part !== 'words') {
    const height = part === 'picture' && hasGreen ? body.height - greenHeight - 4 : body.height;
    drawPicture(page, card, { ...body, width: pictureWidth, height }, wishes, sheet.words);
    if (part === 'picture' && hasGreen) drawGreenPart(page, card, body, greenHeight, wishes, sheet.words);
  }
  if (part !== 'picture') {
    const words: Box =
      part === 'whole'
        ? { ...body, x: body.x + pictureWidth + gap, width: body.width - pictureWidth - gap }
        : body;
    const hasGreenHere =
      part === 'whole' && hasGreen && drawGreenPart(page, card, words, greenHeight, wishes, sheet.words);
    const height = hasGreenHere ? words.height - greenHeight - 4 : words.height;
    drawWords(page, card, { ...words, height }, sheet, extras);
    drawBoxes(page, card, { ...inner, y: inner.y + inner.height - boxesHeight, height: boxesHeight }, print);
  }
}

function drawHead(page: Page, card: CardHole, box: Box, { print, words }: Sheet): number {
  const told = words.cards;
  const big = 21 * print;
  page.fillColor(INK).font('Helvetica-Bold').fontSize(big);
  const number = `${card.hole}`;
  page.text(number, box.x, box.y - big * 0.12, { lineBreak: false });
  const left = box.x + page.widthOfString(number) + 6 * print;
  const right = budgetBox(page, card, box, print, words);
  const width = right - left - 4;
  const size = 8 * print;
  const index = card.strokeIndex === null ? '' : ` · ${told.index({ index: card.strokeIndex })}`;
  oneLine(
    page,
    `${told.par({ par: card.par })}${index} · ${lengthWords(card.lengthM, card.units)}`,
    left,
    box.y,
    width,
    size,
    'Helvetica-Bold',
  );
  const position = card.holePosition === null ? '' : ` · ${told.holeAt({ position: card.holePosition })}`;
  const name = card.name === null ? '' : `${card.name} · `;
  oneLine(
    page,
    `${name}${told.tee({ tee: card.tee })}${position}`,
    left,
    box.y + size * 1.25,
    width,
    6.4 * print,
    'Helvetica',
  );
  return big * 0.95;
}

/** The budget at the right of the head; returns where it begins. */
function budgetBox(
  page: Page,
  { budget, expected }: CardHole,
  box: Box,
  print: number,
  { cards, figures }: Words,
): number {
  const strokes = figures.fixed(expected, 1);
  const said = budget === null ? cards.expected({ strokes }) : cards.playFor({ strokes: budget.strokes });
  const size = 8.4 * print;
  page.font('Helvetica-Bold').fontSize(size);
  const width = page.widthOfString(said) + 6 * print;
  const x = box.x + box.width - width;
  page
    .rect(x, box.y, width, size * 1.5)
    .lineWidth(0.8)
    .stroke(INK);
  page.fillColor(INK).text(said, x + 3 * print, box.y + size * 0.35, { lineBreak: false });
  if (budget !== null) {
    page.font('Helvetica').fontSize(5.6 * print);
    const note = cards.onAverage({ strokes });
    page.text(note, x + width - page.widthOfString(note), box.y + size * 1.62, { lineBreak: false });
  }
  return x;
}

function drawPicture(page: Page, card: CardHole, box: Box, wishes: DrawWishes, words: Words): void {
  const foot = 9 * wishes.print;
  const frame = { ...box, height: box.height - foot };
  const drawn = drawHole(page, card.drawing, frame, wishes);
  if (drawn === null) {
    page.font('Helvetica').fontSize(7).fillColor(INK);
    page.text(words.cards.tooLongShort, frame.x + 4, frame.y + 4, {
      width: frame.width - 8,
    });
    return;
  }
  drawScaleBar(page, box.x + 2, box.y + box.height - foot * 0.42, drawn.scale, wishes);
}

function drawWords(page: Page, card: CardHole, words: Box, sheet: Sheet, extras: CardExtras): void {
  const { print } = sheet;
  const isLarge = sheet.style === 'large-print';
  const all = [...cardParagraphs(card, extras, sheet.words)];
  if (extras.hasGreens && card.greenDrawing !== null && !mayDrawGreen(card, sheet, extras))
    all.push({ label: sheet.words.cards.labels.green, text: sheet.words.cards.greenNotDrawn });
  const { size, count } = isLarge
    ? fitParagraphs(page, all, words, 8.6 * print, 6 * print)
    : fitParagraphs(page, all, words, 7.3 * print, 5.4 * print);
  let y = words.y;
  for (const { label, text } of all.slice(0, count)) {
    page
      .font('Helvetica-Bold')
      .fontSize(size * 0.82)
      .fillColor('#444444');
    page.text(printable(label), words.x, y, { width: words.width, lineGap: 0 });
    y += page.heightOfString(printable(label), { width: words.width, lineGap: 0 });
    page.font('Helvetica').fontSize(size).fillColor(INK);
    page.text(printable(text), words.x, y, { width: words.width, lineGap: 0 });
    y += page.heightOfString(printable(text), { width: words.width, lineGap: 0 }) + size * GAP;
  }
}

const GAP = 0.3;

/** The largest print at which all fit, else the smallest and as many as fit. */
function fitParagraphs(
  page: Page,
  paragraphs: readonly Paragraph[],
  box: Box,
  largest: number,
  smallest: number,
): { readonly size: number; readonly count: number } {
  for (let size = largest; size >= smallest; size *= 0.96) {
    if (heightOf(page, paragraphs, box.width, size) <= box.height) return { size, count: paragraphs.length };
  }
  let count = paragraphs.length;
  while (count > 1 && heightOf(page, paragraphs.slice(0, count), box.width, smallest) > box.height) count--;
  return { size: smallest, count };
}

function heightOf(page: Page, paragraphs: readonly Paragraph[], width: number, size: number): number {
  return paragraphs.reduce((sum, { label, text }) => {
    const head = page
      .font('Helvetica-Bold')
      .fontSize(size * 0.82)
      .heightOfString(printable(label), { width, lineGap: 0 });
    const body = page.font('Helvetica').fontSize(size).heightOfString(printable(text), { width, lineGap: 0 });
    return sum + head + body + size * GAP;
  }, 0);
}

/** Drawn at 1:480 or smaller whatever the room; the page that is carried must be small enough too. */
function mayDrawGreen(card: CardHole, sheet: Sheet, extras: CardExtras): boolean {
  const { unitWidthMm: pageWidthMm, unitHeightMm: pageHeightMm } = sheet;
  const isSmall = mayCarryGreenPicture({ scale: LARGEST_GREEN_SCALE, pageWidthMm, pageHeightMm });
  return extras.hasGreens && card.greenDrawing !== null && isSmall;
}

/** The green in the lowest part of the box; false where it does not fit. */
function drawGreenPart(
  page: Page,
  card: CardHole,
  box: Box,
  height: number,
  wishes: DrawWishes,
  { cards }: Words,
): boolean {
  if (card.greenDrawing === null) return false;
  const noteHeight = 14 * wishes.print;
  const frame = { x: box.x, y: box.y + box.height - height, width: box.width, height: height - noteHeight };
  const drawn = drawGreen(page, card.greenDrawing, frame, wishes);
  if (drawn === null) return false;
  const y = frame.y + frame.height + 4.4 * wishes.print;
  const used = drawScaleBar(page, frame.x + 2, y, drawn.scale, wishes);
  page
    .font('Helvetica')
    .fontSize(4.6 * wishes.print)
    .fillColor('#444444');
  page.text(printable(cards.playFromBelowMark), frame.x + used + 6, y - 1.8 * wishes.print, {
    lineBreak: false,
  });
  page.text(printable(cards.greenLimit), frame.x, y + 4 * wishes.print, {
    width: frame.width,
    height: 6 * wishes.print,
    lineBreak: false,
    ellipsis: true,
  });
  return true;
}

function drawBoxes(page: Page, { boxes }: CardHole, box: Box, print: number): void {
  const width = box.width / boxes.length;
  boxes.forEach((label, i) => {
    const x = box.x + i * width;
    page.rect(x, box.y, width, box.height).lineWidth(0.6).stroke(INK);
    page
      .font('Helvetica')
      .fontSize(5.4 * print)
      .fillColor('#444444');
    page.text(label, x + 2.5, box.y + 2.5, { lineBreak: false });
  });
}

/** Text in one line, made smaller until it fits. */
export function oneLine(
  page: Page,
  text: string,
  x: number,
  y: number,
  width: number,
  size: number,
  font: string,
): void {
  const words = printable(text);
  page.font(font);
  let fitted = size;
  while (fitted > size * 0.6 && page.fontSize(fitted).widthOfString(words) > width) fitted *= 0.96;
  page
    .fontSize(fitted)
    .fillColor(INK)
    .text(words, x, y, { lineBreak: false, width, height: fitted * 1.3, ellipsis: true });
}
