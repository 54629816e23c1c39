/**
 * Solves strokes to hole out over a hole, from the hole outwards (value iteration with in-place sweeps, Bertsekas &
 * Tsitsiklis 1991 on stochastic shortest paths): V(state) = min over choices of the mean of 1 + penalties + V(next).
 *
 * Coarse to fine: on the widest spacing every sensible choice is tried at every node; each finer spacing starts
 * from the values and choices of the coarser one and tries those and their neighbours. The choice is made on one set of
 * draws and valued on another, so that picking the lowest of noisy means does not bias the value.
 */

import { Lie, type LieCode } from '../ground/lies.ts';
import { DrawPool, ShotDrawer, type ShotDraws } from '../random/shot-draws.ts';
import { aimSpot, neighbouringChoices, OPEN_FAN, sensibleChoices, TREES_FAN } from './choices.ts';
import { ChoiceEvaluator } from './evaluate.ts';
import type { Choice, Convergence, SolveProgress, Spot } from './model.ts';
import { settleOdds } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import { unplayableRelief } from './relief.ts';
import { LAYER_LIES, NO_ACTION, RELIEF_ACTION, StrokesField, type FieldLayer } from './strokes-field.ts';

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

/** Nodes worked on between two progress reports. */
const NODES_PER_STEP = 48;
/** Choices that a node keeps from the wide search for the sweeps that follow. */
const KEPT_CHOICES = 3;
/** Sets of draws that the nodes of a spacing share out among themselves. */
const POOL_SIZE = 128;
/** Beyond this many node spacings from the line of play a node keeps what the coarser spacing found. */
const KEPT_BEYOND_SPACINGS = 10;
/** Labels of the two independent sets of draws at a node. */
const CHOOSING = 1;
const VALUING = 2;
const TEE = 7;

/** One node of one layer, and what it may do. */
interface NodeState {
  readonly layer: number;
  readonly node: number;
  readonly spot: Spot;
  readonly lie: LieCode;
  readonly distance: number;
  /** Far from the line of play: keeps what the coarser spacing found. */
  readonly isKept: boolean;
  choices: Choice[];
}

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
    const field: StrokesField = new StrokesField(prepared.ground, prepared.pin, prepared.putting, spacingM);
    // Coarser spacings only lead the way: half the draws, and they need not come to rest.
    const isLast = level === settings.spacingsM.length - 1;
    const effort = isLast
      ? settings
      : { ...settings, draws: settings.draws / 2, mostSweeps: Math.min(6, settings.mostSweeps) };
    const solver = new LevelSolver(prepared, field, effort, coarser);
    const stage = `level ${level + 1} of ${settings.spacingsM.length}`;
    convergence.sweeps.push(yield* solver.run(stage));
    convergence.spacingsM.push(spacingM);
    if (coarser !== null) {
      const change = changeBetween(coarser, field);
      convergence.rmsChange.push(change.rms);
      convergence.maxChange.push(change.max);
    }
    if (level === settings.spacingsM.length - 1)
      yield* settleOdds(solver.evaluator, solver.statesForOdds(), stage);
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

class LevelSolver {
  readonly evaluator: ChoiceEvaluator;
  private readonly choosing: DrawPool;
  private readonly valuing: DrawPool;
  private readonly states: NodeState[];
  private readonly teeDraws: ShotDraws;
  private teeChoices: Choice[] = [];
  private replayCost = Infinity;

