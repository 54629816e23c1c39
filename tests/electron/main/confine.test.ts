import { EventEmitter } from 'node:events';
import type { App, Session } from 'electron';
import { beforeEach, describe, expect, it, vi } from 'vitest';

const opened: string[] = [];
vi.mock('electron', () => ({
  shell: {
    openExternal: (url: string) => {
      opened.push(url);
      return Promise.resolve();
    },
  },
}));

const { confineContents, confineSession } = await import('../../../electron/main/confine.ts');

type OpenHandler = (details: { url: string }) => { action: string };

/** A web contents as the app would announce it. */
function announced(): { contents: EventEmitter; open: OpenHandler } {
  const app = new EventEmitter();
  const contents = new EventEmitter();
  let open: OpenHandler = () => ({ action: 'allow' });
  Object.assign(contents, { setWindowOpenHandler: (handler: OpenHandler) => (open = handler) });
  confineContents(app as unknown as App);
  app.emit('web-contents-created', {}, contents);
  return { contents, open: (details) => open(details) };
}

function isPrevented(contents: EventEmitter, name: string, details: object): boolean {
  let prevented = false;
  contents.emit(name, { ...details, preventDefault: () => (prevented = true) });
  return prevented;
}

const OWN = 'holewright://app/index.html';
const FOREIGN = [
  'https://evil.example/',
  'http://127.0.0.1:8000/',
  'file:///etc/passwd',
  'data:text/html,hello',
  'javascript:alert(1)',
  'holewright://app.evil.example/',
  'holewright://other/',
  'holewright://user@app/',
  'holewrights://app/',
  'not an address',
];

beforeEach(() => {
  opened.length = 0;
});

describe('a page that tries to leave', () => {
  it.each(FOREIGN)('for %s stays', (url) => {
    const { contents } = announced();
    expect(isPrevented(contents, 'will-navigate', { url })).toBe(true);
    expect(isPrevented(contents, 'will-redirect', { url })).toBe(true);
    expect(isPrevented(contents, 'will-frame-navigate', { url, isMainFrame: true })).toBe(true);
  });

  it('may reload itself, but no frame inside it may go anywhere', () => {
    const { contents } = announced();
    expect(isPrevented(contents, 'will-navigate', { url: OWN })).toBe(false);
    expect(isPrevented(contents, 'will-frame-navigate', { url: OWN, isMainFrame: true })).toBe(false);
    expect(isPrevented(contents, 'will-frame-navigate', { url: OWN, isMainFrame: false })).toBe(true);
  });

  it('gets no embedded view', () => {
    expect(isPrevented(announced().contents, 'will-attach-webview', {})).toBe(true);
  });
});

describe('a new window', () => {
  it.each([...FOREIGN, OWN])('is never opened, and %s goes nowhere', (url) => {
    expect(announced().open({ url })).toEqual({ action: 'deny' });
    expect(opened).toEqual([]);
  });

  it.each([
    'http://www.rfc-editor.org/rfc/rfc7946',
    'https://www.rfc-editor.org.evil.example/',
    'https://evil.example/www.rfc-editor.org',
    'https://user@www.rfc-editor.org/',
    'https://:word@www.rfc-editor.org/',
    'https://www.rfc-editor.org:8443/',
    'https://www.rfc-editor.org@evil.example/',
  ])('for %s, which only looks allowed, opens no browser', (url) => {
    announced().open({ url });
    expect(opened).toEqual([]);
  });

  it('for a source that the program names goes to the person’s browser instead', () => {
    const url = 'https://www.rfc-editor.org/rfc/rfc7946#section-3';
    expect(announced().open({ url })).toEqual({ action: 'deny' });
    expect(opened).toEqual([url]);
  });
});

describe('a session', () => {
  function confined(tileOrigins?: () => readonly string[]) {
    const handlers: Record<string, (...args: never[]) => unknown> = {};
    const session = Object.assign(new EventEmitter(), {
      setPermissionRequestHandler: (handler: () => void) => (handlers['request'] = handler),
      setPermissionCheckHandler: (handler: () => boolean) => (handlers['check'] = handler),
      setDevicePermissionHandler: (handler: () => boolean) => (handlers['device'] = handler),
      webRequest: { onBeforeRequest: (handler: () => void) => (handlers['before'] = handler) },
    });
    confineSession(session as unknown as Session, tileOrigins);
    return { session, call: (name: string, ...args: unknown[]) => handlers[name]!(...(args as never[])) };
  }

  it.each([
    'geolocation',
    'media',
    'notifications',
    'clipboard-read',
    'fullscreen',
    'openExternal',
    'usb',
    'made-up',
  ])('grants no %s', (permission) => {
    const { call } = confined();
    const answers: boolean[] = [];
    call('request', {}, permission, (isGranted: boolean) => answers.push(isGranted));
    expect(answers).toEqual([false]);
    expect(call('check', {}, permission)).toBe(false);
    expect(call('device', { deviceType: permission })).toBe(false);
  });

  it('downloads nothing', () => {
    const { session } = confined();
    let prevented = false;
    session.emit('will-download', { preventDefault: () => (prevented = true) });
    expect(prevented).toBe(true);
  });

  it('asks no address but the program’s own', () => {
    const { call } = confined();
    const isCancelled = (url: string): boolean => {
      let cancel: boolean | undefined;
      call('before', { url }, (answer: { cancel: boolean }) => (cancel = answer.cancel));
      return cancel!;
    };
    for (const url of [OWN, 'blob:holewright://app/uuid', 'data:image/png;base64,AA'])
      expect(isCancelled(url)).toBe(false);
    for (const url of [
      'https://evil.example/',
      'http://localhost/',
      'file:///etc/passwd',
      'blob:https://evil.example/uuid',
      'ws://127.0.0.1/',
    ]) {
      expect([url, isCancelled(url)]).toEqual([url, true]);
    }
  });

  it('asks the person’s own tile sources for pictures and data, and nothing else of them', () => {
    let origins: readonly string[] = ['https://tiles.meadow.example'];
    const { call } = confined(() => origins);
    const isCancelled = (url: string, resourceType = 'image', method = 'GET'): boolean => {
      let cancel: boolean | undefined;
      call(
        'before',
        { url, resourceType, method },
        (answer: { cancel: boolean }) => (cancel = answer.cancel),
      );
      return cancel!;
    };
    const tile = 'https://tiles.meadow.example/1/2/3.png';
    expect([isCancelled(tile), isCancelled(tile, 'xhr')]).toEqual([false, false]);
    for (const type of [
      'script',
      'stylesheet',
      'subFrame',
      'mainFrame',
      'webSocket',
      'font',
      'ping',
      'other',
    ])
      expect([type, isCancelled(tile, type)]).toEqual([type, true]);
    for (const method of ['POST', 'PUT', 'HEAD', 'OPTIONS'])
      expect([method, isCancelled(tile, 'xhr', method)]).toEqual([method, true]);
    for (const url of [
      'http://tiles.meadow.example/1/2/3.png',
      'https://tiles.meadow.example:8443/1/2/3.png',
      'https://tiles.meadow.example.evil.example/1/2/3.png',
      'https://user@tiles.meadow.example/1/2/3.png',
      'https://other.meadow.example/1/2/3.png',
      'wss://tiles.meadow.example/',
    ])
      expect([url, isCancelled(url)]).toEqual([url, true]);
    origins = [];
    expect(isCancelled(tile)).toBe(true);
  });
});
