/** Where a node of the strokes-to-hole-out field looks for its choice, and what it finds. */

import { Lie } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { overLip } from './bunker-lip.ts';
import { type AimFan, fewWaysOut, neighbouringChoices, sensibleChoices } from './choices.ts';
import type { ChoiceEvaluator } from './evaluate.ts';
import { inheritedChoices, type KeptChoice, neighboursPlayOn, type NodeState } from './inherit.ts';
import type { Choice } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import type { StrokesField } from './strokes-field.ts';

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
   * one club up and down, and around that; near the hole, where a coarse neighbour says little, among all. `near-hole`: as
   * `nearby` near the hole, elsewhere only at what the coarser neighbours chose. `refine`: at that everywhere, and the value is
   * left to `valueAgain`.
   */
  readonly search: 'everywhere' | 'nearby' | 'near-hole' | 'refine';
  /** Around the best of a search one more aim is tried so far to either side, degrees. */
  readonly asideDeg: number;
  /** Shots a node on which settled choices are valued again, in as many groups as the field has replicas. */
  readonly finalDraws: number;
  /** Nodes farther from the line of play look only at what their coarser neighbours chose, or at fewer aims, metres. */
  readonly farBeyondM: number;
  /** Nodes farther from the line of play keep what the coarser spacing found, metres. */
  readonly keepBeyondM: number;
}

/** Aims of the wide search; around the best of them it looks more closely, and closer still at finer spacings. */
export const WIDE_FAN: AimFan = { halfAngleDeg: 54, stepDeg: 9 };
const TREES_FAN: AimFan = { halfAngleDeg: 180, stepDeg: 15 };
/** Far from the line of play the wide search tries one aim out of so many. */
const FAR_STEPS = 2;
/** Choices that a node keeps from its search for the sweeps that follow, and by how much they may look worse, strokes. */
export const KEPT_CHOICES = 3;
const KEPT_WITHIN = 0.08;
/** A neighbour's choice that costs more than this over what the place is thought to cost is not taken over, strokes. */
const AS_GOOD_AS_NEIGHBOURS = 0.4;
/** From so many draws on a search trusts the order of its choices. */
const SURE_DRAWS = 32;
/** With fewer choices than this clear of trees, those through trees count too. */
const FEWEST_OPEN = 12;
/** Within so many node spacings of the hole every part swing is tried: a coarse neighbour's chip says little. */
const NEAR_SPACINGS = 9;
const DEGREE = Math.PI / 180;

export class NodeSearch {
  constructor(
    private readonly prepared: PreparedHole,
    private readonly evaluator: ChoiceEvaluator,
    private readonly coarser: StrokesField | null,
    private readonly settings: LevelEffort,
  ) {}

  /** The best of what the node looks at, best first; empty where its coarser neighbours play no shot. */
  choicesAt(state: NodeState, draws: ShotDraws): KeptChoice[] {
    const { prepared, evaluator, coarser, settings } = this;
    const { field } = evaluator;
    const inTrees = state.lie === Lie.woods;
    const isNear = state.distance < NEAR_SPACINGS * field.spacingM && !state.isFar;
    const looksAround =
      settings.search === 'everywhere' ||
      (settings.search === 'nearby' && !state.isFar) ||
      (settings.search === 'near-hole' && isNear);
    const inherited =
      coarser === null || (isNear && looksAround)
        ? []
        : inheritedChoices(prepared, coarser, state, looksAround);
    const own = field.layers[state.layer]!.value[state.node]!;
    let candidates = inherited;
    if (!looksAround) {
      // All coarser neighbours dropped for a penalty or played again from the tee: so does this one.
      if (coarser !== null && !neighboursPlayOn(coarser, state)) return [];
      const best = evaluator.bestOf(state.spot, state.lie, inherited, draws, own, 1)[0];
      if (best !== undefined && best.value < own + AS_GOOD_AS_NEIGHBOURS) return [best];
      // A tree, a boundary or a bunker's lip in front of this node that was not in front of the others.
      candidates = [];
    }
    if (candidates.length === 0) candidates = this.wideChoices(state, inTrees);
    if (inTrees && inherited.length > 0) candidates.push(...fewWaysOut(prepared.book, state.spot, field.pin));
    // Every flight out of trees has to be walked along, and where a ball lies in them says little about the hole: half as many.
    const search = {
      sureDraws: SURE_DRAWS,
      firstDraws: inTrees ? settings.firstDraws / 2 : settings.firstDraws,
      mostDraws: inTrees ? draws.count / 2 : draws.count,
    };
    const followed = settings.search === 'everywhere' ? 2 : 1;
    const best = evaluator.bestOf(state.spot, state.lie, candidates, draws, own, followed, search);
    const aside = settings.asideDeg * DEGREE * (inTrees ? TREES_FAN.stepDeg / WIDE_FAN.stepDeg : 1);
    const clears = overLip(prepared.book, prepared.ground, state.spot, state.lie);
    const around = best.flatMap(({ choice }) =>
      neighbouringChoices(prepared.player, choice, aside).filter(clears),
    );
    const kept = evaluator.bestOf(state.spot, state.lie, around, draws, own, KEPT_CHOICES, search, best);
    const within = (kept[0]?.value ?? Infinity) + KEPT_WITHIN;
    return kept.filter((ranked) => ranked.value <= within).map(({ choice, value }) => ({ choice, value }));
  }

  /** Every sensible choice but those that trees are in the way of, unless hardly any other is left. */
  private wideChoices(state: NodeState, inTrees: boolean): Choice[] {
    const { book, ground } = this.prepared;
    const { spot, lie } = state;
    const { halfAngleDeg, stepDeg } = inTrees ? TREES_FAN : WIDE_FAN;
    const fan = { halfAngleDeg, stepDeg: state.isFar ? FAR_STEPS * stepDeg : stepDeg };
    const all = sensibleChoices(book, ground, spot, lie, this.evaluator.field.pin, fan);
    const { batch } = this.evaluator;
    const open = all.filter((choice) => {
      const law = book.lawOf(choice.spreadIndex, lie, choice.carryM);
      return law !== null && !batch.isBlocked(spot.x, spot.y, law, choice.bearing);
    });
    return open.length >= FEWEST_OPEN ? open : all;
  }
}
