/** What Electron's preload puts on the page's window: named functions only, each with one plain argument. */

import type { Method } from './wire.ts';

/** Name of the property on `window`. */
export const BRIDGE_NAME = 'holewright';
/** Channel on which the main process tells the page of changes on disk. */
export const CHANGE_CHANNEL = 'holewright:change';
/** Channel on which it tells how far a copy has come. */
export const PROGRESS_CHANNEL = 'holewright:progress';

/** The methods that go from page to main process; loopback's own are left out. */
export const bridgeMethods = [
  'info',
  'list',
  'open',
  'claim',
  'release',
  'save',
  'journal',
  'readJournal',
  'clearJournal',
  'leftBehind',
  'copies',
  'openCopy',
  'create',
  'importFile',
  'attach',
  'stopAttach',
  'listAttachments',
  'readAttachment',
  'tileSetInfo',
  'readTile',
  'exportPdf',
  'print',
  'saveExport',
  'readSettings',
  'writeSettings',
  'keepPlan',
  'keptPlan',
] as const satisfies readonly Method[];

export type BridgeMethod = (typeof bridgeMethods)[number];

/** The channel of a method. */
export function channelOf(method: BridgeMethod): string {
  return `holewright:${method}`;
}

/** Answers are unknown to the page until it has checked them. */
export type Bridge = Readonly<Record<BridgeMethod, (request: unknown) => Promise<unknown>>> & {
  readonly watch: (listener: (change: unknown) => void) => () => void;
  readonly progress: (listener: (progress: unknown) => void) => () => void;
};
