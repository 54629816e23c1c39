/** Holds the state, lets actions change it, tells listeners. The reducer is pure; this is the only place that is not. */

import type { Action } from './actions.ts';
import type { AppState } from './app-state.ts';

export type Store = StoreOf<AppState, Action>;

export interface StoreOf<S, A> {
  readonly state: () => S;
  readonly dispatch: (action: A) => void;
  /** Calls `listener` after each change until the returned function is called. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function makeStore<S, A>(initial: S, reduce: (state: S, action: A) => S): StoreOf<S, A> {
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
