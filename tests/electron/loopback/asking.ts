/** A loopback server on a temporary workspace, and plain requests to it with any headers whatever. */

import { request } from 'node:http';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { settingsStore } from '../../../electron/files/settings.ts';
import { type Loopback, type LoopbackParts, startLoopback } from '../../../electron/loopback/server.ts';
import type { Assets } from '../../../electron/pages/assets.ts';
import { courseText, storeIn, temporaryFolder } from '../files/workspace.ts';

export const PAGE = '<!doctype html><title>page</title>';

export const assets: Assets = new Map([
  ['index.html', { body: Buffer.from(PAGE), type: 'text/html; charset=utf-8' }],
  ['assets/main-abc.js', { body: Buffer.from('export {};'), type: 'text/javascript; charset=utf-8' }],
]);

export interface Reply {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

export interface Asking {
  readonly server: Loopback;
  readonly workspace: string;
  /** `127.0.0.1:port`. */
  readonly authority: string;
  /** `/…/`, and the cookie that opens it. */
  readonly folder: string;
  readonly cookie: string;
  /** Sends exactly this; nothing is added but what HTTP demands. */
  readonly raw: (
    method: string,
    target: string,
    headers: Readonly<Record<string, string>>,
    body?: string,
  ) => Promise<Reply>;
  /** As the page itself would ask. */
  readonly get: (path: string) => Promise<Reply>;
  readonly post: (path: string, body: unknown, headers?: Readonly<Record<string, string>>) => Promise<Reply>;
}

const servers: Loopback[] = [];
afterEach(async () => {
  for (const server of servers.splice(0)) await server.close();
});

export async function startAsking(parts: Partial<LoopbackParts> = {}): Promise<Asking> {
  const workspace = await temporaryFolder();
  await writeFile(join(workspace, 'a.geojson'), courseText(1));
  const store = await storeIn(workspace);
  const settings = settingsStore(join(workspace, 'settings-folder'));
  const server = await startLoopback({ store, settings, assets, version: '1.2.3', ...parts });
  servers.push(server);
  const authority = new URL(server.origin).host;
  const port = Number(new URL(server.origin).port);

  const raw: Asking['raw'] = (method, target, headers, body) =>
    new Promise((resolve, reject) => {
      const asked = request(
        { host: '127.0.0.1', port, method, path: target, headers, agent: false },
        (response) => {
          const parts: Buffer[] = [];
          response.on('data', (part: Buffer) => parts.push(part));
          response.on('end', () =>
            resolve({
              status: response.statusCode ?? 0,
              headers: response.headers,
              body: Buffer.concat(parts).toString(),
            }),
          );
        },
      );
      asked.on('error', reject);
      asked.end(body);
    });

  const start = new URL(server.startAddress());
  const opened = await raw('GET', start.pathname, { host: authority });
  const cookie = String(opened.headers['set-cookie']).split(';')[0]!;
  const folder = /^\/[^/]+\//u.exec(start.pathname)![0];
  return {
    server,
    workspace,
    authority,
    folder,
    cookie,
    raw,
    get: (path) => raw('GET', folder + path, { host: authority, cookie }),
    post: (path, body, headers = {}) =>
      raw(
        'POST',
        folder + path,
        { host: authority, cookie, origin: server.origin, 'content-type': 'application/json', ...headers },
        typeof body === 'string' ? body : JSON.stringify(body),
      ),
  };
}
