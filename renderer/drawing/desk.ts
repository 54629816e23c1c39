/** The course room's own store and what it can do; one for each window, kept while other rooms are shown. */

import { lookingWords } from './files/sitting.ts';
import type { HistoryEntry } from '../../core/course/history.ts';
import { nameIn, tell } from '../../core/words/told.ts';
import { wordsOf } from '../state/use-words.ts';
import type { Words } from '../../core/words/words.ts';
import type { EditableDocument } from '../../core/course/document.ts';
import type { EditResult } from '../../core/course/edits/edit.ts';
import { makeStore, type StoreOf } from '../state/store.ts';
import type { UndoSource } from '../state/undo-desk.ts';
import type { AppTools } from '../state/use-app.ts';
import type { DrawingAction } from './actions.ts';
import { followReport } from './checks/follow-report.ts';
import { type DrawingState, emptyDrawing, mayEdit, type Said } from './drawing-state.ts';
import { type FileKeeper, keepFile } from './files/file-keeper.ts';
import type { DrawingStage } from './map/drawing-stage.ts';
import { reduceDrawing } from './reduce-drawing.ts';

export type DrawingStore = StoreOf<DrawingState, DrawingAction>;

export interface DrawingDesk {
  readonly store: DrawingStore;
  readonly files: FileKeeper;
  /** The map while it is on screen. */
  readonly stage: { current: DrawingStage | null };
  /** Makes an edit of the document as it is now and takes it in, or says why not. True where it was taken in. */
  readonly attempt: (make: (document: EditableDocument) => EditResult, select?: 'touched') => boolean;
  readonly say: (phrase: string, tone?: Said['tone']) => void;
  /** Of the window's language, as it is now. */
  readonly words: () => Words;
  readonly undo: () => void;
  readonly redo: () => void;
}

const desks = new WeakMap<AppTools['store'], DrawingDesk>();

/** The window's desk, set up when the room is shown for the first time. */
export function deskOf(tools: AppTools): DrawingDesk {
  const known = desks.get(tools.store);
  if (known !== undefined) return known;
  const desk = setUp(tools);
  desks.set(tools.store, desk);
  return desk;
}

function setUp(tools: AppTools): DrawingDesk {
  const stepSaid = (what: string, entry: HistoryEntry | undefined): string =>
    entry === undefined ? what : `${what}: ${nameIn(entry, wordsOf(tools.store.state()))}.`;
  const store = makeStore(emptyDrawing(), reduceDrawing);
  const desk: DrawingDesk = {
    store,
    files: keepFile(tools, store),
    stage: { current: null },
    attempt: (make, select) => attempt(store, make, select, wordsOf(tools.store.state())),
    say: (phrase, tone = 'news') => store.dispatch({ type: 'said', said: { tone, words: phrase } }),
    words: () => wordsOf(tools.store.state()),
    undo: () => {
      if (store.state().sketch.length > 0) store.dispatch({ type: 'place-taken-back' });
      else if (mayEdit(store.state()))
        store.dispatch({
          type: 'undone',
          said: stepSaid(desk.words().drawing.undone, store.state().history.past.at(-1)),
        });
    },
    redo: () => {
      if (mayEdit(store.state()))
        store.dispatch({
          type: 'redone',
          said: stepSaid(desk.words().drawing.redone, store.state().history.future[0]),
        });
    },
  };
  tools.undo.bring('course', undoOf(desk));
  followReport(store);
  return desk;
}

function attempt(
  store: DrawingStore,
  make: (document: EditableDocument) => EditResult,
  select: 'touched' | undefined,
  words: Words,
): boolean {
  const state = store.state();
  if (!mayEdit(state)) {
    const { file } = state;
    const phrase =
      file?.access.may === 'look'
        ? lookingWords(file.access, file.entry.name, words)
        : words.courseFile.openFirst;
    store.dispatch({ type: 'said', said: { tone: 'refusal', words: phrase } });
    return false;
  }
  if (state.history.drag !== null) store.dispatch({ type: 'drag-ended' });
  const made = make(store.state().history.document);
  if (!made.ok) {
    store.dispatch({
      type: 'said',
      said: {
        tone: 'refusal',
        words: made.error.told === undefined ? made.error.message : tell(made.error.told, words),
      },
    });
    return false;
  }
  store.dispatch({ type: 'edited', edit: made.value, ...(select === undefined ? {} : { select: true }) });
  return true;
}

function undoOf({ store, words, undo, redo }: DrawingDesk): UndoSource {
  const nameOf = (entry: HistoryEntry | undefined): string | null =>
    entry === undefined ? null : nameIn(entry, words());
  return {
    undoLabel: () => {
      const { sketch, history } = store.state();
      return sketch.length > 0 ? words().drawing.lastPlaceStep : nameOf(history.past.at(-1));
    },
    redoLabel: () => nameOf(store.state().history.future[0]),
    undo,
    redo,
    subscribe: store.subscribe,
  };
}
