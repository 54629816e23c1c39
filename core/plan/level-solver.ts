/** Solves one spacing of the strokes-to-hole-out field; see `solve.ts` for the whole. */

import { Lie, type LieCode } from '../ground/lies.ts';
import { DrawPool, ShotDrawer, type ShotDraws } from '../random/shot-draws.ts';
import { overLip } from './bunker-lip.ts';
import { type AimFan, fewWaysOut, neighbouringChoices, sensibleChoices } from './choices.ts';
import { ChoiceEvaluator } from './evaluate.ts';
import { finishOf } from './finish.ts';
import { copyAction, distanceToLine, inheritedChoices, type KeptChoice, type NodeState } from './inherit.ts';
import type { Choice, SolveProgress } from './model.ts';
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

/** Effort spent on one spacing; see `SolveSettings`. */
export interface LevelEffort {
  readonly choosingDraws: number;
  readonly valuingDraws: number;
  readonly tolerance: number;
  readonly mostSweeps: number;
  /** Draws on which a node's search begins. */
  readonly firstDraws: number;
  /**
   * Where a node looks for its choice. `everywhere`: among all that is sensible. `nearby`: at what its coarser neighbours chose,
   * one club up and down, and around that; near the hole, where a coarse neighbour says little, among all. `refine`: at what
   * the coarser neighbours chose, and the value is left to `valueAgain`.
   */
  readonly search: 'everywhere' | 'nearby' | 'refine';
  /** Around the best of a search one more aim is tried so far to either side, degrees. */
  readonly asideDeg: number;
  /** Shots a node on which settled choices are valued again, in as many groups as the field has replicas. */
  readonly finalDraws: number;
  /** Nodes farther from the line of play keep what the coarser spacing found, metres. */
  readonly keepBeyondM: number;
}

/** Nodes worked on between two progress reports. */
const NODES_PER_STEP = 48;
/** Choices that a node keeps from the wide search for the sweeps that follow, and by how much they may look worse, strokes. */
const KEPT_CHOICES = 3;
/** A neighbour's choice that costs more than this over what the place is thought to cost is not taken over, strokes. */
const AS_GOOD_AS_NEIGHBOURS = 0.4;
const KEPT_WITHIN = 0.08;
/** Aims of the wide search; around the best of them it looks more closely, and closer still at finer spacings. */
const OPEN_FAN: AimFan = { halfAngleDeg: 54, stepDeg: 9 };
const TREES_FAN: AimFan = { halfAngleDeg: 180, stepDeg: 15 };
/** Sets of draws that the nodes of a spacing share out among themselves. */
const POOL_SIZE = 64;
/** From so many draws on a node's search trusts the order of its choices. */
const SURE_DRAWS = 32;
/** Labels of the two independent sets of draws at a node. */
const CHOOSING = 1;
const VALUING = 2;
const TEE = 7;
const CHOOSING_SWEEPS = 2;
/** With fewer choices than this clear of trees, those through trees count too. */
const FEWEST_OPEN = 12;
const DEGREE = Math.PI / 180;
/** Farther from the line of play than this a node looks only at what its coarser neighbours chose, metres. */
const FAR_M = 55;
/** Within so many node spacings of the hole every part swing is tried: a coarse neighbour's chip says little. */
const NEAR_SPACINGS = 9;
/** Fairway lies are never better left by a penalty stroke; the others (long rough, bunker, woods) may be. */
const MAY_BE_UNPLAYABLE: readonly boolean[] = [false, false, true, true, true];

export class LevelSolver {
  readonly evaluator: ChoiceEvaluator;
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
      const aside = coarser === null ? 0 : distanceToLine(prepared.playLine, spot);
      if (coarser !== null && aside > settings.keepBeyondM)
        copyAction(coarser, layerIndex, spot, layer, node);
      else states.push({ layer: layerIndex, node, spot, lie, distance, isFar: aside > FAR_M, choices: [] });
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
        if (sweep === 0) state.choices = this.firstChoices(state);
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
        OPEN_FAN,
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

  private firstChoices(state: NodeState): KeptChoice[] {
    const { prepared, evaluator, coarser, settings } = this;
    const inTrees = state.lie === Lie.woods;
    const onlyNeighbours = settings.search === 'refine' || state.isFar;
    const isNear = !onlyNeighbours && state.distance < NEAR_SPACINGS * this.field.spacingM;
    const inherited =
      coarser === null || isNear ? [] : inheritedChoices(prepared, coarser, state, !onlyNeighbours);
    const draws = this.drawsOf(this.choosing, state);
    const own = this.field.layers[state.layer]!.value[state.node]!;
    let candidates = inherited;
    if (onlyNeighbours && inherited.length > 0) {
      const best = evaluator.bestOf(state.spot, state.lie, inherited, draws, own, 1)[0];
      if (best !== undefined && best.value < own + AS_GOOD_AS_NEIGHBOURS) return [best];
      // A tree or a boundary in front of this node that was not in front of the others.
      candidates = [];
    }
    if (candidates.length === 0) candidates = this.wideChoices(state, inTrees);
    if (inTrees && inherited.length > 0)
      candidates.push(...fewWaysOut(prepared.book, state.spot, this.field.pin));
    // Every flight out of trees has to be walked along, and where a ball lies in them says little about the hole: half as many.
    const search = {
      sureDraws: SURE_DRAWS,
      firstDraws: inTrees ? settings.firstDraws / 2 : settings.firstDraws,
      mostDraws: inTrees ? draws.count / 2 : draws.count,
    };
    const best = evaluator
      .bestOf(state.spot, state.lie, candidates, draws, own, settings.search === 'everywhere' ? 2 : 1, search)
      .map((ranked) => ranked.choice);
    const aside = settings.asideDeg * DEGREE * (inTrees ? TREES_FAN.stepDeg / OPEN_FAN.stepDeg : 1);
    const clears = overLip(prepared.book, prepared.ground, state.spot, state.lie);
    const around = best.flatMap((choice) => [
      choice,
      ...neighbouringChoices(prepared.player, choice, aside).filter(clears),
    ]);
    const kept = evaluator.bestOf(state.spot, state.lie, around, draws, own, KEPT_CHOICES, search);
    const within = (kept[0]?.value ?? Infinity) + KEPT_WITHIN;
    return kept.filter((ranked) => ranked.value <= within).map(({ choice, value }) => ({ choice, value }));
  }

  /** A drop that stands for the same node again would be taken there once more, and for ever. */
  private isAtNode({ spot, lie }: NodeState, drop: ReliefSpot): boolean {
    const half = this.field.spacingM / 2;
    return drop.lie === lie && Math.abs(drop.x - spot.x) <= half && Math.abs(drop.y - spot.y) <= half;
  }

  /** Every sensible choice but those that trees are in the way of, unless hardly any other is left. */
  private wideChoices(state: NodeState, inTrees: boolean): Choice[] {
    const { book, ground } = this.prepared;
    const { spot, lie } = state;
    const fan = inTrees ? TREES_FAN : OPEN_FAN;
    const all = sensibleChoices(book, ground, spot, lie, this.field.pin, fan);
    const { batch } = this.evaluator;
    const open = all.filter((choice) => {
      const law = book.lawOf(choice.spreadIndex, lie, choice.carryM);
      return law !== null && !batch.isBlocked(spot.x, spot.y, law, choice.bearing);
    });
    return open.length >= FEWEST_OPEN ? open : all;
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
    // Before the tee has been valued once, a place without a finite choice keeps its first guess for that sweep.
    if (value === Infinity) value = before;
    layer.value[state.node] = value;
    return Math.abs(value - before);
  }
}
