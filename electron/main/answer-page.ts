/** Connects the page's messages to the file store, the settings and the window. */

import type { BrowserWindow } from 'electron';
import type { HostAnswer } from '../contract/host.ts';
import { good, refused } from '../files/answer.ts';
import type { SettingsStore } from '../files/settings.ts';
import type { FileStore } from '../files/store.ts';
import { handle, type MainFrame } from './handle.ts';
import { importFile } from './import-file.ts';
import { exportPdf, printPage } from './printing.ts';

export interface AnswerParts {
  readonly store: FileStore;
  readonly settings: SettingsStore;
  readonly version: string;
  /** The window at this moment, null where it is closed. */
  readonly window: () => BrowserWindow | null;
  /** Where the question for a PDF's place starts. */
  readonly pdfFolder: string;
}

export function answerPage(parts: AnswerParts): void {
  const { store, settings, version } = parts;
  const mainFrame: MainFrame = () => parts.window()?.webContents.mainFrame ?? null;
  const inWindow = <T>(work: (window: BrowserWindow) => Promise<HostAnswer<T>>): Promise<HostAnswer<T>> => {
    const window = parts.window();
    return window === null
      ? Promise.resolve(refused('host-gone', 'The window is closed. Start Holewright again.'))
      : work(window);
  };

  handle('info', mainFrame, () =>
    Promise.resolve(good({ shell: 'electron' as const, version, workspaceName: store.workspaceName })),
  );
  handle('list', mainFrame, () => store.list());
  handle('open', mainFrame, ({ token }) => store.open(token));
  handle('save', mainFrame, (request) => store.save(request));
  handle('copies', mainFrame, ({ token }) => store.copies(token));
  handle('openCopy', mainFrame, ({ token, keptAt }) => store.openCopy(token, keptAt));
  handle('create', mainFrame, ({ kind, suggestedName, text }) => store.create(kind, suggestedName, text));
  handle('importFile', mainFrame, ({ kind }) => inWindow((window) => importFile(window, store, kind)));
  handle('exportPdf', mainFrame, ({ suggestedName }) =>
    inWindow((window) => exportPdf(window, parts.pdfFolder, suggestedName)),
  );
  handle('print', mainFrame, () => inWindow(printPage));
  handle('readSettings', mainFrame, () => settings.read());
  handle('writeSettings', mainFrame, ({ settings: wanted }) => settings.write(wanted));
}
