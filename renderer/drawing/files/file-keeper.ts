/**
 * Keeps the course's file in step with the drawing: takes it for this window, writes every change into the
 * journal, saves when drawing rests, and tells what stands in the way. What fails stays in memory and is tried again.
 */

import { courseOf, openDocumentText, serialise } from '../../../core/course/document.ts';
import { type History, isChangedSince, revisionOf } from '../../../core/course/history.ts';
import type { Course } from '../../../core/course/model.ts';
import type { HostAnswer } from '../../../electron/contract/host.ts';
import type { OpenDocument } from '../../state/app-state.ts';
import type { AppTools } from '../../state/use-app.ts';
import type { DrawingStore } from '../desk.ts';
import { type Access, type EditedFile, mayEdit } from '../drawing-state.ts';
import { noteOfStep, noteText } from './journal-entry.ts';
import { becomes, recover, type Recovered } from './recover.ts';
import { beginSitting, holderWords, saveRequest, type Sitting } from './sitting.ts';

/** Drawing rests when nothing has changed for this long: the file is saved and holes are planned anew. */
const REST_MS = 2000;
const TRY_AGAIN_MS = 10_000;

export interface FileKeeper {
  /** Saves what is not saved yet. True where the disk has everything. */
  readonly save: () => Promise<boolean>;
  /** After another program changed the file: mine takes its place (the host keeps a copy of the other). */
  readonly saveOver: () => Promise<void>;
  /** After another program changed the file: reads it; what was not saved here is given up. */
  readonly readAgain: () => Promise<void>;
  readonly claimAgain: () => Promise<void>;
  readonly bringBack: (recovered: Recovered) => Promise<void>;
  readonly giveUp: (recovered: Recovered) => Promise<void>;
}

interface Tools {
  readonly host: Pick<
    AppTools['host'],
    'claim' | 'release' | 'open' | 'save' | 'journal' | 'readJournal' | 'clearJournal' | 'watch'
  >;
  readonly store: AppTools['store'];
}

type Timer = ReturnType<typeof setTimeout>;

export function keepFile(tools: Tools, store: DrawingStore): FileKeeper {
  const keeper = new Keeper(tools, store);
  keeper.start();
  return {
    save: () => keeper.save(),
    saveOver: () => keeper.saveOver(),
    readAgain: () => keeper.readAgain(),
    claimAgain: () => keeper.claim(),
    bringBack: (recovered) => keeper.bringBack(recovered),
    giveUp: (recovered) => keeper.giveUp(recovered),
  };
}

class Keeper {
  /** Revisions of files that this window wrote itself. */
  private readonly own = new Set<string>();
  private seen: History | null = null;
  private followed: OpenDocument<Course> | null = null;
  private sitting = beginSitting('');
  private saving: Promise<boolean> | null = null;
  private resting: Timer | undefined;

  constructor(
    private readonly tools: Tools,
    private readonly store: DrawingStore,
  ) {}

  start(): void {
    const { tools, store } = this;
    const follow = (): void => {
      const { course } = tools.store.state();
      // other news of the window, such as a plan worked out, must not bring back the course as it was before a save
      if (course === null || course === this.followed) return;
      this.followed = course;
      this.follow(course);
    };
    tools.store.subscribe(follow);
    store.subscribe(() => this.changed());
    tools.host.watch(({ token, change }) => {
      if (token === this.token() && change === 'changed') void this.lookAtDisk(token);
      if (token === this.token() && change === 'removed') {
        this.tell({
          trouble:
            'The file is no longer in its folder. Your work is still here; saving puts the file back once the folder is there.',
        });
      }
    });
    follow();
  }

  /** News of an own save may come after the next one, so the file itself says whether somebody else wrote it. */
  private async lookAtDisk(token: string): Promise<void> {
    await this.saving;
    const answer = await this.tools.host.open(token);
    const file = this.file();
    if (!answer.ok || file?.entry.token !== token) return;
    const { revision } = answer.value;
    if (revision === file.baseRevision || this.own.has(revision)) return;
    this.tell({ onDisk: { revision } });
  }

