/** Writes every change into the journal, as it is made. What could not be written is in the next entry, which is the whole. */

import { noteOfStep, noteText } from './journal-entry.ts';
import type { KeptFile } from './kept-file.ts';
import type { Sitting } from './sitting.ts';

export class JournalWriter {
  /** `written` is told of each change that goes on its way. */
  constructor(
    private readonly kept: KeptFile,
    private readonly written: () => void,
  ) {}

  /** After each change of the room's state: a new state of the document goes into the journal. */
  changed(): void {
    const { history, file } = this.kept.store.state();
    const { seen } = this.kept;
    if (file?.access.may !== 'edit' || seen === null || history.drag !== null) return;
    if (history.document === seen.document) {
      this.kept.seen = history;
      return;
    }
    const step = noteOfStep(seen, history, this.kept.words());
    const { sitting } = this.kept;
    const note = sitting.wholeDue
      ? ({ what: 'whole', name: step.name, document: history.document } as const)
      : step;
    sitting.wholeDue = false;
    this.kept.seen = history;
    const text = noteText(note);
    const { baseRevision } = file;
    sitting.writing = sitting.writing.then(() => this.write(sitting, baseRevision, text));
    this.written();
  }

  private async write(sitting: Sitting, revision: string, text: string): Promise<void> {
    const { token } = sitting;
    const file = this.kept.file();
    // a save may have come between
    const baseRevision = file?.entry.token === token ? file.baseRevision : revision;
    const answer = await this.kept.tools.host.journal({ token, baseRevision, text });
    if (answer.ok) {
      sitting.journal = answer.value.journal;
      sitting.lastNumber = answer.value.number;
      return;
    }
    sitting.wholeDue = true;
    this.kept.tell(
      { trouble: this.kept.words().courseFile.notInJournal({ message: answer.message }) },
      token,
    );
  }
}
