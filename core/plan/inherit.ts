/** What a finer spacing takes over from the coarser one before it. */

import type { LieCode } from '../ground/lies.ts';
import { overLip } from './bunker-lip.ts';
import type { Choice, Spot } from './model.ts';
import { choiceTo } from './finish.ts';
import type { PreparedHole } from './prepare.ts';
import { LAYER_LIES, type FieldLayer, type StrokesField } from './strokes-field.ts';

/** One node of one layer, and what it may do. */
export interface NodeState {
  readonly layer: number;
  readonly node: number;
  readonly spot: Spot;
  readonly lie: LieCode;
  readonly distance: number;
  /** Far from the line of play. */
  readonly isFar: boolean;
  choices: KeptChoice[];
}

/** A choice that a node's search kept, and its value there. */
export interface KeptChoice {
  readonly choice: Choice;
  readonly value: number;
}

/** Aims closer than this, radians, are one candidate: the search looks around the best of them anyway. */
const SAME_BEARING = 0.03;

/** Targets of coarser neighbours closer than this share of the spacing are one. */
const SAME_TARGET_SPACINGS = 0.25;

/** The coarser nodes around a place that are known in the layer. */
function knownNeighbours(coarser: StrokesField, layerIndex: number, spot: Spot): readonly number[] {
  const { ground, columns, rows, spacingM } = coarser;
  const { value } = coarser.layers[layerIndex]!;
  const column = Math.min(columns - 2, Math.max(0, Math.floor((spot.x - ground.west) / spacingM)));
  const row = Math.min(rows - 2, Math.max(0, Math.floor((spot.y - ground.south) / spacingM)));
  const first = row * columns + column;
  return [first, first + 1, first + columns, first + columns + 1].filter(
    (node) => !Number.isNaN(value[node]!),
  );
}

/** Does any of the coarser nodes around play a shot, and not a drop or again from the tee? */
export function neighboursPlayOn(coarser: StrokesField, { layer, spot }: NodeState): boolean {
  const { spreadIndex } = coarser.layers[layer]!;
  return knownNeighbours(coarser, layer, spot).some((node) => spreadIndex[node]! >= 0);
}

/** Choices of the coarser nodes around, played to the same points from here; `withClubs`: and one club up and down. */
export function inheritedChoices(
  prepared: PreparedHole,
  coarser: StrokesField,
  state: NodeState,
  withClubs: boolean,
): Choice[] {
  const { ground } = coarser;
  const layer = coarser.layers[state.layer]!;
  const choices: Choice[] = [];
  const clears = overLip(prepared.book, ground, state.spot, state.lie);
  const add = (spreadIndex: number, finish: Spot): void => {
    if (prepared.player.spreads[spreadIndex] === undefined) return;
    const choice = choiceTo(prepared.book, state.spot, state.lie, spreadIndex, finish);
    const known = choices.some(
      (c) =>
        c.spreadIndex === spreadIndex &&
        Math.abs(c.bearing - choice.bearing) < SAME_BEARING &&
        Math.abs(c.carryM - choice.carryM) < 1,
    );
    if (!known && clears(choice)) choices.push(choice);
  };
  const near = SAME_TARGET_SPACINGS * coarser.spacingM;
  const seen: { readonly spreadIndex: number; readonly finish: Spot }[] = [];
  for (const node of knownNeighbours(coarser, state.layer, state.spot)) {
    const spreadIndex = layer.spreadIndex[node]!;
    if (spreadIndex < 0) continue;
    const finish = { x: layer.aimX[node]!, y: layer.aimY[node]! };
    const isSeen = seen.some(
      (other) =>
        other.spreadIndex === spreadIndex &&
        Math.abs(other.finish.x - finish.x) < near &&
        Math.abs(other.finish.y - finish.y) < near,
    );
    if (isSeen) continue;
    seen.push({ spreadIndex, finish });
    add(spreadIndex, finish);
    // A club up and down are as good to try from one neighbour as from all.
    if (!withClubs || seen.length > 1) continue;
    add(spreadIndex - 1, finish);
    add(spreadIndex + 1, finish);
  }
  return choices;
}

/** Takes over the action of the nearest known node of the coarser spacing, for the odds and for playing on from there. */
export function copyAction(
  coarser: StrokesField,
  layerIndex: number,
  spot: Spot,
  into: FieldLayer,
  intoNode: number,
): void {
  const layer = coarser.layers[layerIndex]!;
  let nearest = Infinity;
  for (const node of knownNeighbours(coarser, layerIndex, spot)) {
    const away = Math.hypot(coarser.nodeX(node) - spot.x, coarser.nodeY(node) - spot.y);
    if (away >= nearest) continue;
    nearest = away;
    into.spreadIndex[intoNode] = layer.spreadIndex[node]!;
    into.aimX[intoNode] = layer.aimX[node]!;
    into.aimY[intoNode] = layer.aimY[node]!;
  }
}

/** Metres from the point to the nearest of the line's segments. */
export function distanceToLine(line: readonly Spot[], spot: Spot): number {
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
export function changeBetween(
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
