/** The round file's store and keeper, one for the window; undo and redo of the room go through them. */

import { makeStore, type StoreOf } from '../../state/store.ts';
import { roomStepsOf, type StepSource } from '../state/room-steps.ts';
import { type AppTools, useTools } from '../../state/use-app.ts';
import { useStore } from '../../state/use-store.ts';
import { NO_ROUND, reduceRoundFiles, type RoundFileAction, type RoundFiles } from './round-file.ts';
import { RoundKeeper } from './round-keeper.ts';
import { wordsOf } from '../../state/use-words.ts';

export interface RoundFileDesk {
  readonly store: StoreOf<RoundFiles, RoundFileAction>;
  readonly keeper: RoundKeeper;
}

const desks = new WeakMap<AppTools['store'], RoundFileDesk>();

export function roundFileDesk(tools: AppTools): RoundFileDesk {
  const known = desks.get(tools.store);
  if (known !== undefined) return known;
  const steps = roomStepsOf(tools);
  const inner = makeStore(NO_ROUND, reduceRoundFiles);
  const store: RoundFileDesk['store'] = {
    ...inner,
    dispatch: (action) =>
      inner.dispatch(action.type === 'changed' ? { ...action, at: steps.stamp() } : action),
  };
  const keeper = new RoundKeeper(tools.host, store, () => wordsOf(tools.store.state()));
  const desk = { store, keeper };
  desks.set(tools.store, desk);
  steps.join(stepsOfFile(store));
  // What is typed is written down before the window may be gone.
  const flush = (): void => void keeper.writeDown();
  window.addEventListener('blur', flush);
  window.addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', flush);
  return desk;
}

export function useRoundFiles<T>(select: (state: RoundFiles) => T): T {
  return useStore(roundFileDesk(useTools()).store, select);
}

function stepsOfFile(store: RoundFileDesk['store']): StepSource {
  return {
    past: () => store.state().open?.past.at(-1) ?? null,
    future: () => store.state().open?.future.at(-1) ?? null,
    forget: () => store.dispatch({ type: 'future-forgotten' }),
    undo: () => store.dispatch({ type: 'undone' }),
    redo: () => store.dispatch({ type: 'redone' }),
    subscribe: store.subscribe,
  };
}
