/** Until the hole on screen is worked out, its plan of last time is looked for and shown. */

import { currentHole, settledWorkKey } from '../state/selectors.ts';
import { follow } from '../state/effects/follow.ts';
import { nextFrame } from '../state/effects/next-frame.ts';
import { taskFor } from '../state/effects/solve-holes.ts';
import type { Store } from '../state/store.ts';
import type { PlanKeeper } from './plan-keeper.ts';

/** The workers take all processors as soon as they have the files: so long they are kept waiting for the first look, ms. */
const LONGEST_WAIT_MS = 600;

export interface KeptShown {
  readonly stop: () => void;
  /** Resolves when the first look has come to its end and what it found is on screen, and soon in any case. */
  readonly looked: () => Promise<unknown>;
}

export function showKept(store: Store, keeper: Pick<PlanKeeper, 'find'>): KeptShown {
  let tellLooked = (): void => undefined;
  const firstLook = new Promise<void>((resolve) => (tellLooked = resolve));
  const stop = follow(store, {
    question: (state) => {
      const hole = currentHole(state);
      const { course, player } = state;
      if (hole === null || course === null || player === null) return null;
      const key = settledWorkKey(state, hole);
      const isThere = state.work[hole.number]?.result?.key === key || state.answers.kept?.key === key;
      return isThere ? null : { files: [course.text, player.text] as const, task: taskFor(state, hole, key) };
    },
    key: ({ task }) => task.key,
    answer: async ({ files, task }) => {
      const result = await keeper.find(files, task);
      if (result !== null) {
        store.dispatch({ type: 'kept-arrived', result });
        await nextFrame();
      }
      tellLooked();
    },
  });
  return { stop, looked: () => Promise.race([firstLook, after(LONGEST_WAIT_MS)]) };
}

function after(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
