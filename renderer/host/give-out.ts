/** Hands a file that the person takes out to the host, and says in words where it went. */

import type { Words } from '../../core/words/words.ts';
import type { Host } from '../../electron/contract/host.ts';
import { LONGEST_NAME } from '../../electron/contract/wire.ts';

export interface GivenOut {
  readonly tone: 'news' | 'refusal';
  readonly words: string;
}

/** `ending` with its point, as the host takes it; null where the person called it off. */
export async function giveOut(
  host: Pick<Host, 'saveExport'>,
  name: string,
  ending: '.geojson' | '.csv' | '.svg' | '.png',
  content: string | Blob,
  words: Words,
): Promise<GivenOut | null> {
  const bytes = await new Blob([content]).arrayBuffer();
  const stem = name.trim() === '' ? 'export' : name.slice(0, LONGEST_NAME - ending.length);
  const answer = await host.saveExport(`${stem}${ending}`, bytes);
  if (answer.ok) return { tone: 'news', words: words.host.savedAs(answer.value) };
  return answer.failure === 'cancelled' ? null : { tone: 'refusal', words: answer.message };
}
