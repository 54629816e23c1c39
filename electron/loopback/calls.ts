/** The host's methods as the loopback server carries them out; requests come in already checked. */

import type { HostAnswer } from '../contract/host.ts';
import type { Method, Request, Value } from '../contract/wire.ts';
import { good } from '../files/answer.ts';
import type { Attachments } from '../files/attachments.ts';
import type { Editing } from '../files/editing.ts';
import type { SettingsStore } from '../files/settings.ts';
import type { KeptPlans } from '../files/kept-plans.ts';
import type { FileStore } from '../files/store.ts';
import type { TileSets } from '../files/tile-sets.ts';

/** Bytes of attachments, tiles and exports have addresses of their own; what Electron alone does is left out. */
export type LoopbackMethod = Exclude<
  Method,
  | 'importFile'
  | 'exportPdf'
  | 'print'
  | 'saveExport'
  | 'attach'
  | 'stopAttach'
  | 'readAttachment'
  | 'readTile'
>;
export type Calls = {
  readonly [M in LoopbackMethod]: (request: Request<M>) => Promise<HostAnswer<Value<M>>>;
};

export interface CallParts {
  readonly store: FileStore;
  readonly settings: SettingsStore;
  readonly editing: Editing;
  readonly attachments: Attachments;
  readonly tileSets: TileSets;
  readonly plans: KeptPlans;
  readonly version: string;
}

export function loopbackCalls(parts: CallParts): Calls {
  const { store, settings, editing, attachments, tileSets, plans, version } = parts;
  return {
    info: () =>
      Promise.resolve(good({ shell: 'loopback' as const, version, workspaceName: store.workspaceName })),
    list: () => store.list(),
    open: ({ token }) => store.open(token),
    claim: ({ window, token }) => editing.claim(window, token),
    release: ({ window, token }) => editing.release(window, token),
    save: ({ window, ...request }) => editing.save(window, request),
    journal: ({ window, ...request }) => editing.journal(window, request),
    readJournal: ({ window, token }) => editing.readJournal(window, token),
    clearJournal: ({ window, ...request }) => editing.clearJournal(window, request),
    leftBehind: () => editing.leftBehind(),
    copies: ({ token }) => store.copies(token),
    openCopy: ({ token, keptAt }) => store.openCopy(token, keptAt),
    create: ({ kind, suggestedName, text }) => store.create(kind, suggestedName, text),
    importText: ({ kind, name, text }) => store.create(kind, name, text),
    listAttachments: ({ token }) => attachments.list(token),
    tileSetInfo: ({ attachment }) => tileSets.info(attachment),
    readSettings: () => settings.read(),
    writeSettings: ({ settings: wanted, was }) => settings.write(wanted, was),
    keepPlan: ({ key, text }) => plans.keep(key, text),
    keptPlan: ({ key }) => plans.kept(key),
  };
}
