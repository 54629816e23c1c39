/**
 * Serves the page and the host's methods to a browser on this machine: for machines on which Electron's
 * program file is not to be had. Listens on 127.0.0.1 only; see keys.ts and gate.ts for who may ask.
 */

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { languageOf } from '../../core/words/language.ts';
import { told, type Told } from '../../core/words/told.ts';
import { type Words, wordsIn } from '../../core/words/words.ts';
import type { HostAnswer } from '../contract/host.ts';
import { readByteAddress } from '../contract/byte-address.ts';
import { acceptedOrigins } from '../contract/tile-source.ts';
import { largestRequestBytes, readRequest } from '../contract/wire.ts';
import { good, refused } from '../files/answer.ts';
import { openAttachments } from '../files/attachments.ts';
import { type Editing, openEditing } from '../files/editing.ts';
import { openExports } from '../files/exports.ts';
import { type KeptPlans, noKeptPlans } from '../files/kept-plans.ts';
import type { SettingsStore } from '../files/settings.ts';
import type { FileStore } from '../files/store.ts';
import { openTileSets } from '../files/tile-sets.ts';
import { watchStore } from '../files/watch.ts';
import { type Assets, assetAt } from '../pages/assets.ts';
import { headersAllowing, pageHeaders } from '../pages/headers.ts';
import { readJsonBody } from './body.ts';
import { serveBytes } from './bytes.ts';
import { loopbackCalls, type LoopbackMethod } from './calls.ts';
import { changeLog } from './change-log.ts';
import { eventStreams } from './event-streams.ts';
import { passGate } from './gate.ts';
import { type Keys, makeKeys } from './keys.ts';
import { LOOK_EVERY_MS, watchPresence } from './presence.ts';
import { refusalPage, startPage } from './start-page.ts';
import { watchWindows } from './windows.ts';

const ADDRESS = '127.0.0.1';

export interface LoopbackParts {
  readonly store: FileStore;
  readonly settings: SettingsStore;
  readonly assets: Assets;
  readonly version: string;
  /** 0 or absent: any free one. */
  readonly port?: number;
  /** How long to go on after the last window has closed. */
  readonly waitMs?: number;
  readonly keys?: Keys;
  readonly editing?: Editing;
  /** Nothing is kept where absent. */
  readonly plans?: KeptPlans;
}

export interface Loopback {
  /** `http://127.0.0.1:port`. */
  readonly origin: string;
  /** A fresh address that opens the program in one browser, once. */
  readonly startAddress: () => string;
  /** Resolves when the server has ended, by `close` or by itself. */
  readonly ended: Promise<void>;
  readonly close: () => Promise<void>;
}

const LOOK_FOR_WINDOWS_MS = 1000;

/** Addresses below `api/`, and the methods behind them. */
const methodAt = new Map<string, LoopbackMethod>([
  ['info', 'info'],
  ['list', 'list'],
  ['open', 'open'],
  ['claim', 'claim'],
  ['release', 'release'],
  ['save', 'save'],
  ['journal', 'journal'],
  ['readJournal', 'readJournal'],
  ['leftBehind', 'leftBehind'],
  ['clearJournal', 'clearJournal'],
  ['copies', 'copies'],
  ['openCopy', 'openCopy'],
  ['create', 'create'],
  ['import', 'importText'],
  ['listAttachments', 'listAttachments'],
  ['tileSetInfo', 'tileSetInfo'],
  ['readSettings', 'readSettings'],
  ['writeSettings', 'writeSettings'],
  ['keepPlan', 'keepPlan'],
  ['keptPlan', 'keptPlan'],
]);

/** The number by which a window calls itself, in the query of its event stream or its asking. */
function windowIn(query: string): string | null {
  return /(?:^|&)window=([A-Za-z0-9_-]{8,64})(?:$|&)/u.exec(query)?.[1] ?? null;
}

