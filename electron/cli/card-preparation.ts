/** The preparation sheet on paper: plain headed lists, over as many pages as it needs. */

import type { PreparationSheet } from '../../core/card/preparation.ts';
import type { Page } from './card-drawing.ts';
import { POINT_PER_MM, printable, type Sheet } from './card-paper.ts';

const INK = '#1a1a1a';

export function drawPreparation(
  page: Page,
  prepared: PreparationSheet,
  title: string,
  sheet: Sheet,
  addPage: () => void,
): void {
  const margin = (sheet.paper === 'a6' ? 6 : 14) * POINT_PER_MM;
  const width = sheet.widthMm * POINT_PER_MM - 2 * margin;
  const foot = sheet.heightMm * POINT_PER_MM - margin;
  const size = (sheet.paper === 'a6' ? 7 : 9.6) * (sheet.style === 'large-print' ? 1.55 : 1);
  let y = margin;
  const put = (text: string, font: string, scale: number, before: number, indent = 0): void => {
    const words = printable(text);
    page.font(font).fontSize(size * scale);
    const height = page.heightOfString(words, { width: width - indent });
    if (y + before + height > foot) {
      addPage();
      y = margin;
    } else y += before;
    page
      .font(font)
      .fontSize(size * scale)
      .fillColor(INK)
      .text(words, margin + indent, y, { width: width - indent });
    y += height;
  };
  const heading = (text: string): void => {
    // A heading at the very foot would stand alone.
    if (y + size * 5 > foot) {
      addPage();
      y = margin;
    }
    put(text, 'Helvetica-Bold', 1.12, y === margin ? 0 : size * 0.8);
  };
  const item = (text: string): void => put(`• ${text}`, 'Helvetica', 1, size * 0.16, size * 0.6);

  put(title, 'Helvetica-Bold', 1.5, 0);
  put(`Tee-off ${prepared.teeOff}, expected finish ${prepared.finish}`, 'Helvetica', 1.1, size * 0.2);
  heading('When');
  for (const { clock, words } of prepared.timetable) item(`${clock}  ${words}`);
  heading('Food and water');
  const { food } = prepared;
  item(food.waterWords);
  for (const { hole, clock, food: what } of food.stops) item(`${clock}, before hole ${hole}: ${what}`);
  item(food.allergies.length === 0 ? 'Allergies: none entered' : `Allergies: ${food.allergies.join(', ')}`);
  for (const warning of food.warnings) item(`Check: ${warning}`);
  heading('In the bag');
  if (prepared.bagWarning !== null) item(prepared.bagWarning);
  for (const thing of prepared.bag) item(`[  ] ${thing}`);
  heading('Gentle warm-up, ten minutes');
  for (const { minutes, words } of prepared.warmUp) item(`${minutes} min  ${words}`);
  heading('On the practice green');
  prepared.greenRoutine.forEach((words, i) => item(`${i + 1}.  ${words}`));
  item('Rolled up ______  down ______  green speed today ______');
  if (prepared.lastLook.length > 0) {
    heading('Last look');
    for (const { hole, words } of prepared.lastLook) item(`${hole}: ${words}`);
  }
  heading('Take care');
  for (const words of prepared.cautions) item(words);
}
