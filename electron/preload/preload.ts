/** What the page may ask of the main process: named functions, nothing of Electron itself. */

import { contextBridge, ipcRenderer } from 'electron';
import {
  type Bridge,
  BRIDGE_NAME,
  type BridgeMethod,
  bridgeMethods,
  CHANGE_CHANNEL,
  channelOf,
  PROGRESS_CHANNEL,
} from '../contract/bridge.ts';

function ask(method: BridgeMethod): (request: unknown) => Promise<unknown> {
  const channel = channelOf(method);
  return (request) => ipcRenderer.invoke(channel, request);
}

/** Passes on what the main process says on a channel; the event itself carries the sender and stays here. */
function hearOn(channel: string): (listener: (told: unknown) => void) => () => void {
  return (listener) => {
    const hear = (_event: unknown, told: unknown): void => {
      listener(told);
    };
    ipcRenderer.on(channel, hear);
    return () => {
      ipcRenderer.removeListener(channel, hear);
    };
  };
}

const calls = Object.fromEntries(bridgeMethods.map((method) => [method, ask(method)])) as Omit<
  Bridge,
  'watch' | 'progress'
>;

const bridge: Bridge = {
  ...calls,
  watch: hearOn(CHANGE_CHANNEL),
  progress: hearOn(PROGRESS_CHANNEL),
};

contextBridge.exposeInMainWorld(BRIDGE_NAME, bridge);
