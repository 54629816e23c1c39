/**
 * A hostile page in the very browser that has the key, which knows the port and even the secret folder: from another
 * port of this machine (same site, its cookies travel) and from a foreign site. It may read nothing and write nothing.
 */

import { existsSync } from 'node:fs';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { settingsStore } from '../../../electron/files/settings.ts';
import type { FileStore } from '../../../electron/files/store.ts';
import { startLoopback } from '../../../electron/loopback/server.ts';
import { CHROMIUM } from '../../browser/window.ts';
import { courseText, storeIn, temporaryFolder } from '../files/workspace.ts';
import { assets } from './asking.ts';

const isThere = existsSync(CHROMIUM.executablePath);
if (!isThere) console.warn(`hostile pages: skipped, there is no ${CHROMIUM.executablePath}`);

let browser: Browser;
let hostile: Server;
let port: number;

beforeAll(async () => {
  if (!isThere) return;
  hostile = createServer((_request, response) => {
    response
      .writeHead(200, { 'content-type': 'text/html' })
      .end('<!doctype html><title>hostile</title><body>');
  });
  await new Promise<void>((resolve) => hostile.listen(0, '127.0.0.1', resolve));
  ({ port } = hostile.address() as AddressInfo);
  browser = await chromium.launch({
    ...CHROMIUM,
    args: [...CHROMIUM.args, '--host-resolver-rules=MAP *.example 127.0.0.1'],
  });
}, 120_000);

afterAll(async () => {
  if (!isThere) return;
  await browser.close();
  await new Promise((resolve) => hostile.close(resolve));
});

/** Every way a page has to ask another origin; what came of each. Runs inside the hostile page. */
async function attack(page: Page, folder: string): Promise<Readonly<Record<string, string>>> {
  return page.evaluate(async (address) => {
    const results: Record<string, string> = {};
    const create = JSON.stringify({ kind: 'course', suggestedName: 'planted', text: '{}' });
    const outcome = async (name: string, work: () => Promise<string>): Promise<void> => {
      const late = new Promise<string>((resolve) => setTimeout(() => resolve('nothing came'), 1500));
      results[name] = await Promise.race([work().catch(() => 'refused'), late]);
    };
    const asked = (path: string, init: RequestInit): Promise<string> =>
      fetch(address + path, { credentials: 'include', ...init }).then(async (response) =>
        response.type === 'opaque' ? 'opaque' : `READ ${(await response.text()).slice(0, 40)}`,
      );
    /** What can be seen of a page in a frame or window; one that has not moved on yet is still the hostile page's own. */
    const seen = (inside: Window): string =>
      inside.location.href === 'about:blank' ? 'nothing came' : `READ ${inside.document.title}`;
    const element = (name: string, place: 'src' | 'href' | 'data', path: string): Promise<string> =>
      new Promise((resolve) => {
        const made = document.createElement(name);
        if (name === 'link') made.setAttribute('rel', 'stylesheet');
        made.addEventListener('load', () => resolve('LOADED'));
        made.addEventListener('error', () => resolve('refused'));
        made.setAttribute(place, address + path);
        document.body.append(made);
      });
    await Promise.all([
      outcome('read the page', () => asked('', {})),
      outcome('read the page unseen', () => asked('', { mode: 'no-cors' })),
      outcome('read a script', () => asked('assets/main-abc.js', {})),
      outcome('post JSON', () =>
        asked('api/create', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: create,
        }),
      ),
      outcome('post text unseen', () =>
        asked('api/create', { method: 'POST', mode: 'no-cors', body: create }),
      ),
      outcome('post a blob of JSON unseen', () =>
        asked('api/create', {
          method: 'POST',
          mode: 'no-cors',
          body: new Blob([create], { type: 'text/plain' }),
        }),
      ),
      outcome('put an export', () => asked('api/export', { method: 'PUT', body: 'x' })),
      outcome('delete', () => asked('api/list', { method: 'DELETE' })),
      outcome('beacon', () => {
        navigator.sendBeacon(`${address}api/create`, create);
        return Promise.resolve('sent');
      }),
      outcome('picture', () => element('img', 'src', 'icon.svg')),
      outcome('script', () => element('script', 'src', 'assets/main-abc.js')),
      outcome('style', () => element('link', 'href', 'assets/main-abc.css')),
      outcome('object', () => element('object', 'data', 'index.html')),
      outcome('frame', async () => {
        const frame = document.createElement('iframe');
        frame.src = address;
        const loaded = new Promise((resolve) => frame.addEventListener('load', resolve));
        document.body.append(frame);
        await loaded;
        return seen(frame.contentWindow!);
      }),
      outcome('window', async () => {
        const opened = window.open(address);
        await new Promise((resolve) => setTimeout(resolve, 700));
        return seen(opened!);
      }),
      outcome('form', async () => {
        const frame = document.createElement('iframe');
        frame.name = 'target';
        const form = document.createElement('form');
        Object.assign(form, {
          method: 'post',
          enctype: 'text/plain',
          action: `${address}api/create`,
          target: 'target',
        });
        const field = document.createElement('input');
        Object.assign(field, { name: create.slice(0, -1), value: '"x":1}' });
        form.append(field);
        document.body.append(frame, form);
        form.submit();
        await new Promise((resolve) => setTimeout(resolve, 700));
        return seen(frame.contentWindow!);
      }),
      outcome('event stream', () => {
        const stream = new EventSource(`${address}api/events`, { withCredentials: true });
        return new Promise((resolve, reject) => {
          stream.onopen = () => resolve('OPENED');
          stream.onerror = () => {
            stream.close();
            reject(new Error('closed'));
          };
        });
      }),
      outcome('socket', () => {
        const socket = new WebSocket(`${address.replace('http', 'ws')}api/events`);
        return new Promise((resolve, reject) => {
          socket.onopen = () => resolve('OPENED');
          socket.onerror = () => reject(new Error('closed'));
        });
      }),
    ]);
    return results;
  }, folder);
}

