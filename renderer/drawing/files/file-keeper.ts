/**
 * Keeps the course's file in step with the drawing: takes it for this window, writes every change into the
 * journal, saves when drawing rests, and tells what stands in the way. What fails stays in memory and is tried again.
 */

import { faultText, firstFault } from '../../../core/words/told.ts';
import { courseOf, openDocumentText, serialise } from '../../../core/course/document.ts';
import { isChangedSince, revisionOf } from '../../../core/course/history.ts';
import type { Course } from '../../../core/course/model.ts';
import type { HostAnswer } from '../../../electron/contract/host.ts';
import type { OpenDocument } from '../../state/app-state.ts';
import type { DrawingStore } from '../desk.ts';
import { type Access, type EditedFile, mayEdit } from '../drawing-state.ts';
import { JournalWriter } from './journal-writer.ts';
import { KeptFile, type KeepingTools, NO_TROUBLE } from './kept-file.ts';
import { LostWork } from './lost-work.ts';
import { putBack } from './put-back.ts';
import type { Recovered } from './recover.ts';
import { beginSitting, saveRequest, type Sitting } from './sitting.ts';

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
  /** Where the file is gone from its folder: writes it anew from what is drawn. */
  readonly putBack: () => Promise<void>;
  readonly bringBack: (recovered: Recovered) => Promise<void>;
  readonly giveUp: (recovered: Recovered) => Promise<void>;
}

type Timer = ReturnType<typeof setTimeout>;

export function keepFile(tools: KeepingTools, store: DrawingStore): FileKeeper {
  const keeper = new Keeper(new KeptFile(tools, store));
  keeper.start();
  return {
    save: () => keeper.save(),
    saveOver: () => keeper.saveOver(),
    readAgain: () => keeper.readAgain(),
    claimAgain: () => keeper.claim(),
    putBack: () => keeper.putBack(),
    bringBack: (recovered) => keeper.lost.bringBack(recovered),
    giveUp: (recovered) => keeper.lost.giveUp(recovered),
  };
}

class Keeper {
  readonly lost: LostWork;
  private readonly writer: JournalWriter;
  private followed: OpenDocument<Course> | null = null;
  private saving: Promise<boolean> | null = null;
  private resting: Timer | undefined;

  constructor(private readonly kept: KeptFile) {
    this.lost = new LostWork(kept);
    this.writer = new JournalWriter(kept, () => this.restart());
  }

  start(): void {
    const { tools, store } = this.kept;
    const follow = (): void => {
      const { course } = tools.store.state();
      // other news of the window, such as a plan worked out, must not bring back the course as it was before a save
      if (course === null || course === this.followed) return;
      this.followed = course;
      this.follow(course);
    };
    tools.store.subscribe(follow);
    store.subscribe(() => this.writer.changed());
    tools.host.watch(({ token, change }) => {
      if (token !== this.kept.token()) return;
      this.kept.tell({ isGone: change === 'removed' });
      if (change !== 'removed') void this.lookAtDisk(token);
    });
    follow();
  }

  /** News of an own save may come after the next one, so the file itself says whether somebody else wrote it. */
  private async lookAtDisk(token: string): Promise<void> {
    await this.saving;
    const answer = await this.kept.tools.host.open(token);
    const file = this.kept.file();
    if (!answer.ok || file?.entry.token !== token) return;
    const { revision } = answer.value;
    if (revision === file.baseRevision || this.kept.own.has(revision)) return;
    this.kept.tell({ onDisk: { revision } });
  }

  /** The window opened a course, or opened the present one anew. */
  private follow(course: OpenDocument<Course>): void {
    const file = this.kept.file();
    if (file?.entry.token === course.entry.token) {
      if (course.revision === file.baseRevision || this.kept.own.has(course.revision)) return;
      if (isChangedSince(this.kept.store.state().history, file.saved)) {
        this.kept.tell({ onDisk: { revision: course.revision } });
        return;
      }
    }
    void this.open(course);
  }

  private async open({ entry, text, revision }: OpenDocument<Course>): Promise<void> {
    const before = this.kept.token();
    if (before !== null && before !== entry.token) {
      // loads at once; what the other file still lacks is in its journal and written below
      void this.leave(this.kept.sitting);
    }
    const opened = openDocumentText(text);
    if (!opened.ok) {
      this.kept.store.dispatch({ type: 'course-closed' });
      const [fault] = opened.error;
      const phrase = this.kept.words().courseFile.cannotEdit({
        name: entry.name,
        why:
          fault === undefined
            ? this.kept.words().courseFile.unreadable
            : faultText(fault, this.kept.words()).message,
      });
      this.kept.store.dispatch({ type: 'said', said: { tone: 'refusal', words: phrase } });
      return;
    }
    const isHeld = before === entry.token && mayEdit(this.kept.store.state());
    if (isHeld) this.kept.sitting.wholeDue = true;
    else this.kept.sitting = beginSitting(entry.token);
    const access: Access = entry.readOnly
      ? { may: 'look', why: 'demo' }
      : isHeld
        ? { may: 'edit' }
        : { may: 'look', why: 'asking' };
    // loading is no change that the journal should have
    this.kept.seen = null;
    this.kept.store.dispatch({
      type: 'course-loaded',
      document: opened.value.document,
      file: {
        entry,
        baseRevision: revision,
        access,
        saved: 0,
        saving: false,
        trouble: null,
        isGone: false,
        onDisk: null,
        recovered: [],
      },
    });
    this.kept.seen = this.kept.store.state().history;
    if (opened.value.repairs.length > 0) {
      const phrase = this.kept.words().courseFile.onOpening({
        notes: opened.value.repairs.map(({ where, message }) => `${where}: ${message}`).join(' '),
      });
      this.kept.store.dispatch({ type: 'said', said: { tone: 'news', words: phrase } });
    }
    if (access.may === 'look' && access.why === 'asking') await this.claim();
  }

