/** What a journal holds whose file is gone: a course, a player or a round, as the text of a file that can be made anew. */

import { serialise } from '../../../core/course/document.ts';
import { playerText } from '../../../core/player/format.ts';
import { roundText } from '../../../core/round/format.ts';
import { parseRoundText } from '../../../core/round/record.ts';
import type { FileKind, Journal } from '../../../electron/contract/host.ts';
import { readEntry } from '../../bag/state/found-work.ts';
import { wholeOf } from '../../drawing/files/recover.ts';

export interface LeftBehindWork {
  readonly fileKind: FileKind;
  readonly text: string;
}

/** Null where it cannot be read: then it stays on the disk. */
export function workIn(journal: Journal): LeftBehindWork | null {
  const course = wholeOf(journal);
  if (course !== null) return { fileKind: 'course', text: serialise(course) };
  for (const { text } of [...journal.entries].reverse()) {
    const player = readEntry(text);
    if (player !== null) return { fileKind: 'player', text: playerText(player) };
    const round = parseRoundText(text);
    if (round.ok) return { fileKind: 'round', text: roundText(round.value.round) };
  }
  return null;
}
