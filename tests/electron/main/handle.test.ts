import type { WebFrameMain } from 'electron';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { bridgeMethods, channelOf } from '../../../electron/contract/bridge.ts';
import type { HostAnswer } from '../../../electron/contract/host.ts';
import { good } from '../../../electron/files/answer.ts';
import { courseText } from '../files/workspace.ts';

type Listener = (event: unknown, ...sent: unknown[]) => Promise<HostAnswer<unknown>>;
const listeners = new Map<string, Listener>();
vi.mock('electron', () => ({
  ipcMain: { handle: (channel: string, listener: Listener) => listeners.set(channel, listener) },
}));

const { handle, isFromPage } = await import('../../../electron/main/handle.ts');
const { isWithinBytes } = await import('../../../electron/main/payload-size.ts');

type Frame = Pick<WebFrameMain, 'url' | 'parent' | 'processId' | 'routingId'>;
const frame = (changes: Partial<Frame> = {}): WebFrameMain =>
  ({ url: 'holewright://app/', parent: null, processId: 7, routingId: 1, ...changes }) as never;

const page = frame();
let work: ReturnType<typeof vi.fn<(request: unknown) => Promise<HostAnswer<{ revision: string }>>>>;

beforeEach(() => {
  listeners.clear();
  work = vi.fn(() => Promise.resolve(good({ revision: 'a'.repeat(64) })));
  handle('save', () => page, work);
});

const request = { window: 'window-1', token: 'abcdefgh', text: courseText(1), baseRevision: null };
const save = (senderFrame: WebFrameMain | null, ...sent: unknown[]): Promise<HostAnswer<unknown>> =>
  listeners.get(channelOf('save'))!({ senderFrame }, ...sent);

describe('a message', () => {
  it('from the page’s main frame is answered', async () => {
    expect(await save(page, request)).toEqual({ ok: true, value: { revision: 'a'.repeat(64) } });
    expect(work).toHaveBeenCalledWith(request);
    // Electron may hand out another object for the same frame.
    expect((await save(frame(), request)).ok).toBe(true);
  });

  it.each([
    ['a sub-frame with the page’s own address', frame({ parent: page, routingId: 2 })],
    ['a sub-frame that says it has the main frame’s number', frame({ parent: page })],
    ['a foreign page in the main frame', frame({ url: 'https://evil.example/' })],
    ['an address that only begins like ours', frame({ url: 'holewright://app.evil.example/' })],
    ['another host of our scheme', frame({ url: 'holewright://other/' })],
    ['our host under another scheme', frame({ url: 'https://app/' })],
    ['an address with a user in it', frame({ url: 'holewright://app@evil.example/' })],
    ['no address', frame({ url: '' })],
    ['another window', frame({ routingId: 9 })],
    ['another process', frame({ processId: 8 })],
    ['a frame that has gone', null],
  ])('from %s is refused', async (_, sender) => {
    expect(await save(sender, request)).toMatchObject({ ok: false, failure: 'not-allowed' });
    expect(work).not.toHaveBeenCalled();
  });

  it('is refused when there is no window', () => {
    expect(isFromPage({ senderFrame: page }, null)).toBe(false);
  });

  it('that is too large for its method is refused unread', async () => {
    handle('open', () => page, work as never);
    const open = listeners.get(channelOf('open'))!;
    expect(await open({ senderFrame: page }, { token: 'a'.repeat(20_000) })).toMatchObject({
      failure: 'too-large',
    });
    const vast = { ...request, text: 'x'.repeat(129 * 1024 * 1024) };
    expect(await save(page, vast)).toMatchObject({ failure: 'too-large' });
    expect(work).not.toHaveBeenCalled();
  });

  it.each<[string, readonly unknown[]]>([
    ['nothing', []],
    ['two things', [request, request]],
    ['a function', [() => 1]],
    ['deep nesting', [JSON.parse(`${'['.repeat(50)}${']'.repeat(50)}`)]],
    ['very many parts', [Array.from({ length: 100_000 }, () => 0)]],
    ['a class instance', [new Map()]],
    ['bytes', [new Uint8Array(10)]],
  ])('with %s is refused', async (_, sent) => {
    expect((await save(page, ...sent)).ok).toBe(false);
    expect(work).not.toHaveBeenCalled();
  });

  it.each([
    null,
    'text',
    {},
    { ...request, token: '../../etc/passwd' },
    { ...request, token: 5 },
    { ...request, baseRevision: 'short' },
    { ...request, path: '/etc/passwd' },
    { ...request, text: undefined },
  ])('of the shape %j is refused', async (sent) => {
    expect(await save(page, sent)).toMatchObject({ ok: false, failure: 'bad-request' });
    expect(work).not.toHaveBeenCalled();
  });

  it('whose work fails is answered with words, not with an exception', async () => {
    work.mockRejectedValue(new Error('boom'));
    expect(await save(page, request)).toMatchObject({ ok: false, failure: 'unknown' });
  });
});

describe('the size of a message', () => {
  it('is counted in bytes of UTF-8 over all its texts and bytes', () => {
    expect(isWithinBytes({ a: 'ab', b: 'cd' }, 6)).toBe(true);
    expect(isWithinBytes({ a: 'ab', b: 'cd' }, 5)).toBe(false);
    expect(isWithinBytes('€', 3)).toBe(true);
    expect(isWithinBytes('€', 2)).toBe(false);
    expect(isWithinBytes({ a: 'ab', b: new ArrayBuffer(4) }, 8)).toBe(true);
    expect(isWithinBytes({ a: 'ab', b: new ArrayBuffer(4) }, 7)).toBe(false);
  });
});

describe('channels', () => {
  it('are one per method', () => {
    expect(new Set(bridgeMethods.map(channelOf)).size).toBe(bridgeMethods.length);
  });
});
