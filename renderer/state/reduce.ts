/** The next state after an action. Pure; one small function per subject. */

import type { FileEntry } from '../../electron/contract/host.ts';
import type { Action, AnswerAction, FileAction, SituationAction, ViewAction, WorkAction } from './actions.ts';
import type { AppState, HoleWork, Notice, View } from './app-state.ts';
import {
  changedHole,
  dropPreview,
  emptyHistory,
  type History,
  preview,
  redo,
  take,
  undo,
} from './history.ts';
import { NO_ANSWERS } from './initial.ts';
import { dayFor, keepingDay } from './kept-days.ts';
import { unitsOfRegion } from '../../core/words/language.ts';
import { currentHole, fileNotes, settledWorkKey, workKey } from './selectors.ts';
import { roomOfStep } from '../tour/steps.ts';

export function reduce(state: AppState, action: Action): AppState {
  switch (action.type) {
    case 'host-connected':
    case 'settings-read':
    case 'files-listed':
    case 'course-opened':
    case 'player-opened':
    case 'file-refused':
    case 'course-checked':
    case 'notes-shown':
    case 'trouble-met':
    case 'file-changed-on-disk':
    case 'file-gone':
    case 'left-behind-found':
    case 'notice-dismissed':
      return reduceFiles(state, action);
    case 'room-shown':
    case 'hole-shown':
    case 'units-set':
    case 'theme-set':
    case 'language-set':
    case 'layer-set':
    case 'hole-up-set':
    case 'help-shown':
    case 'tour-shown':
    case 'tour-left':
    case 'shot-chosen':
    case 'compare-set':
      return reduceView(state, action);
    case 'situation-previewed':
    case 'preview-dropped':
    case 'situation-taken':
    case 'undone':
    case 'redone':
      return reduceSituation(state, action);
    case 'work-started':
    case 'work-progressed':
    case 'work-finished':
    case 'work-failed':
    case 'work-lost':
    case 'work-stopped':
    case 'work-resumed':
    case 'seed-set':
      return reduceWork(state, action);
    case 'rough-arrived':
    case 'kept-arrived':
    case 'plan-arrived':
    case 'own-arrived':
    case 'comparison-arrived':
    case 'paint-arrived':
    case 'surface-arrived':
    case 'ways-out-arrived':
    case 'tree-passage-arrived':
      return reduceAnswers(state, action);
  }
}

function reduceFiles(state: AppState, action: FileAction): AppState {
  switch (action.type) {
    case 'host-connected':
      return { ...state, host: action.info };
    case 'settings-read':
      return { ...state, settings: begunWith(state, action.settings) };
    case 'files-listed':
      return { ...state, files: action.files, notices: withoutGone(state.notices, action.files) };
    case 'course-opened': {
      const { document } = action;
      const sameFile = state.course?.entry.token === document.entry.token;
      const hole =
        sameFile && document.value.holes.some((known) => known.number === state.view.hole)
          ? state.view.hole
          : null;
      const next: AppState = {
        ...state,
        course: document,
        courseNotes: [],
        // A reload after a change on disk keeps the person's place; another course starts afresh.
        history: sameFile
          ? dropPreview(state.history)
          : emptyHistory(dayFor(document.entry.token, state.settings.days ?? [])),
        view: { ...forgetShots(state.view), hole: hole ?? document.value.holes[0]?.number ?? null },
        work: {},
        working: true,
        answers: NO_ANSWERS,
        notices: withoutNoticesOf(state.notices, document.entry),
        settings: { ...state.settings, lastCourse: document.entry.token },
      };
      return sameFile ? keepingWhatHolds(state, next) : next;
    }
    case 'player-opened': {
      const { document } = action;
      return {
        ...state,
        player: document,
        view: forgetShots(state.view),
        work: {},
        working: true,
        answers: NO_ANSWERS,
        notices: withoutNoticesOf(state.notices, document.entry),
        settings: { ...state.settings, lastPlayer: document.entry.token },
      };
    }
    case 'file-refused': {
      const open =
        action.fileKind === 'course' ? state.course : action.fileKind === 'player' ? state.player : null;
      const { fileKind, fileName, faults } = action;
      return withNotice(state, (id) => ({
        id,
        kind: 'broken-file',
        fileKind,
        fileName,
        faults,
        stillOpen: open?.value.name ?? null,
      }));
    }
    case 'course-checked':
      return action.revision === state.course?.revision ? { ...state, courseNotes: action.notes } : state;
    case 'notes-shown':
      return withNotes(state, action.fileKind);
    case 'trouble-met':
      return withNotice(state, (id) => ({
        id,
        kind: 'trouble',
        title: action.title,
        message: action.message,
      }));
    case 'file-changed-on-disk':
      return withNotice({ ...state, notices: withoutNoticesOf(state.notices, action.entry) }, (id) => ({
        id,
        kind: 'changed-on-disk',
        entry: action.entry,
      }));
    case 'file-gone':
      return withNotice({ ...state, notices: withoutGone(state.notices, [action.entry]) }, (id) => ({
        id,
        kind: 'gone',
        entry: action.entry,
      }));
    case 'left-behind-found':
      return withNotice(state, (id) => ({ id, kind: 'left-behind', ...action.found }));
    case 'notice-dismissed':
      return { ...state, notices: state.notices.filter((notice) => notice.id !== action.id) };
  }
}

