/** Holds the state, lets actions change it, tells listeners. The reducer is pure; this is the only place that is not. */

import type { Action } from './actions.ts';
import type { AppState } from './app-state.ts';

export interface Store {
  readonly state: () => AppState;
  readonly dispatch: (action: Action) => void;
  /** Calls `listener` after each change until the returned function is called. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function makeStore(initial: AppState, reduce: (state: AppState, action: Action) => AppState): Store {
  let state = initial;
  const listeners = new Set<() => void>();
  return {
    state: () => state,
    dispatch: (action) => {
      const next = reduce(state, action);
      if (next === state) return;
      state = next;
      for (const listener of [...listeners]) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
