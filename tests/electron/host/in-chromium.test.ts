/** The page's client in a real browser: content policy and foreign addresses, uploads, ranges, closed windows. */

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { readdir, truncate, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:https';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { build } from 'vite';
import type { Host, HostAnswer, TileSource } from '../../../electron/contract/host.ts';
import { firstSettings, settingsStore } from '../../../electron/files/settings.ts';
import { type Loopback, startLoopback } from '../../../electron/loopback/server.ts';
import type { Assets } from '../../../electron/pages/assets.ts';
import { valueOf } from '../files/answers.ts';
import { courseText, storeIn, temporaryFolder } from '../files/workspace.ts';
import { CHROMIUM } from '../../browser/window.ts';

const isThere = existsSync(CHROMIUM.executablePath);
if (!isThere) console.warn(`the client in a browser: skipped, there is no ${CHROMIUM.executablePath}`);

declare global {
  interface Window {
    host: Host;
    /** Addresses that the content policy refused. */
    refusals: string[];
  }
}

const OWN = 'https://tiles.meadow.example';
const source: TileSource = {
  name: 'Meadow maps',
  address: `${OWN}/{z}/{x}/{y}.png`,
  attribution: 'invented',
  termsAcceptedOn: '2026-01-31',
};
// A PNG of one pixel.
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

let browser: Browser;
let assets: Assets;
let tiles: Server;
/** What reached the tile server: `host path`, and whether it said who asks. */
const reached: { readonly address: string; readonly names: readonly string[] }[] = [];

/** The client as one script, and a page that puts it on its window. */
async function pageOfClient(): Promise<Assets> {
  const entry = 'virtual:client';
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    plugins: [
      {
        name: 'client',
        resolveId: (id) => (id === entry ? `\0${entry}` : null),
        load: (id) =>
          id === `\0${entry}`
            ? `import { connectHost } from ${JSON.stringify(join(import.meta.dirname, '../../../renderer/host/connect.ts'))};
               window.refusals = [];
               document.addEventListener('securitypolicyviolation', (event) => window.refusals.push(event.blockedURI));
               connectHost().then((host) => { window.host = host; });`
            : null,
      },
    ],
    build: { write: false, rolldownOptions: { input: entry, output: { format: 'es' } } },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (!('output' in output)) throw new Error('the client was not built');
  const code = output.output[0].code;
  const html =
    '<!doctype html><title>client</title><link rel="icon" href="data:,"><script type="module" src="client.js"></script>';
  return new Map([
    ['index.html', { body: Buffer.from(html), type: 'text/html; charset=utf-8' }],
    ['client.js', { body: Buffer.from(code), type: 'text/javascript; charset=utf-8' }],
  ]);
}

/** A key and a certificate that nobody knows, made for this run. */
async function certificate(): Promise<{ key: Buffer; cert: Buffer }> {
  const folder = await temporaryFolder();
  const [key, cert] = [join(folder, 'key.pem'), join(folder, 'cert.pem')];
  execFileSync(
    'openssl',
    [
      'req',
      '-x509',
      '-newkey',
      'ec',
      '-pkeyopt',
      'ec_paramgen_curve:prime256v1',
      '-nodes',
      '-days',
      '2',
      '-subj',
      '/CN=tiles.meadow.example',
      '-keyout',
      key,
      '-out',
      cert,
    ],
    { stdio: 'pipe' },
  );
  return { key: readFileSync(key), cert: readFileSync(cert) };
}

beforeAll(async () => {
  if (!isThere) return;
  assets = await pageOfClient();
  tiles = createServer(await certificate(), (request, response) => {
    reached.push({
      address: `https://${request.headers.host ?? ''}${request.url ?? ''}`,
      names: Object.keys(request.headers),
    });
    response.writeHead(200, {
      'content-type': 'image/png',
      // Data may be read where the server says so; pictures are shown all the same.
      ...(request.url?.includes('readable') === true ? { 'access-control-allow-origin': '*' } : {}),
    });
    response.end(PIXEL);
  });
  await new Promise<void>((resolve) => tiles.listen(0, '127.0.0.1', resolve));
  const { port } = tiles.address() as AddressInfo;
  browser = await chromium.launch({
    ...CHROMIUM,
    args: [
      ...CHROMIUM.args,
      '--ignore-certificate-errors',
      `--host-resolver-rules=MAP *.example 127.0.0.1:${port}`,
    ],
  });
}, 120_000);

afterAll(async () => {
  if (!isThere) return;
  await browser.close();
  await new Promise((resolve) => tiles.close(resolve));
});

interface Opened {
  readonly page: Page;
  readonly server: Loopback;
  readonly workspace: string;
  readonly write: (sources: readonly TileSource[]) => Promise<void>;
  readonly another: () => Promise<Page>;
  readonly close: () => Promise<void>;
}

async function open(sources: readonly TileSource[] = []): Promise<Opened> {
  const workspace = await temporaryFolder();
  await writeFile(join(workspace, 'a.geojson'), courseText(1));
  const settings = settingsStore(join(workspace, 'settings-folder'));
  const write = async (tileSources: readonly TileSource[]): Promise<void> => {
    valueOf(await settings.write({ ...firstSettings, tileSources }));
  };
  await write(sources);
  const server = await startLoopback({ store: await storeIn(workspace), settings, assets, version: 'test' });
  const context = await browser.newContext({ ignoreHTTPSErrors: true });
  const another = async (): Promise<Page> => {
    const page = await context.newPage();
    await page.goto(server.startAddress());
    await page.waitForFunction(() => 'host' in window);
    return page;
  };
  return {
    page: await another(),
    server,
    workspace,
    write,
    another,
    close: async () => {
      await context.close();
      await server.close();
    },
  };
}

/** Whether the page gets a picture from there. */
function showsPicture(page: Page, address: string): Promise<boolean> {
  return page.evaluate(
    (src) =>
      new Promise<boolean>((resolve) => {
        const picture = new Image();
        picture.addEventListener('load', () => resolve(picture.naturalWidth === 1));
        picture.addEventListener('error', () => resolve(false));
        picture.src = src;
      }),
    address,
  );
}

function canRead(page: Page, address: string): Promise<boolean> {
  return page.evaluate(
    (url) =>
      fetch(url).then(
        (response) => response.ok,
        () => false,
      ),
    address,
  );
}

/** Runs a call of the page's host inside the page. */
function ask<T>(page: Page, call: (host: Host) => Promise<HostAnswer<T>>): Promise<T> {
  return page
    .evaluate(`(${call.toString()})(window.host)`)
    .then((answer) => valueOf(answer as HostAnswer<T>));
}

describe.skipIf(!isThere)('foreign addresses in Chromium', () => {
  it('are all refused without tile sources, and none is asked', async () => {
    const { page, close } = await open([{ ...source, termsAcceptedOn: null }]);
    reached.length = 0;
    expect(await showsPicture(page, `${OWN}/1/2/3.png`)).toBe(false);
    expect(await canRead(page, `${OWN}/readable/1/2/3.png`)).toBe(false);
    expect(await page.evaluate(() => window.refusals.length)).toBe(2);
    expect(reached).toEqual([]);
    await close();
  });

  it('are those of the accepted sources after a reload, and no other', async () => {
    const { page, close, write } = await open();
    await write([source]);
    reached.length = 0;
    // Not before the page is loaded anew.
    expect(await showsPicture(page, `${OWN}/1/2/3.png`)).toBe(false);
    await page.reload();
    await page.waitForFunction(() => 'host' in window);
    // Nothing is asked by itself.
    expect(reached).toEqual([]);
    expect(await showsPicture(page, `${OWN}/1/2/3.png`)).toBe(true);
    expect(await canRead(page, `${OWN}/readable/1/2/3.png`)).toBe(true);
    expect(await page.evaluate(() => [window.refusals, window.crossOriginIsolated])).toEqual([[], true]);
    expect(reached.map(({ address }) => address)).toEqual([`${OWN}/1/2/3.png`, `${OWN}/readable/1/2/3.png`]);
    for (const { names } of reached) {
      expect(names).not.toContain('cookie');
      expect(names).not.toContain('referer');
    }

    reached.length = 0;
    for (const other of [
      'https://other.meadow.example/1/2/3.png',
      'https://meadow.example/1/2/3.png',
      'https://tiles.meadow.example:8443/1/2/3.png',
      'http://tiles.meadow.example/1/2/3.png',
      'https://tiles.meadow.example.evil.example/1/2/3.png',
    ]) {
      expect([other, await showsPicture(page, other), await canRead(page, other)]).toEqual([
        other,
        false,
        false,
      ]);
    }
    // Nor anything but pictures and data of the accepted one.
    const script = await page.evaluate(
      (src) =>
        new Promise<boolean>((resolve) => {
          const element = document.createElement('script');
          element.addEventListener('load', () => resolve(true));
          element.addEventListener('error', () => resolve(false));
          element.src = src;
          document.head.append(element);
        }),
      `${OWN}/1/2/3.js`,
    );
    expect(script).toBe(false);
    expect(reached).toEqual([]);

    await write([]);
    await page.reload();
    await page.waitForFunction(() => 'host' in window);
    expect(await showsPicture(page, `${OWN}/1/2/3.png`)).toBe(false);
    expect(reached).toEqual([]);
    await close();
  });
});

describe.skipIf(!isThere)('attachments in Chromium', () => {
  it('are picked, sent with progress, listed and read in parts', async () => {
    const { page, close, workspace } = await open();
    const content = Buffer.alloc(12_000_000, 5);
    content.write('\u0089PNG\r\n\u001a\n', 'latin1');
    const choosing = page.waitForEvent('filechooser');
    const attaching = page.evaluate(async () => {
      const [course] = await window.host.list().then((files) => (files.ok ? files.value : []));
      const told: number[] = [];
      const answer = await window.host.attach(course!.token, { progress: (done) => told.push(done) });
      const token = answer.ok ? answer.value.token : '';
      const part = await window.host.readAttachment(token, 11_999_990, 100);
      return { answer, told, part: part.ok ? [...new Uint8Array(part.value)] : part };
    });
    const path = join(await temporaryFolder(), 'aerial.png');
    await writeFile(path, content);
    await (await choosing).setFiles(path);
    const { answer, told, part } = await attaching;
    expect(valueOf(answer)).toMatchObject({ name: 'aerial.png', bytes: 12_000_000 });
    expect(told.at(-1)).toBe(12_000_000);
    expect(part).toEqual([5, 5, 5, 5, 5, 5, 5, 5, 5, 5]);
    expect(await readdir(join(workspace, 'a.files'))).toEqual(['aerial.png']);
    await close();
  });

  it('that are refused are answered with words, not as a broken connection', async () => {
    const { page, close, workspace } = await open();
    const choosing = page.waitForEvent('filechooser');
    const attaching = ask(page, async (host) => {
      const files = await host.list();
      const answer = await host.attach(files.ok ? files.value[0]!.token : '');
      return { ok: true, value: answer };
    });
    // More than connections hold on their way: most of it has not come when the answer is known.
    const path = join(await temporaryFolder(), 'a.png');
    await writeFile(path, '');
    await truncate(path, 200_000_000);
    await (await choosing).setFiles(path);
    expect(await attaching).toMatchObject({ ok: false, failure: 'unfit' });
    expect((await readdir(workspace)).sort()).toEqual(['a.geojson', 'settings-folder']);
    await close();
  });
});

describe.skipIf(!isThere)('claims in Chromium', () => {
  const claim = (page: Page) =>
    ask(page, async (host) => {
      const files = await host.list();
      return host.claim(files.ok ? files.value[0]!.token : '');
    });
  const soonHeld = async (page: Page, tries: number): Promise<number> => {
    for (let count = 1; count <= tries; count++) {
      if ((await claim(page)).isHeld) return count;
      await page.waitForTimeout(250);
    }
    return Infinity;
  };

  it('are let go of at once when the tab is closed or loaded anew', async () => {
    const { page, another, close } = await open();
    const second = await another();
    expect((await claim(page)).isHeld).toBe(true);
    expect((await claim(second)).isHeld).toBe(false);
    await page.reload();
    await page.waitForFunction(() => 'host' in window);
    expect(await soonHeld(second, 4)).toBeLessThanOrEqual(4);
    await second.close({ runBeforeUnload: true });
    expect(await soonHeld(page, 8)).toBeLessThanOrEqual(8);
    await close();
  });

  it('are let go of within seconds when the tab crashes', async () => {
    const { page, another, close } = await open();
    const second = await another();
    expect((await claim(page)).isHeld).toBe(true);
    await page.goto('chrome://crash').catch(() => undefined);
    expect(await soonHeld(second, 60)).toBeLessThanOrEqual(60);
    await close();
  });
});
