/**
 * Who may talk to the loopback server. The key (256 random bits) is a cookie that no script can read and that
 * is sent only from the server's own pages (HttpOnly, SameSite=Strict). The browser gets it by opening a start
 * address whose code works once, so what stands in the process list or the browser's history opens nothing
 * later. A key in the address's fragment would be readable by every script of the page, stay in the history
 * and have to be kept in page storage to survive a reload.
 *
 * Cookies are shared between the ports of one host name (RFC 6265, section 8.5): another program's pages on
 * 127.0.0.1 would be handed the key. So everything is served below a folder with a random name, and the
 * cookie's path is that folder.
 */

import { randomBytes, timingSafeEqual } from 'node:crypto';

export interface Keys {
  /** `/…/`, the folder below which everything is served. */
  readonly folder: string;
  /** Makes a start address's path with a fresh code. */
  readonly startPath: () => string;
  /** Whether `path` is a start address with a code not yet used; uses it up. */
  readonly useStart: (path: string) => boolean;
  readonly isStart: (path: string) => boolean;
  readonly cookie: string;
  /** Whether the request's Cookie header has the key. */
  readonly holdsKey: (cookieHeader: string | undefined) => boolean;
}

/** Start codes given out and not yet used; older ones lapse so that asking for many costs nothing. */
const MOST_CODES = 16;

export function makeKeys(random: (bytes: number) => Buffer = randomBytes): Keys {
  const key = random(32).toString('base64url');
  const folder = `/${random(16).toString('base64url')}/`;
  const name = 'holewright-key';
  const start = `${folder}start/`;
  const codes: string[] = [];

  return {
    folder,
    cookie: `${name}=${key}; Path=${folder}; HttpOnly; SameSite=Strict`,
    startPath: () => {
      const code = random(32).toString('base64url');
      codes.push(code);
      if (codes.length > MOST_CODES) codes.shift();
      return start + code;
    },
    isStart: (path) => path.startsWith(start),
    useStart: (path) => {
      if (!path.startsWith(start)) return false;
      const index = codes.findIndex((code) => isSame(code, path.slice(start.length)));
      if (index < 0) return false;
      codes.splice(index, 1);
      return true;
    },
    holdsKey: (cookieHeader) =>
      (cookieHeader ?? '')
        .split(';')
        .map((part) => part.trim())
        .some((part) => part.startsWith(`${name}=`) && isSame(key, part.slice(name.length + 1))),
  };
}

/** Comparison whose time does not tell how much of a guess was right. */
function isSame(secret: string, guess: string): boolean {
  const a = Buffer.from(secret);
  const b = Buffer.from(guess);
  return a.byteLength === b.byteLength && timingSafeEqual(a, b);
}
