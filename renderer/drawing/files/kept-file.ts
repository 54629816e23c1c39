/** What all that is done for the file under edit shares: the file as the room shows it, its sitting, and telling the room. */

import type { History } from '../../../core/course/history.ts';
import type { Words } from '../../../core/words/words.ts';
import { wordsOf } from '../../state/use-words.ts';
import type { AppTools } from '../../state/use-app.ts';
import type { DrawingStore } from '../desk.ts';
import type { EditedFile } from '../drawing-state.ts';
import { beginSitting } from './sitting.ts';

export interface KeepingTools {
  readonly host: Pick<
    AppTools['host'],
    | 'claim'
    | 'release'
    | 'open'
    | 'save'
    | 'create'
    | 'list'
    | 'journal'
    | 'readJournal'
    | 'clearJournal'
    | 'watch'
  >;
  readonly store: AppTools['store'];
}

/** Once the disk has everything. */
export const NO_TROUBLE = { trouble: null, isGone: false, onDisk: null } as const;

export class KeptFile {
  /** Revisions of files that this window wrote itself. */
  readonly own = new Set<string>();
  /** The history as the journal has it; null while a course is being opened. */
  seen: History | null = null;
  sitting = beginSitting('');

  constructor(
    readonly tools: KeepingTools,
    readonly store: DrawingStore,
  ) {}

  /** Of the window's language, as it is now. */
  words(): Words {
    return wordsOf(this.tools.store.state());
  }

  file(): EditedFile | null {
    return this.store.state().file;
  }

  token(): string | null {
    return this.file()?.entry.token ?? null;
  }

  tell(change: Partial<EditedFile>, token = this.token()): void {
    if (token !== null) this.store.dispatch({ type: 'file-told', token, change });
  }

  /** Entries that are no longer needed, up to a number. */
  async drop(token: string, journal: string, upTo: number): Promise<void> {
    const answer = await this.tools.host.clearJournal({ token, journal, upTo });
    if (!answer.ok && answer.failure !== 'not-claimed') this.tell({ trouble: answer.message }, token);
  }
}
