import { describe, expect, it } from 'vitest';
import { chooseOpener, openBrowser } from '../../../electron/launcher/browser.ts';
import type { Surroundings } from '../../../electron/launcher/electron-binary.ts';

const desk: Surroundings = { platform: 'linux', environment: { DISPLAY: ':0' }, userId: 1000 };
const has =
  (...programs: string[]) =>
  (program: string) =>
    programs.includes(program);

describe('the opener', () => {
  it('is the system’s own', () => {
    expect(chooseOpener(desk, has('xdg-open', 'chromium'))).toMatchObject({ program: 'xdg-open' });
    expect(chooseOpener({ ...desk, platform: 'darwin' })).toMatchObject({ program: 'open' });
    expect(chooseOpener({ ...desk, platform: 'win32' })).toMatchObject({ program: 'rundll32.exe' });
  });

  it('is none, with the reason, where it could not work', () => {
    expect(chooseOpener(desk, has('chromium'))).toMatch(/xdg-open/u);
    expect(chooseOpener({ ...desk, environment: {} }, has('xdg-open'))).toMatch(/screen/u);
    expect(chooseOpener({ ...desk, userId: 0 }, has('xdg-open', 'chromium'))).toMatch(/--no-sandbox/u);
    expect(chooseOpener({ ...desk, userId: 0 }, has('xdg-open', 'chromium', 'firefox-esr'))).toMatchObject({
      program: 'xdg-open',
    });
  });
});

describe('opening', () => {
  const node = (code: string) => ({ program: process.execPath, args: () => ['-e', code] });

  it('says why where it did not work', async () => {
    expect(await openBrowser('no screen', 'http://127.0.0.1/')).toBe('no screen');
    expect(await openBrowser(node('process.exit(3)'), '')).toMatch(/no browser/u);
    expect(await openBrowser({ program: '/nowhere/opener', args: () => [] }, '')).toMatch(/ENOENT/u);
  });

  it('says nothing where it worked', async () => {
    expect(await openBrowser(node(''), '')).toBeNull();
  });

  it('hands the address over as one argument, past any shell', async () => {
    const address = 'http://127.0.0.1:1/a;exit 3 & $(exit 3)';
    const check = {
      program: process.execPath,
      args: (given: string) => [
        '-e',
        `process.exit(process.argv[1] === ${JSON.stringify(address)} ? 0 : 1)`,
        given,
      ],
    };
    expect(await openBrowser(check, address)).toBeNull();
  });
});
