/** Opens the system's browser on an address. */

import { spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import type { Surroundings } from './electron-binary.ts';

export interface Opener {
  readonly program: string;
  readonly args: (address: string) => readonly string[];
}

/** The system's own way of opening an address, or the reason why nothing is opened. */
export function chooseOpener(
  around: Surroundings,
  isOnPath: (program: string) => boolean = (program) => onPath(program, around.environment['PATH']),
): Opener | string {
  switch (around.platform) {
    case 'win32':
      return { program: 'rundll32.exe', args: (address) => ['url.dll,FileProtocolHandler', address] };
    case 'darwin':
      return { program: 'open', args: (address) => [address] };
    default: {
      if (!around.environment['DISPLAY'] && !around.environment['WAYLAND_DISPLAY'])
        return 'there is no screen here';
      const hasFirefox = isOnPath('firefox') || isOnPath('firefox-esr');
      if (around.userId === 0 && !hasFirefox && ['chromium', 'google-chrome'].some(isOnPath)) {
        return 'the only browser is Chromium, which the root user can start with --no-sandbox only';
      }
      return isOnPath('xdg-open')
        ? { program: 'xdg-open', args: (address) => [address] }
        : 'xdg-open is not installed';
    }
  }
}

function onPath(program: string, path: string | undefined): boolean {
  return (path ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/** Null where the browser was asked to open, else the reason why not. */
export function openBrowser(opener: Opener | string, address: string): Promise<string | null> {
  if (typeof opener === 'string') return Promise.resolve(opener);
  return new Promise((resolve) => {
    const child = spawn(opener.program, opener.args(address), { stdio: 'ignore', detached: true });
    // An opener that is still running after this has found something to open.
    const enough = setTimeout(() => resolve(null), 5000);
    const end = (reason: string | null): void => {
      clearTimeout(enough);
      resolve(reason);
    };
    child.on('error', (error) => end(error.message));
    child.on('exit', (code) => end(code === 0 ? null : `${opener.program} found no browser`));
    child.unref();
  });
}
