/** What the solved field would do with a ball at rest: the choice of the nearest node, re-aimed from where the ball lies. */

import { Lie, type LieCode } from '../ground/lies.ts';
import { ShotDrawer } from '../random/shot-draws.ts';
import { OPEN_FAN, sensibleChoices, TREES_FAN } from '../plan/choices.ts';
import type { ChoiceEvaluator } from '../plan/evaluate.ts';
import { choiceTo } from '../plan/finish.ts';
import type { Choice, Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { unplayableRelief } from '../plan/relief.ts';
import { layerOfLie, RELIEF_ACTION, type StrokesField } from '../plan/strokes-field.ts';

/** What may be done with a ball: a swing, a putt, or a drop under penalty. */
export type Decision =
  | { readonly kind: 'swing'; readonly choice: Choice }
  | { readonly kind: 'putt' }
  | { readonly kind: 'drop'; readonly to: Spot; readonly lie: LieCode; readonly penalty: number };

/** Draws for the rare spot whose node knows no choice. */
const SEARCH_DRAWS = 32;
const SEARCHING = 11;

export class OwnPolicy {
  private readonly drawer = new ShotDrawer(SEARCH_DRAWS);

  constructor(
    private readonly prepared: PreparedHole,
    private readonly evaluator: ChoiceEvaluator,
  ) {}

  /** For a ball that may be played as it lies; on the green that is a putt. */
  decide(spot: Spot, lie: LieCode): Decision {
    if (lie === Lie.green) return { kind: 'putt' };
    const { field } = this.evaluator;
    const node = nearestNode(field, spot, lie);
    if (node !== null) {
      const layer = field.layers[layerOfLie(lie)]!;
      const action = layer.spreadIndex[node]!;
      if (action === RELIEF_ACTION) {
        const drop = unplayableRelief(field, spot, lie);
        if (drop.total !== Infinity)
          return {
            kind: 'drop',
            to: { x: drop.x, y: drop.y },
            lie: drop.lie as LieCode,
            penalty: drop.penalty,
          };
      }
      if (this.prepared.player.spreads[action] !== undefined) {
        const finish = { x: layer.aimX[node]!, y: layer.aimY[node]! };
        const { book } = this.evaluator;
        const choice = choiceTo(book, spot, lie, action, finish);
        if (book.lawOf(action, lie, choice.carryM) !== null) return { kind: 'swing', choice };
      }
    }
    return this.search(spot, lie);
  }

  private search(spot: Spot, lie: LieCode): Decision {
    const { prepared, evaluator } = this;
    const fan = lie === Lie.woods ? TREES_FAN : OPEN_FAN;
    const choices = sensibleChoices(prepared.book, prepared.ground, spot, lie, prepared.pin, fan);
    const draws = this.drawer.redraw(prepared.key, SEARCHING);
    const own = evaluator.field.valueAt(spot.x, spot.y, lie);
    const best = evaluator.bestOf(spot, lie, choices, draws, own, 1)[0];
    if (best !== undefined) return { kind: 'swing', choice: best.choice };
    const drop = unplayableRelief(evaluator.field, spot, lie);
    if (drop.total === Infinity)
      throw new RangeError(
        `Unexpected ball: nothing can be played from lie ${lie} at (${spot.x}, ${spot.y}).`,
      );
    return { kind: 'drop', to: { x: drop.x, y: drop.y }, lie: drop.lie as LieCode, penalty: drop.penalty };
  }
}

/** The nearest of the four nodes around that has a value for this lie. */
function nearestNode(field: StrokesField, spot: Spot, lie: LieCode): number | null {
  const layer = field.layers[layerOfLie(lie)];
  if (layer === undefined) return null;
  const column = clamp(Math.floor((spot.x - field.ground.west) / field.spacingM), 0, field.columns - 2);
  const row = clamp(Math.floor((spot.y - field.ground.south) / field.spacingM), 0, field.rows - 2);
  let found: number | null = null;
  let nearest = Infinity;
  for (let corner = 0; corner < 4; corner++) {
    const node = (row + (corner >> 1)) * field.columns + column + (corner & 1);
    if (Number.isNaN(layer.value[node]!)) continue;
    const away = Math.hypot(field.nodeX(node) - spot.x, field.nodeY(node) - spot.y);
    if (away < nearest) [nearest, found] = [away, node];
  }
  return found;
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
