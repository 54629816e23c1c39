/** Building host answers: the value, or a refusal whose message says what happened and what to do. */

import { inEnglish, told, type Told } from '../../core/words/told.ts';
import type { HostAnswer, HostFailure } from '../contract/host.ts';

export function good<T>(value: T): HostAnswer<T> {
  return { ok: true, value };
}

export type Refusal = Extract<HostAnswer<never>, { readonly ok: false }>;

export function refused(failure: HostFailure, message: Told): Refusal {
  return { ok: false, failure, message: inEnglish(message), told: message };
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

/** Puts a file system error into words. `doing` is an entry of `refusals.doing`. */
export function refusedByDisk(error: unknown, doing: Told): Refusal {
  const code = errorCode(error);
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return refused(
        'disk-full',
        told(({ refusals }) => refusals.diskFull, { doing }),
      );
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return refused(
        'not-allowed',
        told(({ refusals }) => refusals.forbidden, { doing, code }),
      );
    case 'ENOENT':
    case 'ENOTDIR':
      return refused(
        'not-found',
        told(({ refusals }) => refusals.gone, { doing }),
      );
    case 'ELOOP':
    case 'ENOTPLAIN':
      return refused(
        'not-allowed',
        told(({ refusals }) => refusals.notPlain, { doing }),
      );
    case 'ETOOLARGE':
      return refused(
        'too-large',
        told(({ refusals }) => refusals.tooLarge, { doing }),
      );
    case 'EBUSY':
    case 'ETXTBSY':
      return refused(
        'unknown',
        told(({ refusals }) => refusals.busy, { doing, code }),
      );
    default:
      // With a code the system's own words name the path, which is not the page's to know.
      return refused(
        'unknown',
        told(({ refusals }) => refusals.failed, { doing, reason: reasonOf(error) }),
      );
  }
}
