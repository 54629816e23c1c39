/** Solves one spacing of the strokes-to-hole-out field; see `solve.ts` for the whole. */

import { Lie, type LieCode } from '../ground/lies.ts';
import { DrawPool, ShotDrawer, type ShotDraws } from '../random/shot-draws.ts';
import { sensibleChoices } from './choices.ts';
import { ChoiceEvaluator } from './evaluate.ts';
import { finishOf } from './finish.ts';
import { copyAction, distanceToLine, type NodeState } from './inherit.ts';
import type { Choice, SolveProgress } from './model.ts';
import { KEPT_CHOICES, type LevelEffort, NodeSearch, WIDE_FAN } from './node-search.ts';
import { addChoiceOdds, type OddsState } from './odds.ts';
import type { PreparedHole } from './prepare.ts';
import { type ReliefSpot, unplayableRelief } from './relief.ts';
import {
  LAYER_LIES,
  NO_ACTION,
  RELIEF_ACTION,
  REPLAY_ACTION,
  SCORE_COLUMNS,
  type StrokesField,
} from './strokes-field.ts';
import { valueAgain } from './value-again.ts';

/** Nodes worked on between two progress reports. */
const NODES_PER_STEP = 24;
/** Sets of draws that the nodes of a spacing share out among themselves. */
const POOL_SIZE = 64;
/** Labels of the two independent sets of draws at a node. */
const CHOOSING = 1;
const VALUING = 2;
const TEE = 7;
const CHOOSING_SWEEPS = 2;
/** Fairway lies are never better left by a penalty stroke; the others (long rough, bunker, woods) may be. */
const MAY_BE_UNPLAYABLE: readonly boolean[] = [false, false, true, true, true];

export class LevelSolver {
  readonly evaluator: ChoiceEvaluator;
  private readonly search: NodeSearch;
  private readonly choosing: DrawPool;
  private readonly valuing: DrawPool;
  /** From the hole outwards; nodes that keep what the coarser spacing found are not among them. */
  private readonly states: NodeState[];
  private readonly teeDraws: ShotDraws;
  private teeChoices: Choice[] = [];
  private replayCost = Infinity;

  constructor(
    private readonly prepared: PreparedHole,
    private readonly field: StrokesField,
    private readonly coarser: StrokesField | null,
    private readonly settings: LevelEffort,
  ) {
    this.evaluator = new ChoiceEvaluator(field, prepared.book);
    this.search = new NodeSearch(prepared, this.evaluator, coarser, settings);
    this.choosing = new DrawPool(prepared.key, settings.choosingDraws, POOL_SIZE, CHOOSING);
    this.valuing = new DrawPool(prepared.key, settings.valuingDraws, POOL_SIZE, VALUING);
    this.teeDraws = new ShotDrawer(settings.valuingDraws).redraw(prepared.key, 0, TEE);
    this.states = LAYER_LIES.flatMap((lie, layer) => this.statesOf(lie, layer)).sort(
      (a, b) => a.distance - b.distance || a.layer - b.layer || a.node - b.node,
    );
  }

  /** Makes the layer's states and gives all its nodes a first value. */
  private statesOf(lie: LieCode, layerIndex: number): NodeState[] {
    const { prepared, field, coarser, settings } = this;
    const layer = field.layers[layerIndex]!;
    const states: NodeState[] = [];
    // A plain count: the longest shots plus an approach and two putts.
    const longest = Math.max(...prepared.player.spreads.map((spread) => spread.carryMean));
    for (const node of field.neededNodes(layerIndex)) {
      const spot = { x: field.nodeX(node), y: field.nodeY(node) };
      const distance = Math.hypot(spot.x - field.pin.x, spot.y - field.pin.y);
      const known = coarser === null ? NaN : coarser.valueAt(spot.x, spot.y, lie);
      layer.value[node] = Number.isNaN(known) ? 2.8 + (1.3 * distance) / longest : known;
      const aside = distanceToLine(prepared.playLine, spot);
      if (coarser !== null && aside > settings.keepBeyondM)
        copyAction(coarser, layerIndex, spot, layer, node);
      else
        states.push({
          layer: layerIndex,
          node,
          spot,
          lie,
          distance,
          isFar: aside > settings.farBeyondM,
          choices: [],
        });
    }
    return states;
  }

  /** Solves this spacing; returns the number of sweeps. */
  *run(stage: string): Generator<SolveProgress, number, void> {
    const { states, settings } = this;
    // Sweep 1 chooses among everything; later sweeps among what was kept, until the values rest.
    let sweep = 0;
    for (;;) {
      let largest = 0;
      this.evaluator.relief.forget();
      for (const [i, state] of states.entries()) {
        if (i % NODES_PER_STEP === 0)
          yield { stage: `${stage}, sweep ${sweep + 1}`, done: i, total: states.length };
        if (sweep === 0) state.choices = this.search.choicesAt(state, this.drawsOf(this.choosing, state));
        largest = Math.max(largest, this.improve(state, sweep));
      }
      this.replayCost = 1 + this.valueOfTee(sweep);
      sweep++;
      if (largest < settings.tolerance || sweep >= settings.mostSweeps) return sweep;
    }
  }

  /** Nodes that are kept are not among them: their guess has the right mean. */
  statesForOdds(): OddsState[] {
    return this.states.map((state) => ({ ...state, draws: () => this.drawsOf(this.valuing, state) }));
  }

