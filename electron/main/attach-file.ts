/** Lets the person pick a picture or map file from anywhere and copies it beside a course. */

import { constants } from 'node:fs';
import { open } from 'node:fs/promises';
import { basename } from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { told } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import { PROGRESS_CHANNEL } from '../contract/bridge.ts';
import type { Attachment, HostAnswer } from '../contract/host.ts';
import { refused, refusedByDisk } from '../files/answer.ts';
import type { Attachments } from '../files/attachments.ts';

/** Copies under way, by the number that the page gave them. */
export type Copies = Map<string, AbortController>;

const PART_BYTES = 1024 * 1024;
/** Progress is told this often at most, in parts of the whole. */
const TOLD_STEPS = 100;

// A pipe must not hold the program up; absent on Windows.
const noWait = (constants.O_NONBLOCK as number | undefined) ?? 0;

export async function attachFile(
  window: BrowserWindow,
  attachments: Attachments,
  copies: Copies,
  course: string,
  job: string,
  { system }: Words,
): Promise<HostAnswer<Attachment>> {
  const { canceled, filePaths } = await dialog.showOpenDialog(window, {
    title: system.attach,
    properties: ['openFile'],
    filters: [
      {
        name: system.picturesAndMaps,
        extensions: ['png', 'jpg', 'jpeg', 'webp', 'tif', 'tiff', 'pmtiles', 'mbtiles'],
      },
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
  const stop = new AbortController();
  copies.set(job, stop);
  try {
    // Opened once: what is measured is what is copied, whatever happens to the name meanwhile.
    const file = await open(picked, constants.O_RDONLY | noWait);
    try {
      const seen = await file.stat();
      if (!seen.isFile())
        return refused(
          'not-allowed',
          told(({ refusals }) => refusals.attachments.notPlain, { name }),
        );
      let lastStep = 0;
      return await attachments.take(
        course,
        {
          name,
          bytes: seen.size,
          parts: file.createReadStream({ autoClose: false, highWaterMark: PART_BYTES }),
        },
        {
          signal: stop.signal,
          progress: (doneBytes, totalBytes) => {
            const step = Math.floor((doneBytes / Math.max(1, totalBytes)) * TOLD_STEPS);
            if (step === lastStep || window.isDestroyed()) return;
            lastStep = step;
            window.webContents.send(PROGRESS_CHANNEL, { job, doneBytes, totalBytes });
          },
        },
      );
    } finally {
      await file.close();
    }
  } catch (error) {
    return refusedByDisk(
      error,
      told(({ refusals }) => refusals.doing.reading, { name }),
    );
  } finally {
    copies.delete(job);
  }
}
