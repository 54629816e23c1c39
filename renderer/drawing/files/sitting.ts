/** One sitting at a file: what its journal has, what a save asks for, who else may have the file. */

import type { Words } from '../../../core/words/words.ts';
import type { ClaimHolder, SaveRequest } from '../../../electron/contract/host.ts';
import type { LookingOnly } from '../drawing-state.ts';

/** What one file's journal has, from taking the file to letting go of it. */
export interface Sitting {
  readonly token: string;
  journal: string | null;
  lastNumber: number;
  /** The next entry is the whole document: nothing before it can be built on. */
  wholeDue: boolean;
  writing: Promise<void>;
}

export function beginSitting(token: string): Sitting {
  return { token, journal: null, lastNumber: 0, wholeDue: true, writing: Promise.resolve() };
}

/** `upTo` 0 names no entry. */
export function saveRequest(token: string, text: string, baseRevision: string, upTo: number): SaveRequest {
  return { token, text, baseRevision, ...(upTo > 0 ? { journalUpTo: upTo } : {}) };
}

/** Why the file of that name may only be looked at, and what can be done. */
export function lookingWords(access: LookingOnly, name: string, words: Words): string {
  switch (access.why) {
    case 'demo':
      return words.courseFile.demo({ name });
    case 'asking':
      return words.courseFile.asking;
    case 'held':
      return holderWords(access.holder, words);
    case 'refused':
      return access.said;
  }
}

function holderWords({ place, computer, since }: ClaimHolder, words: Words): string {
  const where =
    place === 'other-window'
      ? words.courseFile.holder.window
      : place === 'other-program'
        ? words.courseFile.holder.program
        : words.courseFile.holder.computer({
            whose: computer === '' ? words.courseFile.holder.somebody : computer,
          });
  return words.courseFile.holder.held({ where, when: words.figures.moment(since, 'clock') });
}
