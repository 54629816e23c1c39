/** Shots in: a table of an unknown device, rows mended, duplicates noticed, the grid, and from a new player to a plan. */

import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { parsePlayerDocumentText } from '../../core/player/parse.ts';
import { inventTables } from '../player/csv/invent-devices.ts';
import { openSmallWindow, planReady, settles, startBrowser, type TestWindow } from './window.ts';

const tables = new Map(inventTables().map((table) => [table.file, table]));

function tableOf(file: string) {
  const table = tables.get(file);
  if (table === undefined) throw new Error(`no table ${file}`);
  return table;
}

async function choose(page: Page, name: string, text: string | Buffer): Promise<void> {
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  await page.getByRole('button', { name: 'Read the table' }).waitFor();
  await page.locator('.table-preview tbody tr').first().waitFor();
}

/** A new player of handicap 18 with the page of shots open; counts what the person does. */
async function newcomer(page: Page): Promise<number> {
  await page.getByRole('button', { name: 'Player', exact: true }).click();
  await page.getByRole('button', { name: 'New player' }).click();
  await page.getByLabel('Handicap').fill('18');
  await page.getByRole('button', { name: 'Make this player' }).click();
  await page.getByText('These are not your shots.').waitFor();
  await page.getByRole('button', { name: 'Shots', exact: true }).click();
  return 5;
}

/** Thousands without their thin space. */
const plain = (words: string | null): string => (words ?? '').replace(/(\d)\s(\d)/gu, '$1$2');

const shotsInFile = (page: Page) => page.locator('.kept-shots h2');

