/** Building host answers: the value, or a refusal whose message says what happened and what to do. */

import type { HostAnswer, HostFailure } from '../contract/host.ts';

export function good<T>(value: T): HostAnswer<T> {
  return { ok: true, value };
}

export type Refusal = Extract<HostAnswer<never>, { readonly ok: false }>;

export function refused(failure: HostFailure, message: string): Refusal {
  return { ok: false, failure, message };
}

/** The system's error code (`ENOSPC`), or an empty string where there is none. */
export function errorCode(error: unknown): string {
  if (typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string') {
    return error.code;
  }
  return '';
}

/** An error in a few words, for a notice. */
export function reasonOf(error: unknown): string {
  return errorCode(error) || (error instanceof Error ? error.message : String(error));
}

/** Puts a file system error into words. `doing` ends the sentence "Holewright was …", e.g. `saving old-pines.geojson`. */
export function refusedByDisk(error: unknown, doing: string): Refusal {
  const code = errorCode(error);
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return refused(
        'disk-full',
        `The disk is full, so ${doing} was stopped. The file on disk is as it was. Make room and try again.`,
      );
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return refused(
        'not-allowed',
        `The system does not allow ${doing} (${code}). Check who may read and write that folder, then try again.`,
      );
    case 'ENOENT':
    case 'ENOTDIR':
      return refused(
        'not-found',
        `${sentence(doing)} failed: the file or its folder is no longer there. Put it back, or save your work under a new name.`,
      );
    case 'ELOOP':
    case 'ENOTPLAIN':
      return refused(
        'not-allowed',
        `${sentence(doing)} was refused: it is a link or not a plain file. Put a copy of the file itself into the folder.`,
      );
    case 'ETOOLARGE':
      return refused(
        'too-large',
        `${sentence(doing)} was refused: the file is larger than 64 MiB. Cut it down and try again.`,
      );
    case 'EBUSY':
    case 'ETXTBSY':
      return refused(
        'unknown',
        `${sentence(doing)} failed: another program is using the file just now (${code}). Try again in a moment.`,
      );
    default:
      // With a code the system's own words name the path, which is not the page's to know.
      return refused(
        'unknown',
        `${sentence(doing)} failed (${reasonOf(error)}). Try again; if it stays, keep a copy elsewhere.`,
      );
  }
}

function sentence(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
