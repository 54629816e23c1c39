/** The preparation sheet on paper: headed lists and the drawings of the warm-up, over as many pages as it needs. */

import { INK } from '../../core/card/inks.ts';
import type { PreparationSheet } from '../../core/card/preparation.ts';
import { WARM_UP_BOX, WARM_UP_FIGURES, type WarmUpFigure } from '../../core/card/warm-up-figures.ts';
import type { Page } from './card-drawing.ts';
import { POINT_PER_MM, printable, type Sheet } from './card-paper.ts';

export function drawPreparation(
  page: Page,
  prepared: PreparationSheet,
  title: string,
  sheet: Sheet,
  addPage: () => void,
): void {
  const list = new SheetOfLists(page, sheet, addPage);
  const { food } = prepared;
  const told = sheet.words.prepare.sheet;
  list.title(title, told.times(prepared));
  list.heading(told.when);
  for (const { clock, words } of prepared.timetable) list.entry(clock, words);
  list.heading(told.food);
  list.entry('•', food.waterWords);
  for (const { hole, clock, food: what } of food.stops) list.entry(clock, told.before({ hole, food: what }));
  list.entry('•', told.allergies({ list: food.allergies.join(', ') || told.noneEntered }));
  for (const warning of food.warnings) list.entry('!', told.check({ warning }));
  list.heading(told.bag);
  if (prepared.bagWarning !== null) list.entry('!', prepared.bagWarning);
  for (const thing of prepared.bag) list.entry('[  ]', thing);
  list.heading(told.warmUp);
  prepared.warmUp.forEach(({ minutes, words }, i) =>
    list.step(`${told.min({ minutes })}  ${words}`, WARM_UP_FIGURES[i]),
  );
  list.entry('•', prepared.cautions[0] ?? '');
  list.heading(told.green);
  prepared.greenRoutine.forEach((words, i) => list.entry(`${i + 1}.`, words));
  list.entry('•', told.rolled.replaceAll('_ ', '_  '));
  if (prepared.lastLook.length > 0) {
    list.heading(told.lastLook);
    for (const { hole, words } of prepared.lastLook)
      list.entry(`${hole}`, words === '' ? told.lookBefore : words);
  }
  list.heading(told.care);
  for (const words of prepared.cautions) list.entry('•', words);
}

/** Puts lines below each other and begins a new page where the next would not fit. Points. */
class SheetOfLists {
  private readonly margin: number;
  private readonly width: number;
  private readonly foot: number;
  private readonly size: number;
  private y: number;

  constructor(
    private readonly page: Page,
    sheet: Sheet,
    private readonly addPage: () => void,
  ) {
    const isPocket = sheet.paper === 'a6';
    this.margin = (isPocket ? 6 : 14) * POINT_PER_MM;
    this.width = sheet.widthMm * POINT_PER_MM - 2 * this.margin;
    this.foot = sheet.heightMm * POINT_PER_MM - this.margin;
    this.size = (isPocket ? 7 : 9.6) * (sheet.style === 'large-print' ? 1.55 : 1);
    this.y = this.margin;
  }

  title(title: string, below: string): void {
    this.put(title, 'Helvetica-Bold', 1.5, 0);
    this.put(below, 'Helvetica', 1.1, this.size * 0.2);
  }

  heading(text: string): void {
    // A heading at the very foot would stand alone.
    if (this.y + this.size * 5 > this.foot) this.turn();
    this.put(text, 'Helvetica-Bold', 1.12, this.y === this.margin ? 0 : this.size * 0.8);
  }

  /** A mark such as a clock time, and words that keep clear of it in every line. */
  entry(mark: string, words: string): void {
    const bold = this.page.font('Helvetica-Bold').fontSize(this.size);
    const indent = Math.max(this.size * 1.75, bold.widthOfString(`${mark}  `));
    const text = printable(words);
    const height = this.heightOf(text, indent);
    this.makeRoom(height, this.size * 0.16);
    this.page.font('Helvetica-Bold').text(mark, this.margin, this.y, { lineBreak: false });
    this.write(text, indent);
    this.y += height;
  }

  step(words: string, figure: WarmUpFigure | undefined): void {
    const tall = 3 * this.size;
    const scale = tall / WARM_UP_BOX.height;
    const indent = WARM_UP_BOX.width * scale + this.size * 0.7;
    const text = printable(words);
    const height = this.heightOf(text, indent);
    this.makeRoom(Math.max(height, tall), this.size * 0.2);
    if (figure !== undefined) drawFigure(this.page, figure, this.margin, this.y, scale);
    const top = this.y;
    this.y += Math.max(0, (tall - height) / 2);
    this.write(text, indent);
    this.y = top + Math.max(height, tall);
  }

  private put(text: string, font: string, scale: number, before: number): void {
    const words = printable(text);
    this.page.font(font).fontSize(this.size * scale);
    const height = this.page.heightOfString(words, { width: this.width });
    this.makeRoom(height, before);
    this.page.font(font).fontSize(this.size * scale);
    this.page.fillColor(INK).text(words, this.margin, this.y, { width: this.width });
    this.y += height;
  }

  private heightOf(text: string, indent: number): number {
    this.page.font('Helvetica').fontSize(this.size);
    return this.page.heightOfString(text, { width: this.width - indent });
  }

  private write(text: string, indent: number): void {
    this.page.font('Helvetica').fontSize(this.size).fillColor(INK);
    this.page.text(text, this.margin + indent, this.y, { width: this.width - indent });
  }

  private makeRoom(height: number, before: number): void {
    if (this.y + before + height > this.foot) this.turn();
    else this.y += before;
    this.page.fillColor(INK);
  }

  private turn(): void {
    this.addPage();
    this.y = this.margin;
  }
}

function drawFigure(
  page: Page,
  { head, limbs, club, moves }: WarmUpFigure,
  x: number,
  y: number,
  scale: number,
): void {
  page.save();
  page.translate(x, y).scale(scale).lineCap('round').lineJoin('round');
  page.circle(head[0], head[1], WARM_UP_BOX.headRadius).lineWidth(1.6).stroke(INK);
  page.path(limbs).lineWidth(1.6).stroke(INK);
  if (club !== undefined) page.path(club).lineWidth(1).stroke('#444444');
  page.path(moves).lineWidth(1).dash(2, { space: 1.4 }).stroke('#6b6b6b').undash();
  page.restore();
}