  constructor(
    private readonly prepared: PreparedHole,
    private readonly field: StrokesField,
    private readonly settings: SolveSettings,
    private readonly coarser: StrokesField | null,
  ) {
    this.evaluator = new ChoiceEvaluator(field, prepared.book);
    this.choosing = new DrawPool(prepared.key, settings.draws, POOL_SIZE, CHOOSING);
    this.valuing = new DrawPool(prepared.key, settings.draws, POOL_SIZE, VALUING);
    this.teeDraws = new ShotDrawer(settings.draws).redraw(prepared.key, 0, TEE);
    const keptBeyond = coarser === null ? Infinity : KEPT_BEYOND_SPACINGS * field.spacingM;
    this.states = LAYER_LIES.flatMap((lie, layer) =>
      Array.from(field.neededNodes(layer), (node): NodeState => {
        const spot = { x: field.nodeX(node), y: field.nodeY(node) };
        const distance = Math.hypot(spot.x - field.pin.x, spot.y - field.pin.y);
        const isKept = distanceToLine(prepared.playLine, spot) > keptBeyond;
        return { layer, node, spot, lie, distance, isKept, choices: [] };
      }),
    ).sort((a, b) => a.distance - b.distance || a.layer - b.layer || a.node - b.node);
  }

  /** Solves this spacing; returns the number of sweeps. */
  *run(stage: string): Generator<SolveProgress, number, void> {
    const { states, settings } = this;
    this.startValues();
    // Sweep 1 chooses among everything; later sweeps among what was kept, until the values rest.
    let sweep = 0;
    for (;;) {
      let largest = 0;
      this.evaluator.relief.forget();
      for (const [i, state] of states.entries()) {
        if (i % NODES_PER_STEP === 0)
          yield { stage: `${stage}, sweep ${sweep + 1}`, done: i, total: states.length };
        if (state.isKept) continue;
        if (sweep === 0) state.choices = this.firstChoices(state);
        largest = Math.max(largest, this.improve(state, sweep));
      }
      this.replayCost = 1 + this.valueOfTee(sweep);
      sweep++;
      if (largest < settings.tolerance || sweep >= settings.mostSweeps) return sweep;
    }
  }

  statesForOdds(): {
    readonly layer: number;
    readonly node: number;
    readonly spot: Spot;
    readonly lie: LieCode;
    draws: () => ShotDraws;
  }[] {
    return this.states.map((state) => ({ ...state, draws: () => this.drawsOf(this.valuing, state) }));
  }

  /** Expected strokes from the tee with the values so far. */
  private valueOfTee(sweep: number): number {
    const { prepared, evaluator } = this;
    const choosing = this.teeDraws;
    if (sweep === 0) {
      const all = sensibleChoices(
        prepared.book,
        prepared.ground,
        prepared.tee,
        Lie.tee,
        prepared.pin,
        OPEN_FAN,
      );
      this.teeChoices = evaluator
        .bestOf(prepared.tee, Lie.tee, all, choosing, NaN, KEPT_CHOICES)
        .map((ranked) => ranked.choice);
    }
    const best = evaluator.bestOf(prepared.tee, Lie.tee, this.teeChoices, choosing, NaN, 1)[0];
    return best === undefined ? Infinity : best.value;
  }

  private drawsOf(pool: DrawPool, state: NodeState): ShotDraws {
    // Labelled by place, not by order: the same node draws the same shots whatever else is solved.
    return pool.drawsOf(state.node, state.layer);
  }

  /** First guess: the coarser field, or a plain count of the longest shots plus an approach and two putts. */
  private startValues(): void {
    const { coarser } = this;
    const longest = Math.max(...this.prepared.player.spreads.map((spread) => spread.carryMean));
    for (const state of this.states) {
      const guess = 2.8 + (1.3 * state.distance) / longest;
      const known = coarser === null ? NaN : coarser.valueAt(state.spot.x, state.spot.y, state.lie);
      const layer = this.field.layers[state.layer]!;
      layer.value[state.node] = Number.isNaN(known) ? guess : known;
      if (coarser !== null && state.isKept) copyAction(coarser, state, layer);
    }
  }

