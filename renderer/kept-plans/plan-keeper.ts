/**
 * Keeps worked-out holes with the host and finds them again. Whatever goes wrong means that there is none: the hole is worked out
 * in any case, so nobody needs to be told.
 */

import type { Host } from '../../electron/contract/host.ts';
import type { HoleResult } from '../state/app-state.ts';
import type { HoleTask } from '../workers/planner-api.ts';
import { keptText, readKept } from './kept-plan.ts';
import { type Engine, type OpenedFiles, planKey } from './plan-key.ts';

export interface PlanKeeper {
  /** `files` and `task` as they went to the worker that gave the result. */
  readonly keep: (files: OpenedFiles, task: HoleTask, result: HoleResult) => Promise<void>;
  readonly find: (files: OpenedFiles, task: HoleTask) => Promise<HoleResult | null>;
  /** What has come of it so far, for those who look for a fault. */
  readonly counts: () => PlanCounts;
}

export interface PlanCounts {
  readonly found: number;
  readonly kept: number;
  /** Found ones that the worker gave again to the last digit, and others: there should be none. */
  readonly confirmed: number;
  readonly corrected: number;
  /** Not kept, not read, not understood. */
  readonly refused: number;
}

/** The plans that a later start may ask for: in full, and for a hole position that the course names. */
export function isWorthKeeping({ rough, position }: HoleTask): boolean {
  return !rough && typeof position === 'string';
}

export function planKeeper(host: Pick<Host, 'keepPlan' | 'keptPlan'>, engine: Engine): PlanKeeper {
  const counts = { found: 0, kept: 0, confirmed: 0, corrected: 0, refused: 0 };
  /** Texts that were found and not yet worked out anew, by key. */
  const found = new Map<string, string>();

  const keep = async (files: OpenedFiles, task: HoleTask, result: HoleResult): Promise<void> => {
    if (!isWorthKeeping(task)) return;
    const key = await planKey(engine, files, task);
    const text = keptText(result);
    const before = found.get(key);
    found.delete(key);
    if (text === null) {
      counts.refused += 1;
      return;
    }
    if (before === text) {
      counts.confirmed += 1;
      return;
    }
    if (before !== undefined) counts.corrected += 1;
    const answer = await host.keepPlan(key, text);
    if (answer.ok && answer.value.isKept) counts.kept += 1;
    else counts.refused += 1;
  };

  const find = async (files: OpenedFiles, task: HoleTask): Promise<HoleResult | null> => {
    if (!isWorthKeeping(task)) return null;
    const key = await planKey(engine, files, task);
    const answer = await host.keptPlan(key);
    const text = answer.ok ? answer.value.text : null;
    if (text === null) return null;
    const result = readKept(text, task);
    if (result === null) {
      counts.refused += 1;
      return null;
    }
    counts.found += 1;
    found.set(key, text);
    return result;
  };

  const quietly = async <T>(work: Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await work;
    } catch {
      counts.refused += 1;
      return otherwise;
    }
  };

  return {
    keep: (files, task, result) => quietly(keep(files, task, result), undefined),
    find: (files, task) => quietly(find(files, task), null),
    counts: () => ({ ...counts }),
  };
}
