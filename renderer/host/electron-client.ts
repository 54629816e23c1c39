/** The host as seen through Electron's preload: each call goes over the bridge and its answer is checked. */

import type { Bridge, BridgeMethod } from '../../electron/contract/bridge.ts';
import type { Host, HostAnswer } from '../../electron/contract/host.ts';
import { changeSchema, readAnswer, type Request, type Value } from '../../electron/contract/wire.ts';
import * as v from 'valibot';
import { changeListeners } from './listeners.ts';
import { ownSaves } from './own-saves.ts';

export function electronHost(bridge: Bridge): Host {
  const listeners = changeListeners();
  const saves = ownSaves(listeners.tell);
  bridge.watch((change) => {
    const read = v.safeParse(changeSchema, change);
    if (read.success) saves.hear(read.output);
  });

  const call = async <M extends BridgeMethod>(
    method: M,
    request: Request<M>,
  ): Promise<HostAnswer<Value<M>>> => {
    try {
      return readAnswer(method, await bridge[method](request));
    } catch {
      return {
        ok: false,
        failure: 'host-gone',
        message:
          'The part of Holewright that reads and writes files does not answer. Keep this window open, copy what you cannot lose, then quit and start Holewright again.',
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
    importFile: (kind) => remember(call('importFile', { kind })),
    watch: (listener) => listeners.add(listener),
    exportPdf: (suggestedName) => call('exportPdf', { suggestedName }),
    print: () => call('print', {}),
    readSettings: () => call('readSettings', {}),
    writeSettings: (settings) => call('writeSettings', { settings: { ...settings } }),
  };
}
