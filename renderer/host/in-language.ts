/** What the host says, in the language of the window: its messages come in English, with their entry of the catalogue. */

import { tellKnown } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import type { HostAnswer, Written } from '../../electron/contract/host.ts';

export function inLanguage<T>(answer: HostAnswer<T>, words: Words): HostAnswer<T> {
  if (answer.ok || answer.told === undefined) return answer;
  const message = tellKnown(answer.told, words);
  return message === null ? answer : { ...answer, message };
}

/** Also where a file went to. */
export function writtenInLanguage(answer: HostAnswer<Written>, words: Words): HostAnswer<Written> {
  if (!answer.ok || answer.value.told === undefined) return inLanguage(answer, words);
  const where = tellKnown(answer.value.told, words);
  return where === null ? answer : { ok: true, value: { where } };
}