  private file(): EditedFile | null {
    return this.store.state().file;
  }

  private token(): string | null {
    return this.file()?.entry.token ?? null;
  }

  private tell(change: Partial<EditedFile>, token = this.token()): void {
    if (token !== null) this.store.dispatch({ type: 'file-told', token, change });
  }

  /** The window opened a course, or opened the present one anew. */
  private follow(course: OpenDocument<Course>): void {
    const file = this.file();
    if (file?.entry.token === course.entry.token) {
      if (course.revision === file.baseRevision || this.own.has(course.revision)) return;
      if (isChangedSince(this.store.state().history, file.saved)) {
        this.tell({ onDisk: { revision: course.revision } });
        return;
      }
    }
    void this.open(course);
  }

  private async open({ entry, text, revision }: OpenDocument<Course>): Promise<void> {
    const before = this.token();
    if (before !== null && before !== entry.token) {
      // loads at once; what the other file still lacks is in its journal and written below
      void this.leave(this.sitting);
    }
    const opened = openDocumentText(text);
    if (!opened.ok) {
      this.store.dispatch({ type: 'course-closed' });
      const [fault] = opened.error;
      const words = `${entry.name} cannot be edited: ${fault?.message ?? 'it cannot be read.'}`;
      this.store.dispatch({ type: 'said', said: { tone: 'refusal', words } });
      return;
    }
    const isHeld = before === entry.token && mayEdit(this.store.state());
    if (isHeld) this.sitting.wholeDue = true;
    else this.sitting = beginSitting(entry.token);
    const access: Access = entry.readOnly
      ? {
          may: 'look',
          why: 'demo',
          words: `${entry.name} is a demo and stays as it is. Make a copy of it to edit.`,
        }
      : isHeld
        ? { may: 'edit' }
        : { may: 'look', why: 'asking', words: 'Asking for the file …' };
    // loading is no change that the journal should have
    this.seen = null;
    this.store.dispatch({
      type: 'course-loaded',
      document: opened.value.document,
      file: {
        entry,
        baseRevision: revision,
        access,
        saved: 0,
        saving: false,
        trouble: null,
        onDisk: null,
        recovered: [],
      },
    });
    this.seen = this.store.state().history;
    if (opened.value.repairs.length > 0) {
      const words = `On opening: ${opened.value.repairs.map(({ where, message }) => `${where}: ${message}`).join(' ')}`;
      this.store.dispatch({ type: 'said', said: { tone: 'news', words } });
    }
    if (access.may === 'look' && access.why === 'asking') await this.claim();
  }

  /** Saves what the file left behind still lacks, then lets go of it. */
  private async leave(sitting: Sitting): Promise<void> {
    const { token } = sitting;
    const { history, file } = this.store.state();
    clearTimeout(this.resting);
    if (file?.access.may !== 'edit') return;
    const text = serialise(history.document);
    const unsaved = isChangedSince(history, file.saved);
    await sitting.writing;
    if (unsaved) {
      const answer = await this.tools.host.save(
        saveRequest(token, text, file.baseRevision, sitting.lastNumber),
      );
      if (!answer.ok) {
        const words = `${file.entry.name} could not be saved on leaving: ${answer.message} Its changes are in the journal and are offered when it is opened again.`;
        this.store.dispatch({ type: 'said', said: { tone: 'refusal', words } });
      }
    }
    await this.tools.host.release(token);
  }

  async claim(): Promise<void> {
    const file = this.file();
    if (file === null || file.entry.readOnly) return;
    const { token } = file.entry;
    const answer = await this.tools.host.claim(token);
    if (this.token() !== token) return;
    if (!answer.ok) {
      this.tell({ access: { may: 'look', why: 'trouble', words: answer.message } });
      return;
    }
    if (!answer.value.isHeld) {
      this.tell({ access: { may: 'look', why: 'held', words: holderWords(answer.value.holder) } });
      return;
    }
    this.tell({ access: { may: 'edit' } });
    await this.lookForLost(token);
  }

