/** Work of earlier sittings that was not saved: found when the file is taken, brought back or given up by the person. */

import { tell } from '../../../core/words/told.ts';
import type { KeptFile } from './kept-file.ts';
import { becomes, recover, type Recovered } from './recover.ts';

export class LostWork {
  constructor(private readonly kept: KeptFile) {}

  async look(token: string): Promise<void> {
    const answer = await this.kept.tools.host.readJournal(token);
    const file = this.kept.file();
    if (file?.entry.token !== token) return;
    if (!answer.ok) {
      this.kept.tell({
        trouble: this.kept.words().courseFile.journalUnreadable({ message: answer.message }),
      });
      return;
    }
    const { document } = this.kept.store.state().history;
    const recovered: Recovered[] = [];
    for (const journal of answer.value) {
      if (journal.isOwn) continue;
      const found = recover(journal, document, file.baseRevision, this.kept.words());
      if (found !== null) recovered.push(found);
      else if (journal.entries.length > 0)
        void this.kept.drop(token, journal.journal, journal.entries.at(-1)!.number);
    }
    this.kept.tell({ recovered }, token);
  }

  async bringBack(recovered: Recovered): Promise<void> {
    const { document } = this.kept.store.state().history;
    const token = this.kept.token();
    if (recovered.document === null || token === null) return;
    const edit = becomes(document, recovered.document, this.kept.words().courseFile.bringBackStep);
    if (!edit.ok) {
      this.kept.store.dispatch({
        type: 'said',
        said: {
          tone: 'refusal',
          words:
            edit.error.told === undefined ? edit.error.message : tell(edit.error.told, this.kept.words()),
        },
      });
      return;
    }
    this.kept.store.dispatch({ type: 'edited', edit: edit.value });
    await this.kept.sitting.writing;
    // dropped only once the same work is in this sitting's own journal
    if (this.kept.file()?.trouble === null) await this.giveUp(recovered);
  }

  async giveUp({ journal, lastNumber }: Recovered): Promise<void> {
    const file = this.kept.file();
    if (file === null) return;
    this.kept.tell({ recovered: file.recovered.filter((other) => other.journal !== journal) });
    await this.kept.drop(file.entry.token, journal, lastNumber);
  }
}
