import { get } from 'node:http';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { openEditing } from '../../../electron/files/editing.ts';
import { settingsStore } from '../../../electron/files/settings.ts';
import { startLoopback } from '../../../electron/loopback/server.ts';
import { courseText, failureOf, sha256, storeIn, temporaryFolder, valueOf } from '../files/workspace.ts';
import { type Asking, startAsking } from './asking.ts';
import { type Client, clientOf } from './client.ts';

/** Keeps a window's event stream open until it is told to stop. */
async function streamOf(asking: Asking, { number }: Client): Promise<() => void> {
  const url = new URL(`${asking.folder}api/events?window=${number}`, asking.server.origin);
  return new Promise((resolve, reject) => {
    const request = get(url, { agent: false, headers: { cookie: asking.cookie } }, (response) => {
      response.resume();
      response.once('data', () =>
        resolve(() => {
          request.destroy();
        }),
      );
    });
    request.on('error', () => undefined);
    request.once('error', reject);
  });
}

describe('editing over loopback', () => {
  it('serves claims, journal and saves to the page’s client', async () => {
    const asking = await startAsking();
    const { host } = clientOf(asking);
    const { token } = valueOf(await host.list())[0]!;
    const baseRevision = valueOf(await host.open(token)).revision;
    expect(failureOf(await host.save({ token, text: courseText(2), baseRevision }))).toBe('not-claimed');
    expect(failureOf(await host.journal({ token, baseRevision, text: 'x' }))).toBe('not-claimed');
    expect(valueOf(await host.claim(token))).toEqual({ isHeld: true });
    const text = 'any text: "\n\u2028 \u0000 ✓';
    const { journal, number } = valueOf(await host.journal({ token, baseRevision, text }));
    expect(number).toBe(1);
    const [left] = valueOf(await host.readJournal(token));
    expect(left).toMatchObject({ journal, isOwn: true, lostBytes: 0, isNewer: false });
    expect(left?.entries).toMatchObject([{ number: 1, baseRevision, text }]);
    valueOf(await host.save({ token, text: courseText(2), baseRevision, journalUpTo: number }));
    valueOf(await host.clearJournal({ token, journal, upTo: number }));
    expect(valueOf(await host.readJournal(token))).toEqual([]);
    expect(await readFile(join(asking.workspace, 'a.geojson'), 'utf8')).toBe(courseText(2));
    valueOf(await host.release(token));
    expect(failureOf(await host.save({ token, text: courseText(3), baseRevision: null }))).toBe(
      'not-claimed',
    );
  });

  it('passes on no more of a request than belongs in it', async () => {
    const asking = await startAsking();
    const { host } = clientOf(asking);
    const { token } = valueOf(await host.list())[0]!;
    valueOf(await host.claim(token));
    const baseRevision = sha256(courseText(1));
    valueOf(await host.journal({ token, baseRevision, text: 'x', more: 1 } as never));
    valueOf(await host.save({ token, text: courseText(2), baseRevision, more: 1 } as never));
  });

  it('tells a second window who has the file, until the first is put away', async () => {
    const asking = await startAsking();
    const [one, two] = [clientOf(asking), clientOf(asking)];
    expect(one.number).not.toBe(two.number);
    const { token } = valueOf(await one.host.list())[0]!;
    valueOf(await one.host.claim(token));
    expect(valueOf(await two.host.claim(token))).toMatchObject({
      isHeld: false,
      holder: { place: 'other-window', shell: 'loopback' },
    });
    await one.putAway();
    expect(valueOf(await two.host.claim(token)).isHeld).toBe(true);
    // Only what was granted is let go of.
    await one.putAway();
    expect(failureOf(await two.host.save({ token, text: courseText(2), baseRevision: null }))).toBe('none');
  });

  it('frees what a window held whose connection has broken, seconds later, and not while it stands', async () => {
    vi.useFakeTimers({ toFake: ['Date', 'setInterval', 'clearInterval'] });
    try {
      const asking = await startAsking();
      const [one, two] = [clientOf(asking), clientOf(asking)];
      const stop = await streamOf(asking, one);
      const { token } = valueOf(await one.host.list())[0]!;
      valueOf(await one.host.claim(token));
      await vi.advanceTimersByTimeAsync(120_000);
      expect(valueOf(await two.host.claim(token)).isHeld).toBe(false);
      stop();
      // how soon the broken connection is noticed is up to a busy computer
      await vi.waitFor(
        async () => {
          await vi.advanceTimersByTimeAsync(1000);
          expect(valueOf(await two.host.claim(token)).isHeld).toBe(true);
        },
        { timeout: 30_000 },
      );
    } finally {
      vi.useRealTimers();
    }
  });

  it('gives the file to another program on the same folder when this one ends', async () => {
    const asking = await startAsking();
    const store = await storeIn(asking.workspace);
    const settings = settingsStore(await temporaryFolder());
    const other = await startLoopback({ store, settings, assets: new Map(), version: '1.2.3' });
    const editing = openEditing({ store, shell: 'electron' });
    try {
      const { host } = clientOf(asking);
      const { token } = valueOf(await host.list())[0]!;
      valueOf(await host.claim(token));
      expect(valueOf(await editing.claim('window-2', token))).toMatchObject({
        isHeld: false,
        holder: { place: 'other-program', shell: 'loopback' },
      });
      await asking.server.close();
      expect(valueOf(await editing.claim('window-2', token)).isHeld).toBe(true);
    } finally {
      await editing.close();
      await other.close();
    }
  });
});
