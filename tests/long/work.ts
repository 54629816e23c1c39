/** One round of work in the window: every room, drawing and undo, another course, another hole, the page as printed. */

import type { Browser, Page } from 'playwright-core';
import { Hand, mapEdited, openCourseRoom, ring, savedByItself } from '../browser/course-drawing.ts';
import { dragMarker, openSmallWindow, planReady, type TestWindow } from '../browser/window.ts';
import { smallCourseText } from '../renderer/small-course.ts';

export function openWork(browser: Browser): Promise<TestWindow> {
  return openSmallWindow(browser, { files: { 'other.geojson': smallCourseText() } });
}

export async function work(page: Page, round: number): Promise<void> {
  const room = (name: string): Promise<void> =>
    page.locator('.room-switch').getByRole('button', { name, exact: true }).click();

  await room('Plan');
  const course = round % 2 === 0 ? 'small.geojson' : 'other.geojson';
  await page.getByLabel('Course', { exact: true }).first().selectOption({ label: course });
  await page.locator('[data-hole="1"]').click();
  await planReady(page);
  await dragMarker(page, 'ball', 12, -40);
  await planReady(page);
  await page.locator('.side-A').first().click();
  await page.locator('.side-B').last().click();
  await page.locator('.verdict').waitFor();
  await page.getByRole('button', { name: 'End comparing' }).click();
  await page.getByLabel('Strokes surface').check();
  await page.locator('.surface-key svg').waitFor();
  await page.getByLabel('Strokes surface').uncheck();
  await page.keyboard.press('Control+z');
  await page.locator('[data-hole="2"]').click();
  await planReady(page);
  await page.locator('[data-hole="all"]').click();
  await page.locator('.course-table').waitFor();
  await page.getByRole('button', { name: 'Help' }).click();
  await page.getByRole('button', { name: 'Close help' }).click();

  await openCourseRoom(page);
  await mapEdited(page);
  const hand = new Hand(page);
  await hand.draw('Bunker', ring({ x: 0.3 + 0.02 * (round % 10), y: 0.4 }, 0.03, 0.04, 6));
  await hand.press('Escape');
  await savedByItself(page);
  await page.keyboard.press('Control+z');
  await savedByItself(page);

  await room('Player');
  await page.locator('.estimates').waitFor();
  await room('Round');
  for (const name of ['Target', 'Cards']) {
    await page.getByRole('navigation', { name: 'Pages of the round' }).getByText(name).click();
  }
  await page.emulateMedia({ media: 'print' });
  await page.emulateMedia({ media: 'screen' });
}
