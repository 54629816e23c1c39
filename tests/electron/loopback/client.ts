/** The page's own client, talking to a test's server as a browser would. */

import { request } from 'node:http';
import type { WireChange } from '../../../electron/contract/wire.ts';
import { type LoopbackHost, loopbackHost, type PageMeans } from '../../../renderer/host/loopback-client.ts';
import type { Asking } from './asking.ts';

export interface Client {
  readonly host: LoopbackHost;
  readonly hear: (change: WireChange) => void;
  /** Number of the window that the client stands for. */
  readonly number: string;
  /** As if the page were closed; resolves when what it sends then has been answered. */
  readonly putAway: () => Promise<void>;
}

/** Where the server is and what opens it; enough to talk to one in another process. */
export type ServerPlace = Pick<Asking, 'folder' | 'cookie'> & {
  readonly server: { readonly origin: string };
};

export function clientOf(asking: ServerPlace, means: Partial<PageMeans> = {}): Client {
  let hear: (change: WireChange) => void = () => undefined;
  let number = '';
  let leave: () => void = () => undefined;
  const underWay = new Set<Promise<unknown>>();
  const own = { cookie: asking.cookie, origin: asking.server.origin };
  const host = loopbackHost(new URL(asking.folder, asking.server.origin), {
    fetch: (url, init) => {
      const answer = fetch(url, {
        ...init,
        headers: { ...(init.headers as Record<string, string>), ...own },
      });
      underWay.add(answer.catch(() => undefined));
      return answer;
    },
    upload: (url, file, headers, { signal }) =>
      new Promise((resolve, reject) => {
        const sent = request(
          url,
          { method: 'PUT', headers: { ...headers, ...own, 'content-length': file.size }, agent: false },
          (response) => {
            let text = '';
            response.on('data', (part: Buffer) => (text += part.toString()));
            response.on('end', () => resolve(text));
          },
        );
        sent.on('error', reject);
        signal?.addEventListener('abort', () => sent.destroy(new Error('abort')));
        void (async () => {
          for await (const part of file.stream() as unknown as AsyncIterable<Uint8Array>) {
            if (!sent.write(part)) await new Promise((go) => sent.once('drain', go));
          }
          sent.end();
        })();
      }),
    follow: (_base, own, listener) => {
      number = own;
      hear = listener;
      return { stop: () => undefined };
    },
    pickFile: () => Promise.resolve(null),
    print: () => undefined,
    whenPutAway: (callback) => (leave = callback),
    ...means,
  });
  return {
    host,
    hear: (change) => hear(change),
    number,
    putAway: async () => {
      leave();
      await Promise.all(underWay);
    },
  };
}
