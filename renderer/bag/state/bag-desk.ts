/**
 * What the room does with the world outside its state: reads the open player, claims the file, writes unsaved work
 * into the journal, saves, makes new files, keeps the estimates in step. One desk serves a window for its whole life,
 * so that leaving the room loses nothing.
 */

import { faultsText, tell, type Told } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
import { wordsOf } from '../../state/use-words.ts';
import { type PlayerDocument, playerText } from '../../../core/player/format.ts';
import type { Result } from '../../../core/result.ts';
import type { HostAnswer, OpenedFile } from '../../../electron/contract/host.ts';
import { afterChanges } from '../../state/effects/follow.ts';
import { makeStore, type StoreOf } from '../../state/store.ts';
import type { AppTools } from '../../state/use-app.ts';
import type { UndoSource } from '../../state/undo-desk.ts';
import { type BagReport, modelOf } from '../work/bag-report.ts';
import { type BagOffice, openOffice } from '../work/bag-office.ts';
import { type BagState, EMPTY_BAG, type Found, type OpenBag } from './bag-state.ts';
import { dropFound, type Finding, findUnsaved, takeFound } from './found-work.ts';
import { type JournalKeeper, keepJournal } from './journal-keeper.ts';
import { type BagAction, isUnsaved, reduceBag } from './reduce-bag.ts';

export type BagStore = StoreOf<BagState, BagAction>;

export interface BagDesk {
  readonly store: BagStore;
  readonly office: BagOffice;
  /** Takes a change as one step of undo; a refusal is shown. Equal marks in a row make one step. */
  readonly edit: (
    label: string,
    change: (document: PlayerDocument) => Result<PlayerDocument, Told>,
    mark?: string,
  ) => boolean;
  readonly save: () => Promise<void>;
  /** Saves over what somebody else has saved meanwhile. */
  readonly saveOver: () => Promise<void>;
  /** A copy in the workspace under a name of its own, opened at once. */
  readonly saveCopy: () => Promise<void>;
  /** Where the file is gone from its folder: writes it anew, with what is in the room. */
  readonly putBack: () => Promise<void>;
  readonly create: (document: PlayerDocument) => Promise<boolean>;
  readonly takeFound: (found: Found) => Promise<void>;
  readonly dropFound: (found: Found) => Promise<void>;
  /** The file as it is on disk, unsaved changes given up. */
  readonly readAgain: () => Promise<void>;
  readonly stopEstimate: () => void;
  readonly resumeEstimate: () => void;
  readonly undoSource: UndoSource;
}

const desks = new WeakMap<AppTools['store'], BagDesk>();

export function bagDeskOf(tools: AppTools): BagDesk {
  const known = desks.get(tools.store);
  if (known !== undefined) return known;
  const desk = openDesk(tools);
  desks.set(tools.store, desk);
  return desk;
}