describe('shots in', () => {
  let browser: Browser;
  let window: TestWindow;

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(() => window.close());
  afterAll(() => browser.close());

  it('go from a 300-row file of an unknown device to a plan with intervals in ten steps', async () => {
    window = await openSmallWindow(browser);
    const { page, workspace } = window;
    let steps = await newcomer(page);
    const { file, text, shots } = tableOf('larkfield-range-box.csv');
    await choose(page, file, text);
    steps++;
    expect(await page.locator('.table-preview tbody th').first().textContent()).toMatch(
      /^Driver 210.yd, 16.yd right$/,
    );
    await page.getByRole('button', { name: 'Read the table' }).click();
    steps++;
    await page.getByRole('button', { name: `Add ${shots.length} shots`, exact: true }).click();
    steps++;
    await shotsInFile(page).waitFor();
    expect(await shotsInFile(page).textContent()).toBe('300 shots in the file');
    await settles(
      () => page.locator('.club-row', { hasText: '7-iron' }).textContent(),
      (words) => words?.includes('50 shots') === true,
    );
    expect(
      await page.locator('.club-row', { hasText: '7-iron' }).locator('.club-carry small').textContent(),
    ).toMatch(/^\d+–\d+$/);
    await page.keyboard.press('Control+s');
    steps++;
    await page.getByRole('button', { name: 'Saved', exact: true }).waitFor();
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    steps++;
    await planReady(page);
    expect(steps).toBe(10);
    expect(await page.locator('.advice-cost strong').textContent()).toMatch(/^\d\.\d\d$/);
    const read = parsePlayerDocumentText(await readFile(join(workspace, 'new-player.player.json'), 'utf8'));
    expect(read.ok && read.value.document.shots).toHaveLength(300);
    expect(read.ok && read.value.document.settings?.sources?.[0]?.name).toBe(file);
    expect(window.complaints).toEqual([]);
  });

  it('of four more devices, each its own way, and known the second time', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await newcomer(page);
    let count = 0;
    for (const { file, text, shots, bad } of inventTables().filter(
      (table) => table.file !== 'larkfield-range-box.csv',
    )) {
      await choose(page, file, text);
      await page.getByRole('button', { name: 'Read the table' }).click();
      await page.locator('.bag-tally').waitFor();
      expect(await page.locator('.bag-tally').textContent()).toContain(
        `${bad} ${bad === 1 ? 'row' : 'rows'} could not be read`,
      );
      await page.getByRole('button', { name: `Add ${shots.length} shots`, exact: true }).click();
      count += shots.length;
      await settles(
        () => shotsInFile(page).textContent(),
        (words) => plain(words) === `${count} shots in the file`,
      );
    }
    const { file, text, shots } = tableOf('ostertal-messkasten.csv');
    await choose(page, file, text);
    await page.getByText(`Read as “${file}” was`).waitFor();
    await page.getByRole('button', { name: 'Read the table' }).click();
    expect(await page.locator('.bag-tally').textContent()).toContain(`${shots.length} shots known already`);
    expect(await page.getByRole('button', { name: 'Add 0 shots' }).isDisabled()).toBe(true);
    await page.getByLabel('Add those as well').check();
    await page.getByRole('button', { name: `Add ${shots.length} shots`, exact: true }).click();
    await settles(
      () => shotsInFile(page).textContent(),
      (words) => plain(words) === `${count + shots.length} shots in the file`,
    );
    // One step of undo takes the whole table back.
    await page.getByRole('button', { name: /^Undo: add 300 shots/ }).click();
    await settles(
      () => shotsInFile(page).textContent(),
      (words) => plain(words) === `${count} shots in the file`,
    );
  });

  it('are mended where a row cannot be read, typed with keys alone, pasted from a spreadsheet', async () => {
    window = await openSmallWindow(browser);
    const { page } = window;
    await newcomer(page);
    const rows = ['stick;länge;quer', 'Lucky;100,5;2', 'Lucky;101,5;-3', 'Lucky;weit;1', 'Lucky;99;0'];
    await choose(page, 'home-made.csv', rows.join('\n'));
    await page.getByLabel('stick holds').selectOption('club');
    await page.getByLabel('länge holds').selectOption('carry');
    await page.getByLabel('quer holds').selectOption('offline');
    await page.getByLabel('Sign of quer').selectOption('left');
    await page.getByLabel('“Lucky” is').selectOption('9-iron');
    await settles(
      () => page.locator('.table-preview tbody th').first().textContent(),
      (words) => words === '9-iron 110\u202fyd, 2\u202fyd left',
    );
    await page.getByRole('button', { name: 'Read the table' }).click();
    await page.locator('.rejected-rows').waitFor();
    expect(await page.locator('.rejected-rows .cell-why').textContent()).toContain('“weit” is no number');
    await page.getByLabel('länge, line 4').fill('98,5');
    await page.getByRole('button', { name: 'Read the mended rows again' }).click();
    await page.getByRole('button', { name: 'Add 4 shots' }).click();
    await settles(
      () => shotsInFile(page).textContent(),
      (words) => words === '4 shots in the file',
    );

    // And by hand: keys alone, then rows from a spreadsheet.
    await page.getByLabel('Club, row 1').fill('7i');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('140');
    await page.keyboard.press('Enter');
    await page.keyboard.type('14x');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Tab');
    await page.keyboard.type('3R');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.type('-2');
    await page.getByLabel('Club, row 3').evaluate((cell) => {
      const clipboard = new DataTransfer();
      clipboard.setData('text/plain', 'Driver\t\t205\t10 L\r\nDriver\t\t198\t4 R\r\n');
      cell.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: clipboard, bubbles: true, cancelable: true }),
      );
    });
    await page.getByRole('button', { name: 'Add 4 shots', exact: true }).click();
    expect(await page.locator('.cell-grid .cell-why', { hasText: 'neither a unit nor a side' }).count()).toBe(
      1,
    );
    expect(await page.getByLabel('Carry, row 1').inputValue()).toBe('14x');
    expect(await shotsInFile(page).textContent()).toBe('7 shots in the file');
    await page.getByLabel('Carry, row 1').fill('143');
    await page.getByRole('button', { name: 'Add 1 shot', exact: true }).click();
    await settles(
      () => shotsInFile(page).textContent(),
      (words) => words === '8 shots in the file',
    );
    const kept = await page.locator('.kept-shots tbody tr').allTextContents();
    expect(kept[0]).toMatch(/7-ironfull143.yd2.yd left/);
    await page.getByLabel(/Mark the Driver of 205/).check();
    await page.getByRole('button', { name: 'Take out 1 shot' }).click();
    await settles(
      () => shotsInFile(page).textContent(),
      (words) => words === '7 shots in the file',
    );

    // A stored shot is changed in place, wind and all, and says what it counts as; one undo takes it back.
    await page.getByLabel(/^Change the 7-iron of 143/).click();
    const form = page.getByRole('form', { name: 'Change this shot' });
    await form.getByLabel('Carry, yd').fill('14x');
    await form.getByRole('button', { name: 'Change it' }).click();
    await form.getByText('neither a unit nor a side').waitFor();
    await form.getByLabel('Carry, yd').fill('133');
    await form.getByLabel('Wind', { exact: true }).fill('12');
    await form.getByLabel('Wind', { exact: true }).press('Tab');
    await form.getByLabel('Wind comes').selectOption({ label: 'from ahead' });
    await form.getByRole('button', { name: 'Change it' }).click();
    const changed = page.locator('.kept-shots tbody tr', { hasText: /133.yd/ });
    await settles(
      () => changed.locator('.counted').textContent(),
      (words) => /^14\d yd, .* in still air .* it was hit in 12 mph of wind from ahead\.$/.test(words ?? ''),
    );
    await page.getByRole('button', { name: /^Undo: change a shot of 7-iron/ }).click();
    await settles(
      () => page.locator('.kept-shots tbody tr', { hasText: /143.yd/ }).count(),
      (count) => count === 1,
    );
    await page.getByRole('button', { name: /^Redo/ }).click();
    await changed.waitFor();

    // And all of them come out again as a table.
    await page.getByRole('button', { name: 'Save as a table (CSV)' }).click();
    const said = await page.getByText(/^Saved as .*\.csv/).textContent();
    const name = /[^/\\ ]*shots[^/\\]*\.csv/.exec(said ?? '')![0];
    const places = await readdir(window.workspace, { recursive: true });
    const place = places.find((one) => one.endsWith(name))!;
    const csv = await readFile(join(window.workspace, place), 'utf8');
    expect(csv.split('\r\n')[0]).toMatch(/^Club,Swing,Carry \(yd\).*Wind \(m\/s\)/);
    expect(csv).toMatch(/7-iron,full,133,.*,5\.36,0,/);
    expect(csv.trim().split('\r\n')).toHaveLength(8);
    expect(window.complaints).toEqual([]);
  });
});
