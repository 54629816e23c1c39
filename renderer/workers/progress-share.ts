/**
 * How far a solution has come, from 0 to 1, for a bar that never runs backwards. The number of sweeps is not known
 * beforehand: each further sweep of a level is given half of what is left of that level.
 */

import type { SolveProgress } from '../../core/plan/model.ts';

/** Each finer level has four times the nodes of the one before. */
const LEVEL_GROWTH = 4;
/** Shares of a level after which its values are taken anew, and its odds are settled. */
const ANEW_FROM = 0.75;
const ODDS_FROM = 0.9;

/** Null where the stage does not say how far along it is. */
export function progressShare(progress: SolveProgress): number | null {
  const level = /level (\d+) of (\d+)/.exec(progress.stage);
  if (level === null) return null;
  const at = Number(level[1]);
  const of = Number(level[2]);
  const within = progress.total === 0 ? 0 : progress.done / progress.total;
  const odds = /odds (\d+)/.exec(progress.stage);
  const sweep = Number(/sweep (\d+)/.exec(progress.stage)?.[1] ?? 1);
  const inLevel = progress.stage.endsWith('error')
    ? ANEW_FROM + (ODDS_FROM - ANEW_FROM) * within
    : odds === null
      ? ANEW_FROM * halving(sweep - 1 + within)
      : ODDS_FROM + (1 - ODDS_FROM) * halving(Number(odds[1]) - 1 + within);
  const before = (LEVEL_GROWTH ** (at - 1) - 1) / (LEVEL_GROWTH ** of - 1);
  const after = (LEVEL_GROWTH ** at - 1) / (LEVEL_GROWTH ** of - 1);
  return before + (after - before) * inLevel;
}

/** 0, 1/2, 3/4, … after 0, 1, 2, … rounds. */
function halving(rounds: number): number {
  return 1 - 0.5 ** rounds;
}
