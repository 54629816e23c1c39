/**
 * `npx tsx electron/packaging/make-icons.ts`: draws `renderer/icon.svg` in the sizes that installers want, with the
 * Chromium of the browser tests (`CHROMIUM` names another), and joins them to one file for Windows and one for macOS.
 */

import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { icnsOf, icoOf } from './icon-files.ts';
import { ICON_SIZES } from './plan.ts';

const SOURCE = join(import.meta.dirname, '..', '..', 'renderer', 'icon.svg');
const FOLDER = join(import.meta.dirname, 'icons');

const svg = readFileSync(SOURCE, 'utf8');
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
const page = await browser.newPage({ viewport: { width: 1024, height: 1024 } });
const pictures = new Map<number, Buffer>();
for (const size of ICON_SIZES) {
  await page.setContent(
    `<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`,
  );
  const clip = { x: 0, y: 0, width: size, height: size };
  pictures.set(size, await page.screenshot({ clip, omitBackground: true }));
}
await browser.close();

mkdirSync(FOLDER, { recursive: true });
for (const [size, png] of pictures) writeFileSync(join(FOLDER, `${size}x${size}.png`), png);
writeFileSync(join(FOLDER, 'icon.ico'), icoOf(pictures));
writeFileSync(join(FOLDER, 'icon.icns'), icnsOf(pictures));
// Says which drawing they were made from, so that a check can tell when they are out of date.
writeFileSync(join(FOLDER, 'drawn-from.txt'), `${createHash('sha256').update(svg).digest('hex')}\n`);
