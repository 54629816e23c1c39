/** For a ball in trees: asks the workers for the ways out, and how the shot on the map passes the trees. */

import type { PlannerPool } from '../../workers/planner-pool.ts';
import type { AppState } from '../app-state.ts';
import { currentPlan, isPlanRough, paintedShot } from '../selectors.ts';
import type { Store } from '../store.ts';
import { type Asked, keyOf, shotOf, spotQuestion } from './answer-questions.ts';
import { follow } from './follow.ts';

export function findWaysOut(store: Store, pool: PlannerPool): () => void {
  const stops = [followWays(store, pool), followPassage(store, pool)];
  return () => {
    for (const stop of stops) stop();
  };
}

/** Null unless the plan on screen is of a ball in trees. */
function inTrees(state: AppState): Asked | null {
  return currentPlan(state)?.lie === 'woods' ? spotQuestion(state) : null;
}

/** Once things are at rest and the hole is worked out: it takes a moment. */
function followWays(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const asked = inTrees(state);
      return asked === null || asked.question.rough || isPlanRough(state) ? null : asked;
    },
    key: keyOf,
    answer: async ({ hole, question }) => {
      const ways = await pool.waysOut(hole, question);
      if (ways === null) return;
      const { resultKey, ball } = question;
      store.dispatch({ type: 'ways-out-arrived', answer: { hole, resultKey, ball, ways } });
    },
    clear: () => store.dispatch({ type: 'ways-out-arrived', answer: null }),
  });
}

function followPassage(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const asked = inTrees(state);
      const named = asked === null ? null : shotOf(state, asked.hole, paintedShot(state));
      // From where the plan was made, as the painted shot.
      const ball = state.answers.plan?.ball;
      if (asked === null || named === null || ball === undefined) return null;
      return { ...asked, question: { ...asked.question, ball }, named };
    },
    key: (asked) => `${keyOf(asked)}|${asked.named.id}=${asked.named.key}`,
    answer: async ({ hole, question, named }) => {
      const passage = await pool.treePassage(hole, question, named.shot);
      const answer = passage === null ? null : { hole, ball: question.ball, shot: named.id, passage };
      store.dispatch({ type: 'tree-passage-arrived', answer });
    },
    clear: () => store.dispatch({ type: 'tree-passage-arrived', answer: null }),
  });
}
