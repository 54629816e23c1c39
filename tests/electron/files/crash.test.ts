import { type ChildProcess, spawn } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { get } from 'node:http';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import seedrandom from 'seedrandom';
import { afterEach, describe, expect, it } from 'vitest';
import { openEditing } from '../../../electron/files/editing.ts';
import { clientOf, type ServerPlace } from '../loopback/client.ts';
import { claimSoon, makeChanges, type Recovered, recover, settle, textWith } from './changes.ts';
import { storeIn, temporaryFolder, valueOf } from './workspace.ts';

/** Changes in a row, each of them saved, that must survive, over all kills; `HOLEWRIGHT_CRASH_CHANGES` makes it more. */
const CHANGES = Number(process.env['HOLEWRIGHT_CRASH_CHANGES'] ?? 200);

const children: ChildProcess[] = [];
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
});

interface Child {
  readonly lines: AsyncIterator<string>;
  readonly kill: () => Promise<void>;
}

function start(how: 'alone' | 'host', workspace: string): Child {
  const program = join(import.meta.dirname, 'crash-child.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', program, how, workspace], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  children.push(child);
  const ended = new Promise<void>((resolve) => child.once('close', () => resolve()));
  return {
    lines: createInterface({ input: child.stdout })[Symbol.asyncIterator](),
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

async function workspaceOfChanges(): Promise<string> {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'a.geojson'), textWith([]));
  return folder;
}

/** What can be had back from the folder, seen by a program that starts now. */
async function recoveredIn(folder: string): Promise<Recovered> {
  const store = await storeIn(folder);
  const editing = openEditing({
    store,
    shell: 'electron',
    times: { beatMs: 50, lapsesAfterMs: 300, watchMs: 100 },
  });
  const { token } = valueOf(await store.list())[0]!;
  const desk = {
    open: store.open,
    claim: (token: string) => editing.claim('window-9', token),
    readJournal: (token: string) => editing.readJournal('window-9', token),
    save: () => Promise.reject(new Error('only looks')),
    journal: () => Promise.reject(new Error('only looks')),
    clearJournal: () => Promise.reject(new Error('only looks')),
  };
  await claimSoon(desk, token);
  const found = await recover(desk, token);
  await editing.close();
  return found;
}

const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index + 1);

describe(`a program killed at random points of ${CHANGES} saves in a row`, () => {
  it(
    'has lost no acknowledged change and doubled none',
    async () => {
      const random = seedrandom('kills');
      const folder = await workspaceOfChanges();
      let acked = 0;
      let saved = 0;
      let kills = 0;
      const hear = (line: string): void => {
        if (line.startsWith('made ')) acked = Number(line.slice('made '.length));
        if (line.startsWith('saved ')) saved = Number(line.slice('saved '.length));
      };
      while (acked < CHANGES) {
        const child = start('alone', folder);
        // Killed a while after so many changes, wherever it is by then: writing, syncing, renaming, clearing.
        const after = acked + 1 + Math.floor(random() * 40);
        const delayMs = random() * 25;
        for (;;) {
          const line = await child.lines.next();
          if (line.done === true) throw new Error('the program ended by itself');
          expect(line.value).not.toContain('refused');
          hear(line.value);
          if (acked >= after) break;
        }
        await new Promise((resolve) => setTimeout(resolve, delayMs));
        await child.kill();
        for (let line = await child.lines.next(); line.done !== true; line = await child.lines.next())
          hear(line.value);
        kills += 1;

        const found = await recoveredIn(folder);
        // The last one may have reached the disk just before its answer was lost.
        expect([acked, acked + 1]).toContain(found.changes.length);
        expect(found.changes).toEqual(upTo(found.changes.length));
        // What a save has been answered for is in the file itself, not only in the journal.
        expect(found.inFile).toBeGreaterThanOrEqual(saved);
        acked = found.changes.length;
      }
      expect(kills).toBeGreaterThanOrEqual(4);
    },
    60_000 + CHANGES * 500,
  );
});

describe('a host killed while its page goes on', () => {
  it('loses nothing that it has answered; the page is told and can go on with the next host', async () => {
    const random = seedrandom('hosts');
    const folder = await workspaceOfChanges();
    const acked: number[] = [];
    for (let kill = 0; kill < 3; kill++) {
      const child = start('host', folder);
      const { value } = (await child.lines.next()) as { value: string };
      const { host } = clientOf(await openStart(new URL(value.slice('address '.length))));
      const { token } = valueOf(await host.list())[0]!;
      await claimSoon(host, token);
      const begin = await settle(host, token, await recover(host, token));
      // What was answered is there; what was not answered may be there.
      expect(begin.changes.slice(0, acked.length)).toEqual(acked);
      expect(begin.changes).toEqual(upTo(begin.changes.length));
      expect(begin.changes.length - acked.length).toBeLessThanOrEqual(1);
      acked.splice(0, acked.length, ...begin.changes);
      const last = acked.length + 3 + Math.floor(random() * 15);
      const refusal = await makeChanges(
        host,
        token,
        begin,
        Infinity,
        (change) => change % 2 === 0,
        (change) => {
          acked.push(change);
          if (change === last) setTimeout(() => void child.kill(), random() * 20);
        },
      );
      expect(refusal).toMatchObject({ ok: false, failure: 'host-gone' });
      await child.kill();
    }
    const found = await recoveredIn(folder);
    expect(found.changes.slice(0, acked.length)).toEqual(acked);
  }, 120_000);
});

/** Opens a start address as a browser does, for the key that it gives. */
function openStart(address: URL): Promise<ServerPlace> {
  return new Promise((resolve, reject) => {
    get(address, { agent: false }, (response) => {
      response.resume();
      const cookie = String(response.headers['set-cookie']).split(';')[0]!;
      const folder = /^\/[^/]+\//u.exec(address.pathname)![0];
      resolve({ folder, cookie, server: { origin: address.origin } });
    }).on('error', reject);
  });
}
