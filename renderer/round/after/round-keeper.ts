/**
 * Keeps a round's file: takes it for this window, writes typing into the journal within a third of a second, saves when
 * typing rests, and tells what stands in the way. What fails stays in the window and is tried again.
 */

import { type RoundDocument, roundText } from '../../../core/round/format.ts';
import { parseRoundText } from '../../../core/round/record.ts';
import type { FileEntry, Host, OpenedFile } from '../../../electron/contract/host.ts';
import { clearAnswered, earlierWork } from '../../host/earlier-work.ts';
import type { StoreOf } from '../../state/store.ts';
import type { LostTyping, OpenRound, RoundFileAction, RoundFiles } from './round-file.ts';
import type { Words } from '../../../core/words/words.ts';

const WRITE_DOWN_MS = 300;
const REST_MS = 1500;
const TRY_AGAIN_MS = 10_000;

type Timer = ReturnType<typeof setTimeout>;

export class RoundKeeper {
  private writing: Promise<void> = Promise.resolve();
  private saving: Promise<boolean> | null = null;
  private journal: string | null = null;
  private lastNumber = 0;
  private written: RoundDocument | null = null;
  /** What the disk has said it has in the journal. */
  private readonly acknowledged = new WeakSet<RoundDocument>();
  private noteTimer: Timer | undefined;
  private restTimer: Timer | undefined;

  constructor(
    private readonly host: Host,
    private readonly store: StoreOf<RoundFiles, RoundFileAction>,
    private readonly words: () => Words,
  ) {
    store.subscribe(() => this.changed());
    host.watch(({ token, change }) => {
      if (token === this.open()?.entry.token && change === 'changed') this.tell({ isChangedOnDisk: true });
    });
  }

  private open(): OpenRound | null {
    return this.store.state().open;
  }

  private tell(change: Partial<OpenRound>): void {
    this.store.dispatch({ type: 'told', change });
  }

  /** Makes a new file for the round and opens it. */
  async begin(document: RoundDocument, name: string): Promise<void> {
    if (!(await this.leave())) return;
    this.store.dispatch({ type: 'busy', isBusy: true });
    const made = await this.host.create('round', name, roundText(document));
    if (!made.ok) {
      this.refuse(name, made.message);
      return;
    }
    await this.take(made.value);
  }

  async openFile(entry: FileEntry): Promise<void> {
    if (!(await this.leave())) return;
    this.store.dispatch({ type: 'busy', isBusy: true });
    const opened = await this.host.open(entry.token);
    if (!opened.ok) this.refuse(entry.name, opened.message);
    else await this.take(opened.value);
  }

  async importFile(): Promise<OpenedFile | null> {
    // Before the choice of a file, so that nothing is brought in for nothing.
    if (!(await this.isSecured())) return null;
    const brought = await this.host.importFile('round');
    if (brought.ok) {
      if (!(await this.leave())) return null;
      await this.take(brought.value);
      return brought.value;
    }
    if (brought.failure !== 'cancelled') this.refuse(this.words().round.file.theFile, brought.message);
    return null;
  }

  private refuse(name: string, message: string): void {
    this.store.dispatch({
      type: 'refused',
      name,
      faults: [{ severity: 'error', code: 'round-not-opened', where: name, message }],
    });
  }

  private async take({ entry, text, revision }: OpenedFile): Promise<void> {
    const parsed = parseRoundText(text);
    if (!parsed.ok) {
      this.store.dispatch({ type: 'refused', name: entry.name, faults: parsed.error });
      return;
    }
    const document = parsed.value.round;
    this.journal = null;
    this.lastNumber = 0;
    this.written = document;
    const claim = entry.readOnly ? null : await this.host.claim(entry.token);
    const readOnlyWhy =
      claim === null
        ? this.words().round.file.fixed
        : !claim.ok
          ? claim.message
          : claim.value.isHeld
            ? null
            : this.words().round.file.openElsewhere;
    this.store.dispatch({
      type: 'opened',
      open: {
        ...{ entry, revision, document, readOnlyWhy },
        saved: document,
        ...{ status: 'resting', trouble: null, isChangedOnDisk: false },
        lost: readOnlyWhy === null ? await this.lookForLost(entry.token, document) : null,
        ...{ past: [], future: [] },
      },
    });
  }

  private async lookForLost(token: string, document: RoundDocument): Promise<LostTyping | null> {
    const found = await earlierWork(this.host, token, (text) => {
      const parsed = parseRoundText(text);
      return parsed.ok ? parsed.value.round : null;
    });
    if (!found.ok) return null;
    return found.value.find((work) => roundText(work.document) !== roundText(document)) ?? null;
  }

  /** Takes up what an earlier sitting typed and did not save; it becomes a step that can be undone. */
  async bringBack(lost: LostTyping): Promise<void> {
    this.store.dispatch({
      type: 'changed',
      label: this.words().round.file.broughtBack,
      document: lost.document,
    });
    await this.writeDown();
    // Dropped only once the same round is in this sitting's own journal; until then it stays on offer.
    if (this.acknowledged.has(lost.document)) await this.giveUp(lost);
  }