/** Starts the server; rejects with the system's error where the port is taken. */
export async function startLoopback(parts: LoopbackParts): Promise<Loopback> {
  const keys = parts.keys ?? makeKeys();
  const { store, settings, version } = parts;
  const editing = parts.editing ?? openEditing({ store, shell: 'loopback' });
  const attachments = openAttachments(store);
  const tileSets = openTileSets(attachments);
  const exports = openExports(store);
  const plans = parts.plans ?? noKeptPlans;
  const calls = loopbackCalls({ store, settings, editing, attachments, tileSets, plans, version });
  const log = changeLog();
  const streams = eventStreams(log);
  const presence = watchPresence(parts.waitMs);
  const windows = watchWindows(LOOK_FOR_WINDOWS_MS);
  const watch = watchStore(parts.store);
  let authority = '';

  const send = (
    response: ServerResponse,
    status: number,
    type: string,
    body: string | Uint8Array,
    headers = pageHeaders,
  ): void => {
    response.writeHead(status, {
      ...headers,
      'content-type': type,
      'content-length': Buffer.byteLength(body),
    });
    response.end(body);
  };
  const sendJson = (response: ServerResponse, status: number, answer: HostAnswer<unknown>): void => {
    send(response, status, 'application/json; charset=utf-8', JSON.stringify(answer));
  };
  const sendPage = (
    request: IncomingMessage,
    response: ServerResponse,
    status: number,
    reason: Told,
  ): void => {
    send(response, status, 'text/html; charset=utf-8', refusalPage(reason, wordsFor(request)));
  };

  const callMethod = async (
    request: IncomingMessage,
    response: ServerResponse,
    name: string,
  ): Promise<void> => {
    const method = methodAt.get(name);
    if (method === undefined || request.method !== 'POST') {
      const status = method === undefined ? 404 : 405;
      sendJson(
        response,
        status,
        refused(
          'bad-request',
          told(({ refusals }) => refusals.request.unknown),
        ),
      );
      return;
    }
    const body = await readJsonBody(request, largestRequestBytes(method));
    if (!body.ok) {
      // The rest of an oversized body is not wanted: the connection goes with the answer.
      response.setHeader('connection', 'close');
      sendJson(
        response,
        body.status,
        refused(body.status === 413 ? 'too-large' : 'bad-request', body.reason),
      );
      return;
    }
    sendJson(response, 200, await callChecked(method, body.value));
  };

  const callChecked = async (method: LoopbackMethod, request: unknown): Promise<HostAnswer<unknown>> => {
    const checked = readRequest(method, request);
    if (!checked.ok) return checked;
    if ('window' in checked.value) windows.called(checked.value.window, Date.now());
    // The schema of this very method has just passed the request.
    const call = calls[method] as (request: unknown) => Promise<HostAnswer<unknown>>;
    return call(checked.value);
  };

  const openEvents = (request: IncomingMessage, response: ServerResponse, query: string): void => {
    const window = windowIn(query);
    const last = request.headers['last-event-id'];
    const lastSeen = typeof last === 'string' && /^\d{1,15}$/u.test(last) ? Number(last) : null;
    const isOpen = streams.open(response, pageHeaders, lastSeen, () => {
      presence.streamClosed(Date.now());
      if (window !== null) windows.streamClosed(window, Date.now());
    });
    if (!isOpen) {
      response.writeHead(204, pageHeaders).end();
      return;
    }
    presence.streamOpened(Date.now());
    if (window !== null) windows.streamOpened(window);
  };

  const tellChanges = (response: ServerResponse, query: string): void => {
    presence.asked(Date.now());
    const window = windowIn(query);
    if (window !== null) windows.asked(window, Date.now());
    const since = /(?:^|&)since=(\d{1,15})(?:$|&)/u.exec(query)?.[1];
    const changes = since === undefined ? [] : log.after(Number(since)).map(({ change }) => change);
    sendJson(response, 200, good({ next: log.latest(), changes }));
  };

  /** Asked for with every file of the page, so that a reload follows the settings. */
  const tileOrigins = async (): Promise<readonly string[]> => {
    const kept = await settings.read();
    return kept.ok ? acceptedOrigins(kept.value.tileSources ?? []) : [];
  };

  const serve = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const asked = { method: request.method ?? '', target: request.url ?? '', headers: request.headers };
    const passage = passGate(asked, authority, keys);
    if (passage.kind === 'refused') {
      const isCall = asked.target.startsWith(`${keys.folder}api/`);
      if (request.method === 'POST' || request.method === 'PUT') response.setHeader('connection', 'close');
      if (isCall) sendJson(response, passage.status, refused('not-allowed', passage.reason));
      else sendPage(request, response, passage.status, passage.reason);
      return;
    }
    if (passage.kind === 'start') {
      // A used address goes on working for the browser that has the key: reloading or going back is no fault.
      if (keys.useStart(passage.path)) response.setHeader('set-cookie', keys.cookie);
      else if (!keys.holdsKey(request.headers.cookie)) {
        sendPage(
          request,
          response,
          403,
          told(({ refusals }) => refusals.request.usedStart),
        );
        return;
      }
      send(response, 200, 'text/html; charset=utf-8', startPage(wordsFor(request)));
      return;
    }
    const { path, query } = passage;
    const bytes = readByteAddress(path);
    if (bytes !== null)
      await serveBytes({ attachments, tileSets, exports, sendJson }, bytes, request, response);
    else if (path === 'api/events' && request.method === 'GET') openEvents(request, response, query);
    else if (path === 'api/changes' && request.method === 'GET') tellChanges(response, query);
    else if (path.startsWith('api/')) await callMethod(request, response, path.slice('api/'.length));
    else {
      const isReading = request.method === 'GET' || request.method === 'HEAD';
      const asset = isReading ? assetAt(parts.assets, path) : null;
      if (asset === null)
        sendPage(
          request,
          response,
          404,
          told(({ refusals }) => refusals.request.nothingHere),
        );
      else {
        const body = request.method === 'HEAD' ? '' : asset.body;
        send(response, 200, asset.type, body, headersAllowing(await tileOrigins()));
      }
    }
  };

  // Large files may take their time to come; bodies that stand still are ended by their readers.
  const server = createServer({ requestTimeout: 0, headersTimeout: 10_000 }, (request, response) => {
    serve(request, response).catch((error: unknown) => {
      if (response.headersSent) response.destroy();
      else
        sendJson(
          response,
          500,
          refused(
            'unknown',
            told(({ refusals }) => refusals.request.failed, { error: String(error) }),
          ),
        );
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: ADDRESS, port: parts.port ?? 0, exclusive: true }, resolve);
  });
  authority = `${ADDRESS}:${(server.address() as AddressInfo).port}`;

  const leave = watch.listen((change) => {
    streams.send(log.add(change));
  });
  const ended = new Promise<void>((resolve) => server.once('close', resolve));
  const close = async (): Promise<void> => {
    clearInterval(looking);
    clearInterval(lookingForWindows);
    leave();
    streams.close();
    server.close();
    await editing.close();
    await tileSets.close();
    server.closeAllConnections();
    return ended;
  };
  const lookingForWindows = setInterval(() => {
    for (const window of windows.gone(Date.now())) void editing.leave(window);
  }, LOOK_FOR_WINDOWS_MS);
  const looking = setInterval(() => {
    if (presence.isOver(Date.now())) void close();
  }, LOOK_EVERY_MS);

  const origin = `http://${authority}`;
  return { origin, startAddress: () => origin + keys.startPath(), ended, close };
}

/** The two small pages are in the language that the browser asks for; which one the settings have is not theirs to know. */
function wordsFor({ headers }: IncomingMessage): Words {
  const asked = (headers['accept-language'] ?? '').split(',').map((tag) => tag.split(';')[0]!.trim());
  return wordsIn(languageOf(asked));
}
