/** Lets the person pick a file from anywhere and copies it into the workspace. */

import { basename } from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { told } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import type { FileKind, HostAnswer, OpenedFile } from '../contract/host.ts';
import { LARGEST_TEXT_BYTES } from '../contract/wire.ts';
import { refused, refusedByDisk } from '../files/answer.ts';
import { textOf } from '../files/content.ts';
import { nodeDisk } from '../files/disk.ts';
import type { FileStore } from '../files/store.ts';

export async function importFile(
  window: BrowserWindow,
  store: FileStore,
  kind: FileKind,
  { system }: Words,
): Promise<HostAnswer<OpenedFile>> {
  const { canceled, filePaths } = await dialog.showOpenDialog(window, {
    title: system.bringIn[kind],
    properties: ['openFile'],
    filters: [
      { name: system.kinds[kind], extensions: kind === 'course' ? ['geojson', 'json'] : ['json'] },
      { name: system.everyFile, extensions: ['*'] },
    ],
  });
  const picked = filePaths[0];
  if (canceled || picked === undefined)
    return refused(
      'cancelled',
      told(({ refusals }) => refusals.noneChosen),
    );
  const name = basename(picked);
  try {
    // The person's own choice may be a link; what it leads to is read once, as a plain file.
    const bytes = await nodeDisk.read(await nodeDisk.realPath(picked), LARGEST_TEXT_BYTES);
    const text = textOf(bytes, name);
    return text.ok ? await store.create(kind, name, text.value) : text;
  } catch (error) {
    return refusedByDisk(
      error,
      told(({ refusals }) => refusals.doing.reading, { name }),
    );
  }
}