  /** That sitting's typing and no other: what more was left behind is offered next. */
  async giveUp(lost: LostTyping): Promise<void> {
    const token = this.open()?.entry.token;
    if (token === undefined) return;
    const why = await clearAnswered(this.host, token, lost);
    const open = this.open();
    if (open?.entry.token !== token) return;
    if (why !== null) this.tell({ trouble: why });
    else this.tell({ lost: await this.lookForLost(token, open.document) });
  }

  private changed(): void {
    const open = this.open();
    if (open === null || open.readOnlyWhy !== null || open.document === this.written) return;
    clearTimeout(this.noteTimer);
    this.noteTimer = setTimeout(() => void this.writeDown(), WRITE_DOWN_MS);
    this.restart(REST_MS);
  }

  private restart(after: number): void {
    clearTimeout(this.restTimer);
    this.restTimer = setTimeout(() => void this.save(), after);
  }

  /** Into the journal, at once: for leaving the window too. */
  writeDown(): Promise<void> {
    clearTimeout(this.noteTimer);
    this.writing = this.writing.then(async () => {
      const open = this.open();
      if (open === null || open.readOnlyWhy !== null || open.document === this.written) return;
      const { document } = open;
      const answer = await this.host.journal({
        token: open.entry.token,
        baseRevision: open.revision,
        text: roundText(document),
      });
      if (!answer.ok) {
        this.tell({ trouble: this.words().round.file.notNoted({ message: answer.message }) });
        return;
      }
      this.written = document;
      this.acknowledged.add(document);
      this.journal = answer.value.journal;
      this.lastNumber = answer.value.number;
    });
    return this.writing;
  }

  save(): Promise<boolean> {
    this.saving ??= this.saveNow().finally(() => {
      this.saving = null;
    });
    return this.saving;
  }

  private async saveNow(): Promise<boolean> {
    clearTimeout(this.restTimer);
    await this.writeDown();
    const open = this.open();
    if (open === null || open.readOnlyWhy !== null || open.isChangedOnDisk) return false;
    if (open.document === open.saved) return true;
    const { document, entry, revision } = open;
    const upTo = this.lastNumber;
    this.tell({ status: 'saving' });
    const answer = await this.host.save({
      token: entry.token,
      text: roundText(document),
      baseRevision: revision,
      ...(upTo > 0 ? { journalUpTo: upTo } : {}),
    });
    if (!answer.ok) {
      if (answer.failure === 'changed-on-disk') this.tell({ status: 'resting', isChangedOnDisk: true });
      else {
        this.tell({
          status: 'resting',
          trouble: this.words().round.file.notSaved({ message: answer.message }),
        });
        this.restart(TRY_AGAIN_MS);
      }
      return false;
    }
    this.tell({ status: 'resting', saved: document, revision: answer.value.revision, trouble: null });
    if (this.journal !== null && upTo > 0)
      await this.host.clearJournal({ token: entry.token, journal: this.journal, upTo });
    if (this.open()?.document !== document) this.restart(REST_MS);
    return true;
  }

  /** After another program changed the file: what is here goes into a file of its own. */
  async keepAsCopy(): Promise<void> {
    const open = this.open();
    if (open === null) return;
    const made = await this.host.create('round', `${open.document.name} (copy)`, roundText(open.document));
    if (!made.ok) {
      this.tell({ trouble: made.message });
      return;
    }
    // The copy has it all, so the journal of the old file need not offer it again.
    if (this.open()?.document === open.document) await this.drop();
    await this.take(made.value);
  }

  /** Closes the round once all that was typed is in its file; false where it is not: then the round stays, and says so. */
  async leave(): Promise<boolean> {
    if (!(await this.isSecured())) return false;
    await this.close();
    return true;
  }

  /** Closes the round without what could not be saved: only when the person says so. */
  async drop(): Promise<void> {
    const open = this.open();
    if (open === null) return;
    if (this.journal !== null && this.lastNumber > 0)
      await this.host.clearJournal({
        ...{ token: open.entry.token, journal: this.journal, upTo: this.lastNumber },
      });
    await this.close();
  }

  /** Reads the file as another program left it; what is here goes. */
  async readAgain(): Promise<void> {
    const open = this.open();
    if (open === null) return;
    await this.drop();
    await this.openFile(open.entry);
  }

  private async isSecured(): Promise<boolean> {
    for (let open = this.open(); open !== null; open = this.open()) {
      if (open.readOnlyWhy !== null || open.document === open.saved) return true;
      // A save that was under way may be of an earlier state: then it is saved once more.
      if (await this.save()) continue;
      const { stays, staysChanged } = this.words().round.file;
      const now = this.open();
      if (now === null) return true;
      const isTold = now.trouble?.includes(stays) === true;
      if (!isTold)
        this.tell({
          trouble: now.isChangedOnDisk ? staysChanged : [now.trouble, stays].filter(Boolean).join(' '),
        });
      return false;
    }
    return true;
  }

  private async close(): Promise<void> {
    const open = this.open();
    if (open === null) return;
    clearTimeout(this.noteTimer);
    clearTimeout(this.restTimer);
    if (open.readOnlyWhy === null) await this.host.release(open.entry.token);
    this.store.dispatch({ type: 'closed' });
  }
}
