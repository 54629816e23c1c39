/**
 * Solves strokes to hole out over a hole, from the hole outwards (value iteration with in-place sweeps, Bertsekas &
 * Tsitsiklis 1991 on stochastic shortest paths): V(state) = min over choices of the mean of 1 + penalties + V(next).
 *
 * Coarse to fine: on the widest spacing every sensible choice is tried at every node; each finer spacing starts
 * from the values and choices of the coarser one and tries those and their neighbours. The choice is made on one set of
 * draws and valued on another, so that picking the lowest of noisy means does not bias the value. In the end the settled
 * choices are valued again on several independent sets: their mean is the field, their scatter its chance error.
 */

import { changeBetween } from './inherit.ts';
import { LevelSolver } from './level-solver.ts';
import type { Convergence, SolveProgress } from './model.ts';
import { settleOdds } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import { REPLICAS, StrokesField } from './strokes-field.ts';

export interface SolveSettings {
  /** Node spacings, coarse to fine, metres. */
  readonly spacingsM: readonly number[];
  /** Draws per choice while choosing and while valuing; powers of two. */
  readonly draws: number;
  /** Sweeps end when no node changes by more than this, strokes. */
  readonly tolerance: number;
  readonly mostSweeps: number;
}

export const DEFAULT_SETTINGS: SolveSettings = {
  spacingsM: [20, 10, 5],
  draws: 64,
  tolerance: 0.004,
  mostSweeps: 12,
};

/** How far from the best aim another is tried at the widest spacing; half of that at each finer one. Degrees. */
const ASIDE_DEG = 4.5;

/**
 * Runs the solution; each `next()` is a few milliseconds of work, so that a caller can report, answer and cancel
 * between them. The same `prepared` and settings give the same field.
 */
export function* solveStrokes(
  prepared: PreparedHole,
  settings: SolveSettings = DEFAULT_SETTINGS,
): Generator<SolveProgress, StrokesField, void> {
  const convergence: { -readonly [K in keyof Convergence]: number[] } = {
    spacingsM: [],
    rmsChange: [],
    maxChange: [],
    sweeps: [],
  };
  let coarser: StrokesField | null = null;
  for (const [level, spacingM] of settings.spacingsM.entries()) {
    const field: StrokesField = new StrokesField(prepared.ground, prepared.pin, prepared.putts, spacingM);
    // Coarser spacings only lead the way: fewer draws to choose by, and they need not come to rest.
    const isLast = level === settings.spacingsM.length - 1;
    const solver = new LevelSolver(prepared, field, coarser, {
      choosingDraws: isLast ? settings.draws : settings.draws / 2,
      valuingDraws: settings.draws,
      tolerance: isLast ? settings.tolerance : 2.5 * settings.tolerance,
      // The last but one is what the change of the refinement is measured against: it must rest too.
      mostSweeps:
        level >= settings.spacingsM.length - 2 ? settings.mostSweeps : Math.min(6, settings.mostSweeps),
      firstDraws: level === 0 ? 4 : 8,
      asideDeg: ASIDE_DEG / 2 ** level,
      // On the last but one only the mean counts.
      replicas: isLast ? REPLICAS : REPLICAS / 4,
      trustsSearch: level > 0,
      keepsFarNodes: isLast && coarser !== null,
    });
    const stage = `level ${level + 1} of ${settings.spacingsM.length}`;
    convergence.sweeps.push(yield* solver.run(stage));
    convergence.spacingsM.push(spacingM);
    // The last two are valued anew, so that the change between them is the refinement's and not chance.
    if (level >= settings.spacingsM.length - 2) yield* solver.revalue(stage);
    if (isLast) yield* settleOdds(solver.evaluator, solver.statesForOdds(), solver.teeOdds(), stage);
    if (coarser !== null) {
      const change = changeBetween(coarser, field);
      convergence.rmsChange.push(change.rms);
      convergence.maxChange.push(change.max);
    }
    coarser = field;
  }
  if (coarser === null) throw new RangeError('Unexpected spacings: at least one is needed.');
  coarser.convergence = convergence;
  return coarser;
}

/** Runs a solution to its end, for callers that need not report. */
export function solveNow(prepared: PreparedHole, settings?: SolveSettings): StrokesField {
  const steps = solveStrokes(prepared, settings);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
