/**
 * The security checklist of Electron's documentation ("Security", tutorial; twenty items as of 2026), item by item, read off the
 * sources: settings of the one window, and words that must stand in one file only or nowhere. What the parts do is
 * tested where they are tested (`tests/electron/main/`); here nobody can add a second window or channel unseen.
 */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CONTENT_POLICY } from '../../../electron/pages/headers.ts';
import { packagingPlan } from '../../../electron/packaging/plan.ts';
import { ROOT, type Source, sourcesIn } from './sources.ts';

const electron = sourcesIn('electron');
const page = sourcesIn('renderer');

/** Files of these in which something stands. */
function filesWith(sources: readonly Source[], pattern: RegExp): readonly string[] {
  return sources.filter(({ code }) => pattern.test(code)).map(({ path }) => path);
}

const windowCode = electron.find(({ path }) => path === 'electron/main/window.ts')!.code;
const indexHtml = readFileSync(join(ROOT, 'renderer', 'index.html'), 'utf8');

describe('Electron’s security checklist', () => {
  it('1: only the program’s own content is loaded', () => {
    expect(filesWith(electron, /\.loadURL\(|\.loadFile\(/u)).toEqual(['electron/main/window.ts']);
    expect(windowCode).toContain('loadURL(PAGE_ADDRESS)');
    // The loopback host speaks http to this machine alone; XML and SVG names are names, not addresses.
    expect(
      filesWith([...electron, ...page], /['"`](?:http|ws|ftp):\/\/(?!www\.w3\.org\/)/u).filter(
        (path) => !path.startsWith('electron/loopback/'),
      ),
    ).toEqual([]);
  });

  it.each([
    ['2: no Node in the page', 'nodeIntegration: false'],
    ['2: nor in its workers', 'nodeIntegrationInWorker: false'],
    ['2: nor in frames', 'nodeIntegrationInSubFrames: false'],
    ['3: a context of the preload’s own', 'contextIsolation: true'],
    ['4: in the sandbox', 'sandbox: true'],
    ['6: one origin', 'webSecurity: true'],
    ['8: no insecure content', 'allowRunningInsecureContent: false'],
    ['9: nothing experimental', 'experimentalFeatures: false'],
    ['11: no embedded views', 'webviewTag: false'],
  ])('%s', (_, setting) => {
    expect(filesWith(electron, /new BrowserWindow\(/u)).toEqual(['electron/main/window.ts']);
    expect(filesWith(electron, /new (?:BrowserView|WebContentsView|BaseWindow)\(/u)).toEqual([]);
    expect(windowCode).toContain(setting);
  });

  it('4: every process is in the sandbox, whatever switches say', () => {
    expect(filesWith(electron, /app\.enableSandbox\(\)/u)).toEqual(['electron/main/main.ts']);
    // Drawing our own icon's file for a release starts a browser of its own.
    expect(filesWith(electron, /['"]--no-sandbox['"]|disable-web-security|appendSwitch/u)).toEqual([
      'electron/packaging/make-icons.ts',
    ]);
  });

  it('5, 12, 13, 14: permissions, views, navigation and windows are denied in one place', () => {
    for (const word of [
      'setPermissionRequestHandler',
      'setPermissionCheckHandler',
      'setDevicePermissionHandler',
      'setWindowOpenHandler',
      'will-navigate',
      'will-frame-navigate',
      'will-redirect',
      'will-attach-webview',
      'will-download',
      'onBeforeRequest',
    ]) {
      expect([word, filesWith(electron, new RegExp(word, 'u'))]).toEqual([
        word,
        ['electron/main/confine.ts'],
      ]);
    }
  });

  it('7: the content policy allows no inline code and no eval, said twice: by header and in the page', () => {
    const inPage = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/u.exec(indexHtml)?.[1] ?? '';
    for (const policy of [CONTENT_POLICY, inPage]) {
      const rules = new Map(policy.split('; ').map((rule) => [rule.split(' ')[0], rule]));
      expect(rules.get('default-src')).toBe("default-src 'none'");
      expect(rules.get('script-src')).toBe("script-src 'self'");
      expect(rules.get('style-src')).toBe("style-src 'self'");
      expect(rules.get('connect-src')).toBe("connect-src 'self'");
      expect(policy).not.toMatch(/unsafe|\*|nonce|sha256/u);
    }
    const scripts = indexHtml.match(/<script[^>]*>[^<]*/gu) ?? [];
    expect(scripts).toHaveLength(1);
    expect(scripts[0]).toMatch(/ src="[^"]+">$/u);
    expect(indexHtml).not.toMatch(/<style|\sstyle=|\son[a-z]+=/u);
    expect(filesWith([...electron, ...page], /\beval\(|new Function\(|setTimeout\(\s*['"`]/u)).toEqual([]);
    expect(
      filesWith(
        page,
        /dangerouslySetInnerHTML|\.innerHTML\b|\.outerHTML\b|insertAdjacentHTML|document\.write/u,
      ),
    ).toEqual([]);
  });

  it('10: no features of Blink are switched on', () => {
    expect(filesWith(electron, /enableBlinkFeatures|blinkFeatures/u)).toEqual([]);
  });

  it('15: links go to the system from one place, through the list of hosts', () => {
    expect(filesWith(electron, /\bshell\b.*openExternal|openExternal\(/u)).toEqual([
      'electron/main/confine.ts',
    ]);
    expect(filesWith(electron, /openPath\(|showItemInFolder\(|trashItem\(/u)).toEqual([]);
    const code = electron.find(({ path }) => path === 'electron/main/confine.ts')!.code;
    expect(code.match(/openExternal/gu)).toHaveLength(1);
    expect(code).toContain('if (mayOpenOutside(url)) void shell.openExternal(url)');
  });

  it('16: Electron is one locked version, the same in lock file and list', () => {
    const wanted = (json('package.json') as { dependencies: Record<string, string> }).dependencies[
      'electron'
    ];
    const locked = (json('package-lock.json') as { packages: Record<string, { version: string }> }).packages;
    expect(wanted).toMatch(/^\d+\.\d+\.\d+$/u);
    expect(locked['node_modules/electron']?.version).toBe(wanted);
  });

  it('17: messages are answered through the one function that looks at their sender', () => {
    expect(filesWith(electron, /\bipcMain\b/u)).toEqual(['electron/main/handle.ts']);
    expect(filesWith(electron, /ipcMain\.(?:on|once|handleOnce)\(|MessageChannelMain|\.ipc\./u)).toEqual([]);
    const handle = electron.find(({ path }) => path === 'electron/main/handle.ts')!.code;
    expect(handle.match(/ipcMain\.handle\(/gu)).toHaveLength(1);
  });

  it('18: the page has a scheme of its own, and nothing is read by file: addresses', () => {
    expect(filesWith(electron, /registerSchemesAsPrivileged/u)).toEqual(['electron/main/page-scheme.ts']);
    // SQLite names a file so that it reads by its number; that goes to no page.
    expect(filesWith([...electron, ...page], /['"`]file:/u)).toEqual(['electron/files/sqlite-file.ts']);
    expect(filesWith(electron, /bypassCSP|corsEnabled|allowServiceWorkers/u)).toEqual([]);
  });

  it('19: the fuses of a packaged program are set', () => {
    expect(packagingPlan.electronFuses).toMatchObject({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      grantFileProtocolExtraPrivileges: false,
      onlyLoadAppFromAsar: true,
      enableEmbeddedAsarIntegrityValidation: true,
      enableCookieEncryption: true,
    });
    // With run-as-Node off, `fork` would start nothing.
    expect(filesWith(sourcesIn('electron/main'), /child_process|ELECTRON_RUN_AS_NODE/u)).toEqual([]);
  });

  it('20: the page gets named functions of ours, nothing of Electron’s', () => {
    expect(filesWith(electron, /\bcontextBridge\b/u)).toEqual(['electron/preload/preload.ts']);
    const preload = electron.find(({ path }) => path === 'electron/preload/preload.ts')!.code;
    expect(preload.match(/exposeInMainWorld\(/gu)).toHaveLength(1);
    expect(preload).not.toMatch(
      /ipcRenderer\.(?:send|sendSync|postMessage)|:\s*ipcRenderer\b|webFrame|clipboard/u,
    );
    expect(filesWith(page, /from 'electron'|require\(|@electron\/remote/u)).toEqual([]);
  });

  it('besides: no remote module, one instance, no look for updates', () => {
    const packages = Object.keys(
      (json('package-lock.json') as { packages: Record<string, unknown> }).packages,
    );
    expect(packages.filter((name) => /@electron\/remote$|electron-updater$/u.test(name))).toEqual([]);
    expect(filesWith(electron, /enableRemoteModule|autoUpdater|electron-updater/u)).toEqual([]);
    expect(filesWith(electron, /requestSingleInstanceLock\(\)/u)).toEqual(['electron/main/main.ts']);
  });
});

function json(path: string): unknown {
  return JSON.parse(readFileSync(join(ROOT, path), 'utf8'));
}