/** Holes that a new version of the course leaves as they were keep their plans; so does the one on screen its answers. */
function keepingWhatHolds(before: AppState, next: AppState): AppState {
  const work: Record<number, HoleWork> = {};
  for (const hole of next.course?.value.holes ?? []) {
    const known = before.work[hole.number];
    // what was under way is stopped by the workers and begins anew
    const isDone = known?.status === 'ready' || known?.status === 'failed';
    if (known !== undefined && isDone && known.key === settledWorkKey(next, hole)) work[hole.number] = known;
  }
  const shownBefore = currentHole(before);
  const shownNow = currentHole(next);
  const isSame =
    shownBefore !== null && shownNow !== null && workKey(before, shownBefore) === workKey(next, shownNow);
  return isSame
    ? { ...next, work, answers: before.answers, view: { ...before.view, hole: next.view.hole } }
    : { ...next, work };
}

function withNotice(state: AppState, make: (id: number) => Notice): AppState {
  const id = 1 + state.notices.reduce((largest, notice) => Math.max(largest, notice.id), 0);
  return { ...state, notices: [...state.notices, make(id)] };
}

/** Shows a file's notes, once. */
function withNotes(state: AppState, fileKind: 'course' | 'player'): AppState {
  const name = state[fileKind]?.entry.name;
  const faults = fileNotes(state, fileKind);
  const others = state.notices.filter((notice) => !(notice.kind === 'notes' && notice.fileKind === fileKind));
  if (name === undefined || faults.length === 0) return { ...state, notices: others };
  return withNotice({ ...state, notices: others }, (id) => ({
    id,
    kind: 'notes',
    fileKind,
    fileName: name,
    faults,
  }));
}

/** A document that opens well answers what was said about it before, and any broken file or gone one of the moment is past. */
function withoutNoticesOf(notices: readonly Notice[], { token, kind }: FileEntry): readonly Notice[] {
  return notices.filter(
    (notice) =>
      notice.kind !== 'broken-file' &&
      notice.kind !== 'notes' &&
      !(notice.kind === 'changed-on-disk' && notice.entry.token === token) &&
      !(notice.kind === 'gone' && notice.entry.kind === kind),
  );
}

/** What is in the folder again is no longer said to be gone. */
function withoutGone(notices: readonly Notice[], files: readonly FileEntry[]): readonly Notice[] {
  const there = new Set(files.map(({ token }) => token));
  const left = notices.filter((notice) => notice.kind !== 'gone' || !there.has(notice.entry.token));
  return left.length === notices.length ? notices : left;
}

function forgetShots(view: View): View {
  return { ...view, chosen: null, compareA: null, compareB: null };
}

/** A new user's units are those of the region. */
function begunWith(state: AppState, { isNew, ...settings }: AppState['settings']): AppState['settings'] {
  return isNew === true ? { ...settings, units: unitsOfRegion(state.wishedLanguages[0] ?? '') } : settings;
}

function reduceView(state: AppState, action: ViewAction): AppState {
  const { view } = state;
  switch (action.type) {
    case 'room-shown':
      return { ...state, history: dropPreview(state.history), view: { ...view, room: action.room } };
    case 'hole-shown':
      if (view.hole === action.hole) return state;
      return {
        ...state,
        history: dropPreview(state.history),
        view: { ...forgetShots(view), hole: action.hole },
        answers: NO_ANSWERS,
      };
    case 'units-set':
      return { ...state, settings: { ...state.settings, units: action.units } };
    case 'theme-set':
      return { ...state, settings: { ...state.settings, theme: action.theme } };
    case 'language-set':
      return { ...state, settings: { ...state.settings, language: action.language } };
    case 'layer-set':
      return { ...state, view: { ...view, [action.layer]: action.on } };
    case 'hole-up-set':
      return { ...state, view: { ...view, holeUp: action.on } };
    case 'help-shown':
      return { ...state, view: { ...view, help: action.page } };
    case 'tour-shown':
      return {
        ...state,
        history: dropPreview(state.history),
        view: { ...view, help: null, tour: action.step, room: roomOfStep(action.step) },
      };
    case 'tour-left':
      return { ...state, view: { ...view, tour: null }, settings: { ...state.settings, tourSeen: true } };
    case 'shot-chosen':
      return { ...state, view: { ...view, chosen: action.shot } };
    case 'compare-set':
      return { ...state, view: withCompared(view, action.side, action.shot) };
  }
}

/** Puts a shot on one side; the same shot leaves the other side, since nothing is compared with itself. */
function withCompared(view: View, side: 'A' | 'B', shot: string | null): View {
  const other = side === 'A' ? view.compareB : view.compareA;
  const kept = other === shot ? null : other;
  return side === 'A'
    ? { ...view, compareA: shot, compareB: kept }
    : { ...view, compareA: kept, compareB: shot };
}

