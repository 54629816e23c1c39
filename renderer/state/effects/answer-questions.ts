/** Asks the workers about the hole on screen: the plan, the own aim, the comparison, what to paint, the surface. */

import type { Conditions } from '../../../core/conditions/conditions.ts';
import type { LonLat } from '../../../core/course/model.ts';
import type { Option } from '../../../core/plan/model.ts';
import type { PlannerPool } from '../../workers/planner-pool.ts';
import {
  isSwing,
  PAINTED_BALLS,
  type ShotPicture,
  type ShotRequest,
  type SpotQuestion,
} from '../../workers/planner-api.ts';
import { type AppState, OWN_AIM, type PaintedShot, type ShotId } from '../app-state.ts';
import {
  ballPlace,
  currentHole,
  currentPlan,
  currentResult,
  heldResult,
  holeSituation,
  optionOf,
  paintedShot,
  strokesTaken,
  teeOf,
  workKey,
} from '../selectors.ts';
import { shown } from '../history.ts';
import type { Store } from '../store.ts';
import { type TeeAnswer, teeAnswer, teePictureOf } from '../tee-answer.ts';
import { positionRequest } from './solve-holes.ts';
import { follow } from './follow.ts';

/** Size of the painted surface's cells, metres. */
const SURFACE_CELL_M = 2;
const BALLS_WHILE_DRAGGING = 120;

export function answerQuestions(store: Store, pool: PlannerPool): () => void {
  const stops = [
    followRough(store, pool),
    followPlan(store, pool),
    followOwnAim(store, pool),
    followComparison(store, pool),
    followPaint(store, pool),
    followSurface(store, pool),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}

/** A quick result on a coarse grid for the hole on screen until the full one is there. */
function followRough(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const hole = currentHole(state);
      if (hole === null || state.player === null) return null;
      const key = workKey(state, hole);
      const work = state.work[hole.number];
      // before the full work is under way the workers have no files yet
      if (work === undefined || work.result?.key === key) return null;
      const { position } = holeSituation(state, hole.number);
      return {
        key,
        hole: hole.number,
        teeName: teeOf(hole, shown(state.history).teeName).name,
        position: positionRequest(hole, position),
        conditions: shown(state.history).conditions,
        seed: state.seed,
        rough: true,
      };
    },
    key: (task) => task.key,
    answer: async (task) => {
      const answer = await pool.solve(task, () => undefined);
      if (answer.ok) store.dispatch({ type: 'rough-arrived', result: answer.value });
    },
  });
}

export interface Asked {
  readonly hole: number;
  readonly conditions: Conditions;
  readonly question: SpotQuestion;
}

/** The question about the spot where the ball is; null until a worker holds the hole. */
export function spotQuestion(state: AppState): Asked | null {
  const hole = currentHole(state);
  const result = heldResult(state);
  const ball = ballPlace(state);
  if (hole === null || result === null || ball === null) return null;
  const question = {
    resultKey: result.key,
    rough: state.history.preview !== null || result.rough,
    ball,
    strokesTaken: strokesTaken(state).strokes,
  };
  return { hole: hole.number, conditions: result.conditions, question };
}

export function keyOf({ hole, question }: Asked): string {
  const { resultKey, rough, ball, strokesTaken: taken } = question;
  return `${hole}|${resultKey}|${rough}|${ball.join()}|${taken}`;
}

function followPlan(store: Store, pool: PlannerPool): () => void {
  return follow<{ readonly tee: TeeAnswer } | { readonly tee: null; readonly asked: Asked }>(store, {
    question: (state) => {
      const tee = teeAnswer(state);
      if (tee !== null) return { tee };
      const asked = spotQuestion(state);
      return asked === null ? null : { tee, asked };
    },
    key: (question) => (question.tee === null ? keyOf(question.asked) : teeKey(question.tee)),
    answer: async (question) => {
      if (question.tee !== null) {
        const { result, ball } = question.tee;
        const { hole, key: resultKey, conditions, rough, teePlan: plan } = result;
        store.dispatch({ type: 'plan-arrived', answer: { hole, resultKey, ball, conditions, rough, plan } });
        return;
      }
      const { hole, conditions, question: asked } = question.asked;
      const plan = await pool.plan(hole, asked);
      if (plan === null) return;
      const { resultKey, rough, ball } = asked;
      store.dispatch({ type: 'plan-arrived', answer: { hole, resultKey, ball, conditions, rough, plan } });
    },
  });
}

function teeKey({ result: { hole, key, rough }, isKept }: TeeAnswer): string {
  return `${hole}|${key}|${rough}|on the tee${isKept ? ', kept' : ''}`;
}

function followOwnAim(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const asked = spotQuestion(state);
      if (asked === null) return null;
      const { aim } = holeSituation(state, asked.hole);
      if (aim === null) return null;
      const best = currentPlan(state)?.options[0];
      return { ...asked, aim, best: best !== undefined && isSwing(best) ? best : null };
    },
    key: (asked) =>
      `${keyOf(asked)}|${asked.aim.spreadIndex}|${asked.aim.target.join()}|${shotKey(asked.best)}`,
    answer: async ({ hole, question, aim, best }) => {
      const shot: ShotRequest = { from: 'target', ...aim };
      const rival: ShotRequest | null = best === null ? null : { from: 'option', option: best };
      const own = await pool.weigh(hole, question, shot, rival);
      const answer = own === null ? null : { hole, rough: question.rough, ...own };
      store.dispatch({ type: 'own-arrived', answer });
    },
    clear: () => store.dispatch({ type: 'own-arrived', answer: null }),
  });
}