describe.skipIf(!isThere)('a hostile page', () => {
  it.each([
    ['of another program on this machine', '127.0.0.1'],
    ['of a foreign site', 'evil.example'],
  ])('%s can neither read nor write', async (_, host) => {
    const workspace = await temporaryFolder();
    await writeFile(join(workspace, 'a.geojson'), courseText(1));
    const reached: string[] = [];
    const store = await storeIn(workspace);
    const watched = new Proxy(store, {
      get: (inner, name: keyof FileStore) => {
        if (['list', 'open', 'create', 'save', 'copies', 'openCopy'].includes(name)) reached.push(name);
        return inner[name];
      },
    });
    const settings = settingsStore(join(await temporaryFolder(), 'settings'));
    const server = await startLoopback({ store: watched, settings, assets, version: 'test' });
    const context = await browser.newContext();
    try {
      const own = await context.newPage();
      await own.goto(server.startAddress());
      await own.waitForURL((url) => !url.pathname.includes('/start/'));
      const folder = own.url();
      // The very same asking from the page itself is answered: the key is there.
      expect(await own.evaluate(() => fetch('api/changes').then((response) => response.status))).toBe(200);
      reached.length = 0;

      const other = await context.newPage();
      await other.goto(`http://${host}:${port}/`);
      const results = await attack(other, folder);
      for (const [way, result] of Object.entries(results)) {
        expect(`${way}: ${result}`).toMatch(/: (?:refused|nothing came|opaque|sent)$/u);
      }
      expect(Object.keys(results)).toHaveLength(18);
      expect(reached).toEqual([]);
      expect(await readdir(workspace)).toEqual(['a.geojson']);
      expect(await readFile(join(workspace, 'a.geojson'), 'utf8')).toBe(courseText(1));
    } finally {
      await context.close();
      await server.close();
    }
  });
});
