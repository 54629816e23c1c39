/**
 * The one place where everything is denied that the page has no business with: leaving its address, other
 * windows, embedded views, permissions, devices, downloads and weakened preferences.
 */

import { type App, type Session, shell, type WebContents } from 'electron';
import { mayOpenOutside } from './outside-links.ts';
import { isPageAddress } from './page-address.ts';

/** Applies to every web contents the app ever makes, also ones nobody meant to. */
export function confineContents(app: App): void {
  app.on('web-contents-created', (_event, contents) => {
    confine(contents);
  });
}

function confine(contents: WebContents): void {
  contents.setWindowOpenHandler(({ url }) => {
    if (mayOpenOutside(url)) void shell.openExternal(url);
    return { action: 'deny' };
  });
  const stay = (event: { preventDefault: () => void }, url: string): void => {
    if (!isPageAddress(url)) event.preventDefault();
  };
  contents.on('will-navigate', (event) => {
    stay(event, event.url);
  });
  contents.on('will-frame-navigate', (event) => {
    // The page has no frames, so any frame's navigation is a stranger's; the main frame may reload.
    if (!event.isMainFrame) event.preventDefault();
    else stay(event, event.url);
  });
  contents.on('will-redirect', (event) => {
    stay(event, event.url);
  });
  contents.on('will-attach-webview', (event) => {
    event.preventDefault();
  });
}

/** Denies permissions, devices, downloads and foreign addresses but those of `tileOrigins` in a session. */
export function confineSession(session: Session, tileOrigins: () => readonly string[] = () => []): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => {
    answer(false);
  });
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.on('will-download', (event) => {
    event.preventDefault();
  });
  session.webRequest.onBeforeRequest((details, answer) => {
    // Content the page made itself has its origin inside the address.
    const address = details.url.startsWith('blob:') ? details.url.slice('blob:'.length) : details.url;
    const isOwn = isPageAddress(address) || address.startsWith('data:') || address.startsWith('devtools:');
    answer({ cancel: !isOwn && !isTile(details, tileOrigins()) });
  });
}

/** Whether a request reads from a tile source that the person has set up: pictures and data, nothing that runs. */
function isTile(
  { url, method, resourceType }: { url: string; method: string; resourceType: string },
  origins: readonly string[],
): boolean {
  if (method !== 'GET' || (resourceType !== 'image' && resourceType !== 'xhr')) return false;
  try {
    const { origin, username, password } = new URL(url);
    return username === '' && password === '' && origins.includes(origin);
  } catch {
    return false;
  }
}
