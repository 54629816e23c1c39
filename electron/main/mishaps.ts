/** What the person is told, and may choose, when the window or the program breaks. */

import { type App, type BrowserWindow, dialog } from 'electron';

const SAVED_WORK =
  'Files on disk are as they were last saved; work in progress is offered again when the page opens.';

/** Watches one window: page process gone, page not answering, page not loaded, closing with unsaved work. */
export function watchWindow(window: BrowserWindow, app: App): void {
  const contents = window.webContents;

  const askToReload = async (message: string, detail: string, stay: string | null): Promise<void> => {
    const buttons = stay === null ? ['Open the page again', 'Quit'] : [stay, 'Open the page again', 'Quit'];
    const { response } = await dialog.showMessageBox(window, {
      type: 'warning',
      title: 'Holewright',
      message,
      detail,
      buttons,
      defaultId: 0,
      cancelId: stay === null ? buttons.length - 1 : 0,
      noLink: true,
    });
    const chosen = buttons[response];
    if (chosen === 'Open the page again') contents.reload();
    else if (chosen === 'Quit') app.exit(1);
  };

  contents.on('render-process-gone', (_event, details) => {
    if (details.reason === 'clean-exit') return;
    const cause = details.reason === 'oom' ? 'it ran out of memory' : details.reason;
    void askToReload(
      `The window's page has stopped (${cause}).`,
      `${SAVED_WORK} If it stops again, open a smaller course.`,
      null,
    );
  });

  let isAsking = false;
  window.on('unresponsive', () => {
    if (isAsking) return;
    isAsking = true;
    void askToReload(
      'The window does not answer.',
      `Waiting often helps. Opening the page again ends what it was doing. ${SAVED_WORK}`,
      'Wait',
    ).finally(() => {
      isAsking = false;
    });
  });

  contents.on('preload-error', (_event, path, error) => {
    tellAndEnd(app, `A part of the program could not be loaded (${path}: ${error.message}).`);
  });
  contents.on('did-fail-load', (_event, code, description, address, isMainFrame) => {
    // -3: stopped by ourselves, e.g. a denied navigation.
    if (isMainFrame && code !== -3)
      tellAndEnd(app, `The page could not be loaded (${description}, ${address}).`);
  });

  contents.on('will-prevent-unload', (event) => {
    const chosen = dialog.showMessageBoxSync(window, {
      type: 'question',
      title: 'Holewright',
      message: 'Some of your work is not saved yet.',
      detail: 'Go back to save it, or close and lose what came after the last save.',
      buttons: ['Go back', 'Close without saving'],
      defaultId: 0,
      cancelId: 0,
      noLink: true,
    });
    // Preventing the page's own prevention lets the window close.
    if (chosen === 1) event.preventDefault();
  });
}

/** A fault in the main process itself: said, and the program ends rather than going on half alive. */
export function watchProgram(app: App): void {
  const end = (error: unknown): void => {
    tellAndEnd(app, error instanceof Error ? error.message : String(error));
  };
  process.on('uncaughtException', end);
  process.on('unhandledRejection', end);
}

/** Says that the program cannot go on and ends it. */
export function tellAndEnd(app: App, what: string): void {
  dialog.showErrorBox(
    'Holewright has to close',
    `${what}\n\n${SAVED_WORK} Start the program again; if this comes back, run "npm ci" and "npm run build" in its folder.`,
  );
  app.exit(1);
}
