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
import type { LevelEffort } from './node-search.ts';
import { settleOdds } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import { StrokesField } from './strokes-field.ts';

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
  spacingsM: [16, 8, 4, 2],
  draws: 64,
  tolerance: 0.004,
  mostSweeps: 3,
};

/** How far from the best aim another is tried at the widest spacing; half of that at each finer one. Degrees. */
const ASIDE_DEG = 4.5;
/** Sweeps of a spacing between the widest and the finest: they only lead the way. */
const FEW_SWEEPS = 2;
/** Where a finer spacing follows one like this, it is left to that to come to rest, metres. */
const REFINED_FROM_M = 5;
/** Spacings below this only refine: their nodes look at what their coarser neighbours chose, and are valued in the end. Metres. */
const REFINING_BELOW_M = 4;
/**
 * So far from the line of play nodes are solved at the second spacing, at later ones, and at refining ones, metres: beyond, what
 * a coarser spacing found is good enough for the few shots that end there. At the widest spacing all are solved, those beyond
 * the first distance with fewer aims.
 */
export const SOLVED_WITHIN_M = { second: 60, later: 42, refining: 24 };

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
    const isLast = level === settings.spacingsM.length - 1;
    const refines = coarser !== null && spacingM < REFINING_BELOW_M;
    const field: StrokesField = new StrokesField(
      prepared.ground,
      prepared.pin,
      prepared.putts,
      spacingM,
      !refines,
    );
    // Odds need no finer spacing than choices.
    if (coarser !== null && refines) field.oddsFrom = coarser.oddsFrom ?? coarser;
    const solver = new LevelSolver(prepared, field, coarser, effortOf(settings, level, refines));
    const stage = `level ${level + 1} of ${settings.spacingsM.length}`;
    convergence.sweeps.push(yield* solver.run(stage));
    convergence.spacingsM.push(spacingM);
    const isLastSearch = isLast || settings.spacingsM[level + 1]! < REFINING_BELOW_M;
    // The last two are valued anew, so that the change between them is the refinement's and not chance.
    if (level >= settings.spacingsM.length - 2 || isLastSearch) yield* solver.revalue(stage);
    if (!refines && isLastSearch)
      yield* settleOdds(solver.evaluator, solver.statesForOdds(), solver.teeOdds(), stage);
    if (coarser !== null) {
      const change = changeBetween(coarser, field);
      convergence.rmsChange.push(change.rms);
      convergence.maxChange.push(change.max);
    }
    coarser = field;
  }
  if (coarser === null) throw new RangeError('Unexpected spacings: at least one is needed.');
  coarser.convergence = convergence;
  // Kept for its odds, a coarser field has no more need of them: a megabyte a hole, and holes are kept for long.
  if (coarser.oddsFrom !== null) coarser.oddsFrom.replicas = [];
  return coarser;
}

/** Coarser spacings only lead the way: fewer draws to choose by, and they need not come to rest. */
function effortOf(settings: SolveSettings, level: number, refines: boolean): LevelEffort {
  const left = settings.spacingsM.length - 1 - level;
  const spacingM = settings.spacingsM[level]!;
  // Choices have settled where a finer spacing follows.
  const isRefined = level > 0 && left > 0 && spacingM <= REFINED_FROM_M;
  return {
    choosingDraws: refines ? settings.draws / 4 : left === 0 ? settings.draws : settings.draws / 2,
    valuingDraws: level < 2 && left > 1 ? settings.draws / 2 : settings.draws,
    tolerance: left === 0 ? settings.tolerance : 2.5 * settings.tolerance,
    mostSweeps: refines || isRefined ? 1 : level > 0 && left > 0 ? FEW_SWEEPS : settings.mostSweeps,
    search: level === 0 ? 'everywhere' : refines ? 'refine' : isRefined ? 'near-hole' : 'nearby',
    firstDraws: level === 0 ? 4 : 8,
    asideDeg: ASIDE_DEG / 2 ** level,
    finalDraws: refines ? settings.draws : isRefined ? 2 * settings.draws : 4 * settings.draws,
    farBeyondM: level === 0 ? SOLVED_WITHIN_M.second : SOLVED_WITHIN_M.later,
    keepBeyondM: refines
      ? SOLVED_WITHIN_M.refining
      : level > 1
        ? SOLVED_WITHIN_M.later
        : level === 1
          ? SOLVED_WITHIN_M.second
          : Infinity,
  };
}

/** Runs a solution to its end, for callers that need not report. */
export function solveNow(prepared: PreparedHole, settings?: SolveSettings): StrokesField {
  const steps = solveStrokes(prepared, settings);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
