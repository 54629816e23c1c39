import { get } from 'node:http';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { FileChange, Host } from '../../../electron/contract/host.ts';
import { keptPlans } from '../../../electron/files/kept-plans.ts';
import { MOST_STREAMS } from '../../../electron/loopback/event-streams.ts';
import { courseText, failureOf, sha256, temporaryFolder, valueOf } from '../files/workspace.ts';
import { type Asking, startAsking } from './asking.ts';
import { clientOf } from './client.ts';

/** Server-sent events until `enough` have come. */
function listen(
  asking: Asking,
  enough: number,
  headers: Readonly<Record<string, string>> = {},
): Promise<{
  readonly status: number;
  readonly opened: Promise<void>;
  readonly events: Promise<readonly string[]>;
  readonly stop: () => void;
}> {
  return new Promise((resolve, reject) => {
    const url = new URL(`${asking.folder}api/events`, asking.server.origin);
    const request = get(url, { agent: false, headers: { cookie: asking.cookie, ...headers } }, (response) => {
      let text = '';
      let open = (): void => undefined;
      const opened = new Promise<void>((resolve) => (open = resolve));
      const events = new Promise<readonly string[]>((resolve) => {
        response.on('data', (part: Buffer) => {
          text += part.toString();
          if (text.includes('id: ')) open();
          const whole = text.split('\n\n').filter((event) => event.includes('data: '));
          if (text.endsWith('\n\n') && whole.length >= enough) resolve(whole);
        });
      });
      resolve({ status: response.statusCode ?? 0, opened, events, stop: () => request.destroy() });
    });
    request.on('error', reject);
  });
}

describe('the host over loopback', () => {
  it('serves every method to the page’s client', async () => {
    const plansFolder = join(await temporaryFolder(), 'plans');
    const asking = await startAsking({ plans: keptPlans(plansFolder) });
    const { host } = clientOf(asking);
    expect(valueOf(await host.info())).toMatchObject({ shell: 'loopback', version: '1.2.3' });

    const [listed] = valueOf(await host.list());
    expect(listed).toMatchObject({ name: 'a.geojson', kind: 'course', readOnly: false });
    const opened = valueOf(await host.open(listed!.token));
    expect(opened.text).toBe(courseText(1));

    const { token } = listed!;
    expect(valueOf(await host.claim(token))).toEqual({ isHeld: true });
    const saved = valueOf(await host.save({ token, text: courseText(2), baseRevision: opened.revision }));
    expect(saved.revision).toBe(sha256(courseText(2)));
    expect(await readFile(join(asking.workspace, 'a.geojson'), 'utf8')).toBe(courseText(2));
    const stale = await host.save({ token, text: courseText(3), baseRevision: opened.revision });
    expect(stale).toMatchObject({ failure: 'changed-on-disk', revisionOnDisk: saved.revision });

    const [copy] = valueOf(await host.copies(token));
    expect(valueOf(await host.openCopy(token, copy!.keptAt)).text).toBe(courseText(1));

    const made = valueOf(await host.create('course', '../new one', courseText(4)));
    expect(made.entry.name).toBe('new one.geojson');
    expect(made.text).toBe(courseText(4));

    const settings = { units: 'metres', theme: 'dark', lastCourse: token, lastPlayer: null } as const;
    valueOf(await host.writeSettings(settings));
    expect(valueOf(await host.readSettings())).toEqual({ ...settings, tileSources: [] });
    expect(failureOf(await host.open('unknown-token'))).toBe('not-found');

    const key = sha256('plan');
    expect(valueOf(await host.keptPlan(key))).toEqual({ text: null });
    expect(valueOf(await host.keepPlan(key, '{"a":"“b”"}'))).toEqual({ isKept: true });
    expect(valueOf(await host.keptPlan(key))).toEqual({ text: '{"a":"“b”"}' });
    expect(await readdir(plansFolder)).toEqual([key]);
  });

  it('takes in a file that the person picks, and says no to others', async () => {
    const asking = await startAsking();
    const picked = (parts: BlobPart[], name: string): Host =>
      clientOf(asking, { pickFile: () => Promise.resolve(new File(parts, name)) }).host;
    const taken = valueOf(await picked([courseText(5)], '../../elm.json').importFile('course'));
    expect(taken.entry.name).toBe('elm.geojson');
    expect(await readFile(join(asking.workspace, 'elm.geojson'), 'utf8')).toBe(courseText(5));
    expect(failureOf(await picked([Uint8Array.of(0xff, 0xfe)], 'a.geojson').importFile('course'))).toBe(
      'not-text',
    );
    expect(failureOf(await picked(['no course'], 'a.geojson').importFile('course'))).toBe('bad-request');
    expect(failureOf(await clientOf(asking).host.importFile('course'))).toBe('cancelled');
  });

  it('uses the browser’s own print window for paper and PDF', async () => {
    let prints = 0;
    const { host } = clientOf(await startAsking(), { print: () => (prints += 1) });
    valueOf(await host.print());
    valueOf(await host.exportPdf('card'));
    expect(prints).toBe(2);
  });

  it('that has ended is an answer, not an exception', async () => {
    const asking = await startAsking();
    const { host } = clientOf(asking);
    await asking.server.close();
    expect(failureOf(await host.list())).toBe('host-gone');
    expect(failureOf(await host.save({ token: 'abcdefgh', text: '', baseRevision: null }))).toBe('host-gone');
  });

  it('takes a large course and gives it back unchanged', async () => {
    const asking = await startAsking();
    const { host } = clientOf(asking);
    const text = courseText(60_000);
    expect(text.length).toBeGreaterThan(5_000_000);
    const made = valueOf(await host.create('course', 'large', text));
    expect(valueOf(await host.open(made.entry.token)).text === text).toBe(true);
  });
});

