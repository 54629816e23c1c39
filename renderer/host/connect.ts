/** Finds the host that this page runs on. */

import { BRIDGE_NAME, type Bridge } from '../../electron/contract/bridge.ts';
import type { Host } from '../../electron/contract/host.ts';
import type { Words } from '../../core/words/words.ts';
import { electronHost } from './electron-client.ts';
import { loopbackHost } from './loopback-client.ts';

declare global {
  interface Window {
    readonly [BRIDGE_NAME]?: Bridge;
  }
}

/** The preload's bridge where there is one, else the server that this page came from. Never rejects. */
export function connectHost(words: () => Words): Promise<Host> {
  const bridge = window[BRIDGE_NAME];
  return Promise.resolve(
    bridge === undefined
      ? loopbackHost(new URL('./', document.baseURI), undefined, words)
      : electronHost(bridge, undefined, words),
  );
}
