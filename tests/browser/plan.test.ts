/** Planning a hole: choosing options, dragging, keys, undo, comparing, the surface. */

import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import {
  dragMarker,
  expectedStrokes,
  markerOf,
  markerPlace,
  openSmallWindow,
  planReady,
  settles,
  startBrowser,
  type TestWindow,
} from './window.ts';

describe('a hole worked out', () => {
  let browser: Browser;
  let window: TestWindow;

  const open = async (): Promise<void> => {
    window = await openSmallWindow(browser);
    await planReady(window.page);
  };
  beforeAll(async () => {
    browser = await startBrowser();
    await open();
  });
  afterAll(async () => {
    await window.close();
    await browser.close();
  });

  // Opening and planning take longer than most of the tests: they share a window, and each leaves it as it was found.
  beforeEach(async () => {
    const { page } = window;
    // Its name tells when nothing is left.
    while ((await undo().count()) > 0) await undo().click();
    await planReady(page);
    await page.locator('.option-name').first().click();
  });
  afterEach(async ({ task }) => {
    expect(window.complaints).toEqual([]);
    if (task.result?.state !== 'fail') return;
    await window.close();
    await open();
  });

  const undo = () => window.page.getByRole('button', { name: /^Undo/ });

  it('marks one option as recommended and paints the one that is chosen', async () => {
    const { page } = window;
    expect(await page.locator('.tag-best').count()).toBe(1);
    const second = page.locator('.option').nth(1);
    const club = await second.locator('.option-name').textContent();
    await second.click();
    await page.locator('.option.painted').waitFor();
    expect(await page.locator('.option.painted .option-name').textContent()).toBe(club);
    expect(await page.locator('.shot-detail h3').textContent()).toContain(club);
    await settles(
      () => markerOf(page, 'aim').getAttribute('aria-label'),
      (label) => label?.includes(club?.trim() ?? '?') === true,
    );
  });

  it('chooses an option by keyboard', async () => {
    const { page } = window;
    await page.locator('.option-name').first().focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    expect(await page.locator('.option-name').nth(1).getAttribute('aria-pressed')).toBe('true');
  });

  it('follows the ball while it is dragged, refines at rest, and undoes the drag as one step', async () => {
    const { page } = window;
    const before = await expectedStrokes(page);
    const odds = await page.locator('.advice-card .odds-numbers').textContent();
    await dragMarker(page, 'ball', 0, -260, false);
    await settles(
      () => expectedStrokes(page),
      (strokes) => strokes < before - 0.1,
    );
    expect(await page.locator('.options.rough').count()).toBe(1);
    await page.mouse.up();
    await planReady(page);
    expect(await page.locator('.advice-card .odds-numbers').textContent()).not.toBe(odds);
    expect(await undo().getAttribute('title')).toBe('Undo: move the ball on hole 1 (Ctrl+Z)');
    await page.keyboard.press('Control+z');
    await settles(
      () => expectedStrokes(page),
      (strokes) => strokes === before,
    );
    await page.keyboard.press('Control+Shift+z');
    await settles(
      () => expectedStrokes(page),
      (strokes) => strokes < before - 0.1,
    );
    await page.getByRole('button', { name: 'Back to the tee' }).click();
    await settles(
      () => expectedStrokes(page),
      (strokes) => strokes === before,
    );
  });

  it('moves the ball by arrow keys: one metre, five with Shift', async () => {
    const { page } = window;
    await page.getByRole('radio', { name: 'Metres' }).check();
    await page.locator('.kicker', { hasText: 'm from the hole' }).waitFor();
    const distance = async (): Promise<number> =>
      Number(/(\d+)\u202fm from/.exec((await page.locator('.kicker').textContent()) ?? '')?.[1]);
    const start = await settles(distance, (metres) => metres > 0);
    await markerOf(page, 'ball').focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowUp');
    await settles(distance, (metres) => metres === start - 5);
    for (let i = 0; i < 3; i++) await page.keyboard.press('Shift+ArrowUp');
    await settles(distance, (metres) => metres === start - 20);
    expect(await undo().isEnabled()).toBe(true);
    await page.getByRole('radio', { name: 'Yards' }).check();
  });

  it('gives a dragged aim a row of its own, told against the best', async () => {
    const { page } = window;
    await dragMarker(page, 'aim', 45, 10);
    const own = page.locator('[data-option="own-aim"]');
    await own.waitFor();
    await settles(
      () => own.locator('.loss').textContent(),
      (loss) => /^[+−]?\d/.test(loss ?? ''),
    );
    expect(await own.getAttribute('class')).toContain('painted');
    await undo().click();
    await own.waitFor({ state: 'detached' });
    expect(await page.locator('.option.painted .tag-best').count()).toBe(1);
  });

  it('tries any club of the bag', async () => {
    const { page } = window;
    const clubs = page.getByLabel('Try a shot of your own');
    await clubs.selectOption({ index: 2 });
    await page.locator('[data-option="own-aim"]').waitFor();
    await page.getByRole('button', { name: 'Drop it' }).click();
    await page.locator('[data-option="own-aim"]').waitFor({ state: 'detached' });
  });

  it('compares two options: the difference with its error, and whether it is too close to call', async () => {
    const { page } = window;
    await page.locator('.side-A').first().click();
    expect(await page.locator('.comparison').textContent()).toContain('Now choose B');
    await page.locator('.side-B').last().click();
    await settles(
      () => page.locator('.verdict').textContent(),
      (verdict) => /\d\.\d\d ± [\d.]+ strokes/.test(verdict ?? ''),
    );
    expect(await page.locator('.verdict').textContent()).toMatch(/saves|Too close to call/);
    expect(await page.locator('.option.as-a').count()).toBe(1);
    expect(await page.locator('.option.as-b').count()).toBe(1);
    await page.getByRole('button', { name: 'End comparing' }).click();
    await page.locator('.comparison').waitFor({ state: 'detached' });
  });

  it('paints the strokes surface with its key, and takes it away', async () => {
    const { page } = window;
    /** Colour of the map's second canvas in its middle: [r, g, b, alpha]. */
    const colour = () =>
      page
        .locator('.map-canvas')
        .nth(1)
        .evaluate((canvas) => {
          const { width, height } = canvas as HTMLCanvasElement;
          const context = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
          context?.drawImage(canvas as HTMLCanvasElement, -width / 2, -height / 2);
          return [...(context?.getImageData(0, 0, 1, 1).data ?? [])];
        });
    expect((await colour())[3]).toBe(0);
    await page.getByLabel('Strokes surface').check();
    await settles(colour, (rgba) => (rgba[3] ?? 0) > 150);
    expect(await page.locator('.surface-key').textContent()).toContain('Strokes to hole out from each place');
    await page.getByLabel('Strokes surface').uncheck();
    await settles(colour, (rgba) => rgba[3] === 0);
  });

  it('goes through the holes by arrow keys', async () => {
    const { page } = window;
    await page.locator('[data-hole="1"]').focus();
    await page.keyboard.press('ArrowDown');
    await settles(
      () => page.locator('.big-number').textContent(),
      (number) => number === '2',
    );
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-hole'))).toBe('2');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await page.locator('.course-table').waitFor();
    await page.keyboard.press('ArrowDown');
  });

  it('works the hole out again where its position is moved, and keeps it on the green', async () => {
    const { page } = window;
    const before = await expectedStrokes(page);
    await dragMarker(page, 'pin', 0, -22, false);
    await settles(
      () => expectedStrokes(page),
      (strokes) => strokes !== before,
    );
    await page.mouse.up();
    await planReady(page);
    expect(
      await page
        .getByLabel('Hole position', { exact: true })
        .evaluate((select) => (select as HTMLSelectElement).selectedOptions[0]?.text),
    ).toBe('where you put it');
    const put = await markerPlace(page, 'pin');
    await dragMarker(page, 'pin', 0, -120);
    const kept = await markerPlace(page, 'pin');
    // The green ends 14 m or so from its middle; 120 pixels are farther than that.
    expect(put.y - kept.y).toBeLessThan(60);
    await page.getByLabel('Hole position', { exact: true }).selectOption('back');
    await planReady(page);
    expect(await undo().getAttribute('title')).toContain('hole position back');
  });

  it('says that numbers are rough where the work was stopped, and goes on when asked', async () => {
    const { page } = window;
    await page.getByText('All 2 holes are worked out').waitFor();
    await dragMarker(page, 'pin', 0, -22);
    await page.locator('.work-line').getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped: these numbers are rough.').waitFor();
    await page.locator('.work-line').getByRole('button', { name: 'Go on' }).click();
    await planReady(page);
  });

  it('plays from another tee', async () => {
    const { page } = window;
    const before = await page.locator('.kicker').textContent();
    await page.getByLabel('Tee', { exact: true }).selectOption('Ash');
    await planReady(page);
    await settles(
      () => page.locator('.kicker').textContent(),
      (kicker) => kicker !== before,
    );
  });

  it('mends itself: a map that the graphics card has lost, a calculation that broke, told and with the same numbers', async () => {
    const { page } = window;
    const ground = page.locator('.map-canvas').first();
    const isEmpty = (): Promise<boolean> =>
      ground.evaluate((element) => {
        const { width, height } = element as HTMLCanvasElement;
        const context = new OffscreenCanvas(1, 1).getContext('2d');
        context?.drawImage(element as HTMLCanvasElement, -width / 2, -height / 2);
        return context?.getImageData(0, 0, 1, 1).data[3] === 0;
      });
    expect(await isEmpty()).toBe(false);
    await ground.evaluate((element) => {
      const canvas = element as HTMLCanvasElement;
      canvas.getContext('2d')?.clearRect(-1e5, -1e5, 2e5, 2e5);
      canvas.dispatchEvent(new Event('contextrestored'));
    });
    await settles(isEmpty, (empty) => !empty);

    const errors = () => page.locator('.option .error').allTextContents();
    const before = await errors();
    for (const worker of page.workers().filter((one) => one.url().includes('planner-worker'))) {
      await worker.evaluate(() => {
        setTimeout(() => {
          throw new Error('planted');
        });
      });
    }
    await page.getByText('It was begun anew by itself').first().waitFor();
    await planReady(page);
    await settles(errors, (now) => now.join() === before.join());
  });

  it('tells seed and convergence, and gives other numbers from another seed', async () => {
    const { page } = window;
    await page.getByText('About these numbers').click();
    const about = page.locator('.about-numbers');
    expect(await about.textContent()).toMatch(/root mean square/);
    const before = await page.locator('.option .error').allTextContents();
    await page.getByLabel('Seed').fill('evening dew');
    await page.getByRole('button', { name: 'Work out again' }).click();
    await planReady(page);
    await settles(
      () => page.locator('.option .error').allTextContents(),
      (errors) => errors.join() !== before.join(),
    );
  });

  it('plans for the day: told with the advice and on the map, undone by name, there again after loading anew', async () => {
    const { page } = window;
    const strokes = () => expectedStrokes(page);
    const told = page.locator('.advice-day');
    const still = await strokes();
    expect(await told.count()).toBe(0);
    await page.getByRole('button', { name: /^Day/ }).click();
    await page.getByLabel('Wind', { exact: true }).fill('18');
    await page.keyboard.press('Enter');
    const into = await settles(strokes, (now) => now > still + 0.05);
    await settles(
      () => told.textContent(),
      (words) => words === 'For this day: Wind 18 mph from the north',
    );
    expect(await page.locator('.wind-sign').getAttribute('aria-label')).toMatch(/; on this hole into$/);
    // Half a turn of the dial by its keys, each of them a step.
    await page.getByRole('slider', { name: 'Wind comes from' }).focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('PageUp');
    await settles(strokes, (now) => now < into - 0.1);
    await settles(
      () => told.textContent(),
      (words) => words?.endsWith('from the south') === true,
    );
    await page.keyboard.press('Control+z');
    await settles(
      () => undo().getAttribute('title'),
      (title) => title === 'Undo: wind from the south-east (Ctrl+Z)',
    );
    await settles(
      async () => JSON.stringify(await window.settings.read()),
      (text) => text.includes('fromDeg\\":135'),
    );
    await page.reload();
    await told.waitFor();
    expect(await told.textContent()).toBe('For this day: Wind 18 mph from the south-east');
    expect(await page.locator('.wind-sign').getAttribute('aria-label')).toMatch(/behind, from the right$/);
    await page.getByRole('button', { name: /^Day/ }).click();
    await page.getByRole('button', { name: 'Back to an ordinary day' }).click();
    await told.waitFor({ state: 'detached' });
    expect(await undo().getAttribute('title')).toBe('Undo: back to an ordinary day (Ctrl+Z)');
  });
});
