/**
 * The window's workers. Hole h belongs to worker h modulo their number and is worked out whole by it from its own
 * seed, so the numbers do not depend on how many workers there are.
 */

import { proxy, type Remote } from 'comlink';
import type { Comparison, SolveProgress, SpotPlan, StrokesSurface } from '../../core/plan/model.ts';
import type { Fault, Result } from '../../core/result.ts';
import type { HoleResult } from '../state/app-state.ts';
import { keepWorker, type KeptWorker } from './kept-worker.ts';
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

export interface PoolNews {
  /** A worker cannot go on and no other is started; the text is empty where it did not start. */
  readonly broken: (said: string) => void;
  /** A worker broke and another took its place: what it held of its holes is gone. */
  readonly restarted: (worker: number, workers: number) => void;
}

export function startPlanners({ broken, restarted }: PoolNews): PlannerPool {
  let opened: readonly [string, string] | null = null;
  const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency));
  const kept: KeptWorker<RoundApi>[] = Array.from({ length: count }, (_, index) => {
    const begun: KeptWorker<RoundApi> = keepWorker<RoundApi>({
      start: () => new Worker(new URL('./planner-worker.ts', import.meta.url), { type: 'module' }),
      gaveUp: broken,
      restarted: () => {
        const open = opened === null ? Promise.resolve() : begun.desk().open(...opened);
        // Where it breaks again while it opens, its next start tells.
        open.then(
          () => restarted(index, count),
          () => undefined,
        );
      },
    });
    return begun;
  });
  const deskOf = (hole: number): Remote<RoundApi> => kept[hole % count]!.desk();
  return {
    workers: count,
    async open(courseText, playerText) {
      opened = [courseText, playerText];
      const answers = await Promise.all(kept.map(({ desk }) => desk().open(courseText, playerText)));
      return answers.find((answer) => !answer.ok) ?? answers[0]!;
    },
    check: () => deskOf(0).check(),
    solve: (task, report) => deskOf(task.hole).solve(task, proxy(report)),
    hurry: (hole) => {
      for (const { desk } of kept) void desk().hurry(hole);
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