function openDesk(tools: AppTools): BagDesk {
  const { host, store: app } = tools;
  const store = makeStore(EMPTY_BAG, reduceBag);
  const office = openOffice();
  const journal = keepJournal(store, host, () => wordsOf(app.state()));
  const tellApp = (opened: OpenedFile, document: PlayerDocument, report: BagReport): void => {
    if (!report.model.ok) return;
    app.dispatch({
      type: 'player-opened',
      document: { ...opened, value: modelOf(report.model.value, document) },
    });
  };
  followOpenPlayer(tools, store, office, journal);
  keepEstimates(store, office);

  const trouble = (message: string): void => store.dispatch({ type: 'refused', message });
  const finding: Finding = { store, host, journal, words: () => wordsOf(app.state()) };
  const saveOn = async (baseRevision: string): Promise<void> => {
    const { file } = store.state();
    if (file === null || file.access.may !== 'write' || file.saving) return;
    store.dispatch({ type: 'save-begun' });
    const document = file.history.present;
    const ended = await saveDocument(tools, file, document, baseRevision, office, journal);
    if (store.state().file?.entry.token !== file.entry.token) return;
    if (ended.ok) {
      store.dispatch({ type: 'save-ended', saved: { document, revision: ended.revision } });
      store.dispatch({ type: 'refused', message: null });
      store.dispatch({
        type: 'said',
        words: wordsOf(app.state()).player.file.isSaved({ name: file.entry.name }),
      });
      tellApp(
        { entry: { ...file.entry, modifiedAt: Date.now() }, text: ended.text, revision: ended.revision },
        document,
        ended.report,
      );
      journal.settle();
      return;
    }
    store.dispatch({ type: 'save-ended', saved: null });
    if (ended.isGone) store.dispatch({ type: 'gone', isGone: true });
    else if (ended.revisionOnDisk === null) trouble(ended.message);
    else store.dispatch({ type: 'changed-on-disk', revision: ended.revisionOnDisk });
  };

  host.watch(({ token, change }) => {
    if (token === store.state().file?.entry.token)
      store.dispatch({ type: 'gone', isGone: change === 'removed' });
  });

  const create = async (document: PlayerDocument): Promise<boolean> => {
    const made = await write(document, fileNameFor(document.name));
    if (made !== null) tellApp(made.opened, document, made.report);
    return made !== null;
  };

  /** A new file near this name, for what can be planned with; else why not is told. */
  const write = async (
    document: PlayerDocument,
    name: string,
  ): Promise<{ readonly opened: OpenedFile; readonly report: BagReport } | null> => {
    const report = await office.report(document);
    if (!report.ok || !report.value.model.ok) {
      const faults = report.ok ? (report.value.model.ok ? [] : report.value.model.error) : report.error;
      trouble(faultsText(faults, wordsOf(app.state())));
      return null;
    }
    const made = await host.create('player', name, playerText(document));
    if (!made.ok) {
      trouble(made.message);
      return null;
    }
    const files = await host.list();
    if (files.ok) app.dispatch({ type: 'files-listed', files: files.value });
    return { opened: made.value, report: report.value };
  };

  return {
    store,
    office,
    edit: (label, change, mark) => {
      const { file } = store.state();
      if (file === null || file.access.may !== 'write') return false;
      const changed = change(file.history.present);
      if (!changed.ok) {
        trouble(tell(changed.error, wordsOf(app.state())));
        return false;
      }
      store.dispatch({ type: 'edited', document: changed.value, label, mark: mark ?? null });
      return true;
    },
    save: () => saveOn(store.state().file?.revision ?? ''),
    saveOver: () => saveOn(store.state().file?.changedOnDisk ?? store.state().file?.revision ?? ''),
    saveCopy: async () => {
      const document = store.state().file?.history.present;
      if (document !== undefined)
        await create({ ...document, name: copyName(document.name, wordsOf(app.state())) });
    },
    putBack: async () => {
      const { file } = store.state();
      if (file === null || !file.isGone || file.saving) return;
      store.dispatch({ type: 'save-begun' });
      const document = file.history.present;
      await journal.flush();
      const made = await write(document, file.entry.name);
      const isStillOpen = store.state().file?.entry.token === file.entry.token;
      const saved = made === null ? null : { document, revision: made.opened.revision };
      if (isStillOpen) store.dispatch({ type: 'save-ended', saved });
      if (made === null || !isStillOpen) return;
      await journal.clearOwn();
      journal.settle();
      const said = wordsOf(app.state()).player.file.isSaved({ name: made.opened.entry.name });
      store.dispatch({ type: 'said', words: said });
      tellApp(made.opened, document, made.report);
      // Gone already when it was asked for, it could not be taken.
      const { entry, revision } = made.opened;
      if (file.access.may !== 'write' && entry.token === file.entry.token)
        await claimFile(host, store, entry, revision);
    },
    create,
    takeFound: (found) => takeFound(finding, found),
    dropFound: (found) => dropFound(finding, found),
    readAgain: async () => {
      const { file } = store.state();
      if (file === null) return;
      const answer = await host.open(file.entry.token);
      if (!answer.ok) {
        trouble(answer.message);
        return;
      }
      const read = await office.readPlayer(answer.value.text);
      if (!read.ok) {
        trouble(faultsText(read.error, wordsOf(app.state())));
        return;
      }
      const { document, report } = read.value;
      const { entry, revision } = answer.value;
      store.dispatch({ type: 'opened', entry, revision, document, report, access: file.access });
      journal.settle();
      tellApp(answer.value, document, report);
    },
    stopEstimate: () => {
      void office.cancelEstimate();
      store.dispatch({ type: 'estimate-stopped' });
    },
    resumeEstimate: () => store.dispatch({ type: 'estimate-begun' }),
    undoSource: {
      undoLabel: () => store.state().file?.history.past.at(-1)?.label ?? null,
      redoLabel: () => store.state().file?.history.future[0]?.label ?? null,
      undo: () => store.dispatch({ type: 'undone' }),
      redo: () => store.dispatch({ type: 'redone' }),
      subscribe: store.subscribe,
    },
  };
}

/** Follows the player that the window has open: reads it, claims it, looks for unsaved work. */
function followOpenPlayer(
  { store: app, host }: AppTools,
  store: BagStore,
  office: BagOffice,
  journal: JournalKeeper,
): void {
  let under: string | null = null;
  const look = async (): Promise<void> => {
    const { player } = app.state();
    const { file } = store.state();
    if (player === null) return;
    const { entry, revision, text } = player;
    const isSame = file?.entry.token === entry.token;
    if (isSame && file.revision === revision) return;
    const key = `${entry.token}/${revision}`;
    if (under === key) return;
    under = key;
    if (isSame && isUnsaved(file)) {
      store.dispatch({ type: 'changed-on-disk', revision });
      return;
    }
    const read = await office.readDocument(text);
    if (under !== key || !read.ok) return;
    if (file !== null && !isSame) {
      await journal.flush();
      if (file.access.may === 'write') void host.release(file.entry.token);
    }
    const access = isSame ? file.access : ({ may: 'wait' } as const);
    // The estimates follow, and tell how far they are.
    store.dispatch({ type: 'opened', entry, revision, document: read.value, report: null, access });
    journal.settle();
    if (file !== null && !isSame && isUnsaved(file))
      store.dispatch({
        type: 'refused',
        message: wordsOf(app.state()).player.file.hadUnsaved({ name: file.entry.name }),
      });
    if (isSame && access.may === 'write') return;
    await claimFile(host, store, entry, revision);
  };
  afterChanges(app, () => void look());
}

