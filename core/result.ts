/** A tagged answer for functions that can refuse: the value, or the reasons in words a person can act on. */

import type { Told } from './words/told.ts';

export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export function succeed<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function refuse<E>(error: E): { readonly ok: false; readonly error: E } {
  return { ok: false, error };
}

/** One thing wrong with a file: which feature (or field), what is wrong, what to do about it. */
export interface Fault {
  readonly severity: 'error' | 'warning';
  /** Stable, machine-readable, e.g. `hole-without-green`. */
  readonly code: string;
  /** The feature or field in words: `hole 7`, `feature 12 (bunker)`, `bag[3].club`. */
  readonly where: string;
  /** What is wrong and what to do, one or two short sentences. */
  readonly message: string;
  /** The same as entries of the catalogue, where they are: for telling it in the language of the window. */
  readonly told?: { readonly where?: Told; readonly message: Told };
  /** Index into the file's feature list where there is one. */
  readonly featureIndex?: number;
}

/** `where: message`, the one line that the command line prints. */
export function faultLine(fault: Fault): string {
  return `${fault.severity}: ${fault.where}: ${fault.message}`;
}

/** What was found in a file, for a message: enough of it to find it again. */
export function briefly(found: string): string {
  return found.length > 80 ? `${found.slice(0, 80)}…` : found;
}