describe('changes on disk', () => {
  it('reach every listening window, and one that comes back is told what it missed', async () => {
    const asking = await startAsking();
    const one = await listen(asking, 1);
    const two = await listen(asking, 1);
    await Promise.all([one.opened, two.opened]);
    await writeFile(join(asking.workspace, 'a.geojson'), courseText(2));
    const [first] = await one.events;
    expect(await two.events).toEqual([first]);
    expect(first).toMatch(/^id: 1\ndata: /u);
    expect(JSON.parse(first!.split('data: ')[1]!)).toMatchObject({
      change: 'changed',
      revision: sha256(courseText(2)),
    });
    one.stop();
    two.stop();

    const back = await listen(asking, 1, { 'last-event-id': '0' });
    expect(await back.events).toEqual([first]);
    back.stop();
  });

  it('can be asked for where the browser has no connection left for a stream', async () => {
    const asking = await startAsking();
    const streams = [];
    for (let count = 0; count < MOST_STREAMS; count++) streams.push(await listen(asking, 1));
    expect((await listen(asking, 1)).status).toBe(204);

    const before = JSON.parse((await asking.get('api/changes')).body) as { value: { next: number } };
    expect(before).toEqual({ ok: true, value: { next: 0, changes: [] } });
    await writeFile(join(asking.workspace, 'a.geojson'), courseText(2));
    await streams[0]!.events;
    const after = await asking.get(`api/changes?since=${before.value.next}`);
    expect(JSON.parse(after.body)).toMatchObject({
      ok: true,
      value: { next: 1, changes: [{ change: 'changed', revision: sha256(courseText(2)) }] },
    });
    for (const stream of streams) stream.stop();
  });

  it('made by the page itself are no news to it', async () => {
    const asking = await startAsking();
    const { host, hear } = clientOf(asking);
    const heard: FileChange[] = [];
    host.watch((change) => heard.push(change));
    const { token } = valueOf(await host.list())[0]!;
    valueOf(await host.claim(token));
    const { revision } = valueOf(await host.save({ token, text: courseText(2), baseRevision: null }));
    hear({ token, change: 'changed', revision });
    hear({ token, change: 'changed', revision: sha256('another') });
    expect(heard).toEqual([{ token, change: 'changed' }]);
  });
});

describe('a port that is taken', () => {
  it('is an error of the system, not a silent other port', async () => {
    const { server } = await startAsking();
    const port = Number(new URL(server.origin).port);
    await expect(startAsking({ port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });
});
