/** Two players on one hole: each worked out alike in a worker of its own, from the same tee with the same seed. */

import { faultText, faultsText } from '../../../core/words/told.ts';
import { proxy } from 'comlink';
import type { SpotPlan } from '../../../core/plan/model.ts';
import { watchedDesk } from '../../workers/watched-desk.ts';
import { progressShare } from '../../workers/progress-share.ts';
import type { HoleTask, PlannerApi } from '../../workers/planner-api.ts';
import type { Words } from '../../../core/words/words.ts';

export interface Compared {
  readonly plans: readonly [SpotPlan, SpotPlan];
  readonly lengthM: number;
}

export interface CompareRun {
  /** Null where it was stopped; the fault in words where a player or the hole cannot be worked out. */
  readonly done: Promise<Compared | string | null>;
  readonly stop: () => void;
}

export function comparePlayers(
  courseText: string,
  players: readonly [string, string],
  task: Omit<HoleTask, 'key' | 'rough'>,
  report: (share: number) => void,
  words: Words,
): CompareRun {
  const workers: Worker[] = [];
  let stop: (value: null) => void = () => undefined;
  const stopped = new Promise<null>((resolve) => {
    stop = resolve;
  });
  const shares = [0, 0];
  const one = async (
    playerText: string,
    index: number,
  ): Promise<{ plan: SpotPlan; lengthM: number } | string> => {
    const worker = new Worker(new URL('../../workers/planner-worker.ts', import.meta.url), {
      type: 'module',
    });
    workers.push(worker);
    const { desk } = watchedDesk<PlannerApi>(worker, () => undefined);
    const opened = await desk.open(courseText, playerText);
    if (!opened.ok) return faultsText(opened.error, words);
    const solved = await desk.solve(
      { ...task, key: `player ${index}`, rough: false },
      proxy((progress) => {
        shares[index] = progressShare(progress) ?? shares[index]!;
        report((shares[0]! + shares[1]!) / 2);
      }),
    );
    if (solved.ok) return { plan: solved.value.teePlan, lengthM: solved.value.lengthM };
    return solved.error.why === 'fault'
      ? faultText(solved.error.fault, words).message
      : words.player.compare.stopped;
  };
  const both = async (): Promise<Compared | string> => {
    const [a, b] = await Promise.all([one(players[0], 0), one(players[1], 1)]);
    if (typeof a === 'string') return a;
    if (typeof b === 'string') return b;
    return { plans: [a.plan, b.plan], lengthM: a.lengthM };
  };
  const end = (): void => {
    for (const worker of workers) worker.terminate();
  };
  return {
    // A worker that has gone, most likely for want of memory.
    done: Promise.race([both().catch(() => words.player.compare.broke), stopped]).finally(end),
    stop: () => stop(null),
  };
}
