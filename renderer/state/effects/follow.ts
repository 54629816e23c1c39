/** Keeps something outside the state in step with it: asks anew when the question changes, the latest question first. */

import { latestWins } from '../../workers/latest-wins.ts';
import { WorkerBroke } from '../../workers/watched-desk.ts';
import type { AppState } from '../app-state.ts';
import { told, type Told } from '../../../core/words/told.ts';
import type { Store } from '../store.ts';

/** Runs `look` once per turn after changes, never inside a dispatch. Returns how to stop. */
export function afterChanges(store: Store, look: (state: AppState) => void): () => void {
  let due = false;
  let stopped = false;
  const glance = (): void => {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      if (!stopped) look(store.state());
    });
  };
  const unsubscribe = store.subscribe(glance);
  glance();
  return () => {
    stopped = true;
    unsubscribe();
  };
}

export interface Errand<Q> {
  /** The question that the state asks now; null where it asks none. */
  readonly question: (state: AppState) => Q | null;
  /** Equal keys, equal questions. */
  readonly key: (question: Q) => string;
  readonly answer: (question: Q) => Promise<void>;
  /** Called once when there is no question any more. */
  readonly clear?: () => void;
}

export function follow<Q>(store: Store, errand: Errand<Q>): () => void {
  let asked: string | null = null;
  const asking = latestWins<Q>(errand.answer, (reason) => {
    // A later change of the state may ask the same again.
    asked = null;
    // Another worker is started and tells; the state changes then, and the question is asked anew.
    if (reason instanceof WorkerBroke) return;
    store.dispatch({
      type: 'trouble-met',
      title: told(({ bar }) => bar.calculationStopped),
      message: toldReason(reason),
    });
  });
  return afterChanges(store, (state) => {
    const question = errand.question(state);
    if (question === null) {
      asking.forget();
      if (asked !== null) errand.clear?.();
      asked = null;
      return;
    }
    const key = errand.key(question);
    if (key === asked) return;
    asked = key;
    asking.ask(question);
  });
}

export function toldReason(reason: unknown): Told {
  const said = reason instanceof Error ? reason.message : String(reason);
  return told(({ bar }) => bar.chooseAgain, { said });
}