function followComparison(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const asked = spotQuestion(state);
      const { compareA, compareB } = state.view;
      const a = optionOf(state, compareA);
      const b = optionOf(state, compareB);
      if (asked === null || compareA === null || compareB === null) return null;
      if (a === null || b === null || !isSwing(a) || !isSwing(b)) return null;
      return { ...asked, a: { id: compareA, option: a }, b: { id: compareB, option: b } };
    },
    key: (asked) => `${keyOf(asked)}|${shotKey(asked.a.option)}|${shotKey(asked.b.option)}`,
    answer: async ({ hole, question, a, b }) => {
      const comparison = await pool.compare(
        hole,
        question,
        { from: 'option', option: a.option },
        { from: 'option', option: b.option },
      );
      const answer =
        comparison === null ? null : { hole, a: a.id, b: b.id, rough: question.rough, comparison };
      store.dispatch({ type: 'comparison-arrived', answer });
    },
    clear: () => store.dispatch({ type: 'comparison-arrived', answer: null }),
  });
}

export interface NamedShot {
  readonly id: ShotId;
  readonly shot: ShotRequest;
  readonly key: string;
}

/** Spreads of the shown shot and of the two compared; the own aim is painted from its target, without waiting. */
function followPaint(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const { hole } = state.view;
      const tee = teeAnswer(state);
      const asked = spotQuestion(state);
      if (hole === null || (tee === null && asked === null)) return null;
      const ids = new Set([paintedShot(state), state.view.compareA, state.view.compareB]);
      const shots = [...ids]
        .map((id) => shotOf(state, hole, id))
        .filter((shot) => shot !== null)
        .map((shot) => ({ ...shot, given: teePictureOf(tee, shot.id) }));
      const answer = state.answers.plan;
      // Painted from where the plan was made, so that line, spread and aim belong together during a drag.
      const ball = answer?.hole === hole ? answer.ball : null;
      return shots.length === 0 ? null : { hole, asked, ball, shots };
    },
    key: ({ hole, asked, ball, shots }) => {
      const isGiven = shots.every(({ given }) => given !== null);
      const from = isGiven || asked === null ? `${hole}|on the tee` : `${keyOf(asked)}|${ball?.join() ?? ''}`;
      return `${from}|${shots.map((shot) => `${shot.id}=${shot.key}`).join('|')}`;
    },
    answer: async ({ hole, asked, ball, shots }) => {
      const origin = currentResult(store.state())?.origin;
      const paint: Record<ShotId, PaintedShot> = {};
      for (const { id, shot, key, given } of shots) {
        const picture = given ?? (asked === null ? null : await paintedBy(asked, ball, shot));
        if (picture !== null && origin !== undefined) paint[id] = { hole, key, origin, ...picture };
      }
      store.dispatch({ type: 'paint-arrived', paint });
    },
    clear: () => store.dispatch({ type: 'paint-arrived', paint: {} }),
  });

  function paintedBy(
    { hole, question }: Asked,
    ball: LonLat | null,
    shot: ShotRequest,
  ): Promise<ShotPicture | null> {
    const balls = question.rough ? BALLS_WHILE_DRAGGING : PAINTED_BALLS;
    return pool.paint(hole, { ...question, ball: ball ?? question.ball }, shot, balls);
  }
}

/** The shot of that id as the workers take it; null for a putt or a drop. */
export function shotOf(state: AppState, hole: number, id: ShotId | null): NamedShot | null {
  if (id === null) return null;
  const { aim } = holeSituation(state, hole);
  if (id === OWN_AIM) {
    if (aim === null) return null;
    return { id, shot: { from: 'target', ...aim }, key: `${aim.spreadIndex} ${aim.target.join()}` };
  }
  const option = optionOf(state, id);
  if (option === null || !isSwing(option)) return null;
  return { id, shot: { from: 'option', option }, key: shotKey(option) };
}

function followSurface(store: Store, pool: PlannerPool): () => void {
  return follow(store, {
    question: (state) => {
      const result = heldResult(state);
      return state.view.showSurface && result !== null ? result : null;
    },
    key: (result) => `${result.key}|${result.rough}`,
    answer: async ({ hole, key, origin }) => {
      const surface = await pool.surface(hole, key, SURFACE_CELL_M);
      const answer = surface === null ? null : { hole, resultKey: key, origin, surface };
      store.dispatch({ type: 'surface-arrived', answer });
    },
    clear: () => store.dispatch({ type: 'surface-arrived', answer: null }),
  });
}

function shotKey(option: Option | null): string {
  if (option === null) return '';
  return `${option.club}/${option.swing}/${option.aim.bearing.toFixed(5)}/${option.carryM.toFixed(2)}`;
}
