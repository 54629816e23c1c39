/** The host as seen through Electron's preload: each call goes over the bridge and its answer is checked. */

import type { Bridge, BridgeMethod } from '../../electron/contract/bridge.ts';
import type { Attachment, Following, Host, HostAnswer } from '../../electron/contract/host.ts';
import {
  changeSchema,
  progressSchema,
  readAnswer,
  type Request,
  type Value,
} from '../../electron/contract/wire.ts';
import * as v from 'valibot';
import { inLanguage } from './in-language.ts';
import { heldFiles, whenPutAway } from './held-files.ts';
import { changeListeners } from './listeners.ts';
import { ownSaves } from './own-saves.ts';
import { clearRequest, journalRequest, saveRequest, settingsRequest } from './requests.ts';
import { english } from '../../core/words/english/english.ts';
import type { Words } from '../../core/words/words.ts';

/** `putAway` calls back when the page is put away; replaced in tests. */
export function electronHost(
  bridge: Bridge,
  putAway = whenPutAway,
  words: () => Words = () => english,
): Host {
  const listeners = changeListeners();
  const saves = ownSaves(listeners.tell);
  /** Made anew with each loading of the page, so that a reload does not count as the window it was. */
  const ownNumber = crypto.randomUUID();
  const held = heldFiles();
  bridge.watch((change) => {
    const read = v.safeParse(changeSchema, change);
    if (read.success) saves.hear(read.output);
  });

  const call = async <M extends BridgeMethod>(
    method: M,
    request: Request<M>,
  ): Promise<HostAnswer<Value<M>>> => {
    try {
      return inLanguage(readAnswer(method, await bridge[method](request)), words());
    } catch {
      return {
        ok: false,
        failure: 'host-gone',
        message: words().host.partGone,
      };
    }
  };

  putAway(() => {
    for (const token of held.takeAll()) void call('release', { window: ownNumber, token });
  });

  const attach = async (token: string, { progress, signal }: Following): Promise<HostAnswer<Attachment>> => {
    const job = crypto.randomUUID();
    const stop = (): void => void call('stopAttach', { job });
    const leave = bridge.progress((told) => {
      const read = v.safeParse(progressSchema, told);
      if (read.success && read.output.job === job) progress?.(read.output.doneBytes, read.output.totalBytes);
    });
    signal?.addEventListener('abort', stop, { once: true });
    try {
      return await call('attach', { token, job });
    } finally {
      signal?.removeEventListener('abort', stop);
      leave();
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
    importFile: (kind) => remember(call('importFile', { kind })),
    attach: (token, following = {}) => attach(token, following),
    listAttachments: (token) => call('listAttachments', { token }),
    readAttachment: (attachment, offset, length) => call('readAttachment', { attachment, offset, length }),
    tileSetInfo: (attachment) => call('tileSetInfo', { attachment }),
    readTile: (attachment, zoom, x, y) => call('readTile', { attachment, zoom, x, y }),
    watch: (listener) => listeners.add(listener),
    exportPdf: (suggestedName) => call('exportPdf', { suggestedName }),
    print: () => call('print', {}),
    saveExport: (suggestedName, bytes) => call('saveExport', { suggestedName, bytes }),
    readSettings: () => call('readSettings', {}),
    writeSettings: (change, was) => call('writeSettings', settingsRequest(change, was)),
    keepPlan: (key, text) => call('keepPlan', { key, text }),
    keptPlan: (key) => call('keptPlan', { key }),
  };
}