  private firstChoices(state: NodeState): Choice[] {
    const { prepared, evaluator, coarser } = this;
    const draws = this.drawsOf(this.choosing, state);
    const inTrees = LAYER_LIES[state.layer] === LAYER_LIES[4];
    let candidates: Choice[];
    if (coarser === null || state.distance < NEAR_GREEN_M) {
      candidates = sensibleChoices(
        prepared.book,
        prepared.ground,
        state.spot,
        state.lie,
        this.field.pin,
        inTrees ? TREES_FAN : OPEN_FAN,
      );
    } else {
      candidates = inheritedChoices(prepared, coarser, state);
      if (candidates.length === 0) {
        candidates = sensibleChoices(
          prepared.book,
          prepared.ground,
          state.spot,
          state.lie,
          this.field.pin,
          inTrees ? TREES_FAN : OPEN_FAN,
        );
      }
    }
    const own = this.field.layers[state.layer]!.value[state.node]!;
    const best = evaluator
      .bestOf(state.spot, state.lie, candidates, draws, own, 2, KEPT_CHOICES)
      .map((ranked) => ranked.choice);
    // A finer look around the best, half the fan's step to either side.
    const step = ((inTrees ? TREES_FAN : OPEN_FAN).stepDeg * Math.PI) / 360;
    const around = best.flatMap((choice) => [choice, ...neighbouringChoices(prepared.player, choice, step)]);
    const kept = evaluator.bestOf(state.spot, state.lie, [...around], draws, own, KEPT_CHOICES, KEPT_CHOICES);
    return kept.map((ranked) => ranked.choice);
  }

  /** Chooses the best of the kept choices (and relief), values it on fresh draws, stores it; returns the change. */
  private improve(state: NodeState, sweep: number): number {
    const { evaluator, field } = this;
    const layer = field.layers[state.layer]!;
    const before = layer.value[state.node]!;
    let choice = state.choices[0];
    // Choices settle over the first sweeps; after that only values move, so that the sweeps come to rest.
    if (sweep > 0 && sweep < CHOOSING_SWEEPS && state.choices.length > 1) {
      const draws = this.drawsOf(this.choosing, state);
      let least = Infinity;
      for (const candidate of state.choices) {
        const value = evaluator.valueOf(state.spot, state.lie, candidate, draws, before);
        if (value < least) {
          least = value;
          choice = candidate;
        }
      }
      if (choice !== undefined)
        state.choices = [choice, ...state.choices.filter((other) => other !== choice)];
    }
    let value = Infinity;
    if (choice !== undefined) {
      value = evaluator.valueOf(state.spot, state.lie, choice, this.drawsOf(this.valuing, state), before);
    }
    layer.spreadIndex[state.node] = choice === undefined ? NO_ACTION : choice.spreadIndex;
    if (choice !== undefined) {
      const aim = aimSpot(state.spot, choice);
      layer.aimX[state.node] = aim.x;
      layer.aimY[state.node] = aim.y;
    }
    if (MAY_BE_UNPLAYABLE[state.layer] === true) {
      const drop = unplayableRelief(field, state.spot, state.lie);
      if (drop.total < value) {
        value = drop.total;
        layer.spreadIndex[state.node] = RELIEF_ACTION;
        layer.aimX[state.node] = drop.x;
        layer.aimY[state.node] = drop.y;
      }
    }
    // Stroke and distance is open to every ball (Rules of Golf 18.1). Where it was last played from is not part of the state;
    // the tee stands for it, which asks at least as much as any usual spot, so this only bounds hopeless places.
    value = Math.min(value === Infinity ? before : value, this.replayCost);
    layer.value[state.node] = value;
    return Math.abs(value - before);
  }
}

const CHOOSING_SWEEPS = 2;
/** Within this distance every part swing is tried at every spacing, metres: a coarse neighbour's chip says little. */
const NEAR_GREEN_M = 45;
/** Fairway lies are never better left by a penalty stroke; the others (long rough, bunker, woods) may be. */
const MAY_BE_UNPLAYABLE: readonly boolean[] = [false, false, true, true, true];

