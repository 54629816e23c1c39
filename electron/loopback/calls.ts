/** The host's methods as the loopback server carries them out; requests come in already checked. */

import type { HostAnswer } from '../contract/host.ts';
import type { Method, Request, Value } from '../contract/wire.ts';
import { good } from '../files/answer.ts';
import type { SettingsStore } from '../files/settings.ts';
import type { FileStore } from '../files/store.ts';

export type LoopbackMethod = Exclude<Method, 'importFile' | 'exportPdf' | 'print'>;
export type Calls = {
  readonly [M in LoopbackMethod]: (request: Request<M>) => Promise<HostAnswer<Value<M>>>;
};

export function loopbackCalls(store: FileStore, settings: SettingsStore, version: string): Calls {
  return {
    info: () =>
      Promise.resolve(good({ shell: 'loopback' as const, version, workspaceName: store.workspaceName })),
    list: () => store.list(),
    open: ({ token }) => store.open(token),
    save: (request) => store.save(request),
    copies: ({ token }) => store.copies(token),
    openCopy: ({ token, keptAt }) => store.openCopy(token, keptAt),
    create: ({ kind, suggestedName, text }) => store.create(kind, suggestedName, text),
    importText: ({ kind, name, text }) => store.create(kind, name, text),
    readSettings: () => settings.read(),
    writeSettings: ({ settings: wanted }) => settings.write(wanted),
  };
}