  /** Odds of each score from the tee by the odds settled so far. */
  teeOdds(): () => Float64Array {
    return () => {
      const odds = new Float64Array(SCORE_COLUMNS);
      const [choice] = this.teeChoices;
      if (choice !== undefined) {
        addChoiceOdds(
          this.evaluator,
          this.prepared.tee,
          Lie.tee,
          choice,
          this.teeDraws,
          this.replayCost - 1,
          odds,
        );
      }
      return odds;
    };
  }

  /** Values the settled choices anew, see `valueAgain`. */
  *revalue(stage: string): Generator<SolveProgress, void, void> {
    const { prepared, evaluator, coarser, states, settings, replayCost } = this;
    const smooths = settings.search === 'refine';
    yield* valueAgain(prepared, evaluator, coarser, states, settings.finalDraws, replayCost, smooths, stage);
  }

  /** Expected strokes from the tee with the values so far. */
  private valueOfTee(sweep: number): number {
    const { prepared, evaluator } = this;
    const choosing = this.teeDraws;
    const own = this.replayCost - 1;
    if (sweep === 0) {
      const all = sensibleChoices(
        prepared.book,
        prepared.ground,
        prepared.tee,
        Lie.tee,
        prepared.pin,
        WIDE_FAN,
      );
      this.teeChoices = evaluator
        .bestOf(prepared.tee, Lie.tee, all, choosing, own, KEPT_CHOICES)
        .map((ranked) => ranked.choice);
    }
    const ranked = evaluator.bestOf(prepared.tee, Lie.tee, this.teeChoices, choosing, own, KEPT_CHOICES);
    this.teeChoices = ranked.map((entry) => entry.choice);
    const best = ranked[0];
    return best === undefined ? Infinity : best.value;
  }

  private drawsOf(pool: DrawPool, state: NodeState): ShotDraws {
    // Labelled by place, not by order: the same node draws the same shots whatever else is solved.
    return pool.drawsOf(state.node, state.layer);
  }

  /** A drop that stands for the same node again would be taken there once more, and for ever. */
  private isAtNode({ spot, lie }: NodeState, drop: ReliefSpot): boolean {
    const half = this.field.spacingM / 2;
    return drop.lie === lie && Math.abs(drop.x - spot.x) <= half && Math.abs(drop.y - spot.y) <= half;
  }

  /** Chooses the best of the kept choices (and relief), values it on fresh draws, stores it; returns the change. */
  private improve(state: NodeState, sweep: number): number {
    const { evaluator, field } = this;
    const layer = field.layers[state.layer]!;
    const before = layer.value[state.node]!;
    let choice = state.choices[0]?.choice;
    let value = Infinity;
    // Choices settle over the first sweeps; after that only values move, so that the sweeps come to rest.
    if (sweep > 0 && sweep < CHOOSING_SWEEPS && state.choices.length > 1) {
      // Both sets serve here: the bias that brings is gone when the settled choices are valued anew in the end.
      const draws = this.drawsOf(this.choosing, state);
      const more = this.drawsOf(this.valuing, state);
      let least = Infinity;
      for (const kept of state.choices) {
        const seen =
          this.coarser !== null
            ? kept.value
            : evaluator.valueOf(state.spot, state.lie, kept.choice, draws, before);
        const valued = evaluator.valueOf(state.spot, state.lie, kept.choice, more, before);
        if (seen + valued < least) {
          least = seen + valued;
          choice = kept.choice;
          value = valued;
        }
      }
      state.choices = state.choices.filter((kept) => kept.choice === choice);
    } else if (choice !== undefined && this.settings.search === 'refine') {
      value = state.choices[0]!.value;
    } else if (choice !== undefined) {
      value = evaluator.valueOf(state.spot, state.lie, choice, this.drawsOf(this.valuing, state), before);
    }
    layer.spreadIndex[state.node] = choice === undefined ? NO_ACTION : choice.spreadIndex;
    if (choice !== undefined) {
      const aim = finishOf(this.prepared.book, state.spot, state.lie, choice);
      layer.aimX[state.node] = aim.x;
      layer.aimY[state.node] = aim.y;
    }
    if (MAY_BE_UNPLAYABLE[state.layer] === true) {
      const drop = unplayableRelief(field, state.spot, state.lie);
      if (drop.total < value && !this.isAtNode(state, drop)) {
        value = drop.total;
        layer.spreadIndex[state.node] = RELIEF_ACTION;
        layer.aimX[state.node] = drop.x;
        layer.aimY[state.node] = drop.y;
      }
    }
    // Stroke and distance is open to every ball (Rules of Golf 18.1). Where it was last played from is not part of the state;
    // the tee stands for it, which asks at least as much as any usual spot, so this only bounds hopeless places.
    if (this.replayCost <= value && this.replayCost < Infinity) {
      value = this.replayCost;
      layer.spreadIndex[state.node] = REPLAY_ACTION;
      layer.aimX[state.node] = this.prepared.tee.x;
      layer.aimY[state.node] = this.prepared.tee.y;
    }
    // No shot from here: its coarser neighbours dropped or played again from the tee, or nothing clears a lip.
    if (layer.spreadIndex[state.node] === NO_ACTION && this.coarser !== null)
      copyAction(this.coarser, state.layer, state.spot, layer, state.node);
    // Before the tee has been valued once, a place without a finite choice keeps its first guess for that sweep.
    if (value === Infinity) value = before;
    layer.value[state.node] = value;
    return Math.abs(value - before);
  }
}