function reduceSituation(state: AppState, action: SituationAction): AppState {
  const { history } = state;
  switch (action.type) {
    case 'situation-previewed':
      return { ...state, history: preview(history, action.situation) };
    case 'preview-dropped':
      return { ...state, history: dropPreview(history) };
    case 'situation-taken':
      return withDayKept(state, take(history, action.situation, action.label, action.mark ?? null));
    case 'undone':
      return showingWhatChanged(state, undo(history));
    case 'redone':
      return showingWhatChanged(state, redo(history));
  }
}

/** The day is kept with the course as it changes, so that it is there again when the course is opened next time. */
function withDayKept(state: AppState, history: History): AppState {
  const { conditions } = history.present;
  if (conditions === state.history.present.conditions || state.course === null) return { ...state, history };
  const days = keepingDay(state.course.entry.token, conditions, state.settings.days ?? []);
  return { ...state, history, settings: { ...state.settings, days } };
}

/** Undoing what was done on another hole shows that hole, so that nothing changes out of sight. */
function showingWhatChanged(state: AppState, history: History): AppState {
  const changed = changedHole(state.history.present, history.present);
  const next = withDayKept(state, history);
  if (changed === null || changed === state.view.hole) return next;
  return reduceView(next, { type: 'hole-shown', hole: changed });
}

const NEW_WORK: Omit<HoleWork, 'key'> = { status: 'waiting', progress: null, fault: null, result: null };

function reduceWork(state: AppState, action: WorkAction): AppState {
  switch (action.type) {
    case 'work-started': {
      const before = state.work[action.hole];
      return withWork(state, action.hole, {
        ...NEW_WORK,
        key: action.key,
        result: before?.result ?? null,
      });
    }
    case 'work-progressed': {
      const before = state.work[action.hole];
      if (before?.key !== action.key || before.status === 'stopped') return state;
      return withWork(state, action.hole, { ...before, status: 'working', progress: action.progress });
    }
    case 'work-finished': {
      const { result } = action;
      if (state.work[result.hole]?.key !== result.key) return state;
      return withWork(state, result.hole, { ...NEW_WORK, key: result.key, status: 'ready', result });
    }
    case 'work-failed': {
      const before = state.work[action.hole];
      if (before?.key !== action.key) return state;
      return withWork(state, action.hole, {
        ...before,
        status: 'failed',
        progress: null,
        fault: action.fault,
      });
    }
    case 'work-lost': {
      const kept = Object.entries(state.work).filter(
        ([hole]) => Number(hole) % action.workers !== action.worker,
      );
      return { ...state, work: Object.fromEntries(kept) };
    }
    case 'work-stopped': {
      const work: Record<number, HoleWork> = {};
      for (const [hole, known] of Object.entries(state.work)) {
        const unfinished = known.status === 'waiting' || known.status === 'working';
        work[Number(hole)] = unfinished ? { ...known, status: 'stopped' } : known;
      }
      return { ...state, working: false, work };
    }
    case 'work-resumed':
      return { ...state, working: true };
    case 'seed-set':
      return action.seed === state.seed ? state : { ...state, seed: action.seed, working: true };
  }
}

function withWork(state: AppState, hole: number, work: HoleWork): AppState {
  return { ...state, work: { ...state.work, [hole]: work } };
}

/** Answers about a hole that is no longer on screen are dropped. */
function reduceAnswers(state: AppState, action: AnswerAction): AppState {
  const { answers } = state;
  const onScreen = state.view.hole;
  switch (action.type) {
    case 'rough-arrived':
      return action.result.hole === onScreen
        ? { ...state, answers: { ...answers, rough: action.result } }
        : state;
    case 'kept-arrived': {
      const hole = currentHole(state);
      const isAsked = hole !== null && action.result.key === settledWorkKey(state, hole);
      return isAsked ? { ...state, answers: { ...answers, kept: action.result } } : state;
    }
    case 'plan-arrived':
      return action.answer.hole === onScreen
        ? { ...state, answers: { ...answers, plan: action.answer } }
        : state;
    case 'own-arrived':
      if (action.answer !== null && action.answer.hole !== onScreen) return state;
      return { ...state, answers: { ...answers, own: action.answer } };
    case 'comparison-arrived':
      if (action.answer !== null && action.answer.hole !== onScreen) return state;
      return { ...state, answers: { ...answers, comparison: action.answer } };
    case 'paint-arrived':
      if (Object.values(action.paint).some((shot) => shot.hole !== onScreen)) return state;
      return { ...state, answers: { ...answers, paint: action.paint } };
    case 'surface-arrived':
      if (action.answer !== null && action.answer.hole !== onScreen) return state;
      return { ...state, answers: { ...answers, surface: action.answer } };
    case 'ways-out-arrived':
      if (action.answer !== null && action.answer.hole !== onScreen) return state;
      return { ...state, answers: { ...answers, waysOut: action.answer } };
    case 'tree-passage-arrived':
      if (action.answer !== null && action.answer.hole !== onScreen) return state;
      return { ...state, answers: { ...answers, treePassage: action.answer } };
  }
}
