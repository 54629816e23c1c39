/** What a file must be to be written: readable by core's own parsers, so that what is saved can be opened again. */

import { parseCourseDocumentText } from '../../core/course/parse.ts';
import { parsePlayerDocumentText } from '../../core/player/parse.ts';
import type { Fault } from '../../core/result.ts';
import { told, type Told } from '../../core/words/told.ts';
import { type ContentCheck, readsAsItsKind } from './content.ts';

export const readsInCore: ContentCheck = (kind, text) => {
  switch (kind) {
    case 'course': {
      // Features that cannot be read stay in the file, and a person who chose to work on the rest must be able to save.
      const course = parseCourseDocumentText(text, { unreadable: 'leave-out' });
      return course.ok ? null : inWords(course.error);
    }
    case 'player': {
      const player = parsePlayerDocumentText(text);
      return player.ok ? null : inWords(player.error);
    }
    case 'round':
      return readsAsItsKind(kind, text);
  }
};

function inWords(faults: readonly Fault[]): Told {
  const [first, ...more] = faults;
  if (first === undefined) return told(({ refusals }) => refusals.content.unreadable);
  return told(({ refusals }) => refusals.content.fault, {
    where: first.told?.where ?? first.where,
    message: first.told?.message ?? first.message,
    more: more.length,
  });
}
