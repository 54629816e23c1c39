/** Asks where a file that the person takes out is to go, and writes it there. */

import { join } from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { told } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import { exportEnding } from '../contract/export-name.ts';
import type { HostAnswer, Written } from '../contract/host.ts';
import { errorCode, good, refused, refusedByDisk } from '../files/answer.ts';
import { nodeDisk } from '../files/disk.ts';
import { safeExportName } from '../files/exports.ts';
import { makeFile, replaceFile } from '../files/replace.ts';

/** `folder` is where the question starts. The dialog asks before a file is replaced. */
export async function saveExport(
  window: BrowserWindow,
  folder: string,
  suggestedName: string,
  bytes: Uint8Array,
  { system }: Words,
): Promise<HostAnswer<Written>> {
  const ending = exportEnding(suggestedName);
  const name = safeExportName(suggestedName);
  if (ending === null || name === null) {
    return refused(
      'bad-request',
      told(({ refusals }) => refusals.noExport, { name: suggestedName }),
    );
  }
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    title: system.saveAs({ kind: system.exports[ending] }),
    defaultPath: join(folder, name),
    filters: [{ name: system.exports[ending], extensions: [ending.slice(1)] }],
  });
  if (canceled || filePath === '')
    return refused(
      'cancelled',
      told(({ refusals }) => refusals.nothingWritten),
    );
  // Some systems leave the ending to the program; without it no other program knows what the file is.
  const isWhole = exportEnding(filePath) === ending;
  const path = isWhole ? filePath : `${filePath}${ending}`;
  try {
    // The dialog has asked about the name that it gave, not about the one with the ending.
    if (isWhole) await replaceFile(nodeDisk, path, bytes);
    else await makeFile(nodeDisk, path, bytes);
    return good({ where: path });
  } catch (error) {
    return errorCode(error) === 'EEXIST'
      ? refused(
          'not-allowed',
          told(({ refusals }) => refusals.isThere, { name: path }),
        )
      : refusedByDisk(
          error,
          told(({ refusals }) => refusals.doing.writing, { name: path }),
        );
  }
}