  private async lookForLost(token: string): Promise<void> {
    const answer = await this.tools.host.readJournal(token);
    const file = this.file();
    if (file?.entry.token !== token) return;
    if (!answer.ok) {
      this.tell({ trouble: `The journal of earlier changes cannot be read: ${answer.message}` });
      return;
    }
    const { document } = this.store.state().history;
    const recovered: Recovered[] = [];
    for (const journal of answer.value) {
      if (journal.isOwn) continue;
      const found = recover(journal, document, file.baseRevision);
      if (found !== null) recovered.push(found);
      else if (journal.entries.length > 0)
        void this.drop(token, journal.journal, journal.entries.at(-1)!.number);
    }
    this.tell({ recovered }, token);
  }

  /** After each change of the room's state: a new state of the document goes into the journal. */
  private changed(): void {
    const { history, file } = this.store.state();
    const { seen } = this;
    if (file?.access.may !== 'edit' || seen === null || history.drag !== null) return;
    if (history.document === seen.document) {
      this.seen = history;
      return;
    }
    const step = noteOfStep(seen, history);
    const { sitting } = this;
    const note = sitting.wholeDue
      ? ({ what: 'whole', name: step.name, document: history.document } as const)
      : step;
    sitting.wholeDue = false;
    this.seen = history;
    const text = noteText(note);
    const { baseRevision } = file;
    sitting.writing = sitting.writing.then(() => this.write(sitting, baseRevision, text));
    this.restart();
  }

  private async write(sitting: Sitting, revision: string, text: string): Promise<void> {
    const { token } = sitting;
    const file = this.file();
    // a save may have come between
    const baseRevision = file?.entry.token === token ? file.baseRevision : revision;
    const answer = await this.tools.host.journal({ token, baseRevision, text });
    if (answer.ok) {
      sitting.journal = answer.value.journal;
      sitting.lastNumber = answer.value.number;
      return;
    }
    sitting.wholeDue = true;
    this.tell(
      { trouble: `The last change is not in the journal yet: ${answer.message} It is still in this window.` },
      token,
    );
  }

  private restart(after = REST_MS): void {
    clearTimeout(this.resting);
    this.resting = setTimeout(() => {
      if (this.store.state().history.drag !== null) this.restart();
      else if (this.file()?.onDisk === null) void this.save();
    }, after);
  }

  save(): Promise<boolean> {
    this.saving ??= this.saveNow(null).finally(() => {
      this.saving = null;
    });
    return this.saving;
  }

  private async saveNow(over: string | null): Promise<boolean> {
    clearTimeout(this.resting);
    const { sitting } = this;
    await sitting.writing;
    const { file, history } = this.store.state();
    if (file?.access.may !== 'edit' || file.entry.token !== sitting.token) return false;
    if (over === null && !isChangedSince(history, file.saved)) return true;
    if (history.drag !== null) {
      this.restart();
      return false;
    }
    const { token } = file.entry;
    const { document } = history;
    const revision = revisionOf(history);
    const text = serialise(document);
    // what is drawn from now on is not in `text`, so it cannot build on entries that the save drops
    sitting.wholeDue = true;
    this.tell({ saving: true });
    const base = over ?? file.baseRevision;
    const upTo = sitting.lastNumber;
    const answer = await this.tools.host.save(saveRequest(token, text, base, upTo));
    if (!answer.ok) {
      await this.notSaved(token, answer);
      return false;
    }
    this.own.add(answer.value.revision);
    this.tell(
      { saving: false, saved: revision, baseRevision: answer.value.revision, trouble: null, onDisk: null },
      token,
    );
    const { journal } = sitting;
    if (journal !== null && upTo > 0) await this.drop(token, journal, upTo);
    this.handOn(file, text, answer.value.revision, document);
    if (this.token() === token && isChangedSince(this.store.state().history, revision)) this.restart();
    return true;
  }