  /** Saves what the file left behind still lacks, then lets go of it. */
  private async leave(sitting: Sitting): Promise<void> {
    const { token } = sitting;
    const { history, file } = this.kept.store.state();
    clearTimeout(this.resting);
    if (file?.access.may !== 'edit') return;
    const text = serialise(history.document);
    const unsaved = isChangedSince(history, file.saved);
    await sitting.writing;
    if (unsaved) {
      const answer = await this.kept.tools.host.save(
        saveRequest(token, text, file.baseRevision, sitting.lastNumber),
      );
      if (!answer.ok) {
        const phrase = this.kept
          .words()
          .courseFile.notSavedOnLeaving({ name: file.entry.name, message: answer.message });
        this.kept.store.dispatch({ type: 'said', said: { tone: 'refusal', words: phrase } });
      }
    }
    await this.kept.tools.host.release(token);
  }

  async claim(): Promise<void> {
    const file = this.kept.file();
    if (file === null || file.entry.readOnly) return;
    const { token } = file.entry;
    const answer = await this.kept.tools.host.claim(token);
    if (this.kept.token() !== token) return;
    if (!answer.ok) {
      const isGone = answer.failure === 'not-found';
      this.kept.tell({
        access: { may: 'look', why: 'refused', said: answer.message },
        ...(isGone ? { isGone } : {}),
      });
      return;
    }
    if (!answer.value.isHeld) {
      this.kept.tell({ access: { may: 'look', why: 'held', holder: answer.value.holder } });
      return;
    }
    this.kept.tell({ access: { may: 'edit' } });
    await this.lost.look(token);
  }

  private restart(after = REST_MS): void {
    clearTimeout(this.resting);
    this.resting = setTimeout(() => {
      if (this.kept.store.state().history.drag !== null) this.restart();
      else if (this.kept.file()?.onDisk === null) void this.save();
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
    const { sitting } = this.kept;
    await sitting.writing;
    const { file, history } = this.kept.store.state();
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
    this.kept.tell({ saving: true });
    const base = over ?? file.baseRevision;
    const upTo = sitting.lastNumber;
    const answer = await this.kept.tools.host.save(saveRequest(token, text, base, upTo));
    if (!answer.ok) {
      await this.notSaved(token, answer);
      return false;
    }
    this.kept.own.add(answer.value.revision);
    this.kept.tell(
      { saving: false, saved: revision, baseRevision: answer.value.revision, ...NO_TROUBLE },
      token,
    );
    const { journal } = sitting;
    if (journal !== null && upTo > 0) await this.kept.drop(token, journal, upTo);
    this.handOn(file, text, answer.value.revision, document);
    if (this.kept.token() === token && isChangedSince(this.kept.store.state().history, revision))
      this.restart();
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
    if (!course.ok || this.kept.tools.store.state().course?.entry.token !== entry.token) return;
    const value = course.value;
    this.kept.tools.store.dispatch({ type: 'course-opened', document: { entry, text, revision, value } });
  }

  private async notSaved(token: string, answer: HostAnswer<unknown> & { ok: false }): Promise<void> {
    if (answer.failure === 'changed-on-disk') {
      this.kept.tell({ saving: false, onDisk: { revision: answer.revisionOnDisk ?? null } }, token);
      return;
    }
    if (answer.failure === 'not-claimed') {
      this.kept.tell({ saving: false }, token);
      await this.claim();
      if (mayEdit(this.kept.store.state())) this.restart();
      return;
    }
    if (answer.failure === 'not-found') {
      this.kept.tell({ saving: false, isGone: true }, token);
      this.restart(TRY_AGAIN_MS);
      return;
    }
    const kept = this.kept.words().courseFile.kept;
    this.kept.tell(
      { saving: false, trouble: this.kept.words().courseFile.notSaved({ message: answer.message, kept }) },
      token,
    );
    this.restart(TRY_AGAIN_MS);
  }

  async putBack(): Promise<void> {
    await this.saving;
    await putBack(this.kept);
    // Gone already when it was asked for, it could not be taken.
    if (!mayEdit(this.kept.store.state())) await this.claim();
  }

  async saveOver(): Promise<void> {
    const file = this.kept.file();
    if (file === null) return;
    let revision = file.onDisk?.revision ?? null;
    if (revision === null) {
      const answer = await this.kept.tools.host.open(file.entry.token);
      if (!answer.ok) {
        this.kept.tell({ trouble: answer.message });
        return;
      }
      ({ revision } = answer.value);
    }
    await this.saveNow(revision);
  }

  async readAgain(): Promise<void> {
    const file = this.kept.file();
    if (file === null) return;
    const answer = await this.kept.tools.host.open(file.entry.token);
    if (!answer.ok) {
      this.kept.tell({ trouble: answer.message });
      return;
    }
    const { sitting } = this.kept;
    await sitting.writing;
    const { entry, text, revision } = answer.value;
    const document = openDocumentText(text);
    const course = document.ok ? courseOf(document.value.document) : document;
    if (!course.ok) {
      const words = this.kept.words();
      const why = firstFault(course.error, words) ?? words.courseFile.unreadable;
      this.kept.tell({ trouble: words.courseFile.onDiskUnreadable({ why }) });
      return;
    }
    if (sitting.journal !== null) await this.kept.drop(entry.token, sitting.journal, sitting.lastNumber);
    this.kept.own.add(revision);
    this.kept.tools.store.dispatch({
      type: 'course-opened',
      document: { entry, text, revision, value: course.value },
    });
    await this.open({ entry, text, revision, value: course.value });
  }
}
