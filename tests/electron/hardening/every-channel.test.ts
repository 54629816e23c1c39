/** Whoever sends it and whatever it holds: each channel of the main process by itself refuses what is not the page's. */

import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { bridgeMethods, channelOf } from '../../../electron/contract/bridge.ts';
import { largestRequestBytes } from '../../../electron/contract/wire.ts';

type Handler = (event: unknown, ...sent: unknown[]) => Promise<{ ok: boolean; failure?: string }>;
const handlers = new Map<string, Handler>();
vi.mock('electron', () => ({
  ipcMain: { handle: (channel: string, handler: Handler) => handlers.set(channel, handler) },
  dialog: {},
}));
const { answerPage } = await import('../../../electron/main/answer-page.ts');

const page = { url: 'holewright://app/', parent: null, processId: 1, routingId: 1 };
const reached: string[] = [];
/** Stands for every part behind the messages, and notes that it was reached. */
const part: unknown = new Proxy(
  {},
  {
    get: (_, name) => () => {
      reached.push(String(name));
      return Promise.resolve({ ok: true, value: null });
    },
  },
);
answerPage({
  store: part,
  settings: part,
  editing: part,
  attachments: part,
  tileSets: part,
  plans: part,
  version: '1',
  exportFolder: '/',
  window: () => ({ webContents: { mainFrame: page } }),
} as never);

const strangers = [
  null,
  { ...page, parent: page, routingId: 2 },
  { ...page, url: 'https://evil.example/' },
  { ...page, url: 'holewright://app.evil.example/' },
  { ...page, processId: 2 },
];
const misshapen: readonly (readonly unknown[])[] = [
  [],
  [{}, {}],
  [null],
  ['text'],
  [[]],
  [{ path: '/etc/passwd' }],
  [{ __proto__: null, a: 1 }],
];

it.each(['checked.md', 'german/checked.md'])('are as many channels and messages as %s says', (page) => {
  const text = readFileSync(new URL(`../../../renderer/help/${page}`, import.meta.url), 'utf8');
  const [, channels, messages] = /(\d+) (?:channels|Kanälen) *\| (\d+) /u.exec(text) ?? [];
  expect(Number(channels)).toBe(bridgeMethods.length);
  expect(Number(messages)).toBe(bridgeMethods.length * (strangers.length + 1 + misshapen.length));
});

describe.each(bridgeMethods)('the channel of %s', (method) => {
  const handler = handlers.get(channelOf(method))!;

  it('refuses frames that are not the page', async () => {
    for (const senderFrame of strangers) {
      expect(await handler({ senderFrame }, {})).toMatchObject({ ok: false, failure: 'not-allowed' });
    }
    expect(reached).toEqual([]);
  });

  it('refuses what is too large, of another shape, or more than was agreed', async () => {
    const vast = { text: 'x'.repeat(Math.min(largestRequestBytes(method) + 1, 2 ** 28)) };
    for (const sent of [[vast], ...misshapen]) {
      expect(await handler({ senderFrame: page }, ...sent)).toMatchObject({ ok: false });
    }
    expect(reached).toEqual([]);
  });
});
