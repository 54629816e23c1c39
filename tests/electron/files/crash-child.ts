/**
 * A program that edits a file until it is killed: a loopback host in a process of its own, or (`alone`) the
 * file store itself making changes as fast as it can. Prints one line per event, written at once.
 */

import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { openEditing } from '../../../electron/files/editing.ts';
import { settingsStore } from '../../../electron/files/settings.ts';
import { openFileStore } from '../../../electron/files/store.ts';
import { startLoopback } from '../../../electron/loopback/server.ts';
import { claimSoon, makeChanges, recover, settle } from './changes.ts';

const [how, workspace] = process.argv.slice(2);
if (workspace === undefined) throw new Error('usage: crash-child alone|host WORKSPACE');

const say = (line: string): void => {
  writeSync(1, `${line}\n`);
};

/** Locks that lapse soon, so that the next program need not wait long. */
const times = { beatMs: 50, lapsesAfterMs: 300, watchMs: 100 };

const opened = await openFileStore({ workspace, demoFolder: null });
if (!opened.ok) throw new Error(opened.message);
const store = opened.value;
const editing = openEditing({ store, shell: 'loopback', times });

if (how === 'host') {
  const settings = settingsStore(join(workspace, 'settings-folder'));
  const server = await startLoopback({ store, settings, editing, assets: new Map(), version: 'test' });
  say(`address ${server.startAddress()}`);
} else {
  const listed = await store.list();
  const token = listed.ok ? listed.value[0]?.token : undefined;
  if (token === undefined) throw new Error('no file');
  const desk = {
    open: store.open,
    claim: (token: string) => editing.claim('window-1', token),
    save: (request: Parameters<typeof store.save>[0]) => editing.save('window-1', request),
    journal: (request: Parameters<typeof editing.journal>[1]) => editing.journal('window-1', request),
    readJournal: (token: string) => editing.readJournal('window-1', token),
    clearJournal: (request: Parameters<typeof editing.clearJournal>[1]) =>
      editing.clearJournal('window-1', request),
  };
  await claimSoon(desk, token);
  const found = await recover(desk, token);
  const begin = await settle(desk, token, found);
  say(`begins ${begin.changes.length}`);
  const refusal = await makeChanges(
    desk,
    token,
    begin,
    Infinity,
    () => true,
    (change) => say(`made ${change}`),
    (change) => say(`saved ${change}`),
  );
  say(`refused ${JSON.stringify(refusal)}`);
}