  /** The other rooms get the saved course. */
  private handOn(
    { entry }: EditedFile,
    text: string,
    revision: string,
    document: Parameters<typeof courseOf>[0],
  ): void {
    const course = courseOf(document);
    if (!course.ok || this.tools.store.state().course?.entry.token !== entry.token) return;
    const value = course.value;
    this.tools.store.dispatch({ type: 'course-opened', document: { entry, text, revision, value } });
  }

  private async notSaved(token: string, answer: HostAnswer<unknown> & { ok: false }): Promise<void> {
    if (answer.failure === 'changed-on-disk') {
      this.tell({ saving: false, onDisk: { revision: answer.revisionOnDisk ?? null } }, token);
      return;
    }
    if (answer.failure === 'not-claimed') {
      this.tell({ saving: false }, token);
      await this.claim();
      if (mayEdit(this.store.state())) this.restart();
      return;
    }
    const kept = 'Your changes stay in this window and in the journal; saving is tried again by itself.';
    this.tell({ saving: false, trouble: `Not saved: ${answer.message} ${kept}` }, token);
    this.restart(TRY_AGAIN_MS);
  }

  async saveOver(): Promise<void> {
    const file = this.file();
    if (file === null) return;
    let revision = file.onDisk?.revision ?? null;
    if (revision === null) {
      const answer = await this.tools.host.open(file.entry.token);
      if (!answer.ok) {
        this.tell({ trouble: answer.message });
        return;
      }
      ({ revision } = answer.value);
    }
    await this.saveNow(revision);
  }

  async readAgain(): Promise<void> {
    const file = this.file();
    if (file === null) return;
    const answer = await this.tools.host.open(file.entry.token);
    if (!answer.ok) {
      this.tell({ trouble: answer.message });
      return;
    }
    const { sitting } = this;
    await sitting.writing;
    const { entry, text, revision } = answer.value;
    const document = openDocumentText(text);
    const course = document.ok ? courseOf(document.value.document) : document;
    if (!course.ok) {
      this.tell({
        trouble: `The file as it is on disk cannot be read (${course.error[0]?.message ?? 'damaged'}). Save over it, or go back to a kept copy.`,
      });
      return;
    }
    if (sitting.journal !== null) await this.drop(entry.token, sitting.journal, sitting.lastNumber);
    this.own.add(revision);
    this.tools.store.dispatch({
      type: 'course-opened',
      document: { entry, text, revision, value: course.value },
    });
    await this.open({ entry, text, revision, value: course.value });
  }

  async bringBack(recovered: Recovered): Promise<void> {
    const { document } = this.store.state().history;
    const token = this.token();
    if (recovered.document === null || token === null) return;
    const edit = becomes(document, recovered.document, 'Bring back unsaved changes');
    if (!edit.ok) {
      this.store.dispatch({ type: 'said', said: { tone: 'refusal', words: edit.error.message } });
      return;
    }
    this.store.dispatch({ type: 'edited', edit: edit.value });
    await this.sitting.writing;
    // dropped only once the same work is in this sitting's own journal
    if (this.file()?.trouble === null) await this.giveUp(recovered);
  }

  async giveUp({ journal, lastNumber }: Recovered): Promise<void> {
    const file = this.file();
    if (file === null) return;
    this.tell({ recovered: file.recovered.filter((other) => other.journal !== journal) });
    await this.drop(file.entry.token, journal, lastNumber);
  }

  private async drop(token: string, journal: string, upTo: number): Promise<void> {
    const answer = await this.tools.host.clearJournal({ token, journal, upTo });
    if (!answer.ok && answer.failure !== 'not-claimed') this.tell({ trouble: answer.message }, token);
  }
}
