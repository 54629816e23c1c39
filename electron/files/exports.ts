/**
 * What a person takes out of the program where the host has no window to ask for a place: it goes into the
 * folder `exports` of the workspace, under a name that is still free there.
 */

import { dirname, join } from 'node:path';
import { inEnglish, told } from '../../core/words/told.ts';
import type { HostAnswer, Written } from '../contract/host.ts';
import { exportEnding } from '../contract/export-name.ts';
import { errorCode, good, reasonOf, refused } from './answer.ts';
import { freeName, safeNameEnding } from './names.ts';
import { makeFile, sweepUnfinished } from './replace.ts';
import type { FileStore } from './store.ts';
import { oneAtATime } from './turns.ts';

const FOLDER_NAME = 'exports';

export interface Exports {
  /** Writes all of it or nothing; `where` is told to the person. Never replaces a file. */
  readonly save: (suggestedName: string, bytes: Uint8Array) => Promise<HostAnswer<Written>>;
}

export function openExports(
  { disk, workspace, workspaceName, refuse }: FileStore,
  notice: (message: string) => void = () => undefined,
): Exports {
  const inTurn = oneAtATime();
  const folder = join(workspace, FOLDER_NAME);

  const save = async (suggestedName: string, bytes: Uint8Array): Promise<HostAnswer<Written>> => {
    const wanted = safeExportName(suggestedName);
    if (wanted === null)
      return refused(
        'bad-request',
        told(({ refusals }) => refusals.noExport, { name: suggestedName }),
      );
    try {
      await disk.makeInside(folder);
      if ((await disk.realPath(folder)) !== folder) {
        return refused(
          'not-allowed',
          told(({ refusals }) => refusals.exportsIsLink, { folder: FOLDER_NAME, workspace: workspaceName }),
        );
      }
      await disk.syncFolder(dirname(folder));
      await sweepUnfinished(disk, folder, Date.now());
      const taken = (await disk.plainFiles(folder)).map(({ name }) => name);
      for (;;) {
        const name = freeName(wanted, taken);
        try {
          await makeFile(disk, join(folder, name), bytes, (error) =>
            notice(
              `${name} is written, but a power cut in the next seconds might undo that (${reasonOf(error)}).`,
            ),
          );
          const where = told(({ refusals }) => refusals.inExports, {
            folder: FOLDER_NAME,
            name,
            workspace: workspaceName,
          });
          return good({ where: inEnglish(where), told: where });
        } catch (error) {
          // Something that is no plain file, or that came up a moment ago, has the name.
          if (errorCode(error) !== 'EEXIST' || taken.length > 10_000) throw error;
          taken.push(name);
        }
      }
    } catch (error) {
      return refuse(
        error,
        told(({ refusals }) => refusals.doing.writing, { name: wanted }),
      );
    }
  };

  return { save: (suggestedName, bytes) => inTurn(() => save(suggestedName, bytes)) };
}

/** A safe name near the suggested one, with its own ending; null where the ending is none that is written. */
export function safeExportName(suggestedName: string): string | null {
  const ending = exportEnding(suggestedName);
  if (ending === null) return null;
  return safeNameEnding(ending, suggestedName.slice(0, -ending.length), 'export');
}
