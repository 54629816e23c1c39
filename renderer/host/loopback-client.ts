/**
 * The host as seen through the loopback server: each call is a POST of JSON, changes come as server-sent
 * events. The key that the server asks for is a cookie which no script can read, so nothing here handles it.
 */

import type { FileKind, Host, HostAnswer } from '../../electron/contract/host.ts';
import {
  LARGEST_TEXT_BYTES,
  type Method,
  readAnswer,
  type Request,
  type Value,
} from '../../electron/contract/wire.ts';
import { followChanges, type Following } from './change-stream.ts';
import { changeListeners } from './listeners.ts';
import { ownSaves } from './own-saves.ts';

/** What the page lends to the client; replaced in tests. */
export interface PageMeans {
  readonly fetch: (url: URL, init: RequestInit) => Promise<Response>;
  readonly follow: typeof followChanges;
  /** Asks the person for a file; null where they did not choose one. */
  readonly pickFile: (kind: FileKind) => Promise<File | null>;
  readonly print: () => void;
}

export interface LoopbackHost extends Host {
  /** Stops listening for changes. */
  readonly close: () => void;
}

/** `base` is the folder that the page was served from, with its closing slash. */
export function loopbackHost(base: URL, means: PageMeans = browserMeans): LoopbackHost {
  const listeners = changeListeners();
  const saves = ownSaves(listeners.tell);
  const following: Following = means.follow(base, saves.hear, (url, init) => means.fetch(url, init));

  const call = async <M extends Method>(method: M, request: Request<M>): Promise<HostAnswer<Value<M>>> => {
    try {
      const response = await means.fetch(new URL(`api/${addressOf(method)}`, base), {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(request),
        credentials: 'same-origin',
        cache: 'no-store',
        redirect: 'error',
      });
      return readAnswer(method, await response.json());
    } catch {
      return {
        ok: false,
        failure: 'host-gone',
        message:
          'The program that serves this page has ended. Keep this window open: your work is still in it. Run "npm start" again, save a copy from the new window, then close this one.',
      };
    }
  };

  const remember = async <T extends { entry: { token: string }; revision: string }>(
    answer: Promise<HostAnswer<T>>,
  ): Promise<HostAnswer<T>> => {
    const known = await answer;
    if (known.ok) saves.made(known.value.entry.token, known.value.revision);
    return known;
  };

  return {
    info: () => call('info', {}),
    list: () => call('list', {}),
    open: (token) => remember(call('open', { token })),
    save: (request) =>
      saves.during(
        request.token,
        () => call('save', { token: request.token, text: request.text, baseRevision: request.baseRevision }),
        (answer) => (answer.ok ? answer.value.revision : null),
      ),
    copies: (token) => call('copies', { token }),
    openCopy: (token, keptAt) => call('openCopy', { token, keptAt }),
    create: (kind, suggestedName, text) => remember(call('create', { kind, suggestedName, text })),
    importFile: async (kind) => {
      const file = await means.pickFile(kind);
      if (file === null) return { ok: false, failure: 'cancelled', message: 'No file was chosen.' };
      const read = await readPicked(file);
      if (!read.ok) return read;
      return remember(call('importText', { kind, name: file.name.slice(0, 200), text: read.value }));
    },
    watch: (listener) => listeners.add(listener),
    exportPdf: () => {
      means.print();
      return Promise.resolve({
        ok: true,
        value: {
          where: 'the place you chose in the print window (choose “Save as PDF” as the printer there)',
        },
      });
    },
    print: () => {
      means.print();
      return Promise.resolve({ ok: true, value: null });
    },
    readSettings: () => call('readSettings', {}),
    writeSettings: (settings) => call('writeSettings', { settings: { ...settings } }),
    close: () => {
      following.stop();
    },
  };
}

function addressOf(method: Method): string {
  return method === 'importText' ? 'import' : method;
}

async function readPicked(file: File): Promise<HostAnswer<string>> {
  if (file.size > LARGEST_TEXT_BYTES) {
    return {
      ok: false,
      failure: 'too-large',
      message: `${file.name} is larger than 64 MiB. Cut it down in the program it came from and try again.`,
    };
  }
  try {
    // `fatal` refuses bytes that are no UTF-8; File.text() would put replacement characters in their place.
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    return { ok: true, value: text };
  } catch {
    return {
      ok: false,
      failure: 'not-text',
      message: `${file.name} could not be read as UTF-8 text. Export it again as GeoJSON or JSON and try again.`,
    };
  }
}

/** The browser's own file picker; needs the person's click or key press just before. */
function pickFile(kind: FileKind): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept =
      kind === 'course' ? '.geojson,.json,application/geo+json,application/json' : '.json,application/json';
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null), { once: true });
    input.addEventListener('cancel', () => resolve(null), { once: true });
    input.click();
  });
}

const browserMeans: PageMeans = {
  fetch: (url, init) => fetch(url, init),
  follow: followChanges,
  pickFile,
  print: () => {
    window.print();
  },
};
