/** Attachments, tiles and exports over loopback: bytes travel as they are, at addresses of their own. */

import { type ByteAddress, byteAddress, NAME_HEADER } from '../../electron/contract/byte-address.ts';
import type { Attachment, Following, HostAnswer, Tile, Written } from '../../electron/contract/host.ts';
import { LARGEST_MAP_BYTES, LONGEST_NAME, readAnswer, readRequest } from '../../electron/contract/wire.ts';
import { inLanguage, writtenInLanguage } from './in-language.ts';
import type { Words } from '../../core/words/words.ts';

/** What the page lends; replaced in tests. */
export interface ByteMeans {
  readonly fetch: (url: URL, init: RequestInit) => Promise<Response>;
  /** Sends a file and resolves to the text of the answer; rejects where there is none. */
  readonly upload: (
    url: URL,
    file: File,
    headers: Readonly<Record<string, string>>,
    following: Following,
  ) => Promise<string>;
}

export interface LoopbackBytes {
  readonly attach: (course: string, file: File, following: Following) => Promise<HostAnswer<Attachment>>;
  readonly saveExport: (suggestedName: string, bytes: ArrayBuffer) => Promise<HostAnswer<Written>>;
  readonly readAttachment: (
    attachment: string,
    offset: number,
    length: number,
  ) => Promise<HostAnswer<ArrayBuffer>>;
  readonly readTile: (
    attachment: string,
    zoom: number,
    x: number,
    y: number,
  ) => Promise<HostAnswer<Tile | null>>;
}

export function loopbackBytes(base: URL, means: ByteMeans, words: () => Words): LoopbackBytes {
  const gone = (): HostAnswer<never> => ({
    ok: false,
    failure: 'host-gone',
    message: words().host.serverGone,
  });
  const get = (address: ByteAddress, headers: Readonly<Record<string, string>> = {}): Promise<Response> =>
    means.fetch(new URL(byteAddress(address), base), {
      headers,
      credentials: 'same-origin',
      cache: 'no-store',
      redirect: 'error',
    });

  return {
    attach: async (course, file, following) => {
      const refusal = refuseUnsent(file, words());
      if (refusal !== null) return refusal;
      try {
        const answer = await means.upload(
          new URL(byteAddress({ kind: 'attach', course }), base),
          file,
          {
            'content-type': 'application/octet-stream',
            [NAME_HEADER]: encodeURIComponent(nameOf(file)),
          },
          following,
        );
        return inLanguage(readAnswer('attach', JSON.parse(answer)), words());
      } catch {
        if (following.signal?.aborted !== true) return gone();
        return {
          ok: false,
          failure: 'cancelled',
          message: words().host.copyingStopped({ name: file.name }),
        };
      }
    },
    saveExport: async (suggestedName, exported) => {
      const checked = readRequest('saveExport', { suggestedName, bytes: exported });
      if (!checked.ok) return inLanguage(checked, words());
      try {
        const response = await means.fetch(new URL(byteAddress({ kind: 'export' }), base), {
          method: 'PUT',
          headers: {
            'content-type': 'application/octet-stream',
            [NAME_HEADER]: encodeURIComponent(suggestedName.replace(/\p{Surrogate}/gu, '-')),
          },
          body: exported,
          credentials: 'same-origin',
          cache: 'no-store',
          redirect: 'error',
        });
        return writtenInLanguage(readAnswer('saveExport', await response.json()), words());
      } catch {
        return gone();
      }
    },
    readAttachment: async (attachment, offset, length) => {
      const checked = readRequest('readAttachment', { attachment, offset, length });
      if (!checked.ok) return inLanguage(checked, words());
      if (length === 0) return { ok: true, value: new ArrayBuffer(0) };
      try {
        const response = await get(
          { kind: 'attachment', attachment },
          { range: `bytes=${offset}-${offset + length - 1}` },
        );
        // Nothing is left from there on.
        if (response.status === 416) return { ok: true, value: new ArrayBuffer(0) };
        if (response.status === 206) return { ok: true, value: await response.arrayBuffer() };
        return inLanguage(readAnswer('readAttachment', await response.json()), words());
      } catch {
        return gone();
      }
    },
    readTile: async (attachment, zoom, x, y) => {
      const checked = readRequest('readTile', { attachment, zoom, x, y });
      if (!checked.ok) return inLanguage(checked, words());
      try {
        const response = await get({ kind: 'tile', attachment, zoom, x, y });
        if (response.status === 204) return { ok: true, value: null };
        if (response.status !== 200)
          return inLanguage(readAnswer('readTile', await response.json()), words());
        const mediaType = response.headers.get('content-type') ?? 'application/octet-stream';
        return { ok: true, value: { mediaType, bytes: await response.arrayBuffer() } };
      } catch {
        return gone();
      }
    },
  };
}

/** What can be told without sending gigabytes first. */
function refuseUnsent(file: File, { host }: Words): HostAnswer<never> | null {
  if (file.size <= LARGEST_MAP_BYTES) return null;
  return {
    ok: false,
    failure: 'too-large',
    message: host.largerThan({ name: file.name, size: '2 GiB' }),
  };
}

/** The name, not longer than the host takes, with its ending kept and no half characters. */
function nameOf({ name }: File): string {
  const short = name.length <= LONGEST_NAME ? name : name.slice(-LONGEST_NAME);
  return short.replace(/\p{Surrogate}/gu, '-');
}

/** `fetch` does not tell how far an upload has come; the older way does. */
export function uploadFile(
  url: URL,
  file: File,
  headers: Readonly<Record<string, string>>,
  { progress, signal }: Following,
): Promise<string> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('PUT', url);
    for (const [name, value] of Object.entries(headers)) request.setRequestHeader(name, value);
    request.upload.addEventListener('progress', ({ loaded, total }) => progress?.(loaded, total));
    request.addEventListener('load', () => resolve(request.responseText));
    for (const end of ['error', 'abort', 'timeout'] as const) {
      request.addEventListener(end, () => reject(new Error(end)));
    }
    const stop = (): void => {
      request.abort();
    };
    signal?.addEventListener('abort', stop, { once: true });
    request.addEventListener('loadend', () => signal?.removeEventListener('abort', stop));
    if (signal?.aborted === true) reject(new Error('abort'));
    else request.send(file);
  });
}
