/** Keeps the workers busy with every hole whose situation has no result yet; the hole on screen goes first. */

import { positionOf, settledWorkKey, teeOf } from '../selectors.ts';
import { shown, situationOfHole } from '../history.ts';
import type { AppState } from '../app-state.ts';
import type { Hole } from '../../../core/course/model.ts';
import type { PlannerPool } from '../../workers/planner-pool.ts';
import type { Fault } from '../../../core/result.ts';
import { told, toldFault } from '../../../core/words/told.ts';
import type { HoleTask } from '../../workers/planner-api.ts';
import type { Store } from '../store.ts';
import type { OpenedFiles } from '../../kept-plans/plan-key.ts';
import type { PlanKeeper } from '../../kept-plans/plan-keeper.ts';
import { WorkerBroke } from '../../workers/watched-desk.ts';
import { afterChanges, toldReason } from './follow.ts';

const CHECK_AFTER_MS = 1500;

/**
 * `finished` is told of each full result with the very files and task that it came from. Nothing is begun before `mayBegin`,
 * asked once when there is something to work out, resolves.
 */
export function solveHoles(
  store: Store,
  pool: PlannerPool,
  finished: PlanKeeper['keep'] = () => Promise.resolve(),
  mayBegin: () => Promise<unknown> = () => Promise.resolve(),
): () => void {
  let openFor: string | null = null;
  let isBegun: boolean | null = null;
  /** What the workers were given. */
  let opened: OpenedFiles | null = null;
  let hurried: number | null = null;
  /** The work that the pool has been given, by hole. */
  const given = new Map<number, HoleTask>();

  const openFiles = (state: AppState): boolean => {
    const { course, player } = state;
    if (course === null || player === null) return false;
    const files = `${course.entry.token}/${course.revision}/${player.entry.token}/${player.revision}`;
    if (files !== openFor) {
      openFor = files;
      given.clear();
      // A worker that breaks meanwhile is started anew with the same files.
      opened = [course.text, player.text];
      pool.open(...opened).catch(() => undefined);
      checkOnceIdle(course.revision).catch(() => undefined);
    }
    return true;
  };

  /** After the first answers: the rules take a moment and nobody waits for them. */
  const checkOnceIdle = async (revision: string): Promise<void> => {
    await new Promise((resolve) => setTimeout(resolve, CHECK_AFTER_MS));
    if (store.state().course?.revision !== revision) return;
    store.dispatch({ type: 'course-checked', revision, notes: await pool.check() });
  };

  const start = async (task: HoleTask): Promise<void> => {
    const { hole, key } = task;
    given.set(hole, task);
    const files = opened;
    store.dispatch({ type: 'work-started', hole, key });
    try {
      const answer = await pool.solve(task, (progress) =>
        store.dispatch({ type: 'work-progressed', hole, key, progress }),
      );
      if (answer.ok) {
        store.dispatch({ type: 'work-finished', result: answer.value });
        if (files !== null) void finished(files, task, answer.value);
      } else if (answer.error.why === 'fault') {
        store.dispatch({ type: 'work-failed', hole, key, fault: answer.error.fault });
      }
    } catch (reason) {
      // Where another worker takes its place, the holes are asked for anew.
      if (!(reason instanceof WorkerBroke)) tellStopped(task, reason);
    }
    // the same work may have been given anew after other files were opened
    if (given.get(hole) === task) given.delete(hole);
  };

  const tellStopped = ({ hole, key }: HoleTask, reason: unknown): void => {
    store.dispatch({ type: 'work-failed', hole, key, fault: stoppedFault(hole, reason) });
  };

  const begin = async (): Promise<void> => {
    isBegun = false;
    await mayBegin();
    isBegun = true;
    look(store.state());
  };

  const look = (state: AppState): void => {
    if (state.course === null || state.player === null) return;
    if (isBegun === null) void begin();
    if (isBegun !== true || !openFiles(state)) return;
    if (state.view.hole !== null && state.view.hole !== hurried) {
      hurried = state.view.hole;
      pool.hurry(hurried);
    }
    for (const hole of inOrder(state)) {
      const key = settledWorkKey(state, hole);
      const work = state.work[hole.number];
      const under = given.get(hole.number)?.key;
      if (under !== undefined && (under !== key || work?.status === 'stopped')) {
        pool.cancel(hole.number, under);
        given.delete(hole.number);
      }
      const settled = work?.key === key && work.status !== 'stopped';
      if (!settled && state.working) void start(taskFor(state, hole, key));
    }
  };

  return afterChanges(store, look);
}

/** The calculation of a hole ended with an error that nobody foresaw. */
export function stoppedFault(hole: number, reason: unknown): Fault {
  return toldFault({
    severity: 'error',
    code: 'calculation-stopped',
    where: told(({ features }) => features.whereOnlyHole, { hole }),
    message: toldReason(reason),
  });
}

/** The hole on screen first, then as the course has them. */
function inOrder(state: AppState): readonly Hole[] {
  const holes = state.course?.value.holes ?? [];
  const onScreen = holes.filter((hole) => hole.number === state.view.hole);
  return [...onScreen, ...holes.filter((hole) => hole.number !== state.view.hole)];
}

export function taskFor(state: AppState, hole: Hole, key: string): HoleTask {
  const { position } = situationOfHole(state.history.present, hole.number);
  return {
    key,
    hole: hole.number,
    teeName: teeOf(hole, shown(state.history).teeName).name,
    position: positionRequest(hole, position),
    conditions: state.history.present.conditions,
    seed: state.seed,
    rough: false,
  };
}

/** What the engine is asked for: a name that the hole has, or the free place. */
export function positionRequest(hole: Hole, position: HoleTask['position'] | null): HoleTask['position'] {
  if (position !== null && typeof position !== 'string') return position;
  return positionOf(hole, position).name;
}
