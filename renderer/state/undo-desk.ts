/** One pair of undo and redo buttons for all rooms: each room brings the source of its own steps. */

import type { RoomName } from '../rooms/room.ts';
import { redoLabel, undoLabel } from './history.ts';
import type { Store } from './store.ts';

export interface UndoSource {
  /** The step in words, null where there is none. */
  readonly undoLabel: () => string | null;
  readonly redoLabel: () => string | null;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export interface UndoDesk {
  /** Makes `source` the room's own until the returned function is called. */
  readonly bring: (room: RoomName, source: UndoSource) => () => void;
  readonly of: (room: RoomName) => UndoSource | null;
  /** Called when a source comes, goes or changes. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function makeUndoDesk(): UndoDesk {
  const sources = new Map<RoomName, UndoSource>();
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of [...listeners]) listener();
  };
  return {
    bring: (room, source) => {
      sources.set(room, source);
      const stop = source.subscribe(tell);
      tell();
      return () => {
        stop();
        if (sources.get(room) === source) sources.delete(room);
        tell();
      };
    },
    of: (room) => sources.get(room) ?? null,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Steps of the plan: where the ball, the aims and the hole positions are. */
export function undoOfPlan(store: Store): UndoSource {
  return {
    undoLabel: () => undoLabel(store.state().history),
    redoLabel: () => redoLabel(store.state().history),
    undo: () => store.dispatch({ type: 'undone' }),
    redo: () => store.dispatch({ type: 'redone' }),
    subscribe: store.subscribe,
  };
}
