/** What the person is told, and may choose, when the window or the program breaks. */

import { type App, type BrowserWindow, dialog } from 'electron';
import type { Words } from '../../core/words/words.ts';

/** Watches one window: page process gone, page not answering, page not loaded, closing with unsaved work. */
export function watchWindow(window: BrowserWindow, app: App, words: () => Words): void {
  const contents = window.webContents;

  const askToReload = async (message: string, detail: string, stay: string | null): Promise<void> => {
    const { mishaps, program } = words().system;
    const acts = [
      ...(stay === null ? [] : [{ label: stay, act: () => undefined }]),
      {
        label: mishaps.openAgain,
        act: () => {
          contents.reload();
        },
      },
      {
        label: mishaps.quit,
        act: () => {
          app.exit(1);
        },
      },
    ];
    const { response } = await dialog.showMessageBox(window, {
      type: 'warning',
      title: program,
      message,
      detail,
      buttons: acts.map(({ label }) => label),
      defaultId: 0,
      cancelId: stay === null ? acts.length - 1 : 0,
      noLink: true,
    });
    acts[response]?.act();
  };

  contents.on('render-process-gone', (_event, details) => {
    if (details.reason === 'clean-exit') return;
    const { mishaps } = words().system;
    const cause = details.reason === 'oom' ? mishaps.noMemory : details.reason;
    void askToReload(mishaps.stopped({ cause }), mishaps.stoppedDetail(mishaps), null);
  });

  let isAsking = false;
  window.on('unresponsive', () => {
    if (isAsking) return;
    isAsking = true;
    const { mishaps } = words().system;
    void askToReload(mishaps.noAnswer, mishaps.noAnswerDetail(mishaps), mishaps.wait).finally(() => {
      isAsking = false;
    });
  });

  contents.on('preload-error', (_event, path, { message }) => {
    tellAndEnd(app, words(), ({ partMissing }) => partMissing({ path, reason: message }));
  });
  contents.on('did-fail-load', (_event, code, description, address, isMainFrame) => {
    // -3: stopped by ourselves, e.g. a denied navigation.
    if (isMainFrame && code !== -3)
      tellAndEnd(app, words(), ({ notLoaded }) => notLoaded({ reason: description, address }));
  });

  contents.on('will-prevent-unload', (event) => {
    const { mishaps, program } = words().system;
    const chosen = dialog.showMessageBoxSync(window, {
      type: 'question',
      title: program,
      message: mishaps.unsaved,
      detail: mishaps.unsavedDetail,
      buttons: [mishaps.goBack, mishaps.closeUnsaved],
      defaultId: 0,
      cancelId: 0,
      noLink: true,
    });
    // Preventing the page's own prevention lets the window close.
    if (chosen === 1) event.preventDefault();
  });
}

/** A fault in the main process itself: said, and the program ends rather than going on half alive. */
export function watchProgram(app: App, words: () => Words): void {
  const end = (error: unknown): void => {
    tellAndEnd(app, words(), () => (error instanceof Error ? error.message : String(error)));
  };
  process.on('uncaughtException', end);
  process.on('unhandledRejection', end);
}

/** Says that the program cannot go on and ends it. */
export function tellAndEnd(
  app: App,
  { system: { mishaps } }: Words,
  what: (mishaps: Words['system']['mishaps']) => string,
): void {
  const { savedWork } = mishaps;
  dialog.showErrorBox(mishaps.hasToClose, mishaps.endDetail({ what: what(mishaps), savedWork }));
  app.exit(1);
}
