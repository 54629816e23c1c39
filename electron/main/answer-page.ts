/** Connects the page's messages to the file store, the settings and the window. */

import type { BrowserWindow } from 'electron';
import { told } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import type { HostAnswer } from '../contract/host.ts';
import { good, refused } from '../files/answer.ts';
import type { Attachments } from '../files/attachments.ts';
import type { Editing } from '../files/editing.ts';
import type { KeptPlans } from '../files/kept-plans.ts';
import type { SettingsStore } from '../files/settings.ts';
import type { FileStore } from '../files/store.ts';
import type { TileSets } from '../files/tile-sets.ts';
import { attachFile, type Copies } from './attach-file.ts';
import { handle, type MainFrame } from './handle.ts';
import { importFile } from './import-file.ts';
import { exportPdf, printPage } from './printing.ts';
import { saveExport } from './save-export.ts';

export interface AnswerParts {
  readonly store: FileStore;
  readonly settings: SettingsStore;
  readonly editing: Editing;
  readonly attachments: Attachments;
  readonly tileSets: TileSets;
  readonly plans: KeptPlans;
  readonly version: string;
  /** The window at this moment, null where it is closed. */
  readonly window: () => BrowserWindow | null;
  /** Where the question for the place of a PDF or an export starts. */
  readonly exportFolder: string;
  /** As they are spoken at this moment. */
  readonly words: () => Words;
}

export function answerPage(parts: AnswerParts): void {
  const { store, settings, editing, attachments, tileSets, plans, version, words } = parts;
  const copies: Copies = new Map();
  const mainFrame: MainFrame = () => parts.window()?.webContents.mainFrame ?? null;
  const inWindow = <T>(work: (window: BrowserWindow) => Promise<HostAnswer<T>>): Promise<HostAnswer<T>> => {
    const window = parts.window();
    return window === null
      ? Promise.resolve(
          refused(
            'host-gone',
            told(({ refusals }) => refusals.windowClosed),
          ),
        )
      : work(window);
  };

  // There is one window; a new number means that its page was loaded anew, and the old one is gone.
  let loaded: string | null = null;
  const fromWindow = (number: string): string => {
    if (loaded !== null && loaded !== number) void editing.leave(loaded);
    loaded = number;
    return number;
  };

  handle('info', mainFrame, () =>
    Promise.resolve(good({ shell: 'electron' as const, version, workspaceName: store.workspaceName })),
  );
  handle('list', mainFrame, () => store.list());
  handle('open', mainFrame, ({ token }) => store.open(token));
  handle('claim', mainFrame, ({ window, token }) => editing.claim(fromWindow(window), token));
  handle('release', mainFrame, ({ window, token }) => editing.release(window, token));
  handle('save', mainFrame, ({ window, ...request }) => editing.save(window, request));
  handle('journal', mainFrame, ({ window, ...request }) => editing.journal(window, request));
  handle('readJournal', mainFrame, ({ window, token }) => editing.readJournal(window, token));
  handle('leftBehind', mainFrame, () => editing.leftBehind());
  handle('clearJournal', mainFrame, ({ window, ...request }) => editing.clearJournal(window, request));
  handle('copies', mainFrame, ({ token }) => store.copies(token));
  handle('openCopy', mainFrame, ({ token, keptAt }) => store.openCopy(token, keptAt));
  handle('create', mainFrame, ({ kind, suggestedName, text }) => store.create(kind, suggestedName, text));
  handle('importFile', mainFrame, ({ kind }) =>
    inWindow((window) => importFile(window, store, kind, words())),
  );
  handle('attach', mainFrame, ({ token, job }) =>
    inWindow((window) => attachFile(window, attachments, copies, token, job, words())),
  );
  handle('stopAttach', mainFrame, ({ job }) => {
    copies.get(job)?.abort();
    return Promise.resolve(good(null));
  });
  handle('listAttachments', mainFrame, ({ token }) => attachments.list(token));
  handle('readAttachment', mainFrame, async ({ attachment, offset, length }) => {
    const part = await attachments.read(attachment, offset, length);
    return part.ok ? good(Uint8Array.from(part.value).buffer) : part;
  });
  handle('tileSetInfo', mainFrame, ({ attachment }) => tileSets.info(attachment));
  handle('readTile', mainFrame, ({ attachment, zoom, x, y }) => tileSets.tile(attachment, zoom, x, y));
  handle('exportPdf', mainFrame, ({ suggestedName }) =>
    inWindow((window) => exportPdf(window, parts.exportFolder, suggestedName, words())),
  );
  handle('print', mainFrame, () => inWindow(printPage));
  handle('saveExport', mainFrame, ({ suggestedName, bytes }) =>
    inWindow((window) =>
      saveExport(window, parts.exportFolder, suggestedName, new Uint8Array(bytes), words()),
    ),
  );
  handle('readSettings', mainFrame, () => settings.read());
  handle('writeSettings', mainFrame, ({ settings: wanted, was }) => settings.write(wanted, was));
  handle('keepPlan', mainFrame, ({ key, text }) => plans.keep(key, text));
  handle('keptPlan', mainFrame, ({ key }) => plans.kept(key));
}
