/** Until the hole on screen is worked out, its plan of last time is looked for and shown. */

import { currentHole, settledWorkKey } from '../state/selectors.ts';
import { follow } from '../state/effects/follow.ts';
import { taskFor } from '../state/effects/solve-holes.ts';
import type { Store } from '../state/store.ts';
import type { PlanKeeper } from './plan-keeper.ts';

export function showKept(store: Store, keeper: Pick<PlanKeeper, 'find'>): () => void {
  return follow(store, {
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
      if (result !== null) store.dispatch({ type: 'kept-arrived', result });
    },
  });
}