async function claimFile(
  host: AppTools['host'],
  store: BagStore,
  entry: OpenBag['entry'],
  revision: string,
): Promise<void> {
  const still = (): boolean => store.state().file?.entry.token === entry.token;
  if (entry.readOnly) {
    store.dispatch({ type: 'access-known', access: { may: 'read', why: 'demo' } });
    return;
  }
  const claim = await host.claim(entry.token);
  if (!still()) {
    if (claim.ok && claim.value.isHeld) void host.release(entry.token);
    return;
  }
  if (!claim.ok) {
    if (claim.failure === 'not-found') store.dispatch({ type: 'gone', isGone: true });
    store.dispatch({ type: 'access-known', access: { may: 'read', why: 'refused', message: claim.message } });
    return;
  }
  if (!claim.value.isHeld) {
    const { holder } = claim.value;
    store.dispatch({ type: 'access-known', access: { may: 'read', why: 'held', holder } });
    return;
  }
  store.dispatch({ type: 'access-known', access: { may: 'write' } });
  const found = await findUnsaved(host, entry.token, revision);
  if (!still()) return;
  if (found.ok) store.dispatch({ type: 'found', found: found.value });
  else store.dispatch({ type: 'refused', message: found.message });
}

/** Works out the present content's report whenever there is none; only the latest content counts. */
function keepEstimates(store: BagStore, office: BagOffice): void {
  let under: PlayerDocument | null = null;
  const look = (): void => {
    const { file } = store.state();
    if (file === null) return;
    const { present } = file.history;
    const { estimate } = file;
    if (estimate.work === 'stopped') {
      under = null;
      return;
    }
    // What is under way for an earlier content is ended by asking for this one.
    if (estimate.of === present || under === present) return;
    under = present;
    store.dispatch({ type: 'estimate-begun' });
    const tell = (share: number): void => {
      if (under === present) store.dispatch({ type: 'estimate-told', share });
    };
    void office.estimate(present, tell).then((report) => {
      if (under !== present) return;
      under = null;
      const isCurrent = store.state().file?.history.present === present;
      if (report.ok) {
        if (isCurrent) store.dispatch({ type: 'estimate-done', of: present, report: report.value });
      } else if (report.error === 'cancelled') return;
      else if (isCurrent) store.dispatch({ type: 'estimate-refused', of: present, faults: report.error });
      if (!isCurrent) queueMicrotask(look);
    });
  };
  store.subscribe(() => queueMicrotask(look));
}

type Saved =
  | { readonly ok: true; readonly revision: string; readonly text: string; readonly report: BagReport }
  | {
      readonly ok: false;
      readonly message: string;
      readonly revisionOnDisk: string | null;
      readonly isGone: boolean;
    };

async function saveDocument(
  { host, store: app }: AppTools,
  { entry }: OpenBag,
  document: PlayerDocument,
  baseRevision: string,
  office: BagOffice,
  journal: JournalKeeper,
): Promise<Saved> {
  const report = await office.report(document);
  const faults = report.ok ? (report.value.model.ok ? null : report.value.model.error) : report.error;
  if (faults !== null || !report.ok)
    return {
      ok: false,
      revisionOnDisk: null,
      isGone: false,
      message: wordsOf(app.state()).player.file.nothingSaved({
        faults: faultsText(faults ?? [], wordsOf(app.state())),
      }),
    };
  const text = playerText(document);
  const upTo = await journal.flush();
  const answer: HostAnswer<{ readonly revision: string }> = await host.save({
    token: entry.token,
    text,
    baseRevision,
    ...(upTo === null ? {} : { journalUpTo: upTo }),
  });
  if (answer.ok) return { ok: true, revision: answer.value.revision, text, report: report.value };
  return {
    ok: false,
    message: answer.message,
    revisionOnDisk: answer.revisionOnDisk ?? null,
    isGone: answer.failure === 'not-found',
  };
}

/** A name for the file, free of what file systems do not like. */
function fileNameFor(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/gu, '')
    .toLowerCase()
    .slice(0, 60);
  return plain === '' ? 'player' : plain;
}

function copyName(name: string, { player }: Words): string {
  return player.file.copyName({ name: name.slice(0, 110) });
}
