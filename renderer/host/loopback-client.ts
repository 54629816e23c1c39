/**
 * The host as seen through the loopback server: each call is a POST of JSON, changes come as server-sent
 * events. The key that the server asks for is a cookie which no script can read, so nothing here handles it.
 */

import type { FileKind, Host, HostAnswer, Following as Copying } from '../../electron/contract/host.ts';
import {
  LARGEST_TEXT_BYTES,
  type Method,
  readAnswer,
  type Request,
  type Value,
} from '../../electron/contract/wire.ts';
import { followChanges, type Following } from './change-stream.ts';
import { inLanguage } from './in-language.ts';
import { heldFiles, whenPutAway } from './held-files.ts';
import { changeListeners } from './listeners.ts';
import { type ByteMeans, loopbackBytes, uploadFile } from './loopback-bytes.ts';
import { ownSaves } from './own-saves.ts';
import { clearRequest, journalRequest, saveRequest, settingsRequest } from './requests.ts';
import { english } from '../../core/words/english/english.ts';
import type { Words } from '../../core/words/words.ts';

/** What the page lends to the client; replaced in tests. */
export interface PageMeans extends ByteMeans {
  readonly follow: typeof followChanges;
  /** Asks the person for a file; null where they did not choose one. */
  readonly pickFile: (kind: FileKind | 'attachment') => Promise<File | null>;
  readonly print: () => void;
  /** Calls back when the page is put away. */
  readonly whenPutAway: (callback: () => void) => void;
}

function goneAs({ host }: Words): HostAnswer<never> {
  return { ok: false, failure: 'host-gone', message: host.serverGone };
}

export interface LoopbackHost extends Host {
  /** Stops listening for changes. */
  readonly close: () => void;
}

/** `base` is the folder that the page was served from, with its closing slash. */
export function loopbackHost(
  base: URL,
  means: PageMeans = browserMeans,
  words: () => Words = () => english,
): LoopbackHost {
  const listeners = changeListeners();
  const saves = ownSaves(listeners.tell);
  /** Made anew with each loading of the page, so that a reload does not count as the window it was. */
  const ownNumber = crypto.randomUUID();
  const held = heldFiles();
  const bytes = loopbackBytes(base, means, words);
  const following: Following = means.follow(base, ownNumber, saves.hear, (url, init) =>
    means.fetch(url, init),
  );

  const call = async <M extends Method>(method: M, request: Request<M>): Promise<HostAnswer<Value<M>>> => {
    try {
      const response = await means.fetch(new URL(`api/${addressOf(method)}`, base), {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(request),
        credentials: 'same-origin',
        cache: 'no-store',
        redirect: 'error',
        // A window that is being closed can still let go of its files.
        keepalive: method === 'release',
      });
      return inLanguage(readAnswer(method, await response.json()), words());
    } catch {
      return goneAs(words());
    }
  };
  means.whenPutAway(() => {
    for (const token of held.takeAll()) void call('release', { window: ownNumber, token });
  });

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
    claim: async (token) => held.claimed(token, await call('claim', { window: ownNumber, token })),
    release: (token) => {
      held.released(token);
      return call('release', { window: ownNumber, token });
    },
    save: (request) =>
      saves.during(
        request.token,
        () => call('save', { window: ownNumber, ...saveRequest(request) }),
        (answer) => (answer.ok ? answer.value.revision : null),
      ),
    journal: (request) => call('journal', { window: ownNumber, ...journalRequest(request) }),
    readJournal: (token) => call('readJournal', { window: ownNumber, token }),
    leftBehind: () => call('leftBehind', {}),
    clearJournal: (request) => call('clearJournal', { window: ownNumber, ...clearRequest(request) }),
    copies: (token) => call('copies', { token }),
    openCopy: (token, keptAt) => call('openCopy', { token, keptAt }),
    create: (kind, suggestedName, text) => remember(call('create', { kind, suggestedName, text })),
    importFile: async (kind) => {
      const file = await means.pickFile(kind);
      if (file === null) return { ok: false, failure: 'cancelled', message: words().host.noFile };
      const read = await readPicked(file, words());
      if (!read.ok) return read;
      return remember(call('importText', { kind, name: file.name.slice(0, 200), text: read.value }));
    },
    attach: async (token: string, copying: Copying = {}) => {
      const file = await means.pickFile('attachment');
      if (file === null) return { ok: false, failure: 'cancelled', message: words().host.noFile };
      return bytes.attach(token, file, copying);
    },
    listAttachments: (token) => call('listAttachments', { token }),
    readAttachment: bytes.readAttachment,
    tileSetInfo: (attachment) => call('tileSetInfo', { attachment }),
    readTile: bytes.readTile,
    watch: (listener) => listeners.add(listener),
    exportPdf: () => {
      means.print();
      return Promise.resolve({
        ok: true,
        value: {
          where: words().host.printPlace,
        },
      });
    },
    print: () => {
      means.print();
      return Promise.resolve({ ok: true, value: null });
    },
    saveExport: bytes.saveExport,
    readSettings: () => call('readSettings', {}),
    writeSettings: (change, was) => call('writeSettings', settingsRequest(change, was)),
    keepPlan: (key, text) => call('keepPlan', { key, text }),
    keptPlan: (key) => call('keptPlan', { key }),
    close: () => {
      following.stop();
    },
  };
}

function addressOf(method: Method): string {
  return method === 'importText' ? 'import' : method;
}

async function readPicked(file: File, { host }: Words): Promise<HostAnswer<string>> {
  if (file.size > LARGEST_TEXT_BYTES) {
    return {
      ok: false,
      failure: 'too-large',
      message: host.largerThan({ name: file.name, size: '64 MiB' }),
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
      message: host.notText({ name: file.name }),
    };
  }
}

const accepted: Readonly<Record<FileKind | 'attachment', string>> = {
  course: '.geojson,.json,application/geo+json,application/json',
  player: '.json,application/json',
  round: '.json,application/json',
  attachment: '.png,.jpg,.jpeg,.webp,.tif,.tiff,.pmtiles,.mbtiles',
};

/** The browser's own file picker; needs the person's click or key press just before. */
function pickFile(kind: FileKind | 'attachment'): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accepted[kind];
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null), { once: true });
    input.addEventListener('cancel', () => resolve(null), { once: true });
    input.click();
  });
}

const browserMeans: PageMeans = {
  fetch: (url, init) => fetch(url, init),
  upload: uploadFile,
  follow: followChanges,
  pickFile,
  print: () => {
    window.print();
  },
  whenPutAway,
};
