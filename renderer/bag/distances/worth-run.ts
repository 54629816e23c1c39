/** Asks the planners hole by hole what ten more shots would be worth, and adds the holes up. */

import { proxy, type Remote } from 'comlink';
import { addShotValues, type ShotValue, type SpotValue } from '../../../core/plan/value-of-shots.ts';
import type { PlannerPool } from '../../workers/planner-pool.ts';
import type { WorthApi } from '../work/worth-api.ts';

export interface WorthResult {
  /** Gains per round, most valuable first. */
  readonly clubs: readonly ShotValue[];
  /** What knowing every law for sure would gain per round. */
  readonly perfectStrokes: number;
  readonly holes: number;
  readonly spots: number;
}

export interface WorthRun {
  readonly done: Promise<WorthResult | null>;
  readonly stop: () => void;
}

export interface WorthHole {
  readonly hole: number;
  readonly resultKey: string;
}

export function askWorth(
  pool: PlannerPool,
  holes: readonly WorthHole[],
  shots: number,
  report: (share: number) => void,
): WorthRun {
  // The pool's workers are the room's own kind of desk; the pool itself need not know.
  const deskOf = (hole: number): Remote<WorthApi> => pool.deskOf(hole) as unknown as Remote<WorthApi>;
  const shares = new Map<number, number>();
  let stopped = false;
  const one = async ({ hole, resultKey }: WorthHole): Promise<readonly SpotValue[]> => {
    const heard = (share: number): void => {
      // What was under way when it was stopped still tells of itself once.
      if (stopped) return;
      shares.set(hole, share);
      report([...shares.values()].reduce((sum, value) => sum + value, 0) / holes.length);
    };
    const values = await deskOf(hole).worth({ resultKey, shots }, proxy(heard));
    heard(1);
    return values ?? [];
  };
  const all = async (): Promise<WorthResult | null> => {
    const found = await Promise.all(holes.map(one));
    if (stopped) return null;
    const values = found.flat();
    return {
      clubs: addShotValues(values.map((value) => ({ value }))),
      perfectStrokes: values.reduce((sum, value) => sum + value.perfectStrokes, 0),
      holes: found.filter((spots) => spots.length > 0).length,
      spots: values.length,
    };
  };
  return {
    done: all(),
    stop: () => {
      stopped = true;
      for (let i = 0; i < pool.workers; i++) void deskOf(i).stopWorth();
    },
  };
}
