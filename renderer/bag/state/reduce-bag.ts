/** The room's next state after an action. Pure. */

import type { PlayerDocument } from '../../../core/player/format.ts';
import type { Fault } from '../../../core/result.ts';
import type { FileEntry } from '../../../electron/contract/host.ts';
import type { BagReport } from '../work/bag-report.ts';
import { redoStep, startHistory, takeStep, undoStep } from './bag-history.ts';
import type { Access, BagState, Found, Intake, OpenBag, Page, ShownClub } from './bag-state.ts';

export type BagAction =
  | {
      readonly type: 'opened';
      readonly entry: FileEntry;
      readonly revision: string;
      readonly document: PlayerDocument;
      readonly report: BagReport | null;
      readonly access: Access;
    }
  | { readonly type: 'closed' }
  | { readonly type: 'access-known'; readonly access: Access }
  | {
      readonly type: 'edited';
      readonly document: PlayerDocument;
      readonly label: string;
      readonly mark: string | null;
    }
  | { readonly type: 'undone' }
  | { readonly type: 'redone' }
  | { readonly type: 'estimate-begun' }
  | { readonly type: 'estimate-told'; readonly share: number }
  | { readonly type: 'estimate-stopped' }
  | { readonly type: 'estimate-done'; readonly of: PlayerDocument; readonly report: BagReport }
  | { readonly type: 'estimate-refused'; readonly of: PlayerDocument; readonly faults: readonly Fault[] }
  | { readonly type: 'save-begun' }
  | {
      readonly type: 'save-ended';
      readonly saved: { readonly document: PlayerDocument; readonly revision: string } | null;
    }
  | { readonly type: 'found'; readonly found: readonly Found[] }
  | { readonly type: 'found-answered'; readonly journal: string }
  | { readonly type: 'changed-on-disk'; readonly revision: string | null }
  | { readonly type: 'gone'; readonly isGone: boolean }
  | { readonly type: 'page-shown'; readonly page: Page }
  | { readonly type: 'club-shown'; readonly shown: ShownClub | null }
  | { readonly type: 'refused'; readonly message: string | null }
  | { readonly type: 'said'; readonly words: string | null }
  | { readonly type: 'intake'; readonly intake: Intake | null }
  | { readonly type: 'typed'; readonly rows: readonly (readonly string[])[] }
  | { readonly type: 'making'; readonly on: boolean };

export function reduceBag(state: BagState, action: BagAction): BagState {
  switch (action.type) {
    case 'opened':
      return opened(state, action);
    case 'closed':
      return { ...state, file: null, shown: null, intake: null };
    case 'page-shown':
      return { ...state, page: action.page, making: false };
    case 'club-shown':
      return { ...state, shown: action.shown };
    case 'refused':
      return { ...state, refusal: action.message };
    case 'said':
      return { ...state, said: action.words };
    case 'intake':
      return { ...state, intake: action.intake };
    case 'typed':
      return { ...state, typed: action.rows };
    case 'making':
      return { ...state, making: action.on, refusal: null };
    case 'edited':
      return { ...withFile(state, action), refusal: null };
    default:
      return withFile(state, action);
  }
}

function opened(state: BagState, action: Extract<BagAction, { type: 'opened' }>): BagState {
  const { entry, revision, document, report, access } = action;
  const isSame = state.file?.entry.token === entry.token;
  const names = new Set(document.bag.map(({ name }) => name));
  const kept = isSame && state.shown !== null && names.has(state.shown.club) ? state.shown : null;
  return {
    ...state,
    file: {
      entry,
      revision,
      saved: document,
      history: startHistory(document),
      access,
      estimate: { report, of: report === null ? null : document, work: 'none', share: 0, faults: [] },
      // A file read anew leaves open what is not answered yet.
      found: isSame ? state.file.found : [],
      changedOnDisk: null,
      isGone: false,
      saving: false,
    },
    shown: kept,
    intake: isSame ? state.intake : null,
    typed: isSame ? state.typed : [],
    refusal: null,
    // What was done to another player is not told on this one's page.
    said: isSame ? state.said : null,
    making: false,
  };
}

function withFile(state: BagState, action: BagAction): BagState {
  const { file } = state;
  if (file === null) return state;
  const next = fileAfter(file, action);
  if (next === file) return state;
  const { shown } = state;
  // A club that was renamed or taken out is no longer on show.
  const isThere = shown === null || next.history.present.bag.some(({ name }) => name === shown.club);
  return { ...state, file: next, shown: isThere ? shown : null };
}

function fileAfter(file: OpenBag, action: BagAction): OpenBag {
  const { history, estimate } = file;
  switch (action.type) {
    case 'access-known':
      return { ...file, access: action.access };
    case 'edited':
      return { ...file, history: takeStep(history, action.document, action.label, action.mark) };
    case 'undone':
      return { ...file, history: undoStep(history) };
    case 'redone':
      return { ...file, history: redoStep(history) };
    case 'estimate-begun':
      return { ...file, estimate: { ...estimate, work: 'busy', share: 0 } };
    case 'estimate-told':
      return { ...file, estimate: { ...estimate, share: action.share } };
    case 'estimate-stopped':
      return { ...file, estimate: { ...estimate, work: 'stopped' } };
    case 'estimate-done':
      return {
        ...file,
        estimate: { report: action.report, of: action.of, work: 'none', share: 0, faults: [] },
      };
    case 'estimate-refused':
      return {
        ...file,
        estimate: { report: null, of: action.of, work: 'none', share: 0, faults: action.faults },
      };
    case 'save-begun':
      return { ...file, saving: true };
    case 'save-ended':
      return action.saved === null
        ? { ...file, saving: false }
        : {
            ...file,
            saving: false,
            saved: action.saved.document,
            revision: action.saved.revision,
            changedOnDisk: null,
            isGone: false,
          };
    case 'found':
      return { ...file, found: action.found };
    case 'found-answered':
      return { ...file, found: file.found.filter(({ journal }) => journal !== action.journal) };
    case 'changed-on-disk':
      return { ...file, changedOnDisk: action.revision };
    case 'gone':
      return { ...file, isGone: action.isGone };
    default:
      return file;
  }
}

export function isUnsaved(file: OpenBag): boolean {
  return file.history.present !== file.saved;
}

/** Whether the report on show is of what is in the room now. */
export function isFresh(file: OpenBag): boolean {
  return file.estimate.of === file.history.present;
}
