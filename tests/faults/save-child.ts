/**
 * A program that saves one file again and again until it is killed: each time the next text of a row that both sides
 * know. Says `begins N` before a save and `saved N` when it has been acknowledged, written at once.
 */

import { writeSync } from 'node:fs';
import { openFileStore } from '../../electron/files/store.ts';
import { textNumber, versionText } from './versions.ts';

const [workspace] = process.argv.slice(2);
if (workspace === undefined) throw new Error('usage: save-child WORKSPACE');
const say = (line: string): void => {
  writeSync(1, `${line}\n`);
};

const opened = await openFileStore({ workspace, demoFolder: null });
if (!opened.ok) throw new Error(opened.message);
const store = opened.value;
const files = await store.list();
const token = files.ok ? files.value[0]?.token : undefined;
if (token === undefined) throw new Error('no file');
const begin = await store.open(token);
if (!begin.ok) throw new Error(begin.message);
let { revision } = begin.value;
for (let number = textNumber(begin.value.text) + 1; ; number++) {
  say(`begins ${number}`);
  const saved = await store.save({ token, text: versionText(number), baseRevision: revision });
  if (!saved.ok) throw new Error(saved.message);
  ({ revision } = saved.value);
  say(`saved ${number}`);
}
