/** What goes into a package and what it is told, without packing anything. */

import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { cp, mkdir, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { icnsOf, icoOf } from '../../../electron/packaging/icon-files.ts';
import {
  DEMO_FILES,
  ICON_SIZES,
  LICENCES_FILE,
  LOADED_PACKAGE,
  LOADED_PARTS,
  packagingPlan,
  STAGE,
  STAGED_DEMO,
} from '../../../electron/packaging/plan.ts';
import { stageProgram } from '../../../electron/packaging/stage.ts';
import { programPlaces } from '../../../electron/pages/places.ts';
import { temporaryFolder } from '../files/workspace.ts';
import { ROOT, sourcesIn } from '../hardening/sources.ts';

const ICONS = join(ROOT, 'electron', 'packaging', 'icons');

/** Width and height in a PNG's header (W3C PNG, third edition, 11.2.1 IHDR). */
function pngSize(png: Uint8Array): readonly [number, number] {
  const bytes = Buffer.from(png);
  expect(bytes.subarray(0, 8).toString('latin1')).toBe('\u0089PNG\r\n\u001a\n');
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

describe('the icons', () => {
  it('were drawn from the icon as it is now (make-icons.ts draws them anew)', () => {
    const now = createHash('sha256')
      .update(readFileSync(join(ROOT, 'renderer', 'icon.svg')))
      .digest('hex');
    expect(readFileSync(join(ICONS, 'drawn-from.txt'), 'utf8').trim()).toBe(now);
  });

  it('have their sizes', () => {
    for (const size of ICON_SIZES) {
      expect(pngSize(readFileSync(join(ICONS, `${size}x${size}.png`)))).toEqual([size, size]);
    }
  });

  it('for Windows and macOS hold the same pictures', () => {
    const pictures = new Map(
      ICON_SIZES.map((size) => [size, readFileSync(join(ICONS, `${size}x${size}.png`))]),
    );
    expect(readFileSync(join(ICONS, 'icon.ico')).equals(icoOf(pictures))).toBe(true);
    expect(readFileSync(join(ICONS, 'icon.icns')).equals(icnsOf(pictures))).toBe(true);
  });

  it('for Windows can be read by its table: type 1, sizes, places and lengths that fit the file', () => {
    const ico = readFileSync(join(ICONS, 'icon.ico'));
    expect([ico.readUInt16LE(0), ico.readUInt16LE(2)]).toEqual([0, 1]);
    const count = ico.readUInt16LE(4);
    const sizes = Array.from({ length: count }, (_, i) => {
      const at = 6 + 16 * i;
      const [length, offset] = [ico.readUInt32LE(at + 8), ico.readUInt32LE(at + 12)];
      const size = ico.readUInt8(at) || 256;
      expect(pngSize(ico.subarray(offset, offset + length))).toEqual([size, size]);
      return size;
    });
    expect(sizes).toEqual([16, 24, 32, 48, 64, 128, 256]);
  });

  it('for macOS can be walked from block to block to its end', () => {
    const icns = readFileSync(join(ICONS, 'icon.icns'));
    expect([icns.toString('latin1', 0, 4), icns.readUInt32BE(4)]).toEqual(['icns', icns.byteLength]);
    let at = 8;
    let blocks = 0;
    for (; at < icns.byteLength; blocks++) {
      const length = icns.readUInt32BE(at + 4);
      pngSize(icns.subarray(at + 8, at + length));
      at += length;
    }
    expect([at, blocks]).toEqual([icns.byteLength, 10]);
  });
});

describe('what is packed', () => {
  it('is the build with a short list of its own, and the demo beside it', async () => {
    const root = await temporaryFolder();
    for (const folder of ['dist/electron', 'dist/renderer/assets', 'maps', 'node_modules/x', 'tests'])
      await mkdir(join(root, folder), { recursive: true });
    await cp(join(ROOT, 'node_modules', LOADED_PACKAGE), join(root, 'node_modules', LOADED_PACKAGE), {
      recursive: true,
    });
    await writeFile(join(root, 'dist/electron/main.cjs'), '');
    await writeFile(join(root, 'dist/renderer/assets/a.js'), '');
    await writeFile(join(root, 'LICENSE'), '');
    for (const file of DEMO_FILES) await writeFile(join(root, 'maps', file), '');
    await writeFile(join(root, 'maps', 'another.geojson'), '');
    for (const file of ['package.json', 'package-lock.json']) await cp(join(ROOT, file), join(root, file));
    const version = stageProgram(root);
    const staged = readdirSync(join(root, STAGE), { recursive: true }).map((path) =>
      String(path).replaceAll('\\', '/'),
    );
    expect(staged.filter((path) => /\.\w+$/u.test(path) && !path.endsWith('@sqlite.org')).sort()).toEqual([
      LICENCES_FILE,
      'dist/electron/main.cjs',
      'dist/renderer/assets/a.js',
      ...LOADED_PARTS.map((part) => `node_modules/${LOADED_PACKAGE}/${part}`).sort(),
      'package.json',
    ]);
    expect(readdirSync(join(root, STAGED_DEMO)).sort()).toEqual([...DEMO_FILES].sort());
    const facts = JSON.parse(readFileSync(join(root, STAGE, 'package.json'), 'utf8')) as Record<
      string,
      unknown
    >;
    expect(facts).toMatchObject({ name: 'holewright', version, main: 'dist/electron/main.cjs' });
    for (const key of ['devDependencies', 'scripts']) expect(facts[key]).toBeUndefined();
    expect(Object.keys(facts['dependencies'] as object)).toEqual([LOADED_PACKAGE]);
    // What was put together is enough to load it.
    const finder = createRequire(join(root, STAGE, 'dist', 'electron', 'main.cjs'));
    const { default: start } = (await import(pathToFileURL(finder.resolve(LOADED_PACKAGE)).href)) as {
      default: () => Promise<{ version: { libVersion: string } }>;
    };
    expect((await start()).version.libVersion).toMatch(/^3\./u);
  });

  it('nothing else is looked for at run time', () => {
    const main = sourcesIn('electron').filter(({ path }) => /^electron\/(?:main|files|pages)\//u.test(path));
    const lookers = main.filter(({ code }) => /createRequire|require\.resolve|import\(/u.test(code));
    expect(lookers.map(({ path }) => path)).toEqual(['electron/files/sqlite-file.ts']);
  });

  it('demo files are there', () => {
    for (const file of DEMO_FILES) expect([file, existsSync(join(ROOT, 'maps', file))]).toEqual([file, true]);
  });

  it('a packed program finds its page inside the archive and the demo beside it', async () => {
    const root = await temporaryFolder();
    const archive = join(root, 'resources', 'app.asar');
    await mkdir(join(archive, 'dist', 'electron'), { recursive: true });
    await writeFile(join(archive, 'package.json'), '{}');
    const places = programPlaces(join(archive, 'dist', 'electron'));
    expect(places.page).toBe(join(archive, 'dist', 'renderer'));
    expect(places.demo).toBe(join(root, 'resources', packagingPlan.extraResources[0].to));
  });

  it('is published nowhere, and opens maps without taking them from other programs', () => {
    expect(packagingPlan.publish).toBeNull();
    expect(packagingPlan.fileAssociations.map(({ ext, rank }) => [ext, rank])).toEqual([
      ['geojson', 'Alternate'],
    ]);
    const endings: readonly string[] = packagingPlan.linux.fileAssociations.map(({ ext }) => ext);
    expect(endings).toEqual(['geojson', 'player.json', 'round.json']);
  });
});
