/** The next state of the course room after an action. Pure. */

import { english } from '../../core/words/english/english.ts';
import { featureById } from '../../core/course/document.ts';
import { holeNumbers } from '../../core/course/edits/renumber-holes.ts';
import {
  abandonDrag,
  beginDrag,
  commitDrag,
  continueDrag,
  type History,
  record,
  redo,
  startHistory,
  undo,
} from '../../core/course/history.ts';
import type { DrawingAction, EditAction, FileAction, LookAction } from './actions.ts';
import { CHOOSING, type DrawingState, emptyDrawing } from './drawing-state.ts';
import { frameFor } from './frame.ts';

/** Where a course has no hole yet, this is the one that is drawn. */
const FIRST_HOLE = 1;

export function reduceDrawing(state: DrawingState, action: DrawingAction): DrawingState {
  switch (action.type) {
    case 'course-loaded':
    case 'course-closed':
    case 'file-told':
    case 'report-arrived':
      return reduceFile(state, action);
    case 'edited':
    case 'drag-begun':
    case 'dragged':
    case 'drag-ended':
    case 'drag-dropped':
    case 'undone':
    case 'redone':
    case 'mode-set':
    case 'place-added':
    case 'place-taken-back':
    case 'sketch-dropped':
      return reduceEdits(state, action);
    case 'cursor-moved':
    case 'selected':
    case 'corner-chosen':
    case 'hole-chosen':
    case 'kind-shown':
    case 'feature-shown':
    case 'frame-moved':
    case 'grid-set':
    case 'catching-set':
    case 'panel-shown':
    case 'said':
      return reduceLook(state, action);
  }
}

function reduceFile(state: DrawingState, action: FileAction): DrawingState {
  switch (action.type) {
    case 'course-loaded': {
      const { file, document } = action;
      const sameFile = state.file?.entry.token === file.entry.token;
      const numbers = holeNumbers(document);
      const kept = sameFile && state.hole !== null && numbers.includes(state.hole) ? state.hole : null;
      return {
        ...emptyDrawing(),
        file,
        history: startHistory(document),
        frame: sameFile ? state.frame : frameFor(document),
        catching: state.catching,
        gridM: state.gridM,
        panel: document.features.length === 0 ? 'course' : state.panel,
        hole: kept ?? numbers[0] ?? FIRST_HOLE,
        hiddenKinds: sameFile ? state.hiddenKinds : new Set(),
      };
    }
    case 'course-closed':
      return emptyDrawing();
    case 'file-told':
      if (state.file?.entry.token !== action.token) return state;
      return { ...state, file: { ...state.file, ...action.change } };
    case 'report-arrived':
      return { ...state, report: action.report };
  }
}

function reduceEdits(state: DrawingState, action: EditAction): DrawingState {
  const { history } = state;
  switch (action.type) {
    case 'edited': {
      const next = withHistory(state, record(history, action.edit));
      if (action.select !== true) return next;
      return { ...next, selection: action.edit.touched, corner: null };
    }
    case 'drag-begun':
      return { ...state, history: beginDrag(history) };
    case 'dragged': {
      const next = { ...state, history: continueDrag(history, action.edit), said: null };
      return action.corner === undefined ? next : { ...next, corner: action.corner };
    }
    case 'drag-ended':
      return withHistory(state, commitDrag(history));
    case 'drag-dropped':
      return withHistory(state, abandonDrag(history));
    case 'undone':
      return stepped(
        state,
        undo(history),
        action.said ?? `${english.drawing.undone}: ${history.past.at(-1)?.name}.`,
      );
    case 'redone':
      return stepped(
        state,
        redo(history),
        action.said ?? `${english.drawing.redone}: ${history.future[0]?.name}.`,
      );
    case 'mode-set':
      return {
        ...state,
        history: commitDrag(history),
        mode: action.mode,
        sketch: [],
        said: null,
        cursor: action.mode.do === state.mode.do ? state.cursor : null,
        ...(action.mode.do === 'draw' ? { selection: [], corner: null } : {}),
      };
    case 'place-added':
      return { ...state, sketch: [...state.sketch, action.at], said: null };
    case 'place-taken-back':
      return { ...state, sketch: state.sketch.slice(0, -1) };
    case 'sketch-dropped':
      return { ...state, sketch: [], said: null };
  }
}

/** Undo takes back a place of what is being drawn before it takes back what was drawn earlier. */
function stepped(state: DrawingState, history: History, words: string): DrawingState {
  if (history === state.history) return state;
  return { ...withHistory({ ...state, sketch: [] }, history), said: { tone: 'news', words } };
}

/** What is chosen and is no longer there is let go of. */
function withHistory(state: DrawingState, history: History): DrawingState {
  const { document } = history;
  const selection = state.selection.filter((id) => featureById(document, id) !== undefined);
  const same = selection.length === state.selection.length;
  const numbers = holeNumbers(document);
  return {
    ...state,
    history,
    selection: same ? state.selection : selection,
    corner: same ? state.corner : null,
    hole: state.hole ?? numbers[0] ?? null,
    mode: modeThatStands(state, history),
    said: null,
  };
}

function modeThatStands({ mode }: DrawingState, { document }: History): DrawingState['mode'] {
  const gone = 'feature' in mode && featureById(document, mode.feature) === undefined;
  return gone ? CHOOSING : mode;
}

function reduceLook(state: DrawingState, action: LookAction): DrawingState {
  switch (action.type) {
    case 'cursor-moved':
      return { ...state, cursor: action.cursor };
    case 'selected':
      return {
        ...state,
        history: commitDrag(state.history),
        selection: action.ids,
        corner: null,
        panel: action.show ?? state.panel,
        said: null,
      };
    case 'corner-chosen':
      return { ...state, history: commitDrag(state.history), corner: action.corner };
    case 'hole-chosen':
      return { ...state, hole: action.hole };
    case 'kind-shown':
      return { ...state, hiddenKinds: toggled(state.hiddenKinds, action.kind, !action.on) };
    case 'feature-shown':
      return { ...state, hiddenFeatures: toggled(state.hiddenFeatures, action.id, !action.on) };
    case 'grid-set':
      return { ...state, gridM: action.gridM };
    case 'frame-moved':
      return { ...state, frame: action.frame };
    case 'catching-set':
      return { ...state, catching: action.on };
    case 'panel-shown':
      return { ...state, panel: action.panel };
    case 'said':
      return { ...state, said: action.said };
  }
}

function toggled<T>(set: ReadonlySet<T>, item: T, on: boolean): ReadonlySet<T> {
  const next = new Set(set);
  if (on) next.add(item);
  else next.delete(item);
  return next;
}
