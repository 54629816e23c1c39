import { readFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { createBuilder } from 'vite';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import {
  type Bridge,
  BRIDGE_NAME,
  bridgeMethods,
  CHANGE_CHANNEL,
} from '../../../electron/contract/bridge.ts';
import { electronHost } from '../../../renderer/host/electron-client.ts';

const exposed = new Map<string, Bridge>();
const invoked: [string, ...unknown[]][] = [];
const hearing = new Map<string, Set<(event: unknown, ...sent: unknown[]) => void>>();
let reply: unknown = { ok: true, value: [] };

vi.mock('electron', () => ({
  contextBridge: { exposeInMainWorld: (name: string, api: Bridge) => exposed.set(name, api) },
  ipcRenderer: {
    invoke: (...sent: [string, ...unknown[]]) => {
      invoked.push(sent);
      return Promise.resolve(reply);
    },
    on: (channel: string, listener: (event: unknown) => void) => {
      const all = hearing.get(channel) ?? new Set();
      hearing.set(channel, all.add(listener));
    },
    removeListener: (channel: string, listener: (event: unknown) => void) =>
      hearing.get(channel)?.delete(listener),
  },
}));

await import('../../../electron/preload/preload.ts');
const bridge = exposed.get(BRIDGE_NAME)!;

describe('what the page sees', () => {
  it('is one property of named functions and nothing else', () => {
    expect([...exposed.keys()]).toEqual([BRIDGE_NAME]);
    expect(Object.keys(bridge).sort()).toEqual([...bridgeMethods, 'progress', 'watch'].sort());
    for (const value of Object.values(bridge)) expect(typeof value).toBe('function');
  });

  it('sends one argument on the method’s own channel, whatever else the page passes', async () => {
    invoked.length = 0;
    const open: (...sent: unknown[]) => Promise<unknown> = bridge.open;
    await open({ token: 't' }, 'more', { channel: 'other' });
    expect(invoked).toEqual([['holewright:open', { token: 't' }]]);
  });

  it('hears of changes without the event that carries the sender, until it leaves', () => {
    const heard: unknown[][] = [];
    const leave = bridge.watch((...sent) => heard.push(sent));
    const tell = (): void => {
      for (const listener of hearing.get(CHANGE_CHANNEL) ?? [])
        listener({ sender: 'secret' }, { token: 't' }, 'more');
    };
    tell();
    expect(heard).toEqual([[{ token: 't' }]]);
    leave();
    tell();
    expect(heard).toHaveLength(1);
  });
});

describe('the page’s client over the bridge', () => {
  it('checks answers and makes a refusal of those it does not understand', async () => {
    const host = electronHost(bridge, () => undefined);
    reply = { ok: true, value: [] };
    expect(await host.list()).toEqual({ ok: true, value: [] });
    for (const odd of [
      undefined,
      null,
      'yes',
      { ok: true },
      { ok: true, value: [{ token: 1 }] },
      { ok: false },
    ]) {
      reply = odd;
      expect(await host.list()).toMatchObject({ ok: false, failure: 'unknown' });
    }
    reply = { ok: false, failure: 'disk-full', message: 'full' };
    expect(await host.list()).toEqual({ ok: false, failure: 'disk-full', message: 'full' });
  });

  it('answers when the main process is gone', async () => {
    const gone = { ...bridge, list: () => Promise.reject(new Error('gone')) };
    expect(await electronHost(gone, () => undefined).list()).toMatchObject({
      ok: false,
      failure: 'host-gone',
    });
  });
});

describe('the built preload', () => {
  it('is one CommonJS file that asks for electron alone, as a sandboxed preload must', async () => {
    const root = join(import.meta.dirname, '../../..');
    const builder = await createBuilder({
      configFile: join(root, 'electron/vite.config.ts'),
      logLevel: 'silent',
    });
    await builder.buildApp();
    const built = readFileSync(join(root, 'dist/electron/preload.cjs'), 'utf8');
    const asked = [...built.matchAll(/\brequire\(["']([^"']+)["']\)/gu)].map((match) => match[1]);
    expect(asked).toEqual(['electron']);
    expect(built).not.toMatch(/^\s*(?:import|export)\s/mu);
    const main = readFileSync(join(root, 'dist/electron/main.cjs'), 'utf8');
    const wanted = [...main.matchAll(/\brequire\(["']([^"']+)["']\)/gu)].map((match) => match[1]!);
    for (const name of wanted) expect(name === 'electron' || isBuiltin(name), name).toBe(true);
    // SQLite is found beside the program at run time, its WebAssembly with it.
    expect(main).not.toContain('sqlite3InitModule');
    expect(main).toContain('@sqlite.org/sqlite-wasm');
  });
});