/** Choices of the coarser nodes around, aimed at the same points from here, and one club up and down. */
function inheritedChoices(prepared: PreparedHole, coarser: StrokesField, state: NodeState): Choice[] {
  const { ground } = coarser;
  const layer = coarser.layers[state.layer]!;
  const column = Math.min(
    coarser.columns - 2,
    Math.max(0, Math.floor((state.spot.x - ground.west) / coarser.spacingM)),
  );
  const row = Math.min(
    coarser.rows - 2,
    Math.max(0, Math.floor((state.spot.y - ground.south) / coarser.spacingM)),
  );
  const choices: Choice[] = [];
  const add = (spreadIndex: number, bearing: number, carryM: number): void => {
    const spread = prepared.player.spreads[spreadIndex];
    if (spread === undefined) return;
    const wanted = spread.swing === 'part' ? Math.min(carryM, spread.carryMean) : spread.carryMean;
    const known = choices.some(
      (c) =>
        c.spreadIndex === spreadIndex &&
        Math.abs(c.bearing - bearing) < 0.01 &&
        Math.abs(c.carryM - wanted) < 1,
    );
    if (!known) choices.push({ spreadIndex, bearing, carryM: wanted });
  };
  for (let corner = 0; corner < 4; corner++) {
    const node = (row + (corner >> 1)) * coarser.columns + column + (corner & 1);
    const spreadIndex = layer.spreadIndex[node]!;
    if (spreadIndex < 0 || Number.isNaN(layer.value[node]!)) continue;
    const dx = layer.aimX[node]! - state.spot.x;
    const dy = layer.aimY[node]! - state.spot.y;
    const bearing = Math.atan2(dx, dy);
    add(spreadIndex, bearing, Math.hypot(dx, dy));
    add(spreadIndex - 1, bearing, Math.hypot(dx, dy));
    add(spreadIndex + 1, bearing, Math.hypot(dx, dy));
  }
  return choices;
}

/** Takes over the action of the nearest known node of the coarser spacing, for the odds and for playing on from there. */
function copyAction(coarser: StrokesField, state: NodeState, into: FieldLayer): void {
  const layer = coarser.layers[state.layer]!;
  const column = Math.min(
    coarser.columns - 2,
    Math.floor((state.spot.x - coarser.ground.west) / coarser.spacingM),
  );
  const row = Math.min(
    coarser.rows - 2,
    Math.floor((state.spot.y - coarser.ground.south) / coarser.spacingM),
  );
  let nearest = Infinity;
  for (let corner = 0; corner < 4; corner++) {
    const node = (row + (corner >> 1)) * coarser.columns + column + (corner & 1);
    const away = Math.hypot(coarser.nodeX(node) - state.spot.x, coarser.nodeY(node) - state.spot.y);
    if (Number.isNaN(layer.value[node]!) || away >= nearest) continue;
    nearest = away;
    into.spreadIndex[state.node] = layer.spreadIndex[node]!;
    into.aimX[state.node] = layer.aimX[node]!;
    into.aimY[state.node] = layer.aimY[node]!;
  }
}

/** Metres from the point to the nearest of the line's segments. */
function distanceToLine(line: readonly Spot[], spot: Spot): number {
  let nearest = Infinity;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1]!;
    const b = line[i]!;
    const along =
      ((spot.x - a.x) * (b.x - a.x) + (spot.y - a.y) * (b.y - a.y)) /
      ((b.x - a.x) ** 2 + (b.y - a.y) ** 2 || 1);
    const t = Math.min(1, Math.max(0, along));
    nearest = Math.min(nearest, Math.hypot(a.x + t * (b.x - a.x) - spot.x, a.y + t * (b.y - a.y) - spot.y));
  }
  return nearest;
}

/** Root mean square and largest change at the coarser field's nodes. */
function changeBetween(
  coarser: StrokesField,
  finer: StrokesField,
): { readonly rms: number; readonly max: number } {
  let squares = 0;
  let count = 0;
  let max = 0;
  coarser.layers.forEach((layer, index) => {
    layer.value.forEach((value, node) => {
      if (Number.isNaN(value)) return;
      const refined = finer.valueAt(coarser.nodeX(node), coarser.nodeY(node), LAYER_LIES[index]!);
      if (Number.isNaN(refined)) return;
      squares += (refined - value) ** 2;
      count++;
      max = Math.max(max, Math.abs(refined - value));
    });
  });
  return { rms: count === 0 ? 0 : Math.sqrt(squares / count), max };
}
