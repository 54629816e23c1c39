/**
 * The window's workers. Hole h belongs to worker h modulo their number and is worked out whole by it from its own
 * seed, so the numbers do not depend on how many workers there are.
 */

import { proxy, type Remote, wrap } from 'comlink';
import type { Comparison, SolveProgress, SpotPlan, StrokesSurface } from '../../core/plan/model.ts';
import type { Fault, Result } from '../../core/result.ts';
import type { HoleResult } from '../state/app-state.ts';
import type { RoundApi } from './round-api.ts';
import type { TreePassage, WayOutOfTrees } from './ways-out.ts';
import type { HoleTask, OwnShot, ShotPicture, ShotRequest, SpotQuestion, Unfinished } from './planner-api.ts';

const MOST_WORKERS = 4;

export interface PlannerPool {
  readonly workers: number;
  open(courseText: string, playerText: string): Promise<Result<null, readonly Fault[]>>;
  check(): Promise<readonly Fault[]>;
  solve(task: HoleTask, report: (progress: SolveProgress) => void): Promise<Result<HoleResult, Unfinished>>;
  hurry(hole: number): void;
  cancel(hole: number, key: string): void;
  plan(hole: number, question: SpotQuestion): Promise<SpotPlan | null>;
  weigh(
    hole: number,
    question: SpotQuestion,
    shot: ShotRequest,
    best: ShotRequest | null,
  ): Promise<OwnShot | null>;
  compare(hole: number, question: SpotQuestion, a: ShotRequest, b: ShotRequest): Promise<Comparison | null>;
  paint(hole: number, question: SpotQuestion, shot: ShotRequest, balls: number): Promise<ShotPicture | null>;
  surface(hole: number, resultKey: string, cellM: number): Promise<StrokesSurface | null>;
  waysOut(hole: number, question: SpotQuestion): Promise<readonly WayOutOfTrees[] | null>;
  treePassage(hole: number, question: SpotQuestion, shot: ShotRequest): Promise<TreePassage | null>;
  /** The worker that holds this hole, for what a round asks of it. */
  deskOf(hole: number): Remote<RoundApi>;
}

/** Starts the workers; `broken` is told when one of them cannot go on, with an empty text where it did not start. */
export function startPlanners(broken: (message: string) => void): PlannerPool {
  const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency));
  const desks: Remote<RoundApi>[] = Array.from({ length: count }, () => {
    const worker = new Worker(new URL('./planner-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('error', (event) => broken(event.message));
    return wrap<RoundApi>(worker);
  });
  const deskOf = (hole: number): Remote<RoundApi> => desks[hole % count]!;
  return {
    workers: count,
    async open(courseText, playerText) {
      const answers = await Promise.all(desks.map((desk) => desk.open(courseText, playerText)));
      return answers.find((answer) => !answer.ok) ?? answers[0]!;
    },
    check: () => desks[0]!.check(),
    solve: (task, report) => deskOf(task.hole).solve(task, proxy(report)),
    hurry: (hole) => {
      for (const desk of desks) void desk.hurry(hole);
    },
    cancel: (hole, key) => void deskOf(hole).cancel(key),
    plan: (hole, question) => deskOf(hole).plan(question),
    weigh: (hole, question, shot, best) => deskOf(hole).weigh(question, shot, best),
    compare: (hole, question, a, b) => deskOf(hole).compare(question, a, b),
    paint: (hole, question, shot, balls) => deskOf(hole).paint(question, shot, balls),
    surface: (hole, resultKey, cellM) => deskOf(hole).surface(resultKey, cellM),
    waysOut: (hole, question) => deskOf(hole).waysOut(question),
    treePassage: (hole, question, shot) => deskOf(hole).treePassage(question, shot),
    deskOf,
  };
}
