import { EventEmitter } from 'node:events';
import type { App, BrowserWindow, MenuItemConstructorOptions } from 'electron';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Language } from '../../../core/words/language.ts';
import { wordsIn } from '../../../core/words/words.ts';

interface Options {
  readonly webPreferences: Readonly<Record<string, unknown>>;
}
const made: { options: Options; loaded: string[] }[] = [];
const asked: { message: string; detail: string; buttons: readonly string[] }[] = [];
const errors: string[] = [];
let answer = 0;
let language: Language = 'en';

vi.mock('electron', () => ({
  BrowserWindow: class extends EventEmitter {
    readonly loaded: string[] = [];
    constructor(readonly options: Options) {
      super();
      made.push(this);
    }
    loadURL(address: string): Promise<void> {
      this.loaded.push(address);
      return Promise.resolve();
    }
    show(): void {
      this.emit('shown');
    }
  },
  Menu: { buildFromTemplate: () => ({}), setApplicationMenu: () => undefined },
  dialog: {
    showMessageBox: (_window: unknown, options: (typeof asked)[number]) => {
      asked.push(options);
      return Promise.resolve({ response: answer });
    },
    showMessageBoxSync: (_window: unknown, options: (typeof asked)[number]) => {
      asked.push(options);
      return answer;
    },
    showErrorBox: (_title: string, text: string) => errors.push(text),
  },
}));

const { openWindow } = await import('../../../electron/main/window.ts');
const { watchWindow } = await import('../../../electron/main/mishaps.ts');
const { menuTemplate } = await import('../../../electron/main/menu.ts');

beforeEach(() => {
  made.length = 0;
  asked.length = 0;
  errors.length = 0;
  answer = 0;
  language = 'en';
});

describe('the window', () => {
  it('is shut off from Node and the system', () => {
    openWindow('/built/preload.cjs', true);
    expect(made[0]?.options.webPreferences).toMatchObject({
      preload: '/built/preload.cjs',
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      webviewTag: false,
      devTools: false,
    });
  });

  it('shows the program’s own address, not a file', () => {
    openWindow('/built/preload.cjs', false);
    expect(made[0]?.loaded).toEqual(['holewright://app/']);
  });

  it('appears when the page is ready to be seen', () => {
    const window = openWindow('/built/preload.cjs', false);
    let isShown = false;
    (window as unknown as EventEmitter).on('shown', () => (isShown = true));
    (window as unknown as EventEmitter).emit('ready-to-show');
    expect(isShown).toBe(true);
  });
});

describe('mishaps', () => {
  function watched() {
    const done: string[] = [];
    const contents = Object.assign(new EventEmitter(), { reload: () => done.push('reload') });
    const window = Object.assign(new EventEmitter(), { webContents: contents });
    const app = { exit: (code: number) => done.push(`exit ${code}`) };
    watchWindow(window as unknown as BrowserWindow, app as unknown as App, () => wordsIn(language));
    return { contents, window, done };
  }
  const settled = () => new Promise((resolve) => setImmediate(resolve));

  it('a page that has stopped can be opened again, and the message says what became of the work', async () => {
    const { contents, done } = watched();
    contents.emit('render-process-gone', {}, { reason: 'oom' });
    await settled();
    expect(asked[0]?.message).toContain('memory');
    expect(asked[0]?.detail).toContain('as they were last saved');
    expect(done).toEqual(['reload']);
  });

  it('a page that has stopped can be left', async () => {
    const { contents, done } = watched();
    answer = 1;
    contents.emit('render-process-gone', {}, { reason: 'crashed' });
    await settled();
    expect(done).toEqual(['exit 1']);
  });

  it('a page that ends properly is no mishap', async () => {
    const { contents, done } = watched();
    contents.emit('render-process-gone', {}, { reason: 'clean-exit' });
    await settled();
    expect([asked, done]).toEqual([[], []]);
  });

  it('a page that does not answer is asked about once, waiting first', async () => {
    const { window, done } = watched();
    window.emit('unresponsive');
    window.emit('unresponsive');
    expect(asked).toHaveLength(1);
    expect(asked[0]?.buttons[0]).toBe('Wait');
    await settled();
    expect(done).toEqual([]);
  });

  it('are told in German where that is spoken, and the buttons do as they say', async () => {
    const { contents, window, done } = watched();
    language = 'de';
    window.emit('unresponsive');
    expect(asked[0]).toMatchObject({
      message: 'Das Fenster antwortet nicht.',
      buttons: ['Warten', 'Seite neu öffnen', 'Beenden'],
    });
    answer = 1;
    contents.emit('render-process-gone', {}, { reason: 'oom' });
    await settled();
    expect(asked[1]?.message).toContain('der Speicher ging aus');
    expect(done).toEqual(['exit 1']);
    contents.emit('will-prevent-unload', { preventDefault: () => undefined });
    expect(asked[2]?.buttons).toEqual(['Zurück', 'Ohne Speichern schließen']);
    contents.emit('preload-error', {}, '/built/preload.cjs', new Error('missing'));
    expect(errors[0]).toContain('ließ sich nicht laden');
  });

  it('a page that could not be loaded is said, except where we stopped it', () => {
    const { contents, done } = watched();
    contents.emit('did-fail-load', {}, -3, 'ABORTED', 'holewright://app/', true);
    expect(errors).toEqual([]);
    contents.emit('did-fail-load', {}, -6, 'FILE_NOT_FOUND', 'holewright://app/', true);
    expect(errors[0]).toContain('FILE_NOT_FOUND');
    expect(done).toEqual(['exit 1']);
  });

  it('a preload that could not be loaded is said, with what to do', () => {
    watched().contents.emit('preload-error', {}, '/built/preload.cjs', new Error('missing'));
    expect(errors[0]).toMatch(/missing.*npm ci/su);
  });

  it('closing with unsaved work asks first and goes back unless told otherwise', () => {
    const { contents } = watched();
    let closes = 0;
    const event = { preventDefault: () => (closes += 1) };
    contents.emit('will-prevent-unload', event);
    expect(closes).toBe(0);
    answer = 1;
    contents.emit('will-prevent-unload', event);
    expect(closes).toBe(1);
  });
});

describe('the menu', () => {
  it('has no English label where German is spoken', () => {
    const labels = (items: readonly MenuItemConstructorOptions[]): readonly (string | undefined)[] =>
      items.flatMap(({ label, submenu }) => [label, ...(Array.isArray(submenu) ? labels(submenu) : [])]);
    const [english, german] = (['en', 'de'] as const).map((each) =>
      labels(menuTemplate(() => undefined, wordsIn(each))),
    );
    const alike = german!.filter((label, index) => label !== undefined && label === english![index]);
    expect(alike).toEqual(['&Holewright', '&Text']);
  });

  it('leaves undo, redo and reload to the page', () => {
    const roles = (items: readonly MenuItemConstructorOptions[]): unknown[] =>
      items.flatMap((item) => [item.role, ...(Array.isArray(item.submenu) ? roles(item.submenu) : [])]);
    const used = roles(menuTemplate(() => undefined, wordsIn('en')));
    expect(used).toContain('copy');
    for (const role of ['undo', 'redo', 'reload', 'forceReload', 'toggleDevTools'])
      expect(used).not.toContain(role);
  });
});
