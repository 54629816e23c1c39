/** What the page may ask of the main process: named functions, nothing of Electron itself. */

import { contextBridge, ipcRenderer } from 'electron';
import {
  type Bridge,
  BRIDGE_NAME,
  type BridgeMethod,
  bridgeMethods,
  CHANGE_CHANNEL,
  channelOf,
} from '../contract/bridge.ts';

function ask(method: BridgeMethod): (request: unknown) => Promise<unknown> {
  const channel = channelOf(method);
  return (request) => ipcRenderer.invoke(channel, request);
}

const calls = Object.fromEntries(bridgeMethods.map((method) => [method, ask(method)])) as Omit<
  Bridge,
  'watch'
>;

const bridge: Bridge = {
  ...calls,
  watch: (listener) => {
    // The event itself carries the sender and stays here.
    const hear = (_event: unknown, change: unknown): void => {
      listener(change);
    };
    ipcRenderer.on(CHANGE_CHANNEL, hear);
    return () => {
      ipcRenderer.removeListener(CHANGE_CHANNEL, hear);
    };
  },
};

contextBridge.exposeInMainWorld(BRIDGE_NAME, bridge);
