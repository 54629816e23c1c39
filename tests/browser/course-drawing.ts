/** Draws in the course room as a hand would, and counts what the hand does. */

import type { Page } from 'playwright-core';
import { settles } from './window.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * What a practised hand takes, seconds: a key of an average typist, pointing at a spot, pressing and letting go of a
 * button, making up one's mind before a step. Card, Moran & Newell 1980, "The keystroke-level model for user
 * performance time with interactive systems", Communications of the ACM 23(7), 396-410 (values from memory).
 */
const KEY_S = 0.28;
const POINT_S = 1.1;
const BUTTON_S = 0.2;
const MIND_S = 1.35;

/** Counts every click and every key, and the steps that a person thinks before. */
export class Hand {
  clicks = 0;
  keys = 0;
  steps = 0;

  constructor(readonly page: Page) {}

  /** Goes on counting on another page. */
  on(page: Page): Hand {
    return Object.assign(new Hand(page), { clicks: this.clicks, keys: this.keys, steps: this.steps });
  }

  /** How long all of it takes a person. */
  seconds(): number {
    return this.clicks * (POINT_S + BUTTON_S) + this.keys * KEY_S + this.steps * MIND_S;
  }

  /** Shares of the map's width and height, from its upper left corner. */
  async at({ x, y }: Spot): Promise<Spot> {
    const box = await this.page.locator('.drawing-map').boundingBox();
    if (box === null) throw new Error('no map on the screen');
    return { x: box.x + x * box.width, y: box.y + y * box.height };
  }

  async click(spot: Spot): Promise<void> {
    const at = await this.at(spot);
    this.clicks++;
    await this.page.mouse.move(at.x, at.y);
    await this.page.mouse.click(at.x, at.y);
  }

  async drag(from: Spot, to: Spot, drop = true): Promise<void> {
    const start = await this.at(from);
    const end = await this.at(to);
    this.clicks++;
    await this.page.mouse.move(start.x, start.y);
    await this.page.mouse.down();
    await this.page.mouse.move(end.x, end.y, { steps: 8 });
    if (drop) await this.page.mouse.up();
  }

  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      this.keys++;
      await this.page.keyboard.press(key);
    }
  }

  async type(text: string): Promise<void> {
    this.steps++;
    this.keys += text.length;
    await this.page.keyboard.type(text);
  }

  async button(name: string | RegExp): Promise<void> {
    this.steps++;
    this.clicks++;
    await this.page.getByRole('button', { name, exact: typeof name === 'string' }).click();
  }

  /** Takes up a kind by its button, clicks its places and ends it with Enter where it takes more than one. */
  async draw(kind: string, places: readonly Spot[]): Promise<void> {
    this.steps++;
    this.clicks++;
    await this.page.locator('.kind-palette').getByRole('button', { name: kind, exact: true }).click();
    for (const place of places) await this.click(place);
    if (places.length > 1) await this.press('Enter');
  }
}

/** Corners of a ring round a place, shares of the map. */
export function ring(centre: Spot, across: number, along: number, corners: number): Spot[] {
  return Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return { x: centre.x + across * Math.sin(angle), y: centre.y - along * Math.cos(angle) };
  });
}

export async function openCourseRoom(page: Page): Promise<void> {
  await page.locator('.room-switch').getByRole('button', { name: 'Course', exact: true }).click();
  await page.locator('.drawing-map').waitFor();
}

/** Resolves when the course that is open may be drawn on. */
export async function mapEdited(page: Page): Promise<void> {
  await page.locator('.kind-button:enabled', { hasText: 'Bunker' }).waitFor();
}

/** What undo would take back, as its button says. */
export async function undoTitle(page: Page): Promise<string> {
  return (await page.locator('.top-bar .button-pair button').first().getAttribute('title')) ?? '';
}

/** Opens the room, begins a course by its name and place (which may be empty), and waits for the empty map. */
export async function beginCourse(hand: Hand, name: string, place: string): Promise<void> {
  const { page } = hand;
  await openCourseRoom(page);
  hand.clicks += 2;
  await showPanel(page, 'course');
  await page.getByText('Begin another course').click();
  hand.clicks++;
  await page.getByLabel('Name of the course').click();
  await hand.type(name);
  await hand.press('Tab');
  await hand.type(place);
  await hand.press('Enter');
  await settles(
    () => page.locator('.file-picker select').first().textContent(),
    (text) => text?.includes(name) === true,
  );
}

/** Resolves when the disk has all that is drawn. */
export async function savedByItself(page: Page): Promise<void> {
  await page.locator('[data-save="saved"]').waitFor({ timeout: 20_000 });
}

export async function showPanel(page: Page, panel: 'chosen' | 'hole' | 'checks' | 'course'): Promise<void> {
  await page.locator(`input[name="drawing-panel"][value="${panel}"]`).check();
}
