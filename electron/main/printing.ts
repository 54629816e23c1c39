/** Paper and PDF: the page as its print style sheet lays it out. */

import { join } from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { told } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import type { HostAnswer, Written } from '../contract/host.ts';
import { good, refused, refusedByDisk } from '../files/answer.ts';
import { nodeDisk } from '../files/disk.ts';
import { safeNameEnding } from '../files/names.ts';
import { replaceFile } from '../files/replace.ts';

/** Asks where to, then writes the page there as PDF. `folder` is where the question starts. */
export async function exportPdf(
  window: BrowserWindow,
  folder: string,
  suggestedName: string,
  { system }: Words,
): Promise<HostAnswer<Written>> {
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    title: system.saveAs({ kind: system.exports.pdf }),
    defaultPath: join(folder, safeNameEnding('.pdf', suggestedName, 'card')),
    filters: [{ name: system.exports.pdf, extensions: ['pdf'] }],
  });
  if (canceled || filePath === '')
    return refused(
      'cancelled',
      told(({ refusals }) => refusals.noPdf),
    );
  let pdf: Uint8Array;
  try {
    pdf = await window.webContents.printToPDF({ printBackground: true, preferCSSPageSize: true });
  } catch (error) {
    return refused(
      'unknown',
      told(({ refusals }) => refusals.notLaidOut, { reason: String(error) }),
    );
  }
  try {
    await replaceFile(nodeDisk, filePath, pdf);
    return good({ where: filePath });
  } catch (error) {
    return refusedByDisk(
      error,
      told(({ refusals }) => refusals.doing.writing, { name: filePath }),
    );
  }
}

/** Opens the system's print dialog. */
export function printPage(window: BrowserWindow): Promise<HostAnswer<null>> {
  return new Promise((resolve) => {
    window.webContents.print({ printBackground: true }, (isDone, reason) => {
      if (isDone) resolve(good(null));
      else if (/cancel/iu.test(reason))
        resolve(
          refused(
            'cancelled',
            told(({ refusals }) => refusals.nothingPrinted),
          ),
        );
      else
        resolve(
          refused(
            'unknown',
            told(({ refusals }) => refusals.printer, { reason }),
          ),
        );
    });
  });
}
